package org.loamlight.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.loamlight.derivation.Whereabouts;
import org.loamlight.physics.Stretch;
import org.loamlight.setup.Furnishing;
import org.loamlight.setup.Heater;
import org.loamlight.setup.Lamp;
import org.loamlight.setup.LampKind;
import org.loamlight.setup.Measure;
import org.loamlight.setup.Opening;
import org.loamlight.setup.Reading;
import org.loamlight.setup.Setup;
import org.loamlight.setup.Spot;
import org.loamlight.setup.Stated;
import org.loamlight.setup.Subject;
import org.loamlight.setup.Substrate;
import org.loamlight.setup.Support;
import org.loamlight.setup.TubeRuns;
import org.loamlight.setup.Words;

/** Every part of a setup with its mark and its place, in the order heaters, lamps, furnishings, readings, openings. */
final class Placements {
    /** What is told farther beyond a wall than a tape errs hangs outside and is not drawn (cm). A judgement. */
    private static final double BEYOND = 5;

    private final Setup setup;
    private final Whereabouts lengthwise;
    private final Numbers numbers;

    Placements(Setup setup, Whereabouts lengthwise, Numbers numbers) {
        this.setup = setup;
        this.lengthwise = lengthwise;
        this.numbers = numbers;
    }

    List<Placement> all() {
        List<Placement> all = new ArrayList<>();
        for (Heater heater : setup.heaters()) {
            all.add(of(part('H', all, heater.subject(), heater.kind()), Placement.Form.HEATER, heater.place()));
        }
        for (Lamp lamp : setup.lamps()) {
            Part part = part('L', all, lamp.subject(), lamp.kind());
            all.add(isTube(lamp) ? tube(part, lamp) : of(part, Placement.Form.BULB, lamp.place()));
        }
        for (Furnishing piece : setup.furnishings()) {
            all.add(of(part('F', all, piece.subject(), piece.kind()), piece));
        }
        for (Reading reading : setup.readings()) {
            all.add(of(part('R', all, reading.subject(), reading.of()), Placement.Form.READING, reading.place()));
        }
        for (Opening opening : setup.enclosure().openings()) {
            all.add(of(part('O', all, opening.subject(), opening.kind()), Placement.Form.OPENING, Spot.UNKNOWN));
        }
        return all;
    }

    private Part part(char letter, List<Placement> before, Subject subject, Enum<?> kind) {
        long earlier = before.stream().filter(one -> one.part().key().charAt(0) == letter).count();
        return new Part(letter + String.valueOf(earlier + 1), subject, word(kind), numbers.toDo(subject), numbers.toFindOut(subject));
    }

    private static String word(Enum<?> kind) {
        return kind.name().equals("UNKNOWN") ? "" : Words.of(kind).replaceFirst("^uv ", "UV ").replaceFirst("^led$", "LED");
    }

    private Placement of(Part part, Placement.Form form, Spot place) {
        return new Placement(part, form, inside(point(place.along()), setup.enclosure().length()),
                inside(point(place.across()), setup.enclosure().depth()), hung(place.above()), false, false, false, lengthwise.third(place));
    }

    /** What lies on the lid is drawn above it; what hangs far above is not. */
    private Optional<Stretch> hung(Measure above) {
        Measure height = setup.enclosure().height();
        return point(above).filter(at -> !height.isKnown() || at.to() <= height.value() * (1 + Scene.HEADROOM));
    }

    private static Optional<Stretch> point(Measure position) {
        return position.isKnown() ? Placement.at(position.value()) : Optional.empty();
    }

    /** Cut off at the walls; empty where it is told to lie beyond one. */
    private static Optional<Stretch> inside(Optional<Stretch> told, Measure size) {
        if (!size.isKnown()) {
            return told;
        }
        return told.filter(one -> one.from() <= size.value() + BEYOND && one.to() >= -BEYOND)
                .map(one -> new Stretch(within(one.from(), size.value()), within(one.to(), size.value())));
    }

    private static double within(double position, double size) {
        return Math.max(0, Math.min(position, size));
    }

    private static boolean isTube(Lamp lamp) {
        return (lamp.kind() == LampKind.UV_TUBE || lamp.kind() == LampKind.DAYLIGHT_TUBE) && lamp.arcLength().isKnown();
    }

    private Placement tube(Part part, Lamp lamp) {
        Placement middle = of(part, Placement.Form.TUBE, lamp.place());
        double half = lamp.arcLength().value() / 2;
        boolean isAcross = lamp.runs() == TubeRuns.ACROSS;
        return new Placement(part, Placement.Form.TUBE,
                isAcross ? middle.along() : inside(reach(lamp.place().along(), half), setup.enclosure().length()),
                isAcross ? inside(reach(lamp.place().across(), half), setup.enclosure().depth()) : middle.across(),
                middle.above(), lamp.runs() == TubeRuns.UNKNOWN, false, false, middle.third());
    }

    private static Optional<Stretch> reach(Measure middle, double half) {
        return middle.isKnown() ? Placement.between(middle.value() - half, middle.value() + half) : Optional.empty();
    }

    private Placement of(Part part, Furnishing piece) {
        Optional<Stretch> along = setup.enclosure().length().isKnown() ? lengthwise.stretch(piece) : Optional.empty();
        Optional<Stretch> told = between(piece.bottom(), piece.top());
        Optional<Stretch> above = told.or(() -> concluded(piece)).or(() -> point(piece.place().above()));
        boolean isOpen = told.isEmpty() && !piece.restHeight().isKnown() && base(piece).isPresent();
        OptionalInt third = lengthwise.third(piece.place());
        return new Placement(part, piece.cover() == Stated.YES ? Placement.Form.COVER : Placement.Form.PIECE,
                inside(along.or(() -> point(piece.place().along())), setup.enclosure().length()),
                inside(between(piece.nearEdge(), piece.farEdge()).or(() -> point(piece.place().across())), setup.enclosure().depth()),
                inside(above, setup.enclosure().height()), along.isPresent() && lengthwise.isPlacedInWords(piece), told.isEmpty(), isOpen, third);
    }

    private static Optional<Stretch> between(Measure one, Measure other) {
        return one.isKnown() && other.isKnown() ? Placement.between(one.value(), other.value()) : Optional.empty();
    }

    /** From what carries it up to where the animal lies on it; either alone where the other is not told. */
    private Optional<Stretch> concluded(Furnishing piece) {
        Optional<Double> base = base(piece);
        if (!piece.restHeight().isKnown()) {
            return base.flatMap(Placement::at);
        }
        double rest = piece.restHeight().value();
        return Placement.between(Math.min(rest, base.orElse(rest)), rest);
    }

    private Optional<Double> base(Furnishing piece) {
        if (piece.bottom().isKnown()) {
            return Optional.of(piece.bottom().value());
        }
        if (piece.standsOn() == Support.SUBSTRATE) {
            return setup.substrate().map(Substrate::depth).filter(Measure::isKnown).map(Measure::value);
        }
        return piece.standsOn() == Support.FLOOR ? Optional.of(0.0) : Optional.empty();
    }
}
