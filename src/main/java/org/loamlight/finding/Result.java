package org.loamlight.finding;

/** The outcome of holding evidence against a criterion, in the order in which it is told. */
public enum Result {
    NONCONFORMITY, NO_EVIDENCE, UNDECIDED, CONFORMITY, NOT_APPLICABLE
}
