package org.loamlight.derivation;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.loamlight.physics.Box;
import org.loamlight.physics.Conformance;
import org.loamlight.physics.LightField;
import org.loamlight.physics.LitLine;
import org.loamlight.physics.Point;
import org.loamlight.physics.Stretch;
import org.loamlight.physics.Stretches;
import org.loamlight.physics.UvField;
import org.loamlight.physics.UvLamp;
import org.loamlight.quantity.Amount;
import org.loamlight.quantity.Method;
import org.loamlight.quantity.Origin;
import org.loamlight.quantity.Place;
import org.loamlight.quantity.Quantity;
import org.loamlight.quantity.Step;
import org.loamlight.quantity.Topic;
import org.loamlight.quantity.Unit;
import org.loamlight.setup.Furnishing;
import org.loamlight.setup.FurnishingKind;
import org.loamlight.setup.Measure;
import org.loamlight.setup.Setup;
import org.loamlight.setup.Stated;
import org.loamlight.setup.Subject;

/**
 * Light and shade of ultraviolet along the axis straight below the lamps: along the length at the height of the substrate, or up the
 * height.
 */
final class UvLine {
    /**
     * Index up to which a place counts as shaded: the lower end of zone 1, the shade, in later lists of the zones of Ferguson et al. 2010
     * (secondary; the original begins at 0). That less is no more than a trace is a judgement, and fits common practice: with it a
     * small tube over one third lights between a third and a half of the length.
     */
    static final double TRACE = 0.4;

    /** Things under which the animal is out of sight and still in some of the light. */
    private static final Set<FurnishingKind> LETS_LIGHT_THROUGH = EnumSet.of(FurnishingKind.PLANT);

    private final Setup setup;
    private final Layout layout;
    private final UvLamps lamps;
    private final Wanted wanted;

    UvLine(Setup setup, Layout layout, UvLamps lamps, Wanted wanted) {
        this.setup = setup;
        this.layout = layout;
        this.lamps = lamps;
        this.wanted = wanted;
    }

    List<Quantity> quantities() {
        if (!layout.length().isKnown()) {
            return List.of();
        }
        List<Quantity> quantities = new ArrayList<>();
        Optional<Lines> lines = lines();
        lines.ifPresent(lit -> quantities.add(litShare(lit)));
        quantities.addAll(shade(lines));
        return quantities;
    }

    /** The light as it is, and as it is if it is as weak or as strong as its uncertainty allows. */
    private record Lines(LitLine likely, LitLine weak, LitLine strong) {
    }

    private Optional<Lines> lines() {
        Optional<Point> from = from();
        if (from.isEmpty() || !lamps.areAllHung()) {
            return Optional.empty();
        }
        Point to = layout.axis() == Axis.HEIGHT ? from.get().atHeight(length()) : new Point(length(), from.get().y(), from.get().z());
        UvField field = field(from.get().y());
        double spread = 1 + relative();
        return Optional.of(new Lines(field.litLine(from.get(), to, TRACE), field.litLine(from.get(), to, TRACE * spread),
                field.litLine(from.get(), to, TRACE / spread)));
    }

    private double length() {
        return Metres.of(layout.length()).value();
    }

    /** Where the line begins; empty while the height of the substrate is not told, which a line up the height does not need. */
    private Optional<Point> from() {
        double across = mean(lamps.hung().stream().map(HungLamp::across).flatMap(Optional::stream).toList()).orElse(middleOfDepth());
        if (layout.axis() == Axis.HEIGHT) {
            double along = mean(lamps.hung().stream().map(HungLamp::along).toList()).orElse(0);
            return Optional.of(new Point(along, across, 0));
        }
        return setup.substrate().filter(substrate -> substrate.depth().isKnown())
                .map(substrate -> new Point(0, across, Metres.of(substrate.depth()).value()));
    }

    private static OptionalDouble mean(List<Metres> positions) {
        return positions.stream().mapToDouble(Metres::value).average();
    }

    private double middleOfDepth() {
        Measure depth = setup.enclosure().depth();
        return depth.isKnown() ? Metres.of(depth).value() / 2 : 0;
    }

    private UvField field(double across) {
        boolean isDepthKnown = setup.enclosure().depth().isKnown() || lamps.hung().stream().anyMatch(lamp -> lamp.across().isPresent());
        List<Box> boxes = isDepthKnown ? new SolidPieces(setup).all() : List.of();
        return new UvField(lamps.hung().stream().map(lamp -> burning(lamp, across)).toList(), boxes);
    }

    private static UvLamp burning(HungLamp lamp, double across) {
        Point middle = new Point(lamp.along().value(), lamp.across().map(Metres::value).orElse(across), lamp.above().value());
        return new UvLamp(lamp.source(middle), lamp.output().strength(), 1);
    }

    /** Of the least certain lamp, its height counting with the steeper of both laws (JCGM 100:2008, 5.1.2). */
    private double relative() {
        return lamps.hung().stream().mapToDouble(UvLine::relative).max().orElse(0);
    }

    private static double relative(HungLamp lamp) {
        double strength = lamp.output().strength() == 0 ? 0 : lamp.output().uncertainty() / lamp.output().strength();
        double height = lamp.above().value() == 0 ? 0 : lamp.above().uncertainty() / lamp.above().value();
        return Conformance.combine(strength, LightField.POINT_EXPONENT * height);
    }

    private Quantity litShare(Lines lines) {
        double alongShare = lamps.hung().stream().mapToDouble(lamp -> lamp.along().uncertainty()).max().orElse(0) / length();
        double uncertainty = Conformance.combine((lines.strong.share() - lines.weak.share()) / 2, layout.axis() == Axis.HEIGHT ? 0 : alongShare);
        return quantity(Topic.UV_LIT_SHARE, Unit.FRACTION.convert(lines.likely.share(), Unit.PERCENT),
                Unit.FRACTION.convert(uncertainty, Unit.PERCENT), new Origin(lamps.method(), Subject.ENCLOSURE.key(), lamps.on()), told(lamps.tell()));
    }

    private static List<Step> told(List<Step> before) {
        List<Step> trail = new ArrayList<>(before);
        trail.add(Step.of("lit-above", new Amount(TRACE, Unit.UV_INDEX)));
        return trail;
    }

    private static Quantity quantity(Topic topic, double value, double uncertainty, Origin origin, List<Step> trail) {
        return new Quantity(topic, Place.ANYWHERE, value, Math.abs(uncertainty), origin, trail);
    }

    /**
     * The way to shade, which is where little light falls and under every opaque cover, and how many stretches of shade there are. Where
     * the light or the place of a cover is not known, all is taken as lit and the cover as missing: that is told only if shade is
     * near enough all the same.
     */
    private List<Quantity> shade(Optional<Lines> lines) {
        if (!setup.told().has("furnishings", Subject.ENCLOSURE)) {
            return List.of();
        }
        List<Stretch> covers = covers();
        boolean isAllKnown = lines.isPresent() && covers.size() == piecesOfCover().size();
        Stretches shade = shade(lines.map(Lines::likely), covers);
        OptionalDouble way = farthest(shade);
        boolean isNearEnough = way.isPresent() && Metres.inCentimetres(way.getAsDouble()) <= wanted.atMost(Topic.SHADE_DISTANCE).orElse(Double.NEGATIVE_INFINITY);
        if (!isAllKnown && !isNearEnough) {
            return List.of();
        }
        Origin origin = new Origin(lines.isPresent() ? lamps.method() : Method.COMPUTED, Subject.ENCLOSURE.key(), lines.isPresent() ? lamps.on() : "");
        List<Step> trail = trail(lines.isPresent());
        List<Quantity> quantities = new ArrayList<>();
        quantities.add(quantity(Topic.UV_SHADES, shade.covered().size(), 0, origin, trail));
        way.ifPresent(metres -> quantities.add(quantity(Topic.SHADE_DISTANCE, Metres.inCentimetres(metres),
                Metres.inCentimetres(uncertainty(lines, covers)), origin, trail)));
        return quantities;
    }

    private List<Step> trail(boolean isLightKnown) {
        List<Step> trail = isLightKnown ? told(lamps.tell()) : new ArrayList<>(List.of(Step.of("all-taken-as-lit")));
        trail.add(Step.of("merged", String.valueOf(covers().size())));
        return trail;
    }

    private List<Furnishing> piecesOfCover() {
        return setup.furnishings().stream().filter(piece -> piece.cover() != Stated.NO && !LETS_LIGHT_THROUGH.contains(piece.kind())).toList();
    }

    /** Stretches of the line under opaque cover, in metres. */
    private List<Stretch> covers() {
        return piecesOfCover().stream().filter(piece -> piece.cover() == Stated.YES).map(layout::stretch).flatMap(Optional::stream)
                .map(piece -> new Stretch(Metres.fromCentimetres(piece.from()), Metres.fromCentimetres(piece.to()))).toList();
    }

    private Stretches shade(Optional<LitLine> lit, Collection<Stretch> covers) {
        List<Stretch> shaded = new ArrayList<>(covers);
        lit.ifPresent(line -> shaded.addAll(line.lit().open()));
        return Stretches.merged(shaded, length());
    }

    private OptionalDouble farthest(Stretches shade) {
        return new LitLine(Stretches.merged(shade.open(), length()), length()).farthestFromShadeMetres();
    }

    private double uncertainty(Optional<Lines> lines, List<Stretch> covers) {
        double edge = Metres.fromCentimetres(piecesOfCover().stream().mapToDouble(layout::edgeUncertainty).max().orElse(0));
        double weak = farthest(shade(lines.map(Lines::weak), covers)).orElse(0);
        double strong = farthest(shade(lines.map(Lines::strong), covers)).orElse(length());
        return Conformance.combine((strong - weak) / 2, edge);
    }
}
