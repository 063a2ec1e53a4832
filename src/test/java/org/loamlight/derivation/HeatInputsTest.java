package org.loamlight.derivation;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.loamlight.derivation.HeatInputs.Of;

class HeatInputsTest {

    /** JCGM 100:2008, 5.1.2: for a quotient the relative uncertainties combine in quadrature. */
    @Test
    void a_quotient_combines_relative_uncertainties() {
        Uncertain found = HeatInputs.NONE.with(Of.OPEN_POWER, new Uncertain(60, 0.6)).with(Of.SHELL, new Uncertain(12, 0.24))
                .through(in -> in.of(Of.OPEN_POWER) / in.of(Of.SHELL));
        assertEquals(5, found.value());
        assertEquals(5 * StrictMath.hypot(0.01, 0.02), found.uncertainty(), 1e-4);
    }

    @Test
    void what_a_formula_does_not_use_adds_nothing_and_what_it_uses_twice_counts_once() {
        HeatInputs inputs = HeatInputs.NONE.with(Of.COLDEST_ROOM, new Uncertain(15, 1)).with(Of.MASS, new Uncertain(1e5, 3e4));
        assertEquals(2, inputs.through(in -> 2 * in.of(Of.COLDEST_ROOM)).uncertainty(), 1e-12);
        assertEquals(0, inputs.through(in -> in.of(Of.COLDEST_ROOM) - in.of(Of.COLDEST_ROOM)).uncertainty());
        assertEquals(0, HeatInputs.NONE.through(in -> 7).uncertainty());
    }

    @Test
    void what_cannot_be_negative_stays_above_zero_however_doubtful_it_is() {
        Uncertain found = HeatInputs.NONE.with(Of.OPEN_POWER, new Uncertain(10, 50)).through(in -> StrictMath.log(in.of(Of.OPEN_POWER)));
        assertEquals((StrictMath.log(60) - StrictMath.log(0.5)) / 2, found.uncertainty(), 1e-12);
        assertEquals(50, HeatInputs.NONE.with(Of.ROOM_READ, new Uncertain(10, 50)).through(in -> in.of(Of.ROOM_READ)).uncertainty());
    }

    /** JCGM 100:2008, 4.3.7: limits +-a give a / sqrt(3). */
    @Test
    void anything_between_two_limits_has_the_middle_and_the_width_of_a_rectangle() {
        Uncertain between = Uncertain.between(0.5, 0.9);
        assertEquals(0.7, between.value(), 1e-12);
        assertEquals(0.2 / StrictMath.sqrt(3), between.uncertainty(), 1e-12);
        assertEquals(new Uncertain(-6, 1), new Uncertain(3, 0.5).times(-2));
        assertEquals(5, new Uncertain(1, 3).plus(new Uncertain(2, 4)).uncertainty(), 1e-12);
    }
}
