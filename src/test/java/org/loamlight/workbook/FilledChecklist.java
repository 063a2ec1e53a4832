package org.loamlight.workbook;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.loamlight.evaluation.Audit;
import org.loamlight.evaluation.BuiltIn;
import org.loamlight.ranking.Ranking;
import org.loamlight.setup.JsonFile;
import org.loamlight.setup.JsonValue;
import org.loamlight.setup.Problems;
import org.loamlight.setup.ProblemsFound;
import org.loamlight.setup.Setup;
import org.loamlight.setup.SetupReader;
import org.loamlight.wording.Units;
import org.loamlight.wording.Wording;
import org.loamlight.workbook.visit.Walk;
import org.loamlight.workbook.visit.WalkRow;

/** The checklist of a setup, filled in and changed as people do: rows are found by their key, columns by their heading. */
public final class FilledChecklist {
    private static final int HEADER_ROW = 1;
    private static final DataFormatter FORMATTER = new DataFormatter();

    private final XSSFWorkbook book;

    private FilledChecklist(byte[] workbook) {
        try {
            book = new XSSFWorkbook(new ByteArrayInputStream(workbook));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** An empty checklist, to be filled in. */
    public static FilledChecklist of(byte[] workbook) {
        return new FilledChecklist(workbook);
    }

    /** The checklist an audit of the setup leaves. */
    static byte[] made(JsonValue document) {
        try {
            Audit audit = audit(document);
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            Checklist.write(audit, Ranking.of(audit.findings()), new Wording(Units.METRIC, audit.knowledge()), Carried.first(document), out);
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static List<WalkRow> asked(JsonValue document) {
        Audit audit = audit(document);
        return Walk.of(audit, Ranking.of(audit.findings()), new Wording(Units.METRIC, audit.knowledge())).rows();
    }

    static Audit audit(JsonValue document) {
        Setup setup = setup(document);
        return BuiltIn.AUDITOR.audit(setup, setup.on().orElseThrow());
    }

    static Setup setup(JsonValue document) {
        try {
            return SetupReader.read(document, new Problems("setup"), BuiltIn.KNOWLEDGE.speciesNames());
        } catch (ProblemsFound e) {
            throw new AssertionError(e.getMessage(), e);
        }
    }

    static JsonValue document(Path file) {
        try {
            return JsonFile.read(Files.readAllBytes(file), new Problems(file.toString()));
        } catch (IOException | ProblemsFound e) {
            throw new AssertionError(e.getMessage(), e);
        }
    }

    /** Writes under a heading in the row of a key. */
    public FilledChecklist write(String sheet, String key, String heading, String text) {
        cell(sheet, key, heading).setCellValue(text);
        return this;
    }

    public FilledChecklist answer(String key, String now) {
        return write("Walk", key, "Now", now);
    }

    FilledChecklist number(String key, double now) {
        cell("Walk", key, "Now").setCellValue(now);
        return this;
    }

    public FilledChecklist visited(String on, String by) {
        return write("Visit", "visit on", "Fill in", on).write("Visit", "visit by", "Fill in", by);
    }

    Cell cell(String sheetName, String key, String heading) {
        XSSFSheet sheet = book.getSheet(sheetName);
        Row row = row(sheet, key);
        int column = column(sheet, heading);
        return row.getCell(column) == null ? row.createCell(column) : row.getCell(column);
    }

    private static Row row(Sheet sheet, String key) {
        int keys = column(sheet, "Key");
        for (Row row : sheet) {
            if (row.getRowNum() > HEADER_ROW && FORMATTER.formatCellValue(row.getCell(keys)).equals(key)) {
                return row;
            }
        }
        throw new AssertionError(sheet.getSheetName() + " has no row with the key " + key);
    }

    private static int column(Sheet sheet, String heading) {
        for (Cell cell : sheet.getRow(HEADER_ROW)) {
            if (cell.getStringCellValue().equals(heading)) {
                return cell.getColumnIndex();
            }
        }
        throw new AssertionError(sheet.getSheetName() + " has no column " + heading);
    }

    /** Puts the rows of a sheet in another order, as sorting does. */
    FilledChecklist shuffled(String sheetName, long seed) {
        Sheet sheet = book.getSheet(sheetName);
        List<List<String>> rows = new ArrayList<>();
        for (int i = HEADER_ROW + 1; i <= sheet.getLastRowNum(); i++) {
            List<String> texts = new ArrayList<>();
            for (int j = 0; j < sheet.getRow(HEADER_ROW).getLastCellNum(); j++) {
                texts.add(FORMATTER.formatCellValue(sheet.getRow(i).getCell(j)));
            }
            rows.add(texts);
        }
        Collections.shuffle(rows, new Random(seed));
        for (int i = 0; i < rows.size(); i++) {
            for (int j = 0; j < rows.get(i).size(); j++) {
                sheet.getRow(HEADER_ROW + 1 + i).getCell(j).setCellValue(rows.get(i).get(j));
            }
        }
        return this;
    }

    FilledChecklist hide(String key) {
        row(book.getSheet("Walk"), key).setZeroHeight(true);
        return this;
    }

    public FilledChecklist delete(String sheetName, String key) {
        Sheet sheet = book.getSheet(sheetName);
        sheet.removeRow(row(sheet, key));
        return this;
    }

    XSSFWorkbook book() {
        return book;
    }

    /** The texts under a heading. */
    public List<String> column(String sheetName, String heading) {
        Sheet sheet = book.getSheet(sheetName);
        int column = column(sheet, heading);
        List<String> texts = new ArrayList<>();
        for (int i = HEADER_ROW + 1; i <= sheet.getLastRowNum(); i++) {
            texts.add(FORMATTER.formatCellValue(sheet.getRow(i).getCell(column)));
        }
        return texts;
    }

    public byte[] bytes() {
        try {
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            book.write(out);
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
