package org.loamlight.derivation;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class PropagationTest {

    /** JCGM 100:2008, H.2: R = V cos(phi) / I; inputs and uncertainties as printed there (from memory), worked by hand as if uncorrelated. */
    @Test
    void a_quotient_takes_up_the_relative_uncertainties_of_its_parts() {
        double[] inputs = {4.9990, 0.019661, 1.04446};
        double[] uncertainties = {0.0032, 0.0000095, 0.00075};
        double resistance = 4.9990 / 0.019661 * StrictMath.cos(1.04446);
        double byHand = resistance * StrictMath.sqrt(sq(0.0032 / 4.9990) + sq(0.0000095 / 0.019661) + sq(0.00075 * StrictMath.tan(1.04446)));
        double propagated = Propagation.uncertainty(at -> at[0] / at[1] * StrictMath.cos(at[2]), inputs, uncertainties);
        assertEquals(byHand, propagated, 1e-6 * byHand);
        assertArrayEquals(new double[] {4.9990, 0.019661, 1.04446}, inputs);
    }

    private static double sq(double value) {
        return value * value;
    }

    @Test
    void what_is_certain_adds_nothing_and_a_result_without_inputs_is_certain() {
        assertEquals(0, Propagation.uncertainty(at -> 1 / at[0], new double[] {0}, new double[] {0}));
        assertEquals(0, Propagation.uncertainty(at -> 7, new double[0], new double[0]));
    }

    /** Half of what changes between the two ends (5.1.3 note 2): a step that lies within the uncertainty is seen. */
    @Test
    void a_jump_within_reach_of_an_input_is_half_of_its_height() {
        assertEquals(2, Propagation.uncertainty(at -> at[0] > 0 ? 4 : 0, new double[] {0.1}, new double[] {0.5}));
        assertEquals(0, Propagation.uncertainty(at -> at[0] > 0 ? 4 : 0, new double[] {0.6}, new double[] {0.5}));
    }
}
