package org.loamlight.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class SourceTextTest {
    /** Characters of one to four bytes, and lines of which one is empty. */
    private static final String TEXT = "{\"a\": 1, \"\uD83E\uDD8E\": 2,\n\n \"é\": \"\uD83E\uDD8E€\", \"b\": 3}\r\n";

    @Test
    void columns_count_characters() throws SourceText.NotText {
        assertEquals(new JsonPlace(1, 12, ""), text().place(TEXT.indexOf("\": 2"), ""));
        assertEquals(new JsonPlace(3, 13, ""), text().place(TEXT.indexOf("\"b\""), ""));
    }

    @Test
    void a_place_is_the_same_whatever_was_asked_before() throws SourceText.NotText {
        List<Integer> offsets = new ArrayList<>(IntStream.rangeClosed(0, TEXT.length())
                .filter(at -> at == TEXT.length() || !Character.isLowSurrogate(TEXT.charAt(at))).boxed().toList());
        for (int round = 0; round < 20; round++) {
            SourceText asked = text();
            for (int offset : offsets) {
                assertEquals(text().place(offset, ""), asked.place(offset, ""), offset + " in " + offsets);
            }
            Collections.shuffle(offsets, new Random(round));
        }
    }

    private static SourceText text() throws SourceText.NotText {
        return SourceText.of(TEXT.getBytes(StandardCharsets.UTF_8));
    }
}
