package org.loamlight.setup;

import java.util.List;
import java.util.Map;

/** A JSON value that knows where it stands, so that every complaint about it can say so. */
public sealed interface JsonValue {
    JsonPlace at();

    /** The value as a person would quote it in a message, shortened. */
    String quoted();

    /**
     * @param members in document order; keys are unique
     * @param keys    where each key stands; empty for an object that was not read from a file
     */
    record JsonObject(JsonPlace at, Map<String, JsonValue> members, Map<String, JsonPlace> keys) implements JsonValue {
        public JsonObject(JsonPlace at, Map<String, JsonValue> members) {
            this(at, members, Map.of());
        }

        /** Where a key stands; the object's own place when it has no such key. */
        JsonPlace keyAt(String key) {
            return keys.getOrDefault(key, at);
        }

        @Override
        public String quoted() {
            return "an object";
        }
    }

    record JsonArray(JsonPlace at, List<JsonValue> elements) implements JsonValue {
        public JsonArray {
            elements = List.copyOf(elements);
        }

        @Override
        public String quoted() {
            return "a list";
        }
    }

    record JsonText(JsonPlace at, String text) implements JsonValue {
        @Override
        public String quoted() {
            return Quoted.of(text);
        }
    }

    /** @param literal the number exactly as written */
    record JsonNumber(JsonPlace at, String literal) implements JsonValue {
        @Override
        public String quoted() {
            return "the number " + Quoted.plain(literal);
        }
    }

    /** {@code true}, {@code false} or {@code null}. */
    record JsonWord(JsonPlace at, String word) implements JsonValue {
        @Override
        public String quoted() {
            return word;
        }
    }
}
