package org.loamlight.physics;

/**
 * A solid thing that lets no light through, as a box with its faces along the walls: a shelf, a stone, a closed hide.
 *
 * @param low  its corner lowest on all three axes
 * @param high its corner highest on all three axes; equal to {@code low} on an axis on which it has no width
 */
public record Box(Point low, Point high) {

    /**
     * How far below its faces the inside of a box begins (m): 1 nm, so that a place on top of a shelf, whose height comes
     * from a sum of measured heights, is not inside the shelf by rounding.
     */
    public static final double HAIR_METRES = 1e-9;

    /** @throws IllegalArgumentException if {@code low} is above {@code high} on an axis, with the values */
    public Box {
        new Stretch(low.x(), high.x());
        new Stretch(low.y(), high.y());
        new Stretch(low.z(), high.z());
    }

    /**
     * Whether the straight way between two places passes through the inside of the box. A way along a face, over an edge
     * or that ends on a face does not; one that begins or ends inside does. A box thinner than twice
     * {@link #HAIR_METRES} has no inside and blocks nothing.
     */
    public boolean blocks(Point from, Point to) {
        return !isBeside(from.x(), to.x(), low.x(), high.x()) && !isBeside(from.y(), to.y(), low.y(), high.y())
                && !isBeside(from.z(), to.z(), low.z(), high.z()) && isCrossed(from, to);
    }

    /** Whether a way stays on one side of the box on an axis: told at once of most boxes. */
    static boolean isBeside(double from, double to, double low, double high) {
        return from <= low && to <= low || from >= high && to >= high;
    }

    private boolean isCrossed(Point from, Point to) {
        return !Passage.WHOLE.between(insideX(), from.x(), to.x()).between(insideY(), from.y(), to.y())
                .between(insideZ(), from.z(), to.z()).isNone();
    }

    /** Between which x the inside lies. */
    Stretch insideX() {
        return inside(low.x(), high.x());
    }

    /** Between which y the inside lies. */
    Stretch insideY() {
        return inside(low.y(), high.y());
    }

    /** Between which z the inside lies. */
    Stretch insideZ() {
        return inside(low.z(), high.z());
    }

    /** The inside between two faces; no place lies strictly inside what has no width. */
    private static Stretch inside(double from, double to) {
        double low = from + HAIR_METRES;
        return new Stretch(low, StrictMath.max(low, to - HAIR_METRES));
    }
}
