package org.loamlight.physics;

/**
 * How much energy a lizard or snake spends in a day. Body mass is in grams, temperature is that of the body in degrees
 * Celsius, energy in kilojoules. These are means over many species: single ones lie at half (pit vipers, see
 * {@link #standardOxygenMillilitresPerHour}) and more.
 *
 * <p>Every method refuses a mass that is not finite and above 0, and a temperature outside
 * {@link #COLDEST_CELSIUS} to {@link #WARMEST_CELSIUS}, by IllegalArgumentException with name and value.
 */
public final class Energetics {

    /** Lowest body temperature taken (°C). Judgement: below it no reptile is kept active, and no formula was fitted there. */
    public static final double COLDEST_CELSIUS = 0;

    /** Highest body temperature taken (°C). Judgement: above it no squamate lives. */
    public static final double WARMEST_CELSIUS = 50;

    /** Energy of 1 ml of oxygen used (J): 4.8 thermochemical calories of 4.184 J, rounded to 20.08. Secondary source. */
    public static final double JOULES_PER_MILLILITRE_OXYGEN = 20.08;

    /** Lower multiple of the standard rate that keeps a quiet captive snake in condition. Judgement, no source. */
    public static final double QUIET_OVER_STANDARD = 1.5;

    /** Upper multiple of the standard rate, for an active snake. Judgement, no source. */
    public static final double ACTIVE_OVER_STANDARD = 2;

    /** Kilojoules in one kilocalorie: the thermochemical calorie of 4.184 J. */
    public static final double KILOJOULES_PER_KILOCALORIE = 4.184;

    /** How the standard and the resting rate grow with mass, M^0.80: for uncertainties. */
    public static final double MASS_EXPONENT = 0.80;

    private static final double GRAMS_PER_KILOGRAM = 1000;
    private static final double HOURS_PER_DAY = 24;
    private static final double JOULES_PER_KILOJOULE = 1000;

    private static final double OXYGEN_OF_ONE_GRAM = 0.013;
    private static final double DECADES_PER_DEGREE = 0.038;
    private static final double DECADES_OF_RESTING = 0.14;

    private static final double HANDBOOK_KILOCALORIES = 10;
    private static final double HANDBOOK_EXPONENT = 0.75;
    private static final double FIELD_OF_ONE_GRAM = 0.196;
    private static final double FIELD_EXPONENT = 0.889;

    private Energetics() {
    }

    /**
     * The oxygen a fasting squamate uses at rest in its inactive hours (ml/h), its standard rate:
     * 0.013 M^0.80 10^(0.038 T). Andrews &amp; Pough 1985, Physiological Zoology 58:214-231, eq. 2 with state 0, read in a
     * secondary source. The temperature term is a Q10 of 10^0.38 = 2.40. A cottonmouth was measured at about half of it
     * (McCue &amp; Lillywhite 2002, abstract), so for heavy sit-and-wait hunters it is an upper estimate.
     *
     * @param bodyGrams above 0
     * @param celsius   of the body
     */
    public static double standardOxygenMillilitresPerHour(double bodyGrams, double celsius) {
        return oxygen(bodyGrams, celsius, 0);
    }

    /**
     * The oxygen a fasting squamate uses at rest in its active hours (ml/h), its resting rate: 10^0.14 = 1.38 times the
     * standard one. The same equation with state 1.
     *
     * @param bodyGrams above 0
     * @param celsius   of the body
     */
    public static double restingOxygenMillilitresPerHour(double bodyGrams, double celsius) {
        return oxygen(bodyGrams, celsius, DECADES_OF_RESTING);
    }

    /** {@link #standardOxygenMillilitresPerHour} as energy (kJ/day), at {@link #JOULES_PER_MILLILITRE_OXYGEN}. */
    public static double standardKilojoulesPerDay(double bodyGrams, double celsius) {
        return dailyEnergy(standardOxygenMillilitresPerHour(bodyGrams, celsius));
    }

    /** {@link #restingOxygenMillilitresPerHour} as energy (kJ/day), at {@link #JOULES_PER_MILLILITRE_OXYGEN}. */
    public static double restingKilojoulesPerDay(double bodyGrams, double celsius) {
        return dailyEnergy(restingOxygenMillilitresPerHour(bodyGrams, celsius));
    }

    /**
     * What a captive squamate needs in a day to hold its weight (kJ/day): {@link #QUIET_OVER_STANDARD} to
     * {@link #ACTIVE_OVER_STANDARD} times its standard rate. The multiples are a judgement. Growth, eggs and fattening
     * for the winter are not in it.
     *
     * @param bodyGrams above 0
     * @param celsius   mean of the body over the day
     */
    public static Range maintenanceKilojoulesPerDay(double bodyGrams, double celsius) {
        double standard = standardKilojoulesPerDay(bodyGrams, celsius);
        return new Range(QUIET_OVER_STANDARD * standard, ACTIVE_OVER_STANDARD * standard);
    }

    /**
     * The practice rule for the resting need of a reptile (kJ/day): 10 W^0.75 kcal with the mass W in <em>kilograms</em>
     * (Kaplan 2000/2014, a practice rule; that W is in kilograms is implied there). The rule is also found in print as
     * kilojoules with the mass in grams, which is 42 times as much for every animal: this method does that conversion,
     * so the mass goes in in grams.
     *
     * @param bodyGrams above 0
     */
    public static double handbookKilojoulesPerDay(double bodyGrams) {
        double kilograms = Argument.positive("bodyGrams", bodyGrams) / GRAMS_PER_KILOGRAM;
        return HANDBOOK_KILOCALORIES * KILOJOULES_PER_KILOCALORIE * StrictMath.pow(kilograms, HANDBOOK_EXPONENT);
    }

    /**
     * What free-living reptiles, most of them lizards, spend in the field (kJ/day): 0.196 M^0.889. Nagy 2005, Journal of
     * Experimental Biology 208:1621-1625, read in a secondary source. Too much for an animal in an enclosure, so only
     * good as an upper bound of its need.
     *
     * @param bodyGrams above 0
     */
    public static double fieldKilojoulesPerDay(double bodyGrams) {
        return FIELD_OF_ONE_GRAM * StrictMath.pow(Argument.positive("bodyGrams", bodyGrams), FIELD_EXPONENT);
    }

    private static double oxygen(double bodyGrams, double celsius, double decadesOfState) {
        double ofMass = OXYGEN_OF_ONE_GRAM * StrictMath.pow(Argument.positive("bodyGrams", bodyGrams), MASS_EXPONENT);
        return ofMass * StrictMath.pow(10, DECADES_PER_DEGREE * bodyTemperature(celsius) + decadesOfState);
    }

    private static double bodyTemperature(double celsius) {
        if (!(celsius >= COLDEST_CELSIUS && celsius <= WARMEST_CELSIUS)) {
            throw Argument.refused("celsius", celsius,
                    "a body temperature must lie between " + COLDEST_CELSIUS + " and " + WARMEST_CELSIUS);
        }
        return celsius;
    }

    private static double dailyEnergy(double millilitresPerHour) {
        return millilitresPerHour * HOURS_PER_DAY * JOULES_PER_MILLILITRE_OXYGEN / JOULES_PER_KILOJOULE;
    }

    /**
     * What is known of a figure: it lies from {@code low} to {@code high}, both finite, 0 or above, in the unit of the
     * figure. Not a confidence interval, but what two defensible assumptions give.
     */
    public record Range(double low, double high) {

        /** Throws IllegalArgumentException if a bound is negative, NaN or infinite, or the lower one is the higher. */
        public Range {
            Argument.notNegative("low", low);
            if (Argument.notNegative("high", high) < low) {
                throw Argument.refused("high", high, "it must not be below the low bound " + low);
            }
        }
    }
}
