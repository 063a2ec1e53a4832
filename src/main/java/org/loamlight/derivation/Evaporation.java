package org.loamlight.derivation;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.loamlight.physics.Conformance;
import org.loamlight.physics.MoistAir;
import org.loamlight.quantity.Method;
import org.loamlight.quantity.Place;
import org.loamlight.quantity.Quantity;
import org.loamlight.quantity.Step;
import org.loamlight.quantity.Topic;
import org.loamlight.setup.Enclosure;
import org.loamlight.setup.Measure;
import org.loamlight.setup.Setup;

/**
 * The water that must evaporate in a day to hold a humidity against the air of the room. Nobody is asked how humid the room is, so
 * this is an estimate whatever else is told.
 */
final class Evaporation {
    /** Relative humidity of rooms people live in (share): judgement. */
    static final double DRIEST_ROOM = 0.3;
    static final double DAMPEST_ROOM = 0.7;

    private static final double HOURS_PER_DAY = 24;
    private static final double GRAMS_PER_LITRE = 1000;
    private static final double CUBIC_CENTIMETRES_PER_CUBIC_METRE = 1e6;

    private final Setup setup;
    private final Optional<Quantity> changes;

    /** @param climate quantities of the climate, of which the changes of the air are taken, read or usual */
    Evaporation(Setup setup, List<Quantity> climate) {
        this.setup = setup;
        this.changes = climate.stream().filter(one -> one.topic() == Topic.AIR_CHANGES).findFirst();
    }

    /** Empty without the changes of the air, the inside size, and the temperature of the room at the time of the readings. */
    Optional<Quantity> inADay(AirSample sample) {
        Measure room = setup.room().whenRead();
        boolean isTold = size().allMatch(Measure::isKnown) && room.isKnown() && AirSample.isInRange(room.value());
        return changes.filter(exchange -> isTold).map(exchange -> inADay(sample, exchange));
    }

    private Stream<Measure> size() {
        Enclosure enclosure = setup.enclosure();
        return Stream.of(enclosure.length(), enclosure.depth(), enclosure.height());
    }

    private Quantity inADay(AirSample sample, Quantity exchange) {
        Uncertain litres = litresAtOneChange(sample).times(new Uncertain(exchange.value(), exchange.uncertainty()));
        Step room = Step.of("room-humidity-assumed", setup.room().whenRead().amount(), Moisture.percentAmount(DRIEST_ROOM),
                Moisture.percentAmount(DAMPEST_ROOM));
        return new Quantity(Topic.WATER_PER_DAY, Place.ANYWHERE, litres.value(), litres.uncertainty(),
                sample.origin(Method.ESTIMATED), List.of(sample.step(), Step.of("air-changing", exchange.amount()), room));
    }

    /** By finite differences, as both humidities enter almost in proportion; 0 where the room is the moister. */
    private Uncertain litresAtOneChange(AirSample sample) {
        double middle = (DRIEST_ROOM + DAMPEST_ROOM) / 2;
        double litres = litresAtOneChange(sample.air(), middle);
        double ofRoom = litres - litresAtOneChange(sample.air(), DAMPEST_ROOM);
        MoistAir half = new MoistAir(sample.air().celsius(), sample.air().relativeHumidity() / 2);
        double perShare = (litres - litresAtOneChange(half, middle)) / half.relativeHumidity();
        return new Uncertain(Math.max(0, litres), Conformance.fromHalfWidth(Math.abs(ofRoom))).and(perShare * sample.humidityDeviation());
    }

    private double litresAtOneChange(MoistAir air, double roomHumidity) {
        MoistAir room = new MoistAir(setup.room().whenRead().value(), roomHumidity);
        double cubicMetres = size().mapToDouble(Measure::value).reduce(1, (one, other) -> one * other) / CUBIC_CENTIMETRES_PER_CUBIC_METRE;
        return air.waterGramsPerHour(room, cubicMetres, 1) * HOURS_PER_DAY / GRAMS_PER_LITRE;
    }
}
