package org.loamlight.setup;

/** Where an animal came from. */
public enum Provenance {
    CAPTIVE_BRED, WILD_CAUGHT, RESCUE, REHOMED, UNKNOWN
}
