package org.loamlight.derivation;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.loamlight.physics.Box;
import org.loamlight.physics.Conformance;
import org.loamlight.physics.Point;

/**
 * The UV index at a place, of several lamps together.
 *
 * @param value       0 or above
 * @param uncertainty standard uncertainty, from the strengths of the lamps and from where lamps and place are
 */
record UvIndex(double value, double uncertainty) {
    /**
     * Where the index is asked for.
     *
     * @param along  from the left wall
     * @param across from the front; empty when not told: then each lamp is taken to hang in the same depth, so that it is rather
     *               more than less
     * @param above  above the bare floor
     */
    record Where(Metres along, Optional<Metres> across, Metres above) {
        /** The place itself; at the front where its depth is not told. */
        Point point() {
            return new Point(along.value(), across.orElse(Metres.ZERO).value(), above.value());
        }

        /** Of some boxes those that reach above the place as low as it may be; none where its depth is not told. */
        Collection<Box> shading(Collection<Box> boxes) {
            double lowest = above.value() - above.uncertainty();
            return across.isPresent() ? boxes.stream().filter(box -> box.high().z() > lowest).toList() : List.of();
        }
    }

    /** @param boxes that may shade the place; left out where the depth of the place is not told */
    static UvIndex at(Where where, List<HungLamp> lamps, Collection<Box> boxes) {
        Collection<Box> shading = where.shading(boxes);
        double[] parts = new double[2 * lamps.size() + 1];
        for (int i = 0; i < lamps.size(); i++) {
            HungLamp lamp = lamps.get(i);
            parts[2 * i] = lamp.output().uncertainty() * share(lamp, middle(lamp, where), where.point(), shading);
            parts[2 * i + 1] = lamp.output().strength()
                    * propagated(at -> share(lamp, at, where.point(), shading), lamp.along(), depth(lamp, where), lamp.above());
        }
        parts[2 * lamps.size()] = propagated(at -> sum(where, at, lamps, shading), where.along, where.across.orElse(Metres.ZERO), where.above);
        return new UvIndex(sum(where, where.point(), lamps, shading), Conformance.combine(parts));
    }

    /** The value alone, for choosing among places. */
    static double value(Where where, List<HungLamp> lamps, Collection<Box> boxes) {
        return sum(where, where.point(), lamps, where.shading(boxes));
    }

    private static double sum(Where where, Point place, List<HungLamp> lamps, Collection<Box> boxes) {
        double sum = 0;
        for (HungLamp lamp : lamps) {
            sum += lamp.output().strength() * share(lamp, middle(lamp, where), place, boxes);
        }
        return sum;
    }

    /** Nothing of a lamp that is blocked: how long such a tube is nobody need have told. */
    private static double share(HungLamp lamp, Point middle, Point place, Collection<Box> boxes) {
        return lamp.output().strength() > 0 ? lamp.source(middle).share(place, boxes) : 0;
    }

    private static Point middle(HungLamp lamp, Where where) {
        return new Point(lamp.along().value(), depth(lamp, where).value(), lamp.above().value());
    }

    private static Metres depth(HungLamp lamp, Where where) {
        return where.across.isPresent() ? lamp.across().orElse(new Metres(where.across.get().value(), 0)) : Metres.ZERO;
    }

    /** How uncertain something is that depends on where a point is. */
    private static double propagated(ToDoubleFunction<Point> result, Metres along, Metres across, Metres above) {
        return Propagation.uncertainty(at -> result.applyAsDouble(new Point(at[0], at[1], at[2])),
                new double[] {along.value(), across.value(), above.value()},
                new double[] {along.uncertainty(), across.uncertainty(), above.uncertainty()});
    }
}
