package org.loamlight.physics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class UvFieldTest {

    private static final LineSource TUBE = new LineSource(new Point(0.6, 0.3, 0.55), 0.55, LineSource.Run.LENGTH);
    private static final PointSource BULB = new PointSource(new Point(0.3, 0.3, 0.5));

    private static UvField bare(UvLamp... lamps) {
        return new UvField(List.of(lamps), List.of());
    }

    private static UvLamp lamp(UvSource source, double strength) {
        return new UvLamp(source, strength, 1);
    }

    @Test
    void without_a_lamp_the_index_is_0_everywhere() {
        assertEquals(0, bare().index(new Point(0.3, 0.3, 0.1)));
    }

    @Test
    void two_lamps_add() {
        Random random = new Random(3);
        for (int i = 0; i < 200; i++) {
            List<Box> boxes = SceneOfBoxes.random(random, 3).boxes();
            Point place = SceneOfBoxes.place(random);
            UvLamp one = lamp(SceneOfBoxes.tube(random), 3);
            UvLamp other = lamp(BULB, 0.4);
            double both = new UvField(List.of(one, other), boxes).index(place);
            assertEquals(new UvField(List.of(one), boxes).index(place) + new UvField(List.of(other), boxes).index(place), both, 1e-14 * both);
        }
    }

    @Test
    void the_index_is_in_proportion_to_strength_and_transmission() {
        Point place = new Point(0.4, 0.2, 0.1);
        double bare = bare(lamp(TUBE, 2)).index(place);
        assertEquals(1.5 * bare, bare(lamp(TUBE, 3)).index(place), 1e-14);
        assertEquals(0.6 * bare, bare(new UvLamp(TUBE, 2, 0.6)).index(place), 1e-14);
        assertEquals(0, bare(new UvLamp(TUBE, 2, 0)).index(place));
    }

    /** Mesh that lets 60 % pass: index 5.0 above is 3.0 below (worked example of a page on cage materials, S. Wunderlich). */
    @Test
    void mesh_leaves_its_share_of_the_index() {
        UvLamp lamp = lamp(BULB, 5.0 * 0.3 * 0.3);
        assertEquals(5.0, bare(lamp).index(new Point(0.3, 0.3, 0.2)), 1e-12);
        assertEquals(3.0, bare(new UvLamp(BULB, lamp.strength(), 0.60)).index(new Point(0.3, 0.3, 0.2)), 1e-12);
    }

    @Test
    void straight_below_the_lamp_the_index_falls_with_the_distance() {
        for (UvSource source : List.of(TUBE, BULB)) {
            UvField field = bare(lamp(source, 1));
            double before = Double.POSITIVE_INFINITY;
            for (double below = 0.011; below < 3; below *= 1.1) {
                double index = field.index(source.middle().atHeight(source.middle().z() - below));
                assertTrue(index < before && index > 0, index + " at " + below + " m after " + before);
                before = index;
            }
        }
    }

    @Test
    void on_one_level_the_index_is_highest_straight_below_the_middle() {
        Random random = new Random(5);
        for (UvSource source : List.of(TUBE, BULB)) {
            UvField field = bare(lamp(source, 1));
            double below = field.index(source.middle().atHeight(0.1));
            IntStream.range(0, 500).mapToObj(i -> SceneOfBoxes.place(random).atHeight(0.1))
                    .forEach(place -> assertTrue(field.index(place) <= below, place::toString));
        }
    }

    @Test
    void a_mirrored_enclosure_has_a_mirrored_field() {
        Random random = new Random(17);
        for (int i = 0; i < 200; i++) {
            SceneOfBoxes scene = SceneOfBoxes.random(random, 4);
            UvSource source = i % 2 == 0 ? SceneOfBoxes.tube(random) : BULB;
            Point place = SceneOfBoxes.place(random);
            double index = new UvField(List.of(lamp(source, 1)), scene.boxes()).index(place);
            double mirrored = new UvField(List.of(lamp(SceneOfBoxes.mirrored(source), 1)), scene.mirrored().boxes())
                    .index(SceneOfBoxes.mirrored(place));
            assertEquals(index, mirrored, 1e-7 * source.shareStraightBelow(0.1));
        }
    }

    @Test
    void furnishings_only_take_light_away() {
        Random random = new Random(19);
        for (int i = 0; i < 200; i++) {
            List<Box> boxes = new ArrayList<>(SceneOfBoxes.random(random, 3).boxes());
            Point place = SceneOfBoxes.place(random);
            List<UvLamp> lamps = List.of(lamp(TUBE, 1), lamp(BULB, 1));
            double before = new UvField(lamps, boxes).index(place);
            boxes.addAll(SceneOfBoxes.random(random, 3).boxes());
            assertTrue(new UvField(lamps, boxes).index(place) <= before * (1 + 1e-14));
        }
    }

    @Test
    void a_blocked_lamp_gives_nothing_and_the_other_all_it_gives() {
        Box slab = new Box(new Point(0.2, 0.2, 0.3), new Point(0.4, 0.4, 0.32));
        Point under = new Point(0.3, 0.3, 0.25);
        assertEquals(0, new UvField(List.of(lamp(BULB, 1)), List.of(slab)).index(under));
        UvLamp second = lamp(new PointSource(new Point(1.1, 0.3, 0.5)), 1);
        double both = new UvField(List.of(lamp(BULB, 1), second), List.of(slab)).index(under);
        assertEquals(bare(second).index(under), both);
        assertTrue(both > 0);
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.1, 1.1, Double.NaN})
    void a_transmission_beyond_all_or_nothing_is_refused(double transmission) {
        String message = assertThrows(IllegalArgumentException.class, () -> new UvLamp(BULB, 1, transmission)).getMessage();
        assertTrue(message.startsWith("transmission is " + transmission), message);
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.1, Double.NaN, Double.POSITIVE_INFINITY})
    void a_strength_that_cannot_be_is_refused(double strength) {
        String message = assertThrows(IllegalArgumentException.class, () -> lamp(BULB, strength)).getMessage();
        assertTrue(message.startsWith("strength is " + strength), message);
    }

    @Test
    void an_index_beyond_all_range_is_refused_instead_of_giving_infinity() {
        UvField field = bare(lamp(BULB, 1e308));
        assertThrows(IllegalArgumentException.class, () -> field.index(new Point(0.3, 0.3, 0.4)));
    }
}
