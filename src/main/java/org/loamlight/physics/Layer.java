package org.loamlight.physics;

/**
 * One layer of a pane or wall.
 *
 * @param metres              thickness (m), above 0
 * @param wattsPerMetreKelvin thermal conductivity lambda (W/mK), above 0
 */
public record Layer(double metres, double wattsPerMetreKelvin) {

    /** @throws IllegalArgumentException if a component is not a finite number above 0, with the value */
    public Layer {
        Argument.positive("metres", metres);
        Argument.positive("wattsPerMetreKelvin", wattsPerMetreKelvin);
    }

    /** The thermal resistance R = d / lambda (m2K/W; ISO 6946). */
    public double resistance() {
        return Argument.positive("metres / wattsPerMetreKelvin", metres / wattsPerMetreKelvin);
    }
}
