package org.loamlight.derivation;

import java.time.LocalDate;
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
import org.loamlight.setup.Measure;
import org.loamlight.setup.Reading;
import org.loamlight.setup.Setup;

/** Readings as quantities at the zone they were taken in. A temperature read at an unknown time of day makes none. */
final class Readings {
    /** Two values differ surely when they are farther apart than this many standard uncertainties (JCGM 100:2008, 6.2.1; about 95 %). */
    private static final double COVERAGE_FACTOR = 2;

    private final Setup setup;
    private final Layout layout;

    Readings(Setup setup, Layout layout) {
        this.setup = setup;
        this.layout = layout;
    }

    List<Quantity> quantities() {
        return setup.readings().stream().filter(reading -> reading.value().isKnown()).flatMap(this::quantities).toList();
    }

    private Stream<Quantity> quantities(Reading reading) {
        return switch (reading.of()) {
            case AIR_TEMPERATURE -> temperature(reading, Topic.AIR_TEMPERATURE_BY_DAY, Topic.AIR_TEMPERATURE_BY_NIGHT);
            case SURFACE_TEMPERATURE -> temperature(reading, Topic.SURFACE_TEMPERATURE_BY_DAY, Topic.SURFACE_TEMPERATURE_BY_NIGHT);
            case HUMIDITY -> Stream.of(quantity(reading, Topic.RELATIVE_HUMIDITY));
            case UV_INDEX -> Stream.of(quantity(reading, Topic.UV_INDEX));
            case UNKNOWN -> Stream.empty();
        };
    }

    private Stream<Quantity> temperature(Reading reading, Topic byDay, Topic byNight) {
        return switch (reading.time()) {
            case DAY -> Stream.of(quantity(reading, byDay), quantity(reading, Topic.RESTING_TEMPERATURE_BY_DAY));
            case NIGHT -> Stream.of(quantity(reading, byNight));
            case UNKNOWN -> Stream.empty();
        };
    }

    private Quantity quantity(Reading reading, Topic topic) {
        Origin origin = new Origin(Method.MEASURED, reading.subject().key(), text(reading.on()));
        return new Quantity(topic, Place.of(layout.zoneOf(reading.place())), reading.value().value(),
                reading.value().standardUncertainty(), origin, topic == Topic.AIR_TEMPERATURE_BY_DAY ? doubt(reading) : List.of());
    }

    /** With heaters on no air inside is colder than the room: one of the two thermometers is wrong, or the heaters were off. */
    private List<Step> doubt(Reading reading) {
        Measure room = setup.room().whenRead();
        double sure = COVERAGE_FACTOR * Conformance.combine(room.standardUncertainty(), reading.value().standardUncertainty());
        boolean hotter = !setup.heaters().isEmpty() && room.isKnown() && room.value() - reading.value().value() > sure;
        return hotter ? List.of(Step.of("room-was-hotter", room.amount())) : List.of();
    }

    static String text(Optional<LocalDate> day) {
        return day.map(LocalDate::toString).orElse("");
    }
}
