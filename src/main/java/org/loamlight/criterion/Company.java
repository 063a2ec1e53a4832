package org.loamlight.criterion;

/** Whether adult animals of a species can share an enclosure; with {@link #ONE_MALE} no two males can. */
public enum Company {
    ALONE, ONE_MALE, TOLERATED
}
