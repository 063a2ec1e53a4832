package org.loamlight.derivation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.loamlight.physics.Conformance;
import org.loamlight.physics.Stretch;
import org.loamlight.physics.Stretches;
import org.loamlight.quantity.Zone;
import org.loamlight.setup.Furnishing;
import org.loamlight.setup.Heater;
import org.loamlight.setup.Lamp;
import org.loamlight.setup.Measure;
import org.loamlight.setup.Reading;
import org.loamlight.setup.Setup;
import org.loamlight.setup.Side;
import org.loamlight.setup.Spot;
import org.loamlight.setup.TubeRuns;

/**
 * The axis of one enclosure in thirds: which third a spot lies in, and which of the two outer ones is the warm end.
 * Thirds are counted from the left, or from the bottom, beginning with 0. Lengths are in centimetres.
 */
final class Layout {
    private static final int LAST = 2;

    private final Axis axis;
    private final Measure length;
    private final OptionalInt warmThird;

    private Layout(Axis axis, Measure length, OptionalInt warmThird) {
        this.axis = axis;
        this.length = length;
        this.warmThird = warmThird;
    }

    static Layout of(Setup setup, Axis axis) {
        if (axis == Axis.HEIGHT) {
            return new Layout(axis, setup.enclosure().height(), OptionalInt.of(LAST));
        }
        Layout unturned = new Layout(axis, setup.enclosure().length(), OptionalInt.empty());
        return new Layout(axis, setup.enclosure().length(), unturned.warmThird(setup));
    }

    private OptionalInt warmThird(Setup setup) {
        if (setup.enclosure().warmEnd() != Side.UNKNOWN) {
            return OptionalInt.of(setup.enclosure().warmEnd() == Side.LEFT ? 0 : LAST);
        }
        int[] heated = setup.heaters().stream().map(Heater::place).map(this::third).flatMapToInt(OptionalInt::stream)
                .filter(third -> third != 1).distinct().toArray();
        if (heated.length == 1) {
            return OptionalInt.of(heated[0]);
        }
        return heated.length == 0 && !anySideTold(setup) ? OptionalInt.of(0) : OptionalInt.empty();
    }

    /** Where nobody speaks of left and right or of centimetres, warm and cool end are all that is told, and all that matters. */
    private static boolean anySideTold(Setup setup) {
        Stream<Spot> spots = Stream.of(setup.heaters().stream().map(Heater::place), setup.lamps().stream().map(Lamp::place),
                setup.furnishings().stream().map(Furnishing::place), setup.readings().stream().map(Reading::place)).flatMap(s -> s);
        return spots.anyMatch(spot -> spot.along().isKnown() || spot.zone() == Zone.LEFT_THIRD || spot.zone() == Zone.RIGHT_THIRD)
                || setup.furnishings().stream().anyMatch(piece -> piece.begins().isKnown() || piece.ends().isKnown());
    }

    Measure length() {
        return length;
    }

    Axis axis() {
        return axis;
    }

    /** Whether it is known which outer third is the warm one. */
    boolean isWarmEndKnown() {
        return warmThird.isPresent();
    }

    /** Whether a piece has its place along the axis in centimetres. */
    boolean isMeasured(Furnishing piece) {
        return hasEdges(piece) || position(piece.place()).isKnown();
    }

    /** Whether the keeper's words say which third a piece stands in. Words speak of the length. */
    boolean isInWords(Furnishing piece) {
        return axis == Axis.LENGTH && piece.place().zone() != Zone.ENCLOSURE;
    }

    /** The third a spot lies in; empty when that cannot be told. */
    OptionalInt third(Spot spot) {
        Measure position = position(spot);
        if (position.isKnown()) {
            return length.isKnown() ? OptionalInt.of(thirdAt(position.value())) : OptionalInt.empty();
        }
        return axis == Axis.LENGTH ? third(spot.zone()) : OptionalInt.empty();
    }

    private int thirdAt(double position) {
        return Stretches.thirdOf(Math.max(0, Math.min(position, length.value())), length.value());
    }

    private OptionalInt third(Zone zone) {
        return switch (zone) {
            case LEFT_THIRD -> OptionalInt.of(0);
            case MIDDLE_THIRD -> OptionalInt.of(1);
            case RIGHT_THIRD -> OptionalInt.of(LAST);
            case WARM_END, BASKING_PLACE -> warmThird;
            case COOL_END -> warmThird.isPresent() ? OptionalInt.of(LAST - warmThird.getAsInt()) : OptionalInt.empty();
            default -> OptionalInt.empty();
        };
    }

    /** What a third is called: by its warmth where the warm end is known, by its side otherwise. */
    Zone zoneOf(int third) {
        if (third == 1) {
            return Zone.MIDDLE_THIRD;
        }
        if (warmThird.isPresent()) {
            return third == warmThird.getAsInt() ? Zone.WARM_END : Zone.COOL_END;
        }
        return third == 0 ? Zone.LEFT_THIRD : Zone.RIGHT_THIRD;
    }

    /** The zone a reading was taken in; the whole enclosure when its place is not told. */
    Zone zoneOf(Spot spot) {
        if (spot.zone() == Zone.BASKING_PLACE) {
            return Zone.BASKING_PLACE;
        }
        OptionalInt third = third(spot);
        return third.isPresent() ? zoneOf(third.getAsInt()) : spot.zone();
    }

    /** The stretch of the axis a piece takes up; empty when that cannot be told. */
    Optional<Stretch> stretch(Furnishing piece) {
        if (hasEdges(piece)) {
            double one = from(piece).value();
            double other = to(piece).value();
            return Optional.of(new Stretch(Math.min(one, other), Math.max(one, other)));
        }
        return piece.extent().isKnown() ? middle(piece.place()).map(at -> around(at, piece.extent().value())) : Optional.empty();
    }

    /** Whether the stretch of a piece rests on a place said in words, so that it is known to its third only. */
    boolean isPlacedInWords(Furnishing piece) {
        return !hasEdges(piece) && !position(piece.place()).isKnown();
    }

    private boolean hasEdges(Furnishing piece) {
        return from(piece).isKnown() && to(piece).isKnown();
    }

    private Measure from(Furnishing piece) {
        return axis == Axis.LENGTH ? piece.begins() : piece.bottom();
    }

    private Measure to(Furnishing piece) {
        return axis == Axis.LENGTH ? piece.ends() : piece.top();
    }

    private Measure position(Spot spot) {
        return axis == Axis.LENGTH ? spot.along() : spot.above();
    }

    private static Stretch around(double middle, double extent) {
        return new Stretch(middle - extent / 2, middle + extent / 2);
    }

    private Optional<Double> middle(Spot spot) {
        Measure position = position(spot);
        if (position.isKnown()) {
            return Optional.of(position.value());
        }
        OptionalInt third = third(spot);
        return third.isPresent() && length.isKnown() ? Optional.of(length.value() * (2 * third.getAsInt() + 1) / 6) : Optional.empty();
    }

    /** The thirds a lamp hangs over, those a tube along the length reaches into among them; empty when that cannot be told. */
    List<Integer> thirds(Lamp lamp) {
        boolean isLine = axis == Axis.LENGTH && lamp.runs() == TubeRuns.ALONG && lamp.arcLength().isKnown() && lamp.place().along().isKnown();
        return isLine && length.isKnown() ? thirds(around(lamp.place().along().value(), lamp.arcLength().value()))
                : thirds(lamp.place());
    }

    /** The thirds a piece reaches into; empty when that cannot be told. */
    List<Integer> thirds(Furnishing piece) {
        Optional<Stretch> stretch = length.isKnown() ? stretch(piece) : Optional.empty();
        return stretch.isPresent() ? thirds(stretch.get()) : thirds(piece.place());
    }

    /** The third a spot lies in, alone; empty when that cannot be told. */
    List<Integer> thirds(Spot spot) {
        OptionalInt third = third(spot);
        return third.isPresent() ? List.of(third.getAsInt()) : List.of();
    }

    private List<Integer> thirds(Stretch stretch) {
        List<Integer> thirds = new ArrayList<>();
        for (int third = 0; third <= LAST; third++) {
            if (Stretches.reaches(stretch, third, length.value())) {
                thirds.add(third);
            }
        }
        return thirds;
    }

    /**
     * Standard uncertainty of where a piece begins or ends (cm). A piece placed in words stands somewhere in its third: half a third either
     * way of the middle it is counted at.
     */
    double edgeUncertainty(Furnishing piece) {
        double told = 0;
        for (Measure edge : List.of(piece.begins(), piece.ends(), piece.bottom(), piece.top(), piece.extent())) {
            told = Math.max(told, edge.isKnown() ? edge.standardUncertainty() : 0);
        }
        return isPlacedInWords(piece) ? Conformance.combine(told, Conformance.fromHalfWidth(length.value() / (LAST + 1) / 2)) : told;
    }
}
