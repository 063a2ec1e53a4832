package org.loamlight.setup;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.loamlight.quantity.Unit;

/**
 * Every question a setup can answer, read from docs/setup.schema.json: its words have that one home. Understands what that schema uses of JSON Schema,
 * no more.
 */
public final class QuestionCatalogue {
    private static final String DEFINITION = "#/$defs/";
    private static final String PLACE = DEFINITION + "place";
    private static final String PROPERTIES = "properties";
    private static final String ANY_DAY = "2026-11-02";
    /** No measure and no day looks like this, and any text may. */
    private static final String ANY_TEXT = "x";

    private final JsonValue.JsonObject schema;
    private final List<Question> questions = new ArrayList<>();
    private final Map<Set<String>, List<String>> unitsOf = new HashMap<>();
    private final Map<Set<String>, Boolean> days = new HashMap<>();

    private QuestionCatalogue(JsonValue.JsonObject schema) {
        this.schema = schema;
    }

    /** The question of a path with {@code []} behind each list; empty when nothing is asked there. */
    public static Optional<Question> question(String path) {
        return builtIn().stream().filter(question -> question.path().equals(path)).findFirst();
    }

    /** Reads the schema when it is first asked for, once. */
    private static final class BuiltIn {
        private static final List<Question> QUESTIONS = read();

        private static List<Question> read() {
            QuestionCatalogue catalogue = new QuestionCatalogue(BuiltInFile.document("setup.schema.json", "docs/setup.schema.json"));
            catalogue.askMembers(catalogue.schema, "");
            return List.copyOf(catalogue.questions);
        }
    }

    /** The questions in the order of the schema; a list before the questions about its parts. Never empty. */
    public static List<Question> builtIn() {
        return BuiltIn.QUESTIONS;
    }

    private void askMembers(JsonValue.JsonObject of, String prefix) {
        member(of, PROPERTIES).ifPresent(members -> members.members().forEach((key, value) -> ask(prefix + key, (JsonValue.JsonObject) value)));
    }

    private void ask(String path, JsonValue.JsonObject member) {
        List<JsonValue.JsonObject> ways = ways(member).toList();
        Optional<JsonValue.JsonObject> nested = with(PROPERTIES, ways);
        Optional<JsonValue.JsonObject> part = with("items", ways).flatMap(list -> with(PROPERTIES, ways(member(list, "items").orElseThrow()).toList()));
        if (part.isPresent()) {
            questions.add(question(path, member, Question.Kind.PARTS, List.of(), List.of()));
            askMembers(part.get(), path + "[].");
        } else if (nested.isPresent() && !text(member, "$ref").equals(PLACE)) {
            askMembers(nested.get(), path + ".");
        } else {
            questions.add(single(path, member, ways));
        }
    }

    private Question single(String path, JsonValue.JsonObject member, List<JsonValue.JsonObject> ways) {
        Optional<JsonValue.JsonObject> several = with("items", ways).flatMap(list -> member(list, "items"));
        List<String> units = units(ways);
        List<String> words = words(several.map(List::of).orElse(ways));
        return question(path, member, several.isPresent() ? Question.Kind.SEVERAL : kind(member, ways, !units.isEmpty(), !words.isEmpty()), words, units);
    }

    private Question.Kind kind(JsonValue.JsonObject member, List<JsonValue.JsonObject> ways, boolean isMeasured, boolean isInWords) {
        if (text(member, "$ref").equals(PLACE)) {
            return Question.Kind.PLACE;
        }
        if (isMeasured) {
            return Question.Kind.MEASURE;
        }
        if (isDay(ways)) {
            return Question.Kind.DAY;
        }
        if (isInWords) {
            return Question.Kind.ONE_OF;
        }
        return member.members().get("const") instanceof JsonValue.JsonNumber ? Question.Kind.VERSION : Question.Kind.TEXT;
    }

    private static Question question(String path, JsonValue.JsonObject member, Question.Kind kind, List<String> words, List<String> units) {
        String[] sentences = text(member, "description").split("(?<=\\.) ", 2);
        return new Question(path, sentences[0], sentences.length == 1 ? "" : sentences[1], kind, words, units);
    }

    /** Every way in which the schema lets it be answered. */
    private Stream<JsonValue.JsonObject> ways(JsonValue.JsonObject node) {
        String reference = text(node, "$ref");
        if (reference.startsWith(DEFINITION)) {
            return ways(member(member(schema, "$defs").orElseThrow(), reference.substring(DEFINITION.length())).orElseThrow());
        }
        if (node.members().get("anyOf") instanceof JsonValue.JsonArray any) {
            return any.elements().stream().map(JsonValue.JsonObject.class::cast).flatMap(this::ways);
        }
        return Stream.of(node);
    }

    private static Optional<JsonValue.JsonObject> with(String key, List<JsonValue.JsonObject> ways) {
        return ways.stream().filter(way -> way.members().containsKey(key)).findFirst();
    }

    /** Words that differ in capital letters only are one. */
    private static List<String> words(List<JsonValue.JsonObject> ways) {
        TreeSet<String> seen = new TreeSet<>();
        return ways.stream().map(way -> way.members().get("enum")).filter(JsonValue.JsonArray.class::isInstance)
                .flatMap(words -> ((JsonValue.JsonArray) words).elements().stream()).filter(JsonValue.JsonText.class::isInstance)
                .map(word -> ((JsonValue.JsonText) word).text())
                .filter(word -> !word.equals(Section.NOT_LOOKED) && seen.add(word.toLowerCase(Locale.ROOT))).toList();
    }

    /** Few patterns serve all questions; trying every unit on each of them takes long. */
    private List<String> units(List<JsonValue.JsonObject> ways) {
        return unitsOf.computeIfAbsent(patterns(ways), QuestionCatalogue::units);
    }

    private static List<String> units(Set<String> patterns) {
        List<Pattern> compiled = patterns.stream().map(Pattern::compile).toList();
        return takes(compiled, ANY_TEXT) ? List.of()
                : Arrays.stream(Unit.values()).map(Unit::symbol).filter(symbol -> !symbol.isEmpty() && takes(compiled, "1 " + symbol)).toList();
    }

    private boolean isDay(List<JsonValue.JsonObject> ways) {
        return days.computeIfAbsent(patterns(ways), patterns -> {
            List<Pattern> compiled = patterns.stream().map(Pattern::compile).toList();
            return takes(compiled, ANY_DAY) && !takes(compiled, ANY_TEXT);
        });
    }

    private static Set<String> patterns(List<JsonValue.JsonObject> ways) {
        return ways.stream().map(way -> text(way, "pattern")).filter(pattern -> !pattern.isEmpty()).collect(Collectors.toSet());
    }

    private static boolean takes(List<Pattern> patterns, String text) {
        return patterns.stream().anyMatch(pattern -> pattern.matcher(text).find());
    }

    private static Optional<JsonValue.JsonObject> member(JsonValue.JsonObject of, String key) {
        return Optional.ofNullable(of.members().get(key)).filter(JsonValue.JsonObject.class::isInstance).map(JsonValue.JsonObject.class::cast);
    }

    /** Empty when there is no such text. */
    private static String text(JsonValue.JsonObject of, String key) {
        return of.members().get(key) instanceof JsonValue.JsonText text ? text.text() : "";
    }
}
