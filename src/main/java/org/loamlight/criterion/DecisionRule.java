package org.loamlight.criterion;

/** How a value with its uncertainty is held against a limit (JCGM 106:2012, clause 8; ILAC-G8:09/2019, 4.2). */
public enum DecisionRule {
    /** The limit decides, the limit itself conforms; the probability is shown. */
    SIMPLE,
    /** Conforms from a conformance probability of 0.95, does not conform up to 0.05, undecided between them. */
    GUARDED,
    /** A figure printed without saying whether it is a lower or an upper end: shown beside what was found, never decided. */
    SHOWN
}
