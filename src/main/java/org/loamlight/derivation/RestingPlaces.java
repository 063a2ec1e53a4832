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
import org.loamlight.setup.LampKind;
import org.loamlight.setup.Measure;
import org.loamlight.setup.Setup;
import org.loamlight.setup.Spot;
import org.loamlight.setup.TubeRuns;

/** How far the closest place where the animal can lie is from a lamp or heater: as measured, else from the heights told. */
final class RestingPlaces {
    /**
     * @param centimetres from the lamp or heater, straight
     * @param uncertainty standard uncertainty (cm)
     * @param below       how far the place lies below its height (cm), negative above it
     * @param along       how far the place lies to the right of its middle (cm), negative to the left
     */
    record Distance(double centimetres, double uncertainty, double below, double along, Step step) {
        /** Whether it was measured, so that nothing but the distance is known of the place. */
        boolean isMeasured() {
            return step.key().equals("distance-measured");
        }

        /** The same, told as the place that gets the most light though another is closer. */
        Distance asBrightest() {
            return new Distance(centimetres, uncertainty, below, along, Step.of("distance-brightest", step.arguments().toArray()));
        }
    }

    private final Setup setup;

    RestingPlaces(Setup setup) {
        this.setup = setup;
    }

    /** Empty when it was not measured and a height it depends on is not told. */
    Optional<Distance> closestTo(Lamp lamp) {
        return closest(near(lamp));
    }

    /**
     * As {@link #closestTo(Lamp)}, for anything that hangs or stands somewhere.
     *
     * @param nearestRest as measured (cm); may be unknown
     */
    Optional<Distance> closestTo(Spot place, Measure nearestRest) {
        return closest(near(place, nearestRest, 0));
    }

    /** Of the places near something the closest; empty when there are none. */
    static Optional<Distance> closest(List<Distance> distances) {
        return distances.stream().min(Comparator.comparingDouble(Distance::centimetres));
    }

    /** Every resting place with its distance from a lamp; the measured one alone where it was measured; empty when they are not known. */
    List<Distance> near(Lamp lamp) {
        boolean reachesAlong = lamp.kind() == LampKind.UV_TUBE && lamp.arcLength().isKnown() && lamp.runs() != TubeRuns.ACROSS;
        return near(lamp.place(), lamp.nearestRest(), reachesAlong ? lamp.arcLength().value() / 2 : 0);
    }

    /** @param reach how far it reaches from its middle to the left and right (cm) */
    private List<Distance> near(Spot place, Measure nearestRest, double reach) {
        if (nearestRest.isKnown()) {
            return List.of(new Distance(nearestRest.value(), nearestRest.standardUncertainty(), nearestRest.value(), 0,
                    Step.of("distance-measured", nearestRest.amount())));
        }
        return place.above().isKnown() && heightsAreTold() ? computed(place, reach) : List.of();
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

    private List<Distance> computed(Spot place, double reach) {
        List<Distance> distances = new ArrayList<>();
        setup.substrate().ifPresent(substrate -> distances.add(distance(place, 0, reach, substrate.depth(), "substrate")));
        setup.furnishings().stream().filter(piece -> piece.restHeight().isKnown())
                .forEach(piece -> distances.add(distance(place, along(place, piece), reach, piece.restHeight(), piece.name())));
        return distances.stream().filter(one -> one.centimetres > 0).toList();
    }

    private static Distance distance(Spot place, double along, double reach, Measure height, String name) {
        double below = place.above().value() - height.value();
        double aside = Math.max(0, Math.abs(along) - reach);
        return new Distance(Distances.between(0, 0, 0, aside, 0, below),
                Conformance.combine(place.above().standardUncertainty(), height.standardUncertainty()), below, along,
                Step.of("distance-computed", name, height.amount(), place.above().amount()));
    }

    /**
     * Along the enclosure from the middle of the lamp or heater to the nearest part of the piece, to the right; 0 beneath it and where
     * one of the two has no place: closer, so on the safe side.
     */
    private static double along(Spot place, Furnishing piece) {
        if (!place.along().isKnown() || !piece.begins().isKnown() || !piece.ends().isKnown()) {
            return 0;
        }
        double middle = place.along().value();
        double left = Math.min(piece.begins().value(), piece.ends().value());
        double right = Math.max(piece.begins().value(), piece.ends().value());
        return Math.max(left, Math.min(middle, right)) - middle;
    }
}
