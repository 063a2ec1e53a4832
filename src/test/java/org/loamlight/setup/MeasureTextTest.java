package org.loamlight.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.loamlight.quantity.Unit;

/**
 * Every way an answer may be written, and every way it may not. Expected values: 1 ft = 30.48 cm, 1 in = 2.54 cm, 1 lb = 453.59237 g
 * (international agreement of 1959), °C = (°F - 32) / 1.8; limits ±a give u = a / sqrt(3) (JCGM 100:2008, 4.3.7).
 */
class MeasureTextTest {
    private static final double EXACT = 1e-12;

    private static Measure read(String text, Answer answer) throws MeasureText.NoMeasure {
        return MeasureText.read(text, answer, Instrument.UNKNOWN);
    }

    /** The ±a behind a measure: what the standard uncertainty was made from. */
    private static double halfWidth(Measure measure) {
        return measure.standardUncertainty() * Math.sqrt(3);
    }

    private static MeasureText.NoMeasure refused(String text, Answer answer) {
        return assertThrows(MeasureText.NoMeasure.class, () -> read(text, answer), text);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', value = {
        "120 cm | SIZE | 120", "120cm | SIZE | 120", "  120   cm  | SIZE | 120", "1.2 m | SIZE | 120", "1200 mm | SIZE | 120", "+120 cm | SIZE | 120",
        "4 ft | SIZE | 121.92", "4' | SIZE | 121.92", "4′ | SIZE | 121.92", "4 feet | SIZE | 121.92", "48 in | SIZE | 121.92", "48\" | SIZE | 121.92",
        "4 ft 2 in | SIZE | 127", "4ft2in | SIZE | 127", "4' 2\" | SIZE | 127", "4′2″ | SIZE | 127", "4 feet 2.5 inches | SIZE | 128.27",
        "4’ 2” | SIZE | 127", "0 ft 6 in | SIZE | 15.24", "1.2e2 cm | SIZE | 120", "12e-1 m | SIZE | 120", "1200000e-3 mm | SIZE | 120",
        "14 mm | GAP | 14", "0.5 in | GAP | 12.7", "0 mm | GAP | 0", "540 g | BODY_MASS | 540", "1 lb 4 oz | BODY_MASS | 566.9904625",
        "13 oz | BODY_MASS | 368.543800625", "2.4 kg | THING_MASS | 2.4", "24 °C | TEMPERATURE | 24", "24 C | TEMPERATURE | 24",
        "24°C | TEMPERATURE | 24", "24 ° C | TEMPERATURE | 24", "24 ℃ | TEMPERATURE | 24", "24 ºC | TEMPERATURE | 24", "95 °F | TEMPERATURE | 35",
        "95 F | TEMPERATURE | 35", "95 ℉ | TEMPERATURE | 35", "95 deg F | TEMPERATURE | 35", "-5 °C | TEMPERATURE | -5", "−5 °C | TEMPERATURE | -5",
        "-40 °F | TEMPERATURE | -40", "55 % | HUMIDITY | 55", "55% | HUMIDITY | 55", "55 percent | HUMIDITY | 55", "3.1 | UV_INDEX | 3.1",
        "3.1 UVI | UV_INDEX | 3.1", "0 | UV_INDEX | 0", "24 W | POWER | 24", "100 watts | POWER | 100", "2 d | INTERVAL | 2", "every 2 d | INTERVAL | 2",
        "every 2 days | INTERVAL | 2", "Every 2 d | INTERVAL | 2", "daily | INTERVAL | 1", "Daily | INTERVAL | 1", "every day | INTERVAL | 1",
        "weekly | INTERVAL | 7", "every week | INTERVAL | 7", "1 wk | INTERVAL | 7", "every other day | INTERVAL | 2", "twice a week | INTERVAL | 3.5",
        "twice a day | INTERVAL | 0.5", "36 h | INTERVAL | 1.5", "never | INTERVAL | 3700"})
    void a_value_may_be_written_like_this(String text, Answer answer, double expected) throws MeasureText.NoMeasure {
        Measure measure = read(text, answer);
        assertEquals(expected, measure.value(), EXACT * Math.max(1, Math.abs(expected)));
        assertEquals(answer.unit(), measure.unit());
        assertTrue(measure.standardUncertainty() > 0, "a value without a stated ± is never exact");
    }

    @ParameterizedTest
    @ValueSource(strings = {"118\u00A0cm", "118\u202Fcm", "118\u2009cm", "\u00A0118 cm\u00A0", "118\tcm"})
    void spaces_that_word_processors_put_in_are_spaces(String text) throws MeasureText.NoMeasure {
        assertEquals(118, read(text, Answer.SIZE).value());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', value = {
        "118 cm ± 5 cm | SIZE | 118 | 5", "118 cm±5cm | SIZE | 118 | 5", "118 cm +/- 5 cm | SIZE | 118 | 5", "118 ± 5 cm | SIZE | 118 | 5",
        "118 cm ± 2 in | SIZE | 118 | 5.08", "4 ft 2 in ± 1 in | SIZE | 127 | 2.54", "100 cm ± 5 % | SIZE | 100 | 5", "31 °C ± 1 °C | TEMPERATURE | 31 | 1",
        "31 °C ± 1 K | TEMPERATURE | 31 | 1", "31 °C ± 1.8 °F | TEMPERATURE | 31 | 1", "95 °F ± 1.8 °F | TEMPERATURE | 35 | 1",
        "95 ± 1.8 °F | TEMPERATURE | 35 | 1", "55 % ± 5 % | HUMIDITY | 55 | 5", "55 ± 5 % | HUMIDITY | 55 | 5", "3.1 ± 10 % | UV_INDEX | 3.1 | 0.31",
        "3.1 ± 0.3 | UV_INDEX | 3.1 | 0.3", "3.1 UVI ± 0.3 UVI | UV_INDEX | 3.1 | 0.3", "every 3 d ± 1 d | INTERVAL | 3 | 1",
        "2.4 kg ± 100 g | THING_MASS | 2.4 | 0.1", "24 to 26 °C | TEMPERATURE | 25 | 1", "24-26 °C | TEMPERATURE | 25 | 1", "24 - 26 °C | TEMPERATURE | 25 | 1",
        "24–26 °C | TEMPERATURE | 25 | 1", "24 °C to 26 °C | TEMPERATURE | 25 | 1", "-5 to -3 °C | TEMPERATURE | -4 | 1", "−5 − −3 °C | TEMPERATURE | -4 | 1",
        "75.2 °F to 26 °C | TEMPERATURE | 25 | 1", "4 ft to 4 ft 2 in | SIZE | 124.46 | 2.54", "5 to 8 mm | GAP | 6.5 | 1.5", "2 to 4 | UV_INDEX | 3 | 1",
        "every 2 to 3 d | INTERVAL | 2.5 | 0.5", "50 to 60 % | HUMIDITY | 55 | 5"})
    void a_stated_plus_minus_and_a_range_are_limits(String text, Answer answer, double value, double halfWidth) throws MeasureText.NoMeasure {
        Measure measure = read(text, answer);
        assertEquals(value, measure.value(), 1e-9);
        assertEquals(halfWidth, halfWidth(measure), 1e-9);
    }

    @Test
    void one_degree_fahrenheit_of_uncertainty_is_five_ninths_of_a_kelvin_and_never_minus_seventeen() throws MeasureText.NoMeasure {
        assertEquals(5.0 / 9, halfWidth(read("78 °F ± 1 °F", Answer.TEMPERATURE)), 1e-12);
    }

    @Test
    void a_range_without_width_is_one_value_with_the_limits_of_its_kind() throws MeasureText.NoMeasure {
        assertEquals(read("24 °C", Answer.TEMPERATURE), read("24 to 24 °C", Answer.TEMPERATURE));
    }

    @Test
    void without_a_plus_minus_the_instrument_decides_and_without_an_instrument_the_coarsest() throws MeasureText.NoMeasure {
        assertEquals(1, halfWidth(MeasureText.read("24 °C", Answer.TEMPERATURE, Instrument.PROBE_THERMOMETER)), 1e-12);
        assertEquals(3, halfWidth(MeasureText.read("24 °C", Answer.TEMPERATURE, Instrument.UNKNOWN)), 1e-12);
        assertEquals(0.3 * 3.1, halfWidth(MeasureText.read("3.1", Answer.UV_INDEX, Instrument.UNKNOWN)), 1e-12);
        assertEquals(0.2, halfWidth(MeasureText.read("24 °C ± 0.2 °C", Answer.TEMPERATURE, Instrument.DIAL_THERMOMETER)), 1e-12);
    }

    @ParameterizedTest
    @EnumSource(Answer.class)
    void every_kind_of_answer_takes_its_own_example_and_every_unit_of_its_dimension(Answer answer) throws MeasureText.NoMeasure {
        String example = MeasureText.example(answer);
        assertTrue(read(example.substring(1, example.length() - 1), answer).isKnown());
        for (Unit unit : Unit.values()) {
            for (String spelling : unit.dimension() == answer.unit().dimension() ? unit.spellings() : List.<String>of()) {
                double inside = answer.unit().convert((answer.least() + answer.most()) / 2, unit);
                String text = String.format(Locale.ROOT, "%.3f %s", inside, spelling);
                assertEquals((answer.least() + answer.most()) / 2, read(text, answer).value(), answer.most() * 0.01, text);
            }
        }
    }

    /** Zeros at the end of a number change nothing, but one of more than nine digits is not read as nearly all are. */
    @ParameterizedTest
    @EnumSource(Answer.class)
    void the_short_way_of_reading_gives_the_same_to_the_last_digit_as_the_long_one(Answer answer) throws MeasureText.NoMeasure {
        for (Unit unit : Unit.values()) {
            for (String spelling : unit.dimension() == answer.unit().dimension() ? unit.spellings() : List.<String>of()) {
                double inside = answer.unit().convert(answer.least() + 0.37 * (answer.most() - answer.least()), unit);
                String number = String.format(Locale.ROOT, "%.2f", inside);
                assertEquals(read(number + "00000000 " + spelling, answer), read(number + " " + spelling, answer), number + " " + spelling);
            }
        }
    }

    @ParameterizedTest
    @EnumSource(Answer.class)
    void the_ends_of_what_is_possible_are_possible_and_a_hair_past_them_is_not(Answer answer) throws MeasureText.NoMeasure {
        String unit = " " + answer.unit().symbol();
        assertEquals(answer.least(), read(answer.least() + unit, answer).value());
        assertEquals(answer.most(), read(answer.most() + unit, answer).value());
        assertTrue(refused(answer.least() - 0.001 + unit, answer).getMessage().endsWith("cannot be"));
        assertTrue(refused(answer.most() + 0.001 + unit, answer).getMessage().endsWith("cannot be"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', value = {
        "120 | SIZE | \"120\" has no unit | add one of mm, cm, m, in, ft",
        "120 kg | SIZE | the unit \"kg\" is not one for this | use one of mm, cm, m, in, ft",
        "120 CM | SIZE | the unit \"CM\" is not one for this | did you mean \"cm\"? use one of mm, cm, m, in, ft",
        "24 w | POWER | the unit \"w\" is not one for this | did you mean \"W\"? use one of W",
        "24 K | TEMPERATURE | the unit \"K\" is not one for this | use one of °C, °F",
        "24 | TEMPERATURE | \"24\" has no unit | add one of °C, °F",
        "24 ± 1 | TEMPERATURE | \"24\" has no unit | add one of °C, °F",
        "24 °C ± 1 | TEMPERATURE | \"1\" has no unit | add one of °C, °F",
        "24 to 26 | TEMPERATURE | \"26\" has no unit | add one of °C, °F",
        "1,5 m | SIZE | \"1,5 m\" is no measured value | write a decimal point, not a comma, such as \"12 cm\", or \"not looked\"",
        "1.5.2 m | SIZE | \"1.5.2 m\" is no measured value | write a number and its unit, such as \"12 cm\", or \"not looked\"",
        ".5 m | SIZE | \".5 m\" is no measured value | write a number and its unit, such as \"12 cm\", or \"not looked\"",
        "about 120 cm | SIZE | \"about 120 cm\" is no measured value | write a number and its unit, such as \"12 cm\", or \"not looked\"",
        "cm | SIZE | \"cm\" is no measured value | write a number and its unit, such as \"12 cm\", or \"not looked\"",
        "strong | UV_INDEX | \"strong\" is no measured value | write a number, such as \"3.1\", or \"not looked\"",
        "NaN cm | SIZE | \"NaN cm\" is no measured value | write a number and its unit, such as \"12 cm\", or \"not looked\"",
        "Infinity | UV_INDEX | \"Infinity\" is no measured value | write a number, such as \"3.1\", or \"not looked\"",
        "every 2 cm | SIZE | \"every 2 cm\" is no measured value | write a number and its unit, such as \"12 cm\", or \"not looked\"",
        "daily | SIZE | \"daily\" is no measured value | write a number and its unit, such as \"12 cm\", or \"not looked\"",
        "every | INTERVAL | \"every\" is no measured value | write a number and its unit, such as \"12 d\", or \"not looked\"",
        "-5 cm | SIZE | \"-5 cm\" cannot be | it must lie between 1 and 1000 cm",
        "50 ft | SIZE | \"50 ft\" cannot be | it must lie between 1 and 1000 cm",
        "0 cm | SIZE | \"0 cm\" cannot be | it must lie between 1 and 1000 cm",
        "0 mm | HEAD_WIDTH | \"0 mm\" cannot be | it must lie between 0.5 and 500 mm",
        "101 % | HUMIDITY | \"101 %\" cannot be | it must lie between 0 and 100 %",
        "-0.1 | UV_INDEX | \"-0.1\" cannot be | it must lie between 0 and 500 UVI",
        "1e300 °C | TEMPERATURE | \"1e300 °C\" is no possible size | check the number",
        "1e999 °C | TEMPERATURE | \"1e999 °C\" is no possible size | check the number",
        "1e-300 m | SIZE | \"1e-300 m\" is no possible size | check the number",
        "1e9999999999 cm | SIZE | \"1e9999999999 cm\" is no measured value | write a number and its unit, such as \"12 cm\", or \"not looked\"",
        "26 to 24 °C | TEMPERATURE | \"26 to 24 °C\" runs from high to low | write the lower value first",
        "24 to 26 to 28 °C | TEMPERATURE | \"26 to 28 °C\" is no measured value | write a number and its unit, such as \"12 °C\", or \"not looked\"",
        "24 to °C | TEMPERATURE | \"°C\" is no measured value | write a number and its unit, such as \"12 °C\", or \"not looked\"",
        "31 °C ± 0 °C | TEMPERATURE | \"± 0 °C\" is no uncertainty | no instrument is exact; write how far it may be off, or leave out the ±",
        "31 °C ± -1 °C | TEMPERATURE | \"± -1 °C\" is no uncertainty | no instrument is exact; write how far it may be off, or leave out the ±",
        "31 °C ± 3 % | TEMPERATURE | \"± 3 %\" of a temperature says nothing | write it in °C or °F, such as \"± 1 °C\"",
        "31 °C ± 900 °C | TEMPERATURE | \"± 900 °C\" is wider than everything possible | check the number behind the ±",
        "31 °C ± 1 cm | TEMPERATURE | the unit \"cm\" is not one for this | use one of °C, °F",
        "31 °C ± 1 °C ± 1 °C | TEMPERATURE | \"1 °C ± 1 °C\" is no measured value | write a number and its unit, such as \"12 °C\", or \"not looked\"",
        "4 ft 14 in | SIZE | \"4 ft 14 in\" has 14 in | write less than 12 in beside ft",
        "2 lb 16 oz | BODY_MASS | \"2 lb 16 oz\" has 16 oz | write less than 16 oz beside lb",
        "4 ft 2 cm | SIZE | \"4 ft 2 cm\" is no measured value | write a number and its unit, such as \"12 cm\", or \"not looked\"",
        "4 ft 2 | SIZE | \"4 ft 2\" is no measured value | write a number and its unit, such as \"12 cm\", or \"not looked\""})
    void what_cannot_be_read_is_refused_with_the_way_out(String text, Answer answer, String found, String allowed) {
        MeasureText.NoMeasure refused = refused(text, answer);
        assertEquals(found, refused.getMessage());
        assertEquals(allowed, refused.allowed());
    }

    @Test
    void the_empty_text_is_no_measure_of_any_kind() {
        Arrays.stream(Answer.values()).forEach(answer -> assertEquals("\"\" is no measured value", refused("", answer).getMessage()));
    }

    @Test
    void a_message_holds_nothing_that_would_upset_a_terminal() {
        assertEquals("\"12 ?[31m cm\" is no measured value", refused("12 \u001B[31m cm", Answer.SIZE).getMessage());
        assertEquals("the unit \"?mc\" is not one for this", refused("12 \u202Emc", Answer.SIZE).getMessage());
    }

    @Test
    void a_hostile_length_is_refused_at_once() {
        for (String text : List.of("1" + " ".repeat(20_000) + "x", "1".repeat(20_000) + " cm", "1 cm " + "- ".repeat(9_000), "1 ".repeat(9_000))) {
            assertTimeoutPreemptively(Duration.ofSeconds(2), () -> refused(text, Answer.SIZE));
        }
    }
}
