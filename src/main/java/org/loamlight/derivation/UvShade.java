package org.loamlight.derivation;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.loamlight.physics.Conformance;
import org.loamlight.physics.LitLine;
import org.loamlight.physics.Stretch;
import org.loamlight.physics.Stretches;
import org.loamlight.quantity.Method;
import org.loamlight.quantity.Origin;
import org.loamlight.quantity.Place;
import org.loamlight.quantity.Quantity;
import org.loamlight.quantity.Step;
import org.loamlight.quantity.Topic;
import org.loamlight.setup.Furnishing;
import org.loamlight.setup.FurnishingKind;
import org.loamlight.setup.Setup;
import org.loamlight.setup.Stated;
import org.loamlight.setup.Subject;

/** How far it is along the axis from ultraviolet to shade, which is where little light falls and under every opaque cover. */
final class UvShade {
    /** Things under which the animal is out of sight and still in some of the light. */
    private static final Set<FurnishingKind> LETS_LIGHT_THROUGH = EnumSet.of(FurnishingKind.PLANT);

    private final Setup setup;
    private final Layout layout;
    private final UvLine line;
    private final Wanted wanted;
    /** What gives opaque cover, or may. */
    private final List<Furnishing> pieces;

    UvShade(Setup setup, Layout layout, UvLine line, Wanted wanted) {
        this.setup = setup;
        this.layout = layout;
        this.line = line;
        this.wanted = wanted;
        this.pieces = setup.furnishings().stream().filter(piece -> piece.cover() != Stated.NO && !LETS_LIGHT_THROUGH.contains(piece.kind())).toList();
    }

    /**
     * The way to shade, and how many stretches of shade there are. Where the light or the place of a cover is not known, all is taken as
     * lit and the cover as missing: that is told only if shade is near enough all the same.
     *
     * @param light along the axis; empty when it is not known
     */
    List<Quantity> quantities(Optional<UvLine.Lines> light) {
        if (!layout.length().isKnown() || !setup.told().has("furnishings", Subject.ENCLOSURE)) {
            return List.of();
        }
        List<Stretch> covers = covers();
        boolean isAllKnown = light.isPresent() && covers.size() == pieces.size();
        Stretches shade = shade(light.map(UvLine.Lines::likely), covers);
        return isAllKnown || isNearEnough(farthest(shade)) ? quantities(light, covers, shade) : List.of();
    }

    private boolean isNearEnough(OptionalDouble way) {
        OptionalDouble limit = wanted.atMost(Topic.SHADE_DISTANCE);
        return way.isPresent() && limit.isPresent() && Metres.inCentimetres(way.getAsDouble()) <= limit.getAsDouble();
    }

    private List<Quantity> quantities(Optional<UvLine.Lines> light, List<Stretch> covers, Stretches shade) {
        Origin origin = light.map(lit -> line.origin()).orElse(new Origin(Method.COMPUTED, Subject.ENCLOSURE.key(), ""));
        List<Step> trail = new ArrayList<>(light.map(lit -> line.trail()).orElse(List.of(Step.of("all-taken-as-lit"))));
        trail.add(Step.of("merged", String.valueOf(covers.size())));
        List<Quantity> quantities = new ArrayList<>();
        quantities.add(new Quantity(Topic.UV_SHADES, Place.ANYWHERE, shade.covered().size(), 0, origin, trail));
        farthest(shade).ifPresent(way -> quantities.add(new Quantity(Topic.SHADE_DISTANCE, Place.ANYWHERE, Metres.inCentimetres(way),
                Metres.inCentimetres(uncertainty(light, covers)), origin, trail)));
        return quantities;
    }

    /** Stretches of the line under opaque cover, in metres. */
    private List<Stretch> covers() {
        return pieces.stream().filter(piece -> piece.cover() == Stated.YES).map(layout::stretch).flatMap(Optional::stream)
                .map(piece -> new Stretch(Metres.fromCentimetres(piece.from()), Metres.fromCentimetres(piece.to()))).toList();
    }

    private double length() {
        return Metres.of(layout.length()).value();
    }

    private Stretches shade(Optional<LitLine> lit, Collection<Stretch> covers) {
        List<Stretch> shaded = new ArrayList<>(covers);
        lit.ifPresent(known -> shaded.addAll(known.lit().open()));
        return Stretches.merged(shaded, length());
    }

    private OptionalDouble farthest(Stretches shade) {
        return new LitLine(Stretches.merged(shade.open(), length()), length()).farthestFromShadeMetres();
    }

    /** By how weak or strong the light may be, and by where a cover begins and ends. */
    private double uncertainty(Optional<UvLine.Lines> light, List<Stretch> covers) {
        double edge = Metres.fromCentimetres(pieces.stream().mapToDouble(layout::edgeUncertainty).max().orElse(0));
        double weak = farthest(shade(light.map(UvLine.Lines::weak), covers)).orElse(0);
        double strong = farthest(shade(light.map(UvLine.Lines::strong), covers)).orElse(length());
        return Conformance.combine(Math.abs(strong - weak) / 2, edge);
    }
}
