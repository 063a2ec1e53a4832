package org.loamlight.criterion;

/** Whether adult animals of a species can share an enclosure. */
public enum Company {
    ALONE, TOLERATED
}
