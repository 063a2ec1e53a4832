package org.loamlight.review;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import java.io.IOException;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Optional;
import org.loamlight.criterion.Citation;
import org.loamlight.criterion.Grade;
import org.loamlight.criterion.Need;
import org.loamlight.criterion.Standing;
import org.loamlight.finding.Result;
import org.loamlight.ranking.Conclusion;
import org.loamlight.setup.Words;

/** Reads a line of results back. What it reads and writes again is the same line. */
final class ReviewedReader {
    static final String FINDINGS = "findings";
    private static final int DEEPEST = 10;
    /** Lines this program wrote: as long as they are. */
    private static final JsonFactory FACTORY = JsonFactory.builder()
            .streamReadConstraints(StreamReadConstraints.builder().maxNestingDepth(DEEPEST).maxStringLength(Integer.MAX_VALUE).build()).build();

    private ReviewedReader() {
    }

    /** The whole line; empty when it is no line of results. */
    static Optional<Reviewed> read(String line) {
        return read(line, true);
    }

    /** What stands before the findings: a result without points; empty when it is no line of results. */
    static Optional<Reviewed> head(String line) {
        return read(line, false);
    }

    private static Optional<Reviewed> read(String line, boolean whole) {
        try (JsonParser parser = FACTORY.createParser(line)) {
            return parser.nextToken() == JsonToken.START_OBJECT ? Optional.of(reviewed(object(parser, whole))) : Optional.empty();
        } catch (IOException | ClassCastException | NoSuchElementException | DateTimeException | NullPointerException e) {
            return Optional.empty();
        }
    }

    private static Map<String, Object> object(JsonParser parser, boolean whole) throws IOException {
        Map<String, Object> members = new LinkedHashMap<>();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            String key = parser.currentName();
            if (!whole && key.equals(FINDINGS)) {
                members.put(key, List.of());
                return members;
            }
            parser.nextToken();
            members.put(key, value(parser));
        }
        return members;
    }

    private static Object value(JsonParser parser) throws IOException {
        return switch (parser.currentToken()) {
            case START_OBJECT -> object(parser, true);
            case START_ARRAY -> {
                List<Object> elements = new ArrayList<>();
                while (parser.nextToken() != JsonToken.END_ARRAY) {
                    elements.add(value(parser));
                }
                yield elements;
            }
            default -> parser.getText();
        };
    }

    private static Reviewed reviewed(Map<String, Object> line) {
        if (!text(line, "format").equals(String.valueOf(ReviewedJson.FORMAT))) {
            throw new NoSuchElementException("format");
        }
        Map<String, Object> knowledge = part(line, "knowledge");
        Basis basis = new Basis(needed(knowledge, "version"), needed(knowledge, "sha256"), needed(line, "options"), text(line, "anonymous").equals("true"));
        List<String> problems = list(line, "problems").stream().map(String.class::cast).toList();
        return new Reviewed(number(line, "number"), needed(line, "file"), line.containsKey("line") ? number(line, "line") : 0, needed(part(line, "input"), "sha256"), basis,
                problems, text(line, "defect").equals("true"), problems.isEmpty() ? Optional.of(judged(line)) : Optional.empty());
    }

    private static Judged judged(Map<String, Object> line) {
        List<Kept> animals = parts(line, "animals").stream().map(animal -> new Kept(needed(animal, "name"), needed(animal, "species"), needed(animal, "english"))).toList();
        return new Judged(LocalDate.parse(needed(line, "on")), text(line, "dayTaken").equals("true"), text(line, "title"), animals,
                needed(line, "livesHere").equals("true"), word(line, "conclusion", Conclusion.class), needed(line, "inWords"),
                parts(line, FINDINGS).stream().map(ReviewedReader::point).toList());
    }

    private static Point point(Map<String, Object> point) {
        return new Point(needed(point, "criterion"), needed(point, "subject"), word(point, "result", Result.class), word(point, "grade", Grade.class),
                word(point, "need", Need.class), point.containsKey("title") ? Optional.of(words(point)) : Optional.empty());
    }

    private static PointWords words(Map<String, Object> point) {
        List<Citation> citations = parts(point, "sources").stream()
                .map(source -> new Citation(needed(source, "source"), text(source, "clause"), word(source, "standing", Standing.class))).toList();
        return new PointWords(needed(point, "title"), text(point, "where"), text(point, "found"), text(point, "required"), text(point, "past"),
                text(point, "act"), text(point, "by"), day(point, "due"), citations, day(point, "waivedUntil"));
    }

    private static Optional<LocalDate> day(Map<String, Object> of, String key) {
        return Optional.of(text(of, key)).filter(text -> !text.isEmpty()).map(LocalDate::parse);
    }

    private static <E extends Enum<E>> E word(Map<String, Object> of, String key, Class<E> type) {
        return Words.find(needed(of, key), type).orElseThrow();
    }

    private static int number(Map<String, Object> of, String key) {
        String digits = needed(of, key);
        if (!digits.matches("\\d{1,9}")) {
            throw new NoSuchElementException(key);
        }
        return Integer.parseInt(digits);
    }

    private static String needed(Map<String, Object> of, String key) {
        return Optional.ofNullable((String) of.get(key)).orElseThrow();
    }

    private static String text(Map<String, Object> of, String key) {
        return (String) of.getOrDefault(key, "");
    }

    @SuppressWarnings("unchecked")
    private static Map<String, Object> part(Map<String, Object> of, String key) {
        return (Map<String, Object>) of.getOrDefault(key, Map.of());
    }

    private static List<?> list(Map<String, Object> of, String key) {
        return (List<?>) of.getOrDefault(key, List.of());
    }

    @SuppressWarnings("unchecked")
    private static List<Map<String, Object>> parts(Map<String, Object> of, String key) {
        return (List<Map<String, Object>>) of.getOrDefault(key, List.of());
    }
}
