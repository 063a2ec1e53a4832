package org.loamlight.setup;

import java.time.LocalDate;
import java.util.Optional;
import java.util.Set;

/**
 * How the animal is, as its keeper sees it.
 *
 * @param signs        seen signs of something wrong; empty when there are none or nobody looked
 * @param behaviour    what it does again and again; empty when there is none or nobody looked
 * @param gravid       whether it carries eggs or young
 * @param littlePigment whether it lacks pigment in skin or eyes, so that light harms it sooner
 * @param shed         how the last shed came off
 * @param lastMeal     day of the last meal eaten; empty when not told
 * @param lastShed     day of the last shed; empty when not told
 */
public record Health(BodyCondition condition, Set<Sign> signs, Set<Behaviour> behaviour, Stated gravid, Stated littlePigment, Shed shed,
        Optional<LocalDate> lastMeal, Optional<LocalDate> lastShed) {
    public Health {
        signs = Set.copyOf(signs);
        behaviour = Set.copyOf(behaviour);
    }

    /** Whether anything was seen that a veterinarian should see. */
    public boolean isUnwell() {
        return !signs.isEmpty();
    }

    /** Whether a behaviour was seen. */
    public boolean shows(Behaviour one) {
        return behaviour.contains(one);
    }
}
