package org.loamlight.review;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;

/**
 * Whose setup a number stands for: one line of the key to an anonymous review.
 *
 * @param file     where it lies
 * @param names    what stood there by what stands there now; empty for a file that cannot be read
 * @param problems what is wrong with the file; empty when it can be read
 */
record NameKey(int number, String file, Map<String, String> names, List<String> problems) {
    private static final JsonFactory FACTORY = new JsonFactory();

    /** What an anonymous setup is called. */
    static String setup(int number) {
        return "setup " + number;
    }

    /** What its file is called. */
    static String file(int number) {
        return "file " + number;
    }

    /** The line, with no line feed in it or at its end. */
    String line() {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = FACTORY.createGenerator(text)) {
            json.writeStartObject();
            json.writeStringField("setup", setup(number));
            json.writeStringField("file", file);
            json.writeObjectFieldStart("names");
            for (Map.Entry<String, String> name : names.entrySet()) {
                json.writeStringField(name.getKey(), name.getValue());
            }
            json.writeEndObject();
            json.writeArrayFieldStart("problems");
            for (String problem : problems) {
                json.writeString(problem);
            }
            json.writeEndArray();
            json.writeEndObject();
        } catch (IOException e) {
            throw new UncheckedIOException("A text in memory can always be written", e);
        }
        return text.toString();
    }
}
