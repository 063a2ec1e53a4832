package org.loamlight.physics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FloorPlanTest {

    private static final double ROUNDING = 1e-12;
    private static final double LENGTH = 1.2;
    private static final double DEPTH = 0.6;

    @Test
    void without_pieces_nothing_is_covered_and_there_is_no_refuge() {
        FloorPlan bare = floor();
        assertEquals(0, bare.share());
        assertEquals(0, bare.coveredSquareMetres());
        assertEquals(List.of(), bare.covers());
        assertEquals(Optional.empty(), bare.refuge(0.05));
    }

    @Test
    void what_is_covered_twice_counts_once() {
        FloorPlan plan = floor(piece(0.1, 0.5, 0.1, 0.4), piece(0.3, 0.7, 0.2, 0.5), piece(0.1, 0.5, 0.1, 0.4));
        double union = 0.4 * 0.3 + 0.4 * 0.3 - 0.2 * 0.2;
        assertEquals(union / (LENGTH * DEPTH), plan.share(), ROUNDING);
        assertEquals(union, plan.coveredSquareMetres(), ROUNDING);
    }

    @Test
    void pieces_are_cut_off_at_the_walls_and_nothing_outside_counts() {
        FloorPlan plan = floor(piece(-0.2, 0.3, -1, 0.2), piece(1.2, 1.5, 0, 0.6), piece(0, 1.2, 0.6, 0.9));
        assertEquals(List.of(piece(0, 0.3, 0, 0.2)), plan.covers());
        assertEquals(0.3 * 0.2 / (LENGTH * DEPTH), plan.share(), ROUNDING);
    }

    @Test
    void a_piece_without_width_covers_nothing() {
        assertEquals(List.of(), floor(piece(0.2, 0.2, 0, 0.6), piece(0, 1.2, 0.3, 0.3)).covers());
    }

    @Test
    void pieces_larger_than_the_floor_cover_it_once_and_leave_no_way_to_go() {
        FloorPlan plan = floor(piece(-1, 3, -1, 3), piece(0, 1.2, 0, 0.6));
        assertEquals(1, plan.share());
        assertEquals(0, plan.refuge(0.05).orElseThrow().metres());
    }

    @Test
    void one_small_hide_in_a_corner_is_as_far_as_the_diagonal_of_the_rest() {
        FloorPlan.Refuge refuge = floor(piece(0, 0.2, 0, 0.2)).refuge(0.01).orElseThrow();
        assertEquals(StrictMath.hypot(1.0, 0.4), refuge.metres(), ROUNDING);
        assertEquals(StrictMath.hypot(0.01, 0.01) / 2, refuge.errorMetres(), ROUNDING);
    }

    @Test
    void between_two_hides_along_the_ends_the_middle_is_farthest() {
        FloorPlan plan = floor(piece(0, 0.2, 0, 0.6), piece(0.9, 1.2, 0, 0.6));
        assertEquals(0.35, plan.refuge(0.05).orElseThrow().metres(), ROUNDING);
    }

    /** The farthest place, 0.3500 m along, lies on no point of a grid of 7 cm; the error says how much that can hide. */
    @Test
    void a_coarse_grid_misses_no_more_than_it_says() {
        FloorPlan plan = floor(piece(0, 0.2, 0, 0.6), piece(0.9, 1.2, 0, 0.6));
        for (double step : new double[] {0.5, 0.2, 0.07, 0.031, 0.013}) {
            FloorPlan.Refuge refuge = plan.refuge(step).orElseThrow();
            assertTrue(refuge.metres() <= 0.35 + ROUNDING && refuge.metres() + refuge.errorMetres() >= 0.35, refuge::toString);
            assertTrue(refuge.errorMetres() <= step * StrictMath.sqrt(0.5) + ROUNDING, refuge::toString);
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {1, 0.017, 0.1, 2.54e-2})
    void the_share_agrees_with_counting_tiles(double tile) {
        Random random = new Random(421);
        for (int round = 0; round < 300; round++) {
            int columns = 1 + random.nextInt(30);
            int rows = 1 + random.nextInt(30);
            List<int[]> blocks = blocks(random);
            List<Rectangle> pieces = blocks.stream()
                    .map(block -> piece(block[0] * tile, block[1] * tile, block[2] * tile, block[3] * tile)).toList();
            double counted = covered(blocks, columns, rows) / (double) (columns * rows);
            assertEquals(counted, new FloorPlan(columns * tile, rows * tile, pieces).share(), ROUNDING);
        }
    }

    @Test
    void merged_cover_never_exceeds_the_floor_nor_the_sum_of_its_pieces_and_grows_with_each() {
        Random random = new Random(422);
        for (int round = 0; round < 300; round++) {
            List<Rectangle> pieces = pieces(random);
            double sum = 0;
            double before = 0;
            for (int count = 1; count <= pieces.size(); count++) {
                FloorPlan plan = new FloorPlan(LENGTH, DEPTH, pieces.subList(0, count));
                sum += new FloorPlan(LENGTH, DEPTH, List.of(pieces.get(count - 1))).share();
                assertTrue(plan.share() <= 1 && plan.share() <= sum + ROUNDING && plan.share() >= before - ROUNDING);
                before = plan.share();
            }
        }
    }

    @Test
    void a_mirrored_turned_or_shuffled_plan_gives_the_same_numbers() {
        Random random = new Random(423);
        for (int round = 0; round < 60; round++) {
            List<Rectangle> pieces = pieces(random);
            FloorPlan plan = new FloorPlan(LENGTH, DEPTH, pieces);
            List<Rectangle> shuffled = new ArrayList<>(pieces);
            Collections.shuffle(shuffled, random);
            List<Rectangle> leftToRight = pieces.stream()
                    .map(piece -> new Rectangle(mirrored(piece.along(), LENGTH), piece.across())).toList();
            List<Rectangle> frontToBack = pieces.stream()
                    .map(piece -> new Rectangle(piece.along(), mirrored(piece.across(), DEPTH))).toList();
            List<Rectangle> turned = pieces.stream().map(piece -> new Rectangle(piece.across(), piece.along())).toList();
            assertSame(plan, new FloorPlan(LENGTH, DEPTH, shuffled));
            assertSame(plan, new FloorPlan(LENGTH, DEPTH, leftToRight));
            assertSame(plan, new FloorPlan(LENGTH, DEPTH, frontToBack));
            assertSame(plan, new FloorPlan(DEPTH, LENGTH, turned));
        }
    }

    @Test
    void another_hide_never_makes_the_way_longer_and_a_finer_grid_stays_within_the_error() {
        Random random = new Random(424);
        for (int round = 0; round < 60; round++) {
            List<Rectangle> pieces = pieces(random);
            Optional<FloorPlan.Refuge> all = new FloorPlan(LENGTH, DEPTH, pieces).refuge(0.05);
            Optional<FloorPlan.Refuge> fine = new FloorPlan(LENGTH, DEPTH, pieces).refuge(0.0125);
            Optional<FloorPlan.Refuge> fewer = new FloorPlan(LENGTH, DEPTH, pieces.subList(1, pieces.size())).refuge(0.05);
            assertTrue(fewer.isEmpty() || all.orElseThrow().metres() <= fewer.get().metres());
            // The grid of 5 cm is part of the one of 1.25 cm.
            assertTrue(all.isEmpty() || fine.orElseThrow().metres() >= all.get().metres() - ROUNDING
                    && fine.get().metres() <= all.get().metres() + all.get().errorMetres());
        }
    }

    @Test
    void a_rectangle_is_at_0_from_what_it_holds_and_else_at_its_nearest_side_or_corner() {
        Rectangle piece = piece(0.2, 0.5, 0.1, 0.3);
        assertEquals(0, piece.distanceTo(0.3, 0.2));
        assertEquals(0, piece.distanceTo(0.5, 0.3));
        assertEquals(0.1, piece.distanceTo(0.1, 0.2), ROUNDING);
        assertEquals(0.2, piece.distanceTo(0.3, 0.5), ROUNDING);
        assertEquals(0.5, piece.distanceTo(0.8, 0.7), ROUNDING);
    }

    @Test
    void what_cannot_be_is_refused_with_its_value() {
        refused("lengthMetres is 0.0", () -> new FloorPlan(0, 1, List.of()));
        refused("depthMetres is NaN", () -> new FloorPlan(1, Double.NaN, List.of()));
        refused("stepMetres is 0.0", () -> floor(piece(0, 1, 0, 1)).refuge(0));
        refused("stepMetres is NaN", () -> floor().refuge(Double.NaN));
        refused("stepMetres is 1.0E-5", () -> floor(piece(0, 1, 0, 1)).refuge(1e-5));
        refused("stepMetres is 4.9E-324", () -> floor(piece(0, 1, 0, 1)).refuge(Double.MIN_VALUE));
        refused("alongMetres is NaN", () -> piece(0, 1, 0, 1).distanceTo(Double.NaN, 0));
        refused("acrossMetres is Infinity", () -> piece(0, 1, 0, 1).distanceTo(0, Double.POSITIVE_INFINITY));
    }

    @Test
    void results_cannot_be_changed() {
        assertThrows(UnsupportedOperationException.class, () -> floor(piece(0, 1, 0, 1)).covers().clear());
    }

    private static void refused(String said, Runnable call) {
        String message = assertThrows(IllegalArgumentException.class, call::run).getMessage();
        assertTrue(message.startsWith(said), message);
    }

    private static void assertSame(FloorPlan plan, FloorPlan other) {
        assertEquals(plan.share(), other.share(), ROUNDING);
        assertEquals(plan.refuge(0.03).map(FloorPlan.Refuge::metres).orElse(-1.0),
                other.refuge(0.03).map(FloorPlan.Refuge::metres).orElse(-1.0), 1e-9);
    }

    private static FloorPlan floor(Rectangle... pieces) {
        return new FloorPlan(LENGTH, DEPTH, List.of(pieces));
    }

    private static Rectangle piece(double left, double right, double front, double back) {
        return new Rectangle(new Stretch(left, right), new Stretch(front, back));
    }

    private static Stretch mirrored(Stretch side, double length) {
        return new Stretch(length - side.to(), length - side.from());
    }

    /** One to eight pieces, some reaching past the walls or lying beyond them. */
    private static List<Rectangle> pieces(Random random) {
        List<Rectangle> pieces = new ArrayList<>();
        for (int left = 1 + random.nextInt(8); left > 0; left--) {
            double along = 1.5 * random.nextDouble() - 0.2;
            double across = 0.9 * random.nextDouble() - 0.2;
            pieces.add(piece(along, along + 0.4 * random.nextDouble(), across, across + 0.3 * random.nextDouble()));
        }
        return pieces;
    }

    private static List<int[]> blocks(Random random) {
        List<int[]> blocks = new ArrayList<>();
        for (int left = random.nextInt(10); left > 0; left--) {
            int column = random.nextInt(40) - 5;
            int row = random.nextInt(40) - 5;
            blocks.add(new int[] {column, column + random.nextInt(12), row, row + random.nextInt(12)});
        }
        return blocks;
    }

    private static int covered(List<int[]> blocks, int columns, int rows) {
        int count = 0;
        for (int column = 0; column < columns; column++) {
            for (int row = 0; row < rows; row++) {
                int x = column;
                int y = row;
                count += blocks.stream().anyMatch(b -> b[0] <= x && x < b[1] && b[2] <= y && y < b[3]) ? 1 : 0;
            }
        }
        return count;
    }
}
