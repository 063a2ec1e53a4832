package org.loamlight.derivation;

import java.util.Collection;
import org.loamlight.physics.Conformance;
import org.loamlight.setup.Measure;
import org.loamlight.setup.Reading;

/**
 * A value on the way to a quantity.
 *
 * @param value       in whichever unit it is used in
 * @param uncertainty standard uncertainty in the same unit, 0 or above
 */
record Uncertain(double value, double uncertainty) {
    static final Uncertain NOTHING = new Uncertain(0, 0);

    /** A known measure, in its own unit. */
    static Uncertain of(Measure measure) {
        return new Uncertain(measure.value(), measure.standardUncertainty());
    }

    /** Anything between two limits alike: the middle, and half the width over the root of 3 (JCGM 100:2008, 4.3.7). */
    static Uncertain between(double low, double high) {
        return new Uncertain((low + high) / 2, Conformance.fromHalfWidth((high - low) / 2));
    }

    /** The mean of readings that are independent of one another; at least one. */
    static Uncertain mean(Collection<Reading> readings) {
        double sum = readings.stream().mapToDouble(reading -> reading.value().value()).sum();
        double combined = Conformance.combine(readings.stream().mapToDouble(reading -> reading.value().standardUncertainty()).toArray());
        return new Uncertain(sum / readings.size(), combined / readings.size());
    }

    Uncertain times(double factor) {
        return new Uncertain(value * factor, uncertainty * Math.abs(factor));
    }

    /** The sum with an independent value. */
    Uncertain plus(Uncertain other) {
        return new Uncertain(value + other.value, Conformance.combine(uncertainty, other.uncertainty));
    }

    /** The product with an independent value, to first order (JCGM 100:2008, 5.1.2). */
    Uncertain times(Uncertain other) {
        return new Uncertain(value * other.value, Conformance.combine(uncertainty * Math.abs(other.value), other.uncertainty * Math.abs(value)));
    }

    /** With a further independent contribution. */
    Uncertain and(double furtherUncertainty) {
        return new Uncertain(value, Conformance.combine(uncertainty, furtherUncertainty));
    }
}
