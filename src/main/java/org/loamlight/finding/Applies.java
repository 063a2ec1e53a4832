package org.loamlight.finding;

import org.loamlight.setup.Subject;

/**
 * A pair that has to be closed: this criterion is to be held against this subject.
 *
 * @param byLimit whether the shared limit rules judge it
 */
public record Applies(String criterion, Subject subject, boolean byLimit) {
}
