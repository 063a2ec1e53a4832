package org.loamlight.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import javax.measure.IncommensurableException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import systems.uom.ucum.format.UCUMFormat;

/** Held against the UCUM essence 2.2 as printed, and against an independent UCUM library (systems-ucum 2.2). */
class UnitTest {
    private static final double ROUNDING = 1e-14;
    private static final double[] VALUES = {0, 1, -1, 0.1, 2.54, 12, 37.5, 98.6, 1234.5678, -40, 1e6, 1e-6};

    private static Unit coded(String ucum) {
        return Arrays.stream(Unit.values()).filter(unit -> unit.ucum().equals(ucum)).findFirst().orElseThrow(() -> new AssertionError(ucum));
    }

    private static void assertSame(double expected, double found, String what) {
        assertEquals(expected, found, ROUNDING * Math.max(1, Math.abs(expected)), what);
    }

    // ---- the published table

    @ParameterizedTest(name = "{0} {1}")
    @CsvFileSource(resources = "/published/thermal-units.csv", numLinesToSkip = 1)
    void each_row_of_the_published_table_holds_exactly(String quantity, String ucum, String exact, String note) {
        Unit unit = coded(ucum);
        switch (quantity) {
            case "Fahrenheit" -> {
                assertEquals("C = (F-32)*5/9", exact);
                assertEquals(35.0, unit.convert(new BigDecimal("95"), Unit.CELSIUS), note);
                assertEquals(273.15, unit.convert(new BigDecimal("32"), Unit.CELSIUS) + 273.15, note);
            }
            case "Celsius" -> assertEquals(95.0, unit.convert(new BigDecimal("35"), Unit.FAHRENHEIT), exact);
            case "temperature difference" -> assertEquals(1.8, Unit.CELSIUS.convertDifference(1, Unit.FAHRENHEIT), exact);
            case "watt" -> assertEquals(Dimension.POWER, unit.dimension(), exact);
            case "percent" -> assertEquals(Double.parseDouble(exact), unit.convert(BigDecimal.ONE, Unit.FRACTION));
            default -> assertEquals(amount(exact).doubleValue(), unit.convert(BigDecimal.ONE, unitOf(exact)), exact);
        }
    }

    private static BigDecimal amount(String text) {
        return new BigDecimal(text.split(" ")[0]);
    }

    private static Unit unitOf(String text) {
        return Unit.spelt(text.split(" ")[1]).orElseThrow();
    }

    @Test
    void the_notes_of_the_published_table_hold_too() {
        assertEquals(12.0, Unit.FOOT.convert(BigDecimal.ONE, Unit.INCH));
        assertEquals(231 * 2.54 * 2.54 * 2.54 / 1000, Unit.US_GALLON.convert(BigDecimal.ONE, Unit.LITRE), 1e-15);
        assertEquals(7000 * 64.79891 / 1000, Unit.POUND.convert(BigDecimal.ONE, Unit.GRAM), 1e-12);
        assertEquals(16.0, Unit.POUND.convert(BigDecimal.ONE, Unit.OUNCE));
        assertEquals(128.0, Unit.US_GALLON.convert(BigDecimal.ONE, Unit.US_FLUID_OUNCE));
    }

    // ---- the UCUM library as oracle

    private static javax.measure.Unit<?> oracle(Unit unit) {
        return UCUMFormat.getInstance(UCUMFormat.Variant.CASE_SENSITIVE).parse(unit.ucum());
    }

    private static double converted(Unit from, Unit to, double value) {
        try {
            return oracle(from).getConverterToAny(oracle(to)).convert((Number) BigDecimal.valueOf(value)).doubleValue();
        } catch (IncommensurableException e) {
            throw new AssertionError(from + " to " + to, e);
        }
    }

    static Stream<Arguments> pairs() {
        return Arrays.stream(Unit.values()).flatMap(from -> Arrays.stream(Unit.values())
                .filter(to -> from.dimension() == to.dimension()).map(to -> Arguments.of(from, to)));
    }

    @ParameterizedTest(name = "{0} to {1}")
    @MethodSource("pairs")
    void every_conversion_is_the_one_of_the_ucum_library(Unit from, Unit to) {
        for (double value : VALUES) {
            assertEquals(converted(from, to, value), from.convert(value, to), 1e-12 * Math.max(1, Math.abs(converted(from, to, value))), value + " " + from);
        }
    }

    @ParameterizedTest(name = "{0} to {1}")
    @MethodSource("pairs")
    void there_and_back_is_where_it_began(Unit from, Unit to) {
        for (double value : VALUES) {
            assertSame(value, to.convert(from.convert(value, to), from), from + " " + to);
            assertSame(value, to.convertDifference(from.convertDifference(value, to), from), from + " " + to);
        }
    }

    @ParameterizedTest(name = "{0} to {1}")
    @MethodSource("pairs")
    void a_difference_is_the_difference_of_two_values_and_never_passes_the_offset(Unit from, Unit to) {
        for (double value : VALUES) {
            double twoValues = converted(from, to, 100 + value) - converted(from, to, 100);
            assertEquals(twoValues, from.convertDifference(value, to), 1e-9 * Math.max(1, Math.abs(value)), value + " " + from);
            assertEquals(0, from.convertDifference(0, to));
        }
    }

    @Test
    void one_degree_fahrenheit_more_or_less_is_five_ninths_of_a_kelvin() {
        assertEquals(5.0 / 9, Unit.FAHRENHEIT.convertDifference(1, Unit.CELSIUS));
        assertEquals(-17.22222222222222, Unit.FAHRENHEIT.convert(1.0, Unit.CELSIUS), 1e-13);
        assertEquals(-40, Unit.FAHRENHEIT.convert(-40.0, Unit.CELSIUS));
    }

    @Test
    void units_without_a_common_measure_do_not_convert_and_the_message_names_both() {
        for (Unit from : Unit.values()) {
            for (Unit to : Unit.values()) {
                if (from.dimension() != to.dimension()) {
                    String message = assertThrows(IllegalArgumentException.class, () -> from.convert(BigDecimal.ONE, to)).getMessage();
                    assertTrue(message.contains(from.name()) && message.contains(to.name()), message);
                    assertThrows(IllegalArgumentException.class, () -> from.convertDifference(1, to));
                }
            }
        }
    }

    /** Seeded; to the last bit. */
    @ParameterizedTest(name = "{0} to {1}")
    @MethodSource("pairs")
    void a_factor_kept_ready_gives_the_same_double_as_the_division(Unit from, Unit to) {
        Random random = new Random(11);
        for (int i = 0; i < 500; i++) {
            double value = (random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(20) - 8);
            double expected = from == to ? value : from.divided(BigDecimal.valueOf(value), to).doubleValue();
            assertEquals(expected, from.convertDifference(value, to), () -> value + " " + from);
            double rounded = Math.rint(value * 100) / 100;
            assertEquals(from == to ? rounded : from.divided(BigDecimal.valueOf(rounded), to).doubleValue(), from.convertDifference(rounded, to), () -> rounded + " " + from);
        }
    }

    @Test
    void a_sum_of_tenths_is_rounded_once_at_the_end() {
        assertEquals(3.0, Unit.MILLIMETRE.convert(new BigDecimal("30"), Unit.CENTIMETRE));
        assertEquals(0.3, Unit.MILLIMETRE.convert(3.0, Unit.CENTIMETRE));
        assertEquals(304.8, Unit.FOOT.convert(1.0, Unit.MILLIMETRE));
    }

    // ---- spellings

    @Test
    void every_spelling_belongs_to_one_unit_and_is_found() {
        Map<String, Unit> owners = new HashMap<>();
        for (Unit unit : Unit.values()) {
            unit.spellings().forEach(spelling -> assertEquals(null, owners.put(spelling, unit), spelling));
        }
        owners.forEach((spelling, unit) -> assertEquals(Optional.of(unit), Unit.spelt(spelling)));
        assertTrue(owners.size() > 60, "spellings: " + owners.size());
    }

    @Test
    void capitals_are_told_apart_and_nothing_is_no_unit() {
        assertEquals(List.of(Optional.empty(), Optional.empty(), Optional.empty()), Stream.of("CM", "", "furlong").map(Unit::spelt).toList());
    }

    @ParameterizedTest
    @EnumSource(Unit.class)
    void the_symbol_in_print_can_be_written_in_a_setup(Unit unit) {
        assertTrue(unit.symbol().isEmpty() || Unit.spelt(unit.symbol()).equals(Optional.of(unit)), unit.name());
    }
}
