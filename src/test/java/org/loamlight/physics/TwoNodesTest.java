package org.loamlight.physics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TwoNodesTest {

    /** A plywood box with 8 l of moist substrate and 1 l of water: about what an enclosure of 120 cm is. */
    private static final TwoNodes BOX = new TwoNodes(12_000, 30_000, 4, 11.2);
    private static final HeatInput HEATED = new HeatInput(60, 30, 20);
    private static final NodeTemperatures COLD = NodeTemperatures.both(20);

    /**
     * A case with whole numbers: Ca = Cm = 1, G = 2, K = 3 has the rates 1 and 6 (sum of rates 5 + 2, product 3 x 2); from
     * air 1, mass 2 over a room of 0 it is the slow exponential alone, (1, 2) exp(-t); from (2, -1) the fast one alone.
     */
    @ParameterizedTest
    @ValueSource(doubles = {0, 0.01, 0.3, 1, 2.5, 10})
    void a_case_worked_by_hand_comes_out(double seconds) {
        TwoNodes unit = new TwoNodes(1, 1, 2, 3);
        assertEquals(1, unit.slowSeconds(), 1e-15);
        assertEquals(1.0 / 6, unit.fastSeconds(), 1e-15);
        double slow = StrictMath.exp(-seconds);
        double fast = StrictMath.exp(-6 * seconds);
        assertTemperatures(slow, 2 * slow, unit.after(seconds, new NodeTemperatures(1, 2), HeatInput.none(0)), 1e-14);
        assertTemperatures(2 * fast, -fast, unit.after(seconds, new NodeTemperatures(2, -1), HeatInput.none(0)), 1e-14);
        assertTemperatures(slow + 2 * fast, 2 * slow - fast,
                unit.after(seconds, new NodeTemperatures(3, 1), HeatInput.none(0)), 1e-14);
    }

    /** With the mass bound to the air so firmly that both are one, the box is a single body: tau = C / K, 63.2 % after tau. */
    @Test
    void air_and_mass_as_one_body_are_63_percent_there_after_one_time_constant() {
        TwoNodes one = new TwoNodes(12_000, 30_000, 1e9, 11.2);
        HeatBalance balance = new HeatBalance(11.2, AirExchange.ofWarmAir(0.4, 0));
        double tau = balance.timeConstantSeconds(42_000);
        assertEquals(tau, one.slowSeconds(), 1e-4 * tau);
        NodeTemperatures then = one.after(tau, COLD, HEATED);
        double share = (then.airCelsius() - 20) / (balance.airCelsius(90, 20) - 20);
        assertEquals(0.632, share, 0.0005);
        assertEquals(then.airCelsius(), then.massCelsius(), 1e-4);
    }

    /** Small explicit steps of the two balances as written, which share nothing with the closed form. */
    @Test
    void the_closed_form_agrees_with_stepping_through_time() {
        Random random = new Random(615);
        for (int round = 0; round < 20; round++) {
            TwoNodes box = any(random);
            NodeTemperatures start = anyStart(random);
            HeatInput input = anyInput(random);
            double seconds = box.fastSeconds() * (0.2 + 3 * random.nextDouble());
            NodeTemperatures stepped = stepped(box, seconds, start, input);
            assertTemperatures(stepped.airCelsius(), stepped.massCelsius(), box.after(seconds, start, input), 1e-6);
        }
    }

    @Test
    void at_the_steady_state_all_power_is_lost_and_nothing_changes() {
        Random random = new Random(616);
        for (int round = 0; round < 300; round++) {
            TwoNodes box = any(random);
            HeatInput input = anyInput(random);
            NodeTemperatures steady = box.steadyState(input);
            double lost = box.lossWattsPerKelvin() * (steady.airCelsius() - input.roomCelsius());
            double exchanged = box.couplingWattsPerKelvin() * (steady.massCelsius() - steady.airCelsius());
            assertEquals(input.airWatts() + input.massWatts(), lost, 1e-9);
            assertEquals(input.massWatts(), exchanged, 1e-9);
            assertTemperatures(steady.airCelsius(), steady.massCelsius(), box.after(777, steady, input), 1e-9);
        }
    }

    @Test
    void over_a_transient_what_goes_in_less_what_is_lost_is_what_is_stored() {
        Random random = new Random(617);
        for (int round = 0; round < 50; round++) {
            TwoNodes box = any(random);
            NodeTemperatures start = anyStart(random);
            HeatInput input = anyInput(random);
            double seconds = box.slowSeconds() * 2 * random.nextDouble();
            double given = (input.airWatts() + input.massWatts()) * seconds;
            double lost = Simpson.integral(time -> box.lossWattsPerKelvin()
                    * (box.after(time, start, input).airCelsius() - input.roomCelsius()), 0, seconds);
            NodeTemperatures end = box.after(seconds, start, input);
            double stored = box.airJoulesPerKelvin() * (end.airCelsius() - start.airCelsius())
                    + box.massJoulesPerKelvin() * (end.massCelsius() - start.massCelsius());
            double scale = box.airJoulesPerKelvin() + box.massJoulesPerKelvin();
            assertEquals(given - lost, stored, 1e-6 * scale);
        }
    }

    @Test
    void every_transient_starts_at_the_start_and_ends_in_the_steady_state() {
        Random random = new Random(618);
        for (int round = 0; round < 300; round++) {
            TwoNodes box = any(random);
            NodeTemperatures start = anyStart(random);
            HeatInput input = anyInput(random);
            NodeTemperatures steady = box.steadyState(input);
            assertTemperatures(start.airCelsius(), start.massCelsius(), box.after(0, start, input), 1e-9);
            assertTemperatures(steady.airCelsius(), steady.massCelsius(),
                    box.after(60 * box.slowSeconds(), start, input), 1e-9);
            assertEquals(steady, box.after(Double.MAX_VALUE, start, input));
        }
    }

    @Test
    void two_spells_one_after_the_other_are_one_long_spell() {
        Random random = new Random(619);
        for (int round = 0; round < 300; round++) {
            TwoNodes box = any(random);
            NodeTemperatures start = anyStart(random);
            HeatInput input = anyInput(random);
            double first = 5000 * random.nextDouble();
            double second = 5000 * random.nextDouble();
            NodeTemperatures whole = box.after(first + second, start, input);
            assertTemperatures(whole.airCelsius(), whole.massCelsius(),
                    box.after(second, box.after(first, start, input), input), 1e-9);
        }
    }

    @Test
    void the_time_to_a_temperature_and_the_temperature_after_that_time_agree() {
        Random random = new Random(620);
        int reached = 0;
        for (int round = 0; round < 1000; round++) {
            TwoNodes box = any(random);
            NodeTemperatures start = anyStart(random);
            HeatInput input = anyInput(random);
            double wanted = 5 + 35 * random.nextDouble();
            OptionalDouble seconds = box.secondsUntilAir(wanted, start, input);
            if (seconds.isPresent()) {
                reached++;
                assertEquals(wanted, box.after(seconds.getAsDouble(), start, input).airCelsius(), 1e-9);
            }
            assertEquals(firstStepAt(box, wanted, start, input), seconds.orElse(-1), stepSeconds(box));
        }
        assertTrue(reached > 200 && reached < 800, () -> "both kinds are tried");
    }

    @Test
    void switching_heat_on_or_off_in_a_steady_state_never_overshoots() {
        Random random = new Random(621);
        for (int round = 0; round < 300; round++) {
            TwoNodes box = any(random);
            double room = 15 + 10 * random.nextDouble();
            HeatInput before = new HeatInput(50 * random.nextDouble(), 50 * random.nextDouble(), room);
            HeatInput more = new HeatInput(before.airWatts() + 20, before.massWatts() + 40 * random.nextDouble(), room);
            assertMonotone(box, before, more);
            assertMonotone(box, more, before);
        }
    }

    /** The steady state itself is approached for ever, and what lies beyond it or behind the start is never met. */
    @Test
    void a_temperature_that_is_never_reached_has_no_time() {
        double steady = BOX.steadyState(HEATED).airCelsius();
        assertEquals(OptionalDouble.empty(), BOX.secondsUntilAir(steady, COLD, HEATED));
        assertEquals(OptionalDouble.empty(), BOX.secondsUntilAir(steady + 1e-6, COLD, HEATED));
        assertEquals(OptionalDouble.empty(), BOX.secondsUntilAir(19.999, COLD, HEATED));
        assertTrue(BOX.secondsUntilAir(steady - 1e-6, COLD, HEATED).isPresent());
        assertEquals(0, BOX.secondsUntilAir(20, COLD, HEATED).orElseThrow());
        assertEquals(0, BOX.secondsUntilAir(20, COLD, HeatInput.none(20)).orElseThrow());
        assertEquals(OptionalDouble.empty(), BOX.secondsUntilAir(21, COLD, HeatInput.none(20)));
    }

    /** Cold air over warm stones in a cold room warms first and cools then: it meets a temperature twice, the first counts. */
    @Test
    void air_that_turns_round_meets_what_lies_below_its_turn_and_not_what_lies_above() {
        NodeTemperatures aired = new NodeTemperatures(20, 35);
        HeatInput off = HeatInput.none(20);
        double first = BOX.secondsUntilAir(21, aired, off).orElseThrow();
        double second = first + BOX.secondsUntilAir(21, BOX.after(first + 3000, aired, off), off).orElseThrow() + 3000;
        assertEquals(21, BOX.after(first, aired, off).airCelsius(), 1e-9);
        assertEquals(21, BOX.after(second, aired, off).airCelsius(), 1e-9);
        assertTrue(BOX.after((first + second) / 2, aired, off).airCelsius() > 21.1);
        assertEquals(OptionalDouble.empty(), BOX.secondsUntilAir(30, aired, off));
        double below = BOX.secondsUntilAir(19.9, new NodeTemperatures(20, 10), HeatInput.none(20)).orElseThrow();
        assertTrue(below > 0);
        double after = BOX.secondsUntilAir(20.5, new NodeTemperatures(20, 10), HEATED).orElseThrow();
        assertEquals(20.5, BOX.after(after, new NodeTemperatures(20, 10), HEATED).airCelsius(), 1e-9);
    }

    @Test
    void the_time_constants_keep_their_digits_when_far_apart() {
        TwoNodes slow = new TwoNodes(1, 1e12, 1e-3, 1);
        assertEquals(1e12 * (1 / 1e-3 + 1), slow.slowSeconds(), 1e15 * 1e-9);
        assertEquals(1 / 1.001, slow.fastSeconds(), 1e-9);
    }

    @Test
    void more_mass_never_makes_the_air_warm_sooner() {
        double before = 0;
        for (double mass = 1000; mass < 1e6; mass *= 1.5) {
            double seconds = new TwoNodes(12_000, mass, 4, 11.2).secondsUntilAir(26, COLD, HEATED).orElseThrow();
            assertTrue(seconds > before);
            before = seconds;
        }
    }

    @Test
    void what_cannot_be_is_refused_by_name_and_value() {
        refused("airJoulesPerKelvin is 0.0", () -> new TwoNodes(0, 1, 1, 1));
        refused("massJoulesPerKelvin is -1.0", () -> new TwoNodes(1, -1, 1, 1));
        refused("couplingWattsPerKelvin is NaN", () -> new TwoNodes(1, 1, Double.NaN, 1));
        refused("lossWattsPerKelvin is Infinity", () -> new TwoNodes(1, 1, 1, Double.POSITIVE_INFINITY));
        refused("slow time constant in s is Infinity", () -> new TwoNodes(1e300, 1e300, 1e-20, 1e-20));
        refused("fast rate less slow rate in 1/s is Infinity", () -> new TwoNodes(1e-200, 1, 1e200, 1));
        refused("seconds is -1.0", () -> BOX.after(-1, COLD, HEATED));
        refused("celsius is NaN", () -> BOX.secondsUntilAir(Double.NaN, COLD, HEATED));
        refused("airCelsius is NaN", () -> new NodeTemperatures(Double.NaN, 20));
        refused("massCelsius is Infinity", () -> new NodeTemperatures(20, Double.POSITIVE_INFINITY));
        refused("airWatts is NaN", () -> new HeatInput(Double.NaN, 0, 20));
        refused("massWatts is NaN", () -> new HeatInput(0, Double.NaN, 20));
        refused("roomCelsius is NaN", () -> HeatInput.none(Double.NaN));
    }

    private static TwoNodes any(Random random) {
        return new TwoNodes(500 + 50_000 * random.nextDouble(), 1000 + 200_000 * random.nextDouble(),
                0.5 + 20 * random.nextDouble(), 1 + 30 * random.nextDouble());
    }

    private static NodeTemperatures anyStart(Random random) {
        return new NodeTemperatures(10 + 25 * random.nextDouble(), 10 + 25 * random.nextDouble());
    }

    private static HeatInput anyInput(Random random) {
        return new HeatInput(150 * random.nextDouble(), 60 * random.nextDouble(), 10 + 15 * random.nextDouble());
    }

    private static NodeTemperatures stepped(TwoNodes box, double seconds, NodeTemperatures start, HeatInput input) {
        int steps = 20_000;
        double step = seconds / steps;
        double air = start.airCelsius();
        double mass = start.massCelsius();
        for (int i = 0; i < steps; i++) {
            // Midpoint rule: the slopes half a step on.
            double airHalf = air + step / 2 * airSlope(box, air, mass, input);
            double massHalf = mass + step / 2 * massSlope(box, air, mass, input);
            air += step * airSlope(box, airHalf, massHalf, input);
            mass += step * massSlope(box, airHalf, massHalf, input);
        }
        return new NodeTemperatures(air, mass);
    }

    private static double airSlope(TwoNodes box, double air, double mass, HeatInput input) {
        return (input.airWatts() - box.lossWattsPerKelvin() * (air - input.roomCelsius())
                - box.couplingWattsPerKelvin() * (air - mass)) / box.airJoulesPerKelvin();
    }

    private static double massSlope(TwoNodes box, double air, double mass, HeatInput input) {
        return (input.massWatts() + box.couplingWattsPerKelvin() * (air - mass)) / box.massJoulesPerKelvin();
    }

    private static double stepSeconds(TwoNodes box) {
        return box.slowSeconds() / 50;
    }

    /** The first step after which the air has passed the temperature (s), by looking; -1 if none within 40 time constants. */
    private static double firstStepAt(TwoNodes box, double wanted, NodeTemperatures start, HeatInput input) {
        double side = StrictMath.signum(start.airCelsius() - wanted);
        for (int i = 0; i <= 2000; i++) {
            double time = i * stepSeconds(box);
            if (StrictMath.signum(box.after(time, start, input).airCelsius() - wanted) != side) {
                return time;
            }
        }
        return -1;
    }

    private static void assertMonotone(TwoNodes box, HeatInput before, HeatInput after) {
        NodeTemperatures start = box.steadyState(before);
        double direction = StrictMath.signum(box.steadyState(after).airCelsius() - start.airCelsius());
        double air = start.airCelsius();
        double mass = start.massCelsius();
        for (int i = 1; i <= 400; i++) {
            NodeTemperatures now = box.after(i * box.slowSeconds() / 50, start, after);
            assertTrue(direction * (now.airCelsius() - air) > -1e-11);
            assertTrue(direction * (now.massCelsius() - mass) > -1e-11);
            air = now.airCelsius();
            mass = now.massCelsius();
        }
    }

    private static void assertTemperatures(double air, double mass, NodeTemperatures found, double tolerance) {
        assertEquals(air, found.airCelsius(), tolerance);
        assertEquals(mass, found.massCelsius(), tolerance);
    }

    private static void refused(String said, Runnable call) {
        String message = assertThrows(IllegalArgumentException.class, call::run).getMessage();
        assertTrue(message.startsWith(said), message);
    }
}
