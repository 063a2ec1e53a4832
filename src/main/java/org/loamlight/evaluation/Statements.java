package org.loamlight.evaluation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.loamlight.finding.Explains;
import org.loamlight.finding.Fault;
import org.loamlight.finding.Held;
import org.loamlight.finding.Missing;
import org.loamlight.finding.Pair;
import org.loamlight.finding.RuleName;
import org.loamlight.finding.Voided;
import org.loamlight.setup.Subject;

/** What the rules stated about one setup. */
record Statements(List<Fault> faults, List<Missing> missing, List<Held> held, List<Voided> voided, List<Explains> explains) {

    /**
     * What was stated about one pair, in the order it was stated.
     *
     * @param missing paths of unanswered questions
     */
    record About(List<Fault> faults, List<String> missing, List<Held> held) {
        static final About NOTHING = new About(List.of(), List.of(), List.of());

        /** Whether there is more than what the shared limit rules state. */
        boolean isOfRules() {
            return !faults.isEmpty() || !missing.isEmpty();
        }
    }

    /** What was stated about each pair; a pair that nothing was stated about is absent. */
    Map<Pair, About> byPair() {
        Map<Pair, About> byPair = new HashMap<>();
        faults.forEach(fault -> about(byPair, RuleName.criterion(fault.ruleName()), fault.subject()).faults.add(fault));
        missing.forEach(one -> about(byPair, RuleName.criterion(one.ruleName()), one.subject()).missing.add(one.path()));
        held.forEach(one -> about(byPair, one.criterion(), one.subject()).held.add(one));
        return byPair;
    }

    private static About about(Map<Pair, About> byPair, String criterion, Subject subject) {
        return byPair.computeIfAbsent(new Pair(criterion, subject), none -> new About(new ArrayList<>(), new ArrayList<>(), new ArrayList<>()));
    }

    List<Voided> voidedSorted() {
        return voided.stream().sorted(Comparator.comparing((Voided one) -> one.quantity().source())
                .thenComparing(one -> one.quantity().topic()).thenComparing(Voided::by)).toList();
    }
}
