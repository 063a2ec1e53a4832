package org.loamlight.physics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PointSourceTest {

    private static final PointSource BULB = new PointSource(new Point(0.6, 0.3, 5));

    /** Health Physics Society, answer 11543: 25 % of the intensity at 1 m is left at 2 m, about 6 % at 4 m. */
    @Test
    void inverse_square_quarters_the_index_at_double_distance() {
        assertEquals(1, below(1), 1e-15);
        assertEquals(0.25, below(2) / below(1), 1e-15);
        assertEquals(0.06, below(4) / below(1), 0.005);
        assertEquals(below(2), BULB.shareStraightBelow(2), 1e-15);
    }

    private static double below(double metres) {
        return BULB.share(BULB.middle().atHeight(BULB.middle().z() - metres), List.of());
    }

    /** Both cosines are that of 45 degrees, and the square of the distance is doubled: a half times a half. */
    @Test
    void as_far_aside_as_below_a_quarter_of_the_index_is_left() {
        assertEquals(0.25 * below(1), BULB.share(new Point(1.6, 0.3, 4), List.of()), 1e-15);
        assertEquals(0.25 * below(1), BULB.share(new Point(0.6, -0.7, 4), List.of()), 1e-15);
    }

    /** A flat Lambertian face sends pi times its strength through any plane below it: no light is lost or made up. */
    @Test
    void a_floor_without_end_catches_all_that_the_bulb_gives() {
        double widest = StrictMath.atan(3000);
        double caught = Simpson.integral(angle -> ring(StrictMath.tan(angle)) / square(StrictMath.cos(angle)), 0, widest);
        assertEquals(StrictMath.PI, caught, 1e-6);
    }

    /** What falls 1 m below on a ring of that radius, for each metre of its breadth. */
    private static double ring(double radius) {
        return 2 * StrictMath.PI * radius * BULB.share(new Point(0.6 + radius, 0.3, 4), List.of());
    }

    private static double square(double number) {
        return number * number;
    }

    @ParameterizedTest
    @ValueSource(doubles = {5, 5.1, 9})
    void at_its_height_and_above_it_gives_nothing(double height) {
        assertEquals(0, BULB.share(new Point(0.6, 0.3, height), List.of()));
        assertEquals(0, BULB.share(new Point(0.9, 0.3, height), List.of()));
    }

    @Test
    void inside_the_lamp_the_index_stays_that_of_a_centimetre_away() {
        assertEquals(1e4, BULB.share(new Point(0.6, 0.3, 5 - 1e-3), List.of()), 1e-9);
        assertEquals(1e4, BULB.shareStraightBelow(1e-300), 1e-9);
    }

    @Test
    void behind_a_box_there_is_no_light() {
        Box stone = new Box(new Point(0.5, 0.2, 4.4), new Point(0.7, 0.4, 4.5));
        assertEquals(0, BULB.share(new Point(0.6, 0.3, 4), List.of(stone)));
        assertEquals(BULB.share(new Point(1.6, 0.3, 4), List.of()), BULB.share(new Point(1.6, 0.3, 4), List.of(stone)));
    }

    @Test
    void a_distance_that_cannot_be_is_refused() {
        String message = assertThrows(IllegalArgumentException.class, () -> BULB.shareStraightBelow(0)).getMessage();
        assertTrue(message.startsWith("distanceMetres is 0.0"), message);
        assertThrows(IllegalArgumentException.class, () -> BULB.shareStraightBelow(Double.NaN));
    }
}
