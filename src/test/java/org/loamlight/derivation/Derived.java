package org.loamlight.derivation;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.loamlight.quantity.Place;
import org.loamlight.quantity.Quantity;
import org.loamlight.quantity.Step;
import org.loamlight.quantity.Topic;
import org.loamlight.setup.ProblemsFound;
import org.loamlight.setup.SetupReader;

/** The quantities of a setup written with single quotes, without its format. */
record Derived(List<Quantity> quantities) {

    static Derived of(String members, LocalDate on) throws ProblemsFound {
        byte[] json = ("{'format': 1, " + members + "}").replace('\'', '"').getBytes(StandardCharsets.UTF_8);
        return new Derived(Derivation.quantities(SetupReader.read("test.json", json, List.of("snake")), Axis.LENGTH, on, Wanted.NOTHING));
    }

    static Derived of(String members) throws ProblemsFound {
        return of(members, LocalDate.of(2026, 11, 2));
    }

    Optional<Quantity> find(Topic topic, Place place) {
        return quantities.stream().filter(one -> one.topic() == topic && one.place().equals(place)).findFirst();
    }

    Optional<Quantity> find(Topic topic) {
        return find(topic, Place.ANYWHERE);
    }

    Quantity get(Topic topic, Place place) {
        return find(topic, place).orElseThrow(() -> new AssertionError("no " + topic + " at " + place + " in " + quantities));
    }

    Quantity get(Topic topic) {
        return get(topic, Place.ANYWHERE);
    }

    static List<String> steps(Quantity quantity) {
        return quantity.trail().stream().map(Step::key).toList();
    }
}
