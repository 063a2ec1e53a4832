package org.loamlight.evaluation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.loamlight.criterion.BodyMeasure;
import org.loamlight.criterion.Bound;
import org.loamlight.criterion.Citation;
import org.loamlight.criterion.CodeReader;
import org.loamlight.criterion.Criterion;
import org.loamlight.criterion.Grade;
import org.loamlight.criterion.Knowledge;
import org.loamlight.criterion.Limit;
import org.loamlight.criterion.Profile;
import org.loamlight.finding.RuleName;
import org.loamlight.quantity.Unit;
import org.loamlight.setup.Purpose;
import org.loamlight.setup.Stated;

/** The knowledge is complete and holds together. */
class CatalogueTest {
    private static final Knowledge KNOWLEDGE = BuiltIn.KNOWLEDGE;
    private static final Set<String> GRADED_IN_STEPS = Set.of("air.humidity", "heat.air-night-high", "heat.air-night-low", "heat.air-warm-day",
            "heat.capacity", "heat.runaway", "heat.surface-cool", "light.uv-excess", "water.depth");

    private static Collection<Criterion> criteria() {
        return KNOWLEDGE.criteria().values();
    }

    private static Stream<Limit> limits() {
        return KNOWLEDGE.profiles().values().stream().flatMap(profile -> profile.limits().stream());
    }

    @Test
    void each_folder_carries_the_id_of_its_criterion_below_its_topic() throws IOException {
        try (Stream<Path> files = Files.walk(CriterionExamples.CRITERIA)) {
            Set<String> folders = files.filter(file -> file.endsWith("criterion.md")).map(file -> file.getParent().toString())
                    .collect(Collectors.toCollection(TreeSet::new));
            Set<String> expected = criteria().stream().map(one -> Path.of("rules", "criteria", one.topic(), one.id()).toString())
                    .collect(Collectors.toCollection(TreeSet::new));
            assertEquals(expected, folders);
            assertTrue(folders.size() >= 25, folders.size() + " criteria");
        }
    }

    /** An id behind which nothing stands says what it waits for; one that waits no longer must not go on saying so. */
    @Test
    void each_id_an_audit_knows_is_a_criterion_or_says_what_it_waits_for() throws IOException {
        Map<String, String> listed = Files.readAllLines(Path.of("src", "test", "resources", "catalogue", "criteria.txt")).stream()
                .filter(line -> !line.isBlank() && !line.startsWith("#")).map(line -> line.split(": ", 2))
                .collect(Collectors.toMap(parts -> parts[0], parts -> parts.length > 1 ? parts[1] : ""));
        Set<String> waiting = listed.entrySet().stream().filter(one -> !one.getValue().isBlank()).map(Map.Entry::getKey).collect(Collectors.toSet());
        Set<String> lacking = new TreeSet<>(listed.keySet());
        lacking.removeAll(KNOWLEDGE.criteria().keySet());
        assertEquals(new TreeSet<>(waiting), lacking);
        assertTrue(listed.size() > 100, listed.size() + " ids");
    }

    /** Nothing known is dangerous: the examples of that criterion rest on a made-up species, which must be left behind as soon as one is. */
    @Test
    void no_known_species_is_dangerous_so_a_made_up_one_stands_in() {
        assertEquals(Set.of(), KNOWLEDGE.profiles().values().stream().filter(profile -> profile.species().dangerous() != Stated.NO)
                .map(profile -> profile.species().id()).collect(Collectors.toSet()));
        assertEquals(Stated.YES, BuiltIn.WITH_MADE_UP.profile("serpens-ficta").species().dangerous());
    }

    @Test
    void rule_names_are_unique_over_all_packages_and_begin_with_their_criterion() {
        Set<String> seen = new HashSet<>(KNOWLEDGE.limitRules());
        for (Criterion criterion : criteria()) {
            for (String rule : criterion.rules()) {
                assertTrue(seen.add(rule), "twice: " + rule);
                assertTrue(rule.equals(criterion.id()) || rule.startsWith(criterion.id() + " "), rule);
            }
        }
    }

    @Test
    void each_criterion_is_judged_by_limits_or_by_rules_of_its_own() {
        for (Criterion criterion : criteria()) {
            boolean hasRules = !criterion.rules().isEmpty();
            assertTrue(criterion.isLimit() || hasRules, criterion.id());
            assertTrue(!criterion.heldByRule() || hasRules && !criterion.quantities().isEmpty(), criterion.id());
        }
    }

    @Test
    void each_page_says_everything() {
        for (Criterion criterion : criteria()) {
            assertFalse(criterion.page().requirement().isBlank(), criterion.id() + " requirement");
            assertFalse(criterion.page().why().isBlank(), criterion.id() + " why");
            assertFalse(criterion.page().measure().isBlank(), criterion.id() + " how to measure");
            assertFalse(criterion.page().correctFor("").isBlank(), criterion.id() + " how to correct");
            assertFalse(criterion.citations().isEmpty(), criterion.id() + " sources");
            assertEquals("0.1.0", criterion.since(), criterion.id());
        }
    }

    /** The checklist asks to act today wherever something is a danger, and then the way to safety must be safe itself. */
    @Test
    void where_something_can_be_a_danger_the_page_says_what_keeps_the_animal_safe_until_then() {
        Set<String> byLimit = limits().filter(limit -> limit.grade().filter(Grade.CRITICAL::equals).isPresent()).map(Limit::criterion)
                .collect(Collectors.toSet());
        for (Criterion criterion : criteria()) {
            Set<String> dangers = criterion.grades().keySet().stream().filter(variant -> criterion.gradeOf(variant) == Grade.CRITICAL)
                    .collect(Collectors.toCollection(TreeSet::new));
            if (criterion.grade() == Grade.CRITICAL || byLimit.contains(criterion.id())) {
                dangers.add("");
            }
            dangers.forEach(variant -> assertFalse(criterion.page().meanwhileFor(variant).isBlank(), criterion.id() + " " + variant));
            assertEquals(dangers.isEmpty(), criterion.page().meanwhile().isEmpty(), criterion.id());
        }
    }

    /** Unplugging the only heat can kill. */
    @Test
    void whoever_says_to_switch_off_what_warms_says_what_becomes_of_the_warmth() {
        Pattern off = Pattern.compile("(?i)unplug|switch (it|the heater|this lamp) off|pull the plug");
        List<String> texts = criteria().stream().flatMap(criterion -> criterion.page().meanwhile().values().stream()).filter(text -> off.matcher(text).find()).toList();
        texts.forEach(text -> assertTrue(text.contains("{without-heat}"), text));
        assertTrue(texts.size() >= 10, texts.toString());
    }

    @Test
    void each_variant_a_page_grades_or_words_is_a_rule() {
        for (Criterion criterion : criteria()) {
            Set<String> variants = criterion.rules().stream().map(RuleName::variant).collect(Collectors.toSet());
            variants.add("");
            Set<String> worded = new TreeSet<>(criterion.grades().keySet());
            worded.addAll(criterion.page().found().keySet());
            worded.addAll(criterion.page().correct().keySet());
            worded.addAll(criterion.page().meanwhile().keySet());
            worded.removeAll(variants);
            assertEquals(Set.of(), worded, criterion.id());
        }
    }

    @Test
    void each_fault_has_words_for_what_was_found() throws IOException {
        for (Criterion criterion : criteria()) {
            for (String rule : faultRules(criterion)) {
                assertFalse(criterion.page().foundFor(RuleName.variant(rule)).isBlank(), rule);
            }
        }
    }

    private static List<String> faultRules(Criterion criterion) throws IOException {
        Path drl = CriterionExamples.CRITERIA.resolve(Path.of(criterion.topic(), criterion.id(), "criterion.drl"));
        List<String> rules = new ArrayList<>();
        if (Files.exists(drl)) {
            Matcher faults = Pattern.compile("new Fault\\( \"([^\"]+)\"").matcher(Files.readString(drl));
            while (faults.find()) {
                rules.add(faults.group(1));
            }
        }
        return rules;
    }

    @Test
    void each_source_cited_exists_and_each_source_listed_is_cited() {
        Set<String> cited = new TreeSet<>();
        criteria().forEach(criterion -> criterion.citations().stream().map(Citation::source).forEach(cited::add));
        limits().map(limit -> limit.citation().source()).forEach(cited::add);
        KNOWLEDGE.profiles().values().forEach(profile -> profile.habits().values().stream().map(Citation::source).forEach(cited::add));
        CodeReader.builtIn(CodeReader.ids()).forEach(code -> {
            cited.add(code.source());
            code.points().forEach(point -> cited.add(point.source()));
        });
        assertEquals(KNOWLEDGE.sources().keySet(), cited);
    }

    @Test
    void each_caution_named_exists_and_each_caution_is_named_or_general() {
        Set<String> known = KNOWLEDGE.cautions().stream().map(one -> one.id()).collect(Collectors.toCollection(TreeSet::new));
        Set<String> named = criteria().stream().flatMap(one -> one.cautions().stream()).collect(Collectors.toCollection(TreeSet::new));
        assertTrue(known.containsAll(named), () -> named + " against " + known);
        KNOWLEDGE.cautions().forEach(caution -> assertTrue(caution.general() || named.contains(caution.id()), caution.id()));
    }

    @Test
    void each_limit_belongs_to_a_criterion_that_is_about_its_topic() {
        assertTrue(limits().count() > 20);
        limits().forEach(limit -> {
            Criterion criterion = KNOWLEDGE.criterion(limit.criterion());
            assertTrue(criterion.quantities().contains(limit.topic()), limit.criterion() + " is not about " + limit.topic());
        });
    }

    @Test
    void the_lower_end_of_a_limit_is_not_above_its_upper_end() {
        limits().filter(limit -> limit.atLeast().isPresent() && limit.atMost().isPresent()).forEach(limit -> {
            double low = inUnit(limit.atLeast().get(), limit);
            double high = inUnit(limit.atMost().get(), limit);
            assertTrue(low < high, limit.criterion() + ": " + low + " to " + high);
        });
    }

    private static double inUnit(Bound bound, Limit limit) {
        if (bound instanceof Bound.Constant constant) {
            Unit unit = limit.topic().unit();
            return constant.unit().convert(constant.value(), unit);
        }
        return ((Bound.Factor) bound).factor().doubleValue();
    }

    @Test
    void each_limit_that_was_not_chosen_says_why() {
        limits().filter(limit -> !limit.chosen()).forEach(limit -> assertFalse(limit.why().isBlank(),
                limit.criterion() + " " + limit.citation().source()));
    }

    @Test
    void each_species_has_a_chosen_limit_for_each_limit_criterion_or_says_why_not() {
        List<String> lacking = new ArrayList<>();
        for (Profile profile : KNOWLEDGE.profiles().values()) {
            criteria().stream().filter(criterion -> !criterion.quantities().isEmpty() && !criterion.informs())
                    .filter(criterion -> profile.chosen(criterion.id()).findAny().isEmpty() && profile.whyNotMeant(criterion.id()).isEmpty())
                    .forEach(criterion -> lacking.add(profile.species().id() + " has nothing for " + criterion.id() + " " + criterion.quantities()));
        }
        assertEquals(List.of(), lacking, "each needs a chosen limit or an entry in not-meant");
        assertTrue(KNOWLEDGE.profiles().size() >= 2);
    }

    @Test
    void each_criterion_has_examples_of_every_kind() {
        List<String> lacking = new ArrayList<>();
        for (Criterion criterion : criteria()) {
            Set<String> kinds = CriterionExamples.all().stream().filter(example -> example.criterion().equals(criterion.id()))
                    .map(example -> example.name().replaceFirst(":.*", "")).collect(Collectors.toSet());
            Set<String> wanted = new TreeSet<>(criterion.informs() ? Set.of("conforming") : Set.of("conforming", "nonconforming"));
            if (!criterion.reads().isEmpty()) {
                wanted.add("evidence missing");
            }
            if (criterion.isLimit()) {
                wanted.add("at the limit");
            }
            if (canBeNotApplicable(criterion)) {
                wanted.add("not applicable");
            }
            wanted.removeAll(kinds);
            wanted.forEach(kind -> lacking.add(criterion.id() + " has no example of: " + kind));
        }
        assertEquals(List.of(), lacking);
    }

    /** A habit that every known species has cannot be shown to be lacking. */
    private static boolean canBeNotApplicable(Criterion criterion) {
        return criterion.purposes().size() < Purpose.values().length || criterion.appliesWhen().stream()
                .anyMatch(condition -> condition.isAboutThing() || KNOWLEDGE.profiles().values().stream()
                        .anyMatch(profile -> !condition.mayHold(profile.species())));
    }

    /** What a source prints is a shortfall, what drives the animal out is harm: where both stand side by side nobody shall have to guess. */
    @Test
    void each_limit_of_air_and_water_depth_says_its_grade_where_others_of_its_criterion_do() {
        Set<String> graded = limits().filter(limit -> limit.chosen() && limit.grade().isPresent()).map(Limit::criterion)
                .filter(GRADED_IN_STEPS::contains).collect(Collectors.toCollection(TreeSet::new));
        assertEquals(GRADED_IN_STEPS, graded);
        List<String> silent = limits().filter(limit -> limit.chosen() && limit.grade().isEmpty() && graded.contains(limit.criterion()))
                .map(limit -> limit.criterion() + " " + limit.citation().source() + " " + limit.why()).toList();
        assertEquals(List.of(), silent);
    }

    /** Else the question that decides is missed without being listed, and a form asks another one. */
    @Test
    void what_a_chosen_limit_asks_of_the_animal_its_criterion_reads() {
        Set<String> unread = limits().filter(Limit::chosen).flatMap(limit -> askedOfAnimal(limit)
                .filter(question -> !KNOWLEDGE.criterion(limit.criterion()).reads().contains(question))
                .map(question -> limit.criterion() + " " + question)).collect(Collectors.toCollection(TreeSet::new));
        assertEquals(Set.of(), unread);
        assertTrue(limits().flatMap(CatalogueTest::askedOfAnimal).count() > 100);
    }

    private static Stream<String> askedOfAnimal(Limit limit) {
        Stream.Builder<String> asked = Stream.builder();
        if (!limit.scope().stages().isEmpty()) {
            asked.add("animals[].stage");
        }
        if (!limit.scope().sexes().isEmpty()) {
            asked.add("animals[].sex");
        }
        if (!limit.scope().size().isAny()) {
            asked.add("animals[].length");
        }
        if (!limit.scope().shell().isAny()) {
            asked.add("animals[].carapace");
        }
        Stream<String> measures = Stream.concat(limit.atLeast().stream(), limit.atMost().stream()).filter(Bound.Factor.class::isInstance)
                .map(bound -> ((Bound.Factor) bound).of()).filter(BodyMeasure::isOfAnimal).map(BodyMeasure::question);
        return Stream.concat(asked.build(), measures);
    }

    @Test
    void what_a_criterion_needs_it_also_reads() {
        criteria().forEach(criterion -> assertTrue(criterion.reads().containsAll(criterion.needs()), criterion.id()));
    }
}
