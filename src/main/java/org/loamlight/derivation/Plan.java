package org.loamlight.derivation;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.loamlight.physics.Conformance;
import org.loamlight.physics.FloorPlan;
import org.loamlight.physics.Rectangle;
import org.loamlight.physics.Stretch;
import org.loamlight.quantity.Amount;
import org.loamlight.quantity.Method;
import org.loamlight.quantity.Origin;
import org.loamlight.quantity.Place;
import org.loamlight.quantity.Quantity;
import org.loamlight.quantity.Step;
import org.loamlight.quantity.Topic;
import org.loamlight.quantity.Unit;
import org.loamlight.setup.Enclosure;
import org.loamlight.setup.Furnishing;
import org.loamlight.setup.Measure;
import org.loamlight.setup.Setup;
import org.loamlight.setup.Stated;
import org.loamlight.setup.Subject;

/**
 * The floor seen from above: the share that is covered, and the way to cover from the place that is farthest from it. Both need
 * all four edges of every piece that gives cover.
 */
final class Plan {
    /** Steps of the grid along the longer side: 2 cm of 120 cm. */
    private static final double STEPS = 60;
    private static final double CENTIMETRES_PER_METRE = 100;

    private final Setup setup;
    private final List<Furnishing> covers;

    Plan(Setup setup) {
        this.setup = setup;
        this.covers = setup.furnishings().stream().filter(piece -> piece.cover() == Stated.YES).toList();
    }

    List<Quantity> quantities() {
        if (!isTold()) {
            return List.of();
        }
        FloorPlan plan = plan();
        return Stream.concat(Stream.of(share(plan)), refuge(plan).stream()).toList();
    }

    private boolean isTold() {
        Enclosure enclosure = setup.enclosure();
        return setup.told().has("furnishings", Subject.ENCLOSURE) && enclosure.length().isKnown() && enclosure.depth().isKnown()
                && setup.furnishings().stream().noneMatch(piece -> piece.cover() == Stated.UNKNOWN)
                && covers.stream().flatMap(Plan::edges).allMatch(Measure::isKnown);
    }

    private static Stream<Measure> edges(Furnishing piece) {
        return Stream.of(piece.begins(), piece.ends(), piece.nearEdge(), piece.farEdge());
    }

    private FloorPlan plan() {
        return new FloorPlan(metres(setup.enclosure().length()), metres(setup.enclosure().depth()),
                covers.stream().map(piece -> new Rectangle(along(piece), across(piece))).toList());
    }

    private static Stretch along(Furnishing piece) {
        return between(metres(piece.begins()), metres(piece.ends()));
    }

    private static Stretch across(Furnishing piece) {
        return between(metres(piece.nearEdge()), metres(piece.farEdge()));
    }

    private static Stretch between(double one, double other) {
        return new Stretch(Math.min(one, other), Math.max(one, other));
    }

    private static double metres(Measure measure) {
        return measure.value() / CENTIMETRES_PER_METRE;
    }

    private Quantity share(FloorPlan plan) {
        double floor = metres(setup.enclosure().length()) * metres(setup.enclosure().depth());
        return quantity(Topic.COVER_SHARE, Moisture.percent(plan.share()), Moisture.percent(Math.min(1, areaUncertainty() / floor)),
                Step.of("merged", String.valueOf(covers.size())));
    }

    /** Of the sum of all pieces (m2), each edge on its own; where pieces overlap the union is known better than that. */
    private double areaUncertainty() {
        return Conformance.combine(covers.stream().mapToDouble(piece -> Conformance.combine(
                across(piece).width() * uncertainty(piece.begins(), piece.ends()),
                along(piece).width() * uncertainty(piece.nearEdge(), piece.farEdge()))).toArray());
    }

    private static double uncertainty(Measure one, Measure other) {
        return Conformance.combine(one.standardUncertainty(), other.standardUncertainty()) / CENTIMETRES_PER_METRE;
    }

    /** In the middle of what the grid leaves open. An edge moves the way to it by as much, so the least certain one counts. */
    private Optional<Quantity> refuge(FloorPlan plan) {
        double step = Math.max(metres(setup.enclosure().length()), metres(setup.enclosure().depth())) / STEPS;
        double edge = covers.stream().flatMap(Plan::edges).mapToDouble(Measure::standardUncertainty).max().orElse(0);
        return plan.refuge(step).map(way -> quantity(Topic.REFUGE_DISTANCE, (way.metres() + way.errorMetres() / 2) * CENTIMETRES_PER_METRE,
                Conformance.combine(edge, Conformance.fromHalfWidth(way.errorMetres() / 2 * CENTIMETRES_PER_METRE)),
                Step.of("searched-every", new Amount(step * CENTIMETRES_PER_METRE, Unit.CENTIMETRE))));
    }

    private static Quantity quantity(Topic topic, double value, double uncertainty, Step step) {
        return new Quantity(topic, Place.ANYWHERE, value, uncertainty, new Origin(Method.COMPUTED, Subject.ENCLOSURE.key(), ""),
                List.of(step));
    }
}
