package org.loamlight.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TextFitTest {
    /** By the Adobe Font Metrics of Helvetica: digit 556, i 222, W 944, space 278; with the reserve of 12 % in the class. */
    @ParameterizedTest
    @CsvSource({"0123456789, 12, 1", "0123456789, 11, 2", "iiiiiiiiii, 5, 1", "iiiiiiiiii, 4, 2", "WWWWW, 10, 1", "WWWWW, 9, 2",
        "00000 00000, 12, 1", "00000 00000, 11, 2", "00000 00000, 6, 2", "00000 00000, 5, 4"})
    void lines_follow_from_published_widths(String text, int width, int lines) {
        assertEquals(lines, TextFit.lines(text, width));
    }

    @Test
    void empty_text_takes_one_line_and_line_breaks_count() {
        assertEquals(1, TextFit.lines("", 10));
        assertEquals(3, TextFit.lines("a\n\nb", 10));
        assertEquals(2, TextFit.lines("a\n", 10));
    }

    @Test
    void a_wider_column_never_takes_more_lines() {
        String text = "Switch the heater off, let it cool, and fit a guard all round; Überwinterung \u6E29\u5EA6 \uD83E\uDD8E x".repeat(5);
        assertTrue(IntStream.range(1, 200).allMatch(width -> TextFit.lines(text, width) >= TextFit.lines(text, width + 1)));
        assertTrue(TextFit.lines(text, 1) > TextFit.lines(text, 200));
    }

    @Test
    void the_narrowest_column_ends_too() {
        assertEquals(4, TextFit.lines("\u6E29\u6E29\u6E29\u6E29", 1));
        assertEquals(3, TextFit.lines("WWW", 0));
    }
}
