package org.loamlight.finding;

import org.loamlight.quantity.Quantity;

/**
 * Stated by a rule: this quantity does not count.
 *
 * @param by name of the rule that took it out
 */
public record Voided(Quantity quantity, String by) {
    /** Id of the criterion that rule belongs to. */
    public String criterion() {
        return RuleName.criterion(by);
    }
}
