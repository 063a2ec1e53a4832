package org.loamlight.derivation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.loamlight.quantity.Amount;
import org.loamlight.quantity.Method;
import org.loamlight.quantity.Place;
import org.loamlight.quantity.Quantity;
import org.loamlight.quantity.Step;
import org.loamlight.quantity.Topic;
import org.loamlight.quantity.Unit;
import org.loamlight.quantity.Zone;
import org.loamlight.setup.DayTime;
import org.loamlight.setup.Measure;
import org.loamlight.setup.Reading;
import org.loamlight.setup.Setup;

/**
 * What follows from a humidity read together with a temperature: the dew point, the humidity of the same air elsewhere in the
 * enclosure and at its coldest pane by night, and the water that must evaporate to hold it.
 */
final class Moisture {
    private final Setup setup;
    private final Layout layout;
    private final List<AirSample> samples;
    private final Evaporation evaporation;

    /** @param climate quantities of the climate, of which the changes of the air are taken */
    Moisture(Setup setup, Layout layout, List<Quantity> climate) {
        this.setup = setup;
        this.layout = layout;
        this.samples = AirSample.all(setup, layout);
        this.evaporation = new Evaporation(setup, climate);
    }

    List<Quantity> quantities() {
        List<Quantity> quantities = new ArrayList<>();
        samples.forEach(sample -> quantities.add(dewPoint(sample)));
        samples.forEach(sample -> elsewhere(sample).forEach(there -> quantities.add(implied(sample, there))));
        paneHumidities().forEach(quantities::add);
        samples.stream().min(Comparator.comparing(AirSample::time)).flatMap(evaporation::inADay).ifPresent(quantities::add);
        return quantities;
    }

    private static Quantity dewPoint(AirSample sample) {
        return new Quantity(Topic.DEW_POINT, sample.place(), sample.air().dewPointCelsius(),
                sample.air().dewPointUncertainty(sample.kelvin(), sample.humidityDeviation()), sample.origin(Method.COMPUTED),
                List.of(sample.step()));
    }

    /** The first temperature of every other zone that was read at the same time of day and where no humidity was read. */
    private List<Reading> elsewhere(AirSample sample) {
        List<Reading> elsewhere = new ArrayList<>();
        List<Zone> done = new ArrayList<>(samples.stream().filter(one -> one.time() == sample.time()).map(AirSample::zone).toList());
        done.add(Zone.ENCLOSURE);
        AirSample.temperatures(setup, sample.time()).filter(one -> sample.zone() != Zone.ENCLOSURE).forEach(one -> {
            if (!done.contains(layout.zoneOf(one.place()))) {
                elsewhere.add(one);
                done.add(layout.zoneOf(one.place()));
            }
        });
        return elsewhere;
    }

    private Quantity implied(AirSample sample, Reading there) {
        Measure celsius = there.value();
        return new Quantity(Topic.IMPLIED_HUMIDITY, Place.of(layout.zoneOf(there.place())),
                percent(sample.air().relativeHumidityAt(celsius.value())),
                percent(sample.air().relativeHumidityUncertaintyAt(sample.humidityDeviation(), sample.kelvin(), celsius.value(),
                        celsius.standardUncertainty())),
                sample.origin(Method.COMPUTED), List.of(sample.step(), Step.of("same-vapour-there", celsius.amount())));
    }

    /** One for each humidity read by night, or, where none was, for each read by day. */
    private Stream<Quantity> paneHumidities() {
        Predicate<AirSample> byNight = sample -> sample.time() == DayTime.NIGHT;
        boolean any = samples.stream().anyMatch(byNight);
        return samples.stream().filter(any ? byNight : sample -> true).map(this::paneHumidity).flatMap(Optional::stream);
    }

    private Optional<Quantity> paneHumidity(AirSample sample) {
        Measure room = setup.room().coldest();
        return room.isKnown() && AirSample.isInRange(room.value())
                ? ColdPane.of(new Panes(setup.enclosure())).flatMap(pane -> nightAir(sample).map(air -> paneHumidity(sample, pane, air)))
                : Optional.empty();
    }

    /** The air beside the pane: that of the sample when it was read by night, else the coldest read by night. */
    private Optional<Measure> nightAir(AirSample sample) {
        if (sample.time() == DayTime.NIGHT) {
            return Optional.of(sample.temperature().value());
        }
        return AirSample.temperatures(setup, DayTime.NIGHT).map(Reading::value).min(Comparator.comparingDouble(Measure::value));
    }

    /** That the air of the sample also warms the pane is left out of the uncertainty: the two then shift together, so it is less. */
    private Quantity paneHumidity(AirSample sample, ColdPane pane, Measure air) {
        Measure room = setup.room().coldest();
        double celsius = pane.celsius(air, room);
        List<Step> trail = new ArrayList<>(List.of(sample.step()));
        if (sample.time() != DayTime.NIGHT) {
            trail.add(Step.of("humidity-by-day"));
        }
        trail.addAll(pane.steps(air, room));
        return new Quantity(Topic.PANE_HUMIDITY_BY_NIGHT, Place.ANYWHERE, percent(sample.air().relativeHumidityAt(celsius)),
                percent(sample.air().relativeHumidityUncertaintyAt(sample.humidityDeviation(), sample.kelvin(), celsius,
                        pane.kelvin(air, room))),
                sample.origin(Method.COMPUTED), trail);
    }

    static double percent(double share) {
        return Unit.FRACTION.convert(share, Unit.PERCENT);
    }

    static Amount percentAmount(double share) {
        return new Amount(percent(share), Unit.PERCENT);
    }
}
