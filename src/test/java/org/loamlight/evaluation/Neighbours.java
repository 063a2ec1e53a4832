package org.loamlight.evaluation;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.loamlight.setup.JsonPlace;
import org.loamlight.setup.JsonValue;

/**
 * Two examples of a criterion in one setup: animals live together, lamps hang side by side, and what is found of each is what was
 * found of it alone. Where a part of the second bears a name of the first it gets another.
 */
final class Neighbours {
    private static final JsonPlace ADDED = new JsonPlace(0, 0, "");
    private static final String OTHER = "other ";

    private final CriterionExamples.Case one;
    private final CriterionExamples.Case other;
    private final Set<String> renamed = new HashSet<>();

    private Neighbours(CriterionExamples.Case one, CriterionExamples.Case other) {
        this.one = one;
        this.other = other;
    }

    /** Each example beside each other that tells of parts, but for those that say different things of what there is only one of. */
    static Stream<CriterionExamples.Case> of(List<CriterionExamples.Case> examples) {
        List<CriterionExamples.Case> ofParts = examples.stream().filter(Neighbours::isOfParts).toList();
        return ofParts.stream().flatMap(one -> ofParts.stream().filter(other -> other != one)
                .map(other -> new Neighbours(one, other).together()).flatMap(Optional::stream));
    }

    private static boolean isOfParts(CriterionExamples.Case example) {
        return example.expect().stream().allMatch(finding -> CriterionExamples.string(finding, "subject").contains(":"));
    }

    private Optional<CriterionExamples.Case> together() {
        Map<String, JsonValue> members = new LinkedHashMap<>(one.setup().members());
        for (Map.Entry<String, JsonValue> member : other.setup().members().entrySet()) {
            JsonValue here = members.get(member.getKey());
            if (here instanceof JsonValue.JsonArray parts && member.getValue() instanceof JsonValue.JsonArray others) {
                members.put(member.getKey(), joined(parts, others));
            } else if (here != null && !CriterionExamples.text(here).equals(CriterionExamples.text(member.getValue()))) {
                return Optional.empty();
            } else {
                members.put(member.getKey(), member.getValue());
            }
        }
        List<JsonValue.JsonObject> expect = new ArrayList<>(one.expect());
        other.expect().forEach(finding -> expect.add((JsonValue.JsonObject) renamed(finding)));
        return Optional.of(new CriterionExamples.Case(one.criterion(), one.name() + "; beside it " + other.name(),
                new JsonValue.JsonObject(one.setup().at(), members), expect));
    }

    private JsonValue joined(JsonValue.JsonArray parts, JsonValue.JsonArray others) {
        List<JsonValue> joined = new ArrayList<>(parts.elements());
        Set<String> names = new HashSet<>(names(parts));
        for (JsonValue part : others.elements()) {
            if (part instanceof JsonValue.JsonObject object && names.contains(CriterionExamples.string(object, "name"))) {
                renamed.add(CriterionExamples.string(object, "name"));
                joined.add(named(object, OTHER + CriterionExamples.string(object, "name")));
            } else {
                joined.add(part);
            }
        }
        return new JsonValue.JsonArray(ADDED, joined);
    }

    private static List<String> names(JsonValue.JsonArray parts) {
        return parts.elements().stream().filter(JsonValue.JsonObject.class::isInstance)
                .map(part -> CriterionExamples.string((JsonValue.JsonObject) part, "name")).toList();
    }

    private static JsonValue named(JsonValue.JsonObject part, String name) {
        Map<String, JsonValue> members = new LinkedHashMap<>(part.members());
        members.put("name", new JsonValue.JsonText(ADDED, name));
        return new JsonValue.JsonObject(part.at(), members);
    }

    /** What is expected, with the new names in its subjects and paths. */
    private JsonValue renamed(JsonValue value) {
        if (value instanceof JsonValue.JsonObject object) {
            Map<String, JsonValue> members = new LinkedHashMap<>();
            object.members().forEach((key, member) -> members.put(key, renamed(member)));
            return new JsonValue.JsonObject(object.at(), members);
        }
        if (value instanceof JsonValue.JsonArray array) {
            return new JsonValue.JsonArray(array.at(), array.elements().stream().map(this::renamed).toList());
        }
        return value instanceof JsonValue.JsonText text ? new JsonValue.JsonText(text.at(), renamed(text.text())) : value;
    }

    private String renamed(String text) {
        String now = text;
        for (String name : renamed) {
            now = now.endsWith(":" + name) ? now.substring(0, now.length() - name.length()) + OTHER + name
                    : now.replace("[" + name + "]", "[" + OTHER + name + "]");
        }
        return now;
    }
}
