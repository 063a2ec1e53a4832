package org.loamlight.workbook;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import java.util.function.Consumer;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.PageMargin;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFTable;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.loamlight.evaluation.Audit;
import org.loamlight.evaluation.BuiltIn;
import org.loamlight.finding.Finding;
import org.loamlight.ranking.Ranking;
import org.loamlight.setup.ProblemsFound;
import org.loamlight.wording.Units;
import org.loamlight.wording.Wording;

/** The workbook, opened again. What holds of every workbook stands in {@link EveryWorkbookTest}. */
class ChecklistTest {
    private static final List<String> SHEETS = List.of("Summary", "Walk", "Visit", "To do", "To find out", "What is right", "For the keeper", "Readings", "Sources");
    /** Their own tests look at them. */
    private static final List<String> PICTURES = List.of("Drawing", "Charts", "Record");
    private static final byte[] BYTES = Sample.workbook(Sample.audit());

    private static XSSFWorkbook open(byte[] bytes) {
        try {
            return new XSSFWorkbook(new ByteArrayInputStream(bytes));
        } catch (IOException e) {
            throw new AssertionError("The workbook cannot be opened again", e);
        }
    }

    private static void forEachSheet(byte[] bytes, Consumer<XSSFSheet> check) {
        XSSFWorkbook book = open(bytes);
        SHEETS.forEach(name -> check.accept(book.getSheet(name)));
    }

    private static void forEachCell(byte[] bytes, Consumer<XSSFCell> check) {
        forEachSheet(bytes, sheet -> sheet.forEach(row -> row.forEach(cell -> check.accept((XSSFCell) cell))));
    }

    private static XSSFTable table(XSSFSheet sheet) {
        assertEquals(1, sheet.getTables().size(), sheet.getSheetName());
        return sheet.getTables().get(0);
    }

    /** The texts below a header, in order. */
    private static List<String> column(byte[] bytes, String sheetName, String header) {
        XSSFSheet sheet = open(bytes).getSheet(sheetName);
        XSSFTable table = table(sheet);
        int column = table.findColumnIndex(header);
        assertTrue(column >= 0, header);
        List<String> texts = new ArrayList<>();
        for (int i = table.getStartRowIndex() + 1; i <= table.getEndRowIndex(); i++) {
            XSSFCell cell = sheet.getRow(i).getCell(column);
            texts.add(cell.getCellType() == CellType.NUMERIC ? String.valueOf((int) cell.getNumericCellValue()) : cell.getStringCellValue());
        }
        return texts;
    }

    @Test
    void sheets_stand_in_the_order_in_which_they_are_used() {
        XSSFWorkbook book = open(BYTES);
        List<String> names = new ArrayList<>();
        book.sheetIterator().forEachRemaining(sheet -> names.add(sheet.getSheetName()));
        assertEquals(SHEETS, names.subList(0, SHEETS.size()));
        assertEquals(PICTURES, names.subList(SHEETS.size(), names.size()));
        assertEquals(0, book.getActiveSheetIndex());
    }

    @Test
    void each_title_says_whose_audit_it_is_and_its_day() {
        forEachSheet(BYTES, sheet -> {
            assertTrue(sheet.getRow(0).getCell(0).getStringCellValue().endsWith(": Bracken, 2026-11-02"), sheet.getSheetName());
            assertEquals("TableStyleLight1", table(sheet).getCTTable().getTableStyleInfo().getName());
        });
    }

    @Test
    void empty_lists_become_one_row_that_says_so() {
        byte[] bytes = Sample.workbook(Sample.empty());
        assertAll(
                () -> assertEquals(List.of("Nothing to put right was found."), column(bytes, "To do", "What")),
                () -> assertEquals(List.of(""), column(bytes, "To do", "State")),
                () -> assertEquals(List.of("Nothing is left to find out."), column(bytes, "To find out", "What")),
                () -> assertEquals(List.of("Nothing was found right yet."), column(bytes, "What is right", "What")),
                () -> assertEquals(List.of("No value was given or read."), column(bytes, "Readings", "What")),
                () -> assertEquals(List.of("No source is cited in this workbook."), column(bytes, "Sources", "Source")),
                () -> assertEquals(0, open(bytes).getSheet("To do").getDataValidations().size()));
    }

    @Test
    void pages_fit_the_width_of_a4_and_us_letter() {
        forEachSheet(BYTES, sheet -> {
            assertTrue(sheet.getFitToPage());
            assertEquals(1, sheet.getPrintSetup().getFitWidth());
            assertEquals(sheet.getSheetName().equals("For the keeper") ? 1 : 0, sheet.getPrintSetup().getFitHeight(), "as many pages as it takes, but one for the keeper");
            assertEquals("&A", sheet.getFooter().getLeft());
            assertEquals("Page &P of &N", sheet.getFooter().getRight());
            // Many printers cannot print the outer quarter of an inch (from memory).
            assertTrue(sheet.getMargin(PageMargin.LEFT) >= 0.25 && sheet.getMargin(PageMargin.RIGHT) >= 0.25);
            assertTrue(sheet.getMargin(PageMargin.BOTTOM) > sheet.getMargin(PageMargin.FOOTER) + 0.2, "the footer stands below the table");
        });
        XSSFWorkbook book = open(BYTES);
        assertTrue(book.getSheet("To do").getPrintSetup().getLandscape());
        assertTrue(book.getSheet("To find out").getPrintSetup().getLandscape());
        assertFalse(book.getSheet("Summary").getPrintSetup().getLandscape());
    }

    @ParameterizedTest
    @ValueSource(strings = {"METRIC", "US"})
    void every_text_is_wrapped_and_its_row_high_enough(Units units) {
        forEachSheet(Sample.workbook(Sample.audit(), units), sheet -> {
            for (int i = 2; i <= sheet.getLastRowNum(); i++) {
                for (Cell cell : sheet.getRow(i)) {
                    assertTrue(cell.getCellStyle().getWrapText(), cell.getAddress().toString());
                    double digits = sheet.getColumnWidth(cell.getColumnIndex()) / 256.0;
                    // No ordinary English text sets more than 1.25 letters in the width of a digit.
                    long lines = cell.toString().lines().mapToLong(line -> (long) Math.ceil(line.length() / (1.25 * digits))).sum();
                    assertTrue(sheet.getRow(i).getHeightInPoints() >= lines * 12.75, sheet.getSheetName() + " " + cell.getAddress());
                }
            }
        });
    }

    @Test
    void a_text_too_long_for_a_row_widens_its_column() {
        byte[] bytes = Sample.workbook(Sample.audit("Bracken", "a lamp ".repeat(400).strip()));
        XSSFSheet sheet = open(bytes).getSheet("To do");
        int where = table(sheet).findColumnIndex("Where");
        assertTrue(sheet.getColumnWidth(where) > open(BYTES).getSheet("To do").getColumnWidth(where));
        assertTrue(sheet.getRow(2).getHeightInPoints() <= 409.5, "the highest row of Excel");
    }

    @Test
    void every_point_to_do_stands_there_in_rank_order() throws ProblemsFound {
        Audit real = BuiltIn.audit("""
                {"format": 1, "on": "2026-11-02", "animals": [{"name": "Bracken", "species": "pantherophis-guttatus"}],
                 "heaters": [{"name": "basking lamp", "kind": "basking lamp", "reachable": "yes", "guard": "no"},
                             {"name": "mat", "kind": "heat mat", "control": "none"}]}
                """);
        for (Audit audit : List.of(Sample.audit(), real)) {
            byte[] bytes = Sample.workbook(audit);
            Ranking ranking = Ranking.of(audit.findings());
            assertFalse(ranking.toDo().isEmpty());
            assertTitles(ranking.toDo(), column(bytes, "To do", "What"));
            assertEquals(ranking.toFindOut().size(), column(bytes, "To find out", "What").size());
            assertEquals(ranking.right().size() + ranking.notApplicable().size(), column(bytes, "What is right", "What").size());
            assertEquals(Math.max(1, audit.quantities().size()), column(bytes, "Readings", "What").size());
        }
    }

    private static void assertTitles(List<Finding> findings, List<String> texts) {
        assertEquals(findings.stream().map(finding -> finding.criterion().title()).toList(),
                texts.stream().map(text -> text.lines().findFirst().orElse("")).toList());
    }

    @Test
    void a_long_name_is_shortened_in_titles_and_stands_whole_in_the_summary() {
        String name = "Sir Bracken of the Upper Marram Dunes, Third of the Name";
        byte[] bytes = Sample.workbook(Sample.audit(name, "basking lamp"));
        forEachSheet(bytes, sheet -> assertTrue(sheet.getRow(0).getCell(0).getStringCellValue()
                .endsWith(": Sir Bracken of the Upper Marram Dune..., 2026-11-02"), sheet.getSheetName()));
        assertTrue(column(bytes, "Summary", "What it says").contains(name + ", lives here since 2024-05-01"));
    }

    @Test
    void points_are_numbered_and_effects_name_their_cause() {
        assertEquals(List.of("1", "2"), column(BYTES, "To do", "No."));
        assertEquals("The cool end stays cool by day\n(because of No. 1)", column(BYTES, "To do", "What").get(1));
        assertTrue(column(BYTES, "To find out", "What").get(1).endsWith("(because of No. 1 of the sheet To do)"));
    }

    @Test
    void a_row_to_do_says_all_that_is_needed_at_the_enclosure() {
        assertAll(
                () -> assertEquals("cool end", column(BYTES, "To do", "Where").get(1)),
                () -> assertEquals("Air temperature by day at the cool end: 29 °C ± 2 °C (reading \"cool end probe\" of 2026-10-31)",
                        column(BYTES, "To do", "What was found").get(1)),
                () -> assertEquals("21 °C to 27 °C", column(BYTES, "To do", "Required").get(1)),
                () -> assertEquals("2 °C too hot", column(BYTES, "To do", "How far off").get(1)),
                () -> assertEquals("2026-11-09", column(BYTES, "To do", "By when").get(1)),
                () -> assertEquals(List.of("danger", "harm"), column(BYTES, "To do", "Grade")),
                () -> assertEquals(List.of("S1: heat sources (read)", "S2: table 2 (secondary)"), 
                        column(BYTES, "To do", "Source and standing")));
    }

    @Test
    void states_are_chosen_from_a_list_and_the_rest_is_left_to_write_in() {
        XSSFSheet sheet = open(BYTES).getSheet("To do");
        DataValidation choice = sheet.getDataValidations().get(0);
        assertEquals(1, sheet.getDataValidations().size());
        assertArrayEquals(new String[] {"open", "done", "not possible", "does not apply"},
                choice.getValidationConstraint().getExplicitListValues());
        assertEquals("K3:K4", choice.getRegions().getCellRangeAddress(0).formatAsString());
        assertEquals("State", sheet.getRow(1).getCell(10).getStringCellValue());
        for (String header : List.of("Date", "Initials")) {
            assertEquals(CellType.BLANK, sheet.getRow(2).getCell(table(sheet).findColumnIndex(header)).getCellType());
        }
        column(BYTES, "To find out", "Write in Walk No.").forEach(where -> assertTrue(where.equals("in the setup or its form") || where.matches("\\d+(, \\d+)*( \\.\\.\\.)?"), where));
    }

    @Test
    void summary_says_what_it_comes_to_what_it_is_about_and_how_to_go_on() {
        List<String> about = column(BYTES, "Summary", "About");
        List<String> says = column(BYTES, "Summary", "What it says");
        assertAll(
                () -> assertTrue(says.get(about.indexOf("Conclusion")).startsWith("Change now. ")),
                () -> assertEquals("to put right: 2, to find out: 2, right: 2, does not apply: 1", says.get(about.indexOf("Points looked at"))),
                () -> assertEquals("Bracken, lives here since 2024-05-01", says.get(about.indexOf("Animal"))),
                () -> assertEquals("example snake (Exempli gratia)", says.get(about.indexOf("Species"))),
                () -> assertEquals("Shelf 3\nInside length 120 cm, depth 60 cm, height not known", says.get(about.indexOf("Enclosure"))),
                () -> assertEquals("2026-11-02", says.get(about.indexOf("Date of the audit"))),
                () -> assertEquals("permanent", says.get(about.indexOf("Purpose of the housing"))),
                () -> assertTrue(says.get(about.indexOf("Act today\n(To do No. 1)")).startsWith("A hot heater within reach has a guard\nWhere: basking lamp (heater)\nFound: The")),
                () -> assertTrue(says.get(about.indexOf("Act today\n(To do No. 1)")).contains("\nPut right: Switch")),
                () -> assertEquals(0, about.indexOf("Act today\n(To do No. 1)")),
                () -> assertFalse(about.contains("To do first: No. 1"), "it stands in the box already"),
                () -> assertTrue(about.contains("To do first: No. 2")),
                () -> assertFalse(about.contains("To do first: No. 3"), "there are only two points"),
                () -> assertTrue(says.contains("Wash your hands.") && says.contains("Unplug and let cool first.")),
                () -> assertTrue(about.contains("How to use this workbook")),
                () -> assertEquals("version 0.0.1, SHA-256 " + Sample.audit().knowledge().sha256(), says.get(about.indexOf("Knowledge"))));
    }

    @Test
    void readings_are_shown_with_uncertainty_unit_and_how_they_came_about() {
        assertEquals(List.of("29 ± 2", "38 ± 2", "4.2 ± 1.2", "9.5 ± 1.0"), column(BYTES, "Readings", "Value with uncertainty"));
        assertEquals(List.of("°C", "°C", "number", "mm"), column(BYTES, "Readings", "Unit"));
        assertEquals(List.of("measured", "measured", "computed", "measured"), column(BYTES, "Readings", "Method"));
        List<String> how = column(BYTES, "Readings", "How it came about");
        assertEquals("as read: cool end probe", how.get(0));
        assertEquals("as read: warm end probe\nDoes not count; see the other sheets.", how.get(1));
        assertTrue(how.get(2).startsWith("from your reading of 3.1 at 30 cm"));
    }

    @Test
    void readings_in_us_units_are_split_into_value_and_unit_too() {
        byte[] bytes = Sample.workbook(Sample.audit(), Units.US);
        assertEquals(List.of("°F", "°F", "number", "in"), column(bytes, "Readings", "Unit"));
        column(bytes, "Readings", "Value with uncertainty").forEach(value -> assertTrue(value.matches("[0-9.]+ ± [0-9.]+"), value));
    }

    @Test
    void sources_are_exactly_those_the_other_sheets_cite() {
        Audit audit = Sample.audit();
        Ranking ranking = Ranking.of(audit.findings());
        Wording wording = new Wording(Units.METRIC, audit.knowledge());
        List<String> titles = column(BYTES, "Sources", "Source");
        List<Finding> shown = new ArrayList<>(ranking.open());
        shown.addAll(ranking.right());
        List<String> cited = shown.stream().flatMap(finding -> wording.sources(finding).stream()).toList();
        cited.forEach(full -> assertTrue(titles.stream().anyMatch(full::startsWith), full));
        titles.forEach(title -> assertTrue(cited.stream().anyMatch(full -> full.startsWith(title)), title));
        assertEquals(List.of("heat sources (read)", "table 2 (secondary)\nwater (secondary)"),
                column(BYTES, "Sources", "Passages cited and their standing"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"=1+1", "+1", "-1", "@SUM(A1)", "\t=1+1", "\r=1+1", "\uFF1D1", "=HYPERLINK(\"http://127.0.0.1\")", "_x003D_1"})
    void nasty_names_stay_text(String name) {
        byte[] bytes = Sample.workbook(Sample.audit(name.strip(), name));
        forEachCell(bytes, cell -> assertNotEquals(CellType.FORMULA, cell.getCellType(), cell.getAddress().toString()));
        XSSFCell where = open(bytes).getSheet("To do").getRow(2).getCell(2);
        assertEquals(CellType.STRING, where.getCellType());
        assertEquals(name.replace('\t', ' ').replace('\r', '\n') + " (heater)", where.getStringCellValue());
        assertEquals(!name.startsWith("_"), where.getCellStyle().getQuotePrefixed());
    }

    @ParameterizedTest
    @ValueSource(strings = {"\u0000bell\u0007", "\uD83D", "\uDE00 alone", "\uFFFE", "\u202Eturned"})
    void characters_that_break_files_or_mislead_are_replaced(String name) {
        String where = column(Sample.workbook(Sample.audit("Bracken", name)), "To do", "Where").get(0);
        assertTrue(where.endsWith(" (heater)") && where.contains("\uFFFD"), where);
        assertTrue(where.chars().noneMatch(unit -> unit < ' ' || Character.isSurrogate((char) unit) || unit == 0x202E), where);
    }

    @Test
    void no_cell_holds_more_than_a_cell_can() {
        byte[] bytes = Sample.workbook(Sample.audit("Bracken", "x".repeat(40_000)));
        List<Integer> longest = new ArrayList<>();
        forEachCell(bytes, cell -> longest.add(cell.toString().length()));
        assertEquals(32_767, longest.stream().mapToInt(Integer::intValue).max().orElseThrow());
        assertTrue(column(bytes, "To do", "Where").get(0).endsWith("(cut off here: a cell holds no more)"));
    }

    @ParameterizedTest
    @CsvSource({"en-US, UTC", "tr-TR, Europe/Istanbul", "de-DE, Pacific/Kiritimati", "ar-EG, America/Los_Angeles"})
    void same_audit_gives_the_same_bytes_everywhere(String locale, String zone) {
        Locale before = Locale.getDefault();
        TimeZone zoneBefore = TimeZone.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag(locale));
            TimeZone.setDefault(TimeZone.getTimeZone(zone));
            assertArrayEquals(BYTES, Sample.workbook(Sample.audit()));
        } finally {
            Locale.setDefault(before);
            TimeZone.setDefault(zoneBefore);
        }
    }

    @Test
    void nothing_in_the_file_tells_the_time_at_which_it_was_made() throws IOException {
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(BYTES))) {
            int entries = 0;
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry(), entries++) {
                assertEquals(LocalDateTime.of(1980, 2, 1, 0, 0), entry.getTimeLocal(), entry.getName());
            }
            assertTrue(entries > SHEETS.size());
        }
        String text = WorkbookText.dump(BYTES);
        assertTrue(text.contains("created: 2026-11-02T00:00:00Z\nmodified: 2026-11-02T00:00:00Z\n"), text);
    }

    @Test
    void properties_name_title_subject_and_creator() {
        assertTrue(WorkbookText.dump(BYTES).startsWith("""
                title: Checklist: Bracken, 2026-11-02
                subject: Husbandry audit of a reptile enclosure
                creator: Loamlight
                """));
    }

    /** Contrast as defined by WCAG 2.2, with the 7 to 1 of its success criterion 1.4.6; grey shades keep it in black and white. */
    @Test
    void headers_are_readable_in_black_and_white_and_no_body_cell_is_coloured() {
        forEachSheet(BYTES, sheet -> {
            XSSFCell header = sheet.getRow(1).getCell(0);
            byte[] fill = header.getCellStyle().getFillForegroundXSSFColor().getRGB();
            byte[] ink = header.getCellStyle().getFont().getXSSFColor().getRGB();
            assertTrue((luminance(fill) + 0.05) / (luminance(ink) + 0.05) >= 7);
            for (int i = 2; i <= sheet.getLastRowNum(); i++) {
                for (Cell cell : sheet.getRow(i)) {
                    assertEquals(0, ((XSSFCell) cell).getCellStyle().getFillPattern().getCode(), cell.getAddress().toString());
                }
            }
        });
    }

    private static double luminance(byte[] rgb) {
        return 0.2126 * linear(rgb[0]) + 0.7152 * linear(rgb[1]) + 0.0722 * linear(rgb[2]);
    }

    private static double linear(byte part) {
        double share = (part & 0xFF) / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }

    @Test
    void few_styles_are_shared_by_all_cells() {
        assertTrue(open(BYTES).getNumCellStyles() <= 12, String.valueOf(open(BYTES).getNumCellStyles()));
    }

    @Test
    void a_stream_that_fails_gets_nothing_but_the_failure() {
        Audit audit = Sample.audit();
        OutputStream full = new OutputStream() {
            @Override
            public void write(int one) throws IOException {
                throw new IOException("no room");
            }
        };
        IOException failure = assertThrows(IOException.class, () -> Checklist.write(audit,
                Ranking.of(audit.findings()), new Wording(Units.METRIC, audit.knowledge()), Sample.CARRIED, full));
        assertEquals("no room", failure.getMessage());
    }

    @Test
    void warming_up_changes_nothing() {
        Checklist.warmUp();
        assertArrayEquals(BYTES, Sample.workbook(Sample.audit()));
    }

    @Test
    void rows_are_dumped_cell_by_cell() {
        String text = WorkbookText.dump(BYTES);
        assertTrue(text.contains("""

                == To do ==
                table ToDo A2:O4
                choice K3:K4: open | done | not possible | does not apply
                A1 To do: Bracken, 2026-11-02
                """), text);
        assertTrue(text.contains("\nA4 2\nB4 The cool end stays cool by day\\n(because of No. 1)\n"), text);
    }
}
