package org.loamlight.criterion;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.loamlight.quantity.Topic;
import org.loamlight.setup.Purpose;
import org.loamlight.setup.SubjectKind;

/**
 * One requirement.
 *
 * @param id          final key, topic and name: "heat.guard"
 * @param title       what is asked, in one line
 * @param grade       usual grade
 * @param grades      grade of each rule variant that differs
 * @param subject     what it is applied to
 * @param appliesWhen conditions that must all be met; empty when it always applies
 * @param purposes    purposes of housing it holds for
 * @param needs       questions that must be answered before it can be judged
 * @param reads       every question it looks at; an answer taken away must turn conformity into no evidence
 * @param quantities  topics its limits are about; empty when it is judged by its rules
 * @param heldByRule  whether its own rule compares with the limits, so that the general rules leave them alone
 * @param informs    whether it only tells the values of its topics and judges nothing
 * @param cautions    ids of cautions that go with it
 * @param rules       names of its rules; empty when it is judged by limits alone
 */
public record Criterion(String id, String title, Need need, Grade grade, Map<String, Grade> grades, SubjectKind subject,
        List<Condition> appliesWhen, Set<Purpose> purposes, List<String> needs, List<String> reads, List<Topic> quantities,
        boolean heldByRule, boolean informs, DecisionRule decision, List<Citation> citations, List<String> cautions, String since, Page page,
        List<String> rules) {

    /** Whether the general limit rules judge it. */
    public boolean isLimit() {
        return !quantities.isEmpty() && !heldByRule && !informs;
    }

    /** Who holds quantities against its limits. */
    LimitUse limitUse() {
        return !isLimit() ? LimitUse.OWN_RULES : isOfCode() ? LimitUse.CODE : LimitUse.NEED;
    }

    /** The same with another grade of its own. */
    Criterion graded(Grade other) {
        return new Criterion(id, title, need, other, grades, subject, appliesWhen, purposes, needs, reads, quantities, heldByRule, informs, decision, citations,
                cautions, since, page, rules);
    }

    /** Whether it is what a code asks, and not what the species needs. */
    public boolean isOfCode() {
        return id.startsWith("code.");
    }

    /** The grade of a rule variant; the usual one when it has none of its own. */
    public Grade gradeOf(String variant) {
        return grades.getOrDefault(variant, grade);
    }

    /** The part of the id before the dot. */
    public String topic() {
        return id.substring(0, id.indexOf('.'));
    }
}
