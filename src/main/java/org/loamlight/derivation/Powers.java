package org.loamlight.derivation;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.loamlight.setup.Heater;
import org.loamlight.setup.Lamp;
import org.loamlight.setup.Mount;
import org.loamlight.setup.Setup;
import org.loamlight.setup.Stated;
import org.loamlight.setup.Subject;

/**
 * The heat that reaches the inside (W). All the power of a lamp becomes heat. A thing mounted outside, above mesh or under
 * the floor, sends half to nine tenths of it in; one of which nobody told where it is mounted, half to all (judgement).
 *
 * @param open     by day, from lamps and from heaters no thermostat holds back
 * @param governed by day, from heaters that a thermostat may hold back or of which nobody told what switches them, full on
 */
record Powers(Uncertain open, Uncertain governed) {
    private static final Uncertain INSIDE = new Uncertain(1, 0);
    private static final Uncertain OUTSIDE = Uncertain.between(0.5, 0.9);
    private static final Uncertain UNTOLD = Uncertain.between(0.5, 1);

    /** Empty when heaters or lamps were not told of, or one of them has no power. */
    static Optional<Powers> of(Setup setup) {
        boolean told = setup.told().has("heaters", Subject.ENCLOSURE) && setup.told().has("lamps", Subject.ENCLOSURE);
        boolean rated = setup.heaters().stream().allMatch(heater -> heater.power().isKnown())
                && setup.lamps().stream().allMatch(lamp -> lamp.power().isKnown());
        return told && rated ? Optional.of(rated(setup)) : Optional.empty();
    }

    private static Powers rated(Setup setup) {
        Predicate<Heater> open = heater -> heater.onThermostat() == Stated.NO;
        Stream<Uncertain> lamps = setup.lamps().stream().map(Powers::heat);
        return new Powers(sum(Stream.concat(lamps, setup.heaters().stream().filter(open).map(Powers::heat))),
                sum(setup.heaters().stream().filter(open.negate()).map(Powers::heat)));
    }

    /**
     * The heat by night, heaters full on; zero when none runs. Lamps are no heaters of the night and do not count. Empty when it
     * was not told of one whether it may run, or the power of one that may.
     */
    static Optional<Uncertain> byNight(Setup setup) {
        List<Heater> running = setup.heaters().stream().filter(heater -> heater.onAtNight() == Stated.YES).toList();
        boolean told = setup.told().has("heaters", Subject.ENCLOSURE)
                && setup.heaters().stream().noneMatch(heater -> heater.onAtNight() == Stated.UNKNOWN)
                && running.stream().allMatch(heater -> heater.power().isKnown());
        return told ? Optional.of(sum(running.stream().map(Powers::heat))) : Optional.empty();
    }

    Uncertain full() {
        return open.plus(governed);
    }

    private static Uncertain heat(Heater heater) {
        return Uncertain.of(heater.power()).times(share(heater.mounted()));
    }

    private static Uncertain share(Mount mounted) {
        return switch (mounted) {
            case INSIDE -> INSIDE;
            case OUTSIDE -> OUTSIDE;
            case UNKNOWN -> UNTOLD;
        };
    }

    /** A lamp above a mesh or pane is outside. */
    private static Uncertain heat(Lamp lamp) {
        Mount mounted = lamp.betweenTold() != Stated.YES ? Mount.UNKNOWN : lamp.between().isEmpty() ? Mount.INSIDE : Mount.OUTSIDE;
        return Uncertain.of(lamp.power()).times(share(mounted));
    }

    private static Uncertain sum(Stream<Uncertain> powers) {
        return powers.reduce(Uncertain.NOTHING, Uncertain::plus);
    }
}
