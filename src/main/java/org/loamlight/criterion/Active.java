package org.loamlight.criterion;

/** When animals of a species are about. */
public enum Active {
    BY_DAY, AT_DUSK, BY_NIGHT
}
