package org.loamlight.derivation;

import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.loamlight.physics.Box;
import org.loamlight.physics.Point;
import org.loamlight.setup.Furnishing;
import org.loamlight.setup.FurnishingKind;
import org.loamlight.setup.Measure;
import org.loamlight.setup.Setup;

/**
 * The furnishings that throw a shadow, as boxes: those of which all six edges are told. Plants, branches and heaps of leaves fill
 * the box about them too loosely to be one, and of other things it is not known how solid they are.
 */
final class SolidPieces {
    private static final Set<FurnishingKind> SOLID = EnumSet.of(FurnishingKind.HIDE, FurnishingKind.HUMID_HIDE, FurnishingKind.CORK,
            FurnishingKind.BARK, FurnishingKind.STONE, FurnishingKind.LEDGE, FurnishingKind.BACKGROUND);

    private final List<Box> boxes;

    SolidPieces(Setup setup) {
        this.boxes = setup.furnishings().stream().filter(piece -> SOLID.contains(piece.kind()) && hasAllEdges(piece)).map(SolidPieces::box).toList();
    }

    private static boolean hasAllEdges(Furnishing piece) {
        return Stream.of(piece.begins(), piece.ends(), piece.nearEdge(), piece.farEdge(), piece.bottom(), piece.top()).allMatch(Measure::isKnown);
    }

    private static Box box(Furnishing piece) {
        Point one = new Point(metres(piece.begins()), metres(piece.nearEdge()), metres(piece.bottom()));
        Point other = new Point(metres(piece.ends()), metres(piece.farEdge()), metres(piece.top()));
        return new Box(new Point(Math.min(one.x(), other.x()), Math.min(one.y(), other.y()), Math.min(one.z(), other.z())),
                new Point(Math.max(one.x(), other.x()), Math.max(one.y(), other.y()), Math.max(one.z(), other.z())));
    }

    private static double metres(Measure centimetres) {
        return Metres.of(centimetres).value();
    }

    List<Box> all() {
        return boxes;
    }

    /** Those that may shade a place where the animal lies: it lies on what holds the place, whatever the tape says. */
    Collection<Box> besides(Point place) {
        return boxes.stream().filter(box -> !box.blocks(place, place)).toList();
    }
}
