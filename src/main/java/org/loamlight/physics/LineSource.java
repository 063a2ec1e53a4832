package org.loamlight.physics;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/**
 * A tube, seen as a level line that shines as a Lambertian source all round its axis, as Keitz takes it (see
 * {@link LightField}). Its strength P has the part of Keitz' radiant flux (index m2): straight below the middle
 * E = P (2 alpha + sin 2 alpha) / (2 pi^2 D L), close up P / (2 pi D L), far away P / (pi^2 D^2).
 *
 * <p>Off the perpendicular, for a place h below the tube and d from its axis, an element ds at s along the
 * axis from the foot of the place gives dE = P / (pi^2 L) sin(t) (h / r) ds / r^2 with r^2 = s^2 + d^2 and sin(t) = d / r, the
 * Lambertian cosine about the axis. The sum over the visible arc has a closed form,
 * E = P h / (2 pi^2 L d^2) [s d / (s^2 + d^2) + arctan(s / d)] from end to end: the parallel plane aspect factor
 * (beta + sin beta cos beta) / 2 of a uniform diffuser, and its superposition for places opposite no end (Offshore Electrical
 * Engineering Manual, section 2.14, eq. 2.14.4 and 2.14.5). A reflector is in neither.
 *
 * <p>A box throws one unbroken shadow on the tube as seen from a place, because both it and the triangle of place and
 * tube are convex. So what is visible is found exactly, without sampling the arc.
 *
 * @param middle          the middle of the arc
 * @param arcLengthMetres from electrode tip to electrode tip (m), above 0 and up to {@link Point#REACH_METRES}
 * @param run             which way it lies
 */
public record LineSource(Point middle, double arcLengthMetres, Run run) implements UvSource {

    /** Which way a level tube lies in the enclosure. */
    public enum Run {
        /** From left to right. */
        LENGTH,
        /** From front to back. */
        DEPTH
    }

    /** @throws IllegalArgumentException if the arc length is out of its range, with the value */
    public LineSource {
        if (!(arcLengthMetres > 0 && arcLengthMetres <= Point.REACH_METRES)) {
            throw Argument.refused("arcLengthMetres", arcLengthMetres, "it must lie above 0 and up to " + Point.REACH_METRES + " m");
        }
    }

    @Override
    public LineSource atHeight(double metres) {
        return new LineSource(middle.atHeight(metres), arcLengthMetres, run);
    }

    @Override
    public double share(Point place, Collection<Box> boxes) {
        double below = middle.z() - place.z();
        if (below <= 0) {
            return 0;
        }
        double fromAxis = StrictMath.hypot(below, acrossRun(middle) - acrossRun(place));
        double effective = StrictMath.max(NEAREST_METRES, fromAxis);
        double seen = seen(place, boxes, effective);
        return below / fromAxis * seen / (2 * StrictMath.PI * StrictMath.PI * arcLengthMetres * effective);
    }

    @Override
    public double shareStraightBelow(double distanceMetres) {
        double distance = StrictMath.max(NEAREST_METRES, Argument.positive("distanceMetres", distanceMetres));
        return LightField.tubeFactor(distance, arcLengthMetres) / distance / arcLengthMetres;
    }

    /** Twice the aspect factor of all of the arc that is seen from a place (rad); 0 or above. */
    private double seen(Point place, Collection<Box> boxes, double distance) {
        double foot = alongRun(place) - start();
        List<Stretch> shadows = shadows(place, boxes);
        if (shadows.isEmpty()) {
            return aspect(0, arcLengthMetres, foot, distance);
        }
        double seen = 0;
        for (Stretch arc : Stretches.merged(shadows, arcLengthMetres).open()) {
            seen += aspect(arc.from(), arc.to(), foot, distance);
        }
        return seen;
    }

    /** Twice the aspect factor of a piece of the arc for a place whose foot is there on the arc (rad); 0 or above. */
    private static double aspect(double from, double to, double foot, double distance) {
        double sum = angularTerm((to - foot) / distance) - angularTerm((from - foot) / distance);
        return StrictMath.max(0, sum);
    }

    /** beta + sin beta cos beta, from the tangent of beta. */
    private static double angularTerm(double tangent) {
        return StrictMath.atan(tangent) + tangent / (1 + tangent * tangent);
    }

    /** The pieces of the arc that boxes hide from a place, from 0 to the arc length; empty if all of it is seen. */
    private List<Stretch> shadows(Point place, Collection<Box> boxes) {
        List<Stretch> shadows = new ArrayList<>();
        for (Box box : boxes) {
            if (isClear(place, box)) {
                continue;
            }
            Passage rise = Passage.WHOLE.between(box.insideZ(), place.z(), middle.z())
                    .between(run == Run.LENGTH ? box.insideY() : box.insideX(), acrossRun(place), acrossRun(middle));
            if (!rise.isNone()) {
                addShadow(shadows, rise, run == Run.LENGTH ? box.insideX() : box.insideY(), alongRun(place));
            }
        }
        return shadows;
    }

    /** Whether a box lies beside all of the triangle of place and tube: told at once of most boxes. */
    private boolean isClear(Point place, Box box) {
        double start = start();
        double left = StrictMath.min(start, alongRun(place));
        double right = StrictMath.max(start + arcLengthMetres, alongRun(place));
        return Box.isBeside(place.z(), middle.z(), box.low().z(), box.high().z())
                || Box.isBeside(acrossRun(place), acrossRun(middle), acrossRun(box.low()), acrossRun(box.high()))
                || Box.isBeside(left, right, alongRun(box.low()), alongRun(box.high()));
    }

    /**
     * Where the rays from a place to the line meet a box that they pass, on the way, in that part of their rise: at the
     * share t of the way a ray to s has come to foot + t (s - foot), so the box between low and high hides the s from
     * foot + (low - foot) / t to foot + (high - foot) / t, for the t at which that reaches farthest.
     */
    private void addShadow(List<Stretch> shadows, Passage rise, Stretch box, double foot) {
        double low = box.from() - foot;
        double high = box.to() - foot;
        double from = foot - start() + low / (low < 0 ? rise.enters() : rise.leaves());
        double to = foot - start() + high / (high > 0 ? rise.enters() : rise.leaves());
        if (box.width() > 0 && to > 0 && from < arcLengthMetres) {
            shadows.add(new Stretch(StrictMath.max(0, from), StrictMath.min(arcLengthMetres, to)));
        }
    }

    /** Where the arc begins, on the axis along which it runs (m). */
    private double start() {
        return alongRun(middle) - arcLengthMetres / 2;
    }

    private double alongRun(Point point) {
        return run == Run.LENGTH ? point.x() : point.y();
    }

    private double acrossRun(Point point) {
        return run == Run.LENGTH ? point.y() : point.x();
    }
}
