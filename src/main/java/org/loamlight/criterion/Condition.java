package org.loamlight.criterion;

import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.NoSuchElementException;
import java.util.Set;
import java.util.function.BiPredicate;
import java.util.function.Function;
import org.loamlight.setup.Animal;
import org.loamlight.setup.Furnishing;
import org.loamlight.setup.Heater;
import org.loamlight.setup.HeaterKind;
import org.loamlight.setup.Lamp;
import org.loamlight.setup.Mount;
import org.loamlight.setup.Opening;
import org.loamlight.setup.Setup;
import org.loamlight.setup.Stated;
import org.loamlight.setup.Subject;

/**
 * What front matter can name under {@code applies-when}. A condition that cannot be told counts as met: then the missing
 * answer becomes the finding.
 */
public enum Condition {
    DIGS((species, thing) -> species.digs() != Stated.NO),
    CLIMBS((species, thing) -> species.climbs() != Stated.NO),
    USES_UV((species, thing) -> species.uv() != UvUse.WITHOUT),
    SNAKE((species, thing) -> species.form() == Form.SNAKE),
    LIZARD((species, thing) -> species.form() == Form.LIZARD),
    TORTOISE((species, thing) -> species.form() == Form.TORTOISE),
    NEEDS_UV((species, thing) -> species.uv() == UvUse.NEEDS),
    BASKS((species, thing) -> species.basks() != Stated.NO),
    SOAKS((species, thing) -> species.soaks() != Stated.NO),
    EATS_WHOLE_PREY((species, thing) -> species.eats() == Eats.WHOLE_PREY),
    EATS_INSECTS((species, thing) -> species.eats() == Eats.INSECTS || species.eats() == Eats.INSECTS_AND_PLANTS),
    EATS_PLANTS((species, thing) -> species.eats() == Eats.PLANTS || species.eats() == Eats.INSECTS_AND_PLANTS),
    LAYS_EGGS((species, thing) -> species.laysEggs() != Stated.NO),
    RESTS_IN_WINTER((species, thing) -> species.restsInWinter() != Stated.NO),
    DRINKS_DROPS((species, thing) -> species.drinks() == Drinks.FROM_DROPS),
    DANGEROUS((species, thing) -> species.dangerous() != Stated.NO),
    RESTRICTED((species, thing) -> species.restricted() != Stated.NO),
    SPECIALIST((species, thing) -> species.specialist() != Stated.NO),
    HOT_HEATER((species, thing) -> !(thing instanceof Heater heater) || heater.hot() != Stated.NO),
    /** A lamp that gives ultraviolet; of the enclosure, that there is one. */
    UV_LAMP((species, thing) -> thing instanceof Lamp lamp ? lamp.givesUv() != Stated.NO : !(thing instanceof Setup setup) || mayHaveUvLamp(setup)),
    /** A hot heater in the enclosure with nothing to keep the animal off. */
    UNGUARDED_HEATER((species, thing) -> !(thing instanceof Heater heater)
            || heater.hot() != Stated.NO && heater.mounted() != Mount.OUTSIDE && heater.guard() != Stated.YES),
    /** A heater the animal lies on or over, or can touch. */
    TOUCHABLE_HEATER((species, thing) -> !(thing instanceof Heater heater)
            || heater.contact() != Stated.NO || heater.reachable() != Stated.NO && heater.guard() != Stated.YES),
    CLOSED_HIDE((species, thing) -> !(thing instanceof Furnishing piece) || piece.hide() != Stated.NO),
    BULB_IN_A_HOLDER((species, thing) -> !(thing instanceof Heater heater) || heater.hasBulb() != Stated.NO),
    /** A lamp for light or ultraviolet that is a bulb in a holder. */
    BULB_LAMP((species, thing) -> !(thing instanceof Lamp lamp) || lamp.hasBulb() != Stated.NO),
    CONTACT_HEATER((species, thing) -> !(thing instanceof Heater heater) || heater.contact() != Stated.NO),
    DOOR_OR_LID((species, thing) -> !(thing instanceof Opening opening) || opening.isDoor() != Stated.NO),
    SEVERAL_ANIMALS((species, thing) -> !(thing instanceof Setup setup) || setup.animals().size() > 1),
    /** Something is plugged in at the enclosure. */
    PLUGGED_IN((species, thing) -> !(thing instanceof Setup setup) || mayHave(setup, "heaters", setup.heaters()) || mayHave(setup, "lamps", setup.lamps())),
    HEATED((species, thing) -> !(thing instanceof Setup setup) || mayHave(setup, "heaters", setup.heaters())),
    /** An animal is yet to move in, or moved in of late. */
    NEWCOMER((species, thing) -> !(thing instanceof Setup setup) || setup.animals().stream().anyMatch(animal -> isNew(animal, setup))),
    STAND_RATED((species, thing) -> !(thing instanceof Setup setup) || setup.enclosure().build().carries().isKnown()),
    OUTLET_RATED((species, thing) -> !(thing instanceof Setup setup) || setup.electrical().outlet().isKnown()),
    TARIFF_TOLD((species, thing) -> !(thing instanceof Setup setup) || setup.electrical().tariff().isKnown());

    /** How long an animal counts as new. Judgement: three meals, a week or more apart. */
    private static final int DAYS_TO_SETTLE = 30;
    private static final Set<Condition> ABOUT_THINGS = EnumSet.range(HOT_HEATER, TARIFF_TOLD);

    private final BiPredicate<Species, Object> test;
    private final String id = name().toLowerCase(Locale.ROOT).replace('_', '-');

    Condition(BiPredicate<Species, Object> test) {
        this.test = test;
    }

    /** The name in sentence keys, for example {@code uses-uv}. */
    public String id() {
        return id;
    }

    private static boolean mayHave(Setup setup, String section, List<?> things) {
        return setup.told().answer(section).isEmpty() || !things.isEmpty();
    }

    /** Without the day of the audit nobody can tell how long it has lived here. */
    private static boolean isNew(Animal animal, Setup setup) {
        return animal.since().isEmpty() || setup.on().isEmpty() || animal.since().get().isAfter(setup.on().get().minusDays(DAYS_TO_SETTLE));
    }

    private static boolean mayHaveUvLamp(Setup setup) {
        return setup.told().answer("lamps").isEmpty() || setup.lamps().stream().anyMatch(lamp -> lamp.givesUv() != Stated.NO)
                || setup.heaters().stream().anyMatch(heater -> heater.kind() == HeaterKind.MERCURY_VAPOUR_LAMP);
    }

    /** Whether it asks for a trait of the thing or the setup the criterion is applied to, and not for a habit of the species. */
    public boolean isAboutThing() {
        return ABOUT_THINGS.contains(this);
    }

    /** Whether the condition is met, or may be, for a species, whatever the thing the criterion is applied to. */
    public boolean mayHold(Species species) {
        return test.test(species, species);
    }

    /**
     * Whether the condition is met, or may be, for a subject and one species kept there.
     *
     * @param thing what {@link #thing} gives for the subject
     */
    public boolean mayHold(Species species, Object thing) {
        return test.test(species, thing);
    }

    /** What conditions about things look at for a subject: the thing itself; the setup for the enclosure. */
    public static Object thing(Subject subject, Setup setup) {
        return switch (subject.kind()) {
            case HEATER -> named(setup.heaters(), Heater::name, subject);
            case LAMP -> named(setup.lamps(), Lamp::name, subject);
            case OPENING -> named(setup.enclosure().openings(), Opening::name, subject);
            case FURNISHING -> named(setup.furnishings(), Furnishing::name, subject);
            case ENCLOSURE -> setup;
            default -> subject;
        };
    }

    private static <T> T named(List<T> things, Function<T, String> name, Subject subject) {
        for (T thing : things) {
            if (name.apply(thing).equals(subject.name())) {
                return thing;
            }
        }
        throw new NoSuchElementException("There is no " + subject.key());
    }
}
