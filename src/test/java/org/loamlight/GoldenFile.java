package org.loamlight;

import static org.junit.jupiter.api.Assertions.fail;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/**
 * A file that a test keeps in step with what the program makes. A change is looked at and accepted with
 * {@code mvn test -Dgolden=accept}, which writes it.
 */
public final class GoldenFile {
    private static final String ACCEPT = "accept";
    private static final int LINES_SHOWN = 5;

    private GoldenFile() {
    }

    /** Compares the file, UTF-8, with the expected text; a file that does not exist counts as empty. */
    public static void assertMatches(Path file, String made) {
        String kept = read(file);
        if (kept.equals(made)) {
            return;
        }
        if (ACCEPT.equals(System.getProperty("golden"))) {
            write(file, made);
            return;
        }
        fail(difference(file, kept, made));
    }

    /** What differs first, and the way out. */
    static String difference(Path file, String kept, String made) {
        List<String> keptLines = List.of(kept.split("\n", -1));
        List<String> madeLines = List.of(made.split("\n", -1));
        int first = 0;
        while (first < Math.min(keptLines.size(), madeLines.size()) && keptLines.get(first).equals(madeLines.get(first))) {
            first++;
        }
        return file + " differs from what the program makes, first in line " + (first + 1) + ".\n"
                + shown("- ", keptLines, first) + shown("+ ", madeLines, first)
                + "- stands in the file, + is made now. If the change is meant, mvn test -Dgolden=accept accepts it.";
    }

    private static String shown(String sign, List<String> lines, int first) {
        StringBuilder shown = new StringBuilder();
        lines.stream().skip(first).limit(LINES_SHOWN).forEach(line -> shown.append(sign).append(line).append('\n'));
        return shown.toString();
    }

    private static String read(Path file) {
        try {
            return Files.exists(file) ? Files.readString(file, StandardCharsets.UTF_8) : "";
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void write(Path file, String text) {
        try {
            Files.createDirectories(file.toAbsolutePath().getParent());
            Files.writeString(file, text, StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
