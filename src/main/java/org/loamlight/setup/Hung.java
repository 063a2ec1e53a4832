package org.loamlight.setup;

/** How a lamp or heater is held. */
public enum Hung {
    SCREWED, CHAINED, IN_A_CAGE, CLAMPED, RESTING, UNKNOWN
}
