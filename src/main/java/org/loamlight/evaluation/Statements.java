package org.loamlight.evaluation;

import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
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

    Stream<Fault> faults(Pair pair) {
        return faults.stream().filter(fault -> isOf(fault.ruleName(), fault.subject(), pair));
    }

    Stream<String> missing(Pair pair) {
        return missing.stream().filter(one -> isOf(one.ruleName(), one.subject(), pair)).map(Missing::path).distinct().sorted();
    }

    Stream<Held> held(Pair pair) {
        return held.stream().filter(one -> one.criterion().equals(pair.criterion()) && one.subject().equals(pair.subject()));
    }

    List<Voided> voidedSorted() {
        return voided.stream().sorted(Comparator.comparing((Voided one) -> one.quantity().source())
                .thenComparing(one -> one.quantity().topic()).thenComparing(Voided::by)).toList();
    }

    /** The pairs that faults and missing answers were stated for; each must be among the pairs that were asked. */
    Set<Pair> stated() {
        Set<Pair> pairs = new HashSet<>();
        faults.forEach(fault -> pairs.add(new Pair(RuleName.criterion(fault.ruleName()), fault.subject())));
        missing.forEach(one -> pairs.add(new Pair(RuleName.criterion(one.ruleName()), one.subject())));
        return pairs;
    }

    private static boolean isOf(String rule, Subject subject, Pair pair) {
        return subject.equals(pair.subject()) && RuleName.criterion(rule).equals(pair.criterion());
    }
}
