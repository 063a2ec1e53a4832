package org.loamlight.setup;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.Map;

/** Writes values as a JSON document: two spaces for each level, line feeds, in the order of the members. */
public final class JsonPrinter {
    private static final DefaultIndenter INDENTER = new DefaultIndenter("  ", "\n");
    private static final JsonFactory FACTORY = new JsonFactory();

    private final JsonGenerator generator;

    private JsonPrinter(JsonGenerator generator) {
        this.generator = generator;
    }

    /** The document, with a line feed at its end. Reading it again gives the same values. */
    public static String print(JsonValue value) {
        StringWriter text = new StringWriter();
        try (JsonGenerator generator = FACTORY.createGenerator(text)) {
            Separators separators = Separators.createDefaultInstance().withObjectFieldValueSpacing(Separators.Spacing.AFTER);
            generator.setPrettyPrinter(new DefaultPrettyPrinter(separators).withObjectIndenter(INDENTER).withArrayIndenter(INDENTER));
            new JsonPrinter(generator).write(value);
        } catch (IOException e) {
            throw new UncheckedIOException("Nothing is written outside the memory here", e);
        }
        return text.append('\n').toString();
    }

    private void write(JsonValue value) throws IOException {
        if (value instanceof JsonValue.JsonObject object) {
            generator.writeStartObject();
            for (Map.Entry<String, JsonValue> member : object.members().entrySet()) {
                generator.writeFieldName(member.getKey());
                write(member.getValue());
            }
            generator.writeEndObject();
        } else if (value instanceof JsonValue.JsonArray array) {
            generator.writeStartArray();
            for (JsonValue element : array.elements()) {
                write(element);
            }
            generator.writeEndArray();
        } else if (value instanceof JsonValue.JsonText text) {
            generator.writeString(text.text());
        } else {
            generator.writeRawValue(value instanceof JsonValue.JsonNumber number ? number.literal() : ((JsonValue.JsonWord) value).word());
        }
    }
}
