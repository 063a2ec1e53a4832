package org.loamlight.setup;

/**
 * A heat source.
 *
 * @param power      rated power (W)
 * @param probeFixed whether the thermostat's probe is fixed where it governs
 * @param reachable  whether the animal can touch it, reaching up included
 * @param guard      whether a guard keeps the animal off
 * @param setTo      what its thermostat is set to (°C)
 * @param hours      hours it runs in a day (h); of a heater on a thermostat, hours it may run
 * @param surface    hottest surface of it, or of its cover, that the animal can touch (°C)
 * @param surfaceOf  what that surface is made of
 * @param nearestRest nearest place where the animal can lie or stand, to the heater (cm)
 * @param warms      the warm patch beneath or above it, along the enclosure (cm)
 * @param warmsAcross the warm patch from front to back (cm)
 * @param buried    whether it lies under substrate
 * @param fixing    how it is fitted
 * @param onAtNight  whether it may run at night
 */
public record Heater(String name, HeaterKind kind, Measure power, Spot place, Mount mounted, Control control, Stated probeFixed,
        Stated reachable, Stated guard, Measure setTo, Measure hours, Measure surface, SurfaceMaterial surfaceOf, Measure nearestRest,
        Measure warms, Measure warmsAcross, Stated buried, Fixing fixing, Stated onAtNight) {

    /** Whether it shines visibly while it runs. */
    public Stated glows() {
        return kind.glows();
    }

    /** Whether touching it burns. */
    public Stated hot() {
        return kind.hot();
    }

    /** Whether it is a bulb, or screws into a holder like one. */
    public Stated hasBulb() {
        return kind.hasBulb();
    }

    /** Whether an animal lies on it or over it. */
    public Stated contact() {
        return kind.contact();
    }

    /** Whether nothing less than a thermostat will do. */
    public Stated wantsThermostat() {
        return kind.wantsThermostat();
    }

    /** Whether a thermostat of either kind switches it. */
    public Stated onThermostat() {
        return switch (control) {
            case THERMOSTAT, DIMMING_THERMOSTAT -> Stated.YES;
            case TIMER, HAND, NONE -> Stated.NO;
            case UNKNOWN -> Stated.UNKNOWN;
        };
    }

    public Subject subject() {
        return new Subject(SubjectKind.HEATER, name);
    }
}
