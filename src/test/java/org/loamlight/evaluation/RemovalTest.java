package org.loamlight.evaluation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.loamlight.criterion.Condition;
import org.loamlight.finding.Finding;
import org.loamlight.finding.Result;
import org.loamlight.setup.JsonValue;
import org.loamlight.setup.ProblemsFound;

/**
 * Takes every optional member out of every conforming example in turn. What the criterion reads must then be missed; what it
 * does not read must not matter. So {@code reads} can neither forget nor exaggerate.
 */
class RemovalTest {
    /** Answers that make a criterion ask at all: without them, or without the section they stand in, it does not apply. */
    private static final Map<Condition, String> MAKES_IT_ASK = Map.of(Condition.STAND_RATED, "enclosure.build.stand-carries",
            Condition.OUTLET_RATED, "electrical.outlet", Condition.TARIFF_TOLD, "electrical.tariff");
    private static final Set<String> HEADER = Set.of("format", "on", "animals", "readings[].of");
    private static final Set<String> NAMES = Set.of("name", "species");

    static List<CriterionExamples.Case> conforming() {
        return CriterionExamples.all().stream().filter(example -> example.is("conforming")).toList();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("conforming")
    void what_is_read_is_missed_and_nothing_else(CriterionExamples.Case example) throws ProblemsFound {
        List<String> wrong = new ArrayList<>();
        for (Removal removal : removals(example.setup(), "")) {
            boolean isRead = reads(example.criterion()).contains(removal.path);
            Set<Result> results = results(removal.remainder, example.criterion());
            if (makesItAsk(example.criterion(), removal.path) && results.isEmpty()) {
                continue;
            }
            if (isRead != results.contains(Result.NO_EVIDENCE) || !isRead && !results.equals(Set.of(Result.CONFORMITY))) {
                wrong.add("without " + removal.path + " the outcome is " + results + (isRead
                        ? ", not NO_EVIDENCE: state a Missing, put it into needs, take it out of reads, or leave it out of this example"
                        : ": it matters, so add it to reads"));
            }
        }
        assertEquals(List.of(), wrong, () -> "reads of criterion.md, " + example);
    }

    @Test
    void every_question_a_criterion_reads_is_taken_out_of_some_conforming_example() {
        Set<String> removed = conforming().stream().flatMap(example -> removals(example.setup(), "").stream()
                .map(removal -> example.criterion() + " " + removal.path)).collect(Collectors.toCollection(TreeSet::new));
        List<String> never = BuiltIn.KNOWLEDGE.criteria().values().stream()
                .flatMap(criterion -> criterion.reads().stream().map(path -> criterion.id() + " " + path))
                .filter(read -> !removed.contains(read)).toList();
        assertEquals(List.of(), never);
        assertTrue(removed.size() > 50, "removals: " + removed.size());
    }

    private static boolean makesItAsk(String criterion, String path) {
        return BuiltIn.KNOWLEDGE.criterion(criterion).appliesWhen().stream().map(MAKES_IT_ASK::get).filter(Objects::nonNull)
                .anyMatch(question -> question.equals(path) || question.startsWith(path + "."));
    }

    private static Set<String> reads(String criterion) {
        return Set.copyOf(BuiltIn.KNOWLEDGE.criterion(criterion).reads());
    }

    private static Set<Result> results(JsonValue setup, String criterion) throws ProblemsFound {
        return BuiltIn.audit(CriterionExamples.text(setup)).findings().stream()
                .filter(finding -> finding.criterion().id().equals(criterion)).map(Finding::result)
                .filter(result -> result != Result.NOT_APPLICABLE).collect(Collectors.toCollection(TreeSet::new));
    }

    /** @param path path of the member taken out, with [] for positions */
    private record Removal(String path, JsonValue remainder) {
    }

    private static List<Removal> removals(JsonValue value, String path) {
        List<Removal> removals = new ArrayList<>();
        if (value instanceof JsonValue.JsonObject object) {
            object.members().forEach((key, member) -> {
                String memberPath = path.isEmpty() ? key : path + "." + key;
                if (!NAMES.contains(key) && !HEADER.contains(memberPath)) {
                    removals.add(new Removal(memberPath, with(object, key, null)));
                }
                removals(member, memberPath).forEach(inner -> removals.add(new Removal(inner.path, with(object, key, inner.remainder))));
            });
        } else if (value instanceof JsonValue.JsonArray array) {
            for (int i = 0; i < array.elements().size(); i++) {
                int index = i;
                removals(array.elements().get(i), path + "[]")
                        .forEach(inner -> removals.add(new Removal(inner.path, with(array, index, inner.remainder))));
            }
        }
        return removals;
    }

    private static JsonValue with(JsonValue.JsonObject object, String key, JsonValue changed) {
        Map<String, JsonValue> members = new LinkedHashMap<>(object.members());
        if (changed == null) {
            members.remove(key);
        } else {
            members.put(key, changed);
        }
        return new JsonValue.JsonObject(object.at(), members);
    }

    private static JsonValue with(JsonValue.JsonArray array, int index, JsonValue changed) {
        List<JsonValue> elements = new ArrayList<>(array.elements());
        elements.set(index, changed);
        return new JsonValue.JsonArray(array.at(), elements);
    }
}
