package org.loamlight.derivation;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.loamlight.physics.Box;
import org.loamlight.physics.Conformance;
import org.loamlight.physics.Point;
import org.loamlight.quantity.Amount;
import org.loamlight.quantity.Method;
import org.loamlight.quantity.Origin;
import org.loamlight.quantity.Place;
import org.loamlight.quantity.Quantity;
import org.loamlight.quantity.Step;
import org.loamlight.quantity.Topic;
import org.loamlight.quantity.Unit;
import org.loamlight.setup.Lamp;
import org.loamlight.setup.LampKind;
import org.loamlight.setup.Setup;
import org.loamlight.setup.Stated;
import org.loamlight.setup.Subject;

/**
 * UV index at the resting place of each lamp that gets the most of it: by the inverse square for a bulb, by Keitz' finite line for a
 * tube, from its own readings, times what lies between, together with what other lamps of known place add there. A
 * reflector is in neither law, so far from the readings' own distances the result says little; its uncertainty holds
 * the distances, the readings and the screens, not the law.
 */
final class UvAtRest {
    private final Setup setup;
    private final UvLamps lamps;
    private final RestingPlaces rest;
    private final SolidPieces solid;
    private final Wanted wanted;

    UvAtRest(Setup setup, UvLamps lamps, SolidPieces solid, Wanted wanted) {
        this.setup = setup;
        this.wanted = wanted;
        this.lamps = lamps;
        this.rest = new RestingPlaces(setup);
        this.solid = solid;
    }

    List<Quantity> quantities() {
        List<Quantity> quantities = new ArrayList<>();
        for (Lamp lamp : lamps.all()) {
            List<RestingPlaces.Distance> near = rest.near(lamp);
            RestingPlaces.closest(near).ifPresent(distance -> quantities.add(distance(lamp, distance)));
            quantities.addAll(light(lamp, near));
        }
        if (noUvLamp()) {
            quantities.add(none(Place.ANYWHERE, Subject.ENCLOSURE.key(), "no-uv-lamp"));
        }
        return quantities;
    }

    private boolean noUvLamp() {
        return setup.told().has("lamps", Subject.ENCLOSURE) && setup.lamps().stream().allMatch(lamp -> lamp.givesUv() == Stated.NO)
                && !lamps.isBesideUnreadHeater();
    }

    private static Quantity none(Place place, String source, String why) {
        return new Quantity(Topic.UV_INDEX, place, 0, 0, new Origin(Method.SEEN, source, ""), List.of(Step.of(why)));
    }

    private static Quantity distance(Lamp lamp, RestingPlaces.Distance distance) {
        return new Quantity(Topic.LAMP_DISTANCE, place(lamp), distance.centimetres(), distance.uncertainty(),
                new Origin(distance.isMeasured() ? Method.MEASURED : Method.COMPUTED, lamp.subject().key(), ""), List.of(distance.step()));
    }

    private static Place place(Lamp lamp) {
        return Place.at(lamp.subject().key());
    }

    private List<Quantity> light(Lamp lamp, List<RestingPlaces.Distance> near) {
        Optional<LampOutput> output = lamps.output(lamp).or(() -> TypicalUv.of(lamp));
        Optional<Lit> lit = output.flatMap(known -> brightest(near, under(lamp, known)));
        if (lit.isEmpty() && output.isPresent() && output.get().equals(LampOutput.NONE)) {
            return List.of(none(place(lamp), lamp.subject().key(), "uv-blocked"));
        }
        return lit.map(one -> one.quantities(wanted)).orElse(List.of());
    }

    /** Of the resting places near a lamp the one that gets the most; empty when none is known. */
    private static Optional<Lit> brightest(List<RestingPlaces.Distance> near, UnderLamp under) {
        double closest = RestingPlaces.closest(near).map(RestingPlaces.Distance::centimetres).orElse(0.0);
        return near.stream().max(Comparator.comparingDouble(under::value))
                .map(place -> under.at(place.centimetres() > closest ? place.asBrightest() : place));
    }

    private UnderLamp under(Lamp lamp, LampOutput output) {
        Optional<HungLamp> hung = lamps.hung(lamp);
        HungLamp own = hung.map(HungLamp::placedExactly)
                .orElse(new HungLamp(lamp, output, Metres.ZERO, Optional.empty(), Metres.ZERO));
        List<HungLamp> others = hung.map(here -> lamps.hung().stream().filter(other -> !other.lamp().equals(lamp))
                .map(other -> other.seenFrom(here)).toList()).orElse(List.of());
        Stream<Lamp> left = Stream.concat(lamps.leftOut().stream(), hung.isPresent() ? Stream.empty() : lamps.hung().stream().map(HungLamp::lamp));
        return new UnderLamp(own, others, left.filter(other -> !other.equals(lamp)).map(Lamp::name).toList(), solid);
    }

    /**
     * A lamp with the others whose place is known.
     *
     * @param left names of those that are left out
     */
    private record UnderLamp(HungLamp own, List<HungLamp> others, List<String> left, SolidPieces solid) {
        Lit at(RestingPlaces.Distance distance) {
            UvIndex.Where where = where(distance);
            return new Lit(this, distance, where.point(), UvIndex.at(where, List.of(own), between(distance)),
                    UvIndex.at(where, others, solid.besides(where.point())));
        }

        double value(RestingPlaces.Distance distance) {
            UvIndex.Where where = where(distance);
            return UvIndex.value(where, List.of(own), between(distance)) + UvIndex.value(where, others, solid.besides(where.point()));
        }

        /** What may stand between; what was measured straight from the lamp has nothing solid in between. */
        private Collection<Box> between(RestingPlaces.Distance distance) {
            return distance.isMeasured() ? List.of() : solid.besides(where(distance).point());
        }

        UvIndex.Where where(RestingPlaces.Distance distance) {
            double uncertainty = Metres.fromCentimetres(distance.uncertainty());
            Metres along = new Metres(own.along().value() + Metres.fromCentimetres(distance.along()), distance.along() == 0 ? 0 : uncertainty);
            return new UvIndex.Where(along, own.across(), new Metres(own.above().value() - Metres.fromCentimetres(distance.below()), uncertainty));
        }
    }

    /** What a resting place gets, from its own lamp and added by the others. */
    private record Lit(UnderLamp under, RestingPlaces.Distance distance, Point place, UvIndex own, UvIndex added) {
        List<Quantity> quantities(Wanted wanted) {
            List<Quantity> quantities = new ArrayList<>();
            quantities.add(index());
            quantities.addAll(new LampHeights(under.own, place, added.value()).quantities(wanted));
            return quantities;
        }

        private Quantity index() {
            LampOutput output = under.own.output();
            String source = under.own.lamp().subject().key();
            return new Quantity(Topic.UV_INDEX, Place.at(source), own.value() + added.value(),
                    Conformance.combine(own.uncertainty(), added.uncertainty()), new Origin(method(), source, output.on()), trail());
        }

        /** The weakest of the methods it rests on. */
        private Method method() {
            Method own = under.own.output().method();
            Stream<Method> others = under.others.stream().map(other -> other.output().method());
            return added.value() == 0 ? own : others.reduce(own, (one, other) -> one.compareTo(other) > 0 ? one : other);
        }

        private List<Step> trail() {
            LampOutput output = under.own.output();
            List<Step> trail = new ArrayList<>(output.readings());
            trail.add(Step.of(under.own.lamp().kind() == LampKind.UV_TUBE ? "finite-line" : "inverse-square",
                    new Amount(distance.centimetres(), Unit.CENTIMETRE)));
            trail.add(distance.step());
            trail.addAll(output.screens());
            if (added.value() > 0) {
                trail.add(Step.of("other-lamps-add", new Amount(added.value(), Unit.UV_INDEX)));
            }
            under.left.forEach(name -> trail.add(Step.of("other-lamp-left-out", name)));
            return trail;
        }
    }
}
