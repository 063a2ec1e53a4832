package org.loamlight.workbook.cells;

import org.loamlight.setup.JsonPlace;

/**
 * A cell with something in it.
 *
 * @param row    from 1
 * @param column from 1
 * @param text   what it holds, as text; of an error its name, "#REF!"; empty for {@link Content#NO_VALUE} only
 */
public record Cell(String sheet, int row, int column, Content content, String text) {

    /** What stands in a cell. Of a formula that is the value the spreadsheet worked out last. */
    public enum Content {
        TEXT,
        /** A number in plain digits. */
        NUMBER,
        /** A number shown in per cent: "80 %". */
        PERCENTAGE,
        /** A number shown as a day: "2026-11-02". */
        DAY,
        /** "true" or "false". */
        TRUE_OR_FALSE,
        ERROR,
        /** A formula that was never worked out. */
        NO_VALUE
    }

    /** The place of the cell, for a value of this path. */
    public JsonPlace place(String path) {
        return new JsonPlace(row, column, path, sheet);
    }
}
