package org.loamlight.setup;

/** Stage of life of an animal. */
public enum Stage {
    HATCHLING, JUVENILE, SUBADULT, ADULT, UNKNOWN
}
