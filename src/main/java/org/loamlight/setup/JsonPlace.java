package org.loamlight.setup;

/**
 * Where a value stands: 1-based line and column, and its path from the document ("animals[0].length").
 *
 * @param sheet the sheet of a workbook, whose rows and columns the two numbers then are; empty for a text file
 */
public record JsonPlace(int line, int column, String path, String sheet) implements Located {
    private static final int LETTERS = 26;

    public JsonPlace(int line, int column, String path) {
        this(line, column, path, "");
    }

    @Override
    public JsonPlace place() {
        return this;
    }

    /** As it stands in a sentence: "line 4", or "Lamps!C4" for a cell. */
    public String inWords() {
        return sheet.isEmpty() ? "line " + line : cell();
    }

    /** The cell as spreadsheets name it: "Lamps!C4", "'Lamp readings'!C4". Only for a cell. */
    String cell() {
        String plain = Quoted.plain(sheet);
        return (plain.matches("\\w+") ? plain : "'" + plain + "'") + "!" + letters(column) + line;
    }

    private static String letters(int column) {
        int before = (column - 1) / LETTERS;
        return (before == 0 ? "" : letters(before)) + (char) ('A' + (column - 1) % LETTERS);
    }
}
