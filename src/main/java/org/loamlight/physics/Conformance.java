package org.loamlight.physics;

import org.apache.commons.numbers.gamma.ErfDifference;
import org.apache.commons.numbers.gamma.InverseErfc;

/**
 * Holding a measured value against limits when the instrument is not perfect (JCGM 106:2012, JCGM 100:2008). Value,
 * standard uncertainty and limits share one unit, whichever it is; the true value is taken as normally distributed
 * about the measured one. A limit itself conforms (JCGM 106:2012 3.3.5).
 */
public final class Conformance {

    /** How far past a limit, as a share of the limit, still counts as at the limit: room for rounding, not for error. */
    public static final double LIMIT_TOLERANCE = 1e-9;

    private static final double ROOT_TWO = StrictMath.sqrt(2);
    private static final double ROOT_THREE = StrictMath.sqrt(3);

    private Conformance() {
    }

    /**
     * The conformance probability: how probable it is that the true value lies between the limits (0 to 1),
     * Phi((high - value)/u) - Phi((low - value)/u), JCGM 106:2012 7.3.1 eq. 8, 7.3.2 eq. 9 and 7.4 eq. 11. With an
     * uncertainty of 0 it is 1 where {@link #within} holds and 0 elsewhere.
     *
     * @param value               measured value, finite
     * @param standardUncertainty of the measured value, 0 or above, finite
     * @param low                 lower limit; negative infinity if there is none
     * @param high                upper limit, not below {@code low}; positive infinity if there is none
     * @throws IllegalArgumentException if an argument is NaN, {@code value} or the uncertainty is infinite, the
     *         uncertainty is negative or the limits are the wrong way round, with the values
     */
    public static double probability(double value, double standardUncertainty, double low, double high) {
        Argument.notNegative("standardUncertainty", standardUncertainty);
        if (standardUncertainty == 0) {
            return within(value, low, high) ? 1 : 0;
        }
        requireLimits(value, low, high);
        double below = (low - value) / standardUncertainty;
        double above = (high - value) / standardUncertainty;
        // One difference of error functions: two terms of Phi would cancel far out in a tail.
        return 0.5 * ErfDifference.value(below / ROOT_TWO, above / ROOT_TWO);
    }

    /**
     * Simple acceptance: does the value lie between the limits, the limits included and widened by
     * {@link #LIMIT_TOLERANCE} times their own size (a limit of 0 is not widened)?
     *
     * @param value finite
     * @param low   lower limit; negative infinity if there is none
     * @param high  upper limit, not below {@code low}; positive infinity if there is none
     * @throws IllegalArgumentException if an argument is NaN, {@code value} is infinite or the limits are the wrong
     *         way round, with the values
     */
    public static boolean within(double value, double low, double high) {
        requireLimits(value, low, high);
        return value >= low - LIMIT_TOLERANCE * StrictMath.abs(low)
                && value <= high + LIMIT_TOLERANCE * StrictMath.abs(high);
    }

    /**
     * The lowest measured value that conforms to a lower limit with at least the given probability,
     * low + z u (guarded acceptance from a probability of 0.5, guarded rejection below it; JCGM 106:2012 8.3.2, 8.3.3).
     *
     * @param low                 lower limit, finite
     * @param standardUncertainty 0 or above, finite, and the same at the limit as at the result
     * @param probability         wanted conformance probability, above 0 and below 1
     * @throws IllegalArgumentException if an argument is outside its range, with the value
     */
    public static double lowerAcceptanceLimit(double low, double standardUncertainty, double probability) {
        return Argument.finite("low", low) + guardBand(standardUncertainty, probability);
    }

    /**
     * The highest measured value that conforms to an upper limit with at least the given probability, high - z u; the
     * mirror image of {@link #lowerAcceptanceLimit}.
     *
     * @param high                upper limit, finite
     * @param standardUncertainty 0 or above, finite, and the same at the limit as at the result
     * @param probability         wanted conformance probability, above 0 and below 1
     * @throws IllegalArgumentException if an argument is outside its range, with the value
     */
    public static double upperAcceptanceLimit(double high, double standardUncertainty, double probability) {
        return Argument.finite("high", high) - guardBand(standardUncertainty, probability);
    }

    /**
     * How many standard uncertainties a value must keep from a one-sided limit to conform with the given probability:
     * the quantile z of the standard normal distribution (JCGM 106:2012 7.3.3 Table 1), negative below 0.5.
     *
     * @param probability wanted conformance probability, above 0 and below 1
     * @throws IllegalArgumentException if the probability is 0, 1, outside them or NaN, with the value
     */
    public static double coverageFactor(double probability) {
        if (!(probability > 0 && probability < 1)) {
            throw Argument.refused("probability", probability, "it must lie above 0 and below 1");
        }
        return -ROOT_TWO * InverseErfc.value(2 * probability);
    }

    /**
     * The standard uncertainty of a sum of independent contributions: the root of the sum of their squares
     * (JCGM 100:2008 5.1.2 with sensitivity coefficients of 1). Without contributions it is 0.
     *
     * @param standardUncertainties each 0 or above, finite, all in one unit, which is that of the result
     * @throws IllegalArgumentException if one is negative, NaN or infinite, with its position and value
     */
    public static double combine(double... standardUncertainties) {
        double combined = 0;
        for (int i = 0; i < standardUncertainties.length; i++) {
            combined = StrictMath.hypot(combined, Argument.notNegative("standardUncertainties", i, standardUncertainties[i]));
        }
        return combined;
    }

    /**
     * The standard uncertainty of a value of which only the limits plus or minus a are known, a / sqrt(3)
     * (JCGM 100:2008 4.3.7).
     *
     * @param halfWidth a, 0 or above, finite; its unit is that of the result
     * @throws IllegalArgumentException if it is negative, NaN or infinite, with the value
     */
    public static double fromHalfWidth(double halfWidth) {
        return Argument.notNegative("halfWidth", halfWidth) / ROOT_THREE;
    }

    private static double guardBand(double standardUncertainty, double probability) {
        return coverageFactor(probability) * Argument.notNegative("standardUncertainty", standardUncertainty);
    }

    private static void requireLimits(double value, double low, double high) {
        Argument.finite("value", value);
        boolean ordered = low <= high && low < Double.POSITIVE_INFINITY && high > Double.NEGATIVE_INFINITY;
        if (!ordered) {
            throw new IllegalArgumentException("limits are low " + low + " and high " + high
                    + "; low must not be above high, and a limit that does not exist is low -Infinity or high Infinity");
        }
    }
}
