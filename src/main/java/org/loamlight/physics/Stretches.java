package org.loamlight.physics;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;

/**
 * What pieces cover of one axis of the enclosure, which runs from 0 to its length, and what they leave open. Immutable.
 *
 * <p>Positions come from sums and differences of measured lengths, so everything here that is narrower than
 * {@link #HAIR} of the length counts as nothing: a gap of less than a hair is closed, a piece of less than a hair does
 * not cover.
 */
public final class Stretches {

    /** Share of the axis below which a gap or an overlap is rounding: 1 nm on 1 m, far below what a ruler shows. */
    public static final double HAIR = 1e-9;

    private static final int THIRDS = 3;

    private final List<Stretch> covered;
    private final double length;

    private Stretches(List<Stretch> covered, double length) {
        this.covered = List.copyOf(covered);
        this.length = length;
    }

    /**
     * The parts of the axis that the pieces cover together. Pieces may overlap, touch, stand in any order and reach
     * past the ends, where they are cut off. Without pieces all is open.
     *
     * @param pieces none null
     * @param length of the axis (m), above 0, finite
     * @throws IllegalArgumentException if the length is not above 0 or not finite, with the value
     */
    public static Stretches merged(Collection<Stretch> pieces, double length) {
        double hair = HAIR * Argument.positive("length", length);
        List<Stretch> sorted = new ArrayList<>(pieces.size());
        for (Stretch piece : pieces) {
            if (overlap(piece, 0, length) > hair) {
                sorted.add(clipped(piece, length));
            }
        }
        sorted.sort(Comparator.comparingDouble(Stretch::from));
        return new Stretches(joined(sorted, hair), length);
    }

    /** The covered stretches, ascending and apart from each other; empty if nothing is covered. */
    public List<Stretch> covered() {
        return covered;
    }

    /** The open stretches, ascending and apart from each other; empty if all is covered. */
    public List<Stretch> open() {
        List<Stretch> open = new ArrayList<>();
        double reached = 0;
        for (Stretch piece : covered) {
            addIfWide(open, reached, piece.from());
            reached = piece.to();
        }
        addIfWide(open, reached, length);
        return List.copyOf(open);
    }

    /** The covered share of the length, 0 (nothing) to 1 (all). */
    public double share() {
        return covered.stream().mapToDouble(Stretch::width).sum() / length;
    }

    /** The width of the widest open stretch (m): 0 if all is covered, the length if nothing is. */
    public double longestOpen() {
        return open().stream().mapToDouble(Stretch::width).max().orElse(0);
    }

    /**
     * The third of the axis in which a position lies: 0, 1 or 2 from the low end. A position on the border of two thirds
     * (or less than a hair below it) belongs to the upper one, the far end to the last.
     *
     * @param position on the axis (m), 0 to {@code length}, with a hair to spare
     * @param length   of the axis (m), above 0, finite
     * @throws IllegalArgumentException if the position is not on the axis or the length is not above 0, with the values
     */
    public static int thirdOf(double position, double length) {
        double share = position / Argument.positive("length", length);
        if (!(share >= -HAIR && share <= 1 + HAIR)) {
            throw Argument.refused("position", position, "it must lie on the axis, from 0 to " + length);
        }
        int third = (int) StrictMath.floor(THIRDS * (share + HAIR));
        return StrictMath.min(THIRDS - 1, third);
    }

    /**
     * Does a piece overlap a third of the axis by more than a hair? A piece that only touches its border does not, nor
     * does a piece without width: ask {@link #thirdOf} for that.
     *
     * @param piece  may reach past the ends of the axis
     * @param third  0, 1 or 2 from the low end
     * @param length of the axis (m), above 0, finite
     * @throws IllegalArgumentException if {@code third} is not 0, 1 or 2 or the length is not above 0, with the value
     */
    public static boolean reaches(Stretch piece, int third, double length) {
        Argument.positive("length", length);
        if (third < 0 || third >= THIRDS) {
            throw new IllegalArgumentException("third is " + third + "; it must be 0, 1 or 2");
        }
        return overlap(piece, third * length / THIRDS, (third + 1) * length / THIRDS) > HAIR * length;
    }

    /** The width that a piece shares with [from, to]; negative if they are apart. */
    private static double overlap(Stretch piece, double from, double to) {
        return StrictMath.min(piece.to(), to) - StrictMath.max(piece.from(), from);
    }

    /** Cuts a piece off at both ends of the axis and draws an end that is a hair short out to it. */
    private static Stretch clipped(Stretch piece, double length) {
        double from = piece.from() <= HAIR * length ? 0 : piece.from();
        double to = piece.to() >= length - HAIR * length ? length : piece.to();
        return new Stretch(from, to);
    }

    private static List<Stretch> joined(List<Stretch> sorted, double hair) {
        List<Stretch> joined = new ArrayList<>();
        for (Stretch piece : sorted) {
            int last = joined.size() - 1;
            if (last >= 0 && piece.from() - joined.get(last).to() <= hair) {
                Stretch before = joined.get(last);
                joined.set(last, new Stretch(before.from(), StrictMath.max(before.to(), piece.to())));
            } else {
                joined.add(piece);
            }
        }
        return joined;
    }

    private static void addIfWide(List<Stretch> open, double from, double to) {
        if (to > from) {
            open.add(new Stretch(from, to));
        }
    }
}
