package org.loamlight.setup;

import java.util.List;
import java.util.Map;

/** A JSON value that knows where it stands, so that every complaint about it can say so. */
public sealed interface JsonValue {
    JsonPlace at();

    /** The value as a person would quote it in a message, shortened. */
    String quoted();

    /** @param members in document order; keys are unique */
    record JsonObject(JsonPlace at, Map<String, JsonValue> members) implements JsonValue {
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
        private static final int LONGEST_QUOTE = 60;

        @Override
        public String quoted() {
            String shown = text.length() <= LONGEST_QUOTE ? text : text.substring(0, LONGEST_QUOTE) + "...";
            return '"' + shown.replaceAll("\\p{Cntrl}", "?") + '"';
        }
    }

    /** @param literal the number exactly as written */
    record JsonNumber(JsonPlace at, String literal) implements JsonValue {
        @Override
        public String quoted() {
            return "the number " + literal;
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
