package org.loamlight.wording;

/**
 * How wide text is in print. Taken from the widths of Helvetica (Adobe Font Metrics of the 14 core fonts, shared by Arial and
 * Liberation Sans) and never from the fonts of the machine, so that every machine makes the same file.
 */
public final class TextWidth {
    /** Widths of the characters from the space to the tilde, in thousandths of the font size. */
    private static final short[] WIDTHS = {
        278, 278, 355, 556, 556, 889, 667, 191, 333, 333, 389, 584, 278, 333, 278, 278, 556, 556, 556, 556, 556, 556, 556, 556, 556, 556,
        278, 278, 584, 584, 584, 556, 1015, 667, 667, 722, 722, 667, 611, 778, 722, 278, 500, 667, 556, 833, 722, 778, 667, 778, 722, 667,
        611, 722, 667, 944, 667, 667, 611, 278, 278, 278, 469, 556, 333, 556, 556, 500, 556, 556, 278, 556, 556, 222, 222, 500, 222, 833,
        556, 556, 556, 556, 333, 500, 278, 556, 500, 722, 500, 500, 500, 334, 260, 334, 584};
    /** No character of other scripts is wider than the font size is high. */
    private static final int WIDTH_OF_OTHER = 1000;
    private static final int WIDTH_OF_LATIN = 722;
    private static final int END_OF_LATIN = 0x250;
    private static final double THOUSAND = 1000;

    private TextWidth() {
    }

    /** Width of a character, in thousandths of the font size; that of a capital for letters the table does not hold. */
    public static int thousandths(int point) {
        int index = point - ' ';
        if (index >= 0 && index < WIDTHS.length) {
            return WIDTHS[index];
        }
        return point < END_OF_LATIN ? WIDTH_OF_LATIN : WIDTH_OF_OTHER;
    }

    /** Width of a text on one line, in the unit of the font size. */
    public static double of(String text, double fontSize) {
        return text.codePoints().map(TextWidth::thousandths).sum() / THOUSAND * fontSize;
    }
}
