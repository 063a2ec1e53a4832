package org.loamlight.physics;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * The UV index along a straight line, looked at from {@link #STEPS} + 1 places at equal distances. One profile answers for every
 * trace. Immutable.
 */
public final class UvProfile {

    /** Into how many equal steps a line is cut: steps of 5 mm on 120 cm. */
    public static final int STEPS = 240;

    /** Share of the line to which a border between light and shade is found: 0.01 mm on 1 m, far below what a tape shows. */
    public static final double BORDER = 1e-5;

    private final ToDoubleFunction<Point> index;
    private final Point from;
    private final Point to;
    private final double[] samples;

    private UvProfile(ToDoubleFunction<Point> index, Point from, Point to) {
        this.index = index;
        this.from = from;
        this.to = to;
        this.samples = new double[STEPS + 1];
        for (int step = 0; step <= STEPS; step++) {
            samples[step] = index.applyAsDouble(from.towards(to, (double) step / STEPS));
        }
    }

    /**
     * The profile between two places.
     *
     * @param index the UV index at a place
     * @param to    apart from {@code from}
     * @throws IllegalArgumentException if the ends are the same place
     */
    public static UvProfile along(ToDoubleFunction<Point> index, Point from, Point to) {
        Argument.positive("length of the line", from.distanceTo(to));
        return new UvProfile(index, from, to);
    }

    /**
     * What of the line gets more than a trace. Each border between light and shade is found by halving the step it lies in, to
     * {@link #BORDER} of the line and on its lit side. A patch of light or shade narrower than a step may be missed.
     *
     * @param trace index up to which a place counts as shaded, 0 or above
     * @throws IllegalArgumentException if the trace is negative or no number, with its value
     */
    public LitLine above(double trace) {
        Argument.notNegative("trace", trace);
        double length = from.distanceTo(to);
        return new LitLine(Stretches.merged(lit(trace, length), length), length);
    }

    private List<Stretch> lit(double trace, double length) {
        List<Stretch> lit = new ArrayList<>();
        double begins = 0;
        for (int step = 0; step < STEPS; step++) {
            double before = (double) step / STEPS;
            double after = (step + 1.0) / STEPS;
            boolean litBefore = samples[step] > trace;
            boolean litAfter = samples[step + 1] > trace;
            if (!litBefore && litAfter) {
                begins = border(trace, after, before);
            } else if (litBefore && !litAfter) {
                lit.add(new Stretch(length * begins, length * border(trace, before, after)));
            }
        }
        if (samples[STEPS] > trace) {
            lit.add(new Stretch(length * begins, length));
        }
        return lit;
    }

    /** Where the light ends between a lit place and a shaded one on either side of it. */
    private double border(double trace, double lit, double shaded) {
        double inLight = lit;
        double inShade = shaded;
        while (StrictMath.abs(inShade - inLight) > BORDER) {
            double middle = (inLight + inShade) / 2;
            if (index.applyAsDouble(from.towards(to, middle)) > trace) {
                inLight = middle;
            } else {
                inShade = middle;
            }
        }
        return inLight;
    }
}
