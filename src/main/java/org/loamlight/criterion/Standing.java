package org.loamlight.criterion;

/** How a value is known, the firmest first. */
public enum Standing {
    /** The passage itself was read. */
    READ,
    /** Somebody else quotes it. */
    SECONDARY,
    /** Carried over from a neighbouring row or class. */
    INFERRED,
    /** Usual in the trade, no source. */
    COMMON_PRACTICE,
    /** Our own judgement. */
    JUDGEMENT,
    /** From memory, not verified. */
    FROM_MEMORY
}
