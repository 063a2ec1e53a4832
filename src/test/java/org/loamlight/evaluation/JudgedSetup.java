package org.loamlight.evaluation;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.loamlight.criterion.Code;
import org.loamlight.finding.Fault;
import org.loamlight.finding.Finding;
import org.loamlight.finding.Missing;
import org.loamlight.setup.ProblemsFound;
import org.loamlight.setup.Setup;

/**
 * A setup whose outcome is written down, ready to be judged by rules of which one was changed.
 *
 * @param asked    before any rule
 * @param facts    what a single rule sees: all that is known, and what other rules voided and held
 * @param stated   what the rules as they stand state
 * @param told     what of the findings is written down
 * @param expected what is written down
 */
record JudgedSetup(String name, Auditor.Asked asked, List<Object> facts, Set<Object> stated,
        Function<List<Finding>, String> told, String expected) {

    /** An example of a criterion: the findings of that criterion are written down. */
    static JudgedSetup of(CriterionExamples.Case example) {
        return of(example.toString(), BuiltIn.AUDITOR.ask(setup(CriterionExamples.text(example.setup())), BuiltIn.ON),
                findings -> ExamplesTest.found(example, findings), ExamplesTest.expected(example));
    }

    /** Faults and missing answers this rule states as it stands. */
    List<Object> statedBy(String rule) {
        return stated.stream().filter(one -> one instanceof Fault fault && fault.ruleName().equals(rule)
                || one instanceof Missing missing && missing.ruleName().equals(rule)).toList();
    }

    /** Whether the rules as they stand give what is written down. */
    boolean isAsExpected() {
        return expected.equals(told.apply(BuiltIn.AUDITOR.judge(asked, List.of())));
    }

    /** A whole setup: all its findings stand in the report beside it, which {@code ExampleReportsTest} holds. */
    static JudgedSetup of(Path file) {
        try {
            Setup setup = setup(Files.readString(file));
            LocalDate on = setup.on().orElseThrow();
            return whole(file.toString(), BuiltIn.AUDITOR.ask(setup, on));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A setup with codes chosen: {@code CountedOnceTest} holds which of its findings are one shortfall. */
    static JudgedSetup of(String name, String json, List<Code> codes) {
        Setup setup = setup(json);
        return whole(name, new Auditor(BuiltIn.KNOWLEDGE.withCodes(codes, setup.species()), BuiltIn.RULES).ask(setup, BuiltIn.ON));
    }

    private static JudgedSetup whole(String name, Auditor.Asked asked) {
        return of(name, asked, JudgedSetup::all, all(BuiltIn.AUDITOR.judge(asked, List.of())));
    }

    private static JudgedSetup of(String name, Auditor.Asked asked, Function<List<Finding>, String> told, String expected) {
        List<Object> facts = new ArrayList<>(asked.facts());
        Statements stated = BuiltIn.AUDITOR.evaluate(asked, List.of());
        facts.addAll(stated.voided());
        facts.addAll(stated.held());
        Set<Object> all = new HashSet<>(stated.faults());
        List.of(stated.missing(), stated.held(), stated.voided(), stated.explains()).forEach(all::addAll);
        return new JudgedSetup(name, asked, facts, all, told, expected);
    }

    private static Setup setup(String json) {
        try {
            return BuiltIn.setup(json);
        } catch (ProblemsFound e) {
            throw new AssertionError(e.getMessage(), e);
        }
    }

    private static String all(List<Finding> findings) {
        return findings.stream().map(finding -> finding.pair().key() + ": " + ExamplesTest.described(finding)).collect(Collectors.joining("\n"));
    }

    /** Whether the outcome is another one where this rule states these things instead of its own. */
    boolean notices(String rule, Set<Object> instead) {
        Auditor without = new Auditor(BuiltIn.KNOWLEDGE, BuiltIn.RULES, match -> !match.getRule().getName().equals(rule));
        try {
            return !expected.equals(told.apply(without.judge(asked, instead)));
        } catch (AuditFailure e) {
            return true;
        }
    }
}
