package org.loamlight.workbook;

/**
 * How many lines a text takes in a column. Computed from the widths of Helvetica (Adobe Font Metrics of the 14 core fonts,
 * shared by Arial and Liberation Sans) and never from the fonts of the machine, so that every machine makes the same file.
 */
final class TextFit {
    /** Widths of the characters from the space to the tilde, in thousandths of the font size. */
    private static final short[] WIDTHS = {
        278, 278, 355, 556, 556, 889, 667, 191, 333, 333, 389, 584, 278, 333, 278, 278, 556, 556, 556, 556, 556, 556, 556, 556, 556, 556,
        278, 278, 584, 584, 584, 556, 1015, 667, 667, 722, 722, 667, 611, 778, 722, 278, 500, 667, 556, 833, 722, 778, 667, 778, 722, 667,
        611, 722, 667, 944, 667, 667, 611, 278, 278, 278, 469, 556, 333, 556, 556, 500, 556, 556, 278, 556, 556, 222, 222, 500, 222, 833,
        556, 556, 556, 556, 333, 500, 278, 556, 500, 722, 500, 500, 500, 334, 260, 334, 584};
    private static final int WIDTH_OF_DIGIT = 556;
    /** No character of other scripts is wider than the font size is high. */
    private static final int WIDTH_OF_OTHER = 1000;
    private static final int WIDTH_OF_LATIN = 722;
    private static final int END_OF_LATIN = 0x250;
    /** Screens and printers set letters up to about a tenth wider than the metrics say; bold is wider again. */
    private static final double RESERVE = 1.12;

    private final double room;
    private int lines = 1;
    /** Width of the words that stand on the last line. */
    private double words;
    /** Width of the word that is being read. */
    private double word;

    private TextFit(int width) {
        this.room = Math.max(WIDTH_OF_OTHER, width * WIDTH_OF_DIGIT / RESERVE);
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
        int width = width(point);
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

    private static int width(int point) {
        int index = point - ' ';
        if (index >= 0 && index < WIDTHS.length) {
            return WIDTHS[index];
        }
        return point < END_OF_LATIN ? WIDTH_OF_LATIN : WIDTH_OF_OTHER;
    }
}
