package org.loamlight.derivation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import org.loamlight.derivation.HeatInputs.Of;
import org.loamlight.quantity.Amount;
import org.loamlight.quantity.Method;
import org.loamlight.quantity.Origin;
import org.loamlight.quantity.Place;
import org.loamlight.quantity.Quantity;
import org.loamlight.quantity.Step;
import org.loamlight.quantity.Topic;
import org.loamlight.quantity.Unit;
import org.loamlight.setup.Measure;
import org.loamlight.setup.Setup;
import org.loamlight.setup.Subject;

/** The air of the enclosure in the coldest and in the hottest room, everything running as it may, once it has settled. */
final class HeatBudget {
    private final Setup setup;
    private final Wanted wanted;
    private final Optional<Shell> shell;
    private final Optional<Powers> powers;
    private final Optional<Uncertain> dayAir;
    private final Optional<HeatLoss> loss;
    private final Optional<Quantity> neededPower;

    HeatBudget(Setup setup, Wanted wanted) {
        this.setup = setup;
        this.wanted = wanted;
        this.shell = Shell.of(setup);
        this.powers = Powers.of(setup);
        this.dayAir = DayAir.mean(setup);
        this.loss = shell.map(walls -> HeatLoss.of(setup, walls, powers, dayAir));
        this.neededPower = setup.room().coldest().isKnown() ? neededPower() : Optional.empty();
    }

    Optional<Shell> shell() {
        return shell;
    }

    Optional<Powers> powers() {
        return powers;
    }

    /** The mean air of the enclosure by day as it was read; empty when none was. */
    Optional<Uncertain> dayAir() {
        return dayAir;
    }

    List<Quantity> quantities() {
        List<Quantity> quantities = new ArrayList<>();
        loss.ifPresent(lost -> quantities.add(airChanges(lost)));
        if (setup.room().coldest().isKnown()) {
            powers.flatMap(this::lossByDay).ifPresent(loss -> quantities.add(coldDay(loss)));
            Powers.byNight(setup).flatMap(this::coldNight).ifPresent(quantities::add);
            neededPower.ifPresent(quantities::add);
        }
        if (setup.room().hottest().isKnown()) {
            powers.flatMap(this::lossByDay).ifPresent(loss -> quantities.add(hotDay(loss)));
        }
        return quantities;
    }

    /** What is lost by day; of no account where nothing gives heat. Empty when it is of account and the walls are not told. */
    Optional<HeatLoss> lossByDay(Powers given) {
        return given.full().value() == 0 ? Optional.of(HeatLoss.UNASKED) : loss;
    }

    /** What the loss takes, with the heat by day and one room. */
    HeatInputs byDay(HeatLoss loss, Of room, Measure celsius) {
        Powers given = powers.orElseThrow();
        return loss.inputs().with(Of.OPEN_POWER, given.open()).with(Of.GOVERNED_POWER, given.governed()).with(room, Uncertain.of(celsius));
    }

    /** Air that has settled with everything by day full on. */
    static double fullOn(HeatInputs in, HeatLoss loss, Of room) {
        return in.of(room) + (in.of(Of.OPEN_POWER) + in.of(Of.GOVERNED_POWER)) / loss.wattsPerKelvin(in);
    }

    /** Air that has settled with the thermostats off: what they hold back is most where the room is hottest. */
    static double governed(HeatInputs in, HeatLoss loss, Of room) {
        return in.of(room) + in.of(Of.OPEN_POWER) / loss.wattsPerKelvin(in);
    }

    /** Where the walls take most of the heat the readings fix what is lost, but not what share of it goes with the air. */
    private static Quantity airChanges(HeatLoss loss) {
        Uncertain changes = loss.inputs().through(loss::changesPerHour);
        return changes.uncertainty() < changes.value() ? quantity(Topic.AIR_CHANGES, changes, loss.method(), loss.trail())
                : quantity(Topic.AIR_CHANGES, loss.inputs().uncertain(Of.AIR_CHANGES), Method.MODELLED, List.of(Step.of("air-blurred")));
    }

    private Quantity coldDay(HeatLoss loss) {
        HeatInputs in = byDay(loss, Of.COLDEST_ROOM, setup.room().coldest());
        List<Step> trail = trail(loss, in, setup.room().coldest(), powers.orElseThrow().full());
        neededPower.ifPresent(power -> trail.add(Step.of("needed-power", power.amount(), celsius(wantedByDay().getAsDouble()))));
        return quantity(Topic.COLD_ROOM_AIR_BY_DAY, in.through(all -> fullOn(all, loss, Of.COLDEST_ROOM)), method(loss), trail);
    }

    private Optional<Quantity> coldNight(Uncertain power) {
        return (power.value() == 0 ? Optional.of(HeatLoss.UNASKED) : loss).map(lost -> coldNight(lost, power));
    }

    private Quantity coldNight(HeatLoss loss, Uncertain power) {
        HeatInputs in = loss.inputs().with(Of.NIGHT_POWER, power).with(Of.COLDEST_ROOM, Uncertain.of(setup.room().coldest()));
        ToDoubleFunction<HeatInputs> air = all -> all.of(Of.COLDEST_ROOM) + all.of(Of.NIGHT_POWER) / loss.wattsPerKelvin(all);
        return quantity(Topic.COLD_ROOM_AIR_BY_NIGHT, in.through(air), method(loss), trail(loss, in, setup.room().coldest(), power));
    }

    private Quantity hotDay(HeatLoss loss) {
        HeatInputs in = byDay(loss, Of.HOTTEST_ROOM, setup.room().hottest());
        List<Step> trail = trail(loss, in, setup.room().hottest(), powers.orElseThrow().open());
        if (powers.orElseThrow().governed().value() > 0) {
            trail.add(Step.of("thermostats-off"));
        }
        return quantity(Topic.HOT_ROOM_AIR_BY_DAY, in.through(all -> governed(all, loss, Of.HOTTEST_ROOM)), method(loss), trail);
    }

    private OptionalDouble wantedByDay() {
        return wanted.atLeast(Topic.COLD_ROOM_AIR_BY_DAY);
    }

    /** Empty when no animal asks for a day air, or the walls are not told. 0 where the room itself is warm enough. */
    private Optional<Quantity> neededPower() {
        return wantedByDay().isEmpty() ? Optional.empty() : loss.map(lost -> neededPower(lost, wantedByDay().getAsDouble()));
    }

    private Quantity neededPower(HeatLoss loss, double wantedCelsius) {
        HeatInputs in = loss.inputs().with(Of.COLDEST_ROOM, Uncertain.of(setup.room().coldest()));
        Uncertain watts = in.through(all -> StrictMath.max(0, loss.wattsPerKelvin(all) * (wantedCelsius - all.of(Of.COLDEST_ROOM))));
        return quantity(Topic.NEEDED_POWER, watts, loss.method(), steps(loss, in, setup.room().coldest()));
    }

    /** Where nothing is lost, nothing gives heat, and the air is as the room was said to be. */
    static Method method(HeatLoss loss) {
        return loss.equals(HeatLoss.UNASKED) ? Method.STATED : loss.method();
    }

    /** How an air temperature came about: room, heat given, heat lost. */
    static List<Step> trail(HeatLoss loss, HeatInputs in, Measure room, Uncertain power) {
        List<Step> trail = new ArrayList<>();
        if (power.value() == 0) {
            trail.add(Step.of("in-room", room.amount()));
            trail.add(Step.of("nothing-heats"));
            return trail;
        }
        trail.add(Step.of("heat-given", new Amount(power.value(), Unit.WATT)));
        trail.addAll(steps(loss, in, room));
        return trail;
    }

    private static List<Step> steps(HeatLoss loss, HeatInputs in, Measure room) {
        List<Step> steps = new ArrayList<>(List.of(Step.of("in-room", room.amount()),
                Step.of("heat-lost", new Amount(loss.wattsPerKelvin(in), Unit.WATT))));
        steps.addAll(loss.trail());
        return steps;
    }

    static Amount celsius(double value) {
        return new Amount(value, Unit.CELSIUS);
    }

    static Quantity quantity(Topic topic, Uncertain value, Method method, List<Step> trail) {
        return quantity(topic, Place.ANYWHERE, value, method, trail);
    }

    static Quantity quantity(Topic topic, Place place, Uncertain value, Method method, List<Step> trail) {
        return new Quantity(topic, place, value.value(), value.uncertainty(), new Origin(method, Subject.ENCLOSURE.key(), ""), trail);
    }
}
