package org.loamlight.derivation;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.loamlight.derivation.HeatInputs.Of;
import org.loamlight.physics.HeatInput;
import org.loamlight.quantity.Amount;
import org.loamlight.quantity.Method;
import org.loamlight.quantity.Quantity;
import org.loamlight.quantity.Step;
import org.loamlight.quantity.Topic;
import org.loamlight.quantity.Unit;
import org.loamlight.setup.Measure;
import org.loamlight.setup.Setup;

/**
 * How long the air stays above the night minimum when the power goes out in the coldest room. The room is taken to stay as it
 * is; in a long outage in winter it does not.
 */
final class Outage {
    private final Setup setup;
    private final HeatBudget budget;
    private final Measure room;
    private final OptionalDouble minimum;

    Outage(Setup setup, Wanted wanted, HeatBudget budget) {
        this.setup = setup;
        this.budget = budget;
        this.room = setup.room().coldest();
        this.minimum = wanted.atLeast(Topic.AIR_TEMPERATURE_BY_NIGHT);
    }

    /** Empty when the room or what gives, loses or stores heat is not told, or no animal asks for a night air. */
    Optional<Quantity> hours() {
        if (!room.isKnown() || minimum.isEmpty()) {
            return Optional.empty();
        }
        return room.value() >= minimum.getAsDouble() ? Optional.of(never())
                : budget.powers().filter(this::isStartKnown).flatMap(powers -> budget.lossByDay(powers).flatMap(this::stored));
    }

    private Quantity never() {
        List<Step> trail = List.of(Step.of("in-room", room.amount()), Step.of("gets-to", HeatBudget.celsius(minimum.getAsDouble())),
                Step.of("not-within", new Amount(HeatStore.LONGEST_HOURS, Unit.HOUR)));
        return HeatBudget.quantity(Topic.OUTAGE_HOURS, HeatStore.crude(new Uncertain(HeatStore.LONGEST_HOURS, 0)), Method.STATED, trail);
    }

    /** What thermostats hold is seen from a reading of the air alone. */
    private boolean isStartKnown(Powers powers) {
        return powers.governed().value() == 0 || budget.dayAir().isPresent();
    }

    private Optional<Quantity> stored(HeatLoss loss) {
        return budget.shell().flatMap(shell -> HeatStore.of(setup, shell)).map(store -> hours(loss, store));
    }

    private Quantity hours(HeatLoss loss, HeatStore store) {
        HeatInputs day = store.added(budget.byDay(loss, Of.COLDEST_ROOM, room));
        HeatInputs in = budget.dayAir().map(mean -> day.with(Of.AIR_READ, mean)).orElse(day);
        Uncertain hours = in.through(all -> hours(all, loss, store));
        List<Step> trail = List.of(Step.of("in-room", room.amount()), Step.of("starts-at", HeatBudget.celsius(start(in, loss))),
                Step.of("gets-to", HeatBudget.celsius(minimum.getAsDouble())),
                Step.of("heat-lost", new Amount(loss.wattsPerKelvin(in), Unit.WATT)), store.step());
        Quantity told = HeatBudget.quantity(Topic.OUTAGE_HOURS, HeatStore.crude(hours), loss.method(), trail);
        return told.isSwallowed() ? in.mostDoubtful(all -> hours(all, loss, store)).map(input -> doubted(told, input)).orElse(told) : told;
    }

    /** With what to find out first: a room of 17 °C give or take 3 °C may never get to 18 °C, or be there within the hour. */
    private static Quantity doubted(Quantity hours, Of input) {
        List<Step> trail = Stream.concat(hours.trail().stream(), Stream.of(Step.of(input.doubt()))).toList();
        return new Quantity(hours.topic(), hours.place(), hours.value(), hours.uncertainty(), hours.origin(), trail);
    }

    private double hours(HeatInputs in, HeatLoss loss, HeatStore store) {
        double start = start(in, loss);
        return start <= minimum.getAsDouble() ? 0 : store.hoursUntilAir(minimum.getAsDouble(), in, loss.wattsPerKelvin(in), start,
                HeatInput.none(in.of(Of.COLDEST_ROOM)));
    }

    /** What everything full on holds; where thermostats hold less, the air as it was read. */
    private static double start(HeatInputs in, HeatLoss loss) {
        double full = HeatBudget.fullOn(in, loss, Of.COLDEST_ROOM);
        return in.of(Of.GOVERNED_POWER) > 0 ? StrictMath.min(full, in.of(Of.AIR_READ)) : full;
    }
}
