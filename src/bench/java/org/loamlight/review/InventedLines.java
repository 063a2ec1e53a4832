package org.loamlight.review;

import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Pattern;

/** Writes invented setups as JSON Lines, however many; the same number gives the same line. */
public final class InventedLines {
    private static final Pattern INDENTED = Pattern.compile("\\R *");

    private InventedLines() {
    }

    /** @param arguments how many; file to write */
    public static void main(String[] arguments) throws IOException {
        int last = Integer.parseInt(arguments[0]);
        try (BufferedWriter lines = Files.newBufferedWriter(Path.of(arguments[1]))) {
            for (int number = 1; number <= last; number++) {
                lines.write(INDENTED.matcher(InventedSetup.somewhere(number)).replaceAll(" ").strip());
                lines.write('\n');
            }
        }
    }
}
