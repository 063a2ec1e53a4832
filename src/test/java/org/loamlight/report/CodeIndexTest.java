package org.loamlight.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.loamlight.GoldenFile;
import org.loamlight.criterion.Code;
import org.loamlight.criterion.CodeReader;
import org.loamlight.evaluation.BuiltIn;
import org.loamlight.evaluation.MadeUpCodes;
import org.loamlight.wording.EveryLocale;

class CodeIndexTest {
    private static final Path DOCS = Path.of("docs");
    private static final List<Code> CODES = CodeReader.builtIn(CodeReader.ids());
    private static final String PAGE = CodeIndex.markdown(BuiltIn.KNOWLEDGE, CODES);

    @Test
    void the_page_is_in_step_with_the_codes() {
        GoldenFile.assertMatches(DOCS.resolve("codes.md"), PAGE);
    }

    @Test
    void every_code_and_every_policy_stands_on_it() {
        CODES.forEach(code -> {
            assertTrue(PAGE.contains("| `" + code.id() + "` "), code.id());
            code.policies().keySet().forEach(policy -> assertTrue(PAGE.contains("| " + policy + " |"), policy));
        });
    }

    /** The law made up for tests: three points, one with another reading by the policy "whole-group". */
    @Test
    void a_code_is_told_with_what_was_read_of_it_and_how_its_open_wording_is_read() {
        String page = CodeIndex.markdown(BuiltIn.KNOWLEDGE, List.of(MadeUpCodes.code(MadeUpCodes.LAW)));
        assertTrue(page.contains("| `marram-1` Marram law | Marram Coast Act on keeping reptiles (invented) | Marram Coast council, 1 May 2020 |"), page);
        assertTrue(page.contains("[all of it, since it is invented](criteria.md#judgement)"), page);
        assertTrue(page.contains("| whole-group | The group counts as a whole. | at 1 |"), page);
        assertTrue(page.contains("| [crested gecko](species/correlophus-ciliatus.md) |  |"), page);
    }

    @Test
    void every_link_leads_to_a_page_or_a_source() {
        Set<String> links = Pattern.compile("\\]\\(([^)]+)\\)").matcher(PAGE).results().map(match -> match.group(1)).collect(Collectors.toCollection(TreeSet::new));
        assertTrue(links.size() > CODES.size(), links.toString());
        String sources = SourceIndex.markdown(BuiltIn.KNOWLEDGE);
        links.forEach(link -> assertTrue(link.startsWith("criteria.md#") ? sources.contains("<a id=\"" + link.substring("criteria.md#".length()) + "\"></a>")
                : Files.exists(DOCS.resolve(link)), link));
    }

    @Test
    void every_row_has_as_many_cells_as_its_table() {
        RuleIndexTest.requireEvenRows(PAGE);
    }

    @Test
    void the_page_does_not_change_with_the_default_locale() {
        assertEquals(1, EveryLocale.texts(() -> CodeIndex.markdown(BuiltIn.KNOWLEDGE, CODES)).size());
    }
}
