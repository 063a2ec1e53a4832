package org.loamlight.criterion;

/** At how many of the places a limit is meant for it must be kept. */
public enum Where {
    /** At every one: the least favourable quantity decides. */
    EVERYWHERE,
    /** At one at least: the most favourable quantity decides. */
    SOMEWHERE
}
