package org.loamlight.physics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class StretchesTest {

    private static final double ROUNDING = 1e-12;

    @Test
    void without_pieces_all_is_open() {
        Stretches none = Stretches.merged(List.of(), 1.2);
        assertEquals(List.of(), none.covered());
        assertEquals(List.of(new Stretch(0, 1.2)), none.open());
        assertEquals(0, none.share());
        assertEquals(1.2, none.longestOpen());
    }

    @Test
    void overlapping_and_touching_pieces_become_one_and_the_ends_are_cut_off() {
        Stretches some = Stretches.merged(List.of(
                new Stretch(1.0, 1.5), new Stretch(-0.2, 0.2), new Stretch(0.5, 0.7), new Stretch(0.2, 0.3)), 1.2);
        assertEquals(List.of(new Stretch(0, 0.3), new Stretch(0.5, 0.7), new Stretch(1.0, 1.2)), some.covered());
        assertEquals(List.of(new Stretch(0.3, 0.5), new Stretch(0.7, 1.0)), some.open());
        assertEquals(0.7 / 1.2, some.share(), ROUNDING);
        assertEquals(0.3, some.longestOpen(), ROUNDING);
    }

    @Test
    void a_piece_inside_another_does_not_shorten_it() {
        Stretches some = Stretches.merged(List.of(new Stretch(0.1, 0.9), new Stretch(0.2, 0.3)), 1.2);
        assertEquals(List.of(new Stretch(0.1, 0.9)), some.covered());
    }

    @Test
    void pieces_that_meet_but_for_rounding_leave_nothing_open() {
        Stretches all = Stretches.merged(List.of(
                new Stretch(1e-12, 0.3), new Stretch(0.1 + 0.2, 0.7), new Stretch(0.7, 1 - 1e-12)), 1);
        assertEquals(List.of(new Stretch(0, 1)), all.covered());
        assertEquals(List.of(), all.open());
        assertEquals(1, all.share());
        assertEquals(0, all.longestOpen());
    }

    @Test
    void a_millimetre_between_two_pieces_stays_open() {
        Stretches some = Stretches.merged(List.of(new Stretch(0, 0.6), new Stretch(0.601, 1.2)), 1.2);
        assertEquals(List.of(new Stretch(0.6, 0.601)), some.open());
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.001, 1, 1000})
    void the_hair_is_a_share_of_the_length(double length) {
        assertEquals(List.of(new Stretch(0, length)), cutInTwoAndShortBy(0.5e-9, length).covered());
        assertEquals(3, cutInTwoAndShortBy(2e-9, length).open().size());
        Stretch sliver = new Stretch(0.5 * length, (0.5 + 0.5e-9) * length);
        Stretch splinter = new Stretch(0.5 * length, (0.5 + 2e-9) * length);
        assertEquals(List.of(splinter), Stretches.merged(List.of(splinter), length).covered());
        assertEquals(List.of(), Stretches.merged(List.of(sliver), length).covered());
        assertFalse(Stretches.reaches(sliver, 1, length));
        assertTrue(Stretches.reaches(splinter, 1, length));
    }

    @Test
    void pieces_without_width_or_beyond_the_ends_cover_nothing() {
        Stretches none = Stretches.merged(
                List.of(new Stretch(0.5, 0.5), new Stretch(-2, 0), new Stretch(1.2, 3)), 1.2);
        assertEquals(List.of(), none.covered());
        assertEquals(1.2, none.longestOpen());
    }

    @Test
    void results_cannot_be_changed() {
        Stretches some = Stretches.merged(List.of(new Stretch(0.1, 0.2)), 1.2);
        assertThrows(UnsupportedOperationException.class, () -> some.covered().clear());
        assertThrows(UnsupportedOperationException.class, () -> some.open().clear());
    }

    @ParameterizedTest
    @ValueSource(doubles = {1, 0.017, 0.1, 2.54e-2})
    void stretches_agree_with_counting_cells(double cell) {
        Random random = new Random(417);
        for (int round = 0; round < 500; round++) {
            CellGrid grid = CellGrid.random(random);
            Stretches stretches = Stretches.merged(grid.stretches(cell), grid.count() * cell);
            assertSame(grid.runs(true), stretches.covered(), cell);
            assertSame(grid.runs(false), stretches.open(), cell);
            assertEquals(grid.coveredCells() / (double) grid.count(), stretches.share(), ROUNDING);
            assertEquals(grid.longestOpenCells() * cell, stretches.longestOpen(), ROUNDING);
        }
    }

    @Test
    void the_order_of_the_pieces_does_not_matter() {
        Random random = new Random(418);
        for (int round = 0; round < 200; round++) {
            CellGrid grid = CellGrid.random(random);
            List<Stretch> shuffled = new ArrayList<>(grid.stretches(0.017));
            Stretches before = Stretches.merged(shuffled, grid.count() * 0.017);
            Collections.shuffle(shuffled, random);
            assertEquals(before.covered(), Stretches.merged(shuffled, grid.count() * 0.017).covered());
        }
    }

    @Test
    void covered_and_open_add_up_to_the_length_and_merging_again_changes_nothing() {
        Random random = new Random(419);
        for (int round = 0; round < 200; round++) {
            double length = 0.4 + 2 * random.nextDouble();
            List<Stretch> pieces = random.doubles(random.nextInt(8), -0.2, length)
                    .mapToObj(from -> new Stretch(from, from + 0.5 * random.nextDouble())).toList();
            Stretches once = Stretches.merged(pieces, length);
            double open = once.open().stream().mapToDouble(Stretch::width).sum();
            assertEquals(length, once.share() * length + open, ROUNDING);
            assertEquals(once.covered(), Stretches.merged(once.covered(), length).covered());
        }
    }

    @ParameterizedTest
    @CsvSource({"0, 1.2, 0", "0.39, 1.2, 0", "0.4, 1.2, 1", "0.79, 1.2, 1", "0.8, 1.2, 2", "1.2, 1.2, 2",
        "0.3, 0.9, 1", "0.6, 0.9, 2", "0.9, 0.9, 2", "-1e-12, 0.9, 0", "0.900000000001, 0.9, 2"})
    void a_border_belongs_to_the_upper_third_and_the_far_end_to_the_last(double position, double length, int third) {
        assertEquals(third, Stretches.thirdOf(position, length));
    }

    @ParameterizedTest
    @ValueSource(doubles = {1, 0.017, 0.1, 2.54e-2})
    void thirds_agree_with_whole_number_arithmetic(double cell) {
        for (int count = 1; count <= 40; count++) {
            for (int position = 0; position <= count; position++) {
                int expected = Math.min(2, 3 * position / count);
                assertEquals(expected, Stretches.thirdOf(position * cell, count * cell));
            }
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {1, 0.017, 0.1, 2.54e-2})
    void a_piece_reaches_the_thirds_that_whole_number_arithmetic_says(double cell) {
        Random random = new Random(420);
        for (int round = 0; round < 2000; round++) {
            int count = 1 + random.nextInt(40);
            int from = random.nextInt(50) - 5;
            int to = from + random.nextInt(20);
            for (int third = 0; third < 3; third++) {
                boolean expected = Math.min(3 * to, (third + 1) * count) > Math.max(3 * from, third * count);
                Stretch piece = new Stretch(from * cell, to * cell);
                assertEquals(expected, Stretches.reaches(piece, third, count * cell));
            }
        }
    }

    @Test
    void touching_a_third_is_not_reaching_it() {
        assertFalse(Stretches.reaches(new Stretch(0, 0.4), 1, 1.2));
        assertTrue(Stretches.reaches(new Stretch(0, 0.401), 1, 1.2));
        assertFalse(Stretches.reaches(new Stretch(0.5, 0.5), 1, 1.2));
        assertTrue(Stretches.reaches(new Stretch(-1, 3), 2, 1.2));
    }

    @Test
    void what_cannot_be_is_refused_with_its_value() {
        refused("length is 0.0", () -> Stretches.merged(List.of(), 0));
        refused("length is NaN", () -> Stretches.thirdOf(0.1, Double.NaN));
        refused("position is 1.3", () -> Stretches.thirdOf(1.3, 1.2));
        refused("position is -0.1", () -> Stretches.thirdOf(-0.1, 1.2));
        refused("position is NaN", () -> Stretches.thirdOf(Double.NaN, 1.2));
        refused("third is 3", () -> Stretches.reaches(new Stretch(0, 1), 3, 1.2));
        refused("third is -1", () -> Stretches.reaches(new Stretch(0, 1), -1, 1.2));
        refused("length is -1.0", () -> Stretches.reaches(new Stretch(0, 1), 0, -1));
        refused("stretch runs from 0.5 to 0.4", () -> new Stretch(0.5, 0.4));
        refused("from is NaN", () -> new Stretch(Double.NaN, 0.4));
        refused("to is Infinity", () -> new Stretch(0, Double.POSITIVE_INFINITY));
    }

    private static void refused(String said, Runnable call) {
        String message = assertThrows(IllegalArgumentException.class, call::run).getMessage();
        assertTrue(message.startsWith(said), message);
    }

    /** Two pieces that cover the axis but for that share of it at either end and between them. */
    private static Stretches cutInTwoAndShortBy(double share, double length) {
        double gap = share * length;
        return Stretches.merged(
                List.of(new Stretch(gap, 0.25 * length), new Stretch(0.25 * length + gap, length - gap)), length);
    }

    private static void assertSame(List<int[]> cells, List<Stretch> stretches, double cell) {
        assertEquals(cells.size(), stretches.size());
        for (int i = 0; i < cells.size(); i++) {
            assertEquals(cells.get(i)[0] * cell, stretches.get(i).from(), ROUNDING);
            assertEquals(cells.get(i)[1] * cell, stretches.get(i).to(), ROUNDING);
        }
    }
}
