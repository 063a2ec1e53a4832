package org.loamlight.derivation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import org.loamlight.physics.Conformance;
import org.loamlight.physics.Point;
import org.loamlight.quantity.Method;
import org.loamlight.quantity.Step;
import org.loamlight.setup.HeaterKind;
import org.loamlight.setup.Lamp;
import org.loamlight.setup.LampKind;
import org.loamlight.setup.Measure;
import org.loamlight.setup.Setup;
import org.loamlight.setup.Shines;
import org.loamlight.setup.Spot;
import org.loamlight.setup.Stated;
import org.loamlight.setup.TubeRuns;

/** The UV lamps of a setup: how strong each is, and which of them hang where it is known. */
final class UvLamps {
    private static final Point ANYWHERE = new Point(0, 0, 0);
    private static final int THIRDS = 3;

    private final Setup setup;
    private final Layout lengthwise;
    private final RestingPlaces rest;
    private final List<Lamp> all;
    /** Of each of {@link #all} in its order. */
    private final List<Optional<LampOutput>> outputs;
    private final List<HungLamp> hung;
    private final List<Lamp> leftOut;
    private final List<Step> told;
    private final Method method;
    private final String on;

    UvLamps(Setup setup) {
        this.setup = setup;
        this.lengthwise = Layout.of(setup, Axis.LENGTH);
        this.rest = new RestingPlaces(setup);
        this.all = setup.lamps().stream().filter(lamp -> lamp.givesUv() == Stated.YES).toList();
        this.outputs = all.stream().map(this::outputOf).toList();
        this.hung = all.stream().map(this::hang).flatMap(Optional::stream).toList();
        this.leftOut = all.stream().filter(lamp -> hung(lamp).isEmpty() && !isDark(lamp)).toList();
        this.told = told(hung);
        this.method = hung.stream().map(one -> one.output().method()).max(Comparator.naturalOrder()).orElse(Method.SEEN);
        this.on = hung.stream().map(one -> one.output().on()).filter(day -> !day.isEmpty()).min(Comparator.naturalOrder()).orElse("");
    }

    /** Every lamp that gives UV for certain. */
    List<Lamp> all() {
        return all;
    }

    /** Whether a mercury vapour lamp stands among the heaters, which gives ultraviolet as well and of which no index is asked. */
    boolean isBesideUnreadHeater() {
        return setup.heaters().stream().anyMatch(heater -> heater.kind() == HeaterKind.MERCURY_VAPOUR_LAMP);
    }

    /** Whether every lamp is told, none of unknown kind, and each that gives UV stands in {@link #hung()} or sends none through. */
    boolean areAllHung() {
        return setup.told().answer("lamps").isPresent() && setup.lamps().stream().noneMatch(lamp -> lamp.givesUv() == Stated.UNKNOWN)
                && leftOut.isEmpty() && !isBesideUnreadHeater();
    }

    /** Those that may add light from who knows where: neither in {@link #hung()} nor known to send none through. */
    List<Lamp> leftOut() {
        return leftOut;
    }

    private boolean isDark(Lamp lamp) {
        return output(lamp).filter(output -> output.strength() == 0).isPresent();
    }

    /** Those of known strength above 0 that shine down from a known place, in the order of the file. */
    List<HungLamp> hung() {
        return hung;
    }

    /** The lamp among {@link #hung()}; empty if it is not there. */
    Optional<HungLamp> hung(Lamp lamp) {
        return hung.stream().filter(one -> one.lamp().equals(lamp)).findFirst();
    }

    /** Empty for a lamp whose strength or place is not known, and for one that shines from the side or from below. */
    private Optional<HungLamp> hang(Lamp lamp) {
        Optional<Metres> along = along(lamp.place());
        if (along.isEmpty() || !lamp.place().above().isKnown() || lamp.shines() == Shines.FROM_THE_SIDE || lamp.shines() == Shines.FROM_BELOW) {
            return Optional.empty();
        }
        Metres above = Metres.of(lamp.place().above());
        return output(lamp).filter(output -> output.strength() > 0)
                .map(output -> new HungLamp(lamp, output, along.get(), across(lamp.place()), above));
    }

    /** How strong one of {@link #all()} is; empty without a usable reading, and for a tube of unknown lit length. */
    Optional<LampOutput> output(Lamp lamp) {
        return outputs.get(all.indexOf(lamp));
    }

    private Optional<LampOutput> outputOf(Lamp lamp) {
        if (lamp.isBlocked() && lamp.readings().isEmpty()) {
            return Optional.of(LampOutput.NONE);
        }
        boolean isShapeKnown = lamp.kind() != LampKind.UV_TUBE || lamp.arcLength().isKnown();
        double distance = rest.closestTo(lamp).map(RestingPlaces.Distance::centimetres).orElse(Double.NaN);
        return isShapeKnown ? LampOutput.of(lamp, HungLamp.source(lamp, ANYWHERE), distance) : Optional.empty();
    }

    /** From the left wall; the middle of its third where only that is said, give or take half a third. */
    private Optional<Metres> along(Spot place) {
        if (place.along().isKnown()) {
            return Optional.of(Metres.of(place.along()));
        }
        OptionalInt third = lengthwise.third(place);
        Measure length = setup.enclosure().length();
        if (third.isEmpty() || !length.isKnown()) {
            return Optional.empty();
        }
        double width = Metres.of(length).value() / THIRDS;
        return Optional.of(new Metres(width * (third.getAsInt() + 0.5), Conformance.fromHalfWidth(width / 2)));
    }

    private static Optional<Metres> across(Spot place) {
        return place.across().isKnown() ? Optional.of(Metres.of(place.across())) : Optional.empty();
    }

    /** Steps that name the lamps in {@link #hung()}, and how tubes are taken to lie of which nobody said it. */
    List<Step> tell() {
        return told;
    }

    private static List<Step> told(List<HungLamp> hung) {
        if (hung.isEmpty()) {
            return List.of(Step.of("uv-blocked"));
        }
        List<Step> steps = new ArrayList<>();
        steps.add(Step.of("lit-by", hung.stream().map(one -> one.lamp().name()).collect(Collectors.joining(", "))));
        hung.stream().map(HungLamp::lamp).filter(lamp -> lamp.kind() == LampKind.UV_TUBE && lamp.runs() == TubeRuns.UNKNOWN)
                .forEach(lamp -> steps.add(Step.of("tube-taken-along", lamp.name())));
        return steps;
    }

    /** The weakest of the methods by which the lamps in {@link #hung()} are known; SEEN where there is none. */
    Method method() {
        return method;
    }

    /** ISO date of the oldest reading behind the lamps in {@link #hung()}; empty when none is dated. */
    String on() {
        return on;
    }
}
