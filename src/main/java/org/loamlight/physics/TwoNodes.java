package org.loamlight.physics;

import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;

/**
 * How an enclosure warms and cools in time: its air, which loses heat to the room, and the mass lying in it (water,
 * substrate, stones), which exchanges heat with the air only. Two lumped capacities, each of one temperature throughout:
 * Ca dTa/dt = Pa - K (Ta - Troom) - G (Ta - Tm) and Cm dTm/dt = Pm + G (Ta - Tm) (energy balance of each node; lumping
 * holds where h L / lambda is at most about 0.1, heat transfer textbooks, so deep substrate warms more slowly than this
 * says).
 *
 * <p>Both equations are linear, so they are solved exactly: the way to the steady state is a sum of a fast and a slow
 * exponential. Starting where both nodes warm (or both cool), as after switching heat on or off in a steady state, neither
 * can pass its steady state or turn round, because either warming node only ever warms the other. Where one warms and the
 * other cools at the start, as with cold air over warm stones, the air may turn round once.
 *
 * @param airJoulesPerKelvin     heat capacity Ca of the air and what follows it at once (J/K), above 0
 * @param massJoulesPerKelvin    heat capacity Cm of the mass (J/K), above 0
 * @param couplingWattsPerKelvin heat G that goes from air to mass for each kelvin between them (W/K), above 0
 * @param lossWattsPerKelvin     heat K that goes from the air to the room for each kelvin (W/K), above 0:
 *                               {@link HeatBalance#conductance()}
 */
public record TwoNodes(double airJoulesPerKelvin, double massJoulesPerKelvin,
        double couplingWattsPerKelvin, double lossWattsPerKelvin) {

    /** So many slow time constants on, a double shows no difference from the steady state: exp(-1024) is 0. */
    private static final double SETTLED = 1024;

    /** @throws IllegalArgumentException if a component is not above 0 or no double can tell the rates, with the value */
    public TwoNodes {
        Argument.positive("airJoulesPerKelvin", airJoulesPerKelvin);
        Argument.positive("massJoulesPerKelvin", massJoulesPerKelvin);
        Argument.positive("couplingWattsPerKelvin", couplingWattsPerKelvin);
        Argument.positive("lossWattsPerKelvin", lossWattsPerKelvin);
        Rates rates = Rates.of(airJoulesPerKelvin, massJoulesPerKelvin, couplingWattsPerKelvin, lossWattsPerKelvin);
        Argument.positive("fast rate less slow rate in 1/s", rates.gap);
        Argument.positive("slow time constant in s", SETTLED / rates.slow);
    }

    /** The temperatures that set in and stay: the air at Troom + (Pa + Pm) / K, the mass Pm / G above the air. */
    public NodeTemperatures steadyState(HeatInput input) {
        double airCelsius = input.roomCelsius() + (input.airWatts() + input.massWatts()) / lossWattsPerKelvin;
        return new NodeTemperatures(airCelsius, airCelsius + input.massWatts() / couplingWattsPerKelvin);
    }

    /** The longer of the two time constants (s): after five of it under 1 % of the slow part is left. */
    public double slowSeconds() {
        return 1 / rates().slow;
    }

    /** The shorter of the two time constants (s): after five of it the mass leads and the air follows. */
    public double fastSeconds() {
        return 1 / rates().fast();
    }

    /**
     * The temperatures after a time.
     *
     * @param seconds since the start (s), 0 or above
     * @param start   the temperatures at the start
     * @throws IllegalArgumentException if {@code seconds} is negative, NaN or infinite, with the value
     */
    public NodeTemperatures after(double seconds, NodeTemperatures start, HeatInput input) {
        Argument.notNegative("seconds", seconds);
        NodeTemperatures steady = steadyState(input);
        Rates rates = rates();
        double air = start.airCelsius() - steady.airCelsius();
        double mass = start.massCelsius() - steady.massCelsius();
        double slowLeft = StrictMath.exp(-rates.slow * seconds);
        double fastGone = rates.fastGone(seconds);
        // exp(A t) = exp(-slow t) (1 + (A + slow) fastGone(t)), Newton's form for a matrix A with two eigenvalues.
        double airLeft = slowLeft * (air + fastGone * (rates.slow * air + airWarming(air, mass)));
        double massLeft = slowLeft * (mass + fastGone * (rates.slow * mass + massWarming(air, mass)));
        return new NodeTemperatures(steady.airCelsius() + airLeft, steady.massCelsius() + massLeft);
    }

    /**
     * The time until the air first has a temperature (s); 0 if it starts with it. Empty if it never has: the temperature
     * lies beyond the steady state, on the other side of the start, or is the steady state itself, which is approached
     * for ever.
     *
     * @param celsius wanted temperature of the air (degrees Celsius)
     * @param start   the temperatures at the start
     * @throws IllegalArgumentException if {@code celsius} is NaN or infinite, with the value
     */
    public OptionalDouble secondsUntilAir(double celsius, NodeTemperatures start, HeatInput input) {
        Argument.finite("celsius", celsius);
        DoubleUnaryOperator above = seconds -> after(seconds, start, input).airCelsius() - celsius;
        double settled = SETTLED / rates().slow;
        double turn = StrictMath.min(settled, airTurnSeconds(start, input));
        if (oppose(above, 0, turn)) {
            return OptionalDouble.of(zero(above, 0, turn));
        }
        boolean crossed = oppose(above, turn, settled) && above.applyAsDouble(settled) != 0;
        return crossed ? OptionalDouble.of(zero(above, turn, settled)) : OptionalDouble.empty();
    }

    /** When the air stops warming and starts to cool or the other way round (s); 0 if it never does. */
    private double airTurnSeconds(NodeTemperatures start, HeatInput input) {
        NodeTemperatures steady = steadyState(input);
        double air = start.airCelsius() - steady.airCelsius();
        double mass = start.massCelsius() - steady.massCelsius();
        double airRate = airWarming(air, mass);
        double massRate = massWarming(air, mass);
        // The rates of change obey the equations of the temperatures; their air part is 0 where fastGone is this.
        double fastGone = -airRate / (rates().slow * airRate + airWarming(airRate, massRate));
        return fastGone > 0 ? rates().secondsUntilFastGone(fastGone) : 0;
    }

    /** dTa/dt (K/s) from the differences (K) to the steady state. */
    private double airWarming(double air, double mass) {
        return (couplingWattsPerKelvin * (mass - air) - lossWattsPerKelvin * air) / airJoulesPerKelvin;
    }

    /** dTm/dt (K/s) from the differences (K) to the steady state. */
    private double massWarming(double air, double mass) {
        return couplingWattsPerKelvin * (air - mass) / massJoulesPerKelvin;
    }

    private Rates rates() {
        return Rates.of(airJoulesPerKelvin, massJoulesPerKelvin, couplingWattsPerKelvin, lossWattsPerKelvin);
    }

    /** Whether the values at both ends have opposite signs, or one of them is 0. */
    private static boolean oppose(DoubleUnaryOperator function, double from, double to) {
        return StrictMath.signum(function.applyAsDouble(from)) * StrictMath.signum(function.applyAsDouble(to)) <= 0;
    }

    /** Where a function that only rises or only falls is 0, by halving down to neighbouring doubles. */
    private static double zero(DoubleUnaryOperator monotone, double from, double to) {
        double sign = StrictMath.signum(monotone.applyAsDouble(from));
        double low = from;
        double high = sign == 0 ? from : to;
        double middle = low + (high - low) / 2;
        while (low < middle && middle < high) {
            if (StrictMath.signum(monotone.applyAsDouble(middle)) == sign) {
                low = middle;
            } else {
                high = middle;
            }
            middle = low + (high - low) / 2;
        }
        return high;
    }

    /**
     * How fast the two exponentials fade (1/s), the eigenvalues of the system with their signs changed. Both are real
     * and above 0, as the coupling acts both ways.
     */
    private record Rates(double slow, double gap) {

        static Rates of(double air, double mass, double coupling, double loss) {
            double fromAir = (coupling + loss) / air;
            double fromMass = coupling / mass;
            double gap = StrictMath.hypot(fromAir - fromMass, 2 * coupling / (StrictMath.sqrt(air) * StrictMath.sqrt(mass)));
            double fast = (fromAir + fromMass + gap) / 2;
            // Their product is K G / (Ca Cm); taking the difference instead would cancel.
            return new Rates(fromMass * (loss / air / fast), gap);
        }

        double fast() {
            return slow + gap;
        }

        /** (1 - exp(-gap t)) / gap (s): how much of the fast exponential has faded, beside the slow one. */
        double fastGone(double seconds) {
            return -StrictMath.expm1(-gap * seconds) / gap;
        }

        /** The inverse of {@link #fastGone}; 0 where it is never reached. */
        double secondsUntilFastGone(double fastGone) {
            return fastGone * gap < 1 ? -StrictMath.log1p(-fastGone * gap) / gap : 0;
        }
    }
}
