package org.loamlight.setup;

/** What an animal does again and again, which can point to what its housing lacks. */
public enum Behaviour {
    PACING, NOSE_RUBBING, STAYS_UNDER_THE_LAMP, STAYS_IN_THE_WATER, STAYS_IN_ONE_HIDE, BITING, RATTLING, STRIKING, MUSKING, UNKNOWN
}
