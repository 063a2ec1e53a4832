package org.loamlight.derivation;

import java.util.ArrayList;
import java.util.List;
import org.loamlight.physics.Conformance;
import org.loamlight.quantity.Method;
import org.loamlight.quantity.Origin;
import org.loamlight.quantity.Place;
import org.loamlight.quantity.Quantity;
import org.loamlight.quantity.Step;
import org.loamlight.quantity.Topic;
import org.loamlight.quantity.Unit;
import org.loamlight.setup.Animal;
import org.loamlight.setup.Enclosure;
import org.loamlight.setup.Measure;
import org.loamlight.setup.Setup;
import org.loamlight.setup.Sex;
import org.loamlight.setup.Stage;
import org.loamlight.setup.Subject;

/** The inside of the enclosure, and how many share it. What only codes ask for is computed only where one asks. */
final class Sizes {
    private static final Origin TAPE = new Origin(Method.MEASURED, Subject.ENCLOSURE.key(), "");
    private static final Origin COMPUTED = new Origin(Method.COMPUTED, Subject.ENCLOSURE.key(), "");
    private static final Origin COUNTED = new Origin(Method.STATED, "animals", "");

    private final Setup setup;
    private final Enclosure enclosure;
    private final Wanted wanted;

    Sizes(Setup setup, Wanted wanted) {
        this.setup = setup;
        this.enclosure = setup.enclosure();
        this.wanted = wanted;
    }

    List<Quantity> quantities() {
        List<Quantity> sizes = new ArrayList<>();
        read(Topic.INSIDE_LENGTH, enclosure.length(), TAPE, sizes);
        read(Topic.INSIDE_DEPTH, enclosure.depth(), TAPE, sizes);
        read(Topic.INSIDE_HEIGHT, enclosure.height(), TAPE, sizes);
        setup.substrate().ifPresent(substrate -> read(Topic.SUBSTRATE_DEPTH, substrate.depth(), new Origin(Method.MEASURED, "substrate", ""), sizes));
        product(Topic.FLOOR_AREA, Unit.SQUARE_CENTIMETRE, "length-times-depth", List.of(enclosure.length(), enclosure.depth()), sizes);
        if (wanted.asks(Topic.INSIDE_VOLUME)) {
            product(Topic.INSIDE_VOLUME, Unit.MILLILITRE, "length-times-depth-times-height",
                    List.of(enclosure.length(), enclosure.depth(), enclosure.height()), sizes);
        }
        if (enclosure.length().isKnown() && enclosure.depth().isKnown()) {
            around(sizes);
        }
        counts(sizes);
        return sizes;
    }

    private static void read(Topic topic, Measure measure, Origin origin, List<Quantity> sizes) {
        if (measure.isKnown()) {
            sizes.add(new Quantity(topic, Place.ANYWHERE, measure.value(), measure.standardUncertainty(), origin, List.of()));
        }
    }

    private static void product(Topic topic, Unit unit, String step, List<Measure> sides, List<Quantity> sizes) {
        if (sides.stream().allMatch(Measure::isKnown)) {
            double value = unit.convert(sides.stream().mapToDouble(Measure::value).reduce(1, (one, other) -> one * other), topic.unit());
            double relative = sides.stream().mapToDouble(side -> side.standardUncertainty() / side.value()).reduce(0, Conformance::combine);
            sizes.add(new Quantity(topic, Place.ANYWHERE, value, value * relative, COMPUTED,
                    List.of(Step.of(step, sides.stream().map(Measure::amount).toArray()))));
        }
    }

    private void around(List<Quantity> sizes) {
        Measure length = enclosure.length();
        Measure depth = enclosure.depth();
        Step step = Step.of("around-length-and-depth", length.amount(), depth.amount());
        if (wanted.asks(Topic.INSIDE_PERIMETER)) {
            double uncertainty = 2 * Conformance.combine(length.standardUncertainty(), depth.standardUncertainty());
            sizes.add(new Quantity(Topic.INSIDE_PERIMETER, Place.ANYWHERE, 2 * (length.value() + depth.value()), uncertainty, COMPUTED, List.of(step)));
        }
        if (wanted.asks(Topic.SHORTER_SIDE)) {
            read(Topic.SHORTER_SIDE, length.value() < depth.value() ? length : depth, TAPE, sizes);
        }
    }

    /** Nobody can say how many adult males there are while the stage or sex of one animal is not known. */
    private void counts(List<Quantity> sizes) {
        if (wanted.asks(Topic.ANIMALS_TOGETHER)) {
            count(Topic.ANIMALS_TOGETHER, setup.animals().size(), sizes);
        }
        boolean told = setup.animals().stream().allMatch(animal -> isSurelyNoAdultMale(animal) || isAdultMale(animal));
        if (wanted.asks(Topic.ADULT_MALES_TOGETHER) && told) {
            count(Topic.ADULT_MALES_TOGETHER, setup.animals().stream().filter(Sizes::isAdultMale).count(), sizes);
        }
    }

    private static void count(Topic topic, long number, List<Quantity> sizes) {
        sizes.add(new Quantity(topic, Place.ANYWHERE, number, 0, COUNTED, List.of()));
    }

    private static boolean isAdultMale(Animal animal) {
        return animal.stage() == Stage.ADULT && animal.sex() == Sex.MALE;
    }

    private static boolean isSurelyNoAdultMale(Animal animal) {
        return animal.stage() != Stage.ADULT && animal.stage() != Stage.UNKNOWN || animal.sex() == Sex.FEMALE;
    }
}
