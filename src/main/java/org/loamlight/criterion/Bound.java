package org.loamlight.criterion;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;
import org.loamlight.quantity.Unit;

/** One end of a limit as written: a constant with its unit, or an exact factor of a measure of the animal. */
public sealed interface Bound {

    record Constant(BigDecimal value, Unit unit) implements Bound {
        /** The value in another unit of the same dimension. */
        public double in(Unit other) {
            return unit.convert(value, other);
        }
    }

    /**
     * A factor of a measure, or of its square or cube: 12 times the squared length of head and body.
     *
     * @param power   1, 2 or 3; 2 and 3 for lengths only, which make an area and a volume
     * @param divided length the product is divided by, so that a volume becomes a floor; empty when it is not
     */
    record Factor(BigDecimal factor, BodyMeasure of, int power, Optional<Constant> divided) implements Bound {

        /** A plain multiple of a measure. */
        public Factor(BigDecimal factor, BodyMeasure of) {
            this(factor, of, 1, Optional.empty());
        }

        public Factor {
            if (power < 1 || power > 3 || power > 1 && of.unit() != Unit.CENTIMETRE || divided.isPresent() && power == 1) {
                throw new IllegalArgumentException("Nothing is measured in " + of + " to the power of " + power);
            }
        }

        /** The unit of {@link #times}: that of the measure, cm² or cm³. */
        public Unit unit() {
            return switch (divided.isPresent() ? power - 1 : power) {
                case 2 -> Unit.SQUARE_CENTIMETRE;
                case 3 -> Unit.MILLILITRE;
                default -> of.unit();
            };
        }

        /** The product with a value of the measure, exact but for a division. */
        public BigDecimal times(BigDecimal measure) {
            BigDecimal product = factor.multiply(power == 1 ? measure : measure.pow(power));
            return divided.map(by -> product.divide(BigDecimal.valueOf(by.unit().convert(by.value(), Unit.CENTIMETRE)), MathContext.DECIMAL128))
                    .orElse(product);
        }

        /** How much the product changes with the measure: its derivative, in {@link #unit()} per unit of the measure. */
        public double slope(double measure) {
            return power * times(BigDecimal.valueOf(measure)).doubleValue() / measure;
        }
    }
}
