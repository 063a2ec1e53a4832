package org.loamlight.workbook;

import java.util.Locale;
import java.util.regex.Pattern;

/** Text made fit for a cell: nothing in it can be run, break the file or be lost without a word. */
final class CellText {
    /** Characters a cell of Excel holds at most. */
    static final int MOST_CHARACTERS = 32_767;
    private static final String CUT = " ... (cut off here: a cell holds no more)";
    private static final int REPLACEMENT = 0xFFFD;
    /** What spreadsheets take for the beginning of a formula, also in its full-width forms. */
    private static final String BEGINS_FORMULA = "=+-@\t\r\n\uFF1D\uFF0B\uFF0D\uFF20";
    /** Office Open XML reads _x0041_ as an A (ECMA-376-1, 22.9.2.19), so an underscore that begins such a group is itself escaped. */
    private static final Pattern ESCAPE = Pattern.compile("_(?=x[0-9A-Fa-f]{4}_)");

    private static final Pattern CONTROL = Pattern.compile("[\\x00-\\x1F&&[^\n]]");

    private CellText() {
    }

    /** Whether the text, retyped into a cell, would begin a formula. */
    static boolean looksLikeFormula(String text) {
        return !text.isEmpty() && BEGINS_FORMULA.indexOf(text.charAt(0)) >= 0;
    }

    /** The same text with line breaks as line feeds, and a mark in place of each character that must not stand in a cell. */
    static String of(String text) {
        StringBuilder clean = new StringBuilder(text.length());
        text.replace("\r\n", "\n").codePoints().forEach(point -> clean.appendCodePoint(harmless(point)));
        return cut(ESCAPE.matcher(clean).replaceAll("_x005F_"));
    }

    /** The very text, for a cell that is read again: whatever a cell cannot hold as it is stands there escaped. One longer than a cell is cut. */
    static String exact(String text) {
        String exact = CONTROL.matcher(ESCAPE.matcher(text).replaceAll("_x005F_")).replaceAll(found -> String.format(Locale.ROOT, "_x%04X_", (int) found.group().charAt(0)));
        return shortened(exact, MOST_CHARACTERS);
    }

    private static int harmless(int point) {
        return switch (point) {
            case '\n', '\r', '\u2028', '\u2029' -> '\n';
            case '\t' -> ' ';
            default -> mustNotStand(point) ? REPLACEMENT : point;
        };
    }

    private static boolean mustNotStand(int point) {
        int type = Character.getType(point);
        return type == Character.CONTROL || type == Character.SURROGATE || turnsDirection(point) || (point & 0xFFFE) == 0xFFFE;
    }

    /** Embeddings, overrides and isolates (Unicode Standard Annex 9, 2): they make text read other than it is. */
    private static boolean turnsDirection(int point) {
        return point >= 0x202A && point <= 0x202E || point >= 0x2066 && point <= 0x2069;
    }

    private static String cut(String text) {
        return text.length() <= MOST_CHARACTERS ? text : shortened(text, MOST_CHARACTERS - CUT.length()) + CUT;
    }

    /** At most so many characters, never half of a pair. */
    static String shortened(String text, int most) {
        if (text.length() <= most) {
            return text;
        }
        return text.substring(0, Character.isHighSurrogate(text.charAt(most - 1)) ? most - 1 : most);
    }
}
