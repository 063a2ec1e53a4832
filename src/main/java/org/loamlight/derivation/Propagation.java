package org.loamlight.derivation;

import java.util.function.ToDoubleFunction;
import org.loamlight.physics.Conformance;

/** How uncertain a result is because of what goes into it. */
final class Propagation {
    private Propagation() {
    }

    /**
     * The combined standard uncertainty of a result of independent inputs: for each, half of what the result changes from
     * the input less its uncertainty to the input with it (JCGM 100:2008, 5.1.3 note 2).
     *
     * @param result        from the inputs, finite for each input moved by its uncertainty
     * @param inputs        left as they were
     * @param uncertainties standard uncertainties of the inputs, each 0 or above, in the unit of its input
     */
    static double uncertainty(ToDoubleFunction<double[]> result, double[] inputs, double[] uncertainties) {
        double[] parts = new double[inputs.length];
        for (int i = 0; i < inputs.length; i++) {
            double step = uncertainties[i];
            parts[i] = step == 0 ? 0 : Math.abs(with(result, inputs, i, step) - with(result, inputs, i, -step)) / 2;
        }
        return Conformance.combine(parts);
    }

    private static double with(ToDoubleFunction<double[]> result, double[] inputs, int position, double shift) {
        double[] moved = inputs.clone();
        moved[position] += shift;
        return result.applyAsDouble(moved);
    }
}
