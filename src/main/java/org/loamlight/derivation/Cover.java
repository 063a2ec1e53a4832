package org.loamlight.derivation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.loamlight.physics.Conformance;
import org.loamlight.physics.Stretch;
import org.loamlight.physics.Stretches;
import org.loamlight.quantity.Method;
import org.loamlight.quantity.Origin;
import org.loamlight.quantity.Place;
import org.loamlight.quantity.Quantity;
import org.loamlight.quantity.Step;
import org.loamlight.quantity.Topic;
import org.loamlight.setup.Furnishing;
import org.loamlight.setup.Heater;
import org.loamlight.setup.Measure;
import org.loamlight.setup.Setup;
import org.loamlight.setup.Stated;
import org.loamlight.setup.Subject;

/** Cover, hides and heat along the axis: counts for each third, and the longest stretch without cover. */
final class Cover {
    private static final int THIRDS = 3;

    private final Setup setup;
    private final Layout layout;

    Cover(Setup setup, Layout layout) {
        this.setup = setup;
        this.layout = layout;
    }

    List<Quantity> quantities() {
        List<Quantity> quantities = new ArrayList<>();
        if (setup.told().has("furnishings", Subject.ENCLOSURE)) {
            quantities.addAll(counts(Topic.COVER_PIECES, placed(Furnishing::cover)));
            quantities.addAll(counts(Topic.HIDES, placed(Furnishing::hide)));
            longestOpen().ifPresent(quantities::add);
        }
        if (setup.told().has("heaters", Subject.ENCLOSURE)) {
            quantities.addAll(counts(Topic.HEAT_SOURCES, heaters()));
        }
        return quantities;
    }

    /** @param thirds none when it is not known where the part is, or whether it counts at all */
    private record Placed(String name, List<Integer> thirds) {
    }

    private List<Placed> placed(Function<Furnishing, Stated> counts) {
        List<Placed> placed = new ArrayList<>();
        for (Furnishing piece : setup.furnishings()) {
            Stated counted = counts.apply(piece);
            if (counted != Stated.NO) {
                placed.add(new Placed(piece.name(), counted == Stated.YES ? layout.thirds(piece) : List.of()));
            }
        }
        return placed;
    }

    private List<Placed> heaters() {
        return setup.heaters().stream().map(this::placed).toList();
    }

    private Placed placed(Heater heater) {
        return new Placed(heater.name(), layout.thirds(heater.place()));
    }

    /** A third without a part counts zero only when every part has its place. */
    private List<Quantity> counts(Topic topic, List<Placed> parts) {
        boolean allPlaced = parts.stream().noneMatch(part -> part.thirds.isEmpty());
        List<Quantity> counts = new ArrayList<>();
        for (int third = 0; third < THIRDS; third++) {
            List<String> here = namesIn(third, parts);
            if (allPlaced || !here.isEmpty()) {
                counts.add(count(topic, third, here));
            }
        }
        return counts;
    }

    private static List<String> namesIn(int third, List<Placed> parts) {
        List<String> names = new ArrayList<>();
        for (Placed part : parts) {
            if (part.thirds.contains(third)) {
                names.add(part.name);
            }
        }
        return names;
    }

    private Quantity count(Topic topic, int third, List<String> names) {
        List<Step> trail = names.isEmpty() ? List.of() : List.of(Step.of("counted", String.join(", ", names)));
        return new Quantity(topic, Place.of(layout.zoneOf(third)), names.size(), 0, new Origin(Method.SEEN, Subject.ENCLOSURE.key(), ""), trail);
    }

    /** Where there is cover along the axis and where there is none (cm); empty when a size or the place of a piece is not told. */
    Optional<Stretches> merged() {
        return merged(mayCover());
    }

    private Optional<Stretches> merged(List<Furnishing> pieces) {
        List<Stretch> stretches = new ArrayList<>();
        for (Furnishing piece : pieces) {
            if (piece.cover() == Stated.YES) {
                layout.stretch(piece).ifPresent(stretches::add);
            }
        }
        return setup.told().has("furnishings", Subject.ENCLOSURE) && layout.length().isKnown() && stretches.size() == pieces.size()
                ? Optional.of(Stretches.merged(stretches, layout.length().value())) : Optional.empty();
    }

    private List<Furnishing> mayCover() {
        return setup.furnishings().stream().filter(piece -> piece.cover() != Stated.NO).toList();
    }

    private Optional<Quantity> longestOpen() {
        List<Furnishing> pieces = mayCover();
        return merged(pieces).map(merged -> new Quantity(Topic.LONGEST_OPEN_STRETCH, Place.ANYWHERE, merged.longestOpen(), edgeUncertainty(pieces),
                new Origin(Method.COMPUTED, Subject.ENCLOSURE.key(), ""), List.of(Step.of("merged", String.valueOf(pieces.size())))));
    }

    /** An open stretch has two edges, each as uncertain as the least certain edge of all pieces; the wall where no piece stands. */
    private double edgeUncertainty(List<Furnishing> pieces) {
        double edge = pieces.stream().mapToDouble(layout::edgeUncertainty).max().orElse(layout.length().standardUncertainty());
        return Conformance.combine(edge, edge);
    }
}
