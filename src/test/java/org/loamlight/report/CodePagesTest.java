package org.loamlight.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.NoSuchElementException;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.loamlight.criterion.Code;
import org.loamlight.evaluation.BuiltIn;
import org.loamlight.evaluation.MadeUpCodes;

class CodePagesTest {
    private static final CodePages PAGES = new CodePages(BuiltIn.KNOWLEDGE, Audited.METRIC);
    private static final Code LAW = MadeUpCodes.code(MadeUpCodes.LAW);
    private static final Code CLUB = MadeUpCodes.code(MadeUpCodes.CLUB);

    private static String page(String name) {
        String page = PAGES.of(name, LAW, Optional.empty());
        page.lines().forEach(line -> assertTrue(line.length() <= 80, line));
        return page.replaceAll("\\s+", " ");
    }

    @Test
    void the_list_says_of_each_code_who_gave_it_how_far_it_binds_and_what_was_read() {
        String list = PAGES.list(List.of(LAW, CLUB)).replaceAll("\\s+", " ");
        assertTrue(list.contains("marram-1 Marram Coast Act on keeping reptiles (invented) Name Marram law Issued Marram Coast council, 1 May 2020 Binding law "
                + "where the enclosure stands in the place it is made for Read of it all of it, since it is invented"), list);
        assertTrue(list.contains("Binding rules an association gives its members Read of it a summary"), list);
    }

    @Test
    void a_clause_is_printed_with_everything_under_it() {
        String clause = page("code.marram-1.1");
        assertTrue(clause.contains("* code.marram-1.1-floor: floor area Clause s. 1 (read) For corn snake Grade harm Judged by a limit Beside space.floor-area "
                + "Asks floor area: at least 0.7 m² Otherwise floor area: at least 1.65 m² Policy whole-group: The group counts as a whole."), clause);
        assertTrue(clause.contains("code.marram-1.1-young") && !clause.contains("2-sides"), clause);
        assertTrue(clause.contains("SOURCES") && clause.contains("Our own judgement, no source"), clause);
    }

    @Test
    void one_point_and_a_clause_in_words_are_printed_alone() {
        assertFalse(page("code.marram-1.1-floor").contains("1-young"));
        String words = page("code.marram-1.7");
        assertTrue(words.contains("* code.marram-1.7: The air is read. Clause s. 7 (read) For corn snake Judged monitoring.air-thermometer"), words);
        assertFalse(words.contains("IN FIGURES"), words);
        assertTrue(page("code.marram-1.8").contains("Judged not judged here"));
    }

    @Test
    void the_whole_code_is_printed_with_all_of_it() {
        String all = page("code.marram-1");
        LAW.points().forEach(point -> assertTrue(all.contains("* " + LAW.criterion(point.id()) + ":"), point.id()));
        LAW.clauses().forEach(clause -> assertTrue(all.contains("* " + LAW.criterion(clause.id()) + ":"), clause.id()));
    }

    @Test
    void a_species_leaves_out_what_is_for_others() {
        String tortoise = PAGES.of("code.marram-1", LAW, Optional.of("testudo-hermanni"));
        assertTrue(tortoise.contains("6-tortoise") && !tortoise.contains("1-floor"), tortoise);
        assertComplaint("code.marram-1.6", "pantherophis-guttatus", "for this species");
    }

    private static void assertComplaint(String name, String species, String words) {
        String message = assertThrows(NoSuchElementException.class, () -> PAGES.of(name, LAW, Optional.ofNullable(species))).getMessage();
        assertTrue(message.contains(words) && message.contains(name), message);
    }

    @Test
    void what_is_not_there_is_complained_about_with_what_is_near() {
        assertComplaint("code.marram-1.1-flor", null, "Nearest known: code.marram-1.1-floor");
        assertComplaint("code.marram-1.zzz", null, "holds nothing called");
        assertEquals("There is no code called \"code.maram-1\". Nearest known: code.marram-1.", PAGES.unknown("code.maram-1", List.of("marram-1", "wending-2")));
        assertTrue(PAGES.unknown("code.q", List.of("marram-1", "wending-2")).contains("See the list of codes"));
    }
}
