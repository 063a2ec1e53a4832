package org.loamlight.finding;

import org.loamlight.setup.Subject;

/** A criterion and the subject it is held against; a setup has at most one finding for each. */
public record Pair(String criterion, Subject subject) {
    /** Stable text: "heat.guard heater:basking lamp". */
    public String key() {
        return criterion + " " + subject.key();
    }
}
