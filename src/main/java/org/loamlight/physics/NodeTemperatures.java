package org.loamlight.physics;

/**
 * The temperatures of {@link TwoNodes}.
 *
 * @param airCelsius  of the air (degrees Celsius), finite
 * @param massCelsius of what lies in it, water and substrate (degrees Celsius), finite
 */
public record NodeTemperatures(double airCelsius, double massCelsius) {

    /** @throws IllegalArgumentException if a component is NaN or infinite, with the value */
    public NodeTemperatures {
        Argument.finite("airCelsius", airCelsius);
        Argument.finite("massCelsius", massCelsius);
    }

    /** Both of one temperature (degrees Celsius). */
    public static NodeTemperatures both(double celsius) {
        return new NodeTemperatures(celsius, celsius);
    }
}
