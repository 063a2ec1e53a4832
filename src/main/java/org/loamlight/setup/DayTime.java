package org.loamlight.setup;

/** Whether a reading was taken with the lights on or off. */
public enum DayTime {
    DAY, NIGHT, UNKNOWN
}
