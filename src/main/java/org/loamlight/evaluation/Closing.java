package org.loamlight.evaluation;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BinaryOperator;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.loamlight.criterion.Criterion;
import org.loamlight.criterion.Grade;
import org.loamlight.criterion.ResolvedLimit;
import org.loamlight.criterion.Where;
import org.loamlight.finding.Decision;
import org.loamlight.finding.Explains;
import org.loamlight.finding.Fault;
import org.loamlight.finding.Finding;
import org.loamlight.finding.Held;
import org.loamlight.finding.Pair;
import org.loamlight.finding.Result;
import org.loamlight.finding.Voided;
import org.loamlight.quantity.Quantity;
import org.loamlight.setup.SubjectKind;

/**
 * Closes every pair exactly once: a fault or a limit not kept makes a nonconformity; else a missing answer leaves no
 * evidence; else the least favourable decision counts; else it conforms. A limit that is not kept is wrong whatever else is
 * still unknown, so it goes before the missing answer.
 */
final class Closing {
    private static final Comparator<Held> WORST_FIRST = Comparator.comparing(Held::decision)
            .thenComparing(held -> held.decision() == Decision.INSIDE ? Grade.CRITICAL : held.grade())
            .thenComparingDouble(Held::probability)
            .thenComparing(Comparator.comparingDouble(Held::distance).reversed())
            .thenComparing(held -> held.quantity().source()).thenComparing(held -> held.quantity().place().key())
            .thenComparing(held -> held.limit().animal()).thenComparingDouble(held -> held.limit().low())
            .thenComparingDouble(held -> held.limit().high());

    private static final BinaryOperator<Held> WORST = BinaryOperator.minBy(WORST_FIRST);
    private static final BinaryOperator<Held> BEST = BinaryOperator.maxBy(WORST_FIRST);
    private static final Comparator<Pair> PAIR_BY_KEY = Comparator.comparing(Pair::key);
    private static final String PART = "[]";
    /** All subjects of a criterion are of one kind, so that their names sort as their keys do. */
    private static final Comparator<Finding> BY_KEY = Comparator.comparing((Finding one) -> one.criterion().id())
            .thenComparing(one -> one.subject().name());

    private final Pairs pairs;
    /** What was stated about the pairs that are not closed yet. */
    private final Map<Pair, Statements.About> stated;
    private final List<Voided> voided;
    private final List<Explains> explains;
    private final List<Quantity> quantities;

    Closing(Pairs pairs, Statements statements, List<Quantity> quantities) {
        this.pairs = pairs;
        this.stated = statements.byPair();
        this.voided = statements.voidedSorted();
        this.explains = statements.explains();
        this.quantities = quantities;
    }

    /**
     * Closes all pairs; to be called once.
     *
     * @return one finding for each pair, in the order of criterion id and subject key
     * @throws AuditFailure when rules stated something about a pair that is not listed or does not apply
     */
    List<Finding> close(List<Pairs.Listed> listed) {
        List<Finding> closed = new ArrayList<>(listed.size());
        for (Pairs.Listed pair : listed) {
            closed.add(close(pair));
        }
        requireAsked();
        return linked(closed).stream().sorted(BY_KEY).toList();
    }

    private void requireAsked() {
        List<String> strays = stated.entrySet().stream().filter(left -> left.getValue().isOfRules()).map(left -> left.getKey().key()).sorted().toList();
        if (!strays.isEmpty()) {
            throw new AuditFailure("Rules stated something about pairs nobody asked for: " + String.join(", ", strays));
        }
    }

    private Finding close(Pairs.Listed pair) {
        Draft draft = new Draft(pair.criterion(), pair.subject());
        if (!pair.notBecause().isEmpty()) {
            return draft.notApplicable(pair.notBecause());
        }
        if (pair.untold()) {
            return draft.noEvidence(List.of(pair.subject().kind().section()), List.of(), List.of(), List.of());
        }
        Statements.About found = stated.remove(pair.pair());
        Statements.About about = found == null ? Statements.About.NOTHING : found;
        return about.faults().isEmpty() ? closeByEvidence(pair, about, draft) : draft.faulty(about.faults());
    }

    private Finding closeByEvidence(Pairs.Listed pair, Statements.About about, Draft draft) {
        List<Held> deciding = pair.criterion().isLimit() ? deciding(about.held()) : List.of();
        List<Held> held = all(deciding, about.held());
        for (Held one : deciding) {
            if (isSurelyOutside(one)) {
                return draft.held(held);
            }
        }
        List<ResolvedLimit> wanted = pair.criterion().isLimit() ? wanted(pair, about.held()) : List.of();
        Collection<String> missing = missing(pair, about, wanted);
        if (!missing.isEmpty()) {
            return draft.noEvidence(missing, wanted, held, voided(wanted));
        }
        return held.isEmpty() ? draft.conforming(told(pair.criterion())) : draft.held(held);
    }

    private List<Quantity> told(Criterion criterion) {
        return criterion.informs() ? quantities.stream().filter(one -> criterion.quantities().contains(one.topic())).toList() : List.of();
    }

    /** That a limit is kept nowhere can be said only when nothing is missing; that it is not kept somewhere, at once. */
    static boolean isSurelyOutside(Held held) {
        return held.decision() == Decision.OUTSIDE && held.limit().where() == Where.EVERYWHERE;
    }

    /** For each limit the one decision that counts: the worst of all places, or the best where one place suffices. */
    static List<Held> deciding(List<Held> all) {
        if (all.size() < 2) {
            return all;
        }
        Map<ResolvedLimit, Held> byLimit = new LinkedHashMap<>();
        for (Held held : all) {
            byLimit.merge(held.limit(), held, Closing::deciding);
        }
        List<Held> deciding = new ArrayList<>(byLimit.values());
        deciding.sort(WORST_FIRST);
        return deciding;
    }

    private static Held deciding(Held one, Held other) {
        return (one.limit().where() == Where.SOMEWHERE ? BEST : WORST).apply(one, other);
    }

    /** Those that decide, then the others, the worst first. */
    private static List<Held> all(List<Held> deciding, List<Held> stated) {
        if (stated.size() == deciding.size()) {
            return deciding;
        }
        Stream<Held> others = stated.stream().filter(one -> !deciding.contains(one)).sorted(WORST_FIRST);
        return Stream.concat(deciding.stream(), others).toList();
    }

    private static List<ResolvedLimit> wanted(Pairs.Listed pair, List<Held> stated) {
        List<ResolvedLimit> wanted = new ArrayList<>();
        for (ResolvedLimit limit : pair.limits().limits()) {
            if (!isHeld(limit, stated)) {
                wanted.add(limit);
            }
        }
        return wanted;
    }

    private static boolean isHeld(ResolvedLimit limit, List<Held> stated) {
        for (Held held : stated) {
            if (held.limit().equals(limit)) {
                return true;
            }
        }
        return false;
    }

    /** Sorted, each once. */
    private Collection<String> missing(Pairs.Listed pair, Statements.About about, List<ResolvedLimit> wanted) {
        List<String> unanswered = pairs.unanswered(pair.criterion().needs(), pair.subject());
        boolean isAllAnswered = unanswered.isEmpty() && about.missing().isEmpty() && pair.limits().missing().isEmpty();
        if (isAllAnswered && wanted.isEmpty()) {
            return List.of();
        }
        Set<String> missing = new TreeSet<>(isAllAnswered ? whereToLook(pair.criterion(), pair) : unanswered);
        missing.addAll(about.missing());
        missing.addAll(pair.limits().missing());
        return missing;
    }

    /** The unanswered questions the criterion reads; where all seem answered, the section in which the reading is lacking. */
    private List<String> whereToLook(Criterion criterion, Pairs.Listed pair) {
        List<String> unanswered = pairs.unanswered(criterion.reads().stream().filter(path -> isOwn(path, pair)).toList(), pair.subject());
        return unanswered.isEmpty() ? criterion.reads().stream().map(Closing::section).limit(1).toList() : unanswered;
    }

    private static String section(String path) {
        int part = path.indexOf(PART);
        return part < 0 ? path : path.substring(0, part);
    }

    /** Whether it is a question about the subject, or about nothing that is one of several. */
    private static boolean isOwn(String path, Pairs.Listed pair) {
        String section = pair.subject().kind().section();
        return !path.contains(PART) || path.startsWith(section) && path.startsWith(PART + ".", section.length())
                && path.lastIndexOf(PART) == section.length();
    }

    private List<Voided> voided(List<ResolvedLimit> wanted) {
        return voided.isEmpty() ? List.of() : voided.stream().filter(one -> wanted.stream().anyMatch(limit -> limit.isMeantFor(one.quantity()))).toList();
    }

    /** A cause is told only where it was found wrong, and only for findings that are open. */
    private List<Finding> linked(List<Finding> closed) {
        if (explains.isEmpty()) {
            return closed;
        }
        Map<Pair, Finding> open = closed.stream().filter(Finding::isOpen).collect(Collectors.toMap(Finding::pair, Function.identity()));
        Map<Pair, Set<Pair>> effects = new HashMap<>();
        Map<Pair, Set<Pair>> causes = new HashMap<>();
        for (Explains link : explains) {
            Pair cause = link.causePair();
            Pair effect = link.effectPair();
            if (open.containsKey(cause) && open.containsKey(effect) && open.get(cause).result() == Result.NONCONFORMITY) {
                effects.computeIfAbsent(cause, none -> new TreeSet<>(PAIR_BY_KEY)).add(effect);
                causes.computeIfAbsent(effect, none -> new TreeSet<>(PAIR_BY_KEY)).add(cause);
            }
        }
        return effects.isEmpty() ? closed : closed.stream().map(finding -> linked(finding, effects, causes)).toList();
    }

    private static Finding linked(Finding finding, Map<Pair, Set<Pair>> effects, Map<Pair, Set<Pair>> causes) {
        Set<Pair> explained = effects.getOrDefault(finding.pair(), Set.of());
        Set<Pair> explaining = causes.getOrDefault(finding.pair(), Set.of());
        return explained.isEmpty() && explaining.isEmpty() ? finding : finding.linked(List.copyOf(explained), List.copyOf(explaining));
    }
}
