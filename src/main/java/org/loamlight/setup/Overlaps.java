package org.loamlight.setup;

import java.util.List;
import java.util.Set;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/**
 * Solid pieces that lie in one place by more than the tape may be off. Only pieces whose edges are told in all three directions, and only kinds that
 * fill the box about them: a branch, a plant or a piece of bark leaves room in its own, and leaf litter lies about everything.
 */
final class Overlaps {
    private static final Set<FurnishingKind> SOLID = Set.of(FurnishingKind.HIDE, FurnishingKind.HUMID_HIDE, FurnishingKind.STONE, FurnishingKind.LEDGE,
            FurnishingKind.WATER_DISH);

    private final List<Furnishing> pieces;

    Overlaps(List<Furnishing> pieces) {
        this.pieces = pieces;
    }

    /** What is done with two pieces in one place. */
    interface Told {
        /** @param place of the later one in the list, from 0 */
        void of(Furnishing later, Furnishing earlier, int place);
    }

    /** Tells each pair once, in the order of the list. */
    void each(Told told) {
        for (int later = 0; later < pieces.size(); later++) {
            for (int earlier = 0; earlier < later; earlier++) {
                if (isThroughOneAnother(pieces.get(later), pieces.get(earlier))) {
                    told.of(pieces.get(later), pieces.get(earlier), later);
                }
            }
        }
    }

    private static boolean isThroughOneAnother(Furnishing one, Furnishing other) {
        if (!isBox(one) || !isBox(other)) {
            return false;
        }
        List<Edges> here = edges(one);
        List<Edges> there = edges(other);
        boolean meet = Stream.of(0, 1, 2).allMatch(axis -> here.get(axis).overlaps(there.get(axis)));
        return meet && !isInside(one, here, there) && !isInside(other, there, here);
    }

    private static boolean isBox(Furnishing piece) {
        return SOLID.contains(piece.kind()) && Stream.of(piece.begins(), piece.ends(), piece.nearEdge(), piece.farEdge(), piece.bottom(), piece.top())
                .allMatch(Measure::isKnown);
    }

    /** A hide is hollow: what lies wholly within it lies in it. */
    private static boolean isInside(Furnishing hollow, List<Edges> around, List<Edges> within) {
        return hollow.hide() == Stated.YES && Stream.of(0, 1, 2).allMatch(axis -> around.get(axis).holds(within.get(axis)));
    }

    private static List<Edges> edges(Furnishing piece) {
        return List.of(Edges.of(piece.begins(), piece.ends()), Edges.of(piece.nearEdge(), piece.farEdge()), Edges.of(piece.bottom(), piece.top()));
    }

    /**
     * A piece along one direction.
     *
     * @param limits how far the less certain edge may be off (cm)
     */
    private record Edges(double low, double high, double limits) {
        static Edges of(Measure one, Measure other) {
            double limits = DoubleStream.of(Contradictions.limits(one), Contradictions.limits(other)).max().orElseThrow();
            return new Edges(Math.min(one.value(), other.value()), Math.max(one.value(), other.value()), limits);
        }

        boolean overlaps(Edges other) {
            return Math.min(high, other.high) - Math.max(low, other.low) > limits + other.limits;
        }

        boolean holds(Edges other) {
            double room = limits + other.limits;
            return other.low >= low - room && other.high <= high + room;
        }
    }
}
