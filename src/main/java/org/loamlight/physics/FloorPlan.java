package org.loamlight.physics;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What pieces cover of the floor of a box, seen from above. Immutable. Pieces are cut off at the walls; what is narrower
 * than {@link Stretches#HAIR} of the floor in either direction covers nothing.
 */
public final class FloorPlan {

    /** The most grid points a search may have: a floor of 10 m by 10 m every 5 mm. */
    public static final int MOST_POINTS = 5_000_000;

    private final double lengthMetres;
    private final double depthMetres;
    private final List<Rectangle> covers;

    /**
     * A floor and what lies on or over it.
     *
     * @param lengthMetres inside, from left to right (m), above 0, finite
     * @param depthMetres  inside, from front to back (m), above 0, finite
     * @param pieces       in any order; may overlap and reach past the walls; none null. Without pieces nothing is covered
     * @throws IllegalArgumentException if a side of the floor is not above 0 or not finite, with the value
     */
    public FloorPlan(double lengthMetres, double depthMetres, List<Rectangle> pieces) {
        this.lengthMetres = Argument.positive("lengthMetres", lengthMetres);
        this.depthMetres = Argument.positive("depthMetres", depthMetres);
        this.covers = pieces.stream().flatMap(piece -> clipped(piece).stream()).toList();
    }

    /** The pieces as far as they lie on the floor, in the order given; empty if nothing is covered. */
    public List<Rectangle> covers() {
        return covers;
    }

    /**
     * The covered share of the floor, 0 (nothing) to 1 (all): the union of the pieces, so that what is covered twice counts
     * once. Exact but for rounding: the floor is cut into strips at every side of a piece, and each strip is covered all
     * through by {@link Stretches}.
     */
    public double share() {
        List<Double> cuts = cuts();
        double share = 0;
        for (int i = 1; i < cuts.size(); i++) {
            Stretch strip = new Stretch(cuts.get(i - 1), cuts.get(i));
            share += coveredIn(strip) * strip.width() / depthMetres;
        }
        return StrictMath.min(1, share);
    }

    /** The covered area of the floor (m2), from 0 to its length times its depth. */
    public double coveredSquareMetres() {
        return share() * lengthMetres * depthMetres;
    }

    /**
     * How far it is to cover from the place that is farthest from it, searched on a grid that holds the borders and the
     * corners of the floor. As the distance to the nearest cover changes by no more than the way one goes, the farthest
     * place can lie no more than half the diagonal of a mesh beyond the farthest grid point; that is the error given.
     * What stands between is not looked at: the distance is straight.
     *
     * @param stepMetres widest distance between neighbouring points of the grid, along and across (m), above 0, finite
     * @return empty if nothing is covered: then no distance is enough
     * @throws IllegalArgumentException if the step is not above 0 or not finite, or so small that the grid would have
     *         more than {@link #MOST_POINTS} points, with the value
     */
    public Optional<Refuge> refuge(double stepMetres) {
        int alongSteps = steps(lengthMetres, stepMetres);
        int acrossSteps = steps(depthMetres, stepMetres);
        if ((alongSteps + 1.0) * (acrossSteps + 1.0) > MOST_POINTS) {
            throw Argument.refused("stepMetres", stepMetres, "the grid would have more than " + MOST_POINTS + " points");
        }
        if (covers.isEmpty()) {
            return Optional.empty();
        }
        double error = StrictMath.hypot(lengthMetres / alongSteps, depthMetres / acrossSteps) / 2;
        return Optional.of(new Refuge(farthest(alongSteps, acrossSteps), error));
    }

    /**
     * The way to cover from the farthest place of the floor.
     *
     * @param metres      the greatest distance found (m), 0 or above; the true one is not below it
     * @param errorMetres how much the true one may be above it (m), above 0
     */
    public record Refuge(double metres, double errorMetres) {
    }

    private double farthest(int alongSteps, int acrossSteps) {
        double farthest = 0;
        for (int i = 0; i <= alongSteps; i++) {
            for (int j = 0; j <= acrossSteps; j++) {
                double nearest = squaredWayToCover(lengthMetres * i / alongSteps, depthMetres * j / acrossSteps);
                farthest = StrictMath.max(farthest, nearest);
            }
        }
        return StrictMath.sqrt(farthest);
    }

    private double squaredWayToCover(double along, double across) {
        double nearest = Double.POSITIVE_INFINITY;
        for (Rectangle cover : covers) {
            nearest = StrictMath.min(nearest, cover.squaredDistanceTo(along, across));
        }
        return nearest;
    }

    /** Steps of at most {@code stepMetres} that fill a side; a hair over a whole number does not ask for one more. */
    private static int steps(double sideMetres, double stepMetres) {
        double ratio = sideMetres / Argument.positive("stepMetres", stepMetres);
        return (int) StrictMath.max(1, StrictMath.ceil(ratio * (1 - Stretches.HAIR)));
    }

    /** Where strips of unchanging cover begin and end, ascending, from front to back. */
    private List<Double> cuts() {
        List<Double> cuts = new ArrayList<>(List.of(0.0, depthMetres));
        covers.forEach(cover -> cuts.addAll(List.of(cover.across().from(), cover.across().to())));
        return cuts.stream().distinct().sorted().toList();
    }

    private double coveredIn(Stretch strip) {
        List<Stretch> pieces = covers.stream()
                .filter(cover -> cover.across().from() <= strip.from() && cover.across().to() >= strip.to())
                .map(Rectangle::along).toList();
        return Stretches.merged(pieces, lengthMetres).share();
    }

    private Optional<Rectangle> clipped(Rectangle piece) {
        Optional<Stretch> along = onFloor(piece.along(), lengthMetres);
        Optional<Stretch> across = onFloor(piece.across(), depthMetres);
        return along.flatMap(length -> across.map(depth -> new Rectangle(length, depth)));
    }

    /** At most one stretch is left of one; none if it lies off the floor or is a hair wide. */
    private static Optional<Stretch> onFloor(Stretch side, double length) {
        return Stretches.merged(List.of(side), length).covered().stream().findFirst();
    }
}
