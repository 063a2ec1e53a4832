package org.loamlight.setup;

/** From where a lamp shines on the animal. */
public enum Shines {
    FROM_ABOVE, FROM_THE_SIDE, FROM_BELOW, UNKNOWN
}
