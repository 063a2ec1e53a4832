package org.loamlight.workbook;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.loamlight.evaluation.BuiltIn;
import org.loamlight.setup.JsonFile;
import org.loamlight.setup.JsonValue;
import org.loamlight.setup.Problem;
import org.loamlight.setup.Problems;
import org.loamlight.setup.ProblemsFound;
import org.loamlight.setup.Setup;
import org.loamlight.setup.SetupReader;
import org.loamlight.workbook.form.FormAnswers;
import org.loamlight.workbook.form.FormPlan;
import org.loamlight.workbook.form.FormReader;

/** A form that was filled in with the answers of an example, and changed as people, spreadsheet programs and disks do. */
final class EditedForm {
    static final FormPlan PLAN = FormPlan.builtIn();
    static final byte[] FORM = form();
    private static final Workbook BOOK = open();

    static byte[] form() {
        try {
            Problems problems = new Problems("");
            JsonValue setup = JsonFile.read(Files.readAllBytes(Path.of("examples/us-kingsnake.json")), problems);
            return FormWriter.write(FormAnswers.of(setup, PLAN, problems), "Quill", BuiltIn.KNOWLEDGE.speciesNames(), PLAN);
        } catch (IOException | ProblemsFound e) {
            throw new AssertionError(e);
        }
    }

    static Workbook open() {
        try {
            return new XSSFWorkbook(new ByteArrayInputStream(FORM));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Setup read(byte[] form) throws ProblemsFound {
        Problems problems = new Problems("form.xlsx");
        return SetupReader.read(FormReader.read(form, problems), problems, BuiltIn.KNOWLEDGE.speciesNames());
    }

    static Setup usable(byte[] form) {
        try {
            return read(form);
        } catch (ProblemsFound e) {
            throw new AssertionError(e.getMessage(), e);
        }
    }

    static List<String> complaints(byte[] form) {
        try {
            read(form);
            return List.of();
        } catch (ProblemsFound e) {
            return e.problems().stream().map(Problem::text).toList();
        }
    }

    private EditedForm() {
    }

    static void assertComplaint(String start, byte[] form) {
        List<String> told = complaints(form);
        assertTrue(told.size() == 1 && told.get(0).startsWith(start), start + "\n" + told);
    }

    static byte[] edited(Consumer<Workbook> edit) {
        try (XSSFWorkbook book = new XSSFWorkbook(new ByteArrayInputStream(FORM)); ByteArrayOutputStream out = new ByteArrayOutputStream()) {
            edit.accept(book);
            book.write(out);
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static byte[] answered(String key, String heading, Consumer<Cell> answer) {
        return edited(book -> answer.accept(cell(book, key, heading)));
    }

    static Cell cell(Workbook book, String key, String heading) {
        for (Sheet sheet : book) {
            for (Row row : sheet) {
                for (Cell cell : row) {
                    if (new DataFormatter().formatCellValue(cell).equals(key)) {
                        return row.getCell(column(sheet, heading), Row.MissingCellPolicy.CREATE_NULL_AS_BLANK);
                    }
                }
            }
        }
        throw new AssertionError("No row has the key " + key);
    }

    /** The words with each {key/heading} replaced by the cell it stands for, and {} by that of the given key. */
    static String located(String words, String key, String heading) {
        return Pattern.compile("\\{(?:([^/}]+)/(\\w+))?}").matcher(words).replaceAll(found -> Matcher.quoteReplacement(
                found.group(1) == null ? place(key, heading) : place(found.group(1), found.group(2))));
    }

    static String place(String key, String heading) {
        Cell cell = cell(BOOK, key, heading);
        String sheet = cell.getSheet().getSheetName();
        return (sheet.contains(" ") ? "'" + sheet + "'" : sheet) + "!" + cell.getAddress();
    }

    static int column(Sheet sheet, String heading) {
        for (Cell cell : sheet.getRow(1)) {
            if (cell.getStringCellValue().equals(heading)) {
                return cell.getColumnIndex();
            }
        }
        throw new AssertionError("No column of " + sheet.getSheetName() + " is headed " + heading);
    }

    static void format(Cell cell, String format) {
        CellStyle style = cell.getSheet().getWorkbook().createCellStyle();
        style.setDataFormat(cell.getSheet().getWorkbook().createDataFormat().getFormat(format));
        cell.setCellStyle(style);
    }

    static Map<String, byte[]> unpacked(byte[] zip) {
        Map<String, byte[]> parts = new TreeMap<>();
        try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(zip))) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                parts.put(entry.getName(), in.readAllBytes());
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return parts;
    }

    static byte[] packed(Map<String, byte[]> parts) {
        try (ByteArrayOutputStream out = new ByteArrayOutputStream(); ZipOutputStream zip = new ZipOutputStream(out)) {
            for (Map.Entry<String, byte[]> part : parts.entrySet()) {
                zip.putNextEntry(new ZipEntry(part.getKey()));
                zip.write(part.getValue());
                zip.closeEntry();
            }
            zip.finish();
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static byte[] changed(String part, UnaryOperator<String> change) {
        Map<String, byte[]> parts = unpacked(FORM);
        parts.put(part, change.apply(new String(parts.get(part), StandardCharsets.UTF_8)).getBytes(StandardCharsets.UTF_8));
        return packed(parts);
    }

    static byte[] withPart(String name, byte[] content) {
        Map<String, byte[]> parts = unpacked(FORM);
        parts.put(name, content);
        return packed(parts);
    }
}
