package org.loamlight.workbook.cells;

import java.util.Optional;
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

    /** What keeps the cell from being used: an error, or a formula without a value; empty when nothing does. */
    public Optional<String> fault() {
        return switch (content) {
            case ERROR -> Optional.of("the cell holds the error " + text);
            case NO_VALUE -> Optional.of("the cell holds a formula that was never worked out");
            case TEXT, NUMBER, PERCENTAGE, DAY, TRUE_OR_FALSE -> Optional.empty();
        };
    }

    /** The place of the cell, for a value of this path. */
    public JsonPlace place(String path) {
        return new JsonPlace(row, column, path, sheet);
    }
}
