package org.loamlight.workbook;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.Date;
import org.apache.poi.ooxml.POIXMLProperties;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFTable;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** A workbook as text that a person can read and compare: sheet by sheet, cell by cell. */
public final class WorkbookText {
    private WorkbookText() {
    }

    /**
     * Properties, then for each sheet its tables, choices and cells, one line each; line breaks in cells as \n. Empty cells are
     * left out. Widths, heights and styles are not shown.
     *
     * @throws UncheckedIOException when the bytes are no workbook
     */
    public static String dump(byte[] xlsx) {
        try (XSSFWorkbook book = new XSSFWorkbook(new ByteArrayInputStream(xlsx))) {
            StringBuilder text = new StringBuilder();
            properties(book.getProperties().getCoreProperties(), text);
            book.sheetIterator().forEachRemaining(sheet -> sheet((XSSFSheet) sheet, text));
            return text.toString();
        } catch (IOException e) {
            throw new UncheckedIOException("This is no workbook", e);
        }
    }

    private static void properties(POIXMLProperties.CoreProperties core, StringBuilder text) {
        line(text, "title: " + core.getTitle());
        line(text, "subject: " + core.getSubject());
        line(text, "creator: " + core.getCreator());
        line(text, "created: " + iso(core.getCreated()));
        line(text, "modified: " + iso(core.getModified()));
    }

    private static String iso(Date date) {
        return date.toInstant().toString();
    }

    private static void sheet(XSSFSheet sheet, StringBuilder text) {
        line(text, "");
        line(text, "== " + sheet.getSheetName() + " ==");
        for (XSSFTable table : sheet.getTables()) {
            line(text, "table " + table.getName() + " " + table.getCTTable().getRef());
        }
        for (DataValidation choice : sheet.getDataValidations()) {
            line(text, "choice " + choice.getRegions().getCellRangeAddress(0).formatAsString() + ": "
                    + String.join(" | ", choice.getValidationConstraint().getExplicitListValues()));
        }
        for (Row row : sheet) {
            for (Cell cell : row) {
                cell(cell, text);
            }
        }
    }

    private static void cell(Cell cell, StringBuilder text) {
        String value = value(cell);
        if (!value.isEmpty()) {
            line(text, cell.getAddress() + " " + value);
        }
    }

    private static String value(Cell cell) {
        return switch (cell.getCellType()) {
            case STRING -> cell.getStringCellValue().replace("\n", "\\n");
            case NUMERIC -> new BigDecimal(cell.getNumericCellValue()).stripTrailingZeros().toPlainString();
            case BLANK -> "";
            default -> "(" + cell.getCellType() + ") " + cell;
        };
    }

    private static void line(StringBuilder text, String line) {
        text.append(line).append('\n');
    }
}
