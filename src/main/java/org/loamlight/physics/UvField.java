package org.loamlight.physics;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

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
        return Argument.finite("index", lamps.stream().mapToDouble(lamp -> lamp.index(place, boxes)).sum());
    }

    /** What is lit along a straight line: see {@link LitLine#of}. */
    public LitLine litLine(Point from, Point to, double trace) {
        return LitLine.of(this::index, from, to, trace);
    }

    /**
     * The farthest an animal may have to go from a lit one of these places to the nearest shaded one of them, straight
     * (m). 0 if none is lit, empty if all are. The work is lit places times shaded ones. Places on a grid give it to
     * within half the diagonal of a cell at either end.
     *
     * @param places where the animal can be: a grid on the floor, with the tops of ledges; empty gives 0
     * @param trace  index up to which a place counts as shaded, 0 or above
     */
    public OptionalDouble farthestFromShade(Collection<Point> places, double trace) {
        Argument.notNegative("trace", trace);
        List<Point> lit = new ArrayList<>();
        List<Point> shaded = new ArrayList<>();
        places.forEach(place -> (index(place) > trace ? lit : shaded).add(place));
        if (shaded.isEmpty() && !lit.isEmpty()) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(lit.stream().mapToDouble(place -> nearest(place, shaded)).max().orElse(0));
    }

    private static double nearest(Point place, List<Point> others) {
        return others.stream().mapToDouble(place::distanceTo).min().orElseThrow();
    }

    /**
     * Between which heights of one lamp, the others left as they are, the index at a place lies between two values: see
     * {@link HeightBand#between}. Empty if it does so at none of the heights.
     *
     * @param lamp    position of the lamp in {@link #lamps}
     * @param place   where the animal lies
     * @param heights at which the middle of the lamp can hang above the bare floor (m)
     * @param low     lowest index wanted, 0 or above
     * @param high    highest index wanted, not below {@code low}
     * @throws IndexOutOfBoundsException if there is no such lamp
     */
    public Optional<Stretch> heightsBetween(int lamp, Point place, Stretch heights, double low, double high) {
        UvLamp moved = lamps.get(lamp);
        List<UvLamp> others = new ArrayList<>(lamps);
        others.remove(lamp);
        double fixed = new UvField(others, boxes).index(place);
        return HeightBand.between(height -> fixed + moved.atHeight(height).index(place, boxes), heights, low, high);
    }
}
