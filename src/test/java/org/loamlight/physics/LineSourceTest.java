package org.loamlight.physics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.AbstractCollection;
import java.util.Collection;
import java.util.Iterator;
import java.util.List;
import java.util.Random;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class LineSourceTest {

    private static final double FIVE_DECIMALS = 5.001e-6;
    private static final double SIX_DECIMALS = 5.001e-7;
    private static final double PI = StrictMath.PI;
    private static final int ELEMENTS = 4000;

    static List<PublishedTable.Row> keitz() {
        return PublishedTable.read("light-keitz.csv").rows();
    }

    private static LineSource tube(double arcLength) {
        return new LineSource(new Point(0, 0, 0), arcLength, LineSource.Run.LENGTH);
    }

    private static double below(double metres, double arcLength) {
        return tube(arcLength).share(new Point(0, 0, -metres), List.of());
    }

    /** Self-check table of Keitz' formula (IUVA protocol), computed apart from this code; to its last decimal. */
    @ParameterizedTest
    @MethodSource("keitz")
    void straight_below_its_middle_a_tube_follows_the_table_of_keitz(PublishedTable.Row row) {
        double arcLength = 0.85;
        double distance = row.number("D_over_L") * arcLength;
        double share = below(distance, arcLength);
        assertEquals(row.number("E_x_D_x_L_over_P"), share * distance * arcLength, SIX_DECIMALS);
        assertEquals(row.number("ratio_to_point_law_P_over_pi2D2"), share * PI * PI * distance * distance, FIVE_DECIMALS);
        assertEquals(row.number("ratio_to_infinite_line_P_over_2piLD"), share * 2 * PI * arcLength * distance, FIVE_DECIMALS);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.02, 0.1, 0.3, 0.85, 3, 40})
    void straight_below_its_middle_it_is_the_light_field_of_a_tube(double distance) {
        double keitz = LightField.tubeFactor(distance, 0.85) / (distance * 0.85);
        assertEquals(keitz, below(distance, 0.85), 1e-13 * keitz);
        assertEquals(keitz, tube(0.85).shareStraightBelow(distance), 1e-14 * keitz);
    }

    /** Limits of Keitz' formula: P / (2 pi L D) close up, P / (pi^2 D^2) far away. */
    @Test
    void close_up_a_tube_is_an_endless_line_and_far_away_a_point() {
        assertEquals(1, below(0.02, 20) * 2 * PI * 20 * 0.02, 1e-6);
        assertEquals(1, below(800, 1.2) * PI * PI * 800 * 800, 1e-5);
    }

    /** Far away it shines as a point that gives P / pi^2 all round its axis: aside only the receiver's cosine counts. */
    @Test
    void far_away_only_the_cosine_at_the_place_and_that_about_the_axis_count() {
        double straight = below(800, 1.2);
        double across = tube(1.2).share(new Point(0, 800, -800), List.of());
        double along = tube(1.2).share(new Point(800, 0, -800), List.of());
        assertEquals(0.5 * StrictMath.sqrt(0.5), across / straight, 1e-5);
        assertEquals(0.25, along / straight, 1e-5);
    }

    /**
     * The derivation itself, at random places: elements laid along the arc, each Lambertian about the axis, by Simpson's
     * rule with 4,000 panels. The bound is rounding alone, since the closed form has no error of integration: 1e-9 of the index,
     * and 1e-12 of the index straight below where a far end leaves next to nothing.
     */
    @Test
    void elements_laid_along_the_arc_add_up_to_the_closed_form() {
        Random random = new Random(7);
        for (int i = 0; i < 500; i++) {
            LineSource tube = SceneOfBoxes.tube(random);
            Point place = SceneOfBoxes.place(random);
            double half = tube.arcLengthMetres() / 2;
            double sum = Simpson.integral(at -> element(tube, at, place), -half, half);
            assertEquals(sum, tube.share(place, List.of()), 1e-9 * sum + 1e-12 * tube.shareStraightBelow(0.05));
        }
    }

    /** dE/ds for P = 1: P / (pi^2 L) times the cosine about the axis, the cosine at the place and 1 / r^2. */
    private static double element(LineSource tube, double at, Point place) {
        Point from = onArc(tube, at);
        double distance = from.distanceTo(place);
        double along = tube.run() == LineSource.Run.LENGTH ? from.x() - place.x() : from.y() - place.y();
        double aboutAxis = StrictMath.sqrt(distance * distance - along * along) / distance;
        double up = (from.z() - place.z()) / distance;
        return aboutAxis * up / (distance * distance * PI * PI * tube.arcLengthMetres());
    }

    private static Point onArc(LineSource tube, double at) {
        Point middle = tube.middle();
        return tube.run() == LineSource.Run.LENGTH ? new Point(middle.x() + at, middle.y(), middle.z())
                : new Point(middle.x(), middle.y() + at, middle.z());
    }

    /**
     * Offshore Electrical Engineering Manual, section 2.14: opposite one end E = I / (l h) cos AF with the aspect
     * factor AF as the integral of cos^2, here with I = P / pi^2 and h the distance from the axis; beyond the end, the longer tube
     * less the part that is not there.
     */
    @Test
    void a_place_opposite_the_end_or_beyond_follows_the_aspect_factor() {
        double opposite = new LineSource(new Point(0.5, 0, 0), 1, LineSource.Run.LENGTH).share(new Point(0, 0.3, -0.4), List.of());
        double factor = Simpson.integral(angle -> StrictMath.cos(angle) * StrictMath.cos(angle), 0, StrictMath.atan(1 / 0.5));
        assertEquals(0.8 * factor / (PI * PI * 1 * 0.5), opposite, 1e-12);
        Point beyond = new Point(-0.5, 0.3, -0.4);
        double whole = 1.5 * new LineSource(new Point(0.25, 0, 0), 1.5, LineSource.Run.LENGTH).share(beyond, List.of());
        double missing = 0.5 * new LineSource(new Point(-0.25, 0, 0), 0.5, LineSource.Run.LENGTH).share(beyond, List.of());
        assertEquals(whole - missing, new LineSource(new Point(0.5, 0, 0), 1, LineSource.Run.LENGTH).share(beyond, List.of()), 1e-12);
    }

    /**
     * What boxes hide, against 4,000 elements seen or not: each border of light and shade on the arc may be off by one
     * element, and each box makes two borders.
     */
    @Test
    void what_boxes_hide_is_what_no_ray_reaches() {
        Random random = new Random(11);
        int partly = 0;
        for (int i = 0; i < 200; i++) {
            LineSource tube = SceneOfBoxes.tube(random);
            Point place = SceneOfBoxes.place(random);
            List<Box> boxes = SceneOfBoxes.random(random, 4).boxes();
            double counted = seenElements(tube, place, boxes);
            double share = tube.share(place, boxes);
            double open = tube.share(place, List.of());
            assertEquals(counted, share, 8 * brightestElement(tube, place) + 1e-6 * open, tube + " " + place + " " + boxes);
            partly += share > 0.01 * open && share < 0.99 * open ? 1 : 0;
        }
        assertTrue(partly > 20, "partly hidden in " + partly);
    }

    private static double seenElements(LineSource tube, Point place, List<Box> boxes) {
        double width = tube.arcLengthMetres() / ELEMENTS;
        double sum = 0;
        for (int i = 0; i < ELEMENTS; i++) {
            double at = (i + 0.5) * width - tube.arcLengthMetres() / 2;
            Point from = onArc(tube, at);
            if (boxes.stream().noneMatch(box -> box.blocks(from, place))) {
                sum += width * element(tube, at, place);
            }
        }
        return sum;
    }

    /** No element can give more than one straight above at the tube's height would. */
    private static double brightestElement(LineSource tube, Point place) {
        double below = tube.middle().z() - place.z();
        return 1 / (below * below * PI * PI * ELEMENTS);
    }

    /** A shelf hides the right half of the arc from a place under its edge: half of the light is left. */
    @Test
    void half_a_tube_hidden_leaves_half_the_light_below_its_middle() {
        Box shelf = new Box(new Point(0, -1, -0.2), new Point(2, 1, -0.1));
        Point place = new Point(0, 0, -0.4);
        assertEquals(below(0.4, 1) / 2, tube(1).share(place, List.of(shelf)), 1e-8);
        assertEquals(below(0.4, 1) / 2, tube(1).share(place, List.of(shelf, shelf)), 1e-8);
    }

    @Test
    void a_place_under_a_lid_or_inside_a_closed_hide_gets_nothing() {
        Box lid = new Box(new Point(-2, -2, -0.2), new Point(2, 2, -0.1));
        Box hide = new Box(new Point(-0.1, -0.1, -0.4), new Point(0.1, 0.1, -0.3));
        assertEquals(0, tube(1).share(new Point(0, 0, -0.4), List.of(lid)));
        assertEquals(0, tube(1).share(new Point(0.02, 0, -0.39), List.of(hide)));
        assertTrue(tube(1).share(new Point(0.02, 0, -0.3), List.of(hide)) > 0, "on top of it there is light");
    }

    @ParameterizedTest
    @EnumSource(LineSource.Run.class)
    void a_tube_turned_with_all_around_it_gives_the_same(LineSource.Run run) {
        Random random = new Random(13);
        LineSource.Run other = run == LineSource.Run.LENGTH ? LineSource.Run.DEPTH : LineSource.Run.LENGTH;
        for (int i = 0; i < 100; i++) {
            LineSource tube = new LineSource(SceneOfBoxes.tube(random).middle(), 0.6, run);
            LineSource turned = new LineSource(turned(tube.middle()), 0.6, other);
            List<Box> boxes = SceneOfBoxes.random(random, 3).boxes();
            List<Box> turnedBoxes = boxes.stream().map(box -> new Box(turned(box.low()), turned(box.high()))).toList();
            Point place = SceneOfBoxes.place(random);
            assertEquals(tube.share(place, boxes), turned.share(turned(place), turnedBoxes));
        }
    }

    private static Point turned(Point point) {
        return new Point(point.y(), point.x(), point.z());
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 0.1, 9})
    void at_its_height_and_above_it_gives_nothing_to_a_surface_that_faces_up(double height) {
        assertEquals(0, tube(1).share(new Point(0, 0, height), List.of()));
        assertEquals(0, tube(1).share(new Point(0.2, 0.3, height), List.of()));
    }

    @Test
    void inside_the_lamp_the_index_stays_that_of_a_centimetre_away() {
        assertEquals(below(0.01, 1), below(1e-9, 1), 1e-9);
        assertEquals(below(0.01, 1), tube(1).shareStraightBelow(1e-300), 1e-9);
    }

    /** Counted: the boxes are gone through once for a place, however many there are. */
    @Test
    void twice_the_furnishings_are_twice_the_work() {
        AtomicInteger looks = new AtomicInteger();
        for (int count : new int[] {50, 100, 200}) {
            looks.set(0);
            List<Box> boxes = SceneOfBoxes.random(new Random(count), count).boxes();
            tube(1).share(new Point(0, 0, -0.4), counting(boxes, looks));
            new PointSource(new Point(0, 0, 0)).share(new Point(9, 9, -0.4), counting(boxes, looks));
            assertEquals(2 * count, looks.get());
        }
    }

    private static Collection<Box> counting(List<Box> boxes, AtomicInteger looks) {
        return new AbstractCollection<>() {
            @Override
            public Iterator<Box> iterator() {
                return boxes.stream().peek(box -> looks.incrementAndGet()).iterator();
            }

            @Override
            public int size() {
                return boxes.size();
            }
        };
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY, 2e6})
    void an_arc_length_that_cannot_be_is_refused_by_name_and_value(double metres) {
        String message = assertThrows(IllegalArgumentException.class, () -> tube(metres)).getMessage();
        assertTrue(message.startsWith("arcLengthMetres is " + metres), message);
    }
}
