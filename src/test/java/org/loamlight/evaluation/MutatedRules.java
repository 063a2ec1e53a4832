package org.loamlight.evaluation;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** The mutants of the rules of one file, and which of them no setup has noticed yet. */
final class MutatedRules {
    private final String criterion;
    private final List<RuleMutant> mutants;
    private final Map<DrlRule, Integer> originals = new HashMap<>();
    private final MutantBase base;
    private final Set<Integer> alive;

    /** @param made which of the mutants are made */
    MutatedRules(Path file, Predicate<RuleMutant> made) {
        List<DrlRule> rules = DrlRule.in(file);
        mutants = rules.stream().flatMap(rule -> RuleMutant.of(rule).stream()).filter(made).filter(RuleMutant::isComplete).toList();
        criterion = rules.get(0).criterion();
        alive = new TreeSet<>(IntStream.range(0, mutants.size()).boxed().toList());
        List<MutantBase.Variant> variants = new ArrayList<>();
        mutants.forEach(mutant -> variants.add(new MutantBase.Variant(mutant.rule(), mutant.when())));
        for (DrlRule rule : rules) {
            originals.put(rule, variants.size());
            variants.add(new MutantBase.Variant(rule, rule.when()));
        }
        base = MutantBase.compile(criterion, variants);
    }

    /** Takes out the mutants with which one of these setups has another outcome; stops when none is left. */
    void showEach(Stream<JudgedSetup> setups) {
        setups.takeWhile(setup -> !alive.isEmpty()).forEach(this::show);
    }

    /** Most mutants state just what their rule states, and need no judging. */
    private void show(JudgedSetup setup) {
        Set<Integer> firing = new HashSet<>(alive);
        firing.addAll(originals.values());
        Map<Integer, Set<Object>> stated = base.statements(setup.facts(), firing);
        requireSame(setup, stated);
        Map<List<Object>, Boolean> judged = new HashMap<>();
        alive.removeIf(number -> {
            DrlRule rule = mutants.get(number).rule();
            Set<Object> now = stated.getOrDefault(number, Set.of());
            return !now.equals(stated.getOrDefault(originals.get(rule), Set.of()))
                    && judged.computeIfAbsent(List.of(rule, now), key -> setup.notices(rule.name(), now));
        });
    }

    /** A rule that was not changed states here what it states in the program, or nothing said here of the others would count. */
    private void requireSame(JudgedSetup setup, Map<Integer, Set<Object>> stated) {
        Set<Object> here = new HashSet<>();
        originals.values().forEach(number -> here.addAll(stated.getOrDefault(number, Set.of())));
        if (!setup.stated().containsAll(here)) {
            throw new AssertionError(setup.name() + ": unlike the program, the rules of " + criterion + " state " + here);
        }
        originals.forEach((rule, number) -> {
            if (!stated.getOrDefault(number, Set.of()).containsAll(setup.statedBy(rule.name()))) {
                throw new AssertionError(setup.name() + ": unlike in the program, " + rule.name() + " states " + stated.get(number));
            }
        });
    }

    String criterion() {
        return criterion;
    }

    int made() {
        return mutants.size();
    }

    List<RuleMutant> survivors() {
        return alive.stream().map(mutants::get).toList();
    }
}
