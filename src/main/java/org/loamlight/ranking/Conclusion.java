package org.loamlight.ranking;

/** What the findings come to. Never a score: a good cool end does not pay for a lamp that burns. */
public enum Conclusion {
    /** There is a critical nonconformity. */
    NOT_READY,
    /** Something critical or major is not known or cannot be told. */
    EVIDENCE_INCOMPLETE,
    /** There is a major nonconformity. */
    READY_ONCE_CORRECTED,
    READY
}
