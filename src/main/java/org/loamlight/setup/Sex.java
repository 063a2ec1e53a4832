package org.loamlight.setup;

/** Sex of an animal. */
public enum Sex {
    FEMALE, MALE, UNKNOWN
}
