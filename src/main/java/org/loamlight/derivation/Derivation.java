package org.loamlight.derivation;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.loamlight.quantity.Method;
import org.loamlight.quantity.Origin;
import org.loamlight.quantity.Place;
import org.loamlight.quantity.Quantity;
import org.loamlight.quantity.Topic;
import org.loamlight.setup.Furnishing;
import org.loamlight.setup.Measure;
import org.loamlight.setup.Opening;
import org.loamlight.setup.Setup;
import org.loamlight.setup.Subject;

/** Brings what a setup tells to quantities. What is not told makes no quantity. */
public final class Derivation {
    private final Setup setup;

    private Derivation(Setup setup) {
        this.setup = setup;
    }

    /**
     * Every quantity the setup gives, in a fixed order; empty when it tells nothing measurable.
     *
     * @param on     day of the audit
     * @param wanted what the animals want, for values computed towards a limit
     */
    public static List<Quantity> quantities(Setup setup, Axis axis, LocalDate on, Wanted wanted) {
        Layout layout = Layout.of(setup, axis);
        Derivation plain = new Derivation(setup);
        List<Quantity> read = new Readings(setup, layout).quantities();
        return Stream.of(plain.sizes(), plain.care(), plain.masses(), plain.gaps(), new Cover(setup, layout).quantities(), read,
                new UvAtRest(setup).quantities(), new Ultraviolet(setup, layout, wanted).quantities(),
                new Climate(setup, wanted, read).quantities(), new Moisture(setup, layout, read).quantities(),
                new Loads(setup).quantities(), new Plan(setup).quantities(), new Resting(setup).quantities(),
                new Heaters(setup).quantities(), new Feeding(setup, read).quantities(), new DayAndNight(setup, on).quantities(),
                new Power(setup).quantities()).flatMap(List::stream).toList();
    }

    private List<Quantity> sizes() {
        List<Quantity> sizes = new ArrayList<>();
        Origin tape = new Origin(Method.MEASURED, Subject.ENCLOSURE.key(), "");
        add(sizes, Topic.INSIDE_LENGTH, Place.ANYWHERE, setup.enclosure().length(), tape);
        add(sizes, Topic.INSIDE_DEPTH, Place.ANYWHERE, setup.enclosure().depth(), tape);
        add(sizes, Topic.INSIDE_HEIGHT, Place.ANYWHERE, setup.enclosure().height(), tape);
        setup.substrate().ifPresent(substrate -> add(sizes, Topic.SUBSTRATE_DEPTH, Place.ANYWHERE, substrate.depth(),
                new Origin(Method.MEASURED, "substrate", "")));
        return sizes;
    }

    private List<Quantity> care() {
        List<Quantity> care = new ArrayList<>();
        add(care, Topic.WATER_CHANGE_INTERVAL, Place.ANYWHERE, setup.care().waterChange(), new Origin(Method.STATED, "care", ""));
        return care;
    }

    private List<Quantity> masses() {
        List<Quantity> masses = new ArrayList<>();
        for (Furnishing piece : setup.furnishings()) {
            String key = piece.subject().key();
            add(masses, Topic.FURNISHING_MASS, Place.at(key), piece.mass(), new Origin(Method.MEASURED, key, ""));
        }
        return masses;
    }

    private List<Quantity> gaps() {
        List<Quantity> gaps = new ArrayList<>();
        for (Opening opening : setup.enclosure().openings()) {
            String key = opening.subject().key();
            add(gaps, Topic.OPENING_GAP, Place.at(key), opening.gap(), new Origin(Method.MEASURED, key, ""));
        }
        return gaps;
    }

    private static void add(List<Quantity> quantities, Topic topic, Place place, Measure measure, Origin origin) {
        if (measure.isKnown()) {
            quantities.add(new Quantity(topic, place, measure.unit().convert(measure.value(), topic.unit()),
                    measure.unit().convertDifference(measure.standardUncertainty(), topic.unit()), origin, List.of()));
        }
    }
}
