package org.loamlight.evaluation;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.loamlight.setup.JsonPlace;
import org.loamlight.setup.JsonValue;

/**
 * The same example with a part of another kind under each name: a lamp stands in two lists where it heats too, and a stone may
 * bear the name of a snake. Whatever is found of the one must not be found of the other.
 */
final class Namesakes {
    private static final JsonPlace ADDED = new JsonPlace(0, 0, "");
    private static final List<String> SECTIONS = List.of("furnishings", "lamps", "heaters", "animals");

    private Namesakes() {
    }

    /** One for each section the namesakes may stand in. Where that section matters to the criterion, the example may end otherwise. */
    static Stream<CriterionExamples.Case> of(CriterionExamples.Case example) {
        return SECTIONS.stream().filter(section -> !section.equals("animals")).map(section -> in(section, example));
    }

    private static CriterionExamples.Case in(String section, CriterionExamples.Case example) {
        Map<String, JsonValue> members = new LinkedHashMap<>(example.setup().members());
        Set<String> names = new LinkedHashSet<>();
        SECTIONS.stream().filter(other -> !other.equals(section)).forEach(other -> names.addAll(names(members.get(other))));
        names.removeAll(names(members.get(section)));
        List<JsonValue> parts = new ArrayList<>(elements(members.get(section)));
        names.forEach(name -> parts.add(new JsonValue.JsonObject(ADDED, Map.of("name", new JsonValue.JsonText(ADDED, name)))));
        members.put(section, new JsonValue.JsonArray(ADDED, parts));
        return new CriterionExamples.Case(example.criterion(), example.name() + ", with namesakes among the " + section,
                new JsonValue.JsonObject(example.setup().at(), members), example.expect());
    }

    private static List<String> names(JsonValue section) {
        return elements(section).stream().filter(JsonValue.JsonObject.class::isInstance)
                .map(part -> CriterionExamples.string((JsonValue.JsonObject) part, "name")).filter(name -> !name.isEmpty()).toList();
    }

    private static List<JsonValue> elements(JsonValue section) {
        return section instanceof JsonValue.JsonArray array ? array.elements() : List.of();
    }
}
