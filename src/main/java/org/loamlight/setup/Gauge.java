package org.loamlight.setup;

/** What is at hand to read the enclosure with. */
public enum Gauge {
    AIR_THERMOMETER, MINIMUM_MAXIMUM_THERMOMETER, SURFACE_THERMOMETER, HYGROMETER, UV_METER, SCALE, UNKNOWN
}
