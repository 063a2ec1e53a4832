package org.loamlight.setup;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Locale;
import java.util.stream.IntStream;

/** The text of a file, which knows line and column of each of its characters. Columns count characters, not bytes. */
final class SourceText {
    private static final char BYTE_ORDER_MARK = '\uFEFF';

    private final char[] characters;
    private final CharSequence text;
    /** Made when the first place is asked for, which for a file without a problem is never. */
    private int[] lineStarts;
    /** The offset a column was told for last, and how many characters stand before it in its line. */
    private int counted;
    private int columns;

    /** @param length of the characters that belong to the text */
    private SourceText(char[] characters, int length) {
        this.characters = characters;
        this.text = CharBuffer.wrap(characters, 0, length);
    }

    private synchronized int[] lineStarts() {
        if (lineStarts == null) {
            lineStarts = startsOfLines();
        }
        return lineStarts;
    }

    private int[] startsOfLines() {
        int[] starts = new int[16];
        int lines = 1;
        for (int offset = 1; offset <= text.length(); offset++) {
            if (startsLine(offset)) {
                starts = lines == starts.length ? Arrays.copyOf(starts, 2 * lines) : starts;
                starts[lines++] = offset;
            }
        }
        return Arrays.copyOf(starts, lines);
    }

    /** A line ends with a line feed, a carriage return, or both. */
    private boolean startsLine(int offset) {
        char before = text.charAt(offset - 1);
        return before == '\n' || before == '\r' && (offset == text.length() || text.charAt(offset) != '\n');
    }

    /** Thrown for bytes that are no UTF-8 text; says where they stop being it. */
    static final class NotText extends Exception {
        private final JsonPlace at;

        NotText(JsonPlace at, String found) {
            super(found);
            this.at = at;
        }

        JsonPlace at() {
            return at;
        }
    }

    /** Decodes a file. A byte order mark, which some editors put before UTF-8, is passed over. */
    static SourceText of(byte[] bytes) throws NotText {
        if (isUtf16(bytes)) {
            throw new NotText(new JsonPlace(0, 0, ""), "the file is UTF-16, UTF-32 or no text at all");
        }
        CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder().onMalformedInput(CodingErrorAction.REPORT);
        ByteBuffer in = ByteBuffer.wrap(bytes);
        CharBuffer out = CharBuffer.allocate(bytes.length);
        boolean bad = decoder.decode(in, out, true).isError();
        SourceText decoded = withoutMark(out.array(), out.position());
        if (bad) {
            throw new NotText(decoded.place(decoded.length(), ""), "the byte 0x" + hex(in.get()) + " is no UTF-8 text here");
        }
        return decoded;
    }

    /** A byte order mark of UTF-16, or a zero byte among the first two, which UTF-8 text never has. */
    private static boolean isUtf16(byte[] bytes) {
        if (bytes.length < 2) {
            return false;
        }
        int first = Byte.toUnsignedInt(bytes[0]);
        int second = Byte.toUnsignedInt(bytes[1]);
        return first + second == 0xFE + 0xFF && Math.min(first, second) == 0xFE || first == 0 || second == 0;
    }

    private static SourceText withoutMark(char[] characters, int length) {
        return length > 0 && characters[0] == BYTE_ORDER_MARK ? new SourceText(Arrays.copyOfRange(characters, 1, length), length - 1)
                : new SourceText(characters, length);
    }

    private static String hex(byte value) {
        return Integer.toHexString(Byte.toUnsignedInt(value)).toUpperCase(Locale.ROOT);
    }

    JsonParser parser(JsonFactory factory) throws IOException {
        return factory.createParser(characters, 0, text.length());
    }

    int length() {
        return text.length();
    }

    /** The text from an offset to the next character that cannot belong to a word or number. */
    String wordAt(int offset) {
        int end = offset;
        while (end < text.length() && isOfWord(text.charAt(end))) {
            end++;
        }
        return text.subSequence(offset, Math.min(text.length(), Math.max(end, offset + 1))).toString();
    }

    /** Where the word or number begins that ends right before an offset; the offset itself when none does. */
    int startOfWord(int offset) {
        int start = offset;
        while (start > 0 && isOfWord(text.charAt(start - 1))) {
            start--;
        }
        return start;
    }

    private static boolean isOfWord(char character) {
        return Character.isLetterOrDigit(character) || "+-._".indexOf(character) >= 0;
    }

    /** The last character before an offset that is no white space; a zero character when there is none. */
    char lastBefore(int offset) {
        return IntStream.iterate(offset - 1, at -> at >= 0, at -> at - 1).map(text::charAt).filter(c -> !Character.isWhitespace(c))
                .mapToObj(c -> (char) c).findFirst().orElse('\0');
    }

    /** The first offset from here on that is no white space; the length when there is none. */
    int skipSpace(int offset) {
        int at = offset;
        while (at < text.length() && Character.isWhitespace(text.charAt(at))) {
            at++;
        }
        return at;
    }

    /**
     * Where the key stands whose value begins at an offset. Only white space and a colon lie between the two, and a quotation mark inside
     * a key is written with a backslash before it.
     */
    int startOfKey(int value) {
        int start = quoteBefore(quoteBefore(value));
        while (start > 0 && text.charAt(start - 1) == '\\') {
            start = quoteBefore(start);
        }
        return start;
    }

    private int quoteBefore(int offset) {
        int at = offset - 1;
        while (at > 0 && text.charAt(at) != '"') {
            at--;
        }
        return at;
    }

    /** Line and column, both from 1, of the character at an offset; an offset past the end is taken as the end. */
    JsonPlace place(long offset, String path) {
        int at = (int) Math.max(0, Math.min(offset, text.length()));
        int[] starts = lineStarts();
        int found = Arrays.binarySearch(starts, at);
        int line = found >= 0 ? found : -found - 2;
        return new JsonPlace(line + 1, column(starts[line], at), path);
    }

    /** Goes on from the last place if it can, so that a long line is not counted again for each of its problems. */
    private synchronized int column(int lineStart, int at) {
        boolean goesOn = lineStart <= counted && counted <= at;
        columns = (goesOn ? columns : 0) + Character.codePointCount(text, goesOn ? counted : lineStart, at);
        counted = at;
        return columns + 1;
    }
}
