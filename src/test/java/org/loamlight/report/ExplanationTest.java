package org.loamlight.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.loamlight.criterion.Citation;
import org.loamlight.criterion.Criterion;
import org.loamlight.criterion.Form;
import org.loamlight.criterion.Limit;
import org.loamlight.criterion.Profile;
import org.loamlight.evaluation.BuiltIn;
import org.loamlight.wording.EveryLocale;

class ExplanationTest {
    private static final int WIDTH = 80;
    private final Explanation explanation = new Explanation(BuiltIn.KNOWLEDGE, Audited.METRIC);

    static Collection<Criterion> criteria() {
        return BuiltIn.KNOWLEDGE.criteria().values();
    }

    static Collection<Profile> profiles() {
        return BuiltIn.KNOWLEDGE.profiles().values();
    }

    private static String joined(String page) {
        return page.replaceAll("\\s+", " ");
    }

    private static void assertFits(String page) {
        page.lines().forEach(line -> assertTrue(line.codePointCount(0, line.length()) <= WIDTH, line));
        assertFalse(page.matches("(?s).*\\{\\w+}.*"), "no slot is left open: " + page);
    }

    @ParameterizedTest
    @MethodSource("criteria")
    void the_page_of_a_criterion_tells_all_that_is_known_of_it(Criterion criterion) {
        String page = explanation.of(criterion.id());
        assertFits(page);
        String text = joined(page);
        assertTrue(text.startsWith(joined(criterion.id() + " " + criterion.title())), text);
        assertTrue(text.contains(joined(criterion.page().requirement())), text);
        assertTrue(text.contains(joined(criterion.page().why())), text);
        assertTrue(text.contains(joined(criterion.page().measure())), text);
        criterion.citations().forEach(citation -> assertTrue(text.contains(joined(BuiltIn.KNOWLEDGE.source(citation.source()).title())), text));
        if (!criterion.quantities().isEmpty()) {
            profiles().forEach(profile -> limits(profile, criterion).forEach(limit -> assertTold(limit, text)));
        }
    }

    private static Stream<Limit> limits(Profile profile, Criterion criterion) {
        return profile.limits().stream().filter(limit -> limit.criterion().equals(criterion.id()));
    }

    private static void assertTold(Limit limit, String text) {
        assertTrue(text.contains(joined(Audited.METRIC.limit(limit)) + " Used " + (limit.chosen() ? "applied" : "not applied")), text);
        assertTrue(text.contains(joined(limit.why())), text);
        assertTrue(text.contains("From " + joined(Audited.METRIC.source(limit.citation()))), text);
    }

    @Test
    void with_a_species_only_its_limits_are_told() {
        String page = explanation.criterion("space.length", "corn snake");
        assertFits(page);
        assertTrue(page.contains("LIMITS FOR CORN SNAKE"), page);
        assertFalse(page.contains("LIMITS FOR CALIFORNIA KINGSNAKE"), page);
        assertEquals(page, explanation.criterion("space.length", "Pantherophis guttatus"));
    }

    @ParameterizedTest
    @MethodSource("profiles")
    void the_page_of_a_species_tells_habits_limits_and_what_is_not_meant(Profile profile) {
        String page = explanation.of(profile.species().id());
        assertFits(page);
        String text = joined(page);
        Set<String> told = new LinkedHashSet<>(Explanation.habits(profile.species()).keySet());
        told.add("adult-length");
        told.addAll(Explanation.grounds(Audited.METRIC, profile.species()).keySet());
        Map<String, Citation> habits = new LinkedHashMap<>(profile.habits());
        if (profile.species().form() != Form.SNAKE) {
            habits.remove("eats-snakes");
        }
        assertEquals(habits.keySet(), told);
        habits.values().forEach(citation -> assertTrue(text.contains(joined(Audited.METRIC.source(citation))), text));
        profile.limits().forEach(limit -> assertTold(limit, text));
        profile.notMeant().forEach(one -> assertTrue(text.contains(one.criterion() + ": " + joined(one.reason())), text));
    }

    @Test
    void a_species_is_found_by_any_of_its_names() {
        String page = explanation.of("pantherophis-guttatus");
        for (String name : List.of("corn snake", "Corn Snake", "Pantherophis guttatus", " corn snake ")) {
            assertEquals(page, explanation.of(name));
        }
    }

    @Test
    void an_unknown_name_says_what_is_near() {
        assertEquals("There is no point and no species called \"heat.gard\". Nearest known: heat.guard, heat.reach.",
                assertThrows(NoSuchElementException.class, () -> explanation.of("heat.gard")).getMessage());
        assertEquals("There is no point and no species called \"qqqqqqqqqqqqqqq\". See the lists of criteria and of species.",
                assertThrows(NoSuchElementException.class, () -> explanation.of("qqqqqqqqqqqqqqq")).getMessage());
        String unknown = assertThrows(NoSuchElementException.class, () -> explanation.criterion("heat.guard", "qqq")).getMessage();
        assertTrue(unknown.startsWith("There is no species called \"qqq\". Known are ") && unknown.contains("pantherophis-guttatus"), unknown);
        assertThrows(NoSuchElementException.class, () -> explanation.criterion("heat.gard", "corn snake"));
        assertThrows(NoSuchElementException.class, () -> explanation.criteriaList("qqq"));
        assertThrows(NoSuchElementException.class, () -> explanation.species("qqq"));
    }

    @Test
    void the_lists_name_every_criterion_and_every_species() {
        String all = explanation.criteriaList();
        assertFits(all);
        criteria().forEach(criterion -> assertTrue(joined(all).contains(criterion.id() + " " + joined(criterion.title())), all));
        String species = explanation.speciesList();
        assertFits(species);
        profiles().forEach(profile -> assertTrue(joined(species).contains(profile.species().id() + " " + profile.species().english()), species));
    }

    @ParameterizedTest
    @MethodSource("profiles")
    void the_list_of_a_species_leaves_out_what_does_not_hold_for_it(Profile profile) {
        String list = explanation.criteriaList(profile.species().id());
        assertFits(list);
        for (Criterion criterion : criteria()) {
            boolean holds = profile.whyNotMeant(criterion.id()).isEmpty()
                    && (criterion.quantities().isEmpty() || profile.chosen(criterion.id()).findAny().isPresent());
            assertEquals(holds, list.contains("\n" + criterion.id() + " "), criterion.id() + " in " + list);
        }
    }

    @Test
    void pages_do_not_change_with_the_default_locale() {
        assertEquals(1, EveryLocale.texts(() -> explanation.of("space.length") + explanation.of("corn snake") + explanation.criteriaList()).size());
        assertEquals(Set.of(explanation.of("CORN SNAKE")), EveryLocale.texts(() -> explanation.of("CORN SNAKE")));
    }
}
