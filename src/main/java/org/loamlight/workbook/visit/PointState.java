package org.loamlight.workbook.visit;

/**
 * What somebody wrote beside a point that was to be put right.
 *
 * @param pair  key of the pair
 * @param what  the point as it stands there
 * @param where the part it is about
 * @param state one of the states of the list; never empty
 */
public record PointState(String pair, String what, String where, String state) {
}
