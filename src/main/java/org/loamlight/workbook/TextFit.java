package org.loamlight.workbook;

import org.loamlight.wording.TextWidth;

/** How many lines a text takes in a column. */
final class TextFit {
    private static final int WIDTH_OF_DIGIT = TextWidth.thousandths('0');
    /** No room is narrower than its widest character. */
    private static final int WIDEST = 1000;
    /** Screens and printers set letters up to about a tenth wider than the metrics say; bold is wider again. */
    private static final double RESERVE = 1.12;

    private final double room;
    private int lines = 1;
    /** Width of the words that stand on the last line. */
    private double words;
    /** Width of the word that is being read. */
    private double word;

    private TextFit(int width) {
        this.room = Math.max(WIDEST, width * WIDTH_OF_DIGIT / RESERVE);
    }

    /** @param width of the column, in digits; at least one line */
    static int lines(String text, int width) {
        TextFit fit = new TextFit(width);
        text.codePoints().forEach(fit::add);
        return fit.lines;
    }

    private void add(int point) {
        if (point == '\n') {
            words = 0;
            word = 0;
            lines++;
            return;
        }
        int width = TextWidth.thousandths(point);
        if (point != ' ') {
            makeRoomFor(width);
        }
        word += width;
        if (point == ' ' || point == '-') {
            words += word;
            word = 0;
        }
    }

    /** A word goes to the next line whole; one that is wider than the column is broken anywhere. */
    private void makeRoomFor(int width) {
        if (words > 0 && words + word + width > room) {
            lines++;
            words = 0;
        }
        if (word + width > room) {
            lines++;
            word = 0;
        }
    }
}
