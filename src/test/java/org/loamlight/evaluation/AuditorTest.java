package org.loamlight.evaluation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.loamlight.criterion.Grade;
import org.loamlight.criterion.Knowledge;
import org.loamlight.criterion.NotMeant;
import org.loamlight.criterion.Profile;
import org.loamlight.finding.Finding;
import org.loamlight.finding.Pair;
import org.loamlight.finding.Result;
import org.loamlight.quantity.Quantity;
import org.loamlight.quantity.Topic;
import org.loamlight.ranking.Conclusion;
import org.loamlight.ranking.Ranking;
import org.loamlight.setup.ProblemsFound;
import org.loamlight.setup.Setup;

class AuditorTest {
    private static final String BARE = "{\"format\": 1, \"animals\": [{\"name\": \"Marl\", \"species\": \"lampropeltis-californiae\"}]}";

    private static String example(String name) throws IOException {
        return Files.readString(Path.of("examples", name), StandardCharsets.UTF_8);
    }

    @Test
    void a_setup_that_tells_nothing_is_never_conforming_where_something_is_read() throws ProblemsFound {
        Audit audit = BuiltIn.audit(BARE);
        List<String> passes = audit.findings().stream().filter(finding -> finding.result() == Result.CONFORMITY)
                .filter(finding -> !finding.criterion().reads().isEmpty()).map(finding -> finding.pair().key()).toList();
        assertEquals(List.of(), passes);
        assertEquals(Conclusion.EVIDENCE_INCOMPLETE, Ranking.of(audit.findings()).conclusion());
    }

    @Test
    void a_setup_that_tells_nothing_gives_no_nonconformity_either() throws ProblemsFound {
        assertEquals(List.of(), BuiltIn.audit(BARE).findings().stream().filter(finding -> finding.result() == Result.NONCONFORMITY)
                .map(finding -> finding.pair().key()).toList());
    }

    @Test
    void missing_evidence_alone_is_never_a_danger() throws ProblemsFound {
        List<Finding> unknown = BuiltIn.audit(BARE).findings().stream().filter(finding -> finding.result() == Result.NO_EVIDENCE).toList();
        assertTrue(unknown.size() > 20, unknown.size() + " findings");
        unknown.forEach(finding -> assertTrue(finding.grade() != Grade.CRITICAL, finding.pair().key()));
    }

    /** Glass lets nothing through, so nobody need have told how long the tube behind it is. */
    @Test
    void a_blocked_tube_whose_length_nobody_told_gives_no_ultraviolet() throws ProblemsFound {
        Audit audit = BuiltIn.audit("""
                {"format": 1, "animals": [{"name": "Sorrel", "species": "chamaeleo-calyptratus", "stage": "adult", "length": "40 cm"}],
                 "enclosure": {"inside": {"length": "90 cm", "depth": "50 cm", "height": "90 cm"}, "warm-end": "left"}, "furnishings": [],
                 "lamps": [{"name": "tube", "kind": "UV tube", "place": {"along": "30 cm", "above": "80 cm"}, "between": [{"what": "glass"}], "nearest-rest": "12 cm"}]}
                """);
        List<Double> indices = audit.quantities().stream().filter(quantity -> quantity.topic() == Topic.UV_INDEX).map(Quantity::value).toList();
        assertTrue(!indices.isEmpty() && indices.stream().allMatch(index -> index == 0), indices.toString());
    }

    @Test
    void each_pair_is_closed_exactly_once_and_each_criterion_has_at_least_one() throws IOException, ProblemsFound {
        try (Stream<Path> examples = Files.list(Path.of("examples"))) {
            for (Path example : examples.filter(file -> file.toString().endsWith(".json")).toList()) {
                List<Finding> findings = BuiltIn.audit(Files.readString(example)).findings();
                Set<Pair> pairs = findings.stream().map(Finding::pair).collect(Collectors.toSet());
                assertEquals(pairs.size(), findings.size(), example.toString());
                assertEquals(BuiltIn.KNOWLEDGE.criteria().keySet(),
                        findings.stream().map(finding -> finding.criterion().id()).collect(Collectors.toSet()), example.toString());
            }
        }
    }

    /** Common practice, no source: an adult king snake kept as described is kept well; if this fails, the rules are wrong. */
    @Test
    void the_calibration_setup_has_no_critical_and_no_major_finding() throws IOException, ProblemsFound {
        Ranking ranking = Ranking.of(BuiltIn.audit(example("calibration.json")).findings());
        assertEquals(List.of(), ranking.open().stream().filter(finding -> finding.grade().atLeast(Grade.MAJOR)).map(finding -> finding.pair().key()).toList());
        assertEquals(Conclusion.READY, ranking.conclusion());
    }

    private static Finding findingFor(String criterion, Knowledge knowledge) throws IOException, ProblemsFound {
        return new Auditor(knowledge, BuiltIn.RULES).audit(BuiltIn.setup(example("calibration.json")), BuiltIn.ON).findings().stream()
                .filter(finding -> finding.criterion().id().equals(criterion)).findFirst().orElseThrow();
    }

    private static Knowledge withKingsnake(UnaryOperator<Profile> changed) {
        Knowledge built = BuiltIn.KNOWLEDGE;
        Map<String, Profile> profiles = new HashMap<>(built.profiles());
        profiles.computeIfPresent("lampropeltis-californiae", (id, profile) -> changed.apply(profile));
        return new Knowledge(built.version(), built.sha256(), built.criteria(), profiles, built.sources(), built.cautions(), built.limitRules());
    }

    @Test
    void a_criterion_not_meant_for_the_species_does_not_apply_and_says_why() throws IOException, ProblemsFound {
        Finding finding = findingFor("space.length", withKingsnake(profile -> new Profile(profile.species(), profile.also(), profile.note(),
                profile.habits(), profile.limits(), List.of(new NotMeant("space.length", "It lives in a tube.")))));
        assertEquals(Result.NOT_APPLICABLE, finding.result());
        assertEquals("It lives in a tube.", finding.reason());
    }

    @Test
    void a_criterion_without_a_limit_for_this_animal_does_not_apply_and_says_so() throws IOException, ProblemsFound {
        Finding finding = findingFor("space.length", withKingsnake(profile -> new Profile(profile.species(), profile.also(), profile.note(),
                profile.habits(), profile.limits().stream().filter(limit -> !limit.criterion().equals("space.length")).toList(), List.of())));
        assertEquals(Result.NOT_APPLICABLE, finding.result());
        assertEquals("not-applicable.no-limit", finding.reason());
    }

    @Test
    void rules_that_are_not_those_of_the_catalogue_end_the_audit_that_waits_for_them() throws IOException, ProblemsFound {
        Setup setup = BuiltIn.setup(example("calibration.json"));
        Auditor auditor = new Auditor(BuiltIn.KNOWLEDGE, () -> {
            throw new AuditFailure("The compiled rules are not those of the catalogue");
        });
        assertThrows(AuditFailure.class, () -> auditor.audit(setup, BuiltIn.ON));
        assertEquals(new Auditor(BuiltIn.KNOWLEDGE, BuiltIn.RULES).audit(setup, BuiltIn.ON),
                new Auditor(BuiltIn.KNOWLEDGE, () -> BuiltIn.RULES).audit(setup, BuiltIn.ON));
    }

    @Test
    void many_audits_at_once_give_the_same_findings_as_one_and_leave_no_session_behind() throws Exception {
        List<String> setups = List.of(example("foster-corn-snake.json"), example("calibration.json"), example("arrival-kingsnake.json"));
        List<List<Finding>> expected = new ArrayList<>();
        for (String setup : setups) {
            expected.add(BuiltIn.audit(setup).findings());
        }
        ExecutorService pool = Executors.newFixedThreadPool(4);
        try {
            List<Future<List<Finding>>> audits = new ArrayList<>();
            for (int i = 0; i < 300; i++) {
                String setup = setups.get(i % setups.size());
                audits.add(pool.submit(() -> BuiltIn.audit(setup).findings()));
            }
            Set<List<Finding>> seen = new HashSet<>();
            for (int i = 0; i < audits.size(); i++) {
                assertEquals(expected.get(i % setups.size()), audits.get(i).get());
                seen.add(audits.get(i).get());
            }
            assertEquals(setups.size(), seen.size());
        } finally {
            pool.shutdownNow();
        }
        assertTrue(BuiltIn.RULES.hasNoOpenSession());
    }

    /** A session that was emptied is lent again: what stood in it before must not be seen. */
    @Test
    void setups_audited_one_after_the_other_know_nothing_of_each_other() throws Exception {
        for (String name : List.of("two-king-snakes.json", "calibration.json", "indoor-tortoise.json", "calibration.json", "two-king-snakes.json")) {
            Auditor alone = new Auditor(BuiltIn.WITH_MADE_UP, RuleBase.load(BuiltIn.KNOWLEDGE));
            Setup setup = BuiltIn.setup(example(name));
            assertEquals(alone.audit(setup, BuiltIn.ON).findings(), BuiltIn.audit(example(name)).findings(), name);
        }
    }

    @Test
    void a_session_in_which_a_rule_failed_is_not_lent_again() throws Exception {
        Setup setup = BuiltIn.setup(example("calibration.json"));
        RuleBase rules = RuleBase.load(BuiltIn.KNOWLEDGE);
        int[] fired = {0};
        Auditor failing = new Auditor(BuiltIn.WITH_MADE_UP, rules, match -> {
            if (++fired[0] > 20) {
                throw new IllegalStateException("made to fail");
            }
            return true;
        });
        AuditFailure failure = assertThrows(AuditFailure.class, () -> failing.audit(setup, BuiltIn.ON));
        assertTrue(failure.getMessage().contains("made to fail"), failure.getMessage());
        assertTrue(rules.hasNoOpenSession());
        assertEquals(BuiltIn.audit(example("calibration.json")).findings(), new Auditor(BuiltIn.WITH_MADE_UP, rules).audit(setup, BuiltIn.ON).findings());
    }
}
