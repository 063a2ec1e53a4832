package org.loamlight.setup;

/**
 * A heat source.
 *
 * @param power      rated power (W)
 * @param probeFixed whether the thermostat's probe is fixed where it governs
 * @param reachable  whether the animal can touch it, reaching up included
 * @param guard      whether a guard keeps the animal off
 * @param onAtNight  whether it may run at night
 */
public record Heater(String name, HeaterKind kind, Measure power, Spot place, Mount mounted, Control control, Stated probeFixed,
        Stated reachable, Stated guard, Stated onAtNight) {

    /** Whether it shines visibly while it runs. */
    public Stated glows() {
        return kind.glows();
    }

    /** Whether touching it burns. */
    public Stated hot() {
        return kind.hot();
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
