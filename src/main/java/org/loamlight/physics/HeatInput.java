package org.loamlight.physics;

/**
 * What drives {@link TwoNodes}; it stays as it is while they warm or cool.
 *
 * @param airWatts    power given to the air (W), finite; negative where heat is taken away
 * @param massWatts   power given to the mass (W), finite; negative where heat is taken away, as by drying
 * @param roomCelsius temperature of the room around (degrees Celsius), finite
 */
public record HeatInput(double airWatts, double massWatts, double roomCelsius) {

    /** @throws IllegalArgumentException if a component is NaN or infinite, with the value */
    public HeatInput {
        Argument.finite("airWatts", airWatts);
        Argument.finite("massWatts", massWatts);
        Argument.finite("roomCelsius", roomCelsius);
    }

    /** Nothing switched on in a room of that temperature (degrees Celsius). */
    public static HeatInput none(double roomCelsius) {
        return new HeatInput(0, 0, roomCelsius);
    }
}
