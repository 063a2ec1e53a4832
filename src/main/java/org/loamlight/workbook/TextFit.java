package org.loamlight.workbook;

import java.util.regex.Pattern;

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

    private static final Pattern AFTER_SPACE_OR_HYPHEN = Pattern.compile("(?<=[ -])");

    private TextFit() {
    }

    /** @param width of the column, in digits; at least one line */
    static int lines(String text, int width) {
        double room = Math.max(WIDTH_OF_OTHER, width * WIDTH_OF_DIGIT / RESERVE);
        int lines = 0;
        for (String paragraph : text.split("\n", -1)) {
            lines += linesOfParagraph(paragraph, room);
        }
        return lines;
    }

    /** Words go to the next line whole; one that is wider than the column is broken anywhere. */
    private static int linesOfParagraph(String paragraph, double room) {
        int lines = 1;
        double used = 0;
        for (String word : AFTER_SPACE_OR_HYPHEN.split(paragraph)) {
            double needed = width(word.stripTrailing());
            if (used > 0 && used + needed > room) {
                lines++;
                used = 0;
            }
            if (needed > room) {
                lines += brokenInto(word, room) - 1;
                used = room;
            } else {
                used += width(word);
            }
        }
        return lines;
    }

    /** Lines a word takes that is broken wherever a line is full. */
    private static int brokenInto(String word, double room) {
        int lines = 1;
        double used = 0;
        for (int point : word.codePoints().toArray()) {
            if (used + width(point) > room) {
                lines++;
                used = 0;
            }
            used += width(point);
        }
        return lines;
    }

    private static double width(String text) {
        return text.codePoints().map(TextFit::width).sum();
    }

    private static int width(int point) {
        int index = point - ' ';
        if (index >= 0 && index < WIDTHS.length) {
            return WIDTHS[index];
        }
        return point < END_OF_LATIN ? WIDTH_OF_LATIN : WIDTH_OF_OTHER;
    }
}
