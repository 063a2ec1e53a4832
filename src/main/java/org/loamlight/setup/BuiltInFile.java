package org.loamlight.setup;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.function.Function;

/** A JSON file that is part of the program: if it cannot be read, the program is broken. */
public final class BuiltInFile {
    private static final String FOLDER = "/org/loamlight/";

    private BuiltInFile() {
    }

    /**
     * The file as a reader understands it; the reader says what it did not ask for.
     *
     * @param name   of the file
     * @param source where the project keeps it, for messages
     * @throws IllegalStateException naming everything wrong with it
     */
    public static <T> T read(String name, String source, Function<Section, T> reader) {
        return whole(name, source, (value, problems) -> reader.apply(Section.document(value, problems, new HashMap<>())));
    }

    /** The file as it is written. */
    static JsonValue.JsonObject document(String name, String source) {
        return whole(name, source, (value, problems) -> (JsonValue.JsonObject) value);
    }

    private interface Reader<T> {
        T read(JsonValue value, Problems problems);
    }

    private static <T> T whole(String name, String source, Reader<T> reader) {
        Problems problems = new Problems(source);
        try (InputStream file = BuiltInFile.class.getResourceAsStream(FOLDER + name)) {
            T read = reader.read(JsonFile.read(file.readAllBytes(), problems), problems);
            problems.throwIfAny();
            return read;
        } catch (IOException e) {
            throw new UncheckedIOException(source + " in the program cannot be read", e);
        } catch (ProblemsFound e) {
            throw new IllegalStateException(source + " in the program is broken: " + e.getMessage(), e);
        }
    }
}
