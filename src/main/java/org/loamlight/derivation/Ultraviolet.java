package org.loamlight.derivation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.loamlight.physics.Stretch;
import org.loamlight.quantity.Origin;
import org.loamlight.quantity.Place;
import org.loamlight.quantity.Quantity;
import org.loamlight.quantity.Step;
import org.loamlight.quantity.Topic;
import org.loamlight.setup.Furnishing;
import org.loamlight.setup.Setup;

/** The field of ultraviolet in the enclosure: at the resting places, on the furnishings and along the axis. */
final class Ultraviolet {
    private final Setup setup;
    private final Layout lengthwise;
    private final UvLamps lamps;
    private final SolidPieces solid;
    private final UvAtRest rest;
    private final UvLine line;
    private final UvShade shade;

    Ultraviolet(Setup setup, Layout layout, Wanted wanted) {
        this.setup = setup;
        this.lengthwise = Layout.of(setup, Axis.LENGTH);
        this.lamps = new UvLamps(setup);
        this.solid = new SolidPieces(setup);
        this.rest = new UvAtRest(setup, lamps, solid, wanted);
        this.line = new UvLine(setup, layout, lamps, solid);
        this.shade = new UvShade(setup, layout, line, wanted);
    }

    List<Quantity> quantities() {
        return Stream.concat(rest.quantities().stream(), field().stream()).toList();
    }

    private List<Quantity> field() {
        if (lamps.all().isEmpty() && !lamps.isBesideUnreadHeater()) {
            return List.of();
        }
        Optional<UvLine.Lines> light = line.lines();
        return Stream.of(onFurnishings(), light.map(line::litShare).stream().toList(), shade.quantities(light)).flatMap(List::stream).toList();
    }

    /** None unless all lamps are known: a place must not seem darker than it is. */
    private List<Quantity> onFurnishings() {
        return lamps.areAllHung() ? setup.furnishings().stream().map(this::on).flatMap(Optional::stream).toList() : List.of();
    }

    /** At the part of the piece that gets the most: below a lamp or as near to it as the piece reaches. */
    private Optional<Quantity> on(Furnishing piece) {
        Optional<Stretch> stretch = lengthwise.stretch(piece);
        if (stretch.isEmpty() || !piece.restHeight().isKnown()) {
            return Optional.empty();
        }
        return lamps.hung().stream().map(lamp -> where(piece, stretch.get(), lamp))
                .max(Comparator.comparingDouble(where -> UvIndex.value(where, lamps.hung(), solid.besides(where.point()))))
                .map(where -> quantity(piece, UvIndex.at(where, lamps.hung(), solid.besides(where.point()))));
    }

    private UvIndex.Where where(Furnishing piece, Stretch stretch, HungLamp lamp) {
        double along = Math.max(stretch.from(), Math.min(Metres.inCentimetres(lamp.along().value()), stretch.to()));
        Metres nearest = new Metres(Metres.fromCentimetres(along), Metres.fromCentimetres(lengthwise.edgeUncertainty(piece)));
        return new UvIndex.Where(nearest, across(piece, lamp), Metres.of(piece.restHeight()));
    }

    private static Optional<Metres> across(Furnishing piece, HungLamp lamp) {
        if (piece.nearEdge().isKnown() && piece.farEdge().isKnown()) {
            Metres near = Metres.of(piece.nearEdge());
            double far = Metres.of(piece.farEdge()).value();
            double at = lamp.across().map(Metres::value).orElse((near.value() + far) / 2);
            return Optional.of(new Metres(Math.max(Math.min(near.value(), far), Math.min(at, Math.max(near.value(), far))), near.uncertainty()));
        }
        return piece.place().across().isKnown() ? Optional.of(Metres.of(piece.place().across())) : Optional.empty();
    }

    private Quantity quantity(Furnishing piece, UvIndex index) {
        List<Step> trail = new ArrayList<>(lamps.tell());
        trail.add(Step.of("at-height", piece.restHeight().amount()));
        return new Quantity(Topic.UV_INDEX, Place.at(piece.subject().key()), index.value(), index.uncertainty(),
                new Origin(lamps.method(), piece.subject().key(), lamps.on()), trail);
    }
}
