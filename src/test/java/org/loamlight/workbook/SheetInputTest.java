package org.loamlight.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.SheetVisibility;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.loamlight.criterion.HouseRules;
import org.loamlight.criterion.HouseRulesReader;
import org.loamlight.criterion.Waivers;
import org.loamlight.evaluation.BuiltIn;
import org.loamlight.setup.JsonValue;
import org.loamlight.setup.Problem;
import org.loamlight.setup.Problems;
import org.loamlight.setup.ProblemsFound;

/** House rules and waivers as a spreadsheet: the same as in JSON, or a problem with its sheet and cell. */
class SheetInputTest {
    private static void row(XSSFSheet sheet, String... cells) {
        Row row = sheet.createRow(sheet.getPhysicalNumberOfRows());
        for (int i = 0; i < cells.length; i++) {
            if (!cells[i].isEmpty()) {
                row.createCell(i).setCellValue(cells[i]);
            }
        }
    }

    private static void club(XSSFWorkbook book) {
        XSSFSheet house = book.createSheet("House");
        row(house, "title", "House rules of the Wending Vale Herpetological Club");
        row(house, "issuer", "Committee of the club");
        row(house, "date");
        CellStyle day = book.createCellStyle();
        day.setDataFormat(book.createDataFormat().getFormat("d mmmm yyyy"));
        house.getRow(2).createCell(1).setCellValue(LocalDate.of(2026, 3, 14));
        house.getRow(2).getCell(1).setCellStyle(day);
        XSSFSheet limits = book.createSheet("Limits");
        row(limits, "criterion", "species", "topic", "at least", "at most", "grade", "stages", "source", "why");
        row(limits, "water.change", "", "water-change-interval", "", "1 d", "minor", "", "minutes of 14 March 2026, point 3",
                "Members' animals are shown to children; fresh water is the first thing they see.");
        row(limits, "space.length", "pantherophis-guttatus", "inside-length", "1.2 x total length", "", "minor", "adult", "minutes of 14 March 2026, point 4",
                "Corn snakes of the club get a fifth more than they need to stretch out.");
        XSSFSheet grades = book.createSheet("Grades");
        row(grades, "criterion", "grade", "why");
        row(grades, "monitoring.hygrometer", "improvement", "The club lends one at each visit.");
        XSSFSheet left = book.createSheet("Left out");
        row(left, "criterion", "why");
        row(left, "electrical.cost", "What it costs is for the member to know.");
        XSSFSheet points = book.createSheet("Points");
        row(points, "id", "title", "need", "grade", "topic", "at most", "source", "why", "correct");
        row(points, "seen-daily", "Somebody of the household looks in every day", "protection", "minor", "check-interval", "1 d", "minutes of 14 March 2026, point 6",
                "A thermostat that sticks on Friday has killed by Monday.", "Agree who looks in on which day, and write it beside the enclosure.");
    }

    private static byte[] workbook(Consumer<XSSFWorkbook> filling) {
        try (XSSFWorkbook book = new XSSFWorkbook()) {
            filling.accept(book);
            ByteArrayOutputStream made = new ByteArrayOutputStream();
            book.write(made);
            return made.toByteArray();
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private static HouseRules house(byte[] workbook) throws ProblemsFound {
        Problems problems = new Problems("house.xlsx");
        return HouseRulesReader.read(SheetInput.house(workbook, problems), problems, "0", BuiltIn.KNOWLEDGE);
    }

    /** @param cell empty where the file as a whole is refused, in one sentence */
    private static void assertRefused(byte[] workbook, String cell, String found) {
        ProblemsFound told = assertThrows(ProblemsFound.class, () -> house(workbook));
        assertTrue(!cell.isEmpty() || told.problems().size() == 1 || found.startsWith("none of"), told.problems().toString());
        assertTrue(told.problems().stream().anyMatch(one -> one.cell().equals(cell) && one.found().contains(found)), told.problems().stream().map(Problem::text).toList().toString());
    }

    private static byte[] changedClub(Consumer<XSSFWorkbook> change) {
        return workbook(book -> {
            club(book);
            change.accept(book);
        });
    }

    @Test
    void a_spreadsheet_says_the_same_as_the_json_file() throws IOException, ProblemsFound {
        HouseRules json = HouseRulesReader.read("house.json", Files.readAllBytes(Path.of("examples/house/wending-vale.json")), BuiltIn.KNOWLEDGE);
        HouseRules sheets = house(workbook(SheetInputTest::club));
        assertEquals(json.limits(), sheets.limits());
        assertEquals(json.regraded(), sheets.regraded());
        assertEquals(json.left(), sheets.left());
        assertEquals(json.points(), sheets.points());
        assertEquals(json.inFull(), sheets.inFull());
    }

    @Test
    void waivers_come_from_a_sheet_too() throws ProblemsFound {
        byte[] book = workbook(made -> {
            XSSFSheet sheet = made.createSheet("Waivers");
            row(sheet, "criterion", "setup", "animal", "reason", "granted by", "until");
            row(sheet, "space.length", "", "Tansy", "=she moves next month", "the committee", "2026-12-31");
        });
        Problems problems = new Problems("waivers.xlsx");
        Waivers waivers = Waivers.read(SheetInput.waivers(book, problems), problems, "0", BuiltIn.KNOWLEDGE);
        assertEquals(List.of("=she moves next month"), waivers.all().stream().map(one -> one.reason()).toList());
        assertEquals(LocalDate.of(2026, 12, 31), waivers.all().get(0).until());
    }

    @Test
    void a_wrong_cell_is_named() {
        assertRefused(changedClub(book -> {
            book.getSheet("Limits").getRow(1).getCell(4).setCellValue("1 kg");
        }), "Limits!E2", "found \"1 kg\"");
        assertRefused(changedClub(book -> {
            book.getSheet("Limits").getRow(2).getCell(0).setCellValue("space.lenght");
        }), "Limits!A3", "\"space.lenght\" is not known");
    }

    @Test
    void a_problem_names_file_cell_and_path() {
        ProblemsFound told = assertThrows(ProblemsFound.class, () -> house(changedClub(book -> {
            book.getSheet("Limits").getRow(0).getCell(8).setCellValue("Reason\u202E");
            book.getSheet("Left out").getRow(1).getCell(1).setBlank();
        })));
        assertEquals(List.of("house.xlsx:Limits!I1: limits[0]: the key \"reason?\" is not known; ", "house.xlsx:Limits!A2: limits[0]: \"why\" is missing; ",
                "house.xlsx:'Left out'!A2: left-out[0]: \"why\" is missing; "), told.problems().stream().map(Problem::text)
                .filter(text -> !text.contains("limits[1]")).map(text -> text.substring(0, text.indexOf(';') + 2)).toList());
    }

    @Test
    void of_a_formula_the_value_worked_out_last_counts() throws ProblemsFound {
        HouseRules worked = house(changedClub(book -> {
            XSSFCell most = book.getSheet("Limits").getRow(1).getCell(4);
            most.setCellFormula("1&\" d\"");
            most.setCellValue("1 d");
        }));
        assertEquals(house(workbook(SheetInputTest::club)).limits(), worked.limits());
    }

    @Test
    void a_formula_without_a_value_and_an_error_are_told() {
        assertRefused(changedClub(book -> book.getSheet("Limits").getRow(1).createCell(4).setCellFormula("1&\" d\"")), "Limits!E2", "a formula that was never worked out");
        assertRefused(changedClub(book -> book.getSheet("Limits").getRow(1).getCell(4).setCellErrorValue(FormulaError.REF.getCode())), "Limits!E2", "the error #REF!");
    }

    @Test
    void numbers_per_cents_and_true_are_read_as_what_they_show() throws ProblemsFound {
        byte[] book = workbook(made -> {
            XSSFSheet sheet = made.createSheet("Limits");
            row(sheet, "criterion", "at least", "at most", "why");
            row(sheet, "water.change", "", "", "");
            CellStyle percent = made.createCellStyle();
            percent.setDataFormat(made.createDataFormat().getFormat("0%"));
            sheet.getRow(1).createCell(1).setCellValue(0.55);
            sheet.getRow(1).getCell(1).setCellStyle(percent);
            sheet.getRow(1).createCell(2).setCellValue(31.5);
            sheet.getRow(1).createCell(3).setCellValue(true);
        });
        JsonValue.JsonArray limits = (JsonValue.JsonArray) ((JsonValue.JsonObject) SheetInput.house(book, new Problems("house.xlsx"))).members().get("limits");
        assertEquals(List.of("\"water.change\"", "\"55 %\"", "\"31.5\"", "\"yes\""), ((JsonValue.JsonObject) limits.elements().get(0)).members().values().stream()
                .map(JsonValue::quoted).toList());
    }

    @Test
    void macros_are_passed_over() throws ProblemsFound {
        Map<String, byte[]> parts = EditedForm.unpacked(workbook(SheetInputTest::club));
        parts.put("xl/vbaProject.bin", new byte[] {1, 2, 3});
        assertEquals(house(workbook(SheetInputTest::club)).inFull(), house(EditedForm.packed(parts)).inFull());
    }

    @Test
    void merged_cells_and_two_columns_of_a_name_are_told() {
        assertRefused(changedClub(book -> book.getSheet("Limits").addMergedRegion(CellRangeAddress.valueOf("B2:B3"))), "Limits!B2", "the cells B2:B3 are merged");
        assertRefused(changedClub(book -> book.getSheet("Limits").getRow(0).getCell(4).setCellValue("At-Least")), "Limits!E1", "two columns have this header");
    }

    @Test
    void hidden_and_unknown_sheets_are_told() {
        assertRefused(changedClub(book -> {
            book.setSheetVisibility(book.getSheetIndex("Grades"), SheetVisibility.VERY_HIDDEN);
        }), "Grades!A1", "this sheet is hidden");
        assertRefused(changedClub(book -> {
            book.createSheet("Notes");
        }), "Notes!A1", "this sheet is not known");
        assertRefused(workbook(book -> book.createSheet("Sheet1")), "", "none of the sheets");
    }

    @Test
    void a_value_under_no_header_is_told() {
        assertRefused(changedClub(book -> {
            book.getSheet("Grades").getRow(1).createCell(7).setCellValue("what is this");
        }), "Grades!H2", "this column has no header");
    }

    @Test
    void one_row_too_many_and_a_hundred_thousand_are_refused() throws IOException {
        assertRefused(rows(10_001), "Limits!A1", "this sheet has 10001 rows");
        assertRefused(rows(100_000), "", "the workbook unpacks to more than 10 megabytes");
    }

    @Test
    void ten_thousand_rows_are_read() throws IOException, ProblemsFound {
        Problems problems = new Problems("house.xlsx");
        JsonValue.JsonObject document = (JsonValue.JsonObject) SheetInput.house(rows(10_000), problems);
        assertTrue(problems.isEmpty());
        List<JsonValue> rows = ((JsonValue.JsonArray) document.members().get("limits")).elements();
        assertEquals(10_000, rows.size());
        assertEquals("\"value 10000 of 5\"", ((JsonValue.JsonObject) rows.get(9_999)).members().get("column-5").quoted());
    }

    private static byte[] rows(int number) throws IOException {
        try (SXSSFWorkbook book = new SXSSFWorkbook(100)) {
            Sheet sheet = book.createSheet("Limits");
            for (int i = 0; i <= number; i++) {
                Row row = sheet.createRow(i);
                for (int column = 0; column < 6; column++) {
                    row.createCell(column).setCellValue(i == 0 ? "column " + column : "value " + i + " of " + column);
                }
            }
            ByteArrayOutputStream made = new ByteArrayOutputStream();
            book.write(made);
            return made.toByteArray();
        }
    }

    @Test
    void what_is_no_workbook_is_refused_in_one_sentence() {
        assertRefused(new byte[0], "", "the file is empty");
        assertRefused("criterion;why\n".getBytes(StandardCharsets.UTF_8), "", "this is no Excel workbook");
        assertRefused(new byte[] {(byte) 0xD0, (byte) 0xCF, 0x11, (byte) 0xE0, 1, 2, 3}, "", "locked with a password, or of the older kind .xls");
        assertRefused(new byte[] {'P', 'K', 3, 4, 0, 0}, "", "the workbook is broken");
        byte[] cut = workbook(SheetInputTest::club);
        assertRefused(Arrays.copyOf(cut, cut.length / 2), "", "the workbook is broken");
    }
}
