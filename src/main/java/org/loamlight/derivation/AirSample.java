package org.loamlight.derivation;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.loamlight.physics.MoistAir;
import org.loamlight.quantity.Method;
import org.loamlight.quantity.Origin;
import org.loamlight.quantity.Place;
import org.loamlight.quantity.Step;
import org.loamlight.quantity.Unit;
import org.loamlight.quantity.Zone;
import org.loamlight.setup.DayTime;
import org.loamlight.setup.Reading;
import org.loamlight.setup.ReadingOf;
import org.loamlight.setup.Setup;
import org.loamlight.setup.Stated;

/**
 * Air of which humidity and temperature were read in the same zone and at the same time of day, so that it is known how much
 * water it holds. A thermometer in the beam of a lamp does not tell the temperature of the air.
 *
 * @param humidity    above 0 %
 * @param temperature within the range of {@link MoistAir}
 * @param zone        where both were read
 */
record AirSample(Reading humidity, Reading temperature, Zone zone) {

    /** Every humidity that has its temperature, in the order of the file; empty when none has. */
    static List<AirSample> all(Setup setup, Layout layout) {
        return readings(setup, ReadingOf.HUMIDITY).filter(humidity -> humidity.value().value() > 0)
                .map(humidity -> of(humidity, setup, layout)).flatMap(Optional::stream).toList();
    }

    /** Of several thermometers the one read on the day of the hygrometer counts, else the first. */
    private static Optional<AirSample> of(Reading humidity, Setup setup, Layout layout) {
        Zone zone = layout.zoneOf(humidity.place());
        return temperatures(setup, humidity.time()).filter(one -> layout.zoneOf(one.place()) == zone)
                .min(Comparator.comparing(one -> !one.on().equals(humidity.on())))
                .map(temperature -> new AirSample(humidity, temperature, zone));
    }

    /** Air temperatures read at that time of day in the shade, in the order of the file. */
    static Stream<Reading> temperatures(Setup setup, DayTime time) {
        return readings(setup, ReadingOf.AIR_TEMPERATURE).filter(one -> one.time() == time && one.inBeam() != Stated.YES)
                .filter(one -> isInRange(one.value().value()));
    }

    private static Stream<Reading> readings(Setup setup, ReadingOf of) {
        return setup.readings().stream()
                .filter(one -> one.of() == of && one.value().isKnown() && one.time() != DayTime.UNKNOWN);
    }

    /** Whether moist air of that temperature (°C) can be computed with. */
    static boolean isInRange(double celsius) {
        return celsius >= MoistAir.LOWEST_CELSIUS && celsius <= MoistAir.HIGHEST_CELSIUS;
    }

    DayTime time() {
        return humidity.time();
    }

    MoistAir air() {
        return new MoistAir(temperature.value().value(), share(humidity.value().value()));
    }

    /** Standard uncertainty of the relative humidity (share). */
    double humidityDeviation() {
        return share(humidity.value().standardUncertainty());
    }

    /** Standard uncertainty of the temperature (K). */
    double kelvin() {
        return temperature.value().standardUncertainty();
    }

    Place place() {
        return Place.of(zone);
    }

    Origin origin(Method method) {
        return new Origin(method, humidity.subject().key(), Readings.text(humidity.on()));
    }

    Step step() {
        return Step.of("moist-air", humidity.value().amount(), temperature.value().amount());
    }

    private static double share(double percent) {
        return Unit.PERCENT.convertDifference(percent, Unit.FRACTION);
    }
}
