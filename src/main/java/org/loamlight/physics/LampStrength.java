package org.loamlight.physics;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * How strong a lamp is by readings of its index straight below it, each at its own distance, by weighted least squares
 * of index = strength times share(distance): S = sum(w f y) / sum(w f^2) with w = 1 / u^2 (the normal equation of a straight
 * line through the origin, textbook).
 *
 * <p>The readings' own uncertainties make the strength uncertain by u_S = 1 / sqrt(sum(w f^2)) (propagation, JCGM
 * 100:2008 5.1.2). Where two or more scatter more than that, u_S is widened by the Birge ratio, the root of
 * sum(w (y - S f)^2) / (n - 1) (Birge 1932, from memory); it is never narrowed.
 *
 * @param indexSquareMetres   the strength (index m2), 0 or above
 * @param standardUncertainty of the strength (index m2), above 0
 * @param farthestDeviation   how far the worst reading lies from what the others give, in standard uncertainties of that
 *                            difference; 0 for a single reading
 */
public record LampStrength(double indexSquareMetres, double standardUncertainty, double farthestDeviation) {

    /** From how many standard uncertainties on readings contradict the law: 0.3 % of good pairs do by chance. */
    public static final double CONTRADICTION = 3;

    /**
     * One reading straight below the middle of the lamp, with the meter facing up.
     *
     * @param index               0 or above, finite
     * @param standardUncertainty of the index, above 0; that of the distance is to be in it, as index times
     *                            {@link LightField#localExponent} times the distance's relative uncertainty
     * @param distanceMetres      below the lamp (m), above 0, finite
     */
    public record Reading(double index, double standardUncertainty, double distanceMetres) {

        /** @throws IllegalArgumentException if a component is out of its range, with its name and value */
        public Reading {
            Argument.notNegative("index", index);
            Argument.positive("standardUncertainty", standardUncertainty);
            Argument.positive("distanceMetres", distanceMetres);
        }
    }

    /**
     * The strength that fits the readings of one lamp best.
     *
     * @param shape    of the lamp; where it hangs does not matter
     * @param readings one or several
     * @throws IllegalArgumentException if there is no reading, or the readings are so far out of range that the
     *         strength or its uncertainty is no finite number above 0
     */
    public static LampStrength of(UvSource shape, List<Reading> readings) {
        if (readings.isEmpty()) {
            throw new IllegalArgumentException("readings is empty; the strength of a lamp needs one reading or more");
        }
        Fit all = Fit.of(readings.stream().map(reading -> Term.of(shape, reading)).toList());
        double uncertainty = all.uncertainty() * StrictMath.max(1, all.scatter());
        return new LampStrength(Argument.notNegative("strength", all.strength()),
                Argument.positive("standardUncertainty of the strength", uncertainty), all.farthestDeviation());
    }

    /** Whether the readings contradict the law of distance, or each other, by {@link #CONTRADICTION} or more. */
    public boolean isContradicted() {
        return farthestDeviation >= CONTRADICTION;
    }

    /** A reading over its uncertainty: {@code index} = y / u, {@code share} = f / u. */
    private record Term(double index, double share) {

        static Term of(UvSource shape, Reading reading) {
            return new Term(reading.index / reading.standardUncertainty,
                    shape.shareStraightBelow(reading.distanceMetres) / reading.standardUncertainty);
        }

        /** How far the reading lies from a strength that does not depend on it, in uncertainties of the difference. */
        double deviation(Fit others) {
            double difference = StrictMath.abs(index - share * others.strength());
            return difference / StrictMath.hypot(1, share * others.uncertainty());
        }
    }

    /** The least squares over some terms. */
    private record Fit(List<Term> terms, double shareSquares, double products) {

        static Fit of(List<Term> terms) {
            return new Fit(terms, terms.stream().mapToDouble(term -> term.share * term.share).sum(),
                    terms.stream().mapToDouble(term -> term.share * term.index).sum());
        }

        double strength() {
            return products / shareSquares;
        }

        double uncertainty() {
            return 1 / StrictMath.sqrt(shareSquares);
        }

        /** The Birge ratio; 0 for one term. */
        double scatter() {
            double squares = terms.stream().mapToDouble(term -> square(term.index - strength() * term.share)).sum();
            return StrictMath.sqrt(squares / StrictMath.max(1, terms.size() - 1));
        }

        double farthestDeviation() {
            return terms.size() == 1 ? 0 : IntStream.range(0, terms.size()).mapToDouble(this::deviation).max().orElseThrow();
        }

        private double deviation(int position) {
            List<Term> others = new ArrayList<>(terms);
            Term term = others.remove(position);
            return term.deviation(of(others));
        }

        private static double square(double number) {
            return number * number;
        }
    }
}
