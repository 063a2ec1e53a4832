package org.loamlight.physics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class UvProfileTest {

    /** The border is found to 0.00001 of 1.2 m, and a stretch has two. */
    private static final double TO_THE_BORDER = 2.5e-5;
    private static final Point LEFT = new Point(0, 0.3, 0.1);
    private static final Point RIGHT = new Point(1.2, 0.3, 0.1);

    private static LitLine line(ToDoubleFunction<Point> index) {
        return UvProfile.along(index, LEFT, RIGHT).above(0.1);
    }

    private static ToDoubleFunction<Point> litBetween(double from, double to) {
        return point -> point.x() > from && point.x() < to ? 1 : 0;
    }

    /** Lit from, lit to, share of 1.2 m, way to shade: half a patch with shade on both sides, all of one at a wall. */
    @ParameterizedTest
    @CsvSource({"0.3, 0.9, 0.5, 0.3", "-1, 0.4, 0.333333333, 0.4", "0.7777, 2, 0.351916667, 0.4223",
        "0.1234, 0.1434, 0.016666667, 0.01", "3, 4, 0, 0"})
    void a_patch_of_light_is_measured_to_its_borders(double from, double to, double share, double way) {
        LitLine line = line(litBetween(from, to));
        assertEquals(share, line.share(), TO_THE_BORDER);
        assertEquals(way, line.farthestFromShadeMetres().orElseThrow(), TO_THE_BORDER);
    }

    @Test
    void where_all_is_lit_there_is_no_way_to_shade() {
        LitLine line = line(point -> 0.11);
        assertEquals(1, line.share(), 1e-12);
        assertEquals(OptionalDouble.empty(), line.farthestFromShadeMetres());
    }

    @Test
    void in_the_dark_and_right_at_the_trace_nothing_is_lit() {
        LitLine line = line(point -> 0.1);
        assertEquals(0, line.share());
        assertEquals(OptionalDouble.of(0), line.farthestFromShadeMetres());
    }

    @Test
    void of_two_patches_the_one_with_the_longer_way_out_counts() {
        LitLine line = line(point -> litBetween(0.2, 0.5).applyAsDouble(point) + litBetween(1, 3).applyAsDouble(point));
        assertEquals(0.5 / 1.2, line.share(), TO_THE_BORDER);
        assertEquals(0.2, line.farthestFromShadeMetres().orElseThrow(), TO_THE_BORDER);
        assertEquals(2, line.lit().covered().size());
    }

    /** By hand: below a bulb of strength 1 hung 0.4 m up the index h^2 / r^4 is 1 where r^2 = 0.4 m^2, 0.489898 m aside. */
    @Test
    void below_a_bulb_the_lit_patch_ends_where_its_law_says() {
        UvField field = new UvField(List.of(new UvLamp(new PointSource(new Point(0.6, 0.3, 0.5)), 1, 1)), List.of());
        LitLine line = field.profile(LEFT, RIGHT).above(1);
        double aside = StrictMath.sqrt(0.4 - 0.4 * 0.4);
        assertEquals(0.6 - aside, line.lit().covered().get(0).from(), TO_THE_BORDER);
        assertEquals(0.6 + aside, line.lit().covered().get(0).to(), TO_THE_BORDER);
        assertEquals(aside, line.farthestFromShadeMetres().orElseThrow(), TO_THE_BORDER);
    }

    /** By hand: the lower edge of the board lies 0.2 m aside of the lamp and half way down, so its shadow begins 0.4 m aside. */
    @Test
    void a_board_throws_its_shadow_from_the_ray_over_its_edge_on() {
        Box board = new Box(new Point(0.7, 0, 0.3), new Point(1.2, 0.6, 0.4));
        UvField field = new UvField(List.of(new UvLamp(new PointSource(new Point(0.5, 0.3, 0.5)), 1, 1)), List.of(board));
        LitLine line = field.profile(LEFT, RIGHT).above(0);
        assertEquals(1, line.lit().covered().size());
        assertEquals(0.5 + 0.2 * 2, line.lit().covered().get(0).to(), 2 * TO_THE_BORDER);
    }

    @Test
    void a_line_walked_from_the_other_end_has_the_same_share_and_way() {
        Random random = new Random(23);
        for (int i = 0; i < 40; i++) {
            UvField field = new UvField(List.of(new UvLamp(SceneOfBoxes.tube(random), 1, 1)), SceneOfBoxes.random(random, 3).boxes());
            LitLine there = field.profile(LEFT, RIGHT).above(0.3);
            LitLine back = field.profile(RIGHT, LEFT).above(0.3);
            assertEquals(there.share(), back.share(), 2 * TO_THE_BORDER);
            assertEquals(there.farthestFromShadeMetres().orElse(9), back.farthestFromShadeMetres().orElse(9), 2 * TO_THE_BORDER);
        }
    }

    @Test
    void a_higher_trace_never_lights_more() {
        UvField field = new UvField(List.of(new UvLamp(new LineSource(new Point(0.6, 0.3, 0.5), 0.55, LineSource.Run.LENGTH), 1, 1)), List.of());
        double before = 1;
        for (double trace = 0; trace < 1; trace += 0.02) {
            double share = field.profile(LEFT, RIGHT).above(trace).share();
            assertTrue(share <= before + UvProfile.BORDER);
            before = share;
        }
        assertEquals(0, before);
    }

    @Test
    void a_line_without_length_is_refused() {
        String message = assertThrows(IllegalArgumentException.class, () -> UvProfile.along(point -> 1, LEFT, LEFT)).getMessage();
        assertTrue(message.startsWith("length of the line is 0.0"), message);
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.1, Double.NaN})
    void a_trace_that_cannot_be_is_refused(double trace) {
        String message = assertThrows(IllegalArgumentException.class, () -> UvProfile.along(point -> 1, LEFT, RIGHT).above(trace)).getMessage();
        assertTrue(message.startsWith("trace is " + trace), message);
    }
}
