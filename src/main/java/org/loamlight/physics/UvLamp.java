package org.loamlight.physics;

import java.util.Collection;

/**
 * A burning lamp in its place.
 *
 * @param source       where it is and how its light spreads
 * @param strength     of the lamp itself (index m2), 0 or above, finite; see {@link LampStrength}
 * @param transmission share of its ultraviolet that what is mounted below it lets pass, mesh for instance; 0 (nothing)
 *                     to 1 (nothing in between)
 */
public record UvLamp(UvSource source, double strength, double transmission) {

    /** @throws IllegalArgumentException if strength or transmission is out of its range, with the value */
    public UvLamp {
        Argument.notNegative("strength", strength);
        if (!(transmission >= 0 && transmission <= 1)) {
            throw Argument.refused("transmission", transmission, "it must lie between 0 and 1");
        }
    }

    /** The same lamp hung with its middle at another height above the bare floor (m). */
    public UvLamp atHeight(double metres) {
        return new UvLamp(source.atHeight(metres), strength, transmission);
    }

    /**
     * The index this lamp gives at a place, on a surface that faces up; 0 or above, 0 if a box hides all of the lamp.
     *
     * @param boxes what may stand in the way; empty if nothing does
     * @throws IllegalArgumentException if the index is beyond the range of a double, which no lamp's is
     */
    public double index(Point place, Collection<Box> boxes) {
        return Argument.finite("index", strength * transmission * source.share(place, boxes));
    }
}
