package org.loamlight.physics;

import java.util.Collection;

/**
 * A lamp's shape as a source of ultraviolet: how its light spreads, apart from how strong it is. What reaches a place is
 * the strength (index m2) times the {@link #share} (1/m2).
 *
 * <p>The receiver is a flat surface facing straight up, because that is what the UV index is defined for: erythemally
 * weighted irradiance of a horizontal plane (review of UV index measurement, PubMed Central PMC6121668, abstract). A
 * meter that is turned towards a lamp standing aside shows more, by one over the cosine of the angle.
 *
 * <p>Nearer than {@link #NEAREST_METRES} a source is taken as that far away: inside the lamp's own body no law of
 * distance holds, and none may give infinity.
 */
public sealed interface UvSource permits PointSource, LineSource {

    /** Nearest distance at which the laws are used (m): about the half thickness of a lamp. A judgement, no source. */
    double NEAREST_METRES = 0.01;

    /** Where the middle of the lamp is. */
    Point middle();

    /** The same lamp hung with its middle at another height above the bare floor (m). */
    UvSource atHeight(double metres);

    /**
     * Index at a place for a strength of 1 index m2 (1/m2), 0 or above; 0 at the height of the lamp and above it.
     *
     * @param place where the surface lies that faces up
     * @param boxes what may stand in the way and lets nothing pass; empty if nothing does
     */
    double share(Point place, Collection<Box> boxes);

    /**
     * Index straight below the middle of the lamp for a strength of 1 index m2 (1/m2), above 0; it falls all the way
     * with the distance beyond {@link #NEAREST_METRES}.
     *
     * @param distanceMetres below the middle (m), above 0, finite
     */
    double shareStraightBelow(double distanceMetres);
}
