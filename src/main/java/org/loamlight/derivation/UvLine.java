package org.loamlight.derivation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.loamlight.physics.Box;
import org.loamlight.physics.Conformance;
import org.loamlight.physics.LightField;
import org.loamlight.physics.LitLine;
import org.loamlight.physics.Point;
import org.loamlight.physics.UvField;
import org.loamlight.physics.UvLamp;
import org.loamlight.physics.UvProfile;
import org.loamlight.quantity.Amount;
import org.loamlight.quantity.Origin;
import org.loamlight.quantity.Place;
import org.loamlight.quantity.Quantity;
import org.loamlight.quantity.Step;
import org.loamlight.quantity.Topic;
import org.loamlight.quantity.Unit;
import org.loamlight.setup.Measure;
import org.loamlight.setup.Setup;
import org.loamlight.setup.Subject;

/** Ultraviolet along the axis straight below the lamps: along the length at the height of the substrate, or up the height. */
final class UvLine {
    /**
     * Index up to which a place counts as shaded: the lower end of zone 1, the shade, in later lists of the zones of Ferguson et al. 2010
     * (secondary; the original begins at 0). That less is no more than a trace is a judgement, and fits common practice: with it a
     * small tube over one third lights between a third and a half of the length. It was chosen with the two good examples in sight: of
     * 0.35, 0.4, 0.5 and 0.6 only this one calls both rightly lit, so they do not confirm it.
     */
    static final double TRACE = 0.4;

    private final Setup setup;
    private final Layout layout;
    private final UvLamps lamps;
    private final SolidPieces solid;

    UvLine(Setup setup, Layout layout, UvLamps lamps, SolidPieces solid) {
        this.setup = setup;
        this.layout = layout;
        this.lamps = lamps;
        this.solid = solid;
    }

    /** The light as it is, and as it is if it is as weak or as strong as its uncertainty allows. */
    record Lines(LitLine likely, LitLine weak, LitLine strong) {
    }

    /** Empty while the length, the height of the substrate, or the strength or place of a lamp is not known. */
    Optional<Lines> lines() {
        Optional<Point> from = from();
        if (!layout.length().isKnown() || from.isEmpty() || !lamps.areAllHung()) {
            return Optional.empty();
        }
        Point to = layout.axis() == Axis.HEIGHT ? from.get().atHeight(length()) : new Point(length(), from.get().y(), from.get().z());
        UvProfile profile = field(from.get().y()).profile(from.get(), to);
        double spread = 1 + relative(from.get().z());
        return Optional.of(new Lines(profile.above(TRACE), profile.above(TRACE * spread), profile.above(TRACE / spread)));
    }

    private double length() {
        return Metres.of(layout.length()).value();
    }

    /** Where the line begins; empty while the height of the substrate is not told, which a line up the height does not need. */
    private Optional<Point> from() {
        double across = across();
        if (layout.axis() == Axis.HEIGHT) {
            double along = mean(lamps.hung().stream().map(HungLamp::along).toList()).orElse(0);
            return Optional.of(new Point(along, across, 0));
        }
        return setup.substrate().filter(substrate -> substrate.depth().isKnown())
                .map(substrate -> new Point(0, across, Metres.of(substrate.depth()).value()));
    }

    /** In which depth the line runs, from the front (m): that of the lamps, else the middle. */
    double across() {
        return mean(lamps.hung().stream().map(HungLamp::across).flatMap(Optional::stream).toList()).orElse(middleOfDepth());
    }

    private static OptionalDouble mean(List<Metres> positions) {
        return positions.stream().mapToDouble(Metres::value).average();
    }

    private double middleOfDepth() {
        Measure depth = setup.enclosure().depth();
        return depth.isKnown() ? Metres.of(depth).value() / 2 : 0;
    }

    /** The light of the lamps that hang in a known place, among the solid pieces. @param across of lamps of which it is not told (m) */
    UvField field(double across) {
        boolean isDepthKnown = setup.enclosure().depth().isKnown()
                || lamps.hung().stream().anyMatch(lamp -> lamp.across().isPresent());
        List<Box> boxes = isDepthKnown ? solid.all() : List.of();
        return new UvField(lamps.hung().stream().map(lamp -> burning(lamp, across)).toList(), boxes);
    }

    private static UvLamp burning(HungLamp lamp, double across) {
        Point middle = new Point(lamp.along().value(), lamp.across().map(Metres::value).orElse(across), lamp.above().value());
        return new UvLamp(lamp.source(middle), lamp.output().strength(), 1);
    }

    /** Of the least certain lamp, its height counting with the steeper of both laws (JCGM 100:2008, 5.1.2). */
    private double relative(double floor) {
        return lamps.hung().stream().mapToDouble(lamp -> relative(lamp, lamp.above().value() - floor)).max().orElse(0);
    }

    private static double relative(HungLamp lamp, double height) {
        double byHeight = height <= 0 ? 0 : LightField.POINT_EXPONENT * lamp.above().uncertainty() / height;
        return Conformance.combine(lamp.output().uncertainty() / lamp.output().strength(), byHeight);
    }

    /** The lit share of the line; where a lamp hangs along it counts as much of the length as it is uncertain. */
    Quantity litShare(Lines lit) {
        return new Quantity(Topic.UV_LIT_SHARE, Place.ANYWHERE, percent(lit.likely.share()), percent(uncertainty(lit)), origin(), trail());
    }

    private double uncertainty(Lines lit) {
        double along = layout.axis() == Axis.HEIGHT ? 0 : lamps.hung().stream().mapToDouble(lamp -> lamp.along().uncertainty()).max().orElse(0);
        return Conformance.combine(Math.abs(lit.strong.share() - lit.weak.share()) / 2, along / length());
    }

    private static double percent(double share) {
        return Unit.FRACTION.convert(share, Unit.PERCENT);
    }

    /** What the light along the line rests on. */
    Origin origin() {
        return new Origin(lamps.method(), Subject.ENCLOSURE.key(), lamps.on());
    }

    /** How the light along the line came about. */
    List<Step> trail() {
        List<Step> trail = new ArrayList<>(lamps.tell());
        trail.add(Step.of("lit-above", new Amount(TRACE, Unit.UV_INDEX)));
        return trail;
    }
}
