package org.loamlight.evaluation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.loamlight.finding.Finding;
import org.loamlight.finding.Pair;
import org.loamlight.finding.Result;
import org.loamlight.setup.JsonValue;
import org.loamlight.setup.ProblemsFound;
import org.loamlight.setup.Words;

/** Every named case of every criterion gives exactly the findings written beside it. */
class ExamplesTest {

    static List<CriterionExamples.Case> cases() {
        return CriterionExamples.all();
    }

    @Test
    void there_are_examples_for_every_criterion() {
        assertEquals(BuiltIn.KNOWLEDGE.criteria().keySet(),
                new TreeSet<>(cases().stream().map(CriterionExamples.Case::criterion).toList()));
        assertTrue(cases().size() > BuiltIn.KNOWLEDGE.criteria().size() * 2);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void example_gives_exactly_the_expected_findings(CriterionExamples.Case example) throws ProblemsFound {
        assertEquals(expected(example), found(example, BuiltIn.AUDITOR), example.toString());
    }

    /** A line for each finding of the example's criterion, as this auditor gives it. */
    static String found(CriterionExamples.Case example, Auditor auditor) throws ProblemsFound {
        return found(example, auditor.audit(BuiltIn.setup(CriterionExamples.text(example.setup())), BuiltIn.ON).findings());
    }

    /** A line for each of these findings that is of the example's criterion. */
    static String found(CriterionExamples.Case example, List<Finding> findings) {
        Map<String, String> found = new TreeMap<>();
        findings.stream()
                .filter(finding -> finding.criterion().id().equals(example.criterion()))
                .forEach(finding -> found.put(finding.subject().key(), described(finding)));
        return lines(found);
    }

    /** The same lines as the example writes them. */
    static String expected(CriterionExamples.Case example) {
        Map<String, String> expected = new TreeMap<>();
        example.expect().forEach(one -> expected.put(CriterionExamples.string(one, "subject"), described(one)));
        return lines(expected);
    }

    private static String lines(Map<String, String> findings) {
        StringBuilder lines = new StringBuilder();
        findings.forEach((subject, text) -> lines.append(subject).append(": ").append(text).append('\n'));
        return lines.toString();
    }

    static String described(Finding finding) {
        String grade = finding.result() == Result.NONCONFORMITY ? Words.of(finding.grade()) : "";
        return String.join(" | ", Words.of(finding.result()), grade, "variants " + finding.variants().stream().filter(v -> !v.isEmpty()).toList(),
                "missing " + finding.missing(), "explains " + finding.explains().stream().map(Pair::key).toList(),
                "explained by " + finding.explainedBy().stream().map(Pair::key).toList(),
                "voided " + finding.voided().stream().map(voided -> voided.quantity().source()).distinct().toList());
    }

    private static String described(JsonValue.JsonObject expected) {
        return String.join(" | ", CriterionExamples.string(expected, "result"), CriterionExamples.string(expected, "grade"),
                "variants " + CriterionExamples.strings(expected, "variants"), "missing " + CriterionExamples.strings(expected, "missing"),
                "explains " + CriterionExamples.strings(expected, "explains"),
                "explained by " + CriterionExamples.strings(expected, "explained-by"), "voided " + CriterionExamples.strings(expected, "voided"));
    }
}
