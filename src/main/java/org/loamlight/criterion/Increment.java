package org.loamlight.criterion;

import java.math.BigDecimal;

/**
 * What a limit gains for each animal beyond the base number.
 *
 * @param baseAnimals number of animals the limit itself is for, 1 or more
 * @param share       gain per further animal as a share of the limit (0.15 for +15 %), 0 or more
 * @param compounded  whether each gain is taken of the limit already raised, or of the base
 */
public record Increment(int baseAnimals, BigDecimal share, boolean compounded) {
    /** No gain. */
    public static final Increment NONE = new Increment(1, BigDecimal.ZERO, false);

    /** Factor on the limit for a number of animals; 1 up to the base number. */
    BigDecimal factorFor(int animals) {
        int further = Math.max(0, animals - baseAnimals);
        return compounded ? BigDecimal.ONE.add(share).pow(further) : BigDecimal.ONE.add(share.multiply(BigDecimal.valueOf(further)));
    }
}
