package org.loamlight.setup;

/** What keeps a door or lid shut. */
public enum Lock {
    KEY_LOCK, CATCH, WEDGE, WEIGHT_ONLY, UNKNOWN
}
