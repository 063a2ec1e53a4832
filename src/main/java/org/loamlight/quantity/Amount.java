package org.loamlight.quantity;

import java.util.Objects;

/** A number with its unit, for print and for trails: {@code 30 cm}. */
public record Amount(double value, Unit unit) {
    public Amount {
        Objects.requireNonNull(unit, "unit");
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("An amount is finite; got " + value + " " + unit.symbol());
        }
    }
}
