package org.loamlight.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CellTextTest {
    /** The beginnings named by OWASP, CSV Injection, and their full-width forms. */
    @ParameterizedTest
    @ValueSource(strings = {"=", "+1", "-1", "@a", "\ta", "\ra", "\na", "\uFF1D", "\uFF0B", "\uFF0D", "\uFF20"})
    void beginnings_of_formulas_are_known(String text) {
        assertTrue(CellText.looksLikeFormula(text));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "a=1", "1-2", " =1", "'=1"})
    void other_text_is_left_alone(String text) {
        assertFalse(CellText.looksLikeFormula(text));
        assertEquals(text, CellText.of(text));
    }

    @Test
    void line_breaks_of_every_kind_become_line_feeds() {
        assertEquals("a\nb\nc\nd\ne", CellText.of("a\r\nb\rc\nd\u2028e"));
    }

    @Test
    void whole_pairs_stay_and_halves_are_marked() {
        assertEquals("\uD83E\uDD8E", CellText.of("\uD83E\uDD8E"));
        assertEquals("\uFFFDa\uFFFD", CellText.of("\uDD8Ea\uD83E"));
        assertEquals("\uFFFD", CellText.of("\u0085"));
    }

    /** ECMA-376-1, 22.9.2.19 ST_Xstring: _xHHHH_ stands for a character, _x005F_ for an underscore that begins no such group. */
    @ParameterizedTest
    @CsvSource({"_x0041_, _x005F_x0041_", "_x004_, _x004_", "a_x0000_b, a_x005F_x0000_b", "_x0041_x0042_, _x005F_x0041_x005F_x0042_"})
    void groups_that_would_be_read_as_a_character_are_escaped(String text, String written) {
        assertEquals(written, CellText.of(text));
    }

    @Test
    void text_is_cut_at_the_limit_of_a_cell_never_inside_a_pair() {
        assertEquals(CellText.MOST_CHARACTERS, CellText.of("x".repeat(CellText.MOST_CHARACTERS)).length());
        assertEquals("x".repeat(CellText.MOST_CHARACTERS), CellText.of("x".repeat(CellText.MOST_CHARACTERS)));
        String cut = CellText.of("\uD83E\uDD8E".repeat(20_000));
        assertTrue(cut.length() <= CellText.MOST_CHARACTERS);
        assertFalse(cut.codePoints().anyMatch(point -> Character.getType(point) == Character.SURROGATE));
        assertEquals("ab", CellText.shortened("ab\uD83E\uDD8E", 3));
    }
}
