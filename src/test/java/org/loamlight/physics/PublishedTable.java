package org.loamlight.physics;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A table of published figures under src/test/resources/published: CSV with a header line, cells in double quotes where
 * they hold a comma. The column {@code evidence} says how a figure was come by: O read in the original or a full
 * transcription, S in a secondary source, C computed by the formula given, M from memory and not verified.
 */
record PublishedTable(String name, List<Row> rows) {

    private static final Pattern CELL = Pattern.compile("\\G(?:\"([^\"]*)\"|([^,\"]*))(,|$)");
    private static final String NUMBER = "([-+]?\\d+(?:\\.\\d+)?(?:[eE][-+]?\\d+)?)";

    static PublishedTable read(String name) {
        List<String> lines = lines(name);
        List<String> header = cells(lines.get(0));
        return new PublishedTable(name, lines.stream().skip(1).map(line -> new Row(header, cells(line))).toList());
    }

    /** The one row with that text in that column. */
    Row row(String column, String text) {
        List<Row> found = rows.stream().filter(row -> row.cell(column).equals(text)).toList();
        if (found.size() != 1) {
            throw new IllegalStateException(name + " has " + found.size() + " rows with " + column + " " + text);
        }
        return found.get(0);
    }

    private static List<String> lines(String name) {
        try (InputStream stream = PublishedTable.class.getResourceAsStream("/published/" + name)) {
            String text = new String(Objects.requireNonNull(stream, name).readAllBytes(), StandardCharsets.UTF_8);
            return text.lines().toList();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private static List<String> cells(String line) {
        List<String> cells = new ArrayList<>();
        Matcher matcher = CELL.matcher(line);
        boolean more = true;
        while (more && matcher.find()) {
            cells.add(Stream.of(1, 2).map(matcher::group).filter(Objects::nonNull).findFirst().orElseThrow());
            more = matcher.group(3).equals(",");
        }
        return List.copyOf(cells);
    }

    /** One line of the table. */
    record Row(List<String> header, List<String> cells) {

        Row {
            if (header.size() != cells.size()) {
                throw new IllegalStateException(cells + " does not fit the header " + header);
            }
        }

        String cell(String column) {
            return cells.get(header.indexOf(column));
        }

        /** The first number in the cell. */
        double number(String column) {
            return numberAfter(column, "");
        }

        /** The number right behind the first place where the label stands before one. */
        double numberAfter(String column, String label) {
            Matcher matcher = Pattern.compile("(?<![\\w.])" + Pattern.quote(label) + "\\s*" + NUMBER).matcher(cell(column));
            if (!matcher.find()) {
                throw new IllegalStateException("no number after '" + label + "' in '" + cell(column) + "'");
            }
            return Double.parseDouble(matcher.group(1));
        }
    }
}
