package org.loamlight.workbook.visit;

import java.util.Optional;
import org.loamlight.workbook.cells.Cell;

/**
 * A row of the walk in which somebody wrote.
 *
 * @param key     what the row is known by
 * @param at      the cell of the key
 * @param what    the question as it stands there
 * @param where   the part it is about; empty for what is asked once
 * @param now     the answer; empty where only a remark was made
 * @param unit    the unit of the row; empty for none
 * @param knownBy seen, measured or told; empty when not said
 * @param photo   number of the photograph; empty for none
 * @param reply   what the keeper says; empty for nothing
 */
record VisitAnswer(String key, Cell at, String what, String where, Optional<Cell> now, String unit, String knownBy, String photo, String reply) {
}
