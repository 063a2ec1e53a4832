package org.loamlight.workbook.cells;

/**
 * How large a workbook may be to be read; whoever reads one knows what such a workbook needs. Packed it has five megabytes at most, and 300 parts.
 *
 * @param megabytes    what it may unpack to, whole
 * @param sheets       how many it may have
 * @param cellsOfSheet how many cells each of them may have, empty ones and ranges of merged ones counted
 */
public record ReadingLimits(int megabytes, int sheets, int cellsOfSheet) {
}
