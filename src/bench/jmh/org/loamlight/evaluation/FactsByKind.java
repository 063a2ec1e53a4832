package org.loamlight.evaluation;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.loamlight.criterion.ResolvedLimit;
import org.loamlight.criterion.Species;
import org.loamlight.finding.Applies;
import org.loamlight.quantity.Quantity;
import org.loamlight.quantity.Topic;
import org.loamlight.setup.Animal;
import org.loamlight.setup.Furnishing;
import org.loamlight.setup.Heater;
import org.loamlight.setup.Monitoring;
import org.loamlight.setup.Reading;
import org.loamlight.setup.Substrate;

/** The facts rules see of one setup, sorted as a program would that looks them up itself. */
final class FactsByKind {
    final Map<String, List<Applies>> applies = new HashMap<>();
    final Map<String, List<ResolvedLimit>> limits = new HashMap<>();
    final Map<Topic, List<Quantity>> quantities = new EnumMap<>(Topic.class);
    final Map<String, List<Quantity>> quantitiesBySource = new HashMap<>();
    final Map<String, Species> species = new HashMap<>();
    final List<Animal> animals = new ArrayList<>();
    final List<Furnishing> furnishings = new ArrayList<>();
    final List<Heater> heaters = new ArrayList<>();
    final List<Reading> readings = new ArrayList<>();
    final List<Monitoring> monitoring = new ArrayList<>();
    final List<Substrate> substrates = new ArrayList<>();

    FactsByKind(List<Object> facts) {
        facts.forEach(this::add);
    }

    private void add(Object fact) {
        if (fact instanceof ResolvedLimit one) {
            limits.computeIfAbsent(one.criterion(), key -> new ArrayList<>()).add(one);
        } else if (fact instanceof Applies one) {
            applies.computeIfAbsent(one.criterion(), key -> new ArrayList<>()).add(one);
        } else if (fact instanceof Quantity one) {
            quantities.computeIfAbsent(one.topic(), key -> new ArrayList<>()).add(one);
            quantitiesBySource.computeIfAbsent(one.source(), key -> new ArrayList<>()).add(one);
        } else {
            addDescribed(fact);
        }
    }

    private void addDescribed(Object fact) {
        if (fact instanceof Furnishing one) {
            furnishings.add(one);
        } else if (fact instanceof Heater one) {
            heaters.add(one);
        } else if (fact instanceof Reading one) {
            readings.add(one);
        } else if (fact instanceof Animal one) {
            animals.add(one);
        } else if (fact instanceof Species one) {
            species.put(one.id(), one);
        } else if (fact instanceof Substrate one) {
            substrates.add(one);
        } else if (fact instanceof Monitoring one) {
            monitoring.add(one);
        }
    }

    List<Applies> applies(String criterion) {
        return applies.getOrDefault(criterion, List.of());
    }

    List<ResolvedLimit> limits(String criterion) {
        return limits.getOrDefault(criterion, List.of());
    }

    List<Quantity> quantities(Topic topic) {
        return quantities.getOrDefault(topic, List.of());
    }

    List<Quantity> from(Reading reading) {
        return quantitiesBySource.getOrDefault(reading.subject().key(), List.of());
    }
}
