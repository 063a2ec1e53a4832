package org.loamlight.criterion;

/**
 * A criterion that does not hold for a species, and why.
 *
 * @param reason one sentence for print
 */
public record NotMeant(String criterion, String reason) {
}
