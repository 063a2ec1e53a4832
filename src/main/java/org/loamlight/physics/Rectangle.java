package org.loamlight.physics;

/**
 * A piece of the floor seen from above, its sides along those of the enclosure and its border included.
 *
 * @param along  from its left to its right side, from the left wall (m)
 * @param across from its front to its back, from the front of the enclosure (m)
 */
public record Rectangle(Stretch along, Stretch across) {

    /**
     * The straight distance (m) from a point to the nearest point of this piece: 0 inside it and on its border.
     *
     * @param alongMetres  position from the left wall (m), finite
     * @param acrossMetres position from the front (m), finite
     * @throws IllegalArgumentException if a position is NaN or infinite, with the value
     */
    public double distanceTo(double alongMetres, double acrossMetres) {
        return StrictMath.sqrt(squaredDistanceTo(Argument.finite("alongMetres", alongMetres),
                Argument.finite("acrossMetres", acrossMetres)));
    }

    /** The square of the distance (m2), for searches that compare many and need the root of one only. */
    double squaredDistanceTo(double alongMetres, double acrossMetres) {
        double aside = outside(along, alongMetres);
        double before = outside(across, acrossMetres);
        return aside * aside + before * before;
    }

    private static double outside(Stretch side, double position) {
        return StrictMath.max(0, StrictMath.max(side.from() - position, position - side.to()));
    }
}
