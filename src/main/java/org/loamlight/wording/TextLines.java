package org.loamlight.wording;

import java.util.ArrayList;
import java.util.List;

/** Text broken into lines of a width on paper. */
public final class TextLines {
    /** Screens and printers set letters up to about a tenth wider than the metrics say. */
    private static final double RESERVE = 1.1;
    private static final String CUT = "...";

    private TextLines() {
    }

    /**
     * Broken between words; a word wider than a line is broken anywhere. Line breaks of the text count as spaces.
     *
     * @param size  of the font, in the unit of {@code width}
     * @param most  lines at most; the last one ends in dots where there would be more
     * @return at least one line
     */
    public static List<String> wrapped(String text, double size, double width, int most) {
        List<String> lines = new ArrayList<>();
        String left = text.strip().replaceAll("\\s+", " ");
        while (!fits(left, size, width) && lines.size() + 1 < most) {
            int end = end(left, size, width);
            lines.add(left.substring(0, end).strip());
            left = left.substring(end).strip();
        }
        lines.add(fits(left, size, width) ? left : left.substring(0, end(left, size, width - TextWidth.of(CUT, size) * RESERVE)).strip() + CUT);
        return lines;
    }

    private static boolean fits(String text, double size, double width) {
        return TextWidth.of(text, size) * RESERVE <= width;
    }

    /** Where a line of it ends: after the last space that fits, else after as much as fits; always past at least one character. */
    private static int end(String text, double size, double width) {
        int end = text.offsetByCodePoints(0, 1);
        while (end < text.length() && fits(text.substring(0, text.offsetByCodePoints(end, 1)), size, width)) {
            end = text.offsetByCodePoints(end, 1);
        }
        int space = text.lastIndexOf(' ', end);
        return space > 0 ? space : end;
    }
}
