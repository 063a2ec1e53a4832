package org.loamlight.physics;

/**
 * The density of a material as it lies, pores and all, between two values.
 *
 * @param low  kg/m3, above 0, finite
 * @param high kg/m3, not below {@code low}, finite
 */
public record DensityRange(double low, double high) {

    /** @throws IllegalArgumentException if an end is not above 0 or the ends are the wrong way round, with the values */
    public DensityRange {
        Argument.positive("low", low);
        Argument.positive("high", high);
        if (low > high) {
            throw new IllegalArgumentException("density runs from " + low + " to " + high + "; low must not be above high");
        }
    }

    /** The narrowest range that holds both. */
    public DensityRange joined(DensityRange other) {
        return new DensityRange(StrictMath.min(low, other.low), StrictMath.max(high, other.high));
    }

    /**
     * The mass of a volume of it (kg).
     *
     * @param cubicMetres 0 or above, finite
     * @throws IllegalArgumentException if the volume is negative, NaN or infinite, with the value
     */
    public MassRange mass(double cubicMetres) {
        Argument.notNegative("cubicMetres", cubicMetres);
        return new MassRange(low * cubicMetres, high * cubicMetres);
    }
}
