package org.loamlight.derivation;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.loamlight.quantity.Method;
import org.loamlight.quantity.Origin;
import org.loamlight.quantity.Place;
import org.loamlight.quantity.Quantity;
import org.loamlight.quantity.Step;
import org.loamlight.quantity.Topic;
import org.loamlight.setup.Heater;
import org.loamlight.setup.Setup;
import org.loamlight.setup.Stated;

/** Surfaces of heaters and their distance to the animal. */
final class Heaters {
    private final Setup setup;
    private final RestingPlaces rest;

    Heaters(Setup setup) {
        this.setup = setup;
        this.rest = new RestingPlaces(setup);
    }

    List<Quantity> quantities() {
        return setup.heaters().stream().flatMap(heater -> Stream.concat(surface(heater).stream(), distance(heater).stream())).toList();
    }

    private Optional<Quantity> surface(Heater heater) {
        return heater.surface().isKnown() ? Optional.of(new HeaterSurface(heater, setup.room().whenRead()).quantity()) : Optional.empty();
    }

    /** None for a heater the animal lies on or over: it is meant to be touched. */
    private Optional<Quantity> distance(Heater heater) {
        return heater.contact() == Stated.YES ? Optional.empty()
                : rest.closestTo(heater.place(), heater.nearestRest()).map(distance -> distance(heater, distance));
    }

    private static Quantity distance(Heater heater, RestingPlaces.Distance distance) {
        boolean measured = heater.nearestRest().isKnown();
        String key = heater.subject().key();
        Step step = measured ? distance.step() : Step.of("heater-distance-computed", distance.step().arguments().toArray());
        return new Quantity(Topic.HEATER_DISTANCE, Place.at(key), distance.centimetres(), distance.uncertainty(),
                new Origin(measured ? Method.MEASURED : Method.COMPUTED, key, ""), List.of(step));
    }
}
