package org.loamlight.evaluation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Changes every rule in every small way: a comparison turned, a pattern, a constraint or an alternative dropped, {@code not}
 * and {@code exists} exchanged. Some example of the criterion, or some whole setup, must have another outcome then.
 */
class RuleMutationTest {
    /** {@code -Dmutants=cover.} makes the mutants of the criteria whose id begins so, and no others. */
    private static final String BEGINNING = System.getProperty("mutants", "");
    private static final Path EXAMPLES = Path.of("examples");
    private static final Path LIMITS = Path.of("rules", "limits.drl");

    @Test
    void every_mutant_is_noticed() throws IOException {
        List<JudgedSetup> wholes = wholes();
        List<MutatedRules> shown = rules().parallelStream()
                .map(file -> shown(new MutatedRules(file, mutant -> !EquivalentMutant.isAmong(mutant)), file, wholes)).toList();
        Set<String> unnoticed = shown.stream().flatMap(one -> one.survivors().stream()).map(RuleMutant::key).collect(Collectors.toCollection(TreeSet::new));
        int made = shown.stream().mapToInt(MutatedRules::made).sum();
        assertTrue(made > 0 && (made > rules().size() * 30 || !BEGINNING.isEmpty()), made + " mutants");
        assertEquals(Set.of(), unnoticed, "no example notices, of " + made + " mutants");
    }

    private static boolean isOfCriterion(String name) {
        return name.startsWith(BEGINNING);
    }

    private static Stream<RuleMutant> mutants(Path file) {
        return DrlRule.in(file).stream().flatMap(rule -> RuleMutant.of(rule).stream());
    }

    @Test
    void each_reason_why_a_mutant_is_no_other_rule_holds_for_some() {
        List<RuleMutant> all = DrlLintTest.rules().stream().flatMap(RuleMutationTest::mutants).toList();
        for (EquivalentMutant kind : EquivalentMutant.values()) {
            assertTrue(all.stream().anyMatch(kind::covers), kind.name());
        }
    }

    /**
     * The mutants of one file after its own examples, the whole setups, its own examples with namesakes, and each two of its own
     * examples side by side were shown to them.
     */
    private static MutatedRules shown(MutatedRules rules, Path file, List<JudgedSetup> wholes) {
        List<CriterionExamples.Case> own = CriterionExamples.all().stream()
                .filter(example -> file.equals(LIMITS) || example.criterion().equals(rules.criterion())).toList();
        rules.showEach(own.stream().map(JudgedSetup::of));
        rules.showEach(wholes.stream());
        if (file.equals(LIMITS)) {
            rules.showEach(CountedOnceTest.judged());
        } else {
            rules.showEach(own.stream().flatMap(Namesakes::of).map(JudgedSetup::of).filter(JudgedSetup::isAsExpected));
            rules.showEach(Neighbours.of(own).map(JudgedSetup::of).filter(JudgedSetup::isAsExpected));
        }
        return rules;
    }

    private static List<Path> rules() {
        return DrlLintTest.rules().stream().filter(file -> !file.toString().contains("TEMPLATE"))
                .filter(file -> file.equals(LIMITS) ? isOfCriterion("limits") : isOfCriterion(file.getParent().getFileName().toString())).toList();
    }

    private static List<JudgedSetup> wholes() throws IOException {
        try (Stream<Path> files = Files.list(EXAMPLES)) {
            return files.filter(file -> file.toString().endsWith(".json")).sorted().map(JudgedSetup::of).toList();
        }
    }
}
