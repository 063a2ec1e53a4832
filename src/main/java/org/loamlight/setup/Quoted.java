package org.loamlight.setup;

/** What was found in a file, made fit for a message: shortened, and without anything that would upset a terminal. */
final class Quoted {
    private static final int LONGEST = 60;
    private static final int NONCHARACTER = 0xFFFE;

    private Quoted() {
    }

    /** The text in double quotes. */
    static String of(String text) {
        return '"' + plain(text) + '"';
    }

    /** The text without quotes: at most sixty characters, whatever would disturb the line as a question mark. */
    static String plain(String text) {
        if (text.length() <= LONGEST && isAscii(text)) {
            return text;
        }
        StringBuilder shown = new StringBuilder();
        text.codePoints().limit(LONGEST).map(c -> isPrintable(c) && !turnsWriting(c) ? c : '?').forEach(shown::appendCodePoint);
        return text.codePointCount(0, text.length()) <= LONGEST ? shown.toString() : shown + "...";
    }

    /** Whether every character can be printed and at least one of them leaves ink. */
    static boolean isPrintable(String text) {
        return isAscii(text) && !text.isBlank() || text.codePoints().allMatch(Quoted::isPrintable)
                && text.codePoints().anyMatch(c -> !Character.isSpaceChar(c) && Character.getType(c) != Character.FORMAT);
    }

    /** Whether there is nothing but the printable characters of ASCII, of which nearly all texts are made. */
    private static boolean isAscii(String text) {
        for (int at = 0; at < text.length(); at++) {
            if (text.charAt(at) < ' ' || text.charAt(at) > '~') {
                return false;
            }
        }
        return true;
    }

    /** Controls, halves of surrogate pairs, line separators and noncharacters are not. */
    private static boolean isPrintable(int character) {
        return switch (Character.getType(character)) {
            case Character.CONTROL, Character.SURROGATE, Character.LINE_SEPARATOR, Character.PARAGRAPH_SEPARATOR -> false;
            default -> (character & NONCHARACTER) != NONCHARACTER;
        };
    }

    /** Invisible marks, most of which change the direction of writing; the two joiners some scripts need are none. */
    private static boolean turnsWriting(int character) {
        return Character.getType(character) == Character.FORMAT && character != 0x200C && character != 0x200D;
    }
}
