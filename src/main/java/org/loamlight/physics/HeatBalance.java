package org.loamlight.physics;

import java.util.List;
import java.util.OptionalDouble;

/**
 * The heat balance of an enclosure in a room: P = (sum of U A + c n V) (T - Troom), the steady state of EN ISO 13789.
 *
 * <p>T is the mean temperature of the air and nothing else. A basking lamp warms surfaces by radiation, air forms layers,
 * and wet substrate takes up some 0.68 Wh for each gram that dries (from memory): the balance is a hint for sizing.
 *
 * @param shellWattsPerKelvin sum of U A of the shell (W/K), 0 or above
 * @param air                 room air passing through; with it at least one of the two losses is above 0
 */
public record HeatBalance(double shellWattsPerKelvin, AirExchange air) {

    /** @throws IllegalArgumentException if the shell is negative or not finite or nothing is lost at all, with the value */
    public HeatBalance {
        Argument.notNegative("shellWattsPerKelvin", shellWattsPerKelvin);
        Argument.positive("shellWattsPerKelvin + air.wattsPerKelvin", shellWattsPerKelvin + air.wattsPerKelvin());
    }

    /** The balance of a shell made of these panes, none null. */
    public static HeatBalance of(List<ShellPart> shell, AirExchange air) {
        return new HeatBalance(shell.stream().mapToDouble(ShellPart::wattsPerKelvin).sum(), air);
    }

    /** All that is lost for each kelvin that the air inside is warmer than the room (W/K), above 0. */
    public double conductance() {
        return shellWattsPerKelvin + air.wattsPerKelvin();
    }

    /**
     * The air temperature that sets in and stays (degrees Celsius).
     *
     * @param watts       mean power given to the enclosure (W), 0 or above
     * @param roomCelsius room temperature (degrees Celsius)
     */
    public double airCelsius(double watts, double roomCelsius) {
        double kelvin = Argument.notNegative("watts", watts) / conductance();
        return Argument.finite("airCelsius", Argument.finite("roomCelsius", roomCelsius) + kelvin);
    }

    /**
     * The mean power that holds an air temperature (W); negative, heat to be taken away, below room temperature.
     *
     * @param airCelsius  wanted air temperature (degrees Celsius)
     * @param roomCelsius room temperature (degrees Celsius)
     */
    public double watts(double airCelsius, double roomCelsius) {
        double kelvin = Argument.finite("airCelsius", airCelsius) - Argument.finite("roomCelsius", roomCelsius);
        return Argument.finite("watts", conductance() * kelvin);
    }

    /**
     * The changes of air (1/h) at which this shell would have the air temperature that was read; the changes of
     * {@link #air()} play no part. Empty where no number above 0 does: the air is not warmer than the room, or warmer than
     * the power could make it even without any exchange. Then the description and the reading contradict each other.
     *
     * @param watts       mean power given to the enclosure (W), 0 or above
     * @param airCelsius  air temperature read (degrees Celsius)
     * @param roomCelsius room temperature (degrees Celsius)
     */
    public OptionalDouble changesPerHour(double watts, double airCelsius, double roomCelsius) {
        double kelvin = Argument.finite("airCelsius", airCelsius) - Argument.finite("roomCelsius", roomCelsius);
        Argument.notNegative("watts", watts);
        double changes = (watts / kelvin - shellWattsPerKelvin) / air.wattsPerKelvinAtOneChange();
        boolean explained = kelvin > 0 && changes > 0 && Double.isFinite(changes);
        return explained ? OptionalDouble.of(changes) : OptionalDouble.empty();
    }

    /**
     * The time constant C / conductance (s): after it 63.2 % of a change is over, after five of it 99 %. It holds where
     * all that stores heat is of one temperature; {@link TwoNodes} is for when air and what lies in it are not.
     *
     * @param joulesPerKelvin heat capacity C of all that is warmed (J/K), above 0
     */
    public double timeConstantSeconds(double joulesPerKelvin) {
        double seconds = Argument.positive("joulesPerKelvin", joulesPerKelvin) / conductance();
        return Argument.positive("joulesPerKelvin / conductance", seconds);
    }
}
