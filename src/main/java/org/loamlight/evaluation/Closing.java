package org.loamlight.evaluation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
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

    private final Pairs pairs;
    private final Statements statements;
    private final List<Quantity> quantities;

    Closing(Pairs pairs, Statements statements, List<Quantity> quantities) {
        this.pairs = pairs;
        this.quantities = quantities;
        this.statements = statements;
    }

    List<Finding> close(List<Pairs.Listed> listed) {
        List<Finding> closed = listed.stream().map(this::close).toList();
        return linked(closed).stream()
                .sorted(Comparator.comparing((Finding one) -> one.criterion().id()).thenComparing(one -> one.subject().key())).toList();
    }

    private Finding close(Pairs.Listed pair) {
        Draft draft = new Draft(pair.criterion(), pair.subject());
        if (!pair.notBecause().isEmpty()) {
            return draft.notApplicable(pair.notBecause());
        }
        if (pair.untold()) {
            return draft.noEvidence(List.of(pair.subject().kind().section()), List.of(), List.of(), List.of());
        }
        List<Fault> faults = statements.faults(draft.pair()).toList();
        return faults.isEmpty() ? closeByEvidence(pair, draft) : draft.faulty(faults);
    }

    private Finding closeByEvidence(Pairs.Listed pair, Draft draft) {
        List<Held> deciding = pair.criterion().isLimit() ? deciding(statements.held(pair.pair())) : List.of();
        List<Held> held = all(deciding, draft.pair());
        if (deciding.stream().anyMatch(Closing::isSurelyOutside)) {
            return draft.held(held);
        }
        List<ResolvedLimit> wanted = pair.criterion().isLimit() ? wanted(pair) : List.of();
        Set<String> missing = missing(pair, draft.pair(), wanted);
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
    static List<Held> deciding(Stream<Held> all) {
        Map<ResolvedLimit, List<Held>> byLimit = all.collect(Collectors.groupingBy(Held::limit));
        return byLimit.entrySet().stream().map(entry -> entry.getKey().where() == Where.SOMEWHERE
                ? entry.getValue().stream().max(WORST_FIRST).orElseThrow() : entry.getValue().stream().min(WORST_FIRST).orElseThrow())
                .sorted(WORST_FIRST).toList();
    }

    private List<Held> all(List<Held> deciding, Pair pair) {
        Set<Held> all = new LinkedHashSet<>(deciding);
        statements.held(pair).sorted(WORST_FIRST).forEach(all::add);
        return List.copyOf(all);
    }

    private List<ResolvedLimit> wanted(Pairs.Listed pair) {
        Set<ResolvedLimit> held = statements.held(pair.pair()).map(Held::limit).collect(Collectors.toSet());
        return pair.limits().limits().stream().filter(limit -> !held.contains(limit)).toList();
    }

    private Set<String> missing(Pairs.Listed pair, Pair key, List<ResolvedLimit> wanted) {
        Set<String> missing = new TreeSet<>(pairs.unanswered(pair.criterion().needs(), pair.subject()));
        statements.missing(key).forEach(missing::add);
        missing.addAll(pair.limits().missing());
        if (missing.isEmpty() && !wanted.isEmpty()) {
            missing.addAll(whereToLook(pair.criterion(), pair));
        }
        return missing;
    }

    /** The unanswered questions the criterion reads; where all seem answered, the section in which the reading is lacking. */
    private List<String> whereToLook(Criterion criterion, Pairs.Listed pair) {
        List<String> unanswered = pairs.unanswered(criterion.reads().stream().filter(path -> isOwn(path, pair)).toList(), pair.subject());
        return unanswered.isEmpty() ? criterion.reads().stream().map(path -> path.replaceFirst("\\[].*", "")).limit(1).toList() : unanswered;
    }

    private static boolean isOwn(String path, Pairs.Listed pair) {
        SubjectKind kind = pair.subject().kind();
        return !path.contains("[]") || path.startsWith(kind.section() + "[].") && path.indexOf("[]", kind.section().length() + 2) < 0;
    }

    private List<Voided> voided(List<ResolvedLimit> wanted) {
        return statements.voidedSorted().stream().filter(one -> wanted.stream().anyMatch(limit -> limit.isMeantFor(one.quantity()))).toList();
    }

    /** A cause is told only where it was found wrong, and only for findings that are open. */
    private List<Finding> linked(List<Finding> closed) {
        Map<Pair, Finding> byPair = closed.stream().collect(Collectors.toMap(Finding::pair, Function.identity()));
        Set<Explains> real = new LinkedHashSet<>();
        for (Explains explains : statements.explains()) {
            Finding cause = byPair.get(explains.causePair());
            Finding effect = byPair.get(explains.effectPair());
            if (cause != null && effect != null && cause.result() == Result.NONCONFORMITY && effect.isOpen()) {
                real.add(explains);
            }
        }
        return closed.stream().map(finding -> linked(finding, real)).toList();
    }

    private static Finding linked(Finding finding, Set<Explains> links) {
        List<Pair> effects = new ArrayList<>();
        List<Pair> causes = new ArrayList<>();
        for (Explains link : links) {
            if (link.causePair().equals(finding.pair())) {
                effects.add(link.effectPair());
            }
            if (link.effectPair().equals(finding.pair())) {
                causes.add(link.causePair());
            }
        }
        effects.sort(Comparator.comparing(Pair::key));
        causes.sort(Comparator.comparing(Pair::key));
        return effects.isEmpty() && causes.isEmpty() ? finding : finding.linked(effects, causes);
    }
}
