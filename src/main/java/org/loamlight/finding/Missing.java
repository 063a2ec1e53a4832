package org.loamlight.finding;

import org.loamlight.setup.Subject;
import org.loamlight.setup.Told;

/**
 * Stated by a rule: it cannot be told without this answer.
 *
 * @param ruleName name of the rule: the criterion's id, or id and variant
 * @param path path of the unanswered question; {@code []} stands for the subject's own name
 */
public record Missing(String ruleName, Subject subject, String path) {
    public Missing {
        path = Told.resolved(path, subject);
    }
}
