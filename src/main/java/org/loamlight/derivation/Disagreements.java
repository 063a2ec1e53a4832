package org.loamlight.derivation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.loamlight.physics.Conformance;
import org.loamlight.quantity.Method;
import org.loamlight.quantity.Origin;
import org.loamlight.quantity.Place;
import org.loamlight.quantity.Quantity;
import org.loamlight.quantity.Step;
import org.loamlight.quantity.Topic;
import org.loamlight.setup.DayTime;
import org.loamlight.setup.Instrument;
import org.loamlight.setup.Measure;
import org.loamlight.setup.Reading;
import org.loamlight.setup.ReadingOf;
import org.loamlight.setup.Setup;
import org.loamlight.setup.Stated;
import org.loamlight.setup.Told;

/**
 * How far two readings of the same thing, taken at the same place and time, lie apart: their difference in per cent of what their expanded
 * uncertainties allow together. That is 100 times the number E_n by which laboratories are compared (ISO/IEC 17043): up to 100 % both may
 * be right. The room counts as a second reading of the air where something heats, as no air inside is then colder than it.
 */
final class Disagreements {
    /** From standard to expanded uncertainty (JCGM 100:2008, 6.2.1; about 95 %). */
    private static final double COVERAGE_FACTOR = 2;
    private static final double PERCENT = 100;
    /** Source of a disagreement with the room, and of nothing else. */
    private static final String ROOM = "room when read";

    private final Setup setup;
    private final List<Reading> counting;

    Disagreements(Setup setup) {
        this.setup = setup;
        this.counting = setup.readings().stream().filter(Disagreements::counts).toList();
    }

    List<Quantity> quantities() {
        List<Quantity> all = new ArrayList<>();
        for (int one = 0; one < counting.size(); one++) {
            for (int other = one + 1; other < counting.size(); other++) {
                if (isOfTheSame(counting.get(one), counting.get(other))) {
                    all.add(between(counting.get(one), counting.get(other)));
                }
            }
        }
        counting.stream().flatMap(reading -> withRoom(reading).stream()).forEach(all::add);
        return all;
    }

    /** What was read of the air in a beam or by infrared is no reading of the air. */
    private static boolean counts(Reading reading) {
        boolean isAir = reading.of() == ReadingOf.AIR_TEMPERATURE;
        boolean isVoid = isAir && (reading.inBeam() == Stated.YES || reading.instrument() == Instrument.INFRARED_THERMOMETER);
        return reading.value().isKnown() && reading.of() != ReadingOf.UNKNOWN && !isVoid;
    }

    private boolean isOfTheSame(Reading one, Reading other) {
        boolean sameTime = one.time() == other.time() && one.time() != DayTime.UNKNOWN && one.on().equals(other.on());
        return one.of() == other.of() && sameTime && isAtTheSamePlace(one, other);
    }

    /** Words suffice for the air; a surface or a UV index is another one a hand's width away, so there it takes measures. */
    private boolean isAtTheSamePlace(Reading one, Reading other) {
        boolean inTheAir = one.of() == ReadingOf.AIR_TEMPERATURE || one.of() == ReadingOf.HUMIDITY;
        return one.place().isKnown() && one.place().equals(other.place()) && words(one).equals(words(other))
                && (inTheAir || one.place().along().isKnown() && one.place().above().isKnown());
    }

    /** "warm end, high" and "warm end, low" are two places of one zone. */
    private List<Optional<String>> words(Reading reading) {
        return Stream.of("readings[].place", "readings[].place.zone")
                .map(path -> setup.told().answer(Told.resolved(path, reading.subject()))).toList();
    }

    private Quantity between(Reading one, Reading other) {
        double apart = StrictMath.abs(one.value().value() - other.value().value());
        return quantity(apart, one, other.value(), one.subject().key(),
                Step.of("two-readings", one.name(), one.value().amount(), other.name(), other.value().amount()));
    }

    private Optional<Quantity> withRoom(Reading reading) {
        Measure room = setup.room().whenRead();
        boolean isAirByDay = reading.of() == ReadingOf.AIR_TEMPERATURE && reading.time() == DayTime.DAY;
        if (!isAirByDay || setup.heaters().isEmpty() || !room.isKnown() || room.value() <= reading.value().value()) {
            return Optional.empty();
        }
        return Optional.of(quantity(room.value() - reading.value().value(), reading, room, ROOM,
                Step.of("colder-than-room", reading.value().amount(), room.amount())));
    }

    private static Quantity quantity(double apart, Reading reading, Measure other, String source, Step step) {
        double allowed = COVERAGE_FACTOR * Conformance.combine(reading.value().standardUncertainty(), other.standardUncertainty());
        return new Quantity(Topic.DISAGREEMENT, Place.at(reading.subject().key()), PERCENT * apart / allowed, PERCENT / COVERAGE_FACTOR,
                new Origin(Method.COMPUTED, source, Readings.text(reading.on())), List.of(step));
    }
}
