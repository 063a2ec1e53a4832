package org.loamlight.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.loamlight.GoldenFile;
import org.loamlight.evaluation.BuiltIn;
import org.loamlight.wording.EveryLocale;

/** The generated pages are in step with rules/. */
class RuleIndexTest {
    private static final Path RULES = Path.of("rules");

    @Test
    void the_index_is_in_step_with_the_folders() {
        GoldenFile.assertMatches(RULES.resolve("README.md"), RuleIndex.markdown(BuiltIn.KNOWLEDGE));
    }

    @Test
    void the_table_of_limits_is_in_step_with_the_profiles() {
        GoldenFile.assertMatches(Path.of("docs", "criteria.md"), RuleIndex.criteria(BuiltIn.KNOWLEDGE));
    }

    @Test
    void the_index_links_to_the_page_of_every_criterion() {
        Set<String> linked = Pattern.compile("\\]\\((criteria/[^)]+)\\)").matcher(RuleIndex.markdown(BuiltIn.KNOWLEDGE)).results()
                .map(match -> match.group(1)).collect(Collectors.toCollection(TreeSet::new));
        assertEquals(BuiltIn.KNOWLEDGE.criteria().size(), linked.size());
        linked.forEach(link -> assertTrue(Files.exists(RULES.resolve(link)), link));
    }

    @Test
    void every_link_of_the_table_of_limits_has_its_source() {
        String page = RuleIndex.criteria(BuiltIn.KNOWLEDGE);
        Set<String> linked = Pattern.compile("\\]\\(#([^)]+)\\)").matcher(page).results().map(match -> match.group(1)).collect(Collectors.toSet());
        assertTrue(linked.size() > 2, page);
        linked.forEach(id -> assertTrue(page.contains("<a id=\"" + id + "\"></a>"), id));
    }

    @Test
    void every_row_has_as_many_cells_as_its_table() {
        for (String page : Set.of(RuleIndex.markdown(BuiltIn.KNOWLEDGE), RuleIndex.criteria(BuiltIn.KNOWLEDGE))) {
            long columns = 0;
            for (String line : page.split("\n")) {
                long bars = line.replace("\\|", "").chars().filter(sign -> sign == '|').count();
                assertTrue(bars == 0 || columns == 0 || bars == columns, line);
                columns = bars;
            }
        }
    }

    @Test
    void generated_pages_do_not_change_with_the_default_locale() {
        assertEquals(1, EveryLocale.texts(() -> RuleIndex.markdown(BuiltIn.KNOWLEDGE) + RuleIndex.criteria(BuiltIn.KNOWLEDGE)).size());
    }
}
