package org.loamlight.derivation;

import java.util.List;
import java.util.Optional;
import org.loamlight.quantity.Method;
import org.loamlight.quantity.Origin;
import org.loamlight.quantity.Place;
import org.loamlight.quantity.Quantity;
import org.loamlight.quantity.Step;
import org.loamlight.quantity.Topic;
import org.loamlight.setup.Heater;
import org.loamlight.setup.Lamp;
import org.loamlight.setup.Setup;
import org.loamlight.setup.Stated;

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

    private boolean areAllPlaced() {
        return setup.heaters().stream().allMatch(heater -> lengthwise.third(heater.place()).isPresent());
    }

    private static Quantity quantity(Lamp lamp, List<String> here) {
        String key = lamp.subject().key();
        List<Step> trail = here.isEmpty() ? List.of() : List.of(Step.of("counted", String.join(", ", here)));
        return new Quantity(Topic.HEAT_SOURCES, Place.at(key), here.size(), 0, new Origin(Method.SEEN, key, ""), trail);
    }
}
