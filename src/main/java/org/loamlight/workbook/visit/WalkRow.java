package org.loamlight.workbook.visit;

import java.util.List;
import org.loamlight.finding.Finding;
import org.loamlight.setup.Question;

/**
 * One question of a visit.
 *
 * @param stop     title of the stop it is asked at
 * @param key      what the row is known by when it comes back: the path of the answer, or what a new reading is to be of
 * @param question what kind of answer it takes, and how to find out
 * @param what     the question in words
 * @param where    the part it is asked of; empty for what is asked once
 * @param last     the answer that was given last; empty when there is none
 * @param unit     the unit a first answer is best given in; empty where the answer before says it
 * @param asked    what is asked of the answer: limits for its value, or the points it decides; may be empty
 * @param findings what hangs on the answer, in the order in which it hurts; may be empty
 */
public record WalkRow(String stop, String key, Question question, String what, String where, String last, String unit, List<String> asked, List<Finding> findings) {
    public WalkRow {
        asked = List.copyOf(asked);
        findings = List.copyOf(findings);
    }
}
