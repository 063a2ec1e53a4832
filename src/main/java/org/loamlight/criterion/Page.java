package org.loamlight.criterion;

import java.util.Map;

/**
 * The words of a criterion, for people.
 *
 * @param requirement what is asked
 * @param why         why it matters
 * @param measure     how to find out
 * @param correct     how to put it right, by variant, with {shortfall} and {limit} where an amount belongs; "" for the usual one
 * @param exceptions  when it does not hold; may be empty
 * @param found       what a finding of each variant says, with {subject}; empty for criteria judged by a limit alone
 */
public record Page(String requirement, String why, String measure, Map<String, String> correct, String exceptions,
        Map<String, String> found) {

    /** How to put a variant right; the usual way when the variant has no words of its own. */
    public String correctFor(String variant) {
        return correct.getOrDefault(variant, correct.getOrDefault("", ""));
    }

    /** What a finding of the variant says; the usual words when it has none of its own. */
    public String foundFor(String variant) {
        return found.getOrDefault(variant, found.getOrDefault("", ""));
    }
}
