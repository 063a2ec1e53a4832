package org.loamlight.setup;

import org.loamlight.quantity.Unit;

/** What it takes to lift a thing: the scale nobody has to fetch. The masses are judgement, their ± covers what is meant. */
public enum Lift {
    ONE_FINGER(0.2, 0.2), ONE_HAND(1.5, 1.2), TWO_HANDS(6, 4), UNKNOWN(Double.NaN, 0);

    private final double kilograms;
    private final double halfWidth;

    Lift(double kilograms, double halfWidth) {
        this.kilograms = kilograms;
        this.halfWidth = halfWidth;
    }

    /** The mass this stands for (kg). */
    Measure mass() {
        return this == UNKNOWN ? Measure.UNKNOWN : new Measure(kilograms, halfWidth / StrictMath.sqrt(3), Unit.KILOGRAM);
    }
}
