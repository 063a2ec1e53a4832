package org.loamlight.setup;

/** How moist the substrate is: dry right through, damp in the lower layer only, damp or wet throughout. */
public enum Moisture {
    DRY, DAMP_BELOW, DAMP, WET, UNKNOWN
}
