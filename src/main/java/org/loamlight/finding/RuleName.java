package org.loamlight.finding;

/** Names of rules: the criterion's id, or id and variant with a blank between them. */
public final class RuleName {
    private RuleName() {
    }

    /** Id of the criterion a rule belongs to. */
    public static String criterion(String rule) {
        int end = rule.indexOf(' ');
        return end < 0 ? rule : rule.substring(0, end);
    }

    /** What follows the criterion's id; empty when nothing does. */
    public static String variant(String rule) {
        int end = rule.indexOf(' ');
        return end < 0 ? "" : rule.substring(end + 1);
    }
}
