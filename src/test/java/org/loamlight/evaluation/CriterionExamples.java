package org.loamlight.evaluation;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.loamlight.setup.JsonPlace;
import org.loamlight.setup.JsonValue;

/** The named cases beside each criterion. */
final class CriterionExamples {
    static final Path CRITERIA = Path.of("rules", "criteria");
    private static final JsonPlace ADDED = new JsonPlace(0, 0, "");

    private CriterionExamples() {
    }

    /** @param expect the expected findings of this criterion, each as its members */
    record Case(String criterion, String name, JsonValue.JsonObject setup, List<JsonValue.JsonObject> expect) {
        boolean is(String kind) {
            return name.startsWith(kind + ":");
        }

        @Override
        public String toString() {
            return criterion + " - " + name;
        }
    }

    static List<Case> all() {
        try (Stream<Path> files = Files.walk(CRITERIA)) {
            return files.filter(file -> file.endsWith("examples.json")).sorted().flatMap(file -> cases(file).stream()).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<Case> cases(Path file) {
        String criterion = file.getParent().getFileName().toString();
        List<Case> cases = new ArrayList<>();
        for (JsonValue element : ((JsonValue.JsonArray) BuiltIn.json(file)).elements()) {
            Map<String, JsonValue> members = ((JsonValue.JsonObject) element).members();
            List<JsonValue.JsonObject> expect = ((JsonValue.JsonArray) members.get("expect")).elements().stream()
                    .map(JsonValue.JsonObject.class::cast).toList();
            cases.add(new Case(criterion, ((JsonValue.JsonText) members.get("case")).text(), withHeader((JsonValue.JsonObject) members.get("setup")), expect));
        }
        return cases;
    }

    private static JsonValue.JsonObject withHeader(JsonValue.JsonObject setup) {
        Map<String, JsonValue> members = new LinkedHashMap<>(setup.members());
        members.putIfAbsent("format", new JsonValue.JsonNumber(ADDED, "1"));
        members.putIfAbsent("on", new JsonValue.JsonText(ADDED, "2026-11-02"));
        return new JsonValue.JsonObject(setup.at(), members);
    }

    /** JSON text of a value. */
    static String text(JsonValue value) {
        if (value instanceof JsonValue.JsonObject object) {
            List<String> members = new ArrayList<>();
            object.members().forEach((key, member) -> members.add(quoted(key) + ":" + text(member)));
            return "{" + String.join(",", members) + "}";
        }
        if (value instanceof JsonValue.JsonArray array) {
            return "[" + String.join(",", array.elements().stream().map(CriterionExamples::text).toList()) + "]";
        }
        if (value instanceof JsonValue.JsonText string) {
            return quoted(string.text());
        }
        return value instanceof JsonValue.JsonNumber number ? number.literal() : ((JsonValue.JsonWord) value).word();
    }

    private static String quoted(String text) {
        return '"' + text.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
    }

    static String string(JsonValue.JsonObject object, String key) {
        return object.members().get(key) instanceof JsonValue.JsonText text ? text.text() : "";
    }

    static List<String> strings(JsonValue.JsonObject object, String key) {
        return object.members().get(key) instanceof JsonValue.JsonArray array
                ? array.elements().stream().map(element -> ((JsonValue.JsonText) element).text()).toList() : List.of();
    }

}
