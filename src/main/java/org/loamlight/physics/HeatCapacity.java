package org.loamlight.physics;

/** What heat the parts of an enclosure store for each kelvin (J/K): mass times specific heat. All arguments are SI. */
public final class HeatCapacity {

    /** Specific heat of liquid water (J/kgK), the rounded handbook value; EN ISO 10456 gives 4182 at 20 degrees Celsius. */
    public static final double WATER_JOULES_PER_KILOGRAM_KELVIN = 4186;

    private HeatCapacity() {
    }

    /**
     * Heat capacity of anything (J/K).
     *
     * @param kilograms              mass (kg), 0 or above
     * @param joulesPerKilogramKelvin specific heat (J/kgK), above 0
     */
    public static double ofMass(double kilograms, double joulesPerKilogramKelvin) {
        double capacity = Argument.notNegative("kilograms", kilograms)
                * Argument.positive("joulesPerKilogramKelvin", joulesPerKilogramKelvin);
        return Argument.finite("kilograms * joulesPerKilogramKelvin", capacity);
    }

    /**
     * Heat capacity of water (J/K).
     *
     * @param kilograms mass (kg), 0 or above; a litre of water weighs 1 kg
     */
    public static double ofWater(double kilograms) {
        return ofMass(kilograms, WATER_JOULES_PER_KILOGRAM_KELVIN);
    }

    /**
     * Heat capacity of substrate (J/K), its dry part and its water added.
     *
     * @param dryKilograms           mass without water (kg), 0 or above
     * @param joulesPerKilogramKelvin specific heat without water (J/kgK), above 0
     * @param waterKilograms         mass of the water in it (kg), 0 or above
     */
    public static double ofSubstrate(double dryKilograms, double joulesPerKilogramKelvin, double waterKilograms) {
        return ofMass(dryKilograms, joulesPerKilogramKelvin) + ofWater(waterKilograms);
    }

    /**
     * Heat capacity of a pane (J/K).
     *
     * @param cubicMetres            area times thickness (m3), 0 or above
     * @param kilogramsPerCubicMetre density (kg/m3), above 0
     * @param joulesPerKilogramKelvin specific heat (J/kgK), above 0
     */
    public static double ofPane(double cubicMetres, double kilogramsPerCubicMetre, double joulesPerKilogramKelvin) {
        double kilograms = Argument.notNegative("cubicMetres", cubicMetres)
                * Argument.positive("kilogramsPerCubicMetre", kilogramsPerCubicMetre);
        return ofMass(kilograms, joulesPerKilogramKelvin);
    }

    /**
     * Heat capacity of dry air at constant pressure (J/K), an ideal gas at sea level as in {@link AirExchange}.
     *
     * @param cubicMetres volume (m3), 0 or above
     * @param celsius     its temperature (degrees Celsius), above -273.15
     */
    public static double ofAir(double cubicMetres, double celsius) {
        double capacity = Argument.notNegative("cubicMetres", cubicMetres) * AirExchange.joulesPerCubicMetreKelvin(celsius);
        return Argument.finite("heat capacity", capacity);
    }
}
