package org.loamlight.evaluation;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Few enough rules to be written by hand as well, compiled without all others: that a rule is matched costs time, whether it fires or not.
 * Besides joins, {@code not} and {@code exists} there is nothing else in the rules: the house style allows no {@code accumulate}.
 */
final class ChosenRules {
    /** Holds each value against each limit that is meant for it. */
    private static final String LIMITS = "limits held";

    /** A limit, a value and another limit; three facts joined, and none of a kind; one of two exists; an animal, its species; one exists. */
    static final Set<String> FIVE = Set.of(FiveRulesByHand.LIT_TOO_WIDE, FiveRulesByHand.UNHEATED, FiveRulesByHand.BARE_WAY, FiveRulesByHand.GRAVID_UNTOLD,
            FiveRulesByHand.EMISSIVITY_UNTOLD);

    private ChosenRules() {
    }

    /** Those that hold limits, and those that take values out. */
    static RuleBase limits() {
        return compiled(Set.of(LIMITS));
    }

    static RuleBase limitsAndFive() {
        return compiled(Stream.concat(Stream.of(LIMITS), FIVE.stream()).collect(Collectors.toSet()));
    }

    private static RuleBase compiled(Set<String> names) {
        Predicate<DrlRule> voids = rule -> rule.then().contains("new Voided(");
        requireAllThere(names);
        return CompiledAtStart.of(DrlSource.only(voids.or(rule -> names.contains(rule.name()))));
    }

    private static void requireAllThere(Set<String> names) {
        Set<String> lacking = new TreeSet<>(names);
        DrlSource.all().forEach(source -> lacking.removeIf(name -> source.text().contains("rule \"" + name + "\"")));
        if (!lacking.isEmpty()) {
            throw new IllegalStateException("There are no such rules to compare with: " + List.copyOf(lacking));
        }
    }
}
