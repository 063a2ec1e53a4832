package org.loamlight.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WordsTest {
    private static final List<String> KEYS = List.of("length", "depth", "height", "title", "on-at-night");

    @ParameterizedTest
    @CsvSource({"dimming thermostat", "Dimming Thermostat", "dimming-thermostat", "' dimming thermostat '", "DIMMING_THERMOSTAT"})
    void hyphens_capitals_and_spaces_around_make_no_other_word(String written) {
        assertEquals(Optional.of(Control.DIMMING_THERMOSTAT), Words.find(written, Control.class));
    }

    @Test
    void unknown_is_never_a_word() {
        assertEquals(Optional.empty(), Words.find("unknown", Control.class));
        assertEquals(List.of("thermostat", "dimming thermostat", "timer", "hand", "none"), Words.all(Control.class));
        assertEquals("yes, no", Words.allowed(Stated.class));
    }

    @ParameterizedTest
    @CsvSource({"lenght, length", "Length, length", "lengths, length", "on-at-nite, on-at-night", "heigth, height"})
    void a_slip_finds_the_word_that_was_meant(String found, String meant) {
        assertEquals(Optional.of(meant), Words.nearest(found, KEYS));
    }

    @Test
    void what_is_like_nothing_finds_nothing() {
        assertEquals(List.of(), Words.nearest("colour", KEYS, 3));
        assertEquals(List.of(), Words.nearest("", KEYS, 3));
        assertEquals(List.of(), Words.nearest("x".repeat(100_000), KEYS, 3));
        assertEquals("", Words.hint("colour", KEYS));
    }

    @Test
    void the_nearest_come_first_and_equals_by_name() {
        assertEquals(List.of("heaters", "healers"), Words.nearest("heaterz", List.of("dog", "healers", "heaters"), 3));
        assertEquals(List.of("bat", "cat"), Words.nearest("hat", List.of("cat", "bat"), 3));
        assertEquals(List.of("bat"), Words.nearest("hat", List.of("cat", "bat"), 1));
    }

    @Test
    void two_letters_in_five_may_differ_and_no_more() {
        assertEquals(Optional.of("abcde"), Words.nearest("abcxx", List.of("abcde")));
        assertEquals(Optional.empty(), Words.nearest("abxxx", List.of("abcde")));
        assertTrue(Words.hint("abcdx", List.of("abcde")).startsWith("did you mean \"abcde\"?"));
    }
}
