package org.loamlight.derivation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.loamlight.physics.Conformance;
import org.loamlight.physics.ContactBurn;
import org.loamlight.physics.Emissivity;
import org.loamlight.physics.InfraredThermometer;
import org.loamlight.quantity.Amount;
import org.loamlight.quantity.Method;
import org.loamlight.quantity.Origin;
import org.loamlight.quantity.Place;
import org.loamlight.quantity.Quantity;
import org.loamlight.quantity.Step;
import org.loamlight.quantity.Topic;
import org.loamlight.quantity.Unit;
import org.loamlight.setup.Heater;
import org.loamlight.setup.Measure;
import org.loamlight.setup.SurfaceMaterial;

/**
 * How hot the surface of a heater is in truth. Nobody says with what it was read: a sensor pressed on it shows the surface, an infrared thermometer
 * shows it too cool wherever the emissivity is below the one set. So the truth lies between the reading and what the lowest emissivity of the
 * material makes of it, and with no more known the middle counts, with u = a / sqrt(3) (JCGM 100:2008, 4.3.7 and 4.3.8).
 */
final class HeaterSurface {
    /** Fixed in most simple infrared thermometers (trade manuals, secondary). */
    private static final double USUAL_SETTING = 0.95;
    /** Surroundings where nobody told how warm the room was: a cool room, which makes the correction large (judgement). */
    private static final double COOL_ROOM = 20;

    private final Heater heater;
    private final Measure room;

    /** @param room how warm the room was when the readings were taken (°C); may be unknown */
    HeaterSurface(Heater heater, Measure room) {
        this.heater = heater;
        this.room = room;
    }

    /** Only for a heater whose surface was read. */
    Quantity quantity() {
        double read = heater.surface().value();
        double hottest = Math.max(read, truth(read, emissivity().least()));
        double coolest = Math.min(read, truth(read, emissivity().most()));
        double value = (coolest + hottest) / 2;
        double uncertainty = Conformance.combine(heater.surface().standardUncertainty(), Conformance.fromHalfWidth((hottest - coolest) / 2));
        String key = heater.subject().key();
        return new Quantity(Topic.HEATER_SURFACE, Place.at(key), value, uncertainty, new Origin(Method.COMPUTED, key, ""), trail(value, hottest));
    }

    /** The surface behind a reading; the reading itself where no surface explains it, which only one colder than the room can do. */
    private double truth(double read, double emissivity) {
        InfraredThermometer instrument = new InfraredThermometer(USUAL_SETTING, surroundings(), InfraredThermometer.LONG_WAVES);
        return instrument.surfaceCelsius(read, emissivity, surroundings()).orElse(read);
    }

    private double surroundings() {
        return room.isKnown() ? room.value() : COOL_ROOM;
    }

    private Emissivity emissivity() {
        return switch (heater.surfaceOf()) {
            case METAL -> Emissivity.BARE_METAL;
            case COATED_METAL -> Emissivity.COATED_METAL;
            case CERAMIC -> Emissivity.CERAMIC;
            case GLASS -> Emissivity.GLASS;
            case STONE -> Emissivity.STONE;
            case PLASTIC -> Emissivity.PLASTIC;
            case WOOD -> Emissivity.WOOD;
            case UNKNOWN -> Emissivity.DULL;
        };
    }

    private List<Step> trail(double value, double hottest) {
        List<Step> trail = new ArrayList<>();
        trail.add(Step.of("surface-read", heater.surface().amount()));
        if (heater.surfaceOf() == SurfaceMaterial.UNKNOWN) {
            trail.add(Step.of("surface-not-told", celsius(hottest)));
        } else {
            trail.add(Step.of("surface-of", heater.surfaceOf(), celsius(hottest)));
        }
        trail.add(room.isKnown() ? Step.of("room-mirrored", room.amount()) : Step.of("room-mirrored-assumed", celsius(COOL_ROOM)));
        burn(value).ifPresent(trail::add);
        return trail;
    }

    private static Amount celsius(double value) {
        return new Amount(value, Unit.CELSIUS);
    }

    /** How soon the surface burns a hand (human thresholds by material and time of contact); empty where it never does. */
    private Optional<Step> burn(double value) {
        if (value >= threshold(ContactBurn.SHORTEST_SECONDS)) {
            return Optional.of(Step.of("burns-hand-at-once"));
        }
        if (value >= threshold(ContactBurn.MINUTE_SECONDS)) {
            return Optional.of(Step.of("burns-hand-in-a-minute"));
        }
        if (value >= threshold(ContactBurn.TEN_MINUTES_SECONDS)) {
            return Optional.of(Step.of("burns-hand-in-ten-minutes"));
        }
        return value >= ContactBurn.LASTING_CELSIUS ? Optional.of(Step.of("burns-hand-in-hours")) : Optional.empty();
    }

    private double threshold(double seconds) {
        return ContactBurn.threshold(touched(), seconds).fromCelsius();
    }

    /** Where the material is not told the one that burns soonest. */
    private ContactBurn.Surface touched() {
        return switch (heater.surfaceOf()) {
            case METAL, UNKNOWN -> ContactBurn.Surface.BARE_METAL;
            case COATED_METAL -> ContactBurn.Surface.COATED_METAL;
            case CERAMIC, GLASS, STONE -> ContactBurn.Surface.STONE;
            case PLASTIC -> ContactBurn.Surface.PLASTIC;
            case WOOD -> ContactBurn.Surface.WOOD;
        };
    }
}
