package org.loamlight.finding;

import org.loamlight.setup.Subject;

/**
 * A pair that has to be closed: this criterion is to be held against this subject.
 *
 * @param byLimit whether the shared limit rules judge it
 * @param ofCode  whether it is what a code asks, and not what the species needs
 */
public record Applies(String criterion, Subject subject, boolean byLimit, boolean ofCode) {
}
