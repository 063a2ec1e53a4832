package org.loamlight.derivation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.loamlight.derivation.HeatInputs.Of;
import org.loamlight.physics.HeatInput;
import org.loamlight.quantity.Method;
import org.loamlight.quantity.Quantity;
import org.loamlight.quantity.Step;
import org.loamlight.quantity.Topic;
import org.loamlight.setup.Setup;

/** What air and surfaces come to when control fails and everything that heats by day stays full on in the hottest room. */
final class Runaway {
    private final Setup setup;
    private final HeatBudget budget;
    private final List<Quantity> read;
    private final OptionalDouble limit;

    Runaway(Setup setup, Wanted wanted, HeatBudget budget, List<Quantity> read) {
        this.setup = setup;
        this.budget = budget;
        this.read = read;
        this.limit = wanted.atMost(Topic.RUNAWAY_AIR);
    }

    List<Quantity> quantities() {
        if (!setup.room().hottest().isKnown()) {
            return List.of();
        }
        List<Quantity> quantities = new ArrayList<>();
        budget.powers().flatMap(budget::lossByDay).ifPresent(loss -> quantities.addAll(air(loss)));
        budget.powers().ifPresent(powers -> quantities.addAll(surfaces(powers)));
        return quantities;
    }

    private List<Quantity> air(HeatLoss loss) {
        HeatInputs in = budget.byDay(loss, Of.HOTTEST_ROOM, setup.room().hottest());
        List<Step> trail = HeatBudget.trail(loss, in, setup.room().hottest(), budget.powers().orElseThrow().full());
        Optional<Quantity> hours = hours(loss, in);
        hours.ifPresent(time -> trail.add(Step.of("after-hours", HeatBudget.celsius(limit.getAsDouble()), time.amount())));
        Quantity air = HeatBudget.quantity(Topic.RUNAWAY_AIR, in.through(all -> HeatBudget.fullOn(all, loss, Of.HOTTEST_ROOM)),
                HeatBudget.method(loss), trail);
        return Stream.concat(Stream.of(air), hours.stream()).toList();
    }

    /**
     * Empty when nothing holds heat back today, the air never gets so hot, it is not told what stores heat, or the doubt of the
     * hours swallows them: hours that may as well be none or a week tell nobody anything.
     */
    private Optional<Quantity> hours(HeatLoss loss, HeatInputs in) {
        boolean never = limit.isEmpty() || in.of(Of.GOVERNED_POWER) == 0 || HeatBudget.fullOn(in, loss, Of.HOTTEST_ROOM) <= limit.getAsDouble();
        return never ? Optional.empty()
                : budget.shell().flatMap(shell -> HeatStore.of(setup, shell)).map(store -> hours(loss, store.added(in), store))
                        .filter(hours -> !hours.isSwallowed());
    }

    private Quantity hours(HeatLoss loss, HeatInputs in, HeatStore store) {
        Uncertain hours = in.through(all -> hours(all, loss, store, limit.getAsDouble()));
        List<Step> trail = List.of(Step.of("starts-at", HeatBudget.celsius(HeatBudget.governed(in, loss, Of.HOTTEST_ROOM))),
                Step.of("gets-to", HeatBudget.celsius(limit.getAsDouble())), store.step());
        return HeatBudget.quantity(Topic.RUNAWAY_HOURS, HeatStore.crude(hours), loss.method(), trail);
    }

    private static double hours(HeatInputs in, HeatLoss loss, HeatStore store, double limit) {
        double start = HeatBudget.governed(in, loss, Of.HOTTEST_ROOM);
        HeatInput full = new HeatInput(in.of(Of.OPEN_POWER) + in.of(Of.GOVERNED_POWER), 0, in.of(Of.HOTTEST_ROOM));
        return start >= limit ? 0 : store.hoursUntilAir(limit, in, loss.wattsPerKelvin(in), start, full);
    }

    /** Where there is no heater, no surface gets warmer than the air; else what was read tells it. */
    private List<Quantity> surfaces(Powers powers) {
        if (setup.heaters().isEmpty()) {
            return budget.lossByDay(powers).stream().flatMap(loss -> air(loss).stream()).filter(one -> one.topic() == Topic.RUNAWAY_AIR)
                    .map(air -> new Quantity(Topic.RUNAWAY_SURFACE, air.place(), air.value(), air.uncertainty(), air.origin(), air.trail())).toList();
        }
        return setup.room().whenRead().isKnown() ? read.stream().filter(one -> one.topic() == Topic.SURFACE_TEMPERATURE_BY_DAY)
                .flatMap(surface -> surface(powers, surface).stream()).toList() : List.of();
    }

    private Optional<Quantity> surface(Powers powers, Quantity surface) {
        HeatInputs in = HeatInputs.NONE.with(Of.SURFACE_READ, new Uncertain(surface.value(), surface.uncertainty()))
                .with(Of.ROOM_READ, Uncertain.of(setup.room().whenRead())).with(Of.HOTTEST_ROOM, Uncertain.of(setup.room().hottest()));
        Step from = Step.of("surface-read-in-room", surface.amount(), setup.room().whenRead().amount());
        Step room = Step.of("in-room", setup.room().hottest().amount());
        if (powers.governed().value() == 0) {
            return Optional.of(HeatBudget.quantity(Topic.RUNAWAY_SURFACE, surface.place(), in.through(all -> surface(all, 1)), Method.COMPUTED,
                    List.of(from, room)));
        }
        return budget.lossByDay(powers).flatMap(loss -> heldBack(loss, in)).map(value -> HeatBudget.quantity(Topic.RUNAWAY_SURFACE,
                surface.place(), value, Method.MODELLED, List.of(from, room, Step.of("held-back"))));
    }

    /** Surface and room as far apart as they were read, times how much more heat is given than was. */
    private static double surface(HeatInputs in, double more) {
        return in.of(Of.HOTTEST_ROOM) + (in.of(Of.SURFACE_READ) - in.of(Of.ROOM_READ)) * more;
    }

    /**
     * With a thermostat the heat given while the surface was read is what the air lost then; full on gives more, never less.
     * Empty where no air was read, or it was not surely warmer than the room.
     */
    private Optional<Uncertain> heldBack(HeatLoss loss, HeatInputs surface) {
        HeatInputs day = budget.byDay(loss, Of.HOTTEST_ROOM, setup.room().hottest())
                .with(Of.ROOM_READ, surface.uncertain(Of.ROOM_READ)).with(Of.SURFACE_READ, surface.uncertain(Of.SURFACE_READ));
        return budget.dayAir().map(air -> day.with(Of.AIR_READ, air)).filter(HeatLoss::isAirApart)
                .map(in -> in.through(all -> surface(all, StrictMath.max(1, more(all, loss)))));
    }

    private static double more(HeatInputs in, HeatLoss loss) {
        double given = loss.wattsPerKelvin(in) * (in.of(Of.AIR_READ) - in.of(Of.ROOM_READ));
        return (in.of(Of.OPEN_POWER) + in.of(Of.GOVERNED_POWER)) / given;
    }
}
