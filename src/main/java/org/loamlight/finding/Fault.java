package org.loamlight.finding;

import java.util.List;
import org.loamlight.quantity.Quantity;
import org.loamlight.setup.Subject;

/**
 * Stated by a rule: something is wrong.
 *
 * @param ruleName name of the rule: the criterion's id, or id and variant
 * @param evidence quantities it rests on; empty when it rests on what the setup says
 */
public record Fault(String ruleName, Subject subject, List<Quantity> evidence) {
    public Fault {
        evidence = List.copyOf(evidence);
    }

    public Fault(String ruleName, Subject subject, Quantity... evidence) {
        this(ruleName, subject, List.of(evidence));
    }
}
