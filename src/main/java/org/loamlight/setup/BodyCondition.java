package org.loamlight.setup;

/** How well covered an animal is: spine and ribs seen and felt. */
public enum BodyCondition {
    THIN, GOOD, HEAVY, UNKNOWN
}
