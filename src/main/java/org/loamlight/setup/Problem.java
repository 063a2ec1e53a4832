package org.loamlight.setup;

/**
 * Something in an input file that cannot be used.
 *
 * @param file    the file as the user named it
 * @param line    1-based line; 0 when the problem has no line
 * @param column  1-based column; 0 when the problem has no column
 * @param path    where in the document ("animals[0].length"); empty for the document itself
 * @param found   what was found
 * @param allowed what is allowed and the way out
 * @param cell    the cell of a workbook as spreadsheets name it ("Lamps!C4"), which line and column then count; empty for a text file
 */
public record Problem(String file, int line, int column, String path, String found, String allowed, String cell) {
    public Problem(String file, int line, int column, String path, String found, String allowed) {
        this(file, line, column, path, found, allowed, "");
    }

    /** One line: file:line:column path: found; allowed. In a workbook the cell stands for line and column. */
    public String text() {
        String place = cell.isEmpty() ? line + ":" + column : cell;
        String where = line == 0 ? file : file + ":" + place;
        String what = path.isEmpty() ? found : path + ": " + found;
        return where + ": " + what + (allowed.isEmpty() ? "." : "; " + allowed + ".");
    }
}
