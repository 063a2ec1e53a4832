package org.loamlight.derivation;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.loamlight.quantity.Lacking;
import org.loamlight.quantity.Method;
import org.loamlight.quantity.Origin;
import org.loamlight.quantity.Place;
import org.loamlight.quantity.Quantity;
import org.loamlight.quantity.Step;
import org.loamlight.quantity.Topic;
import org.loamlight.setup.Heater;
import org.loamlight.setup.Lamp;
import org.loamlight.setup.Setup;
import org.loamlight.setup.Spot;
import org.loamlight.setup.Stated;
import org.loamlight.setup.Subject;

/** How many heat sources share the thirds of the length that a UV lamp hangs over: whether the animal basks in both at once. */
final class HeatUnderUv {
    private final Setup setup;
    private final Layout lengthwise;

    HeatUnderUv(Setup setup) {
        this.setup = setup;
        this.lengthwise = Layout.of(setup, Axis.LENGTH);
    }

    /** None for a lamp whose place is not known, nor where there is no heat at all. */
    List<Quantity> quantities() {
        return setup.heaters().isEmpty() ? List.of() : setup.lamps().stream().filter(lamp -> lamp.givesUv() != Stated.NO)
                .map(this::count).flatMap(Optional::stream).toList();
    }

    /** No heat source is counted only when every heat source has its place. */
    private Optional<Quantity> count(Lamp lamp) {
        List<Integer> thirds = lengthwise.thirds(lamp);
        List<String> here = setup.heaters().stream().filter(heater -> lengthwise.third(heater.place()).stream().anyMatch(thirds::contains))
                .map(Heater::name).toList();
        boolean isKnown = !thirds.isEmpty() && (!here.isEmpty() || areAllPlaced());
        return isKnown ? Optional.of(quantity(lamp, here)) : Optional.empty();
    }

    /** Of each lamp whose heat cannot be counted: where it hangs, and where each heat source is, as far as either is not told. */
    List<Lacking> lacking() {
        Set<Lacking> lacking = new LinkedHashSet<>();
        if (!setup.heaters().isEmpty()) {
            setup.lamps().stream().filter(lamp -> lamp.givesUv() != Stated.NO && count(lamp).isEmpty()).flatMap(this::lacking).forEach(lacking::add);
        }
        return List.copyOf(lacking);
    }

    private Stream<Lacking> lacking(Lamp lamp) {
        return questions(lamp).map(path -> new Lacking(Topic.HEAT_SOURCES, Place.at(lamp.subject().key()), path));
    }

    private Stream<String> questions(Lamp lamp) {
        Stream<String> own = lengthwise.thirds(lamp).isEmpty() ? Stream.of(question(lamp.place(), lamp.subject())) : Stream.empty();
        return Stream.concat(own, setup.heaters().stream().filter(heater -> lengthwise.third(heater.place()).isEmpty())
                .map(heater -> question(heater.place(), heater.subject())));
    }

    /** A distance from the left wall says nothing about thirds while the length is not known, a warm end nothing about sides. */
    private static String question(Spot place, Subject part) {
        if (!place.isKnown()) {
            return part.path("place");
        }
        return place.along().isKnown() ? "enclosure.inside.length" : "enclosure.warm-end";
    }

    private boolean areAllPlaced() {
        return setup.heaters().stream().allMatch(heater -> lengthwise.third(heater.place()).isPresent());
    }

    private static Quantity quantity(Lamp lamp, List<String> here) {
        String key = lamp.subject().key();
        List<Step> trail = here.isEmpty() ? List.of() : List.of(Step.of("counted", String.join(", ", here)));
        return new Quantity(Topic.HEAT_SOURCES, Place.at(key), here.size(), 0, new Origin(Method.SEEN, key, ""), trail);
    }
}
