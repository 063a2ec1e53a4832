package org.loamlight.physics;

/**
 * How irradiance falls with distance below a lamp. All distances and lengths are in metres, finite and above 0;
 * anything else throws IllegalArgumentException with the name and the value.
 *
 * <p>A bulb is taken as a point, a tube as a finite line that shines as a Lambertian source (Keitz' formula as used for
 * lamp output in the IUVA protocol: Lawal, Dussert, Howarth et al., IUVA News 2017), seen from the perpendicular
 * through its middle. Neither knows a reflector, a lens or a mesh: a bulb with a built-in reflector falls off more
 * slowly close up than its square.
 *
 * <p>With D the distance from the axis, L the arc length and alpha = arctan(L / (2 D)), Keitz gives the irradiance of a
 * tube of radiant flux P as E = P (2 alpha + sin 2 alpha) / (2 pi^2 D L).
 */
public final class LightField {

    /** The local exponent of a point source at every distance; the counterpart of {@link #localExponent}. */
    public static final double POINT_EXPONENT = 2.0;

    private LightField() {
    }

    /**
     * The irradiance of a point source at one distance over that at another, E(to)/E(from), by the inverse square law;
     * 0.25 for double the distance.
     *
     * @param fromMetres distance at which the irradiance is known (m), above 0
     * @param toMetres   distance at which it is wanted (m), above 0
     */
    public static double pointScale(double fromMetres, double toMetres) {
        double ratio = Argument.positive("fromMetres", fromMetres) / Argument.positive("toMetres", toMetres);
        return ratio * ratio;
    }

    /**
     * Keitz' factor E D L / P of a tube (no unit): (2 alpha + sin 2 alpha) / (2 pi^2). It runs from 1/(2 pi) right at
     * the tube down to 0 far away. Irradiance (W/m2) is this factor times P (W) over D L (m2).
     *
     * @param distanceMetres  from the lamp axis (m), above 0
     * @param arcLengthMetres from electrode tip to electrode tip (m), above 0
     */
    public static double tubeFactor(double distanceMetres, double arcLengthMetres) {
        return angularTerm(slope(distanceMetres, arcLengthMetres)) / (2 * StrictMath.PI * StrictMath.PI);
    }

    /**
     * The irradiance of a tube at one distance over that at another, E(to)/E(from), by Keitz; between the first power
     * of the distances (close up) and their square (far away).
     *
     * @param fromMetres      distance from the lamp axis at which the irradiance is known (m), above 0
     * @param toMetres        distance from the lamp axis at which it is wanted (m), above 0
     * @param arcLengthMetres from electrode tip to electrode tip (m), above 0
     */
    public static double tubeScale(double fromMetres, double toMetres, double arcLengthMetres) {
        double known = tubeFactor(Argument.positive("fromMetres", fromMetres), arcLengthMetres) / fromMetres;
        double wanted = tubeFactor(Argument.positive("toMetres", toMetres), arcLengthMetres) / toMetres;
        return wanted / known;
    }

    /**
     * The angle alpha between the perpendicular and the line to one end of the tube, arctan(L / (2 D)) (rad), above 0
     * and at most pi/2.
     *
     * @param distanceMetres  from the lamp axis (m), above 0
     * @param arcLengthMetres from electrode tip to electrode tip (m), above 0
     */
    public static double halfAngleRadians(double distanceMetres, double arcLengthMetres) {
        return StrictMath.atan(slope(distanceMetres, arcLengthMetres));
    }

    /**
     * The local exponent n = -d ln E / d ln D of a tube (no unit), from 1 close up to 2 far away: a distance that is
     * uncertain by 1 % makes the irradiance uncertain by n %. The derivative of Keitz' formula,
     * n = 1 + 4 t / ((1 + t^2)^2 (2 alpha + sin 2 alpha)) with t = tan alpha = L / (2 D).
     *
     * @param distanceMetres  from the lamp axis (m), above 0
     * @param arcLengthMetres from electrode tip to electrode tip (m), above 0
     */
    public static double localExponent(double distanceMetres, double arcLengthMetres) {
        double slope = slope(distanceMetres, arcLengthMetres);
        double widening = 1 + slope * slope;
        return 1 + 4 * slope / (widening * widening * angularTerm(slope));
    }

    /** tan alpha; refused as well where it leaves the range of a double, which no lamp does. */
    private static double slope(double distanceMetres, double arcLengthMetres) {
        Argument.positive("arcLengthMetres", arcLengthMetres);
        Argument.positive("distanceMetres", distanceMetres);
        return Argument.positive("arcLengthMetres / distanceMetres / 2", arcLengthMetres / distanceMetres / 2);
    }

    /** 2 alpha + sin 2 alpha, from the tangent of alpha. */
    private static double angularTerm(double slope) {
        double twice = 2 * StrictMath.atan(slope);
        return twice + StrictMath.sin(twice);
    }
}
