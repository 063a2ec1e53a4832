package org.loamlight.physics;

/**
 * Air with the water vapour in it, at the pressure of the standard atmosphere unless one is given. Immutable.
 *
 * <p>Saturation follows one fixed formula, the Magnus form over water of WMO-No. 8, vol. I, Annex 4.B eq. 4.B.1:
 * e = 611.2 Pa exp(17.62 t / (243.12 + t)), t in degrees Celsius. It was chosen because it can be solved for t in closed
 * form, so that dew point and vapour pressure agree in both directions, and because it goes on below freezing, where dew
 * points of dry air lie (hygrometers show humidity over water there too). The price: it is up to 0.31 % below the steam
 * tables from 0 to 50 degrees Celsius, which is 0.05 K of dew point; a hygrometer is 1 to 5 % of relative humidity off.
 * The enhancement of saturation by the pressure of the air (0.47 %, eq. 4.B.5) is left out for the same reason.
 *
 * @param celsius          air temperature (degrees Celsius), {@value #LOWEST_CELSIUS} to {@value #HIGHEST_CELSIUS}
 * @param relativeHumidity vapour pressure over that of saturation over water (share), above 0 and at most 1
 */
public record MoistAir(double celsius, double relativeHumidity) {

    /** The range in which the Magnus form may be used (degrees Celsius); from memory of WMO-No. 8. */
    public static final double LOWEST_CELSIUS = -45;
    public static final double HIGHEST_CELSIUS = 60;

    /** Pressure of the standard atmosphere at sea level (Pa), ASHRAE Fundamentals 2017 ch. 1 Table 1. */
    public static final double SEA_LEVEL_PASCAL = 101_325;

    private static final double PASCAL_AT_FREEZING = 611.2;
    private static final double SLOPE = 17.62;
    private static final double OFFSET_CELSIUS = 243.12;
    private static final double FREEZING_KELVIN = 273.15;

    /** Gas constant of water vapour (J/(kg K)), ASHRAE Fundamentals, psychrometrics. */
    private static final double VAPOUR_CONSTANT = 461.52;
    /** Mass of a mole of water over that of air; ASHRAE 2009 and later, from memory, confirmed by its worked values. */
    private static final double MOLE_RATIO = 0.621945;

    private static final double GRAMS = 1000;

    /** @throws IllegalArgumentException if a component is outside its range or NaN, with the value */
    public MoistAir {
        inRange("celsius", celsius);
        if (!(relativeHumidity > 0 && relativeHumidity <= 1)) {
            throw Argument.refused("relativeHumidity", relativeHumidity, "it must lie above 0 and be at most 1");
        }
    }

    /**
     * The vapour pressure (Pa) of saturated air over water; strictly rising with the temperature.
     *
     * @param celsius {@value #LOWEST_CELSIUS} to {@value #HIGHEST_CELSIUS}
     * @throws IllegalArgumentException if it is outside that range or NaN, with the value
     */
    public static double saturationPascal(double celsius) {
        return PASCAL_AT_FREEZING * StrictMath.exp(exponent(inRange("celsius", celsius)));
    }

    /** The partial pressure of the vapour (Pa), above 0. */
    public double vapourPascal() {
        return relativeHumidity * saturationPascal(celsius);
    }

    /**
     * The dew point (degrees Celsius): what is as cold as that or colder becomes wet. Never above the air temperature.
     * Solved from the formula of this class: with L = ln(RH) + 17.62 t / (243.12 + t), Td = 243.12 L / (17.62 - L).
     * Below freezing it is the dew point over water, not the frost point. Below {@value #LOWEST_CELSIUS} (air of 20 degrees
     * Celsius with 0.4 % relative humidity) the formula is stretched beyond its range; the value is still finite.
     */
    public double dewPointCelsius() {
        double logarithm = logarithm();
        double dewPoint = OFFSET_CELSIUS * logarithm / (SLOPE - logarithm);
        // At saturation rounding could lift it a hair above the air.
        return StrictMath.min(celsius, dewPoint);
    }

    /**
     * The standard uncertainty of the dew point (K) that the uncertainties of the two readings leave, taken as independent
     * (JCGM 100:2008 5.1.2 with the derivatives of {@link #dewPointCelsius}).
     *
     * @param kelvin                    standard uncertainty of the air temperature (K), 0 or above, finite
     * @param relativeHumidityDeviation standard uncertainty of the relative humidity (share), 0 or above, finite
     * @throws IllegalArgumentException if one is negative, NaN or infinite, with the value
     */
    public double dewPointUncertainty(double kelvin, double relativeHumidityDeviation) {
        double span = SLOPE - logarithm();
        double perLogarithm = SLOPE * OFFSET_CELSIUS / (span * span);
        return perLogarithm * Conformance.combine(Argument.notNegative("kelvin", kelvin) * growth(celsius),
                Argument.notNegative("relativeHumidityDeviation", relativeHumidityDeviation) / relativeHumidity);
    }

    /** The mass of vapour in a volume of this air (kg/m3), by the ideal gas: e / (461.52 T); also absolute humidity. */
    public double vapourKilogramsPerCubicMetre() {
        return vapourPascal() / (VAPOUR_CONSTANT * kelvin());
    }

    /**
     * The relative humidity (share) of the same air, with the same vapour in it, at another temperature: what a reading at
     * the warm end means at the cool end. Above 1 where it would be below its dew point: there the surplus condenses.
     *
     * @param otherCelsius {@value #LOWEST_CELSIUS} to {@value #HIGHEST_CELSIUS}
     * @throws IllegalArgumentException if it is outside that range or NaN, with the value
     */
    public double relativeHumidityAt(double otherCelsius) {
        return vapourPascal() / saturationPascal(inRange("otherCelsius", otherCelsius));
    }

    /**
     * The standard uncertainty of {@link #relativeHumidityAt} (share) that those of the three readings leave, taken as
     * independent: with d ln e / dt = 17.62 x 243.12 / (243.12 + t)^2 at both temperatures (JCGM 100:2008 5.1.2).
     *
     * @param relativeHumidityDeviation standard uncertainty of the relative humidity here (share), 0 or above, finite
     * @param kelvin                    standard uncertainty of the air temperature here (K), 0 or above, finite
     * @param otherCelsius              temperature there, {@value #LOWEST_CELSIUS} to {@value #HIGHEST_CELSIUS}
     * @param otherKelvin               standard uncertainty of that (K), 0 or above, finite
     * @throws IllegalArgumentException if an argument is outside its range or NaN, with the value
     */
    public double relativeHumidityUncertaintyAt(double relativeHumidityDeviation, double kelvin, double otherCelsius,
            double otherKelvin) {
        double relative = Conformance.combine(
                Argument.notNegative("relativeHumidityDeviation", relativeHumidityDeviation) / relativeHumidity,
                Argument.notNegative("kelvin", kelvin) * growth(celsius),
                Argument.notNegative("otherKelvin", otherKelvin) * growth(inRange("otherCelsius", otherCelsius)));
        return relative * relativeHumidityAt(otherCelsius);
    }

    /** The humidity ratio (kg of vapour to a kg of dry air) at sea level; see {@link #humidityRatio(double, double)}. */
    public double humidityRatio() {
        return humidityRatio(vapourPascal(), SEA_LEVEL_PASCAL);
    }

    /**
     * The humidity ratio W (kg of vapour to a kg of dry air), 0.621945 e / (p - e) (ASHRAE Fundamentals 2017 ch. 1). It
     * stays the same when air is warmed, cooled or expands, until water joins or leaves it.
     *
     * @param vapourPascal partial pressure of the vapour (Pa), 0 or above, below {@code pascal}
     * @param pascal       pressure of the air, vapour and all (Pa), above 0
     * @throws IllegalArgumentException if an argument is outside its range or not finite, with the value
     */
    public static double humidityRatio(double vapourPascal, double pascal) {
        Argument.positive("pascal", pascal);
        if (Argument.notNegative("vapourPascal", vapourPascal) >= pascal) {
            throw Argument.refused("vapourPascal", vapourPascal, "it must be below the pressure of the air, " + pascal);
        }
        return Argument.finite("humidity ratio", MOLE_RATIO * vapourPascal / (pascal - vapourPascal));
    }

    /**
     * The partial pressure of the vapour (Pa) in air of a humidity ratio: the inverse of
     * {@link #humidityRatio(double, double)}, p W / (0.621945 + W).
     *
     * @param humidityRatio kg of vapour to a kg of dry air, 0 or above, finite
     * @param pascal        pressure of the air (Pa), above 0
     * @throws IllegalArgumentException if an argument is outside its range or not finite, with the value
     */
    public static double vapourPascalOf(double humidityRatio, double pascal) {
        double share = Argument.notNegative("humidityRatio", humidityRatio) / (MOLE_RATIO + humidityRatio);
        return Argument.positive("pascal", pascal) * share;
    }

    /**
     * The water (g/h) that substrate, dishes and animals must give off to hold this air in an enclosure that is ventilated
     * with the air of the room. Negative where the room air brings more vapour in than this air takes out: then the
     * enclosure becomes moister by itself.
     *
     * <p>A mass balance of the steady state at sea level: with V n the volume that leaves in an hour, counted as it leaves
     * (warm and moist), it carries V n (p - e) / (R T) of dry air, and the water is that times the difference of the
     * humidity ratios. What wood, substrate and walls take up on the way to the steady state is left out.
     *
     * @param room             the air that comes in
     * @param cubicMetres      volume of the enclosure (m3), 0 or above, finite
     * @param airChangesPerHour how often an hour the air is replaced (1/h), 0 or above, finite
     * @throws IllegalArgumentException if a number is negative, NaN or infinite, with the value
     */
    public double waterGramsPerHour(MoistAir room, double cubicMetres, double airChangesPerHour) {
        double dryAirConstant = MOLE_RATIO * VAPOUR_CONSTANT;
        double dryAirDensity = (SEA_LEVEL_PASCAL - vapourPascal()) / (dryAirConstant * kelvin());
        double flow = Argument.notNegative("cubicMetres", cubicMetres)
                * Argument.notNegative("airChangesPerHour", airChangesPerHour);
        return GRAMS * Argument.finite("volume that leaves in an hour", flow) * dryAirDensity
                * (humidityRatio() - room.humidityRatio());
    }

    private double kelvin() {
        return celsius + FREEZING_KELVIN;
    }

    /** ln(e / 611.2 Pa). */
    private double logarithm() {
        return StrictMath.log(relativeHumidity) + exponent(celsius);
    }

    private static double exponent(double celsius) {
        return SLOPE * celsius / (OFFSET_CELSIUS + celsius);
    }

    /** d ln e / dt (1/K). */
    private static double growth(double celsius) {
        double denominator = OFFSET_CELSIUS + celsius;
        return SLOPE * OFFSET_CELSIUS / (denominator * denominator);
    }

    private static double inRange(String name, double celsius) {
        if (!(celsius >= LOWEST_CELSIUS && celsius <= HIGHEST_CELSIUS)) {
            throw Argument.refused(name, celsius, "it must lie from " + LOWEST_CELSIUS + " to " + HIGHEST_CELSIUS);
        }
        return celsius;
    }
}
