package org.loamlight.physics;

import java.util.DoubleSummaryStatistics;
import java.util.List;

/**
 * The UV index anywhere in an enclosure: what each lamp gives there, added up. Light that walls, sand or a reflector
 * throw back is left out. The work for one place is lamps times boxes.
 *
 * @param lamps all that burn; without any the index is 0 everywhere
 * @param boxes all that stand in the way and let nothing pass; may be empty
 */
public record UvField(List<UvLamp> lamps, List<Box> boxes) {

    public UvField {
        lamps = List.copyOf(lamps);
        boxes = List.copyOf(boxes);
    }

    /** The index at a place, on a surface that faces up; 0 or above. */
    public double index(Point place) {
        // Asked for hundreds of places: no stream for each of them, but the sum a stream makes, which carries what rounding loses.
        DoubleSummaryStatistics all = new DoubleSummaryStatistics();
        for (UvLamp lamp : lamps) {
            all.accept(lamp.index(place, boxes));
        }
        return Argument.finite("index", all.getSum());
    }

    /** The index along a straight line between two places that are apart. */
    public UvProfile profile(Point from, Point to) {
        return UvProfile.along(this::index, from, to);
    }
}
