package org.loamlight.report;

import java.lang.Character.UnicodeScript;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Wraps text to a number of columns. A letter of the wide scripts of East Asia takes two columns (Unicode Standard Annex 11),
 * everything else one; a mark stays with the letter it stands on; a number stays with its unit; what is longer than a line is
 * cut between letters.
 */
final class Columns {
    private static final Set<UnicodeScript> WIDE = EnumSet.of(UnicodeScript.HAN, UnicodeScript.HIRAGANA, UnicodeScript.KATAKANA,
            UnicodeScript.HANGUL, UnicodeScript.BOPOMOFO, UnicodeScript.YI);
    private static final int FIRST_FULL_WIDTH = 0x3000;
    private static final int LAST_FULL_WIDTH_SIGN = 0x303F;
    private static final int FULL_WIDTH_FORMS = 0xFF01;
    private static final int LAST_FULL_WIDTH_FORM = 0xFF60;
    private static final int FIRST_PICTURE = 0x1F000;
    /** Formatting signs that turn the direction of what follows: a name must not reorder the rest of its line. */
    private static final Pattern TURNS_DIRECTION = Pattern.compile("[\\u061C\\u200E\\u200F\\u202A-\\u202E\\u2066-\\u2069]");
    private static final Pattern SPACES = Pattern.compile("[\\p{Z}\\s]+");
    private static final char KEPT_SPACE = '\u00A0';
    private static final Pattern NUMBER_AND_UNIT = Pattern.compile("(?<=\\d) (?=(?:°[CF]|mm|cm|m|in|ft|g|kg|oz|lb|W|%|days?)(?![\\p{L}\\d]))|(?<=±) (?=\\d)| (?=±)");

    private Columns() {
    }

    /** Columns a text takes up on a terminal, at least its number of letters. */
    static int width(String text) {
        return text.codePoints().map(Columns::width).sum();
    }

    private static int width(int letter) {
        boolean wide = letter >= FIRST_FULL_WIDTH && letter <= LAST_FULL_WIDTH_SIGN || letter >= FULL_WIDTH_FORMS && letter <= LAST_FULL_WIDTH_FORM
                || letter >= FIRST_PICTURE || letter >= FIRST_FULL_WIDTH && WIDE.contains(UnicodeScript.of(letter));
        return wide ? 2 : 1;
    }

    /** The lines of a text, none wider than {@code columns} (2 or more); one empty line for an empty text. */
    static List<String> wrap(String text, int columns) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : words(text)) {
            if (line.length() > 0 && width(line.toString()) + 1 + width(word) > columns) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.length() > 0 ? " " : "").append(word);
            cutTo(columns, line, lines);
        }
        lines.add(line.toString());
        return lines.stream().map(one -> one.replace(KEPT_SPACE, ' ')).toList();
    }

    private static String[] words(String text) {
        String plain = SPACES.matcher(TURNS_DIRECTION.matcher(text).replaceAll("")).replaceAll(" ").strip();
        return NUMBER_AND_UNIT.matcher(plain).replaceAll(String.valueOf(KEPT_SPACE)).split(" ");
    }

    private static void cutTo(int columns, StringBuilder line, List<String> lines) {
        while (width(line.toString()) > columns) {
            int end = cut(line, columns);
            lines.add(line.substring(0, end));
            line.delete(0, end);
        }
    }

    /** Where to cut: as late as fits, before a letter that starts anew; in the middle of marks only when there is nothing else. */
    private static int cut(CharSequence line, int columns) {
        int taken = 0;
        int end = 0;
        int beforeLetter = 0;
        while (taken + width(Character.codePointAt(line, end)) <= columns) {
            taken += width(Character.codePointAt(line, end));
            end += Character.charCount(Character.codePointAt(line, end));
            beforeLetter = isMark(Character.codePointAt(line, end)) ? beforeLetter : end;
        }
        return beforeLetter > 0 ? beforeLetter : end;
    }

    private static boolean isMark(int letter) {
        return switch (Character.getType(letter)) {
            case Character.NON_SPACING_MARK, Character.ENCLOSING_MARK, Character.COMBINING_SPACING_MARK, Character.FORMAT -> true;
            default -> false;
        };
    }
}
