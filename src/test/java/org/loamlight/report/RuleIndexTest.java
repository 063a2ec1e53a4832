package org.loamlight.report;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.loamlight.GoldenFile;
import org.loamlight.evaluation.BuiltIn;
import org.loamlight.wording.EveryLocale;

/** The generated pages are in step with rules/. */
class RuleIndexTest {
    private static final Path RULES = Path.of("rules");
    private static final Path DOCS = Path.of("docs");
    private static final Path SPECIES = DOCS.resolve("species");

    @Test
    void the_index_is_in_step_with_the_folders() {
        GoldenFile.assertMatches(RULES.resolve("README.md"), RuleIndex.markdown(BuiltIn.KNOWLEDGE));
    }

    @Test
    void the_page_of_sources_is_in_step_with_the_rules() {
        GoldenFile.assertMatches(DOCS.resolve("criteria.md"), SourceIndex.markdown(BuiltIn.KNOWLEDGE));
    }

    @Test
    void each_species_has_its_page_and_each_page_its_species() throws IOException {
        Map<String, String> pages = speciesPages();
        assertAll(pages.entrySet().stream().map(page -> () -> GoldenFile.assertMatches(SPECIES.resolve(page.getKey()), page.getValue())));
        try (Stream<Path> files = Files.list(SPECIES)) {
            assertEquals(pages.keySet(), files.map(file -> file.getFileName().toString()).collect(Collectors.toCollection(TreeSet::new)));
        }
    }

    private static Map<String, String> speciesPages() {
        return BuiltIn.KNOWLEDGE.profiles().values().stream().collect(Collectors.toMap(profile -> profile.species().id() + ".md",
                profile -> SpeciesPage.markdown(BuiltIn.KNOWLEDGE, profile), (one, other) -> one, TreeMap::new));
    }

    @Test
    void every_link_of_a_species_page_leads_to_a_source_or_a_criterion() {
        String sources = SourceIndex.markdown(BuiltIn.KNOWLEDGE);
        speciesPages().forEach((name, page) -> {
            Set<String> linked = links(page);
            assertTrue(linked.size() > 20, name);
            linked.forEach(link -> assertTrue(link.startsWith("../criteria.md#")
                    ? sources.contains("<a id=\"" + link.substring("../criteria.md#".length()) + "\"></a>")
                    : Files.exists(SPECIES.resolve(link).normalize()), () -> name + " " + link));
        });
    }

    private static Set<String> links(String page) {
        return Pattern.compile("\\]\\(([^)]+)\\)").matcher(page).results().map(match -> match.group(1)).collect(Collectors.toCollection(TreeSet::new));
    }

    /** Of a gecko nobody asks whether it eats other snakes. */
    @Test
    void what_makes_no_sense_of_a_species_is_not_said_of_it() {
        Map<String, String> pages = speciesPages();
        assertFalse(pages.get("eublepharis-macularius.md").contains("other snakes"));
        assertFalse(pages.get("testudo-hermanni.md").contains("other snakes"));
        assertTrue(pages.get("pantherophis-guttatus.md").contains("does not eat other snakes"));
        assertTrue(pages.get("lampropeltis-californiae.md").contains("eats other snakes, its own kind included"));
    }

    @Test
    void the_index_links_to_the_page_of_every_criterion() {
        Set<String> linked = Pattern.compile("\\]\\((criteria/[^)]+)\\)").matcher(RuleIndex.markdown(BuiltIn.KNOWLEDGE)).results()
                .map(match -> match.group(1)).collect(Collectors.toCollection(TreeSet::new));
        assertEquals(BuiltIn.KNOWLEDGE.criteria().size(), linked.size());
        linked.forEach(link -> assertTrue(Files.exists(RULES.resolve(link)), link));
    }

    @Test
    void every_link_of_the_page_of_sources_has_its_row_or_its_file() {
        String page = SourceIndex.markdown(BuiltIn.KNOWLEDGE);
        Set<String> linked = Pattern.compile("\\]\\(#([^)]+)\\)").matcher(page).results().map(match -> match.group(1)).collect(Collectors.toSet());
        assertTrue(linked.size() > 2, page);
        linked.forEach(id -> assertTrue(page.contains("<a id=\"" + id + "\"></a>"), id));
        links(page).stream().filter(link -> !link.startsWith("#")).forEach(link -> assertTrue(Files.exists(DOCS.resolve(link).normalize()), link));
    }

    @Test
    void every_row_has_as_many_cells_as_its_table() {
        allPages().forEach(RuleIndexTest::requireEvenRows);
    }

    static void requireEvenRows(String page) {
        long columns = 0;
        for (String line : page.split("\n")) {
            long bars = line.replace("\\|", "").chars().filter(sign -> sign == '|').count();
            assertTrue(bars == 0 || columns == 0 || bars == columns, line);
            columns = bars;
        }
    }

    @Test
    void generated_pages_do_not_change_with_the_default_locale() {
        assertEquals(1, EveryLocale.texts(() -> String.join("", allPages())).size());
    }

    private static List<String> allPages() {
        return Stream.concat(Stream.of(RuleIndex.markdown(BuiltIn.KNOWLEDGE), SourceIndex.markdown(BuiltIn.KNOWLEDGE)), speciesPages().values().stream())
                .toList();
    }
}
