package org.loamlight.criterion;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A worked case of a keeping code, from src/test/resources/published/codes-worked.csv. The column {@code standing} says
 * what the expected value rests on: text (the code or leaflet was read), secondary (somebody else quotes it) or inferred
 * (carried over from a neighbouring row); {@code source} names the code.
 */
public record WorkedCase(Map<String, String> cells) {
    private static final Pattern CELL = Pattern.compile("\\G(?:\"([^\"]*)\"|([^,\"]*))(?:,|$)");
    private static final Pattern NUMBER = Pattern.compile("\\d+(?:\\.\\d+)?");

    public static WorkedCase of(String id) {
        List<String> lines = lines();
        List<String> header = cells(lines.get(0));
        List<WorkedCase> found = lines.stream().skip(1).map(line -> row(header, cells(line)))
                .filter(one -> one.cells.get("case_id").equals(id)).toList();
        if (found.size() != 1) {
            throw new IllegalStateException("codes-worked.csv has " + found.size() + " rows of case " + id);
        }
        return found.get(0);
    }

    /** The ids of all cases, in the order of the file. */
    static List<String> ids() {
        return lines().stream().skip(1).map(line -> cells(line).get(0)).toList();
    }

    /** Every match of a pattern in one cell; none is a defect of the test. */
    public List<MatchResult> all(String column, String pattern) {
        List<MatchResult> matches = Pattern.compile(pattern).matcher(cells.get(column)).results().toList();
        if (matches.isEmpty()) {
            throw new IllegalStateException("no " + pattern + " in " + cells.get(column));
        }
        return matches;
    }

    /** The numbers of one cell in their order. */
    public List<Double> numbers(String column) {
        return all(column, NUMBER.pattern()).stream().map(MatchResult::group).map(Double::valueOf).toList();
    }

    private static WorkedCase row(List<String> header, List<String> cells) {
        if (header.size() != cells.size()) {
            throw new IllegalStateException(cells + " does not fit the header " + header);
        }
        Map<String, String> row = new HashMap<>();
        for (int i = 0; i < header.size(); i++) {
            row.put(header.get(i), cells.get(i));
        }
        return new WorkedCase(row);
    }

    public static List<String> cells(String line) {
        List<String> cells = new ArrayList<>();
        Matcher matcher = CELL.matcher(line);
        while (matcher.find() && matcher.start() < line.length()) {
            cells.add(Objects.requireNonNullElse(matcher.group(1), Objects.requireNonNullElse(matcher.group(2), "")));
        }
        return cells;
    }

    private static List<String> lines() {
        try (InputStream file = WorkedCase.class.getResourceAsStream("/published/codes-worked.csv")) {
            return new String(Objects.requireNonNull(file).readAllBytes(), StandardCharsets.UTF_8).lines().toList();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
