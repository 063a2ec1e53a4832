package org.loamlight.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.loamlight.evaluation.BuiltIn;
import org.loamlight.finding.Finding;

/**
 * Whatever is done to a setup, it is either told what is wrong with it or can be audited: never a stack trace. Seeds are fixed; a longer run for the
 * night: {@code mvn test -Dtest=SetupMutationTest -Dmutations=200000}.
 */
class SetupMutationTest {
    private static final int MUTATIONS = Integer.getInteger("mutations", 3_000);
    private static final ObjectMapper JSON = new ObjectMapper();

    private static final String WORDS_ONLY = Given.text("""
            'title': 'in words', 'enclosure': {'inside': {'length': '4 ft', 'depth': '2 ft', 'height': '18 in'}, 'openings': []},
            'heaters': [{'name': 'panel', 'kind': 'radiant panel', 'place': 'warm end, top', 'reachable': false}],
            'furnishings': [{'name': 'cave', 'kind': 'hide', 'place': 'cool end', 'extent': '12 in', 'mass': 'one hand'},
                            {'name': 'branch', 'kind': 'branch', 'place': {'zone': 'middle', 'above': '10 in'}, 'rest-height': '12 in'}],
            'water': {'offered': 'dish'}, 'care': {'water-change': 'daily'},
            'readings': [{'name': 'probe', 'of': 'air temperature', 'place': 'cool end', 'time': 'day', 'value': '78 °F ± 1 °F'}]""");
    private static final String LIGHT = Given.text("""
            'on': '2026-11-02', 'enclosure': {'inside': {'length': '100 cm', 'depth': '40 cm', 'height': '45 cm'}}, 'substrate': {'depth': '4 cm', 'moisture': 'dry'},
            'lamps': [{'name': 'tube', 'kind': 'UV tube', 'lit-length': '55 cm', 'place': {'along': '60 cm', 'above': '52 cm'}, 'between': [{'what': 'mesh', 'passes': '60 %'}],
                       'readings': [{'index': 3.1, 'distance': '30 cm', 'instrument': 'UV meter', 'on': '2026-10-30'}], 'minimum-distance': '30 cm'},
                      {'name': 'bulb', 'kind': 'UV bulb', 'readings': [{'index': '4', 'distance': '1 ft'}], 'nearest-rest': '40 cm', 'between': []}],
            'furnishings': [{'name': 'stone', 'kind': 'stone', 'from': '0 cm', 'to': '40 cm', 'top': '12 cm', 'rest-height': '12 cm', 'stands-on': 'substrate', 'mass': '2 kg'}]""");

    private static List<JsonNode> setups() throws IOException {
        List<JsonNode> setups = new ArrayList<>(List.of(JSON.readTree(Given.text("")), JSON.readTree(WORDS_ONLY), JSON.readTree(LIGHT)));
        try (Stream<Path> files = Files.list(Path.of("examples"))) {
            for (Path file : files.filter(found -> found.toString().endsWith(".json")).sorted().toList()) {
                setups.add(JSON.readTree(Files.readString(file, StandardCharsets.UTF_8)));
            }
        }
        return setups;
    }

    private int audited;
    private int complained;
    private int brokenJson;

    @Test
    void whatever_is_done_to_a_setup_it_is_audited_or_complained_about() throws IOException {
        List<JsonNode> setups = setups();
        assertTrue(setups.size() > 6, "setups to begin with: " + setups.size());
        for (int seed = 0; seed < MUTATIONS; seed++) {
            byte[] damaged = new Mutator(seed).damaged(setups.get(seed % setups.size()));
            try {
                take(damaged);
            } catch (RuntimeException | StackOverflowError e) {
                throw new AssertionError("seed " + seed + ": " + new String(damaged, StandardCharsets.UTF_8), e);
            }
        }
        assertTrue(audited > MUTATIONS / 5 && complained > MUTATIONS / 5 && brokenJson > MUTATIONS / 50,
                audited + " audited, " + complained + " complained about, " + brokenJson + " of them for their syntax, of " + MUTATIONS);
    }

    private void take(byte[] bytes) {
        try {
            Setup setup = SetupReader.read("setup.json", bytes, Given.SPECIES);
            audited++;
            List<Finding> findings = BuiltIn.AUDITOR.audit(setup, BuiltIn.ON).findings();
            assertFalse(findings.isEmpty());
        } catch (ProblemsFound e) {
            complained++;
            brokenJson += e.getMessage().contains("this is not JSON") ? 1 : 0;
            e.problems().forEach(SetupMutationTest::assertTellable);
        }
    }

    private static void assertTellable(Problem problem) {
        String text = problem.text();
        assertFalse(problem.found().isBlank() || problem.allowed().isBlank() && problem.line() > 0, text);
        assertEquals(problem.line() > 0, problem.column() > 0, text);
        assertTrue(text.length() < 2_000 && text.codePoints().noneMatch(Character::isISOControl), text);
    }

    @Test
    void the_same_seed_makes_the_same_damage_and_another_seed_another() throws IOException {
        JsonNode setup = JSON.readTree(LIGHT);
        long different = Stream.iterate(0L, seed -> seed + 1).limit(100).map(seed -> new String(new Mutator(seed).damaged(setup), StandardCharsets.ISO_8859_1))
                .distinct().count();
        assertTrue(different > 80, "different damages of 100: " + different);
        assertTrue(Arrays.equals(new Mutator(7).damaged(setup), new Mutator(7).damaged(setup)));
    }
}
