package org.loamlight.workbook;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * One sheet in words: a title and one table.
 *
 * @param sheet name of the sheet
 * @param table name of the table, unique in the workbook and with no space in it
 * @param title stands in A1
 * @param rows  one text for each column, "" where nothing is to be said; at least one row
 * @param boxed how many of the first rows stand in a thick box
 */
record Listing(String sheet, String table, String title, List<Column> columns, List<List<String>> rows, int boxed) {
    /** Tables wider than this, in digits, are printed on the long side of the paper. */
    private static final int WIDEST_UPRIGHT = 110;

    Listing {
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
        for (List<String> row : rows) {
            if (row.size() != columns.size()) {
                throw new IllegalArgumentException("A row of " + sheet + " has " + row.size() + " texts for " + columns.size() + " columns");
            }
        }
    }

    /** Without a box. */
    Listing(String sheet, String table, String title, List<Column> columns, List<List<String>> rows) {
        this(sheet, table, title, columns, rows, 0);
    }

    /** The same listing; if it is empty, with one row that says so beside where the number would stand. */
    Listing orSaying(String sentence) {
        if (!rows.isEmpty()) {
            return this;
        }
        List<String> row = new ArrayList<>(Collections.nCopies(columns.size(), ""));
        row.set(1, sentence);
        return new Listing(sheet, table, title, columns, List.of(row));
    }

    int width() {
        return columns.stream().mapToInt(Column::width).sum();
    }

    boolean isWide() {
        return width() > WIDEST_UPRIGHT;
    }
}
