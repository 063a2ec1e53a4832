package org.loamlight.criterion;

/** Who holds quantities against a limit. */
public enum LimitUse {
    /** The rules for all limits, since what the species needs is judged by it alone. */
    NEED,
    /** The rules for all limits, since what a code asks is judged by it alone. */
    CODE,
    /** The rules of its criterion, which look at more than the limit. */
    OWN_RULES
}
