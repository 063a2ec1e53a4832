package org.loamlight.physics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class BoxTest {

    private static final Box SHELF = new Box(new Point(0.4, 0.1, 0.2), new Point(0.8, 0.5, 0.3));

    @ParameterizedTest
    @CsvSource({
        "0.6, 0.3, 0.5, 0.6, 0.3, 0.1, true", // straight down through it
        "0.6, 0.3, 0.5, 0.6, 0.3, 0.31, false", // stops above it
        "0.6, 0.3, 0.25, 0.6, 0.3, 0.9, true", // begins inside
        "0.3, 0.3, 0.15, 0.9, 0.3, 0.35, true", // slantwise through both ends
        "0.3, 0.3, 0.35, 0.5, 0.3, 0.55, false", // on the way up beside it
        "0.9, 0.3, 0.5, 0.9, 0.3, 0.1, false", // down past its end
        "0.1, 0.3, 0.25, 0.39, 0.3, 0.25, false", // stops before it
        "0.6, 0.3, 0.25, 0.6, 0.3, 0.25, true", // a place inside
        "0.1, 0.3, 0.25, 0.1, 0.3, 0.25, false"}) // a place outside
    void a_way_through_the_inside_is_blocked(
            double x1, double y1, double z1, double x2, double y2, double z2, boolean blocked) {
        Point from = new Point(x1, y1, z1);
        Point to = new Point(x2, y2, z2);
        assertEquals(blocked, SHELF.blocks(from, to));
        assertEquals(blocked, SHELF.blocks(to, from));
    }

    @ParameterizedTest
    @CsvSource({
        "0.6, 0.3, 0.3, 0.6, 0.3, 0.9", // lies on top, lit from above
        "0.1, 0.3, 0.3, 0.9, 0.3, 0.3", // along the top
        "0.3, 0.3, 0.2, 0.5, 0.3, 0.4", // over the upper left edge
        "0.4, 0.1, 0.2, 0.4, 0.1, 0.9"}) // up a corner
    void a_way_that_only_touches_is_free(double x1, double y1, double z1, double x2, double y2, double z2) {
        assertFalse(SHELF.blocks(new Point(x1, y1, z1), new Point(x2, y2, z2)));
    }

    @Test
    void a_place_on_top_by_a_sum_of_heights_is_not_inside_by_rounding() {
        Box ledge = new Box(new Point(0, 0, 0), new Point(1, 1, 0.1 + 0.2));
        assertTrue(0.3 < ledge.high().z());
        assertFalse(ledge.blocks(new Point(0.5, 0.5, 0.3), new Point(0.5, 0.5, 1)));
    }

    @Test
    void a_sheet_without_thickness_has_no_inside_and_blocks_nothing() {
        Box sheet = new Box(new Point(0, 0, 0.2), new Point(1, 1, 0.2));
        assertFalse(sheet.blocks(new Point(0.5, 0.5, 0.1), new Point(0.5, 0.5, 1)));
        assertFalse(sheet.blocks(new Point(0.1, 0.5, 0.2), new Point(0.9, 0.5, 0.2)));
    }

    /** Against 2,000 places laid along the way; a way that only grazes may fall between two of them. */
    @Test
    void a_way_is_blocked_where_a_place_on_it_is_inside() {
        Random random = new Random(41);
        int grazed = 0;
        int blocked = 0;
        for (int i = 0; i < 2000; i++) {
            Box box = SceneOfBoxes.random(random, 1).boxes().get(0);
            Point from = SceneOfBoxes.place(random);
            Point to = SceneOfBoxes.place(random).atHeight(0.6);
            boolean inside = IntStream.rangeClosed(0, 2000).anyMatch(step -> isInside(box, from.towards(to, step / 2000.0)));
            assertTrue(box.blocks(from, to) || !inside, () -> box + " from " + from + " to " + to);
            grazed += box.blocks(from, to) && !inside ? 1 : 0;
            blocked += inside ? 1 : 0;
        }
        assertTrue(blocked > 100, "blocked " + blocked);
        assertTrue(grazed <= 2, "grazed " + grazed);
    }

    private static boolean isInside(Box box, Point point) {
        return box.low().x() < point.x() && point.x() < box.high().x() && box.low().y() < point.y()
                && point.y() < box.high().y() && box.low().z() < point.z() && point.z() < box.high().z();
    }

    @Test
    void faces_the_wrong_way_round_are_refused_with_their_values() {
        String message = assertThrows(IllegalArgumentException.class,
                () -> new Box(new Point(0, 0, 0.5), new Point(1, 1, 0.2))).getMessage();
        assertTrue(message.contains("0.5") && message.contains("0.2"), message);
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, -1.1e6, 1.1e6})
    void a_coordinate_out_of_reach_is_refused_by_name_and_value(double metres) {
        String message = assertThrows(IllegalArgumentException.class, () -> new Point(0, metres, 0)).getMessage();
        assertTrue(message.startsWith("y is " + metres), message);
        assertThrows(IllegalArgumentException.class, () -> new Point(metres, 0, 0));
        assertThrows(IllegalArgumentException.class, () -> new Point(0, 0, metres));
    }
}
