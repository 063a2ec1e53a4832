package org.loamlight.physics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class LightFieldTest {

    private static final double FOUR_DECIMALS = 5.001e-5;
    private static final double FIVE_DECIMALS = 5.001e-6;
    private static final double SIX_DECIMALS = 5.001e-7;

    static List<PublishedTable.Row> keitz() {
        return PublishedTable.read("light-keitz.csv").rows();
    }

    /** Health Physics Society, answer 11543: 25 % of the intensity at 1 m is left at 2 m, about 6 % at 4 m. */
    @Test
    void inverse_square_quarters_the_light_at_double_distance() {
        assertEquals(0.25, LightField.pointScale(1, 2));
        assertEquals(0.06, LightField.pointScale(1, 4), 0.005);
        assertEquals(16, LightField.pointScale(1.2, 0.3), 1e-12);
        assertEquals(1, LightField.pointScale(0.3, 0.3));
    }

    /**
     * Self-check table of Keitz' formula, computed apart from this code; the formula as in the lamp-output protocol,
     * Lawal, Dussert, Howarth et al., IUVA News 2017.
     */
    @ParameterizedTest
    @MethodSource("keitz")
    void a_tube_follows_the_table_of_keitz(PublishedTable.Row row) {
        double arcLength = 0.85;
        double distance = row.number("D_over_L") * arcLength;
        double factor = LightField.tubeFactor(distance, arcLength);
        assertEquals(row.number("alpha_deg"),
                StrictMath.toDegrees(LightField.halfAngleRadians(distance, arcLength)), FOUR_DECIMALS);
        assertEquals(row.number("E_x_D_x_L_over_P"), factor, SIX_DECIMALS);
        assertEquals(row.number("ratio_to_infinite_line_P_over_2piLD"), factor * 2 * StrictMath.PI, FIVE_DECIMALS);
        assertEquals(row.number("ratio_to_point_law_P_over_pi2D2"),
                factor * StrictMath.PI * StrictMath.PI * distance / arcLength, FIVE_DECIMALS);
        assertEquals(row.number("local_exponent_n"), LightField.localExponent(distance, arcLength), FOUR_DECIMALS);
        assertEquals(row.number("E_D_over_E_2D"),
                1 / LightField.tubeScale(distance, 2 * distance, arcLength), FOUR_DECIMALS);
    }

    /** IUVA protocol, footnote 1: at a distance of twice the arc length the lamp fills a field of view of +-14 degrees. */
    @Test
    void from_twice_its_length_a_tube_fills_14_degrees_to_either_side() {
        assertEquals(14, StrictMath.toDegrees(LightField.halfAngleRadians(2, 1)), 0.05);
    }

    /** The derivation itself: point emitters laid along the tube, each Lambertian about the axis, add up to Keitz. */
    @ParameterizedTest
    @ValueSource(doubles = {0.1, 0.3, 0.85, 3})
    void emitters_laid_along_the_tube_add_up_to_keitz(double distance) {
        double arcLength = 0.85;
        double perWatt = Simpson.integral(
                along -> emitterIrradiance(along, distance) / arcLength, -arcLength / 2, arcLength / 2);
        assertEquals(perWatt, LightField.tubeFactor(distance, arcLength) / (distance * arcLength), 1e-9 * perWatt);
    }

    @Test
    void right_at_the_tube_light_falls_with_the_distance_and_far_away_with_its_square() {
        double arcLength = 1.2;
        assertEquals(0.5, LightField.tubeScale(0.0005, 0.001, arcLength), 1e-6);
        assertEquals(1, LightField.localExponent(0.0005, arcLength), 1e-6);
        assertEquals(1 / (2 * StrictMath.PI), LightField.tubeFactor(0.0005, arcLength), 1e-6);
        assertEquals(0.25, LightField.tubeScale(1000, 2000, arcLength), 1e-6);
        assertEquals(LightField.POINT_EXPONENT, LightField.localExponent(1000, arcLength), 1e-5);
    }

    /** Near-field luminaire thesis (abstract): inverse square is acceptable from 5 times the largest source dimension. */
    @Test
    void from_5_times_its_length_a_tube_may_be_taken_as_a_point() {
        double arcLength = 0.55;
        for (double distance = 5 * arcLength; distance < 50; distance *= 1.3) {
            double ratio = LightField.tubeScale(distance, 2 * distance, arcLength)
                    / LightField.pointScale(distance, 2 * distance);
            assertEquals(1, ratio, 0.01);
        }
    }

    /** Bare tubes of three lengths, UVI 4 at 12 in, seen from 24 in: computed from Keitz apart from this code. */
    @ParameterizedTest
    @CsvSource({"0.55, 1.30", "0.85, 1.52", "1.15, 1.68"})
    void a_tube_keeps_more_than_the_quarter_that_inverse_square_gives(double arcLength, double index) {
        assertEquals(index, 4 * LightField.tubeScale(0.3048, 0.6096, arcLength), 0.005);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.05, 0.2, 0.5, 1.1, 4, 20})
    void the_local_exponent_is_the_slope_of_irradiance_on_logarithmic_axes(double distance) {
        double step = 1e-5;
        double near = distance * StrictMath.exp(-step);
        double far = distance * StrictMath.exp(step);
        double slope = -StrictMath.log(LightField.tubeScale(near, far, 0.85)) / (2 * step);
        assertEquals(slope, LightField.localExponent(distance, 0.85), 1e-8);
    }

    @Test
    void scaling_there_and_back_changes_nothing_and_two_steps_make_one() {
        double there = LightField.tubeScale(0.3, 0.7, 0.85);
        assertEquals(1, there * LightField.tubeScale(0.7, 0.3, 0.85), 1e-14);
        assertEquals(there, LightField.tubeScale(0.3, 0.4, 0.85) * LightField.tubeScale(0.4, 0.7, 0.85), 1e-14);
    }

    /**
     * Measured by a keeper with a hand meter (series A: UVI and broadband UVB of a bulb with a reflector at about 10 and
     * 20 cm): exponents of 1.55 and 1.58. Taking it as a point leaves out a quarter and more of the light at 20 cm, so a
     * scaled reading close to a reflector bulb is a low estimate going away from it and a high one going closer.
     */
    @ParameterizedTest
    @CsvSource({"UVI, 1.55", "broadband UVB, 1.58"})
    void a_reflector_bulb_close_up_keeps_more_light_than_a_point(String quantity, double exponent) {
        List<PublishedTable.Row> pair = PublishedTable.read("light-uvi-distance.csv").rows().stream()
                .filter(row -> row.cell("quantity").equals(quantity)).toList();
        assertEquals(2, pair.size());
        double scale = LightField.pointScale(
                pair.get(0).number("distance_cm") / 100, pair.get(1).number("distance_cm") / 100);
        double measured = pair.get(1).number("value") / pair.get(0).number("value");
        assertEquals(exponent, LightField.POINT_EXPONENT * StrictMath.log(measured) / StrictMath.log(scale), 0.005);
        double leftOut = 1 - scale / measured;
        assertTrue(leftOut >= 0.25 - 1e-12, () -> "left out " + leftOut);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -0.3, Double.NaN, Double.POSITIVE_INFINITY})
    void a_distance_or_length_that_cannot_be_is_refused_by_name_and_value(double metres) {
        refused("fromMetres is " + metres, () -> LightField.pointScale(metres, 1));
        refused("toMetres is " + metres, () -> LightField.pointScale(1, metres));
        refused("fromMetres is " + metres, () -> LightField.tubeScale(metres, 1, 1));
        refused("toMetres is " + metres, () -> LightField.tubeScale(1, metres, 1));
        refused("arcLengthMetres is " + metres, () -> LightField.tubeScale(1, 1, metres));
        refused("distanceMetres is " + metres, () -> LightField.tubeFactor(metres, 1));
        refused("arcLengthMetres is " + metres, () -> LightField.localExponent(1, metres));
        refused("distanceMetres is " + metres, () -> LightField.halfAngleRadians(metres, 1));
    }

    @Test
    void a_ratio_out_of_all_range_is_refused_instead_of_giving_nan() {
        refused("arcLengthMetres / distanceMetres / 2 is 0.0", () -> LightField.localExponent(1e300, 1e-300));
        refused("arcLengthMetres / distanceMetres / 2 is Infinity", () -> LightField.localExponent(1e-300, 1e300));
    }

    private static void refused(String said, Runnable call) {
        String message = assertThrows(IllegalArgumentException.class, call::run).getMessage();
        assertTrue(message.startsWith(said), message);
    }

    /** W/m2 per W of an emitter off the middle: P/pi^2 along its normal, falling with both cosines and the square. */
    private static double emitterIrradiance(double along, double distance) {
        double squared = along * along + distance * distance;
        double cosine = distance / StrictMath.sqrt(squared);
        return cosine * cosine / (StrictMath.PI * StrictMath.PI * squared);
    }
}
