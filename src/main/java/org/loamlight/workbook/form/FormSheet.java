package org.loamlight.workbook.form;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.loamlight.setup.Problems;
import org.loamlight.setup.Question;
import org.loamlight.setup.Words;
import org.loamlight.workbook.cells.Cell;
import org.loamlight.workbook.cells.Sheet;

/** One sheet of a form as it came back. Rows are known by their key and columns by their heading, wherever they stand. */
final class FormSheet {
    private static final Set<String> ONLY_READ = Set.of(FormPlan.PART, FormPlan.QUESTION, FormPlan.HOW, FormPlan.ONLY_IF);
    /** Somebody may have written above the table, but not so much. */
    private static final int LAST_HEADING = 20;
    private static final int ONCE = 1;

    private final Sheet sheet;
    private final FormPlan plan;
    private final Filled filled;
    private final Problems problems;
    private final Map<Integer, Integer> things = new HashMap<>();
    private int heading;
    private int key;
    private int unit;

    private FormSheet(Sheet sheet, FormPlan plan, Filled filled, Problems problems) {
        this.sheet = sheet;
        this.plan = plan;
        this.filled = filled;
        this.problems = problems;
    }

    /** Takes up what was answered on a sheet; one without a column of keys and questions is somebody's own and is passed over. */
    static void read(Sheet sheet, FormPlan plan, Filled filled, Problems problems) {
        FormSheet form = new FormSheet(sheet, plan, filled, problems);
        if (form.findHeading()) {
            form.complainOfMerged();
            sheet.rows().stream().filter(row -> row.get(0).row() > form.heading).forEach(form::row);
        }
    }

    private boolean findHeading() {
        Optional<List<Cell>> row = sheet.rows().stream().filter(cells -> cells.get(0).row() <= LAST_HEADING)
                .filter(cells -> isHeaded(cells, FormPlan.KEY) && (isHeaded(cells, FormPlan.QUESTION) || isHeaded(cells, FormPlan.ANSWER))).findFirst();
        row.ifPresent(cells -> {
            heading = cells.get(0).row();
            cells.forEach(this::heading);
        });
        return row.isPresent();
    }

    private static boolean isHeaded(List<Cell> cells, String heading) {
        return cells.stream().anyMatch(cell -> isHeaded(cell, heading));
    }

    private static boolean isHeaded(Cell cell, String heading) {
        return cell.text().strip().equalsIgnoreCase(heading);
    }

    private void heading(Cell cell) {
        String words = cell.text().strip();
        if (isHeaded(cell, FormPlan.KEY)) {
            key = cell.column();
        } else if (isHeaded(cell, FormPlan.UNIT)) {
            unit = cell.column();
        } else if (isHeaded(cell, FormPlan.ANSWER)) {
            thing(ONCE, cell);
        } else if (words.matches("[1-9]\\d{0,3}")) {
            thing(Integer.parseInt(words), cell);
        }
    }

    private void thing(int number, Cell cell) {
        if (things.containsValue(number)) {
            problems.add(cell.place(""), "two columns are headed " + cell.text().strip(), "give each column a number of its own");
        }
        things.put(cell.column(), number);
    }

    private void complainOfMerged() {
        sheet.merged().stream().filter(range -> range.row() > heading).forEach(range -> problems.add(range.place(""),
                "the cells " + range.text() + " are merged", "split them, and answer in each cell on its own"));
    }

    private void row(List<Cell> row) {
        Optional<Cell> keyed = row.stream().filter(cell -> cell.column() == key).findFirst();
        Optional<Question> question = keyed.flatMap(cell -> plan.question(cell.text().strip()));
        if (question.isPresent()) {
            if (filled.isNew(question.get(), keyed.get(), problems)) {
                row.forEach(cell -> answer(question.get(), cell));
            }
        } else if (keyed.isPresent()) {
            problems.add(keyed.get().place(""), "the form asks nothing of the key \"" + shown(keyed.get()) + "\"",
                    Words.hint(keyed.get().text(), plan.keys()) + "make a new form with loamlight convert or loamlight form, and leave its keys as they are");
        } else {
            row.stream().filter(cell -> things.containsKey(cell.column())).findFirst().ifPresent(cell -> problems.add(cell.place(""),
                    "this row has no key", "answer in the rows of the form; notes may stand on a sheet of their own"));
        }
    }

    private static String shown(Cell cell) {
        return cell.text().replaceAll("[^\\w.$\\[\\] -]", "?").transform(text -> text.length() <= 60 ? text : text.substring(0, 60) + "...");
    }

    private void answer(Question question, Cell cell) {
        Integer thing = things.get(cell.column());
        if (thing != null && (thing == ONCE || !question.list().isEmpty())) {
            String inUnit = sheet.cell(cell.row(), unit).map(Cell::text).orElse("").strip();
            filled.put(question, thing, new FilledIn(cell, inUnit));
        } else if (thing != null) {
            problems.add(cell.place(question.path()), "this is asked only once", "answer it in the column headed 1");
        } else if (cell.column() != key && cell.column() != unit && !isOnlyRead(cell)) {
            problems.add(cell.place(question.path()), "the column of this answer has no heading the form knows",
                    "head it with the number of the thing it is about, or clear it; notes may stand on a sheet of their own");
        }
    }

    private boolean isOnlyRead(Cell cell) {
        return sheet.cell(heading, cell.column()).filter(head -> ONLY_READ.stream().anyMatch(words -> isHeaded(head, words))).isPresent();
    }
}
