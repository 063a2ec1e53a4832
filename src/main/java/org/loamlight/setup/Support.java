package org.loamlight.setup;

/** What carries a furnishing: the bare floor, the substrate, or wall and ceiling. */
public enum Support {
    FLOOR, SUBSTRATE, WALL, UNKNOWN
}
