package org.loamlight.evaluation;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.loamlight.setup.ProblemsFound;

/** Switches each rule off in turn: some example must notice. A rule nobody would miss checks nothing. */
class DeadRuleTest {
    /** Examples choose no code; CodesTest holds the rule that joins codes to the needs of the species. */
    private static final String OF_CODES = "limits counted once";

    @Test
    void each_rule_is_missed_by_some_example() throws ProblemsFound {
        List<CriterionExamples.Case> examples = CriterionExamples.all();
        Set<String> dead = new TreeSet<>();
        for (String rule : rules()) {
            Auditor without = new Auditor(BuiltIn.WITH_MADE_UP, BuiltIn.RULES, match -> !match.getRule().getName().equals(rule));
            if (!isMissed(without, ownFirst(rule, examples))) {
                dead.add(rule);
            }
        }
        assertEquals(Set.of(), dead);
    }

    /** The examples beside a rule notice it soonest; without them first the test takes minutes. */
    private static List<CriterionExamples.Case> ownFirst(String rule, List<CriterionExamples.Case> examples) {
        String criterion = rule.split(" ", 2)[0];
        return examples.stream().sorted(Comparator.comparing((CriterionExamples.Case one) -> !one.criterion().equals(criterion))).toList();
    }

    private static Set<String> rules() {
        Set<String> rules = new TreeSet<>(BuiltIn.KNOWLEDGE.limitRules());
        rules.remove(OF_CODES);
        BuiltIn.KNOWLEDGE.criteria().values().forEach(criterion -> rules.addAll(criterion.rules()));
        return rules;
    }

    private static boolean isMissed(Auditor without, List<CriterionExamples.Case> examples) throws ProblemsFound {
        for (CriterionExamples.Case example : examples) {
            if (!ExamplesTest.expected(example).equals(ExamplesTest.found(example, without))) {
                return true;
            }
        }
        return false;
    }
}
