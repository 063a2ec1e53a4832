package org.loamlight.derivation;

import java.util.List;
import java.util.stream.Stream;
import org.loamlight.physics.Conformance;
import org.loamlight.quantity.Amount;
import org.loamlight.quantity.Method;
import org.loamlight.quantity.Origin;
import org.loamlight.quantity.Quantity;
import org.loamlight.quantity.Step;
import org.loamlight.quantity.Topic;

/** How far the air falls by night wherever it was read by day and by night. A fall of less than nothing is a rise. */
final class NightDrop {
    private final List<Quantity> read;
    private final Wanted wanted;

    NightDrop(List<Quantity> read, Wanted wanted) {
        this.read = read;
        this.wanted = wanted;
    }

    List<Quantity> quantities() {
        return wanted.asks(Topic.NIGHT_DROP) ? of(Topic.AIR_TEMPERATURE_BY_DAY).flatMap(this::drops).toList() : List.of();
    }

    private Stream<Quantity> of(Topic topic) {
        return read.stream().filter(one -> one.topic() == topic);
    }

    private Stream<Quantity> drops(Quantity day) {
        return of(Topic.AIR_TEMPERATURE_BY_NIGHT).filter(night -> night.place().equals(day.place())).map(night -> drop(day, night));
    }

    private static Quantity drop(Quantity day, Quantity night) {
        return new Quantity(Topic.NIGHT_DROP, day.place(), day.value() - night.value(), Conformance.combine(day.uncertainty(), night.uncertainty()),
                new Origin(Method.COMPUTED, night.origin().source(), night.origin().on()),
                List.of(Step.of("day-less-night", new Amount(day.value(), day.topic().unit()), new Amount(night.value(), night.topic().unit()))));
    }
}
