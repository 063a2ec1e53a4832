package org.loamlight;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class GoldenFileTest {
    @Test
    void the_message_shows_the_first_line_that_differs_and_the_way_out() {
        String message = GoldenFile.difference(Path.of("docs", "page.md"), "one\ntwo\nthree\n", "one\n2\nthree\n");
        assertTrue(message.startsWith(Path.of("docs", "page.md") + " differs from what the program makes, first in line 2.\n- two\n"), message);
        assertTrue(message.contains("\n+ 2\n"), message);
        assertTrue(message.endsWith("mvn test -Dgolden=accept accepts it."), message);
    }

    @Test
    void a_file_that_is_absent_or_differs_fails_and_stays_and_an_equal_one_passes(@TempDir Path folder) throws IOException {
        String before = System.getProperty("golden");
        System.clearProperty("golden");
        try {
            Path file = folder.resolve("page.md");
            assertThrows(AssertionError.class, () -> GoldenFile.assertMatches(file, "new\n"));
            Files.writeString(file, "old\n");
            assertThrows(AssertionError.class, () -> GoldenFile.assertMatches(file, "new\n"));
            assertEquals("old\n", Files.readString(file));
            GoldenFile.assertMatches(file, "old\n");
        } finally {
            restore(before);
        }
    }

    @Test
    void an_accepted_change_is_written(@TempDir Path folder) throws IOException {
        String before = System.getProperty("golden");
        System.setProperty("golden", "accept");
        try {
            Path file = folder.resolve("deeper").resolve("page.md");
            GoldenFile.assertMatches(file, "new °\n");
            assertEquals("new °\n", Files.readString(file));
        } finally {
            restore(before);
        }
    }

    private static void restore(String before) {
        if (before == null) {
            System.clearProperty("golden");
        } else {
            System.setProperty("golden", before);
        }
    }
}
