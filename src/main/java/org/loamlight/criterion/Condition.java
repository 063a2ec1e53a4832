package org.loamlight.criterion;

import java.util.EnumSet;
import java.util.Set;
import java.util.function.BiPredicate;
import org.loamlight.setup.Furnishing;
import org.loamlight.setup.Heater;
import org.loamlight.setup.Lamp;
import org.loamlight.setup.Mount;
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
    HOT_HEATER((species, thing) -> !(thing instanceof Heater heater) || heater.hot() != Stated.NO),
    UV_LAMP((species, thing) -> !(thing instanceof Lamp lamp) || lamp.givesUv() != Stated.NO),
    /** A hot heater in the enclosure with nothing to keep the animal off. */
    UNGUARDED_HEATER((species, thing) -> !(thing instanceof Heater heater)
            || heater.hot() != Stated.NO && heater.mounted() != Mount.OUTSIDE && heater.guard() != Stated.YES),
    /** A heater the animal lies on or over, or can touch. */
    TOUCHABLE_HEATER((species, thing) -> !(thing instanceof Heater heater)
            || heater.contact() != Stated.NO || heater.reachable() != Stated.NO && heater.guard() != Stated.YES),
    CLOSED_HIDE((species, thing) -> !(thing instanceof Furnishing piece) || piece.hide() != Stated.NO),
    STAND_RATED((species, thing) -> !(thing instanceof Setup setup) || setup.enclosure().build().carries().isKnown()),
    OUTLET_RATED((species, thing) -> !(thing instanceof Setup setup) || setup.electrical().outlet().isKnown()),
    TARIFF_TOLD((species, thing) -> !(thing instanceof Setup setup) || setup.electrical().tariff().isKnown());

    private static final Set<Condition> ABOUT_THINGS = EnumSet.range(HOT_HEATER, TARIFF_TOLD);

    private final BiPredicate<Species, Object> test;

    Condition(BiPredicate<Species, Object> test) {
        this.test = test;
    }

    /** Whether it asks for a trait of the thing or the setup the criterion is applied to, and not for a habit of the species. */
    public boolean isAboutThing() {
        return ABOUT_THINGS.contains(this);
    }

    /** Whether the condition is met, or may be, for a species, whatever the thing the criterion is applied to. */
    public boolean mayHold(Species species) {
        return test.test(species, species);
    }

    /** Whether the condition is met, or may be, for a subject and one species kept there. */
    public boolean mayHold(Species species, Subject subject, Setup setup) {
        return test.test(species, thing(subject, setup));
    }

    private static Object thing(Subject subject, Setup setup) {
        return switch (subject.kind()) {
            case HEATER -> setup.heaters().stream().filter(one -> one.subject().equals(subject)).findFirst().orElseThrow();
            case LAMP -> setup.lamps().stream().filter(one -> one.subject().equals(subject)).findFirst().orElseThrow();
            case FURNISHING -> setup.furnishings().stream().filter(one -> one.subject().equals(subject)).findFirst().orElseThrow();
            case ENCLOSURE -> setup;
            default -> subject;
        };
    }
}
