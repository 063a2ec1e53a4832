package org.loamlight.workbook.visit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.loamlight.setup.Problems;
import org.loamlight.workbook.cells.Cell;
import org.loamlight.workbook.cells.Sheet;

/** A sheet whose rows are known by their key and whose columns by their heading, wherever they stand. */
final class KeyedSheet {
    /** Somebody may have written above the table, but not so much. */
    private static final int LAST_HEADING = 20;

    private final Sheet sheet;
    private final int heading;
    private final Map<String, Integer> columns = new HashMap<>();

    private KeyedSheet(Sheet sheet, List<Cell> headings) {
        this.sheet = sheet;
        this.heading = headings.get(0).row();
        headings.forEach(cell -> columns.putIfAbsent(normal(cell.text()), cell.column()));
    }

    /** One row below the headings. */
    final class Row {
        private final List<Cell> cells;

        private Row(List<Cell> cells) {
            this.cells = cells;
        }

        /** The cell in the column of a heading; empty when it is empty, or there is no such column. */
        Optional<Cell> cell(String heading) {
            Integer column = columns.get(normal(heading));
            return column == null ? Optional.empty() : cells.stream().filter(cell -> cell.column() == column && !cell.text().isBlank()).findFirst();
        }

        /** What stands in the column of a heading; empty for nothing. */
        String text(String heading) {
            return cell(heading).map(cell -> cell.text().strip()).orElse("");
        }

        /** Any cell of the row, to point at it. */
        Cell any() {
            return cells.get(0);
        }
    }

    /** The sheet as a keyed one; empty when it has no column of keys. */
    static Optional<KeyedSheet> of(Sheet sheet) {
        return sheet.rows().stream().filter(cells -> cells.get(0).row() <= LAST_HEADING)
                .filter(cells -> cells.stream().anyMatch(cell -> normal(cell.text()).equals(normal(Headings.KEY)))).findFirst()
                .map(headings -> new KeyedSheet(sheet, headings));
    }

    private static String normal(String heading) {
        return heading.strip().toLowerCase(Locale.ROOT);
    }

    /** Whether there is a column of this heading. */
    boolean has(String heading) {
        return columns.containsKey(normal(heading));
    }

    List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        sheet.rows().stream().filter(cells -> cells.get(0).row() > heading).forEach(cells -> rows.add(new Row(cells)));
        return rows;
    }

    void complainOfMerged(Problems problems) {
        sheet.merged().stream().filter(range -> range.row() > heading).forEach(range -> problems.add(range.place(""),
                "the cells " + range.text() + " are merged", "split them, and write in each cell on its own"));
    }
}
