package org.loamlight.workbook;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.apache.poi.ss.util.CellReference;
import org.loamlight.setup.Question;
import org.loamlight.workbook.form.FormAnswers;
import org.loamlight.workbook.form.FormAnswers.Answer;
import org.loamlight.workbook.form.FormPlan;

/** Makes the sheets of a form: one row for each question, and for what repeats one column for each thing, with some to spare. */
final class FormTables {
    static final String SPECIES = "Species";
    private static final String SPECIES_PATH = "animals[].species";
    private static final int TO_SPARE = 2;
    private static final int FEWEST = 4;
    private static final Map<String, Integer> FEWEST_OF = Map.of("furnishings", 8, "readings", 8);
    private static final int WIDTH_OF_THING = 16;
    private static final String THERE_IS_NONE = "There is none.";

    private final FormAnswers answers;
    private final FormPlan plan;
    private final String about;
    private final int species;
    private final Map<String, FormTable> made = new LinkedHashMap<>();

    private final List<List<String>> rows = new ArrayList<>();
    private final List<DropDown> dropDowns = new ArrayList<>();
    private final List<FormTable.Answered> answered = new ArrayList<>();

    /** @param species how many species can be chosen */
    private FormTables(FormAnswers answers, FormPlan plan, String about, int species) {
        this.answers = answers;
        this.plan = plan;
        this.about = about;
        this.species = species;
    }

    /** The sheets to be filled in, in their order. */
    static List<FormTable> of(FormAnswers answers, FormPlan plan, String about, int species) {
        FormTables tables = new FormTables(answers, plan, about, species);
        tables.once("First", plan.first());
        tables.once("More", plan.more());
        plan.sheets().forEach((list, sheet) -> tables.things(list, sheet));
        return List.copyOf(tables.made.values());
    }

    private void once(String sheet, List<Question> questions) {
        List<Column> columns = List.of(Column.text(FormPlan.PART, 15), Column.strong(FormPlan.QUESTION, 34), Column.toFillIn(FormPlan.ANSWER, 26),
                Column.toFillIn(FormPlan.UNIT, 8), Column.text(FormPlan.HOW, 48), Column.text(FormPlan.ONLY_IF, 17), new Column(FormPlan.KEY, 15, Column.Kind.KEY));
        for (Question question : questions) {
            row(question, List.of(FormWords.part(question), question.label()), 1);
        }
        finish(sheet, columns, false);
    }

    private void things(String list, String sheet) {
        int count = Math.max(FEWEST_OF.getOrDefault(list, FEWEST), answers.last(list) + TO_SPARE);
        List<Column> columns = new ArrayList<>(List.of(Column.strong(FormPlan.QUESTION, 30), Column.text(FormPlan.HOW, 42), Column.text(FormPlan.ONLY_IF, 15),
                Column.toFillIn(FormPlan.UNIT, 7)));
        IntStream.rangeClosed(1, count).forEach(thing -> columns.add(Column.toFillIn(String.valueOf(thing), WIDTH_OF_THING)));
        columns.add(new Column(FormPlan.KEY, 15, Column.Kind.KEY));
        plan.question(list).filter(parts -> parts.list().isEmpty() && !list.equals("animals")).ifPresent(parts -> thing(parts, THERE_IS_NONE, count));
        plan.about(list).forEach(question -> thing(question, label(question), count));
        finish(sheet, columns, true);
    }

    private String label(Question question) {
        return plan.owner(question.list()).filter(question::equals).isPresent() ? question.label() : FormWords.label(question);
    }

    private void thing(Question question, String label, int count) {
        SortedMap<Integer, Answer> given = new TreeMap<>();
        IntStream.rangeClosed(1, count).forEach(thing -> answers.answer(question.path(), thing).ifPresent(answer -> given.put(thing, answer)));
        FormUnits unit = FormUnits.of(question, given.values());
        List<String> row = new ArrayList<>(List.of(label, FormWords.how(question), plan.onlyIf(question), unit.unit()));
        int first = row.size();
        boolean isOfList = question.list().isEmpty();
        for (int thing = 1; thing <= count; thing++) {
            row.add(answer(unit, Optional.ofNullable(given.get(thing)), row.size()));
        }
        row.add(question.path());
        choices(question, first, isOfList ? first : first + count - 1, first - 1);
        rows.add(row);
    }

    private void row(Question question, List<String> words, int thing) {
        Optional<Answer> given = answers.answer(question.path(), thing);
        FormUnits unit = FormUnits.of(question, given.map(List::of).orElse(List.of()));
        List<String> row = new ArrayList<>(words);
        row.add(answer(unit, given, row.size()));
        choices(question, row.size() - 1, row.size() - 1, row.size());
        row.addAll(List.of(unit.unit(), FormWords.how(question), plan.onlyIf(question), question.path()));
        rows.add(row);
    }

    private int rowNumber() {
        return SheetWriter.FIRST_ROW + rows.size();
    }

    private String answer(FormUnits unit, Optional<Answer> given, int column) {
        Optional<Answer> shown = given.map(unit::without);
        shown.ifPresent(answer -> answered.add(new FormTable.Answered(rowNumber(), column, answer)));
        return shown.map(Answer::text).orElse("");
    }

    private void choices(Question question, int first, int last, int unit) {
        List<String> words = FormWords.choices(question);
        Optional<String> cells = cells(question);
        if (!words.isEmpty() || cells.isPresent()) {
            dropDowns.add(new DropDown(rowNumber(), rowNumber(), first, last, words, cells.orElse("")));
        }
        if (question.units().size() > 1) {
            dropDowns.add(DropDown.of(rowNumber(), unit, unit, question.units()));
        }
    }

    /** Where the choices stand in cells: the ids of the species, or the names a part can belong to. */
    private Optional<String> cells(Question question) {
        if (question.path().equals(SPECIES_PATH)) {
            return Optional.of(SPECIES + "!" + new CellReference(SheetWriter.FIRST_ROW, 0, true, true).formatAsString() + ":"
                    + new CellReference(SheetWriter.FIRST_ROW + species - 1, 0, true, true).formatAsString());
        }
        return plan.owner(question.list()).filter(question::equals).map(owner -> names(owner.list().substring(0, owner.list().lastIndexOf("[]"))));
    }

    private String names(String list) {
        Listing listing = made.get(plan.sheets().get(list)).listing();
        int keys = listing.columns().size() - 1;
        int row = IntStream.range(0, listing.rows().size()).filter(i -> listing.rows().get(i).get(keys).equals(list + "[].name")).findFirst().orElseThrow();
        return listing.sheet() + "!" + new CellReference(SheetWriter.FIRST_ROW + row, keys - things(listing), true, true).formatAsString() + ":"
                + new CellReference(SheetWriter.FIRST_ROW + row, keys - 1, true, true).formatAsString();
    }

    private static int things(Listing listing) {
        return (int) listing.columns().stream().filter(column -> column.header().matches("\\d+")).count();
    }

    private void finish(String sheet, List<Column> columns, boolean isListOfThings) {
        Listing listing = new Listing(sheet, sheet.replace(" ", ""), sheet + ": " + about, columns, rows);
        made.put(sheet, new FormTable(listing, List.copyOf(dropDowns), List.copyOf(answered), isListOfThings));
        rows.clear();
        dropDowns.clear();
        answered.clear();
    }
}
