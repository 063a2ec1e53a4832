package org.loamlight.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.loamlight.workbook.EditedForm.FORM;
import static org.loamlight.workbook.EditedForm.PLAN;
import static org.loamlight.workbook.EditedForm.answered;
import static org.loamlight.workbook.EditedForm.assertComplaint;
import static org.loamlight.workbook.EditedForm.cell;
import static org.loamlight.workbook.EditedForm.column;
import static org.loamlight.workbook.EditedForm.complaints;
import static org.loamlight.workbook.EditedForm.edited;
import static org.loamlight.workbook.EditedForm.format;
import static org.loamlight.workbook.EditedForm.located;
import static org.loamlight.workbook.EditedForm.packed;
import static org.loamlight.workbook.EditedForm.unpacked;
import static org.loamlight.workbook.EditedForm.usable;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.util.CellRangeAddress;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loamlight.evaluation.BuiltIn;
import org.loamlight.setup.Setup;
import org.loamlight.workbook.form.FormAnswers;

/** Forms as they come back from people: read rightly, or told by sheet and cell what is wrong. */
class FormAnswersTest {
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "room.coldest | 31,5 | form.xlsx:{}: room.coldest: \"31,5 °F\" is no measured value; write a decimal point, not a comma",
        "room.coldest | 5 furlongs | form.xlsx:{}: room.coldest: ",
        "on | 2.11.2026 | form.xlsx:{}: on: found \"2.11.2026\"; a day of the calendar is written year-month-day",
        "room.sun | perhaps | form.xlsx:{}: room.sun: found \"perhaps\"; allowed are yes, no, not looked",
        "water.offered | dish; bucket | form.xlsx:{}: water.offered: found \"bucket\"; allowed are dish, drip, mist",
        "water.place | worm end | form.xlsx:{}: water.place: found \"worm end\"; did you mean \"warm end\"?",
        "water.place | along 3 in, along 4 in | form.xlsx:{}: water.place: \"along\" is said twice; say each once",
        "water.place | along 3, above 1 in | form.xlsx:{}: water.place.along: \"3\" has no unit; add one of mm, cm, m, in, ft",
        "substrate | perhaps | form.xlsx:{}: substrate: found \"perhaps\"; allowed are yes, not looked",
        "substrate | not looked | form.xlsx:{}: substrate: nobody looked, but more is said about it; clear one of the two",
        "format | 2 | form.xlsx:{}: format: this is format 2; this version reads format 1",
        "format | '' | form.xlsx:{format/Key}: format: the version of the form is missing; answer 1 in the row with the key format"})
    void an_answer_that_cannot_be_used_is_told_at_its_cell(String key, String answer, String told) {
        assertComplaint(located(told, key, "Answer"), answered(key, "Answer", cell -> cell.setCellValue(answer)));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "heaters | 1 | yes | form.xlsx:{}: heaters: this says that there is nothing to list, but something is listed",
        "lamps[].between | 1 | some | form.xlsx:{}: lamps[0].between: this cannot be answered here; write \"none\"",
        "lamps[].between[].what | 3 | mesh | form.xlsx:{}: lamps[].between: it is not said which of the lamps this belongs to; the names are \"compact UV\"",
        "lamps[].between[] | 3 | tube | form.xlsx:{}: lamps[].between: none of the lamps has this name; the names are \"compact UV\"",
        "lamps[].between[] | 2 | compact UV | form.xlsx:{lamps[].between/1}: lamps[0].between: this says that there is nothing to list, but something is listed",
        "heaters[].name | 2 | warm panel | form.xlsx:{}: heaters[1].name: the name \"warm panel\" is given twice, first in {heaters[].name/1}",
        "furnishings[].kind | 6 | cave | form.xlsx:{}: furnishings[3].kind: found \"cave\"",
        "animals[].species | 1 | dragon | form.xlsx:{}: animals[0].species: the species \"dragon\" is not known"})
    void an_answer_about_one_of_several_things_is_told_at_its_cell(String key, String thing, String answer, String told) {
        List<String> complaints = complaints(answered(key, thing, cell -> cell.setCellValue(answer)));
        String located = located(told, key, thing);
        assertTrue(complaints.stream().anyMatch(one -> one.startsWith(located)), located + "\n" + complaints);
    }

    @Test
    void numbers_days_and_truths_of_a_spreadsheet_are_read_as_what_they_show() {
        Setup plain = usable(FORM);
        assertEquals(plain.room().coldest(), usable(answered("room.coldest", "Answer", cell -> cell.setCellValue(62))).room().coldest());
        assertEquals("31.5 °F", usable(answered("room.coldest", "Answer", cell -> cell.setCellValue(31.5))).told().answer("room.coldest").orElseThrow());
        assertEquals("0.1 °F", usable(answered("room.coldest", "Answer", cell -> cell.setCellValue(0.1))).told().answer("room.coldest").orElseThrow());
        assertEquals("yes", usable(answered("room.sun", "Answer", cell -> cell.setCellValue("yes"))).told().answer("room.sun").orElseThrow());
        assertEquals("true", usable(answered("room.sun", "Answer", cell -> cell.setCellValue(true))).told().answer("room.sun").orElseThrow());
        assertEquals("2026-10-30", usable(answered("on", "Answer", cell -> {
            cell.setCellValue(LocalDate.of(2026, 10, 30));
            format(cell, "d mmm yyyy");
        })).on().orElseThrow().toString());
        assertEquals("80 %", usable(answered("animals[].diet.plants", "1", cell -> {
            cell.setCellValue(0.8);
            format(cell, "0%");
        })).told().answer("animals[Quill].diet.plants").orElseThrow());
        assertEquals("12", usable(answered("animals[].name", "1", cell -> cell.setCellValue(12))).animals().get(0).name());
    }

    @Test
    void a_day_the_spreadsheet_made_of_another_answer_is_told() {
        assertComplaint(located("form.xlsx:{substrate.kind/Answer}: substrate.kind: the spreadsheet made the day 2026-05-03 of this answer; set the cell to text", "", ""),
                answered("substrate.kind", "Answer", cell -> {
                    cell.setCellValue(LocalDate.of(2026, 5, 3));
                    format(cell, "d-mmm");
                }));
    }

    @Test
    void days_counted_from_1904_are_the_same_days() {
        byte[] form = answered("on", "Answer", cell -> {
            cell.setCellValue(44_864);
            format(cell, "yyyy-mm-dd");
        });
        Map<String, byte[]> parts = unpacked(form);
        String part = "xl/workbook.xml";
        String book = new String(parts.get(part), StandardCharsets.UTF_8);
        assertTrue(book.contains("date1904=\"false\"") || book.contains("<workbookPr"), book);
        String counted = book.replace("date1904=\"false\"", "").replace("<workbookPr", "<workbookPr date1904=\"1\"");
        parts.put(part, counted.getBytes(StandardCharsets.UTF_8));
        assertEquals("2026-10-31", usable(packed(parts)).on().orElseThrow().toString());
    }

    @Test
    void a_formula_counts_with_the_value_it_was_worked_out_to() {
        assertEquals(usable(FORM).enclosure().length(), usable(answered("enclosure.inside.length", "Answer", cell -> {
            cell.setCellFormula("2+2");
            cell.setCellValue(4);
        })).enclosure().length());
        assertComplaint(located("form.xlsx:{enclosure.inside.length/Answer}: enclosure.inside.length: the cell holds a formula that was never worked out", "", ""),
                answered("enclosure.inside.length", "Answer", cell -> {
                    cell.setBlank();
                    cell.setCellFormula("A1");
                }));
        assertComplaint(located("form.xlsx:{enclosure.inside.length/Answer}: enclosure.inside.length: the cell holds the error #DIV/0!; write the answer in place of the formula", "", ""),
                answered("enclosure.inside.length", "Answer", cell -> cell.setCellErrorValue(FormulaError.DIV0.getCode())));
    }

    @Test
    void rows_columns_and_sheets_may_be_moved_hidden_and_noted_beside() {
        byte[] moved = edited(book -> {
            Sheet first = book.getSheet("First");
            first.shiftRows(2, first.getLastRowNum(), 3);
            first.getRow(8).setZeroHeight(true);
            book.setSheetHidden(book.getSheetIndex("Heaters"), true);
            book.setSheetOrder("Readings", 0);
            book.createSheet("My notes").createRow(0).createCell(0).setCellValue("Key to the shed hangs by the door");
        });
        assertEquals(usable(FORM), usable(moved));
    }

    @Test
    void a_column_for_one_more_thing_needs_its_number() {
        Consumer<Workbook> added = book -> {
            Sheet animals = book.getSheet("Heaters");
            int key = column(animals, "Key");
            animals.shiftColumns(key, key, 1);
            cell(book, "heaters[].name", "Key").getRow().createCell(key).setCellValue("mat");
        };
        assertComplaint("form.xlsx:Heaters!I4: heaters[].name: the column of this answer has no heading the form knows; head it with the number",
                edited(added));
        byte[] numbered = edited(added.andThen(book -> book.getSheet("Heaters").getRow(1).createCell(8).setCellValue(5)));
        assertEquals(List.of("warm panel", "mat"), usable(numbered).heaters().stream().map(heater -> heater.name()).toList());
        assertComplaint("form.xlsx:Heaters!I2: two columns are headed 4; give each column a number of its own",
                edited(book -> {
                    Sheet heaters = book.getSheet("Heaters");
                    heaters.getRow(1).getCell(column(heaters, "Key")).setCellValue("4");
                    heaters.getRow(1).createCell(9).setCellValue("Key");
                    heaters.forEach(row -> Optional.ofNullable(row.getCell(8)).filter(cell -> row.getRowNum() > 1).ifPresent(cell -> {
                        row.createCell(9).setCellValue(cell.getStringCellValue());
                        cell.setBlank();
                    }));
                }));
    }

    @Test
    void keys_that_are_wrong_missing_or_given_twice_are_told() {
        assertComplaint(located("form.xlsx:{room.coldest/Key}: the form asks nothing of the key \"room.coldst\"; did you mean \"room.coldest\"?", "", ""),
                answered("room.coldest", "Key", cell -> cell.setCellValue("room.coldst")));
        assertComplaint(located("form.xlsx:{room.coldest/Answer}: this row has no key; answer in the rows of the form", "", ""),
                answered("room.coldest", "Key", Cell::setBlank));
        assertComplaint(located("form.xlsx:{room.hottest/Key}: room.coldest: this question is asked twice, first in {room.coldest/Key}; keep one of the two rows", "", ""),
                answered("room.hottest", "Key", cell -> cell.setCellValue("room.coldest")));
        assertEquals(List.of("form.xlsx:First!C13: the cells C13:C14 are merged; split them, and answer in each cell on its own."),
                complaints(edited(book -> book.getSheet("First").addMergedRegion(new CellRangeAddress(12, 13, 2, 2)))));
    }

    @Test
    void a_form_nobody_filled_in_asks_for_the_name_of_the_animal() throws IOException {
        byte[] blank = FormWriter.write(FormAnswers.blank("pantherophis-guttatus", PLAN), "corn snake", BuiltIn.KNOWLEDGE.speciesNames(), PLAN);
        assertComplaint(located("form.xlsx:{animals[].species/1}: animals[0]: \"name\" is missing", "", ""), blank);
    }
}
