package org.loamlight.physics;

/**
 * A mass between two values.
 *
 * @param low  kg, 0 or above, finite
 * @param high kg, not below {@code low}, finite
 */
public record MassRange(double low, double high) {

    /** The mass of nothing. */
    public static final MassRange NONE = new MassRange(0, 0);

    /** @throws IllegalArgumentException if an end is negative or the ends are the wrong way round, with the values */
    public MassRange {
        Argument.notNegative("low", low);
        Argument.notNegative("high", high);
        if (low > high) {
            throw new IllegalArgumentException("mass runs from " + low + " to " + high + "; low must not be above high");
        }
    }

    /** A mass that is known as one value (kg), 0 or above. */
    public static MassRange of(double kilograms) {
        return new MassRange(kilograms, kilograms);
    }

    /** Both together: the ends add up, as the worst is asked for and not the likeliest. */
    public MassRange plus(MassRange other) {
        return new MassRange(low + other.low, high + other.high);
    }
}
