package org.loamlight.physics;

/**
 * Room air that passes through an enclosure, and the heat it takes along: P = c n V dT (EN ISO 13789 and EN 12831; the
 * formula is from memory of them).
 *
 * @param cubicMetres    air volume V of the enclosure (m3), above 0
 * @param changesPerHour how often the air is renewed, n (1/h), 0 or above
 * @param wattHoursPerCubicMetreKelvin heat capacity c of the air (Wh/m3K), above 0
 */
public record AirExchange(double cubicMetres, double changesPerHour, double wattHoursPerCubicMetreKelvin) {

    /**
     * The heat capacity of air in a warm enclosure (Wh/m3K). The UK SAP worksheet uses it (from memory); the ideal gas
     * gives 0.331 at 25 degrees Celsius.
     */
    public static final double WARM = 0.33;

    /** Specific heat of dry air at constant pressure (J/kgK), a rounded handbook value. */
    private static final double SPECIFIC_HEAT = 1005;
    /** Specific gas constant of dry air (J/kgK), a rounded handbook value. */
    private static final double GAS_CONSTANT = 287.05;
    /** The standard atmosphere (Pa). At 1,500 m above the sea air holds about a sixth less heat. */
    private static final double PASCALS = 101_325;
    private static final double KELVIN_AT_ZERO_CELSIUS = 273.15;
    private static final double SECONDS_PER_HOUR = 3600;

    /** @throws IllegalArgumentException if a component is outside its range, with the value */
    public AirExchange {
        Argument.positive("cubicMetres", cubicMetres);
        Argument.notNegative("changesPerHour", changesPerHour);
        Argument.positive("wattHoursPerCubicMetreKelvin", wattHoursPerCubicMetreKelvin);
        double atOneChange = Argument.positive("cubicMetres * wattHoursPerCubicMetreKelvin",
                cubicMetres * wattHoursPerCubicMetreKelvin);
        Argument.finite("heat taken along in W/K", changesPerHour * atOneChange);
    }

    /** Exchange of warm air, {@link #WARM}. */
    public static AirExchange ofWarmAir(double cubicMetres, double changesPerHour) {
        return new AirExchange(cubicMetres, changesPerHour, WARM);
    }

    /**
     * The heat capacity c of dry air as an ideal gas at sea level (Wh/m3K): p cp / (R T 3600); 0.361 at 0 degrees Celsius
     * and 0.325 at 30.
     *
     * @param celsius air temperature (degrees Celsius), above -273.15
     */
    public static double wattHoursPerCubicMetreKelvin(double celsius) {
        return joulesPerCubicMetreKelvin(celsius) / SECONDS_PER_HOUR;
    }

    static double joulesPerCubicMetreKelvin(double celsius) {
        double kelvin = Argument.finite("celsius", celsius) + KELVIN_AT_ZERO_CELSIUS;
        if (kelvin <= 0) {
            throw Argument.refused("celsius", celsius, "it must lie above -273.15");
        }
        return PASCALS * SPECIFIC_HEAT / (GAS_CONSTANT * kelvin);
    }

    /** Heat lost for each kelvin that the enclosure is warmer than the room (W/K). */
    public double wattsPerKelvin() {
        return changesPerHour * wattsPerKelvinAtOneChange();
    }

    /** Heat lost (W) at a difference of temperature (K), negative where the room is the warmer. */
    public double watts(double kelvin) {
        return Argument.finite("watts", wattsPerKelvin() * Argument.finite("kelvin", kelvin));
    }

    /** c V: what one change an hour takes along (W/K). */
    double wattsPerKelvinAtOneChange() {
        return wattHoursPerCubicMetreKelvin * cubicMetres;
    }
}
