package org.loamlight.evaluation;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.loamlight.criterion.Code;
import org.loamlight.criterion.CodeClause;
import org.loamlight.criterion.CodePoint;
import org.loamlight.criterion.Limit;
import org.loamlight.criterion.LimitResolver;
import org.loamlight.criterion.Profile;
import org.loamlight.criterion.Resolution;
import org.loamlight.criterion.ResolvedLimit;
import org.loamlight.finding.Finding;
import org.loamlight.finding.Held;
import org.loamlight.finding.Result;
import org.loamlight.quantity.Place;
import org.loamlight.quantity.Topic;
import org.loamlight.setup.Subject;

/** Puts what codes ask side by side, from the findings of one audit. */
final class CodesCompared {
    private final List<Code> codes;
    private final List<Profile> kept;
    private final LimitResolver resolver;
    private final Map<String, List<Finding>> findings;

    CodesCompared(Audit audit) {
        this.codes = audit.knowledge().codes();
        this.kept = audit.setup().species().stream().sorted().map(audit.knowledge()::profile).toList();
        this.resolver = new LimitResolver(audit.setup(), audit.knowledge());
        this.findings = audit.findings().stream().collect(Collectors.groupingBy(finding -> finding.criterion().id(), TreeMap::new, Collectors.toList()));
    }

    SideBySide table() {
        Map<Thing, List<SideBySide.ByCode>> asked = new TreeMap<>();
        codes.forEach(code -> code.points().stream().filter(point -> isKept(point.species()))
                .forEach(point -> things(point).forEach(thing -> findings.getOrDefault(code.criterion(point.id()), List.of())
                        .forEach(finding -> asked.computeIfAbsent(thing, none -> new ArrayList<>()).add(byCode(code, point, finding, thing))))));
        return new SideBySide(codes, asked.entrySet().stream().map(entry -> row(entry.getKey(), entry.getValue())).toList(),
                codes.stream().flatMap(this::inWords).toList());
    }

    private boolean isKept(Set<String> ids) {
        return ids.isEmpty() || kept.stream().anyMatch(profile -> ids.contains(profile.species().id()));
    }

    /** What is limited, and where. */
    private record Thing(Topic topic, Place place) implements Comparable<Thing> {
        private static final Comparator<Thing> ORDER = Comparator.comparing(Thing::topic).thenComparing(thing -> thing.place().zone())
                .thenComparing(thing -> thing.place().item());

        static Thing of(Limit limit, Subject subject) {
            return new Thing(limit.topic(), limit.placeFor(subject));
        }

        @Override
        public int compareTo(Thing other) {
            return ORDER.compare(this, other);
        }
    }

    private static List<Thing> things(CodePoint point) {
        return point.limits().stream().filter(Limit::chosen).map(limit -> Thing.of(limit, Subject.ENCLOSURE)).distinct().toList();
    }

    private SideBySide.ByCode byCode(Code code, CodePoint point, Finding finding, Thing thing) {
        Predicate<Limit> here = limit -> Thing.of(limit, finding.subject()).equals(thing);
        SideBySide.Asked asked = asked(finding, here);
        return new SideBySide.ByCode(code, point, asked, asked.result() == Result.NOT_APPLICABLE ? List.of() : otherwise(finding, here));
    }

    /** What a criterion asks of the things {@code here}, whatever it asks elsewhere. */
    private SideBySide.Asked asked(Finding finding, Predicate<Limit> here) {
        if (finding.result() == Result.NOT_APPLICABLE) {
            return new SideBySide.Asked(finding, List.of(), Set.of(), Optional.empty(), Result.NOT_APPLICABLE);
        }
        Resolution resolution = resolver.resolve(finding.criterion(), finding.subject(), here.and(Limit::chosen));
        List<Held> deciding = Closing.deciding(finding.held().stream().filter(held -> resolution.limits().contains(held.limit())).toList());
        return new SideBySide.Asked(finding, each(resolution.limits()), resolution.missing(), deciding.stream().findFirst(),
                result(finding, resolution, deciding));
    }

    /** As a whole pair is closed, for the limits of one thing; what rules found goes for all of it. */
    private static Result result(Finding finding, Resolution resolution, List<Held> deciding) {
        if (!finding.criterion().isLimit() || !finding.variants().isEmpty()) {
            return finding.result();
        }
        if (resolution.isEmpty()) {
            return Result.NOT_APPLICABLE;
        }
        if (deciding.stream().anyMatch(Closing::isSurelyOutside)) {
            return Result.NONCONFORMITY;
        }
        boolean allHeld = resolution.missing().isEmpty() && deciding.size() == Set.copyOf(resolution.limits()).size();
        return allHeld ? deciding.get(0).decision().result() : Result.NO_EVIDENCE;
    }

    /** Without those that differ only in the animal they were stated for. */
    private static List<ResolvedLimit> each(Collection<ResolvedLimit> limits) {
        Map<List<Object>, ResolvedLimit> each = new LinkedHashMap<>();
        limits.forEach(limit -> each.putIfAbsent(numbers(limit), limit));
        return List.copyOf(each.values());
    }

    private static List<Object> numbers(ResolvedLimit limit) {
        return List.of(limit.topic(), limit.place(), limit.where(), limit.low(), limit.high());
    }

    /** The readings not taken that ask other numbers of some animal than the one that was. */
    private List<SideBySide.Otherwise> otherwise(Finding finding, Predicate<Limit> here) {
        Set<Object> taken = ofEachAnimal(resolve(finding, here.and(Limit::chosen)));
        List<SideBySide.Otherwise> otherwise = new ArrayList<>();
        policies(finding, here).forEach(policy -> {
            List<ResolvedLimit> limits = resolve(finding, here.and(limit -> !limit.chosen() && limit.why().equals(policy)));
            if (!taken.containsAll(ofEachAnimal(limits))) {
                otherwise.add(new SideBySide.Otherwise(policy, each(limits)));
            }
        });
        return otherwise;
    }

    private List<ResolvedLimit> resolve(Finding finding, Predicate<Limit> which) {
        return resolver.resolve(finding.criterion(), finding.subject(), which).limits();
    }

    private static Set<Object> ofEachAnimal(List<ResolvedLimit> limits) {
        return limits.stream().map(limit -> List.of(limit.animal(), numbers(limit))).collect(Collectors.toSet());
    }

    private List<String> policies(Finding finding, Predicate<Limit> here) {
        return kept.stream().flatMap(profile -> profile.notChosen(finding.criterion().id())).filter(here).map(Limit::why).distinct().toList();
    }

    private SideBySide.Row row(Thing thing, List<SideBySide.ByCode> asked) {
        Predicate<Finding> concerns = finding -> !finding.criterion().isOfCode() && finding.criterion().quantities().contains(thing.topic())
                && !finding.criterion().informs() && finding.result() != Result.NOT_APPLICABLE;
        List<SideBySide.Asked> own = findings.values().stream().flatMap(List::stream).filter(concerns)
                .map(finding -> asked(finding, limit -> limit.topic() == thing.topic() && limit.placeFor(finding.subject()).isWithin(thing.place())))
                .filter(one -> !one.limits().isEmpty() || !one.missing().isEmpty()).toList();
        return new SideBySide.Row(thing.topic(), thing.place(), own, asked);
    }

    private Stream<SideBySide.InWords> inWords(Code code) {
        return code.clauses().stream().filter(clause -> isKept(clause.species())).map(clause -> new SideBySide.InWords(code, clause, worst(clause)));
    }

    /** In the order in which results are told the worst comes first. */
    private Optional<Result> worst(CodeClause clause) {
        return clause.judgedBy().stream().flatMap(id -> findings.getOrDefault(id, List.of()).stream()).map(Finding::result).min(Comparator.naturalOrder());
    }
}
