package org.loamlight.criterion;

/** How grave a nonconformity is, the gravest first. */
public enum Grade {
    /** Danger to life or of serious injury. */
    CRITICAL,
    /** Lasting harm. */
    MAJOR,
    /** Shortfall. */
    MINOR,
    /** Could be better. */
    IMPROVEMENT;

    /** Whether this grade is at least as grave as the other. */
    public boolean atLeast(Grade other) {
        return compareTo(other) <= 0;
    }

    /** The graver of two grades. */
    public Grade graver(Grade other) {
        return atLeast(other) ? this : other;
    }

    /** The less grave of two grades. */
    public Grade milder(Grade other) {
        return atLeast(other) ? other : this;
    }
}
