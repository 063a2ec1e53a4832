package org.loamlight.workbook;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.apache.poi.openxml4j.exceptions.OpenXML4JRuntimeException;
import org.apache.poi.openxml4j.util.ZipSecureFile;
import org.apache.poi.ooxml.POIXMLException;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DateUtil;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.SheetVisibility;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.loamlight.setup.JsonPlace;
import org.loamlight.setup.JsonValue;
import org.loamlight.setup.Problems;
import org.loamlight.setup.ProblemsFound;

/**
 * Reads tables of a workbook somebody filled in as the JSON that the same things are written in: a sheet is a list, a row an
 * object, a header names a member. Every value knows its sheet and cell. Only text, numbers and dates count; formulas are refused.
 */
public final class SheetInput {
    /** What a whole workbook may unpack to; 10,000 rows of rules take half of it, and reading takes some fifteen times as much memory. */
    private static final long MOST_UNPACKED_BYTES = 10_000_000;
    private static final int MOST_ROWS = 10_000;
    private static final int MOST_COLUMNS = 60;
    private static final int MOST_SHEETS = 20;
    private static final String HOUSE = "House";
    private static final String SPECIES = "species";
    /** Members that are lists: words with semicolons between. */
    private static final Set<String> LISTS = Set.of(SPECIES, "stages", "sexes", "purposes");
    /** Columns that stand in the scope of a limit. */
    private static final Set<String> OF_SCOPE = Set.of("stages", "sexes", "purposes", "season");
    private static final Set<String> ENDS = Set.of("at-least", "at-most");
    private static final Pattern FACTOR = Pattern.compile("(\\d+(?:\\.\\d+)?)\\s*x\\s*(\\S.*)");
    private static final Map<String, String> HOUSE_SHEETS = Map.of("Limits", "limits", "Grades", "grades", "Left out", "left-out", "Points", "points");
    private static final Map<String, String> WAIVER_SHEETS = Map.of("Waivers", "waivers");

    private final Problems problems;
    private final Map<String, JsonValue> document = new LinkedHashMap<>();

    private SheetInput(Problems problems) {
        this.problems = problems;
    }

    /** House rules: sheet "House" with title, issuer and date beside their names, and sheets "Limits", "Grades", "Left out", "Points". */
    public static JsonValue house(byte[] workbook, Problems problems) throws ProblemsFound {
        return new SheetInput(problems).read(workbook, HOUSE_SHEETS);
    }

    /** Waivers: sheet "Waivers". */
    public static JsonValue waivers(byte[] workbook, Problems problems) throws ProblemsFound {
        return new SheetInput(problems).read(workbook, WAIVER_SHEETS);
    }

    /** A file that is none of these at all is one problem, and nothing is missed in it. */
    private JsonValue read(byte[] bytes, Map<String, String> sheets) throws ProblemsFound {
        JsonPlace whole = new JsonPlace(0, 0, "");
        document.put("format", new JsonValue.JsonNumber(whole, "1"));
        Optional<String> refused = refused(bytes);
        if (refused.isPresent()) {
            add(whole, refused.get(), "save it as an Excel workbook (.xlsx) with the sheets " + names(sheets));
            problems.throwIfAny();
        }
        ZipSecureFile.setMaxEntrySize(MOST_UNPACKED_BYTES);
        try (XSSFWorkbook book = new XSSFWorkbook(new ByteArrayInputStream(bytes))) {
            sheets(book, sheets);
        } catch (IOException | POIXMLException | OpenXML4JRuntimeException | IllegalArgumentException | IllegalStateException e) {
            add(whole, "it cannot be read as an Excel workbook, or is too large: at most " + MOST_ROWS + " rows and " + MOST_UNPACKED_BYTES / 1_000_000 + " MB unpacked are read",
                    "open it in a spreadsheet program, keep what is needed and save it again as .xlsx");
            problems.throwIfAny();
        }
        return new JsonValue.JsonObject(whole, document);
    }

    private static String names(Map<String, String> sheets) {
        return sheets.keySet().stream().sorted().map(name -> "\"" + name + "\"").reduce((one, other) -> one + ", " + other).orElseThrow();
    }

    /** What is wrong with the file as a whole, before a line of it is unpacked into memory; empty when nothing is. */
    private static Optional<String> refused(byte[] bytes) {
        if (bytes.length < 4 || bytes[0] != 'P' || bytes[1] != 'K') {
            boolean old = bytes.length > 4 && bytes[0] == (byte) 0xD0 && bytes[1] == (byte) 0xCF;
            return Optional.of(old ? "it is an old or an encrypted workbook" : bytes.length == 0 ? "it is empty" : "it is no Excel workbook");
        }
        long unpacked = 0;
        byte[] buffer = new byte[8192];
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(bytes))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                if (entry.getName().toLowerCase(Locale.ROOT).endsWith("vbaproject.bin")) {
                    return Optional.of("it holds macros");
                }
                for (int read = zip.read(buffer); read > 0; read = zip.read(buffer)) {
                    unpacked += read;
                    if (unpacked > MOST_UNPACKED_BYTES) {
                        return Optional.of("it is too large: unpacked more than " + MOST_UNPACKED_BYTES / 1_000_000 + " MB, where at most " + MOST_ROWS + " rows are read");
                    }
                }
            }
            return Optional.empty();
        } catch (IOException | IllegalArgumentException e) {
            return Optional.empty(); // some programs write archives this stream cannot follow; the library, with its own limits, can
        }
    }

    private void sheets(XSSFWorkbook book, Map<String, String> known) {
        if (book.getNumberOfSheets() > MOST_SHEETS) {
            add(new JsonPlace(0, 0, ""), "it has " + book.getNumberOfSheets() + " sheets", "keep the sheets " + names(known));
            return;
        }
        boolean any = false;
        for (int i = 0; i < book.getNumberOfSheets(); i++) {
            Sheet sheet = book.getSheetAt(i);
            String name = sheet.getSheetName();
            if (book.getSheetVisibility(i) != SheetVisibility.VISIBLE) {
                add(new JsonPlace(0, 0, name), "this sheet is hidden", "show it, or delete it: nothing that nobody sees is used");
            } else if (name.equals(HOUSE) && known == HOUSE_SHEETS) {
                about(sheet);
            } else if (known.containsKey(name)) {
                any = true;
                document.put(known.get(name), table(sheet));
            } else {
                add(new JsonPlace(0, 0, name), "this sheet is not known", "known here are " + names(known));
            }
        }
        if (!any) {
            add(new JsonPlace(0, 0, ""), "none of the sheets " + names(known) + " is there", "name them so");
        }
    }

    private void about(Sheet sheet) {
        for (Row row : sheet) {
            Cell name = row.getCell(0);
            Cell value = row.getCell(1);
            if (name != null && value != null && name.getCellType() == CellType.STRING) {
                value(value).ifPresent(found -> document.put(name.getStringCellValue().strip().toLowerCase(Locale.ROOT), found));
            }
        }
    }

    private JsonValue table(Sheet sheet) {
        JsonPlace place = new JsonPlace(0, 0, sheet.getSheetName());
        if (sheet.getLastRowNum() > MOST_ROWS) {
            add(place, "it has " + sheet.getLastRowNum() + " rows", "at most " + MOST_ROWS + " are read");
            return new JsonValue.JsonArray(place, List.of());
        }
        Map<Integer, Header> headers = headers(sheet);
        List<JsonValue> rows = new ArrayList<>();
        for (Row row : sheet) {
            if (row.getRowNum() > sheet.getFirstRowNum()) {
                object(row, headers).ifPresent(rows::add);
            }
        }
        return new JsonValue.JsonArray(place, rows);
    }

    private record Header(String key, JsonPlace at) {
    }

    private Map<Integer, Header> headers(Sheet sheet) {
        Map<Integer, Header> headers = new LinkedHashMap<>();
        Row first = sheet.getRow(sheet.getFirstRowNum());
        if (first != null) {
            for (Cell cell : first) {
                if (cell.getColumnIndex() < MOST_COLUMNS && cell.getCellType() == CellType.STRING && !cell.getStringCellValue().isBlank()) {
                    headers.put(cell.getColumnIndex(), new Header(cell.getStringCellValue().strip().toLowerCase(Locale.ROOT).replace(' ', '-'), place(cell)));
                }
            }
        }
        return headers;
    }

    /** Empty for a row without any value. */
    private Optional<JsonValue> object(Row row, Map<Integer, Header> headers) {
        Map<String, JsonValue> members = new LinkedHashMap<>();
        Map<String, JsonValue> scope = new LinkedHashMap<>();
        Map<String, JsonPlace> keys = new LinkedHashMap<>();
        for (Cell cell : row) {
            Header header = headers.get(cell.getColumnIndex());
            Optional<JsonValue> value = value(cell);
            if (value.isPresent() && header == null) {
                add(place(cell), "this column has no header", "name it in the first row, or empty it");
            } else if (value.isPresent()) {
                (OF_SCOPE.contains(header.key) ? scope : members).put(header.key, LISTS.contains(header.key) ? list(value.get()) : bound(header.key, value.get()));
                keys.put(header.key, header.at);
            }
        }
        JsonPlace place = new JsonPlace(0, 0, row.getSheet().getSheetName() + "!" + (row.getRowNum() + 1));
        if (!scope.isEmpty()) {
            members.put("scope", new JsonValue.JsonObject(place, scope, keys));
        }
        return members.isEmpty() ? Optional.empty() : Optional.of(new JsonValue.JsonObject(place, members, keys));
    }

    /** An end of a limit may be written "1.2 x total length". */
    private static JsonValue bound(String key, JsonValue value) {
        Matcher factor = value instanceof JsonValue.JsonText text && ENDS.contains(key) ? FACTOR.matcher(text.text()) : FACTOR.matcher("");
        return factor.matches() ? new JsonValue.JsonObject(value.at(), Map.of("factor", new JsonValue.JsonText(value.at(), factor.group(1)),
                "of", new JsonValue.JsonText(value.at(), factor.group(2)))) : value;
    }

    private static JsonValue list(JsonValue value) {
        if (value instanceof JsonValue.JsonText text) {
            List<JsonValue> words = new ArrayList<>();
            for (String word : text.text().split(";")) {
                if (!word.isBlank()) {
                    words.add(new JsonValue.JsonText(text.at(), word.strip()));
                }
            }
            return new JsonValue.JsonArray(text.at(), words);
        }
        return value;
    }

    /** Empty for an empty cell and after a problem. Dates become days as 2026-03-14, numbers plain decimals, all of them texts. */
    private Optional<JsonValue> value(Cell cell) {
        return switch (cell.getCellType()) {
            case STRING -> Optional.of(cell.getStringCellValue().strip()).filter(text -> !text.isEmpty()).map(text -> new JsonValue.JsonText(place(cell), text));
            case NUMERIC -> Optional.of(new JsonValue.JsonText(place(cell), number(cell)));
            case BOOLEAN -> Optional.of(new JsonValue.JsonText(place(cell), cell.getBooleanCellValue() ? "yes" : "no"));
            case FORMULA -> refused(cell, "this is a formula");
            case ERROR -> refused(cell, "this is an error");
            default -> Optional.empty();
        };
    }

    private Optional<JsonValue> refused(Cell cell, String found) {
        add(place(cell), found, "write what it comes to");
        return Optional.empty();
    }

    private static String number(Cell cell) {
        if (DateUtil.isCellDateFormatted(cell)) {
            LocalDate day = cell.getLocalDateTimeCellValue().toLocalDate();
            return day.toString();
        }
        return new BigDecimal(Double.toString(cell.getNumericCellValue())).stripTrailingZeros().toPlainString();
    }

    private static JsonPlace place(Cell cell) {
        return new JsonPlace(0, 0, cell.getSheet().getSheetName() + "!" + new CellReference(cell.getRowIndex(), cell.getColumnIndex()).formatAsString().replace("$", ""));
    }

    private void add(JsonPlace at, String found, String allowed) {
        problems.add(new JsonValue.JsonText(at, found), found, allowed);
    }
}
