package org.loamlight.setup;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * A lamp for light or ultraviolet.
 *
 * @param arcLength       lit length of a tube (cm)
 * @param runs            which way a tube lies
 * @param hours           hours it is lit in a day (h)
 * @param control         what switches it
 * @param shines          from where it shines on the animal
 * @param fittedOn        day it was fitted; empty when not told
 * @param life            days of life its maker states
 * @param fixing          how it is fitted
 * @param between         what lies between it and the animal, from the lamp downwards; empty when there is nothing
 * @param betweenTold     whether the keeper said what lies between
 * @param nearestRest     measured distance to the closest place where the animal can lie (cm)
 * @param minimumDistance smallest distance its maker states (cm)
 */
public record Lamp(String name, LampKind kind, Measure power, Measure arcLength, TubeRuns runs, Measure hours, Control control, Shines shines,
        Optional<LocalDate> fittedOn, Measure life, Fixing fixing, Spot place, List<Screen> between, Stated betweenTold,
        List<LampReading> readings, Measure nearestRest, Measure minimumDistance, Stated onAtNight) {

    /** Whether it is sold to give ultraviolet. */
    public Stated givesUv() {
        return kind.givesUv();
    }

    /** Whether it is a bulb in a holder. */
    public Stated hasBulb() {
        return kind.hasBulb();
    }

    /** Whether touching it burns. */
    public Stated hot() {
        return kind.hot();
    }

    /** Whether something lies between that lets next to no UV-B pass. */
    public boolean isBlocked() {
        return between.stream().anyMatch(Screen::blocks);
    }

    /** Whether something lies between of which it can only be guessed what it lets pass. */
    public boolean hasUnknownScreen() {
        return between.stream().anyMatch(screen -> !screen.passes().isKnown()
                && (screen.kind() == ScreenKind.UNKNOWN || screen.kind() == ScreenKind.OTHER));
    }

    /** Whether its index was read at a known distance. */
    public boolean hasReading() {
        return readings.stream().anyMatch(reading -> reading.index().isKnown() && reading.distance().isKnown());
    }

    /** Whether one of its readings was taken through what lies between; no when nobody said so. */
    public boolean isReadThrough() {
        return readings.stream().anyMatch(reading -> reading.through() == Stated.YES);
    }

    /** Whether something lies between and nobody said of any reading whether it was taken through it. */
    public boolean isReadingUnclear() {
        return !between.isEmpty() && readings.stream().allMatch(reading -> reading.through() == Stated.UNKNOWN);
    }

    public Subject subject() {
        return new Subject(SubjectKind.LAMP, name);
    }
}
