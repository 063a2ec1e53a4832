package org.loamlight.physics;

/**
 * A part of the shell of an enclosure with the area heat goes through.
 *
 * @param squareMetres              area (m2), 0 or above
 * @param wattsPerSquareMetreKelvin its U (W/m2K, see {@link Transmittance}), 0 or above; 0 where nothing goes through
 */
public record ShellPart(double squareMetres, double wattsPerSquareMetreKelvin) {

    /** @throws IllegalArgumentException if a component is negative or not finite, with the value */
    public ShellPart {
        Argument.notNegative("squareMetres", squareMetres);
        Argument.notNegative("wattsPerSquareMetreKelvin", wattsPerSquareMetreKelvin);
        Argument.finite("squareMetres * wattsPerSquareMetreKelvin", squareMetres * wattsPerSquareMetreKelvin);
    }

    /** U A (W/K). */
    public double wattsPerKelvin() {
        return squareMetres * wattsPerSquareMetreKelvin;
    }
}
