package org.loamlight.physics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class InfraredThermometerTest {

    /** Half a unit of the last decimal of the table, and a hair for the border. */
    private static final double TWO_DECIMALS = 0.00501;
    private static final double ROUND_TRIP = 1e-9;
    private static final double ROOM = 22;

    private static final InfraredThermometer USUAL = new InfraredThermometer(0.95, ROOM, InfraredThermometer.LONG_WAVES);

    static List<PublishedTable.Row> rows() {
        return PublishedTable.read("thermal-ir-check.csv").rows();
    }

    @Test
    void the_table_has_its_nine_rows() {
        assertEquals(9, rows().size());
    }

    /** The signal balance computed apart from this code; in the table the instrument knows what is mirrored. */
    @ParameterizedTest
    @MethodSource("rows")
    void readings_are_those_of_the_signal_balance(PublishedTable.Row row) {
        assertReading(row, InfraredThermometer.ALL_WAVES, "reading_n4_C");
        assertReading(row, InfraredThermometer.LONG_WAVES, "reading_n4.36_C");
    }

    private static void assertReading(PublishedTable.Row row, double exponent, String column) {
        double mirrored = row.number("T_reflected_C");
        InfraredThermometer instrument = new InfraredThermometer(row.number("eps_set"), mirrored, exponent);
        OptionalDouble reading = instrument.readingCelsius(row.number("T_true_C"), row.number("eps_true"), mirrored);
        assertEquals(row.number(column), reading.orElseThrow(), TWO_DECIMALS);
    }

    /**
     * From the reading back to the truth within 0.1 K; bare metal shows why it cannot be read: half a hundredth of a
     * kelvin, the rounding of the table, becomes a twentieth at an emissivity of 0.09.
     */
    @ParameterizedTest
    @MethodSource("rows")
    void the_surface_behind_each_reading_of_the_table_is_found_again(PublishedTable.Row row) {
        assertSurface(row, InfraredThermometer.ALL_WAVES, "reading_n4_C");
        assertSurface(row, InfraredThermometer.LONG_WAVES, "reading_n4.36_C");
    }

    private static void assertSurface(PublishedTable.Row row, double exponent, String column) {
        double mirrored = row.number("T_reflected_C");
        InfraredThermometer instrument = new InfraredThermometer(row.number("eps_set"), mirrored, exponent);
        OptionalDouble surface = instrument.surfaceCelsius(row.number(column), row.number("eps_true"), mirrored);
        assertEquals(row.number("T_true_C"), surface.orElseThrow(), 0.1);
    }

    /** Reference sheet of the table: the exponent matters by 0.02 K at most from an emissivity of 0.85 on. */
    @ParameterizedTest
    @CsvSource({"40, 0.85", "50, 0.9", "30, 0.97", "43, 0.9"})
    void the_exponent_hardly_matters_on_a_dull_surface(double surface, double emissivity) {
        InfraredThermometer total = new InfraredThermometer(0.95, ROOM, InfraredThermometer.ALL_WAVES);
        assertEquals(total.readingCelsius(surface, emissivity, ROOM).orElseThrow(),
                USUAL.readingCelsius(surface, emissivity, ROOM).orElseThrow(), 0.0201);
    }

    /** c2 = 14388 micrometre kelvin (CODATA), 11 micrometres, 300 K. */
    @Test
    void the_exponent_of_the_long_waves_is_that_of_wien_at_11_micrometres_and_300_kelvin() {
        assertEquals(14388.0 / (11 * 300), InfraredThermometer.LONG_WAVES, 0.0005);
    }

    /** Wien's law itself, exp(-c2 / (lambda T)) at 11 micrometres: how far the power of 4.36 is from it (K). */
    @ParameterizedTest
    @CsvSource({"30, 0.97, 0.1", "40, 0.9, 0.1", "40, 0.85, 0.1", "50, 0.9, 0.1", "50, 0.7, 0.3"})
    void the_power_law_gives_the_reading_of_wiens_law(double surface, double emissivity, double tolerance) {
        double seen = emissivity * wien(surface) + (1 - emissivity) * wien(ROOM);
        double asBlack = (seen - 0.05 * wien(ROOM)) / 0.95;
        double reading = -14388.0 / (11 * StrictMath.log(asBlack)) - 273.15;
        assertEquals(reading, USUAL.readingCelsius(surface, emissivity, ROOM).orElseThrow(), tolerance);
    }

    private static double wien(double celsius) {
        return StrictMath.exp(-14388.0 / (11 * (celsius + 273.15)));
    }

    @Test
    void a_hot_lamp_mirrored_in_the_surface_that_the_instrument_knows_nothing_of_reads_higher() {
        double unknown = USUAL.readingCelsius(40, 0.9, 60).orElseThrow();
        double known = new InfraredThermometer(0.95, 60, InfraredThermometer.LONG_WAVES).readingCelsius(40, 0.9, 60)
                .orElseThrow();
        assertEquals(43.15, unknown, TWO_DECIMALS);
        assertEquals(41.16, known, TWO_DECIMALS);
    }

    @Test
    void reading_and_surface_lead_back_to_each_other() {
        Random random = new Random(8_14);
        for (int i = 0; i < 5000; i++) {
            InfraredThermometer instrument = new InfraredThermometer(0.5 + random.nextDouble() / 2,
                    10 + 25 * random.nextDouble(), random.nextBoolean() ? 4 : 4.36);
            double truth = 10 + 60 * random.nextDouble();
            double emissivity = 0.05 + 0.95 * random.nextDouble();
            double mirrored = 5 + 60 * random.nextDouble();
            double reading = instrument.readingCelsius(truth, emissivity, mirrored).orElseThrow();
            assertEquals(truth, instrument.surfaceCelsius(reading, emissivity, mirrored).orElseThrow(), ROUND_TRIP);
        }
    }

    @Test
    void a_warmer_surface_never_reads_lower_and_a_duller_one_is_never_read_further_off() {
        Random random = new Random(95);
        for (int i = 0; i < 2000; i++) {
            double truth = ROOM + 40 * random.nextDouble();
            double emissivity = 0.05 + 0.9 * random.nextDouble();
            double reading = USUAL.readingCelsius(truth, emissivity, ROOM).orElseThrow();
            double warmer = USUAL.readingCelsius(truth + 1, emissivity, ROOM).orElseThrow();
            double duller = USUAL.readingCelsius(truth, emissivity + (0.95 - emissivity) / 2, ROOM).orElseThrow();
            assertTrue(warmer > reading, () -> "surface " + truth + ", emissivity " + emissivity);
            assertTrue(StrictMath.abs(truth - duller) <= StrictMath.abs(truth - reading) + ROUND_TRIP,
                    () -> "surface " + truth + ", emissivity " + emissivity);
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {-20, 0, 22, 43, 90})
    void where_all_is_equally_warm_every_surface_reads_right(double celsius) {
        InfraredThermometer instrument = new InfraredThermometer(0.95, celsius, InfraredThermometer.LONG_WAVES);
        assertEquals(celsius, instrument.readingCelsius(celsius, 0.3, celsius).orElseThrow(), ROUND_TRIP);
        assertEquals(celsius, instrument.surfaceCelsius(celsius, 0.3, celsius).orElseThrow(), ROUND_TRIP);
    }

    @Test
    void where_no_temperature_explains_the_signal_none_is_given() {
        // Nine tenths of a source at 90 degrees are mirrored: more than anything that reads 30 can send.
        assertEquals(OptionalDouble.empty(), USUAL.surfaceCelsius(30, 0.1, 90));
        // An instrument set to 0.1 takes nine tenths of a warm room off the signal of a surface in deep frost.
        InfraredThermometer shiny = new InfraredThermometer(0.1, 60, InfraredThermometer.ALL_WAVES);
        assertEquals(OptionalDouble.empty(), shiny.readingCelsius(-40, 1, ROOM));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -0.1, 1.000001, Double.NaN})
    void an_emissivity_that_cannot_be_is_refused_by_name_and_value(double emissivity) {
        refused("emissivitySetting is " + emissivity, () -> new InfraredThermometer(emissivity, ROOM, 4));
        refused("emissivity is " + emissivity, () -> USUAL.surfaceCelsius(30, emissivity, ROOM));
        refused("emissivity is " + emissivity, () -> USUAL.readingCelsius(30, emissivity, ROOM));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-273.15, -300, Double.NaN, Double.POSITIVE_INFINITY})
    void a_temperature_at_or_below_absolute_zero_is_refused_by_name_and_value(double celsius) {
        refused("assumedCelsius is " + celsius, () -> new InfraredThermometer(0.95, celsius, 4));
        refused("readingCelsius is " + celsius, () -> USUAL.surfaceCelsius(celsius, 0.9, ROOM));
        refused("reflectedCelsius is " + celsius, () -> USUAL.surfaceCelsius(30, 0.9, celsius));
        refused("surfaceCelsius is " + celsius, () -> USUAL.readingCelsius(celsius, 0.9, ROOM));
        refused("reflectedCelsius is " + celsius, () -> USUAL.readingCelsius(30, 0.9, celsius));
    }

    @Test
    void an_exponent_that_cannot_be_and_a_result_out_of_all_range_are_refused() {
        refused("exponent is 0.0", () -> new InfraredThermometer(0.95, ROOM, 0));
        refused("exponent is NaN", () -> new InfraredThermometer(0.95, ROOM, Double.NaN));
        refused("temperature of the balance is Infinity", () -> USUAL.surfaceCelsius(1e300, 1, ROOM));
    }

    private static void refused(String said, Runnable call) {
        String message = assertThrows(IllegalArgumentException.class, call::run).getMessage();
        assertTrue(message.startsWith(said), message);
    }
}
