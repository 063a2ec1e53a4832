package org.loamlight.derivation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.loamlight.physics.CoiledBody;
import org.loamlight.physics.Conformance;
import org.loamlight.quantity.Amount;
import org.loamlight.quantity.Method;
import org.loamlight.quantity.Origin;
import org.loamlight.quantity.Place;
import org.loamlight.quantity.Quantity;
import org.loamlight.quantity.Step;
import org.loamlight.quantity.Topic;
import org.loamlight.quantity.Unit;
import org.loamlight.setup.Animal;
import org.loamlight.setup.Furnishing;
import org.loamlight.setup.Heater;
import org.loamlight.setup.Measure;
import org.loamlight.setup.Setup;
import org.loamlight.setup.Stated;
import org.loamlight.setup.Subject;

/**
 * Hides and warm patches against the largest animal lying coiled. The body is that of a snake; profiles of other animals set no
 * limits for these topics. The ground the animal covers is that of {@link CoiledBody}.
 */
final class Resting {
    private static final double SQUARE_CENTIMETRES_PER_SQUARE_METRE = 10_000;
    private static final double GRAMS_PER_KILOGRAM = 1000;
    /** A round patch told by its two widths covers this share of their product. */
    private static final double ELLIPSE = StrictMath.PI / 4;
    /** How far the area of the coil may be off for the animal at hand (±, relatively): judgement, about its packing and its taper. */
    static final double COIL_HALF_WIDTH = 0.2;

    private final Setup setup;
    private final Optional<Coil> coil;

    Resting(Setup setup) {
        this.setup = setup;
        this.coil = largest(setup);
    }

    /** @param relative standard uncertainty of the area over the area */
    private record Coil(String animal, double squareCentimetres, double relative) {

        static Coil of(Animal animal) {
            double area = CoiledBody.coilSquareMetres(Metres.fromCentimetres(animal.length().value()),
                    animal.mass().value() / GRAMS_PER_KILOGRAM) * SQUARE_CENTIMETRES_PER_SQUARE_METRE;
            // The area goes with the root of length times mass.
            double relative = Conformance.combine(Resting.relative(animal.length()) / 2, Resting.relative(animal.mass()) / 2,
                    Conformance.fromHalfWidth(COIL_HALF_WIDTH));
            return new Coil(animal.name(), area, relative);
        }

        Step step() {
            return Step.of("coiled-animal", animal, new Amount(squareCentimetres, Unit.SQUARE_CENTIMETRE));
        }
    }

    /** Empty when length or mass of one animal is not told: it might be the largest. */
    private static Optional<Coil> largest(Setup setup) {
        return setup.animals().stream().allMatch(animal -> animal.length().isKnown() && animal.mass().isKnown())
                ? setup.animals().stream().map(Coil::of).max(Comparator.comparingDouble(Coil::squareCentimetres)) : Optional.empty();
    }

    List<Quantity> quantities() {
        List<Quantity> quantities = new ArrayList<>();
        for (Furnishing hide : setup.furnishings()) {
            if (hide.hide() == Stated.YES) {
                coil.flatMap(animal -> room(hide, animal)).ifPresent(quantities::add);
                entrance(hide).ifPresent(quantities::add);
            }
        }
        patch().ifPresent(quantities::add);
        return quantities;
    }

    private static Optional<Quantity> room(Furnishing hide, Coil coil) {
        return hide.insideLength().isKnown() && hide.insideWidth().isKnown()
                ? Optional.of(ofCoil(Topic.HIDE_ROOM, Place.at(hide.subject().key()), new Patch(hide.subject().key(), hide.insideLength(),
                        hide.insideWidth(), 1, Step.of("inner-floor", hide.insideLength().amount(), hide.insideWidth().amount())), coil))
                : Optional.empty();
    }

    private static Optional<Quantity> entrance(Furnishing hide) {
        String key = hide.subject().key();
        return hide.entrance().isKnown() ? Optional.of(new Quantity(Topic.HIDE_ENTRANCE, Place.at(key), hide.entrance().value(),
                hide.entrance().standardUncertainty(), new Origin(Method.MEASURED, key, ""), List.of())) : Optional.empty();
    }

    /** A piece of ground told by its length and width; @param share of their product that it covers. */
    private record Patch(String source, Measure length, Measure width, double share, Step step) {

        double squareCentimetres() {
            return length.value() * width.value() * share;
        }

        double relative() {
            return Conformance.combine(Resting.relative(length), Resting.relative(width));
        }
    }

    private static Quantity ofCoil(Topic topic, Place place, Patch patch, Coil coil) {
        double percent = Moisture.percent(patch.squareCentimetres() / coil.squareCentimetres);
        return new Quantity(topic, place, percent, percent * Conformance.combine(patch.relative(), coil.relative),
                new Origin(Method.COMPUTED, patch.source, ""), List.of(patch.step, coil.step()));
    }

    /** The largest of the patches told; none at all, where it is told that there is no heater, is a patch of 0. */
    private Optional<Quantity> patch() {
        if (setup.heaters().isEmpty() && setup.told().has("heaters", Subject.ENCLOSURE)) {
            return Optional.of(new Quantity(Topic.BASKING_PATCH, Place.ANYWHERE, 0, 0,
                    new Origin(Method.SEEN, Subject.ENCLOSURE.key(), ""), List.of(Step.of("no-heater"))));
        }
        return setup.heaters().stream().filter(heater -> heater.warms().isKnown() && heater.warmsAcross().isKnown()).map(Resting::patch)
                .max(Comparator.comparingDouble(Patch::squareCentimetres))
                .flatMap(patch -> coil.map(animal -> ofCoil(Topic.BASKING_PATCH, Place.ANYWHERE, patch, animal)));
    }

    /** What an animal lies on warms a patch of its own shape, which is square; what shines from above warms a round one. */
    private static Patch patch(Heater heater) {
        return new Patch(heater.subject().key(), heater.warms(), heater.warmsAcross(), heater.contact() == Stated.YES ? 1 : ELLIPSE,
                Step.of("warm-patch", heater.name(), heater.warms().amount(), heater.warmsAcross().amount()));
    }

    private static double relative(Measure measure) {
        return measure.value() == 0 ? 0 : measure.standardUncertainty() / measure.value();
    }
}
