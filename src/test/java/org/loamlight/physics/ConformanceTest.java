package org.loamlight.physics;

import static java.lang.Double.NEGATIVE_INFINITY;
import static java.lang.Double.NaN;
import static java.lang.Double.POSITIVE_INFINITY;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The worked examples of JCGM 106:2012 and its companions that need normal distributions only (table
 * thermal-conformity.csv; the global risks are in GlobalRiskTest). Each figure is held against both the printed value
 * and its recomputation to more digits.
 */
class ConformanceTest {

    /** Half a unit of the last of the six decimals that the recomputed column carries. */
    private static final double SIX_DECIMALS = 5e-7;
    private static final double TWO_DECIMALS = 0.005;

    private static final PublishedTable TABLE = PublishedTable.read("thermal-conformity.csv");

    @ParameterizedTest
    @ValueSource(strings = {"J1", "J2", "J4", "J5"})
    void coverage_factors_are_those_of_jcgm_106_table_1(String id) {
        PublishedTable.Row row = TABLE.row("id", id);
        double probability = row.numberAfter("case", "pc");
        double exact = row.number("exact_recomputed");
        assertEquals(row.number("published"), Conformance.coverageFactor(probability), TWO_DECIMALS);
        assertEquals(exact, Conformance.coverageFactor(probability), SIX_DECIMALS);
        assertEquals(probability, Conformance.probability(exact, 1, 0, POSITIVE_INFINITY), SIX_DECIMALS);
    }

    @Test
    void the_diode_of_jcgm_106_conforms_to_its_upper_limit_with_92_percent() {
        PublishedTable.Row row = TABLE.row("id", "J6");
        double probability = Conformance.probability(row.numberAfter("inputs", "y"), row.numberAfter("inputs", "u"),
                NEGATIVE_INFINITY, row.numberAfter("inputs", "T_U"));
        assertEquals(row.numberAfter("published", "pc"), probability, TWO_DECIMALS);
        assertEquals(row.numberAfter("exact_recomputed", "pc"), probability, SIX_DECIMALS);
    }

    @Test
    void the_container_of_jcgm_106_conforms_to_its_lower_limit_with_99_percent() {
        PublishedTable.Row row = TABLE.row("id", "J7");
        double probability = Conformance.probability(row.numberAfter("inputs", "y"), row.numberAfter("inputs", "u"),
                row.numberAfter("inputs", "T_L"), POSITIVE_INFINITY);
        assertEquals(row.numberAfter("published", "pc"), probability, TWO_DECIMALS);
        assertEquals(row.numberAfter("exact_recomputed", "pc"), probability, SIX_DECIMALS);
    }

    /** JCGM 106:2012 7.4, example on oil: y 13.6, u 1.8, tolerance 12.5 to 16.3; printed 0.66 from rounded terms. */
    @Test
    void the_oil_of_jcgm_106_conforms_to_both_limits_with_66_percent() {
        double probability = Conformance.probability(13.6, 1.8, 12.5, 16.3);
        assertEquals(0.66, probability, TWO_DECIMALS);
        assertEquals(0.662630, probability, SIX_DECIMALS);
    }

    @ParameterizedTest
    @ValueSource(strings = {"0.45", "0.44", "0.50"})
    void at_capability_index_1_only_the_middle_tenth_reaches_95_percent(String printed) {
        PublishedTable.Row row = TABLE.row("id", "J10");
        double share = Double.parseDouble(printed);
        double uncertainty = 1.0 / 4; // C_m = T / (4 u) = 1 with a tolerance T of 1, 7.6.2 eq. 12
        double probability = Conformance.probability(share, uncertainty, 0, 1);
        assertEquals(row.numberAfter("exact_recomputed", "pc(" + printed + ")"), probability, SIX_DECIMALS);
        assertEquals(probability, Conformance.probability(1 - share, uncertainty, 0, 1), 1e-15);
        boolean inBand = share >= row.numberAfter("inputs", "from") && share <= row.numberAfter("inputs", "to");
        assertEquals(inBand, probability >= row.number("published"));
    }

    /** J12: JCGM 106:2012 8.3.2.3, w = 2u. I2: ILAC-G8 4.2.2, the same rule for k = 2 and k = 1.96. */
    @Test
    void a_guard_band_of_the_expanded_uncertainty_leaves_a_false_accept_of_about_2_percent() {
        PublishedTable.Row two = TABLE.row("id", "J12");
        double atTwo = 100 * falseAccept(2);
        assertEquals(two.number("exact_recomputed"), atTwo, 5e-5);
        assertTrue(atTwo <= two.numberAfter("published", "at most"));
        PublishedTable.Row ilac = TABLE.row("id", "I2");
        assertEquals(ilac.number("exact_recomputed"), atTwo, 5e-4);
        assertEquals(ilac.numberAfter("exact_recomputed", "("), 100 * falseAccept(1.96), 5e-4);
        assertTrue(atTwo < ilac.numberAfter("published", "<"));
    }

    @Test
    void without_a_guard_band_half_of_the_values_at_the_limit_are_falsely_accepted() {
        assertEquals(TABLE.row("id", "I1").number("exact_recomputed"), falseAccept(0));
    }

    @Test
    void a_guard_band_of_0_83_of_the_expanded_uncertainty_keeps_false_accepts_below_5_percent() {
        PublishedTable.Row row = TABLE.row("id", "I3");
        double percent = 100 * falseAccept(2 * row.numberAfter("case", "w ="));
        assertEquals(row.number("exact_recomputed"), percent, 5e-4);
        assertTrue(percent < row.numberAfter("published", "<"));
    }

    @Test
    void eurachem_multipliers_leave_a_risk_of_5_and_1_percent() {
        PublishedTable.Row row = TABLE.row("id", "E1");
        assertEquals(row.number("published"), Conformance.coverageFactor(0.95), TWO_DECIMALS);
        assertEquals(row.number("exact_recomputed"), Conformance.coverageFactor(0.95), 5e-5);
        assertEquals(row.numberAfter("published", ";"), Conformance.coverageFactor(0.99), TWO_DECIMALS);
        assertEquals(row.numberAfter("exact_recomputed", ";"), Conformance.coverageFactor(0.99), 5e-5);
    }

    /** JCGM 106:2012 8.3.3.2, example 1: a fine only where the speed was above the limit with 99.9 %. */
    @Test
    void a_driver_is_fined_from_107_kilometres_per_hour_in_a_100_zone() {
        PublishedTable.Row row = TABLE.row("id", "J13");
        double limit = row.numberAfter("inputs", "v0");
        double exact = row.number("exact_recomputed");
        double uncertainty = row.numberAfter("inputs", "u/v") / 100 * exact;
        double wanted = Conformance.probability(row.numberAfter("inputs", "z"), 1, 0, POSITIVE_INFINITY);
        assertEquals(wanted, Conformance.probability(exact, uncertainty, limit, POSITIVE_INFINITY), SIX_DECIMALS);
        assertEquals(exact, Conformance.lowerAcceptanceLimit(limit, uncertainty, wanted), 5e-5);
        assertEquals(row.number("published"), StrictMath.ceil(exact));
    }

    @Test
    void resistors_of_jcgm_106_conform_with_90_percent_before_any_is_measured() {
        PublishedTable.Row row = TABLE.row("id", "J15");
        double nominal = row.number("inputs");
        double tolerance = row.numberAfter("inputs", "+-");
        double probability = Conformance.probability(nominal, row.numberAfter("inputs", "u0"),
                nominal - tolerance, nominal + tolerance);
        assertEquals(row.numberAfter("published", "pc"), probability, TWO_DECIMALS);
        assertEquals(row.number("exact_recomputed"), probability, SIX_DECIMALS);
    }

    @Test
    void a_half_width_becomes_a_standard_uncertainty_as_in_jcgm_100() {
        PublishedTable.Row row = TABLE.row("id", "G1");
        double uncertainty = Conformance.fromHalfWidth(row.numberAfter("inputs", "a"));
        assertEquals(row.numberAfter("published", "u"), uncertainty, 0.005e-6);
        assertEquals(row.numberAfter("exact_recomputed", "="), uncertainty, 5e-13);
        assertEquals(0, Conformance.fromHalfWidth(0));
    }

    /** JCGM 100:2008 H.1.4, end gauge: 25, 9.7, 2.9 and 16.6 nm give 32 nm (value from memory, not verified). */
    @Test
    void uncertainties_of_an_end_gauge_combine_to_32_nanometres() {
        assertEquals(32, Conformance.combine(25, 9.7, 2.9, 16.6), 0.5);
    }

    @Test
    void uncertainties_combine_by_the_root_of_their_squares() {
        assertEquals(0, Conformance.combine());
        assertEquals(7, Conformance.combine(7));
        assertEquals(13, Conformance.combine(3, 4, 12), 1e-14);
        assertEquals(5e200, Conformance.combine(3e200, 4e200), 1e186);
    }

    @Test
    void probability_is_the_area_of_the_normal_density_between_the_limits() {
        Random random = new Random(20120106);
        for (int i = 0; i < 200; i++) {
            double value = 60 * random.nextDouble() - 20;
            double uncertainty = 0.1 + 3 * random.nextDouble();
            double low = value + 8 * uncertainty * (random.nextDouble() - 0.7);
            double high = low + 8 * uncertainty * random.nextDouble();
            double area = Simpson.integral(x -> Simpson.normalDensity(x, value, uncertainty), low, high);
            double probability = Conformance.probability(value, uncertainty, low, high);
            assertEquals(area, probability, 1e-12 + 1e-9 * area);
        }
    }

    @Test
    void a_far_tail_keeps_its_digits() {
        double area = Simpson.integral(x -> Simpson.normalDensity(x, 0, 1), 10, 14);
        assertTrue(area > 0);
        assertEquals(area, Conformance.probability(0, 1, 10, POSITIVE_INFINITY), 1e-9 * area);
        assertEquals(area, Conformance.probability(0, 1, NEGATIVE_INFINITY, -10), 1e-9 * area);
    }

    @Test
    void both_sides_of_a_limit_add_up_to_one() {
        for (double value = -4; value <= 4; value += 0.25) {
            double above = Conformance.probability(value, 1.15, 0.5, POSITIVE_INFINITY);
            double below = Conformance.probability(value, 1.15, NEGATIVE_INFINITY, 0.5);
            assertEquals(1, above + below, 1e-15);
        }
        assertEquals(1, Conformance.probability(38, 1.15, NEGATIVE_INFINITY, POSITIVE_INFINITY));
    }

    @Test
    void an_acceptance_limit_conforms_with_exactly_the_wanted_probability() {
        for (double wanted : new double[] {0.001, 0.05, 0.5, 0.95, 0.999}) {
            double low = Conformance.lowerAcceptanceLimit(38, 1.15, wanted);
            double high = Conformance.upperAcceptanceLimit(43, 1.15, wanted);
            assertEquals(wanted, Conformance.probability(low, 1.15, 38, POSITIVE_INFINITY), 1e-12);
            assertEquals(wanted, Conformance.probability(high, 1.15, NEGATIVE_INFINITY, 43), 1e-12);
        }
        assertEquals(43, Conformance.upperAcceptanceLimit(43, 0, 0.95));
    }

    /** JCGM 106:2012 3.3.5: the limits belong to the tolerance interval. */
    @ParameterizedTest
    @CsvSource({"26, true", "32, true", "29, true", "25.99999999, true", "32.00000001, true",
        "25.9999999, false", "32.0000001, false", "0, false", "-29, false"})
    void without_uncertainty_the_limit_itself_conforms_and_a_hair_beyond_it(double value, boolean conforms) {
        assertEquals(conforms, Conformance.within(value, 26, 32));
        assertEquals(conforms ? 1 : 0, Conformance.probability(value, 0, 26, 32));
    }

    @Test
    void the_tolerance_widens_negative_limits_outward_and_a_limit_of_zero_not_at_all() {
        assertTrue(Conformance.within(-26 * (1 + 0.9e-9), -26, -20));
        assertFalse(Conformance.within(-26 * (1 + 1.1e-9), -26, -20));
        assertTrue(Conformance.within(-20 * (1 - 0.9e-9), -26, -20));
        assertFalse(Conformance.within(-20 * (1 - 1.1e-9), -26, -20));
        assertTrue(Conformance.within(0, 0, 1));
        assertFalse(Conformance.within(-1e-12, 0, 1));
    }

    @Test
    void limits_that_coincide_leave_one_conforming_value() {
        assertTrue(Conformance.within(12, 12, 12));
        assertFalse(Conformance.within(12.1, 12, 12));
        assertEquals(0, Conformance.probability(12, 0.1, 12, 12));
    }

    @Test
    void a_side_without_limit_accepts_everything() {
        assertTrue(Conformance.within(1e300, 26, POSITIVE_INFINITY));
        assertFalse(Conformance.within(25, 26, POSITIVE_INFINITY));
        assertTrue(Conformance.within(-1e300, NEGATIVE_INFINITY, 32));
        assertEquals(0, Conformance.probability(33, 0, NEGATIVE_INFINITY, 32));
    }

    @ParameterizedTest
    @CsvSource({"NaN, 1, 0, 1, value is NaN", "Infinity, 1, 0, 1, value is Infinity",
        "0.5, NaN, 0, 1, standardUncertainty is NaN", "0.5, -0.1, 0, 1, standardUncertainty is -0.1",
        "0.5, Infinity, 0, 1, standardUncertainty is Infinity", "0.5, 1, 2, 1, low 2.0 and high 1.0",
        "0.5, 0, 2, 1, low 2.0 and high 1.0", "0.5, 1, NaN, 1, low NaN and high 1.0",
        "0.5, 1, 0, NaN, low 0.0 and high NaN", "0.5, 1, Infinity, Infinity, low Infinity",
        "0.5, 1, -Infinity, -Infinity, high -Infinity"})
    void numbers_without_meaning_are_refused_by_name_and_value(
            double value, double uncertainty, double low, double high, String said) {
        IllegalArgumentException refusal = assertThrows(IllegalArgumentException.class,
                () -> Conformance.probability(value, uncertainty, low, high));
        assertTrue(refusal.getMessage().contains(said), refusal.getMessage());
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 1, -0.1, 1.1, NaN})
    void a_wanted_probability_of_none_or_all_is_refused(double probability) {
        assertThrows(IllegalArgumentException.class, () -> Conformance.coverageFactor(probability));
        assertThrows(IllegalArgumentException.class, () -> Conformance.lowerAcceptanceLimit(38, 1, probability));
        assertThrows(IllegalArgumentException.class, () -> Conformance.upperAcceptanceLimit(38, 1, probability));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1, NaN, POSITIVE_INFINITY})
    void an_uncertainty_that_cannot_be_is_refused_with_its_position(double uncertainty) {
        IllegalArgumentException refusal = assertThrows(IllegalArgumentException.class,
                () -> Conformance.combine(0.5, uncertainty));
        assertTrue(refusal.getMessage().startsWith("standardUncertainties[1] is " + uncertainty));
        assertThrows(IllegalArgumentException.class, () -> Conformance.fromHalfWidth(uncertainty));
        assertThrows(IllegalArgumentException.class, () -> Conformance.lowerAcceptanceLimit(38, uncertainty, 0.95));
    }

    /** The probability that a value right at the acceptance limit, a guard band below the upper limit, does not conform. */
    private static double falseAccept(double guardBandInUncertainties) {
        double uncertainty = 1.15;
        double acceptanceLimit = 43 - guardBandInUncertainties * uncertainty;
        return 1 - Conformance.probability(acceptanceLimit, uncertainty, NEGATIVE_INFINITY, 43);
    }
}
