package org.loamlight.setup;

/** What switches a heater. */
public enum Control {
    THERMOSTAT, DIMMING_THERMOSTAT, TIMER, HAND, NONE, UNKNOWN
}
