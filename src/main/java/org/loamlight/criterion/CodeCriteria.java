package org.loamlight.criterion;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import org.loamlight.setup.SubjectKind;

/** Turns what chosen codes ask in figures into criteria and limits beside those of the species. */
final class CodeCriteria {
    private final Knowledge plain;
    private final Set<String> species;

    /** @param species ids of the species that are kept; points for others are left out */
    CodeCriteria(Knowledge plain, Set<String> species) {
        this.plain = plain;
        this.species = species;
    }

    Knowledge with(List<Code> codes) {
        Map<String, Criterion> criteria = new TreeMap<>(plain.criteria());
        Map<String, List<Limit>> limits = new HashMap<>();
        for (Code code : codes) {
            code.points().stream().filter(point -> point.isFor(species)).forEach(point -> {
                Criterion criterion = criterion(code, point);
                criteria.put(criterion.id(), criterion);
                List<Limit> asked = point.limits().stream().map(limit -> limit.of(criterion.id())).toList();
                point.species().forEach(kept -> limits.computeIfAbsent(kept, none -> new ArrayList<>()).addAll(asked));
            });
        }
        return new Knowledge(plain.version(), plain.sha256(), criteria, profiles(limits), plain.sources(), plain.cautions(), plain.limitRules(),
                plain.speciesNames(), codes, plain.house());
    }

    private Map<String, Profile> profiles(Map<String, List<Limit>> limits) {
        Map<String, Once<Profile>> profiles = new TreeMap<>();
        plain.profiles().keySet().forEach(id -> profiles.put(id, Once.by(() -> {
            Profile profile = plain.profile(id);
            return limits.containsKey(id) && species.contains(id) ? profile.with(limits.get(id)) : profile;
        })));
        return new OnDemand<>(Once.of(profiles));
    }

    private Criterion criterion(Code code, CodePoint point) {
        Optional<Criterion> beside = point.beside().map(plain::criterion);
        return new Criterion(code.criterion(point.id()), title(code, point), beside.map(Criterion::need).orElse(Need.ENVIRONMENT), point.grade(), Map.of(),
                SubjectKind.ENCLOSURE, List.of(), point.purposes(), List.of(),
                point.reads().isEmpty() ? beside.map(Criterion::reads).orElse(List.of()) : point.reads(),
                point.limits().stream().map(Limit::topic).distinct().toList(), false, false, point.decision(),
                List.of(new Citation(point.source(), point.clause(), point.standing())), List.of(), plain.version(),
                Page.onDemand(() -> page(code, point, beside)), List.of());
    }

    private static String title(Code code, CodePoint point) {
        return filled(code.page().found().getOrDefault("", ""), code, point);
    }

    /** How to measure and to correct is told by the criterion beside; what all codes share stands before it. */
    private static Page page(Code code, CodePoint point, Optional<Criterion> beside) {
        UnaryOperator<String> fill = text -> filled(text, code, point);
        Page shared = code.page();
        String measure = beside.map(criterion -> criterion.page().measure()).orElse(shared.measure());
        String correct = fill.apply(shared.correctFor(""));
        return new Page(fill.apply(shared.requirement()), fill.apply(shared.why()), measure, Map.of("", correct), fill.apply(shared.exceptions()), Map.of());
    }

    private static String filled(String text, Code code, CodePoint point) {
        return text.replace("{code}", code.name()).replace("{clause}", point.clause()).replace("{asks}", point.asks());
    }
}
