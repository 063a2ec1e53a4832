package org.loamlight;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.loamlight.criterion.Grade;
import org.loamlight.evaluation.Audit;
import org.loamlight.evaluation.BuiltIn;
import org.loamlight.finding.Finding;
import org.loamlight.finding.Result;
import org.loamlight.ranking.Ranking;
import org.loamlight.setup.Animal;
import org.loamlight.setup.JsonValue;
import org.loamlight.setup.ProblemsFound;
import org.loamlight.setup.Setup;

/** Whole setups, each judged by hand from the sources its expectation names. */
class WholeSetupsTest {
    private static final Path EXPECTED = Path.of("src", "test", "resources", "whole-setups");
    private static final Path EXAMPLES = Path.of("examples");
    private static final String ENDING = ".expected.json";

    /** A finding that must be there; no grade where grades mean nothing. */
    private record Must(String criterion, String subject, String result, String grade) {
    }

    private record Expected(String reasoning, String conclusion, List<Must> must, Set<String> grave) {
    }

    static List<String> setups() {
        try (Stream<Path> files = Files.list(EXPECTED)) {
            return files.map(file -> file.getFileName().toString()).filter(name -> name.endsWith(ENDING))
                    .map(name -> name.substring(0, name.length() - ENDING.length())).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test
    void at_least_twelve_are_judged_two_lizards_a_tortoise_and_a_chameleon_among_them() {
        List<String> kinds = setups().stream().flatMap(name -> setup(name).animals().stream())
                .map(Animal::species).distinct().toList();
        assertTrue(setups().size() >= 12, setups().toString());
        assertTrue(kinds.containsAll(List.of("pogona-vitticeps", "eublepharis-macularius", "testudo-hermanni", "chamaeleo-calyptratus")), kinds.toString());
    }

    @ParameterizedTest
    @MethodSource("setups")
    void says_what_must_be_found_by_hand(String name) {
        Expected expected = expected(name);
        assertTrue(expected.reasoning().length() > 80 && !expected.must().isEmpty(), "judged with reasons: " + name);
        List<Finding> findings = audit(name).findings();
        assertAll(name, expected.must().stream().map(must -> isThere(must, findings)));
    }

    @ParameterizedTest
    @MethodSource("setups")
    void finds_exactly_the_grave_faults_found_by_hand(String name) {
        Set<String> grave = audit(name).findings().stream().filter(one -> one.result() == Result.NONCONFORMITY)
                .filter(one -> one.grade() == Grade.CRITICAL || one.grade() == Grade.MAJOR).map(WholeSetupsTest::pair)
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(expected(name).grave(), grave, name);
    }

    @ParameterizedTest
    @MethodSource("setups")
    void comes_to_the_conclusion_come_to_by_hand(String name) {
        assertEquals(expected(name).conclusion(), Ranking.of(audit(name).findings()).conclusion().name(), name);
    }

    private static Executable isThere(Must must, List<Finding> findings) {
        List<String> found = findings.stream().filter(one -> pair(one).equals(must.criterion() + " " + must.subject()))
                .map(one -> one.result() + (must.grade().isEmpty() ? "" : " " + one.grade())).toList();
        String wanted = must.result() + (must.grade().isEmpty() ? "" : " " + must.grade());
        return () -> assertEquals(List.of(wanted), found, must.criterion() + " of " + must.subject());
    }

    private static String pair(Finding finding) {
        return finding.criterion().id() + " " + (finding.subject().name().isEmpty() ? "enclosure" : finding.subject().name());
    }

    private static Audit audit(String name) {
        Setup setup = setup(name);
        return BuiltIn.AUDITOR.audit(setup, setup.on().orElseThrow());
    }

    private static Setup setup(String name) {
        try {
            return BuiltIn.setup(Files.readString(EXAMPLES.resolve(name + ".json")));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (ProblemsFound e) {
            throw new AssertionError(name + ": " + e.getMessage(), e);
        }
    }

    private static Expected expected(String name) {
        Map<String, JsonValue> members = members(BuiltIn.json(EXPECTED.resolve(name + ENDING)));
        List<Must> must = elements(members.get("must")).stream().map(WholeSetupsTest::members)
                .map(one -> new Must(text(one, "criterion"), text(one, "subject"), text(one, "result"), text(one, "grade"))).toList();
        Set<String> grave = elements(members.get("grave")).stream()
                .map(one -> elements(one).stream().map(WholeSetupsTest::text).collect(Collectors.joining(" ")))
                .collect(Collectors.toCollection(TreeSet::new));
        return new Expected(text(members, "reasoning"), text(members, "conclusion"), must, grave);
    }

    private static Map<String, JsonValue> members(JsonValue value) {
        return ((JsonValue.JsonObject) value).members();
    }

    private static List<JsonValue> elements(JsonValue value) {
        return ((JsonValue.JsonArray) value).elements();
    }

    private static String text(JsonValue value) {
        return ((JsonValue.JsonText) value).text();
    }

    /** The text of a member; empty when it is left out. */
    private static String text(Map<String, JsonValue> members, String name) {
        return members.containsKey(name) ? text(members.get(name)) : "";
    }
}
