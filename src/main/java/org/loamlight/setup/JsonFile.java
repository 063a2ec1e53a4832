package org.loamlight.setup;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Reads one JSON document into located values. Duplicate keys are reported and reading goes on; a syntax error ends it. */
public final class JsonFile {
    /** A described setup has a few kilobytes; five megabytes hold more than any club will ever write into one. */
    public static final int MOST_BYTES = 5_000_000;

    private static final int DEEPEST = 40;
    private static final int LONGEST_TEXT = 20_000;
    private static final int LONGEST_NUMBER = 40;
    private static final JsonFactory FACTORY = JsonFactory.builder()
            .streamReadConstraints(StreamReadConstraints.builder().maxNestingDepth(DEEPEST).maxStringLength(LONGEST_TEXT)
                    .maxNameLength(LONGEST_TEXT).maxNumberLength(LONGEST_NUMBER).maxDocumentLength(MOST_BYTES).build())
            .build();

    private final JsonParser parser;
    private final Problems problems;

    private JsonFile(JsonParser parser, Problems problems) {
        this.parser = parser;
        this.problems = problems;
    }

    /**
     * Reads the document.
     *
     * @param bytes    the whole file, UTF-8
     * @param problems takes up what is wrong but does not end the reading
     * @return the document's value
     * @throws ProblemsFound with everything found so far, when the file is no JSON document, too large or too deeply nested
     */
    public static JsonValue read(byte[] bytes, Problems problems) throws ProblemsFound {
        if (bytes.length > MOST_BYTES) {
            throw broken(problems, new JsonPlace(0, 0, ""), "the file has " + bytes.length + " bytes",
                    "at most " + MOST_BYTES + " bytes are read");
        }
        try (JsonParser parser = FACTORY.createParser(bytes)) {
            return new JsonFile(parser, problems).document();
        } catch (JsonProcessingException e) {
            throw broken(problems, place(e.getLocation(), ""), "this is not JSON: " + firstLine(e.getOriginalMessage()),
                    "mend the text at this place; the reading stopped here");
        } catch (IOException e) {
            throw broken(problems, new JsonPlace(0, 0, ""), "the text is not UTF-8: " + firstLine(String.valueOf(e.getMessage())),
                    "save the file as UTF-8 text");
        }
    }

    private JsonValue document() throws IOException, ProblemsFound {
        if (parser.nextToken() == null) {
            throw broken(problems, new JsonPlace(1, 1, ""), "the file is empty", "a setup is one JSON object, { ... }");
        }
        JsonValue value = value("");
        if (parser.nextToken() != null) {
            throw broken(problems, place(parser.currentTokenLocation(), ""), "there is text after the end of the document",
                    "remove what follows the last closing brace");
        }
        return value;
    }

    private JsonValue value(String path) throws IOException {
        JsonPlace at = place(parser.currentTokenLocation(), path);
        JsonToken token = parser.currentToken();
        return switch (token) {
            case START_OBJECT -> object(at);
            case START_ARRAY -> array(at);
            case VALUE_STRING -> new JsonValue.JsonText(at, parser.getText());
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> new JsonValue.JsonNumber(at, parser.getText());
            default -> new JsonValue.JsonWord(at, parser.getText());
        };
    }

    private JsonValue object(JsonPlace at) throws IOException {
        Map<String, JsonValue> members = new LinkedHashMap<>();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            String key = parser.currentName();
            String path = at.path().isEmpty() ? key : at.path() + "." + key;
            JsonPlace keyAt = place(parser.currentTokenLocation(), path);
            parser.nextToken();
            JsonValue earlier = members.putIfAbsent(key, value(path));
            if (earlier != null) {
                problems.add(keyAt, "the key is given twice, first in line " + earlier.at().line(), "keep one of the two");
            }
        }
        return new JsonValue.JsonObject(at, members);
    }

    private JsonValue array(JsonPlace at) throws IOException {
        List<JsonValue> elements = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            elements.add(value(at.path() + "[" + elements.size() + "]"));
        }
        return new JsonValue.JsonArray(at, elements);
    }

    private static JsonPlace place(JsonLocation location, String path) {
        return location == null ? new JsonPlace(0, 0, path)
                : new JsonPlace(Math.max(0, location.getLineNr()), Math.max(0, location.getColumnNr()), path);
    }

    private static String firstLine(String message) {
        return message.lines().findFirst().orElse("unreadable").replaceAll("\\s*\\(.*?(from|in) `.*", "").strip();
    }

    private static ProblemsFound broken(Problems problems, JsonPlace at, String found, String allowed) {
        problems.add(at, found, allowed);
        try {
            problems.throwIfAny();
        } catch (ProblemsFound e) {
            return e;
        }
        throw new IllegalStateException("a problem was just added");
    }
}
