package org.loamlight.evaluation;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Stream;
import org.loamlight.criterion.Knowledge;
import org.loamlight.criterion.LimitUse;
import org.loamlight.finding.Fault;
import org.loamlight.finding.Held;
import org.loamlight.finding.Missing;
import org.loamlight.finding.Voided;

/** The ways of judging the same facts, by how much they judge. What they have in common they state alike, to the last digit. */
public enum Way {
    ALL_RULES(null, knowledge -> session(knowledge, RuleBase.load(knowledge))),
    FIVE_RULES(ChosenRules.FIVE, knowledge -> session(knowledge, ChosenRules.limitsAndFive())),
    FIVE_BY_HAND(ChosenRules.FIVE, knowledge -> new FiveRulesByHand()),
    LIMIT_RULES(Set.of(), knowledge -> session(knowledge, ChosenRules.limits())),
    LIMITS_BY_HAND(Set.of(), knowledge -> new LimitsByHand(Held::of)),
    LIMITS_AS_EXPRESSIONS(Set.of(), knowledge -> new LimitsByHand(new LimitExpressions()::held));

    private final Set<String> rules;
    private final Function<Knowledge, WayOfJudging> maker;

    /** @param rules beside the limits those that are judged by; null for all there are */
    Way(Set<String> rules, Function<Knowledge, WayOfJudging> maker) {
        this.rules = rules;
        this.maker = maker;
    }

    private static WayOfJudging session(Knowledge knowledge, RuleBase base) {
        Auditor auditor = new Auditor(knowledge, base);
        return asked -> auditor.evaluate(asked, List.of());
    }

    /**
     * Makes it ready and compares what it states of every setup with what the program states.
     *
     * @throws IllegalStateException when they differ, or when one of its rules states nothing at all, so that nothing was compared
     */
    WayOfJudging make(Knowledge knowledge, List<Auditor.Asked> setups) {
        WayOfJudging made = maker.apply(knowledge);
        WayOfJudging program = ALL_RULES.maker.apply(knowledge);
        Set<String> seen = new HashSet<>();
        for (int i = 0; i < setups.size(); i++) {
            Map<Object, Integer> expected = counted(program, setups.get(i));
            if (!expected.equals(counted(made, setups.get(i)))) {
                throw new IllegalStateException(this + " states something else than the program of setup " + i + " of the mixed set");
            }
            expected.keySet().forEach(one -> seen.add(name(one)));
        }
        requireSeen(seen);
        return made;
    }

    private void requireSeen(Set<String> seen) {
        Set<String> expected = new TreeSet<>(rules == null ? Set.of() : rules);
        expected.addAll(Set.of(Held.class.getSimpleName(), Voided.class.getSimpleName()));
        expected.removeAll(seen);
        if (!expected.isEmpty()) {
            throw new IllegalStateException("No setup of the mixed set shows what is compared: " + expected);
        }
    }

    /** How many times each thing is stated; the order in which it is has no meaning. */
    private Map<Object, Integer> counted(WayOfJudging way, Auditor.Asked asked) {
        Statements statements = way.judge(asked);
        Map<Object, Integer> counted = new HashMap<>();
        Stream.of(statements.held(), statements.voided(), statements.faults(), statements.missing()).flatMap(List::stream)
                .filter(one -> rules == null || isJudged(one)).forEach(one -> counted.merge(one, 1, Integer::sum));
        return counted;
    }

    /** Rules of logic that are not chosen may hold a limit as well, of a criterion that is not judged by limits. */
    private boolean isJudged(Object stated) {
        return stated instanceof Held held ? held.limit().use() != LimitUse.OWN_RULES : stated instanceof Voided || rules.contains(name(stated));
    }

    /** The rule that stated it, or for limits held and values voided that it is one. */
    private static String name(Object stated) {
        return stated instanceof Fault fault ? fault.ruleName() : stated instanceof Missing missing ? missing.ruleName() : stated.getClass().getSimpleName();
    }
}
