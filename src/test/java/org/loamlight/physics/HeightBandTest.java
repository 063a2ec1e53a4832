package org.loamlight.physics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HeightBandTest {

    private static final DoubleUnaryOperator SQUARE = height -> 1 / (height * height);
    private static final Stretch HEIGHTS = new Stretch(0.2, 2);

    /** By hand: 1 / h^2 is 4 at 0.5 m, 1 at 1 m, 25 at 0.2 m and 0.25 at 2 m; the last two cut off. */
    @ParameterizedTest
    @CsvSource({"1, 4, 0.5, 1", "4, 4, 0.5, 0.5", "0, 4, 0.5, 2", "0.25, 4, 0.5, 2", "4, 100, 0.2, 0.5", "0, 25, 0.2, 2"})
    void the_band_ends_where_the_index_reaches_the_limits(double low, double high, double from, double to) {
        Stretch band = HeightBand.between(SQUARE, HEIGHTS, low, high).orElseThrow();
        assertEquals(from, band.from(), 1e-12);
        assertEquals(to, band.to(), 1e-12);
    }

    @ParameterizedTest
    @CsvSource({"0, 0.2", "26, 30"})
    void an_index_out_of_reach_leaves_no_band(double low, double high) {
        assertEquals(Optional.empty(), HeightBand.between(SQUARE, HEIGHTS, low, high));
    }

    @Test
    void a_jump_past_the_wanted_values_leaves_no_band() {
        assertEquals(Optional.empty(), HeightBand.between(height -> height > 0.7 ? 0.1 : 5, HEIGHTS, 1, 3));
        assertEquals(Optional.empty(), HeightBand.between(height -> 0, HEIGHTS, 1, 3));
    }

    /** Aside by 0.5 m, h^2 / (h^2 + 0.25)^2 is highest, 1, at 0.5 m; only the part above counts. */
    @Test
    void aside_of_the_lamp_only_the_falling_part_counts() {
        DoubleUnaryOperator aside = height -> height * height / ((height * height + 0.25) * (height * height + 0.25));
        Stretch band = HeightBand.between(aside, HEIGHTS, 0.64, 2).orElseThrow();
        assertEquals(0.5, band.from(), 0.5 * HEIGHTS.width() / 256 + 1e-12);
        assertEquals(1, band.to(), 1e-12);
        assertEquals(0.64, aside.applyAsDouble(0.25), 1e-12);
    }

    @Test
    void within_the_band_the_index_is_between_the_limits_and_just_above_and_below_it_is_not() {
        Random random = new Random(29);
        int found = 0;
        for (int i = 0; i < 200; i++) {
            UvLamp lamp = new UvLamp(SceneOfBoxes.tube(random), 1 + random.nextDouble(), 1);
            Point place = lamp.source().middle().atHeight(0);
            DoubleUnaryOperator index = height -> lamp.atHeight(height).index(place, List.of());
            double low = 2 * random.nextDouble();
            double high = low * (1.01 + random.nextDouble());
            Optional<Stretch> band = HeightBand.between(index, HEIGHTS, low, high);
            found += band.isPresent() ? 1 : 0;
            band.ifPresent(stretch -> assertBand(index, stretch, low, high));
            assertEquals(band.isEmpty(), index.applyAsDouble(0.2) < low || index.applyAsDouble(2) > high);
        }
        assertTrue(found > 100, "found " + found);
    }

    /** Seeded; bulbs and tubes, to the last bit. */
    @Test
    void straight_below_a_lamp_the_whole_band_is_the_falling_part() {
        Random random = new Random(31);
        int found = 0;
        for (int i = 0; i < 200; i++) {
            LineSource tube = SceneOfBoxes.tube(random);
            UvLamp lamp = new UvLamp(i % 2 == 0 ? tube : new PointSource(tube.middle()), 1 + random.nextDouble(), 1);
            Point place = lamp.source().middle().atHeight(0);
            DoubleUnaryOperator index = height -> lamp.atHeight(height).index(place, List.of());
            double low = 2 * random.nextDouble();
            Optional<Stretch> band = HeightBand.falling(index, HEIGHTS, low, 2 * low);
            found += band.isPresent() ? 1 : 0;
            assertEquals(HeightBand.between(index, HEIGHTS, low, 2 * low), band);
        }
        assertTrue(found > 100, "found " + found);
    }

    private static void assertBand(DoubleUnaryOperator index, Stretch band, double low, double high) {
        for (double share = 0; share <= 1; share += 0.125) {
            double there = index.applyAsDouble(band.from() + share * band.width());
            assertTrue(there >= low * (1 - 1e-12) && there <= high * (1 + 1e-12), there + " not in " + low + " to " + high);
        }
        assertTrue(band.to() == 2 || index.applyAsDouble(band.to() + 1e-9) < low);
        assertTrue(band.from() == 0.2 || index.applyAsDouble(band.from() - 1e-9) > high);
    }

    @ParameterizedTest
    @CsvSource({"-1, 2, low is -1.0", "NaN, 2, low is NaN", "2, 1, high is 1.0", "2, NaN, high is NaN", "2, Infinity, high is Infinity"})
    void limits_that_cannot_be_are_refused_by_name_and_value(double low, double high, String said) {
        String message = assertThrows(IllegalArgumentException.class,
                () -> HeightBand.between(SQUARE, HEIGHTS, low, high)).getMessage();
        assertTrue(message.startsWith(said), message);
    }
}
