package org.loamlight.setup;

import java.util.List;
import java.util.Map;

/** A JSON value that knows where it stands, so that every complaint about it can say so. */
public sealed interface JsonValue {
    Located where();

    /** The place itself; worked out anew each time for a value that was read from a file. */
    default JsonPlace at() {
        return where().place();
    }

    /** The value as a person would quote it in a message, shortened. */
    String quoted();

    /**
     * @param members in document order; keys are unique
     * @param keys    where keys stand that do not stand beside their values, as those of a row in a sheet
     */
    record JsonObject(Located where, Map<String, JsonValue> members, Map<String, ? extends Located> keys) implements JsonValue {
        public JsonObject(Located where, Map<String, JsonValue> members) {
            this(where, members, Map.of());
        }

        /** Where a key stands; the object's own place when it has no such key. */
        JsonPlace keyAt(String key) {
            Located at = keys.get(key);
            JsonValue member = members.get(key);
            return at != null ? at.place() : member != null ? member.where().keyPlace() : at();
        }

        @Override
        public String quoted() {
            return "an object";
        }
    }

    record JsonArray(Located where, List<JsonValue> elements) implements JsonValue {
        public JsonArray {
            elements = List.copyOf(elements);
        }

        @Override
        public String quoted() {
            return "a list";
        }
    }

    record JsonText(Located where, String text) implements JsonValue {
        @Override
        public String quoted() {
            return Quoted.of(text);
        }
    }

    /** @param literal the number exactly as written */
    record JsonNumber(Located where, String literal) implements JsonValue {
        @Override
        public String quoted() {
            return "the number " + Quoted.plain(literal);
        }
    }

    /** {@code true}, {@code false} or {@code null}. */
    record JsonWord(Located where, String word) implements JsonValue {
        @Override
        public String quoted() {
            return word;
        }
    }
}
