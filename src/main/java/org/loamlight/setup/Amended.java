package org.loamlight.setup;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/** A described setup with one answer changed. Paths name repeated parts by their names, as {@link Told} does: {@code heaters[basking lamp].guard}. */
public final class Amended {
    private static final String NAME = "name";

    private Amended() {
    }

    /**
     * The same setup with another answer; one that was not given yet is added.
     *
     * @param path of the answer; its parts that repeat must be there
     * @return empty when the setup has no part of that name, or something else stands where the path leads through
     */
    public static Optional<JsonValue.JsonObject> with(JsonValue.JsonObject setup, String path, JsonValue answer) {
        for (Map.Entry<String, JsonValue> member : setup.members().entrySet()) {
            String key = member.getKey();
            if (path.equals(key)) {
                return Optional.of(replaced(setup, key, answer));
            }
            if (path.startsWith(key + ".") && member.getValue() instanceof JsonValue.JsonObject inner) {
                return with(inner, path.substring(key.length() + 1), answer).map(changed -> replaced(setup, key, changed));
            }
            if (path.startsWith(key + "[") && member.getValue() instanceof JsonValue.JsonArray list) {
                return inList(list, path.substring(key.length()), answer).map(changed -> replaced(setup, key, changed));
            }
        }
        return isSaidElsewhere(setup, path) ? Optional.empty() : added(setup, path, answer);
    }

    /** The same setup with one more element in a list; a list that was not given yet is begun. */
    public static Optional<JsonValue.JsonObject> withElement(JsonValue.JsonObject setup, String list, JsonValue element) {
        List<JsonValue> elements = new ArrayList<>();
        if (at(setup, list).orElse(null) instanceof JsonValue.JsonArray given) {
            elements.addAll(given.elements());
        }
        elements.add(element);
        return with(setup, list, new JsonValue.JsonArray(element.at(), elements));
    }

    /** What a path leads to; empty where it leads to nothing. */
    public static Optional<JsonValue> at(JsonValue.JsonObject setup, String path) {
        for (Map.Entry<String, JsonValue> member : setup.members().entrySet()) {
            String key = member.getKey();
            if (path.equals(key)) {
                return Optional.of(member.getValue());
            }
            if (path.startsWith(key + ".") && member.getValue() instanceof JsonValue.JsonObject inner) {
                return at(inner, path.substring(key.length() + 1));
            }
            if (path.startsWith(key + "[") && member.getValue() instanceof JsonValue.JsonArray list) {
                String rest = path.substring(key.length());
                return element(list, rest).flatMap(index -> at((JsonValue.JsonObject) list.elements().get(index), behind(list, index, rest)));
            }
        }
        return Optional.empty();
    }

    private static Optional<JsonValue.JsonArray> inList(JsonValue.JsonArray list, String rest, JsonValue answer) {
        Optional<Integer> index = element(list, rest);
        return index.flatMap(i -> with((JsonValue.JsonObject) list.elements().get(i), behind(list, i, rest), answer)).map(changed -> {
            List<JsonValue> elements = new ArrayList<>(list.elements());
            elements.set(index.orElseThrow(), changed);
            return new JsonValue.JsonArray(list.at(), elements);
        });
    }

    /** Which element "[basking lamp].guard" means: of several whose names fit, as "a" and "a].b" may, the one with the longest. */
    private static Optional<Integer> element(JsonValue.JsonArray list, String rest) {
        return IntStream.range(0, list.elements().size()).boxed()
                .filter(i -> list.elements().get(i) instanceof JsonValue.JsonObject && rest.startsWith(named(list, i)))
                .max(Comparator.comparingInt(i -> named(list, i).length()));
    }

    private static String named(JsonValue.JsonArray list, int index) {
        JsonValue name = ((JsonValue.JsonObject) list.elements().get(index)).members().get(NAME);
        return "[" + (name instanceof JsonValue.JsonText text ? text.text().strip() : "") + "].";
    }

    private static String behind(JsonValue.JsonArray list, int index, String rest) {
        return rest.substring(named(list, index).length());
    }

    /** Whether a word such as "not looked" stands where the path leads through a part that is not there. */
    private static boolean isSaidElsewhere(JsonValue.JsonObject setup, String path) {
        return path.indexOf('[') >= 0 || setup.members().entrySet().stream()
                .anyMatch(member -> path.startsWith(member.getKey() + ".") && !isNotLooked(member.getValue()));
    }

    private static boolean isNotLooked(JsonValue value) {
        return value instanceof JsonValue.JsonText text && text.text().strip().equals(Section.NOT_LOOKED);
    }

    private static Optional<JsonValue.JsonObject> added(JsonValue.JsonObject setup, String path, JsonValue answer) {
        List<String> keys = Arrays.asList(path.split("\\."));
        JsonValue value = answer;
        for (int i = keys.size() - 1; i > 0; i--) {
            value = new JsonValue.JsonObject(answer.at(), Map.of(keys.get(i), value));
        }
        return Optional.of(replaced(setup, keys.get(0), value));
    }

    private static JsonValue.JsonObject replaced(JsonValue.JsonObject object, String key, JsonValue value) {
        Map<String, JsonValue> members = new LinkedHashMap<>(object.members());
        members.put(key, value);
        return new JsonValue.JsonObject(object.at(), members, object.keys());
    }
}
