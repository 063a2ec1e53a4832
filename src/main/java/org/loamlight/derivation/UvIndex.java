package org.loamlight.derivation;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.loamlight.physics.Box;
import org.loamlight.physics.Point;
import org.loamlight.physics.UvLamp;

/**
 * The UV index at a place, of several lamps together.
 *
 * @param value       0 or above
 * @param uncertainty standard uncertainty, from the strengths of the lamps and from where lamps and place are
 */
record UvIndex(double value, double uncertainty) {
    /** Inputs of one lamp: its strength and its three coordinates. */
    private static final int OF_LAMP = 4;

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
    }

    /** @param boxes that may shade the place; left out where the depth of the place is not told */
    static UvIndex at(Where where, List<HungLamp> lamps, Collection<Box> boxes) {
        double[] inputs = new double[lamps.size() * OF_LAMP + 3];
        double[] uncertainties = new double[inputs.length];
        for (int i = 0; i < lamps.size(); i++) {
            HungLamp lamp = lamps.get(i);
            put(inputs, uncertainties, i * OF_LAMP, new Metres(lamp.output().strength(), lamp.output().uncertainty()));
            put(inputs, uncertainties, i * OF_LAMP + 1, lamp.along(), depth(lamp, where), lamp.above());
        }
        put(inputs, uncertainties, lamps.size() * OF_LAMP, where.along, where.across.orElse(Metres.ZERO), where.above);
        Collection<Box> shading = where.across.isPresent() ? boxes : List.of();
        return new UvIndex(index(inputs, lamps, shading), Propagation.uncertainty(moved -> index(moved, lamps, shading), inputs, uncertainties));
    }

    private static Metres depth(HungLamp lamp, Where where) {
        return where.across.isPresent() ? lamp.across().orElse(new Metres(where.across.get().value(), 0)) : Metres.ZERO;
    }

    private static void put(double[] inputs, double[] uncertainties, int position, Metres... values) {
        for (int i = 0; i < values.length; i++) {
            inputs[position + i] = values[i].value();
            uncertainties[position + i] = values[i].uncertainty();
        }
    }

    private static double index(double[] inputs, List<HungLamp> lamps, Collection<Box> boxes) {
        Point place = point(inputs, lamps.size() * OF_LAMP);
        double sum = 0;
        for (int i = 0; i < lamps.size(); i++) {
            double strength = Math.max(0, inputs[i * OF_LAMP]);
            sum += new UvLamp(lamps.get(i).source(point(inputs, i * OF_LAMP + 1)), strength, 1).index(place, boxes);
        }
        return sum;
    }

    private static Point point(double[] inputs, int position) {
        return new Point(inputs[position], inputs[position + 1], inputs[position + 2]);
    }
}
