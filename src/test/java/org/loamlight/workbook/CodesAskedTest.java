package org.loamlight.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.List;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.loamlight.evaluation.Audit;
import org.loamlight.evaluation.MadeUpCodes;
import org.loamlight.ranking.Ranking;
import org.loamlight.wording.Units;
import org.loamlight.wording.Wording;

/** The sheet of what codes ask. */
class CodesAskedTest {
    private static final Audit BOTH = MadeUpCodes.audit(MadeUpCodes.BOX, MadeUpCodes.LAW, MadeUpCodes.CLUB);

    private static List<Listing> listings(Audit audit) {
        return Checklist.listings(audit, Ranking.of(audit.findings()), new Wording(Units.METRIC, audit.knowledge()), Sample.CARRIED);
    }

    private static Listing sheet(Audit audit, String name) {
        return listings(audit).stream().filter(one -> one.sheet().equals(name)).findFirst().orElseThrow();
    }

    /** The row of a thing and a code. */
    private static List<String> row(String thing, String code) {
        return sheet(BOTH, "Codes").rows().stream().filter(row -> row.get(1).equals(thing) && row.get(3).equals(code)).findFirst().orElseThrow();
    }

    @Test
    void the_sheet_is_there_only_when_codes_were_chosen() {
        assertEquals(List.of("Summary", "Walk", "Visit", "To do", "To find out", "Codes", "What is right", "For the keeper", "Readings", "Sources"),
                listings(BOTH).stream().map(Listing::sheet).toList());
        assertFalse(listings(MadeUpCodes.audit(MadeUpCodes.BOX)).stream().anyMatch(one -> one.sheet().equals("Codes")));
    }

    @Test
    void a_point_has_need_requirement_finding_result_and_passage() {
        List<String> law = row("Floor area", "Marram law");
        assertEquals(List.of("at least 0.9 m²: not right", "Marram law", "at least 0.7 m²", "0.600 m² ± 0.008 m²", "not met"), law.subList(2, 7));
        assertTrue(law.get(7).matches("S\\d+: s\\. 1 \\(read\\)"), law.get(7));
        int number = Ranking.of(BOTH.findings()).toDo().stream().map(one -> one.criterion().id()).toList().indexOf("code.marram-1.1-floor") + 1;
        assertEquals("See No. " + number + " of the sheet To do\nThe codes ask different numbers here.\nThe group counts as a whole. "
                + "Read otherwise: at least 1.65 m².", law.get(8));
        assertTrue(row("Floor area", "Wending rules").get(7).endsWith("rule A (secondary)"));
    }

    @Test
    void clauses_in_words_follow_the_figures() {
        List<List<String>> rows = sheet(BOTH, "Codes").rows();
        List<String> last = rows.get(rows.size() - 1);
        assertEquals(List.of(String.valueOf(rows.size()), "Who keeps them knows how.", "", "Marram law", "in words", "", "not judged here"), last.subList(0, 7));
    }

    @Test
    void every_source_the_sheet_cites_stands_on_the_sheet_of_sources() {
        List<String> numbers = sheet(BOTH, "Sources").rows().stream().map(row -> row.get(0)).toList();
        sheet(BOTH, "Codes").rows().forEach(row -> assertTrue(numbers.contains(row.get(7).split(":")[0]), row.toString()));
    }

    @Test
    void what_is_right_and_what_to_find_out_leave_codes_to_their_sheet() {
        assertFalse(sheet(BOTH, "What is right").rows().toString().contains("Marram law"));
        List<String> asked = sheet(BOTH, "To find out").rows().stream().map(row -> row.get(1)).filter(text -> text.contains("Marram law")).toList();
        assertEquals(1, asked.size(), asked.toString());
        List<List<String>> summary = sheet(BOTH, "Summary").rows();
        String counts = summary.stream().filter(row -> row.get(0).equals("Points looked at")).findFirst().orElseThrow().get(1);
        assertTrue(counts.contains("to find out: " + sheet(BOTH, "To find out").rows().size() + ","), counts);
    }

    @Test
    void the_summary_names_the_codes_and_what_they_are_worth() {
        List<String> about = sheet(BOTH, "Summary").rows().stream().map(row -> row.get(0)).toList();
        assertTrue(about.containsAll(List.of("Code: Marram law", "Code: Wending rules", "What codes are worth")), about.toString());
    }

    @Test
    void the_sheet_is_printed_on_the_long_side_and_holds_numbers_and_text() throws IOException {
        try (XSSFWorkbook book = new XSSFWorkbook(new ByteArrayInputStream(Sample.workbook(BOTH)))) {
            XSSFSheet sheet = book.getSheet("Codes");
            assertTrue(sheet.getPrintSetup().getLandscape());
            sheet.forEach(row -> row.forEach(cell -> assertTrue(cell.getColumnIndex() == 0 || cell.getCellType() == CellType.STRING
                    || cell.getCellType() == CellType.BLANK, cell.getAddress().toString())));
        }
    }

    @Test
    void a_code_for_others_only_says_that_it_asks_nothing() {
        Audit none = MadeUpCodes.audit(MadeUpCodes.BOX, MadeUpCodes.LAW.replace("pantherophis-guttatus", "testudo-hermanni"));
        assertEquals("The chosen codes ask nothing of these animals.", sheet(none, "Codes").rows().get(0).get(1));
    }
}
