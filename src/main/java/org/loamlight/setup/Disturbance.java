package org.loamlight.setup;

/** What keeps an animal in fear. */
public enum Disturbance {
    DOG, CAT, OTHER_PREDATOR, LOUD_MUSIC, DOOR_OR_PASSAGE, VIBRATION, OTHER_REPTILE_IN_SIGHT, UNKNOWN
}
