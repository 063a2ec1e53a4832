package org.loamlight.derivation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.loamlight.physics.Conformance;
import org.loamlight.physics.Distances;
import org.loamlight.quantity.Step;
import org.loamlight.setup.Furnishing;
import org.loamlight.setup.FurnishingKind;
import org.loamlight.setup.Lamp;
import org.loamlight.setup.Measure;
import org.loamlight.setup.Setup;

/** How far the closest place where the animal can lie is from a lamp: as measured, else from the heights told. */
final class RestingPlaces {
    /** @param uncertainty standard uncertainty; both in centimetres */
    record Distance(double centimetres, double uncertainty, Step step) {
    }

    private final Setup setup;

    RestingPlaces(Setup setup) {
        this.setup = setup;
    }

    /** Empty when it was not measured and a height it depends on is not told. */
    Optional<Distance> closestTo(Lamp lamp) {
        if (lamp.nearestRest().isKnown()) {
            return Optional.of(new Distance(lamp.nearestRest().value(), lamp.nearestRest().standardUncertainty(),
                    Step.of("distance-measured", lamp.nearestRest().amount())));
        }
        return lamp.place().above().isKnown() && heightsAreTold() ? closestComputed(lamp) : Optional.empty();
    }

    /** A branch of unknown height might be closer than everything else. */
    private boolean heightsAreTold() {
        return setup.substrate().filter(substrate -> substrate.depth().isKnown()).isPresent()
                && setup.told().answer("furnishings").isPresent()
                && setup.furnishings().stream().allMatch(piece -> piece.restHeight().isKnown() || !isToLieOn(piece));
    }

    private static boolean isToLieOn(Furnishing piece) {
        return piece.kind() == FurnishingKind.BRANCH || piece.kind() == FurnishingKind.LEDGE;
    }

    private Optional<Distance> closestComputed(Lamp lamp) {
        List<Distance> distances = new ArrayList<>();
        setup.substrate().ifPresent(substrate -> distances.add(distance(lamp, 0, substrate.depth(), "substrate")));
        setup.furnishings().stream().filter(piece -> piece.restHeight().isKnown())
                .forEach(piece -> distances.add(distance(lamp, aside(lamp, piece), piece.restHeight(), piece.name())));
        return distances.stream().filter(one -> one.centimetres > 0).min(Comparator.comparingDouble(Distance::centimetres));
    }

    private static Distance distance(Lamp lamp, double aside, Measure height, String name) {
        double distance = Distances.between(0, 0, lamp.place().above().value(), aside, 0, height.value());
        return new Distance(distance, Conformance.combine(lamp.place().above().standardUncertainty(), height.standardUncertainty()),
                Step.of("distance-computed", name, height.amount(), lamp.place().above().amount()));
    }

    /** Along the enclosure from lamp to piece; 0 beneath it and where one of the two has no place: closer, so on the safe side. */
    private static double aside(Lamp lamp, Furnishing piece) {
        Measure along = lamp.place().along();
        if (!along.isKnown() || !piece.begins().isKnown() || !piece.ends().isKnown()) {
            return 0;
        }
        return Math.max(0, Math.max(piece.begins().value() - along.value(), along.value() - piece.ends().value()));
    }
}
