package org.loamlight.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.loamlight.workbook.EditedForm.PLAN;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFDataValidation;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.loamlight.evaluation.BuiltIn;
import org.loamlight.quantity.Unit;
import org.loamlight.setup.JsonFile;
import org.loamlight.setup.Problems;
import org.loamlight.setup.ProblemsFound;
import org.loamlight.setup.Question;
import org.loamlight.workbook.form.FormAnswers;
import org.loamlight.workbook.form.FormPlan;

/** The form as a workbook, and its plan. What holds of every workbook stands in {@link EveryWorkbookTest}. */
class FormWriterTest {
    private static final List<String> SHEETS = List.of("How to fill in", "First", "More", "Animals", "Openings", "Heaters", "Lamps", "Lies between", "Lamp readings",
            "Furnishings", "Readings", "Species");
    private static final XSSFWorkbook BLANK = open(FormAnswers.blank("pantherophis-guttatus", PLAN));

    private static XSSFWorkbook open(FormAnswers answers) {
        try {
            byte[] form = FormWriter.write(answers, "corn snake", BuiltIn.KNOWLEDGE.speciesNames(), PLAN);
            return new XSSFWorkbook(new ByteArrayInputStream(form));
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private static List<XSSFSheet> sheets() {
        List<XSSFSheet> sheets = new ArrayList<>();
        BLANK.sheetIterator().forEachRemaining(sheet -> sheets.add((XSSFSheet) sheet));
        return sheets;
    }

    @Test
    void sheets_stand_in_the_order_in_which_they_are_filled_in() {
        assertEquals(SHEETS, sheets().stream().map(XSSFSheet::getSheetName).toList());
        sheets().forEach(sheet -> assertEquals(PrintSetup.A4_PAPERSIZE, sheet.getPrintSetup().getPaperSize()));
    }

    @Test
    void every_question_stands_in_the_form_once() {
        List<String> keys = new ArrayList<>();
        for (XSSFSheet sheet : sheets()) {
            int last = sheet.getRow(1).getLastCellNum() - 1;
            if (sheet.getRow(1).getCell(last).getStringCellValue().equals(FormPlan.KEY)) {
                sheet.forEach(row -> keys.add(row.getRowNum() < SheetWriter.FIRST_ROW ? "" : row.getCell(last).getStringCellValue()));
            }
        }
        keys.removeIf(String::isEmpty);
        Set<String> expected = new TreeSet<>(PLAN.keys());
        expected.remove("animals");
        assertEquals(expected, new TreeSet<>(keys));
        assertEquals(expected.size(), keys.size());
    }

    @Test
    void every_list_offers_units_or_not_looked_too() {
        Map<String, Long> lists = sheets().stream().collect(Collectors.toMap(XSSFSheet::getSheetName, sheet -> (long) sheet.getDataValidations().size()));
        assertTrue(lists.get("First") >= 20 && lists.get("Lamps") >= 15 && lists.get("Lies between") == 2, lists.toString());
        for (XSSFSheet sheet : sheets()) {
            for (XSSFDataValidation list : sheet.getDataValidations()) {
                String[] words = list.getValidationConstraint().getExplicitListValues();
                boolean isOfUnits = words != null && Stream.of(words).allMatch(word -> Unit.spelt(word).isPresent());
                assertTrue(words == null || isOfUnits || List.of(words).contains("not looked"), sheet.getSheetName());
            }
        }
    }

    @Test
    void no_text_of_a_setup_becomes_a_formula() throws ProblemsFound {
        String setup = "{\"title\": \"=1+1\", \"animals\": [{\"name\": \"@cmd\", \"species\": \"=HYPERLINK(1)\"}, {\"name\": \"+1\"}, {\"name\": \"-1\"}]}";
        Problems problems = new Problems("setup.json");
        XSSFWorkbook book = open(FormAnswers.of(JsonFile.read(setup.getBytes(StandardCharsets.UTF_8), problems), PLAN, problems));
        List<String> quoted = new ArrayList<>();
        for (Sheet sheet : book) {
            for (Row row : sheet) {
                for (Cell cell : row) {
                    assertTrue(cell.getCellType() != CellType.FORMULA);
                    if (cell.getCellStyle().getQuotePrefixed()) {
                        quoted.add(cell.getStringCellValue());
                    }
                }
            }
        }
        assertEquals(List.of("=1+1", "@cmd", "+1", "-1", "=HYPERLINK(1)"), quoted);
    }

    @Test
    void the_plan_names_questions_there_are() {
        List<Question> first = PLAN.first();
        assertTrue(first.size() >= 25 && first.size() <= 30, "first: " + first.size());
        first.forEach(question -> assertEquals("", question.list()));
        assertEquals(Set.of("substrate", "water"), PLAN.thereIs());
        assertEquals(PLAN.questions().stream().filter(question -> question.kind() == Question.Kind.PARTS).map(Question::path).collect(Collectors.toSet()),
                PLAN.sheets().keySet());
        assertTrue(PLAN.questions().stream().filter(question -> !PLAN.onlyIf(question).isEmpty()).count() >= 50);
        PLAN.questions().forEach(question -> assertFalse(PLAN.onlyIf(question).endsWith("."), question.path()));
    }

    @Test
    void words_fit_into_lists_and_none_of_them_means_something_else_in_a_form() {
        for (Question question : PLAN.questions()) {
            assertTrue(String.join(",", FormWords.choices(question)).length() <= 255, question.path());
            assertTrue(question.choices().stream().noneMatch(word -> word.contains(";") || word.contains(",")), question.path());
            assertTrue(question.kind() != Question.Kind.SEVERAL || !question.choices().contains(FormPlan.NONE), question.path());
        }
    }
}
