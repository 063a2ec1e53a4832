package org.loamlight.derivation;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.loamlight.quantity.Lacking;
import org.loamlight.quantity.Method;
import org.loamlight.quantity.Origin;
import org.loamlight.quantity.Place;
import org.loamlight.quantity.Quantity;
import org.loamlight.quantity.Topic;
import org.loamlight.setup.Animal;
import org.loamlight.setup.Furnishing;
import org.loamlight.setup.Heater;
import org.loamlight.setup.Lamp;
import org.loamlight.setup.LampReading;
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
        List<Quantity> climate = new Climate(setup, wanted, read).quantities();
        return Stream.of(new Sizes(setup, wanted).quantities(), plain.care(), plain.food(), plain.masses(), plain.gaps(), plain.clearances(), plain.ages(on), new Cover(setup, layout).quantities(), read,
                new Disagreements(setup).quantities(),
                new Ultraviolet(setup, layout, wanted).quantities(),
                climate, new Moisture(setup, layout, climate).quantities(),
                new Loads(setup).quantities(), new Plan(setup).quantities(), new Resting(setup).quantities(),
                new Heaters(setup).quantities(), new HeatUnderUv(setup).quantities(), new Feeding(setup, read).quantities(), new DayAndNight(setup, on).quantities(), new NightDrop(read, wanted).quantities(),
                new Power(setup).quantities()).flatMap(List::stream).toList();
    }

    /** What is lacking to tell quantities of some topics; empty where nothing is. Most topics have no such list: rules see what is not told. */
    public static List<Lacking> lacking(Setup setup, Axis axis) {
        return Stream.concat(new Unplaced(setup, Layout.of(setup, axis)).lacking().stream(), new HeatUnderUv(setup).lacking().stream()).toList();
    }

    private List<Quantity> care() {
        List<Quantity> care = new ArrayList<>();
        add(care, Topic.WATER_CHANGE_INTERVAL, Place.ANYWHERE, setup.care().waterChange(), new Origin(Method.STATED, "care", ""));
        add(care, Topic.SPOT_CLEAN_INTERVAL, Place.ANYWHERE, setup.hygiene().spotClean(), new Origin(Method.STATED, "hygiene", ""));
        add(care, Topic.SUBSTRATE_CHANGE_INTERVAL, Place.ANYWHERE, setup.hygiene().substrateChange(), new Origin(Method.STATED, "hygiene", ""));
        add(care, Topic.CHECK_INTERVAL, Place.ANYWHERE, setup.monitoring().check(), new Origin(Method.STATED, "monitoring", ""));
        add(care, Topic.RUN_IN, Place.ANYWHERE, setup.monitoring().runIn(), new Origin(Method.STATED, "monitoring", ""));
        add(care, Topic.TIME_KEPT_APART, Place.ANYWHERE, setup.quarantine().kept(), new Origin(Method.STATED, "quarantine", ""));
        add(care, Topic.WINTER_TEMPERATURE, Place.ANYWHERE, setup.season().rests(), new Origin(Method.MEASURED, "season", ""));
        add(care, Topic.WINTER_REST_LENGTH, Place.ANYWHERE, setup.season().lasts(), new Origin(Method.STATED, "season", ""));
        setup.water().ifPresent(water -> {
            add(care, Topic.WATER_DEPTH, Place.ANYWHERE, water.depth(), new Origin(Method.MEASURED, "water", ""));
            add(care, Topic.WATER_VOLUME, Place.ANYWHERE, water.volume(), new Origin(Method.STATED, "water", ""));
        });
        return care;
    }

    private List<Quantity> food() {
        List<Quantity> food = new ArrayList<>();
        for (Animal animal : setup.animals()) {
            String key = animal.subject().key();
            add(food, Topic.PREY_WIDTH, Place.at(key), animal.diet().thickest(), new Origin(Method.MEASURED, key, ""));
            add(food, Topic.PLANT_SHARE, Place.at(key), animal.diet().plants(), new Origin(Method.STATED, key, ""));
            add(food, Topic.CALCIUM_INTERVAL, Place.at(key), animal.diet().calcium(), new Origin(Method.STATED, key, ""));
            add(food, Topic.VITAMIN_D_INTERVAL, Place.at(key), animal.diet().vitaminD3(), new Origin(Method.STATED, key, ""));
        }
        return food;
    }

    private List<Quantity> clearances() {
        List<Quantity> clearances = new ArrayList<>();
        for (Heater heater : setup.heaters()) {
            String key = heater.subject().key();
            add(clearances, Topic.CLEARANCE, Place.at(key), heater.fixing().clearance(), new Origin(Method.MEASURED, key, ""));
        }
        return clearances;
    }

    private List<Quantity> ages(LocalDate on) {
        List<Quantity> ages = new ArrayList<>();
        setup.lamps().forEach(lamp -> lamp.fittedOn().ifPresent(day -> ages.add(age(Topic.LAMP_AGE, lamp.subject(), day, on))));
        setup.lamps().forEach(lamp -> lastMeasured(lamp).ifPresent(day -> ages.add(age(Topic.READING_AGE, lamp.subject(), day, on))));
        setup.readings().forEach(reading -> reading.on().ifPresent(day -> ages.add(age(Topic.READING_AGE, reading.subject(), day, on))));
        return ages;
    }

    /** Day a meter was last held under a lamp; empty when none was, or nobody noted the day. */
    private static Optional<LocalDate> lastMeasured(Lamp lamp) {
        return lamp.readings().stream().filter(LampReading::isMeasured).map(LampReading::on).flatMap(Optional::stream).max(Comparator.naturalOrder());
    }

    /** In whole days; 0 for what is dated after the audit. */
    private static Quantity age(Topic topic, Subject subject, LocalDate since, LocalDate on) {
        return new Quantity(topic, Place.at(subject.key()), Math.max(0, ChronoUnit.DAYS.between(since, on)), 0,
                new Origin(Method.STATED, subject.key(), since.toString()), List.of());
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
