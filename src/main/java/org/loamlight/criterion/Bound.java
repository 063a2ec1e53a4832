package org.loamlight.criterion;

import java.math.BigDecimal;
import org.loamlight.quantity.Unit;

/** One end of a limit as written: a constant with its unit, or an exact factor of a measure of the animal. */
public sealed interface Bound {

    record Constant(BigDecimal value, Unit unit) implements Bound {
    }

    record Factor(BigDecimal factor, BodyMeasure of) implements Bound {
    }
}
