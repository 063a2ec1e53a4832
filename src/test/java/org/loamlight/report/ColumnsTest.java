package org.loamlight.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class ColumnsTest {
    @Test
    void text_wraps_at_spaces_and_fills_each_line() {
        assertEquals(List.of("one two", "three", "four"), Columns.wrap("one  two\nthree four", 8));
        assertEquals(List.of(""), Columns.wrap("", 8));
        assertEquals(List.of("12345678", "9"), Columns.wrap("12345678 9", 8));
    }

    @Test
    void a_word_longer_than_the_line_is_cut_to_it() {
        assertEquals(List.of("a", "12345678", "90 b"), Columns.wrap("a 1234567890 b", 8));
    }

    @Test
    void a_number_stays_with_its_unit_and_its_uncertainty() {
        assertEquals(List.of("here it is", "29 °C ± 3 °C"), Columns.wrap("here it is 29 °C ± 3 °C", 14));
        assertEquals(List.of("every", "2 days"), Columns.wrap("every 2 days", 8));
        assertEquals(List.of("the 3 in", "between"), Columns.wrap("the 3 in between", 8));
    }

    // Wide letters: East Asian Width W of the Unicode Standard, annex 11.
    @Test
    void wide_letters_take_two_columns() {
        assertEquals(10, Columns.width("蛇の飼育箱"));
        assertEquals(List.of("蛇の飼育", "箱"), Columns.wrap("蛇の飼育箱", 8));
        assertEquals(List.of("蛇の", "飼"), Columns.wrap("蛇の飼", 5));
    }

    @Test
    void a_mark_stays_with_its_letter_and_a_pair_of_surrogates_together() {
        assertEquals(List.of("aaa", "e\u0301b"), Columns.wrap("aaae\u0301b", 4));
        assertEquals(List.of("aaa", "\uD83E\uDD8E"), Columns.wrap("aaa\uD83E\uDD8E", 4));
        assertEquals(3, Columns.wrap("e" + "\u0301".repeat(11), 4).size());
    }

    @Test
    void signs_that_turn_the_direction_are_left_out_and_every_kind_of_space_is_one() {
        assertEquals(List.of("abc def"), Columns.wrap("a\u202Ebc\u00A0\u2028\t def\u2069", 80));
    }
}
