package org.loamlight.setup;

/** What the holder of a bulb is made of. */
public enum HolderMaterial {
    CERAMIC, METAL, PLASTIC, UNKNOWN
}
