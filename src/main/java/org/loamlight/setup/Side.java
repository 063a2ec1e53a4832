package org.loamlight.setup;

/** A short side of the enclosure, seen from the front. */
public enum Side {
    LEFT, RIGHT, UNKNOWN
}
