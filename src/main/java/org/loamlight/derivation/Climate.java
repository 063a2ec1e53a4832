package org.loamlight.derivation;

import java.util.ArrayList;
import java.util.List;
import org.loamlight.quantity.Method;
import org.loamlight.quantity.Origin;
import org.loamlight.quantity.Place;
import org.loamlight.quantity.Quantity;
import org.loamlight.quantity.Topic;
import org.loamlight.setup.Measure;
import org.loamlight.setup.Setup;

/** What the air of the enclosure does in the coldest and hottest room, and when control or power fails. */
final class Climate {
    private final Setup setup;
    private final Wanted wanted;
    private final List<Quantity> read;

    Climate(Setup setup, Wanted wanted, List<Quantity> read) {
        this.setup = setup;
        this.wanted = wanted;
        this.read = read;
    }

    List<Quantity> quantities() {
        HeatBudget budget = new HeatBudget(setup, wanted);
        List<Quantity> quantities = new ArrayList<>();
        add(quantities, Topic.COLDEST_ROOM, setup.room().coldest());
        add(quantities, Topic.HOTTEST_ROOM, setup.room().hottest());
        quantities.addAll(budget.quantities());
        quantities.addAll(new Runaway(setup, wanted, budget, read).quantities());
        new Outage(setup, wanted, budget).hours().ifPresent(quantities::add);
        return quantities;
    }

    private static void add(List<Quantity> quantities, Topic topic, Measure room) {
        if (room.isKnown()) {
            quantities.add(new Quantity(topic, Place.ANYWHERE, room.value(), room.standardUncertainty(), new Origin(Method.STATED, "room", ""),
                    List.of()));
        }
    }
}
