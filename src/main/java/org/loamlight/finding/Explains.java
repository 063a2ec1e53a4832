package org.loamlight.finding;

import org.loamlight.setup.Subject;

/** Stated by a rule: if the cause is found wrong and the effect is not in order, the first explains the second. */
public record Explains(String cause, Subject causeSubject, String effect, Subject effectSubject) {
    public Pair causePair() {
        return new Pair(cause, causeSubject);
    }

    public Pair effectPair() {
        return new Pair(effect, effectSubject);
    }
}
