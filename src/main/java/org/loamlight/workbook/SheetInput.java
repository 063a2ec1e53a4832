package org.loamlight.workbook;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.loamlight.setup.JsonPlace;
import org.loamlight.setup.JsonValue;
import org.loamlight.setup.Problems;
import org.loamlight.setup.ProblemsFound;
import org.loamlight.workbook.cells.Cell;
import org.loamlight.workbook.cells.CellReader;
import org.loamlight.workbook.cells.ReadingLimits;
import org.loamlight.workbook.cells.Sheet;

/**
 * Reads tables of a workbook somebody filled in as the JSON that the same things are written in: a sheet is a list, a row an
 * object, a header names a member. Every value knows its cell and its path in that JSON. Of a formula counts the value worked out last.
 */
public final class SheetInput {
    private static final int MOST_ROWS = 10_000;
    /** 10,000 rows of rules in their sixteen columns, with a reason of a line each. */
    private static final ReadingLimits LIMITS = new ReadingLimits(10, 20, 200_000);
    private static final JsonPlace WHOLE = new JsonPlace(0, 0, "");
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
    private JsonValue read(byte[] workbook, Map<String, String> known) throws ProblemsFound {
        document.put("format", new JsonValue.JsonNumber(WHOLE, "1"));
        sheets(CellReader.read(workbook, LIMITS, problems), known);
        return new JsonValue.JsonObject(WHOLE, document);
    }

    private static String names(Map<String, String> sheets) {
        return sheets.keySet().stream().sorted().map(name -> "\"" + name + "\"").reduce((one, other) -> one + ", " + other).orElseThrow();
    }

    private void sheets(List<Sheet> sheets, Map<String, String> known) {
        boolean any = false;
        for (Sheet sheet : sheets) {
            String list = known.get(sheet.name());
            if (sheet.isHidden()) {
                problems.add(begin(sheet), "this sheet is hidden", "show it, or delete it: nothing that nobody sees is used");
            } else if (sheet.name().equals(HOUSE) && known == HOUSE_SHEETS) {
                about(sheet);
            } else if (list != null) {
                any = true;
                document.put(list, table(sheet, list));
            } else {
                problems.add(begin(sheet), "this sheet is not known", "known here are " + names(known));
            }
        }
        if (!any) {
            problems.add(WHOLE, "none of the sheets " + names(known) + " is there", "name them so");
        }
    }

    private static JsonPlace begin(Sheet sheet) {
        return new JsonPlace(1, 1, "", sheet.name());
    }

    private void about(Sheet sheet) {
        for (List<Cell> row : sheet.rows()) {
            int line = row.get(0).row();
            Optional<Cell> value = sheet.cell(line, 2);
            if (row.get(0).column() == 1 && value.isPresent()) {
                String name = key(row.get(0));
                value(value.get(), name).ifPresent(found -> document.put(name, found));
            }
        }
    }

    /** A text as a member of JSON is named: "Granted by" is "granted-by". */
    private static String key(Cell name) {
        return name.text().strip().toLowerCase(Locale.ROOT).replace(' ', '-');
    }

    private JsonValue table(Sheet sheet, String list) {
        List<List<Cell>> rows = sheet.rows();
        if (rows.size() - 1 > MOST_ROWS) {
            problems.add(begin(sheet), "this sheet has " + (rows.size() - 1) + " rows", "at most " + MOST_ROWS + " are read");
            return new JsonValue.JsonArray(begin(sheet), List.of());
        }
        sheet.merged().forEach(range -> problems.add(range.place(""), "the cells " + range.text() + " are merged", "split them, and write in each cell what holds for its row"));
        Map<Integer, Cell> headers = rows.isEmpty() ? Map.of() : headers(rows.get(0));
        List<JsonValue> objects = new ArrayList<>();
        rows.stream().skip(1).forEach(row -> objects.add(object(row, headers, list + "[" + objects.size() + "]")));
        return new JsonValue.JsonArray(begin(sheet), objects);
    }

    private Map<Integer, Cell> headers(List<Cell> first) {
        Map<Integer, Cell> headers = new LinkedHashMap<>();
        for (Cell header : first) {
            if (headers.values().stream().anyMatch(earlier -> key(earlier).equals(key(header)))) {
                problems.add(header.place(""), "two columns have this header", "keep one of the two");
            }
            headers.put(header.column(), header);
        }
        return headers;
    }

    private JsonValue object(List<Cell> row, Map<Integer, Cell> headers, String path) {
        Map<String, JsonValue> members = new LinkedHashMap<>();
        Map<String, JsonValue> scope = new LinkedHashMap<>();
        Map<String, JsonPlace> keys = new LinkedHashMap<>();
        for (Cell cell : row) {
            Cell header = headers.get(cell.column());
            if (header == null) {
                problems.add(cell.place(path), "this column has no header", "name it in the first row, or empty it");
                continue;
            }
            String key = key(header);
            keys.put(key, header.place(path));
            value(cell, path + "." + key).ifPresent(value ->
                    (OF_SCOPE.contains(key) ? scope : members).put(key, LISTS.contains(key) ? list(value) : bound(key, value)));
        }
        JsonPlace place = row.get(0).place(path);
        if (!scope.isEmpty()) {
            members.put("scope", new JsonValue.JsonObject(place, scope, keys));
        }
        return new JsonValue.JsonObject(place, members, keys);
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

    /** Empty after a problem. Days as 2026-03-14, numbers as plain decimals, per cents as 80 %; all of them texts. */
    private Optional<JsonValue> value(Cell cell, String path) {
        JsonPlace at = cell.place(path);
        Optional<String> fault = cell.fault();
        if (fault.isPresent()) {
            problems.add(at, fault.get(), "write the value in place of the formula");
            return Optional.empty();
        }
        String text = cell.content() == Cell.Content.TRUE_OR_FALSE ? cell.text().equals("true") ? "yes" : "no" : cell.text().strip();
        return Optional.of(new JsonValue.JsonText(at, text));
    }
}
