package org.loamlight.physics;

import java.util.function.DoubleUnaryOperator;

/** Composite Simpson integration, for checks that must not use the closed form they check. */
final class Simpson {

    private static final int PANELS = 4000;

    private Simpson() {
    }

    static double integral(DoubleUnaryOperator function, double from, double to) {
        double step = (to - from) / PANELS;
        double sum = function.applyAsDouble(from) + function.applyAsDouble(to);
        for (int i = 1; i < PANELS; i++) {
            sum += (i % 2 == 0 ? 2 : 4) * function.applyAsDouble(from + i * step);
        }
        return sum * step / 3;
    }

    /** The density of the normal distribution. */
    static double normalDensity(double x, double mean, double deviation) {
        double z = (x - mean) / deviation;
        return StrictMath.exp(-z * z / 2) / (deviation * StrictMath.sqrt(2 * StrictMath.PI));
    }
}
