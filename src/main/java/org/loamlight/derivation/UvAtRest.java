package org.loamlight.derivation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.loamlight.physics.Conformance;
import org.loamlight.physics.LightField;
import org.loamlight.quantity.Amount;
import org.loamlight.quantity.Method;
import org.loamlight.quantity.Origin;
import org.loamlight.quantity.Place;
import org.loamlight.quantity.Quantity;
import org.loamlight.quantity.Step;
import org.loamlight.quantity.Topic;
import org.loamlight.quantity.Unit;
import org.loamlight.setup.Instrument;
import org.loamlight.setup.Lamp;
import org.loamlight.setup.LampKind;
import org.loamlight.setup.LampReading;
import org.loamlight.setup.Screen;
import org.loamlight.setup.Setup;
import org.loamlight.setup.Stated;
import org.loamlight.setup.Subject;

/**
 * UV index at the closest resting place of each lamp, from the lamp's own reading: by the inverse square for a bulb, by
 * Keitz' finite line for a tube, times what lies between. A reflector is in neither law, so far from the reading's own
 * distance the result says little; its uncertainty holds the distances, the reading and the screens, not the law.
 */
final class UvAtRest {
    private static final double CENTIMETRES_PER_METRE = 100;

    private final Setup setup;
    private final RestingPlaces rest;

    UvAtRest(Setup setup) {
        this.setup = setup;
        this.rest = new RestingPlaces(setup);
    }

    List<Quantity> quantities() {
        List<Quantity> quantities = new ArrayList<>();
        for (Lamp lamp : setup.lamps()) {
            if (lamp.givesUv() == Stated.YES) {
                rest.closestTo(lamp).ifPresent(distance -> quantities.add(distance(lamp, distance)));
                index(lamp).ifPresent(quantities::add);
            }
        }
        if (noUvLamp()) {
            quantities.add(none(Place.ANYWHERE, Subject.ENCLOSURE.key(), "no-uv-lamp"));
        }
        return quantities;
    }

    private boolean noUvLamp() {
        return setup.told().has("lamps", Subject.ENCLOSURE) && setup.lamps().stream().allMatch(lamp -> lamp.givesUv() == Stated.NO);
    }

    private static Quantity none(Place place, String source, String why) {
        return new Quantity(Topic.UV_INDEX, place, 0, 0, new Origin(Method.SEEN, source, ""), List.of(Step.of(why)));
    }

    private static Quantity distance(Lamp lamp, RestingPlaces.Distance distance) {
        return new Quantity(Topic.LAMP_DISTANCE, place(lamp), distance.centimetres(), distance.uncertainty(),
                new Origin(lamp.nearestRest().isKnown() ? Method.MEASURED : Method.COMPUTED, lamp.subject().key(), ""),
                List.of(distance.step()));
    }

    private static Place place(Lamp lamp) {
        return Place.at(lamp.subject().key());
    }

    private Optional<Quantity> index(Lamp lamp) {
        if (lamp.isBlocked() && lamp.readings().isEmpty()) {
            return Optional.of(none(place(lamp), lamp.subject().key(), "uv-blocked"));
        }
        return rest.closestTo(lamp).flatMap(distance -> reading(lamp, distance).map(reading -> index(lamp, reading, distance)));
    }

    /** The usable reading taken nearest to the distance asked for, so that the law has the least to bridge. */
    private static Optional<LampReading> reading(Lamp lamp, RestingPlaces.Distance distance) {
        boolean tubeWithoutLength = lamp.kind() == LampKind.UV_TUBE && !lamp.arcLength().isKnown();
        return lamp.readings().stream().filter(reading -> reading.index().isKnown() && reading.distance().isKnown())
                .filter(reading -> !tubeWithoutLength && isScreeningTold(lamp, reading))
                .min(Comparator.comparingDouble(reading -> Math.abs(reading.distance().value() - distance.centimetres())));
    }

    private static boolean isScreeningTold(Lamp lamp, LampReading reading) {
        return reading.through() == Stated.YES
                || lamp.betweenTold() == Stated.YES && (lamp.between().isEmpty() || reading.through() == Stated.NO);
    }

    private static Quantity index(Lamp lamp, LampReading reading, RestingPlaces.Distance distance) {
        Law law = Law.of(lamp, reading.distance().value(), distance.centimetres());
        List<Screen> screens = reading.through() == Stated.YES ? List.of() : lamp.between();
        double passed = screens.stream().mapToDouble(Screen::share).reduce(1, (one, other) -> one * other);
        double value = reading.index().value() * law.scale * passed;
        return new Quantity(Topic.UV_INDEX, place(lamp), value, value * relative(reading, distance, law, screens), origin(lamp, reading),
                trail(reading, distance, law, screens));
    }

    private static Origin origin(Lamp lamp, LampReading reading) {
        Method method = reading.instrument() == Instrument.LAMP_CHART ? Method.MODELLED : Method.COMPUTED;
        return new Origin(method, lamp.subject().key(), Readings.text(reading.on()));
    }

    /** Relative standard uncertainty by the law of propagation (JCGM 100:2008, 5.1.2): a distance counts with the local exponent. */
    private static double relative(LampReading reading, RestingPlaces.Distance distance, Law law, List<Screen> screens) {
        Stream<Double> parts = Stream.of(share(reading.index().standardUncertainty(), reading.index().value()),
                law.exponentAtReading * share(reading.distance().standardUncertainty(), reading.distance().value()),
                law.exponentAtRest * share(distance.uncertainty(), distance.centimetres()));
        Stream<Double> passed = screens.stream().map(screen -> share(screen.shareUncertainty(), screen.share()));
        return Conformance.combine(Stream.concat(parts, passed).mapToDouble(Double::doubleValue).toArray());
    }

    private static double share(double uncertainty, double value) {
        return value == 0 ? 0 : uncertainty / value;
    }

    private static List<Step> trail(LampReading reading, RestingPlaces.Distance distance, Law law, List<Screen> screens) {
        List<Step> trail = new ArrayList<>();
        trail.add(Step.of("from-lamp-reading", reading.index().amount(), reading.distance().amount()));
        trail.add(Step.of(law.step, new Amount(distance.centimetres(), Unit.CENTIMETRE)));
        trail.add(distance.step());
        for (Screen screen : screens) {
            trail.add(Step.of("through-screen", screen.kind(), new Amount(Unit.FRACTION.convert(screen.share(), Unit.PERCENT), Unit.PERCENT)));
        }
        return trail;
    }

    /**
     * How the index changes from one distance to another.
     *
     * @param scale             index there over index here
     * @param exponentAtReading n in E ~ D^-n at the reading's distance
     * @param exponentAtRest    n at the resting place's distance
     */
    private record Law(double scale, double exponentAtReading, double exponentAtRest, String step) {
        static Law of(Lamp lamp, double fromCentimetres, double toCentimetres) {
            double from = fromCentimetres / CENTIMETRES_PER_METRE;
            double to = toCentimetres / CENTIMETRES_PER_METRE;
            if (lamp.kind() != LampKind.UV_TUBE) {
                return new Law(LightField.pointScale(from, to), LightField.POINT_EXPONENT, LightField.POINT_EXPONENT, "inverse-square");
            }
            double arc = lamp.arcLength().value() / CENTIMETRES_PER_METRE;
            return new Law(LightField.tubeScale(from, to, arc), LightField.localExponent(from, arc), LightField.localExponent(to, arc),
                    "finite-line");
        }
    }
}
