package org.loamlight.setup;

import java.util.Objects;
import org.loamlight.quantity.Amount;
import org.loamlight.quantity.Unit;

/**
 * A measured or stated value of a setup, or the fact that it is not known.
 *
 * @param value               in {@code unit}; NaN when not known
 * @param standardUncertainty in the same unit (k = 1), zero or more; 0 when not known
 * @param unit                the unit this kind of answer is kept in
 */
public record Measure(double value, double standardUncertainty, Unit unit) {
    /** Not told, or "not looked". */
    public static final Measure UNKNOWN = new Measure(Double.NaN, 0, Unit.PIECE);

    public Measure {
        Objects.requireNonNull(unit, "unit");
    }

    public boolean isKnown() {
        return !Double.isNaN(value);
    }

    /** The value for print. Only for a known measure. */
    public Amount amount() {
        return new Amount(value, unit);
    }
}
