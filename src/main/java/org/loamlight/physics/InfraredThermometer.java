package org.loamlight.physics;

import java.util.OptionalDouble;

/**
 * What an infrared thermometer shows of a surface, and how warm the surface is in truth. The instrument sees what the
 * surface gives off and what it mirrors of its surroundings, and reckons with an emissivity and surroundings of its own.
 * Signal balance in kelvin: eps To^n + (1 - eps) Tr^n = set Tm^n + (1 - set) Ta^n, with To the surface, Tr what it
 * mirrors, Tm the reading, Ta what the instrument takes as surroundings (basics of an instrument maker, p. 7, with the
 * exponent n; the manual of a thermal camera, 2009, p. 147, three terms; both secondary). Glass and water mirror and
 * block in this band: a reading through a pane is one of the pane.
 *
 * @param emissivitySetting set on the instrument or fixed in it, 0.95 on most (no unit), above 0, at most 1
 * @param assumedCelsius    what it takes the surroundings to be, commonly its own housing (degrees Celsius)
 * @param exponent          n, {@link #ALL_WAVES} or {@link #LONG_WAVES} (no unit), above 0, finite
 */
public record InfraredThermometer(double emissivitySetting, double assumedCelsius, double exponent) {

    /** The exponent of radiation of all wavelengths: the law of Stefan and Boltzmann. */
    public static final double ALL_WAVES = 4;

    /**
     * The exponent of radiation at 8 to 14 micrometres, the band of a hand instrument, near 300 K: by Wien's law
     * n = c2 / (lambda T) with c2 = 14388 micrometre kelvin and 11 micrometres as the middle of the band. A power of
     * one height for all temperatures is within 0.1 K of Wien's law up to 50 degrees Celsius on a surface of 0.85 and
     * above, and within 0.3 K on one of 0.7.
     */
    public static final double LONG_WAVES = 4.36;

    /** 0 degrees Celsius (K). */
    private static final double ICE_POINT_KELVIN = 273.15;

    /**
     * Refuses an instrument that cannot be.
     *
     * @throws IllegalArgumentException if a component is outside its range, with its name and value
     */
    public InfraredThermometer {
        emissivity("emissivitySetting", emissivitySetting);
        kelvin("assumedCelsius", assumedCelsius);
        Argument.positive("exponent", exponent);
    }

    /**
     * How warm the surface is that gives this reading (degrees Celsius); empty if none does, because what the surface
     * mirrors is already more than the instrument saw.
     *
     * @param readingCelsius   shown by the instrument (degrees Celsius), above absolute zero
     * @param emissivity       of the surface (no unit), above 0, at most 1
     * @param reflectedCelsius of what the surface mirrors, commonly the room or the lamp above (degrees Celsius)
     * @throws IllegalArgumentException if an argument is outside its range, with its name and value
     */
    public OptionalDouble surfaceCelsius(double readingCelsius, double emissivity, double reflectedCelsius) {
        emissivity("emissivity", emissivity);
        double seen = signal("readingCelsius", readingCelsius, emissivitySetting)
                + signal("assumedCelsius", assumedCelsius, 1 - emissivitySetting);
        return temperature((seen - signal("reflectedCelsius", reflectedCelsius, 1 - emissivity)) / emissivity);
    }

    /**
     * What the instrument shows of a surface (degrees Celsius); empty if it can show nothing, because the surroundings
     * it reckons with would give off more than it saw.
     *
     * @param surfaceCelsius   the true temperature of the surface (degrees Celsius), above absolute zero
     * @param emissivity       of the surface (no unit), above 0, at most 1
     * @param reflectedCelsius of what the surface mirrors, commonly the room or the lamp above (degrees Celsius)
     * @throws IllegalArgumentException if an argument is outside its range, with its name and value
     */
    public OptionalDouble readingCelsius(double surfaceCelsius, double emissivity, double reflectedCelsius) {
        emissivity("emissivity", emissivity);
        double seen = signal("surfaceCelsius", surfaceCelsius, emissivity)
                + signal("reflectedCelsius", reflectedCelsius, 1 - emissivity);
        return temperature((seen - signal("assumedCelsius", assumedCelsius, 1 - emissivitySetting)) / emissivitySetting);
    }

    /** A share of what a black body gives off, over that of one at the ice point: numbers near 1 for any exponent. */
    private double signal(String name, double celsius, double share) {
        return share * StrictMath.pow(kelvin(name, celsius) / ICE_POINT_KELVIN, exponent);
    }

    private OptionalDouble temperature(double signal) {
        if (!(signal > 0)) {
            return OptionalDouble.empty();
        }
        double celsius = ICE_POINT_KELVIN * StrictMath.pow(signal, 1 / exponent) - ICE_POINT_KELVIN;
        return OptionalDouble.of(Argument.finite("temperature of the balance", celsius));
    }

    private static double kelvin(String name, double celsius) {
        if (!(celsius > -ICE_POINT_KELVIN && Double.isFinite(celsius))) {
            throw Argument.refused(name, celsius, "it must be a finite temperature above -" + ICE_POINT_KELVIN);
        }
        return celsius + ICE_POINT_KELVIN;
    }

    private static void emissivity(String name, double share) {
        if (!(share > 0 && share <= 1)) {
            throw Argument.refused(name, share, "it must lie above 0 and be at most 1");
        }
    }
}
