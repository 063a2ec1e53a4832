package org.loamlight.evaluation;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import org.loamlight.criterion.Criterion;
import org.loamlight.criterion.DecisionRule;
import org.loamlight.criterion.Grade;
import org.loamlight.criterion.ResolvedLimit;
import org.loamlight.finding.Decision;
import org.loamlight.finding.Fault;
import org.loamlight.finding.Finding;
import org.loamlight.finding.Held;
import org.loamlight.finding.Pair;
import org.loamlight.finding.Result;
import org.loamlight.finding.RuleName;
import org.loamlight.finding.Voided;
import org.loamlight.quantity.Quantity;
import org.loamlight.setup.Subject;

/** A pair about to be closed: the kinds of findings it can become. */
record Draft(Criterion criterion, Subject subject) {
    private static final Comparator<Quantity> EVIDENCE = Comparator.comparing(Quantity::topic)
            .thenComparing(quantity -> quantity.place().key()).thenComparing(Quantity::source).thenComparingDouble(Quantity::value);

    Pair pair() {
        return new Pair(criterion.id(), subject);
    }

    Finding notApplicable(String reason) {
        return finding(Result.NOT_APPLICABLE, criterion.grade(), new Evidence(), reason);
    }

    /** @param told the values a criterion that only informs has to tell; empty for others */
    Finding conforming(List<Quantity> told) {
        List<Quantity> sorted = told.isEmpty() ? told : told.stream().sorted(EVIDENCE).toList();
        return finding(Result.CONFORMITY, criterion.grade(), new Evidence(List.of(), List.of(), sorted), "");
    }

    /** Several matches for one pair are one finding; the gravest variant gives the grade. */
    Finding faulty(List<Fault> faults) {
        List<String> variants = faults.stream().map(fault -> RuleName.variant(fault.ruleName())).distinct()
                .sorted(Comparator.comparing(criterion::gradeOf).thenComparing(Comparator.naturalOrder())).toList();
        List<Quantity> evidence = faults.stream().flatMap(fault -> fault.evidence().stream()).distinct().sorted(EVIDENCE).toList();
        return finding(Result.NONCONFORMITY, criterion.gradeOf(variants.get(0)), new Evidence(variants, List.of(), evidence), "");
    }

    /**
     * What is not told apart is no graver than the criterion itself: a limit may be graver only where it is surely not kept. A figure
     * that is only shown can never be told apart, so that nobody is asked to.
     *
     * @param held all that was held, the deciding one first
     */
    Finding held(List<Held> held) {
        Held deciding = held.get(0);
        Grade grade = switch (deciding.decision()) {
            case INSIDE -> criterion.grade();
            case UNDECIDED -> deciding.grade().milder(criterion.grade()).milder(gravestOpen());
            case OUTSIDE -> deciding.grade();
        };
        return finding(deciding.decision().result(), grade, new Evidence(List.of(), held, List.of()), "");
    }

    /**
     * What rests on missing evidence alone is never told as a danger, nor graver than the criterion itself; see {@link #gravestOpen}.
     *
     * @param missing paths of unanswered questions, sorted
     */
    Finding noEvidence(Collection<String> missing, List<ResolvedLimit> wanted, List<Held> held, List<Voided> voided) {
        Grade grade = wanted.isEmpty() ? criterion.grade()
                : wanted.stream().map(ResolvedLimit::grade).reduce(Grade::graver).orElseThrow().milder(criterion.grade());
        return new Finding(criterion, subject, Result.NO_EVIDENCE, grade.milder(gravestOpen()).milder(Grade.MAJOR), List.of(), held, List.of(), List.copyOf(missing),
                wanted, voided, "", List.of(), List.of());
    }

    /** What is unknown of the animal's needs may be grave; what is unknown of a code beside them is a shortfall at most. */
    private Grade gravestOpen() {
        if (criterion.decision() == DecisionRule.SHOWN) {
            return Grade.IMPROVEMENT;
        }
        return criterion.isOfCode() ? Grade.MINOR : Grade.CRITICAL;
    }

    /** What a finding rests on. */
    private record Evidence(List<String> variants, List<Held> held, List<Quantity> quantities) {
        Evidence() {
            this(List.of(), List.of(), List.of());
        }
    }

    private Finding finding(Result result, Grade grade, Evidence evidence, String reason) {
        return new Finding(criterion, subject, result, grade, evidence.variants, evidence.held, evidence.quantities, List.of(), List.of(),
                List.of(), reason, List.of(), List.of());
    }
}
