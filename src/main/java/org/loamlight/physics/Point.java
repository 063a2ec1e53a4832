package org.loamlight.physics;

/**
 * A place in the enclosure.
 *
 * @param x along the length, from the left wall (m)
 * @param y across the depth, from the front (m)
 * @param z above the bare floor (m)
 */
public record Point(double x, double y, double z) {

    /** How far a coordinate may reach to either side (m): past every building, so that no square of one overflows. */
    public static final double REACH_METRES = 1e6;

    /** @throws IllegalArgumentException if a coordinate is NaN or beyond {@link #REACH_METRES}, with its name and value */
    public Point {
        require("x", x);
        require("y", y);
        require("z", z);
    }

    private static void require(String name, double metres) {
        if (!(StrictMath.abs(metres) <= REACH_METRES)) {
            throw Argument.refused(name, metres, "it must lie between -" + REACH_METRES + " and " + REACH_METRES + " m");
        }
    }

    /** The same place on the axis at another height above the bare floor (m). */
    public Point atHeight(double metres) {
        return new Point(x, y, metres);
    }

    /** The straight distance to another place (m), 0 or above. */
    public double distanceTo(Point other) {
        return Distances.between(x, y, z, other.x, other.y, other.z);
    }

    /** The place that share of the way to another one: itself at 0, the other at 1. */
    public Point towards(Point other, double share) {
        return new Point(x + share * (other.x - x), y + share * (other.y - y), z + share * (other.z - z));
    }
}
