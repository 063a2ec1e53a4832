package org.loamlight.ranking;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import org.loamlight.criterion.Grade;
import org.loamlight.finding.Finding;
import org.loamlight.finding.Held;
import org.loamlight.finding.Pair;
import org.loamlight.finding.Result;

/**
 * Findings in the order in which they hurt.
 *
 * @param toDo          nonconformities, the gravest first, each cause directly before what it explains
 * @param toFindOut     no evidence and undecided, in the same order
 * @param right         conformities, by id and subject
 * @param notApplicable what does not apply, by id and subject
 * @param waived        open findings somebody gave leave for, in the order in which they hurt; they count for nothing else
 */
public record Ranking(List<Finding> toDo, List<Finding> toFindOut, List<Finding> right, List<Finding> notApplicable,
        List<Finding> waived, Conclusion conclusion) {

    private static final double FOUR_DIGITS = 10_000;

    /**
     * Ranks the findings of one audit.
     *
     * @throws IllegalArgumentException when findings explain each other in a circle, which is a defect of the rules
     */
    public static Ranking of(List<Finding> findings) {
        return of(findings, Set.of());
    }

    /**
     * Ranks the findings of one audit, those apart that somebody gave leave for.
     *
     * @param leave pairs of open findings that are waived
     * @throws IllegalArgumentException when findings explain each other in a circle, which is a defect of the rules
     */
    public static Ranking of(List<Finding> findings, Set<Pair> leave) {
        Map<Pair, Grade> effective = effectiveGrades(findings);
        Comparator<Finding> order = order(effective);
        List<Finding> counting = findings.stream().filter(finding -> !leave.contains(finding.pair())).toList();
        return new Ranking(ordered(counting, finding -> finding.result() == Result.NONCONFORMITY, order),
                ordered(counting, finding -> finding.isOpen() && finding.result() != Result.NONCONFORMITY, order),
                byName(counting, Result.CONFORMITY), byName(counting, Result.NOT_APPLICABLE),
                ordered(findings, finding -> leave.contains(finding.pair()), order), conclusion(counting));
    }

    private static Comparator<Finding> order(Map<Pair, Grade> effective) {
        return Comparator.comparing((Finding finding) -> effective.get(finding.pair())).thenComparing(Finding::result)
                .thenComparing(Comparator.comparingLong(Ranking::probability).reversed())
                .thenComparing(Comparator.comparingDouble(Ranking::distance).reversed())
                .thenComparing(finding -> finding.criterion().need()).thenComparing(BY_NAME);
    }

    private static final Comparator<Finding> BY_NAME = Comparator.comparing((Finding finding) -> finding.criterion().id())
            .thenComparing(finding -> finding.subject().key());

    private static long probability(Finding finding) {
        return StrictMath.round(finding.nonconformityProbability() * FOUR_DIGITS);
    }

    private static double distance(Finding finding) {
        return finding.deciding().map(Held::distance).orElse(0.0);
    }

    private static List<Finding> byName(List<Finding> findings, Result result) {
        return findings.stream().filter(finding -> finding.result() == result).sorted(BY_NAME).toList();
    }

    /** The gravest grade of each finding and all it explains, directly or through others. */
    private static Map<Pair, Grade> effectiveGrades(List<Finding> findings) {
        Map<Pair, Finding> byPair = new HashMap<>();
        findings.forEach(finding -> byPair.put(finding.pair(), finding));
        Map<Pair, Grade> grades = new HashMap<>();
        findings.forEach(finding -> grades.put(finding.pair(), effective(finding, byPair, new LinkedHashSet<>())));
        return grades;
    }

    private static Grade effective(Finding finding, Map<Pair, Finding> byPair, Set<Pair> above) {
        if (!above.add(finding.pair())) {
            throw new IllegalArgumentException("Findings explain each other in a circle: " + above.stream().map(Pair::key).toList());
        }
        Grade grade = finding.grade();
        for (Pair effect : finding.explains()) {
            grade = grade.graver(effective(byPair.get(effect), byPair, above));
        }
        above.remove(finding.pair());
        return grade;
    }

    private static List<Finding> ordered(List<Finding> findings, Predicate<Finding> wanted, Comparator<Finding> order) {
        List<Finding> sorted = findings.stream().filter(wanted).sorted(order).toList();
        Map<Pair, Finding> here = new HashMap<>();
        sorted.forEach(finding -> here.put(finding.pair(), finding));
        Map<Pair, Finding> placed = new LinkedHashMap<>();
        sorted.forEach(finding -> place(finding, here, placed));
        return new ArrayList<>(placed.values());
    }

    /** First the causes that stand in the same list, then the finding itself, so that each cause comes directly before its effect. */
    private static void place(Finding finding, Map<Pair, Finding> here, Map<Pair, Finding> placed) {
        if (placed.containsKey(finding.pair())) {
            return;
        }
        finding.explainedBy().stream().map(here::get).filter(cause -> cause != null).forEach(cause -> place(cause, here, placed));
        placed.put(finding.pair(), finding);
        finding.explains().stream().map(here::get).filter(effect -> effect != null && causesPlaced(effect, here, placed))
                .forEach(effect -> place(effect, here, placed));
    }

    private static boolean causesPlaced(Finding effect, Map<Pair, Finding> here, Map<Pair, Finding> placed) {
        return effect.explainedBy().stream().map(here::get).allMatch(cause -> cause == null || placed.containsKey(cause.pair()));
    }

    private static Conclusion conclusion(List<Finding> findings) {
        if (any(findings, Grade.CRITICAL, finding -> finding.result() == Result.NONCONFORMITY)) {
            return Conclusion.NOT_READY;
        }
        if (any(findings, Grade.MAJOR, finding -> finding.isOpen() && finding.result() != Result.NONCONFORMITY)) {
            return Conclusion.EVIDENCE_INCOMPLETE;
        }
        return any(findings, Grade.MAJOR, finding -> finding.result() == Result.NONCONFORMITY) ? Conclusion.READY_ONCE_CORRECTED
                : Conclusion.READY;
    }

    private static boolean any(List<Finding> findings, Grade grade, Predicate<Finding> test) {
        return findings.stream().anyMatch(finding -> finding.grade().atLeast(grade) && test.test(finding));
    }

    /** What to find out, each question once: without points of codes that lack what is asked for already, or only show a figure. */
    public List<Finding> toAsk() {
        return Asking.once(toFindOut);
    }

    /** Every finding that is open, what to do before what to find out. */
    public List<Finding> open() {
        List<Finding> open = new ArrayList<>(toDo);
        open.addAll(toFindOut);
        return open;
    }
}
