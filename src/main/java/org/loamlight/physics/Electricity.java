package org.loamlight.physics;

/**
 * What electrical equipment draws, uses and costs. Equipment is taken as a plain resistance (power factor 1), as heat
 * lamps, mats and cables are; lamps with a ballast or driver draw more current than their wattage says, and use no more
 * energy.
 *
 * <p>Arguments outside their range throw IllegalArgumentException with the name and the value, and so does a result that
 * leaves the range of a double.
 */
public final class Electricity {

    /** Days in the month of {@link #kilowattHoursPerMonth}: a round figure, so that months can be compared. */
    public static final int DAYS_PER_MONTH = 30;

    private static final double HOURS_PER_DAY = 24;
    private static final double WATTS_PER_KILOWATT = 1000;

    private Electricity() {
    }

    /**
     * The current (A) that a power draws at a voltage: P / U, from the definition of the volt, 1 V = 1 W/A (SI Brochure,
     * 9th ed., table 4; from memory).
     *
     * @param watts of the equipment together (W), 0 or above, finite
     * @param volts of the supply, root mean square (V), above 0, finite
     */
    public static double amperes(double watts, double volts) {
        double amperes = Argument.notNegative("watts", watts) / Argument.positive("volts", volts);
        return Argument.notNegative("watts / volts", amperes);
    }

    /**
     * The energy used in a day (Wh): power times hours.
     *
     * @param watts       (W), 0 or above, finite
     * @param hoursPerDay the time it is really on (h), 0 to 24; behind a thermostat that is less than its timer says
     */
    public static double wattHoursPerDay(double watts, double hoursPerDay) {
        if (!(hoursPerDay >= 0 && hoursPerDay <= HOURS_PER_DAY)) {
            throw Argument.refused("hoursPerDay", hoursPerDay, "a day has 0 to 24 of them");
        }
        return Argument.notNegative("watts * hoursPerDay", Argument.notNegative("watts", watts) * hoursPerDay);
    }

    /**
     * The energy used in {@link #DAYS_PER_MONTH} days (kWh).
     *
     * @param watts       (W), 0 or above, finite
     * @param hoursPerDay the time it is really on (h), 0 to 24
     */
    public static double kilowattHoursPerMonth(double watts, double hoursPerDay) {
        return wattHoursPerDay(watts, hoursPerDay) / WATTS_PER_KILOWATT * DAYS_PER_MONTH;
    }

    /**
     * What energy costs, in the currency of the tariff and not rounded. Standing charges and taxes per month are not in
     * it.
     *
     * @param kilowattHours         (kWh), 0 or above, finite
     * @param tariffPerKilowattHour price of 1 kWh, 0 or above, finite
     */
    public static double cost(double kilowattHours, double tariffPerKilowattHour) {
        double cost = Argument.notNegative("kilowattHours", kilowattHours)
                * Argument.notNegative("tariffPerKilowattHour", tariffPerKilowattHour);
        return Argument.notNegative("kilowattHours * tariffPerKilowattHour", cost);
    }
}
