package org.loamlight.derivation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.loamlight.physics.Conformance;
import org.loamlight.quantity.Method;
import org.loamlight.quantity.Origin;
import org.loamlight.quantity.Place;
import org.loamlight.quantity.Quantity;
import org.loamlight.quantity.Step;
import org.loamlight.quantity.Topic;
import org.loamlight.setup.Animal;
import org.loamlight.setup.Measure;
import org.loamlight.setup.Setup;

/**
 * Meals against body mass, interval and energy, for each animal. The share of the body is computed from meal and mass; the
 * energy from those, the interval and the air by day and by night (see {@link Ration}). Whatever is not told, and prey of
 * unknown energy, leaves out what rests on it.
 */
final class Feeding {
    private static final double PERCENT = 100;

    private final Setup setup;
    private final Optional<Warmth> warmth;

    Feeding(Setup setup, List<Quantity> read) {
        this.setup = setup;
        this.warmth = Warmth.of(setup, read);
    }

    List<Quantity> quantities() {
        List<Quantity> quantities = new ArrayList<>();
        for (Animal animal : setup.animals()) {
            share(animal).ifPresent(quantities::add);
            interval(animal).ifPresent(quantities::add);
            warmth.flatMap(warm -> Ration.of(animal, warm)).ifPresent(ration -> quantities.add(energy(animal, ration)));
        }
        return quantities;
    }

    private static Optional<Quantity> share(Animal animal) {
        Measure meal = animal.diet().meal();
        Measure body = animal.mass();
        if (!meal.isKnown() || !body.isKnown()) {
            return Optional.empty();
        }
        double percent = PERCENT * meal.value() / body.value();
        double uncertainty = percent * Conformance.combine(relative(meal), relative(body));
        return Optional.of(quantity(Topic.MEAL_SHARE, animal, Method.COMPUTED, percent, uncertainty,
                Step.of("meal-of-body", meal.amount(), body.amount())));
    }

    private static double relative(Measure measure) {
        return measure.standardUncertainty() / measure.value();
    }

    private static Optional<Quantity> interval(Animal animal) {
        Measure every = animal.diet().every();
        return every.isKnown() ? Optional.of(quantity(Topic.FEEDING_INTERVAL, animal, Method.STATED, every.value(),
                every.standardUncertainty())) : Optional.empty();
    }

    private static Quantity energy(Animal animal, Ration ration) {
        return quantity(Topic.ENERGY_INTAKE, animal, Method.COMPUTED, PERCENT * ration.intake(), PERCENT * ration.uncertainty(),
                ration.trail().toArray(Step[]::new));
    }

    private static Quantity quantity(Topic topic, Animal animal, Method method, double value, double uncertainty, Step... trail) {
        String key = animal.subject().key();
        return new Quantity(topic, Place.at(key), value, uncertainty, new Origin(method, key, ""), List.of(trail));
    }
}
