package org.loamlight.workbook.form;

import org.loamlight.workbook.cells.Cell;

/**
 * A cell somebody answered in.
 *
 * @param unit what stands in the column of units of its row; empty for nothing
 */
public record FilledIn(Cell cell, String unit) {
}
