package org.loamlight.build;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.loamlight.setup.JsonValue;

/**
 * Writes the knowledge file: one JSON document, its lines arranged so that a reader can take what it needs and leave the rest,
 * as the class KnowledgeLines of the program tells.
 */
final class KnowledgeWriter {
    private final StringBuilder document = new StringBuilder();

    KnowledgeWriter(Map<String, Object> head) throws IOException {
        document.append(open(head)).append("\n");
    }

    /** A member behind a list, on the line on which that ends. */
    KnowledgeWriter value(String key, Object value) throws IOException {
        document.append("],\"").append(key).append("\":").append(text(value)).append("\n");
        return this;
    }

    /**
     * A list of objects in two lines each, left open.
     *
     * @param later keys of the members that stand in the second line
     */
    KnowledgeWriter list(String key, List<? extends Map<?, ?>> elements, List<String> later) throws IOException {
        document.append(",\"").append(key).append("\":[\n");
        for (Iterator<? extends Map<?, ?>> each = elements.iterator(); each.hasNext();) {
            Map<?, ?> element = each.next();
            document.append(open(part(element, later, false))).append("\n,").append(text(part(element, later, true)).substring(1))
                    .append(each.hasNext() ? ",\n" : "\n");
        }
        return this;
    }

    byte[] file() {
        return document.append("}\n").toString().getBytes(StandardCharsets.UTF_8);
    }

    private static Map<Object, Object> part(Map<?, ?> element, List<String> later, boolean second) {
        Map<Object, Object> members = new LinkedHashMap<>();
        element.forEach((key, value) -> {
            if (later.contains(String.valueOf(key)) == second) {
                members.put(key, value);
            }
        });
        return members;
    }

    /** An object without the brace that closes it. */
    private static String open(Map<?, ?> object) throws IOException {
        String text = text(object);
        return text.substring(0, text.length() - 1);
    }

    /** Any value of maps, lists, texts and numbers as JSON. */
    static String text(Object value) throws IOException {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
            write(value, json);
        }
        return text.toString();
    }

    private static void write(Object value, JsonGenerator json) throws IOException {
        if (value instanceof Map<?, ?> map) {
            json.writeStartObject();
            for (Map.Entry<?, ?> member : map.entrySet()) {
                json.writeFieldName(String.valueOf(member.getKey()));
                write(member.getValue(), json);
            }
            json.writeEndObject();
        } else if (value instanceof List<?> list) {
            json.writeStartArray();
            for (Object element : list) {
                write(element, json);
            }
            json.writeEndArray();
        } else if (value instanceof JsonValue.JsonNumber number) {
            json.writeNumber(number.literal());
        } else if (value instanceof JsonValue.JsonWord word) {
            json.writeRawValue(word.word());
        } else {
            json.writeString(String.valueOf(value));
        }
    }
}
