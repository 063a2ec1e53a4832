package org.loamlight.finding;

import org.loamlight.setup.Subject;

/** A pair that has to be closed: this criterion is to be held against this subject. */
public record Applies(String criterion, Subject subject) {
}
