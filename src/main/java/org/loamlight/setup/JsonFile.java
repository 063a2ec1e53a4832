package org.loamlight.setup;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import java.io.IOException;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Reads one JSON document into located values. Duplicate keys are reported and reading goes on; a syntax error ends it. */
public final class JsonFile {
    /** A described setup has a few kilobytes; five megabytes hold more than any club will ever write into one. */
    public static final int MOST_BYTES = 5_000_000;

    private static final int DEEPEST = 40;
    /** Long texts, keys and numbers are taken as they stand: whoever asks for them says what is too long, at its place. */
    private static final JsonFactory FACTORY = JsonFactory.builder()
            .streamReadConstraints(StreamReadConstraints.builder().maxNestingDepth(DEEPEST).maxStringLength(MOST_BYTES)
                    .maxNameLength(MOST_BYTES).maxNumberLength(MOST_BYTES).maxDocumentLength(MOST_BYTES).build())
            .build();

    private final SourceText text;
    private final JsonParser parser;
    private final Problems problems;

    private JsonFile(SourceText text, JsonParser parser, Problems problems) {
        this.text = text;
        this.parser = parser;
        this.problems = problems;
    }

    /**
     * Reads the document.
     *
     * @param bytes    the whole file, UTF-8, with or without a byte order mark
     * @param problems takes up what is wrong but does not end the reading
     * @return the document's value
     * @throws ProblemsFound with everything found so far, when the file is no JSON document, too large or too deeply nested
     */
    public static JsonValue read(byte[] bytes, Problems problems) throws ProblemsFound {
        if (bytes.length > MOST_BYTES) {
            throw broken(problems, new JsonPlace(0, 0, ""), "the file is too large to be a setup",
                    "at most " + MOST_BYTES + " bytes are read; name another file");
        }
        try {
            return read(SourceText.of(bytes), problems);
        } catch (SourceText.NotText e) {
            throw broken(problems, e.at(), e.getMessage(), "name a JSON file, saved as UTF-8 text");
        }
    }

    /** SHA-256 of a file as results and knowledge name it, lower-case hexadecimal. */
    public static String sha256(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java platform has SHA-256", e);
        }
    }

    private static JsonValue read(SourceText text, Problems problems) throws ProblemsFound {
        try (JsonParser parser = text.parser(FACTORY)) {
            return new JsonFile(text, parser, problems).document();
        } catch (IOException e) {
            throw new IllegalStateException("A text in memory is read without a fault", e);
        }
    }

    private JsonValue document() throws IOException, ProblemsFound {
        JsonValue value;
        try {
            if (parser.nextToken() == null) {
                throw broken(problems, text.place(0, ""), "the file is empty", "a setup is one JSON object, { ... }");
            }
            value = value(InText.document(text, offsetOfToken()));
        } catch (JsonProcessingException e) {
            SyntaxSlip slip = SyntaxSlip.of(e, parser, text);
            throw broken(problems, text.place(slip.offset(), ""), "this is not JSON: " + slip.found(),
                    slip.allowed() + "; the reading stopped here");
        }
        requireEnd();
        return value;
    }

    private void requireEnd() throws IOException, ProblemsFound {
        long end = parser.currentLocation().getCharOffset();
        try {
            if (parser.nextToken() == null) {
                return;
            }
            end = parser.currentTokenLocation().getCharOffset();
        } catch (JsonProcessingException e) {
            end = text.skipSpace((int) end);
        }
        throw broken(problems, text.place(end, ""), "there is text after the end of the document",
                "remove what follows the last closing brace");
    }

    private JsonValue value(InText at) throws IOException {
        return switch (parser.currentToken()) {
            case START_OBJECT -> object(at);
            case START_ARRAY -> array(at);
            case VALUE_STRING -> new JsonValue.JsonText(at, parser.getText());
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> new JsonValue.JsonNumber(at, parser.getText());
            default -> new JsonValue.JsonWord(at, parser.getText());
        };
    }

    private JsonValue object(InText at) throws IOException {
        Map<String, JsonValue> members = new LinkedHashMap<>();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            String key = parser.currentName();
            parser.nextToken();
            InText valueAt = at.member(key, offsetOfToken());
            JsonValue earlier = members.putIfAbsent(key, value(valueAt));
            if (earlier != null) {
                problems.add(valueAt.keyPlace(), "the key is given twice, first in line " + earlier.where().keyPlace().line(), "keep one of the two");
            }
        }
        return new JsonValue.JsonObject(at, members);
    }

    private JsonValue array(InText at) throws IOException {
        List<JsonValue> elements = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            elements.add(value(at.element(elements.size(), offsetOfToken())));
        }
        return new JsonValue.JsonArray(at, elements);
    }

    private int offsetOfToken() {
        return (int) parser.currentTokenLocation().getCharOffset();
    }

    private static ProblemsFound broken(Problems problems, JsonPlace at, String found, String allowed) {
        problems.add(at, found, allowed);
        return problems.found();
    }
}
