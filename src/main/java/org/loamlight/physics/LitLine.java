package org.loamlight.physics;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoublePredicate;
import java.util.function.ToDoubleFunction;

/**
 * What of a straight line through the enclosure is lit to more than a trace.
 *
 * @param lit          the lit stretches of it, from 0 to its length
 * @param lengthMetres of the line (m), above 0
 */
public record LitLine(Stretches lit, double lengthMetres) {

    /** Into how many equal steps a line is cut: steps of 5 mm on 120 cm. */
    public static final int STEPS = 240;

    /** Share of the line to which a border between light and shade is found: 0.01 mm on 1 m, far below what a tape shows. */
    public static final double BORDER = 1e-5;

    /**
     * Looks at {@link #STEPS} + 1 places at equal distances and finds each border between light and shade by halving the
     * step it lies in, to {@link #BORDER} of the line and on its lit side. A patch of light or shade narrower than a step
     * may be missed.
     *
     * @param index the UV index at a place
     * @param from  one end of the line
     * @param to    its other end, apart from {@code from}
     * @param trace index up to which a place counts as shaded, 0 or above
     * @throws IllegalArgumentException if the ends are the same place or the trace is negative or no number
     */
    public static LitLine of(ToDoubleFunction<Point> index, Point from, Point to, double trace) {
        Argument.notNegative("trace", trace);
        double length = Argument.positive("length of the line", from.distanceTo(to));
        List<Stretch> lit = litSteps(share -> index.applyAsDouble(from.towards(to, share)) > trace).stream()
                .map(piece -> new Stretch(length * piece.from(), length * piece.to())).toList();
        return new LitLine(Stretches.merged(lit, length), length);
    }

    private static List<Stretch> litSteps(DoublePredicate isLit) {
        List<Stretch> lit = new ArrayList<>();
        boolean litBefore = isLit.test(0);
        for (int step = 0; step < STEPS; step++) {
            double begin = (double) step / STEPS;
            double end = (step + 1.0) / STEPS;
            boolean litNow = isLit.test(end);
            if (litBefore && litNow) {
                lit.add(new Stretch(begin, end));
            } else if (litBefore) {
                lit.add(new Stretch(begin, border(isLit, begin, end)));
            } else if (litNow) {
                lit.add(new Stretch(border(isLit, end, begin), end));
            }
            litBefore = litNow;
        }
        return lit;
    }

    /** Where the light ends between a lit place and a shaded one on either side of it. */
    private static double border(DoublePredicate isLit, double lit, double shaded) {
        double inLight = lit;
        double inShade = shaded;
        while (StrictMath.abs(inShade - inLight) > BORDER) {
            double middle = (inLight + inShade) / 2;
            if (isLit.test(middle)) {
                inLight = middle;
            } else {
                inShade = middle;
            }
        }
        return inLight;
    }

    /** The lit share of the line, 0 (nothing) to 1 (all). */
    public double share() {
        return lit.share();
    }

    /**
     * The farthest way along the line from a lit place to the nearest shaded one (m): half of a lit stretch with shade on
     * both sides, all of one that reaches an end of the line. 0 if nothing is lit, empty if everything is.
     */
    public OptionalDouble farthestFromShadeMetres() {
        if (lit.open().isEmpty()) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(lit.covered().stream().mapToDouble(this::farthestFromShade).max().orElse(0));
    }

    private double farthestFromShade(Stretch piece) {
        boolean reachesAnEnd = piece.from() == 0 || piece.to() == lengthMetres;
        return reachesAnEnd ? piece.width() : piece.width() / 2;
    }
}
