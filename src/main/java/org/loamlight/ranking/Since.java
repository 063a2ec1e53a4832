package org.loamlight.ranking;

import java.util.List;

/**
 * What changed since an audit before.
 *
 * @param on          ISO date of the audit before
 * @param version     version of the knowledge the audit before was made with
 * @param isNewer     whether the knowledge, the codes or the rules of the house are others now
 * @param byKnowledge what the same setup is found to be by the knowledge of now, where that differs; empty while it is the same
 * @param changes     what changed by itself or by somebody, both times by the knowledge of now
 * @param unproven    keys of the pairs that were marked as done and are still found wrong
 */
public record Since(String on, String version, boolean isNewer, List<Change> byKnowledge, List<Change> changes, List<String> unproven) {
    public Since {
        byKnowledge = List.copyOf(byKnowledge);
        changes = List.copyOf(changes);
        unproven = List.copyOf(unproven);
    }
}
