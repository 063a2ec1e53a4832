package org.loamlight.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.loamlight.evaluation.Audit;
import org.loamlight.evaluation.MadeUpCodes;
import org.loamlight.ranking.Ranking;

/** What codes ask, in the text report. */
class CodesSectionTest {
    private static final Audit BOTH = MadeUpCodes.audit(MadeUpCodes.BOX, MadeUpCodes.LAW, MadeUpCodes.CLUB);
    private static final String REPORT = Audited.text(BOTH);
    private static final String SECTION = joined(part(REPORT, "WHAT CODES ASK", "WHAT IS RIGHT"));

    private static String part(String report, String from, String to) {
        int start = report.indexOf("\n" + from + "\n");
        assertTrue(start > 0, report);
        return report.substring(start, report.indexOf("\n" + to + "\n", start));
    }

    private static String joined(String text) {
        return text.replaceAll("\\s+", " ");
    }

    private static void assertSays(String words) {
        assertTrue(SECTION.contains(words), SECTION);
    }

    @Test
    void without_codes_there_is_no_such_part() {
        assertFalse(Audited.text(MadeUpCodes.audit(MadeUpCodes.BOX)).contains("WHAT CODES ASK"));
    }

    @Test
    void it_says_what_decides_and_which_codes_were_held() {
        assertSays("The text in force at the place decides, not this table.");
        assertSays("* Marram law: Marram Coast Act on keeping reptiles (invented) Issued Marram Coast council, 1 May 2020 Binding law where the enclosure "
                + "stands in the place it is made for Read of it all of it, since it is invented");
        assertTrue(SECTION.indexOf("* Marram law") < SECTION.indexOf("* Wending rules"), "in the order chosen");
    }

    @Test
    void a_row_has_the_need_of_the_species_then_each_code_with_what_was_found_and_where_it_stands() {
        assertSays("Floor area Species at least 0.9 m²: not right Marram law at least 0.7 m²; found 0.600 m² ± 0.008 m²: NOT MET (see ");
        assertSays(") s. 1 (read) Wending rules at least 0.5 m²; found 0.600 m² ± 0.008 m²: met rule A (secondary) The codes ask different numbers here.");
    }

    @Test
    void the_number_of_a_finding_stands_only_where_it_is_wrong() {
        assertSays("Marram law at least 200 cm; found 120.0 cm ± 0.6 cm: NOT MET (see ");
        assertSays("Marram law at least 20 cm; found 60.0 cm ± 0.6 cm: met s. 2 (read)");
    }

    @Test
    void what_nobody_can_meet_is_said() {
        assertSays("rule B (inferred) No value meets all that is asked here.");
    }

    @Test
    void a_bare_figure_and_a_missing_answer_are_said_as_such() {
        assertSays("50 cm (a bare figure, neither called the least nor the most); found 50.0 cm ± 0.6 cm: cannot tell");
        assertSays("depends on the length of Sedge from snout to vent: not known (see ");
    }

    @Test
    void what_is_asked_of_others_only_has_a_line() {
        assertSays("Not asked of these animals, or not of this housing: - Inside height - Marram law, s. 1: nothing is laid down for this animal");
        assertFalse(SECTION.contains(" 9 m²"), "nor does anything for a species that is not kept");
    }

    @Test
    void another_reading_stands_with_its_policy_only_where_it_gives_other_numbers() {
        assertSays("- Floor area, Marram law, s. 1: read as at least 0.7 m². The group counts as a whole. Read otherwise: at least 1.65 m².");
        assertFalse(SECTION.contains("It makes no difference."), SECTION);
    }

    @Test
    void clauses_in_words_say_who_judges_them_or_that_nobody_does() {
        assertSays("- Marram law, s. 7 (read): The air is read. Outcome: not known yet, as judged by monitoring.air-thermometer, monitoring.hygrometer.");
        assertSays("- Marram law, s. 8 (secondary): Who keeps them knows how. Outcome: not judged here.");
    }

    @Test
    void what_is_not_met_stands_among_what_to_do_and_nothing_else_of_codes_does_elsewhere() {
        String toDo = joined(part(REPORT, "WHAT TO DO", "WHAT TO FIND OUT"));
        assertTrue(toDo.contains("HARM, not right: Marram law, s. 1: floor area Because of "), toDo);
        String toFindOut = joined(part(REPORT, "WHAT TO FIND OUT", "WHAT CODES ASK"));
        assertEquals(1, toFindOut.split("Marram law|Wending rules", -1).length - 1, toFindOut);
        assertTrue(toFindOut.contains("Marram law, s. 5: way around the floor"), toFindOut);
        String rest = REPORT.substring(REPORT.indexOf("\nWHAT IS RIGHT\n"));
        assertFalse(rest.contains("Marram") || rest.contains("Wending rules"), rest);
    }

    @Test
    void the_numbers_told_are_those_of_the_lists() {
        Ranking ranking = Ranking.of(BOTH.findings());
        List<String> ids = ranking.toDo().stream().map(one -> one.criterion().id()).toList();
        assertSays("Marram law at least 0.7 m²; found 0.600 m² ± 0.008 m²: NOT MET (see " + (ids.indexOf("code.marram-1.1-floor") + 1) + ")");
        int vent = ids.size() + ranking.toAsk().stream().map(one -> one.criterion().id()).toList().indexOf("code.marram-1.5-vent") + 1;
        assertSays("to vent: not known (see " + vent + ")");
        assertTrue(REPORT.contains("\n" + vent + ". "), REPORT);
    }

    @Test
    void no_line_is_longer_than_eighty_columns() {
        String longName = MadeUpCodes.LAW.replace("\"Marram law\"", "\"" + "Marram Coast and Wending Vale ".repeat(4) + "\"");
        Audited.text(MadeUpCodes.audit(MadeUpCodes.BOX, longName, MadeUpCodes.CLUB)).lines()
                .forEach(line -> assertTrue(line.codePointCount(0, line.length()) <= 80 && line.equals(line.stripTrailing()), line));
    }

    @Test
    void a_code_for_others_only_says_that_it_asks_nothing() {
        String tortoises = MadeUpCodes.LAW.replace("pantherophis-guttatus", "testudo-hermanni");
        assertTrue(Audited.text(MadeUpCodes.audit(MadeUpCodes.BOX, tortoises)).contains("None of them asks anything of these animals."));
    }
}
