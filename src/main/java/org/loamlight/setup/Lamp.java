package org.loamlight.setup;

import java.util.List;

/**
 * A lamp for light or ultraviolet.
 *
 * @param arcLength       lit length of a tube (cm)
 * @param between         what lies between it and the animal, from the lamp downwards; empty when there is nothing
 * @param betweenTold     whether the keeper said what lies between
 * @param nearestRest     measured distance to the closest place where the animal can lie (cm)
 * @param minimumDistance smallest distance its maker states (cm)
 */
public record Lamp(String name, LampKind kind, Measure power, Measure arcLength, Spot place, List<Screen> between, Stated betweenTold,
        List<LampReading> readings, Measure nearestRest, Measure minimumDistance, Stated onAtNight) {

    /** Whether it is sold to give ultraviolet. */
    public Stated givesUv() {
        return kind.givesUv();
    }

    /** Whether something lies between that lets next to no UV-B pass. */
    public boolean isBlocked() {
        return between.stream().anyMatch(Screen::blocks);
    }

    public Subject subject() {
        return new Subject(SubjectKind.LAMP, name);
    }
}
