package org.loamlight.review;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;

/** Takes lines one by one from a stream, whatever is in them: none is read further than it may be long. */
final class LinesIn {
    private static final int BLOCK = 65_536;

    private final InputStream in;
    private final int most;
    private final byte[] block = new byte[BLOCK];
    private int at;
    private int filled;
    private long offset;

    /** @param most bytes of a line that are kept at most, and one more, so that whoever asks sees that it is too long */
    LinesIn(InputStream in, int most) {
        this.in = in;
        this.most = most;
    }

    /**
     * A line.
     *
     * @param start   where it begins in the stream
     * @param bytes   without the line feed; cut where it is too long
     * @param isWhole whether a line feed ended it, and not the stream
     */
    record Line(long start, byte[] bytes, boolean isWhole) {
        boolean isBlank() {
            for (byte one : bytes) {
                if (one != ' ' && one != '\t' && one != '\r') {
                    return false;
                }
            }
            return true;
        }
    }

    /** The next line; null after the last. What follows the last line feed is a line, if it is anything. */
    Line next() throws IOException {
        ByteArrayOutputStream line = new ByteArrayOutputStream();
        long start = offset;
        while (at < filled || fill()) {
            int end = at;
            while (end < filled && block[end] != '\n') {
                end++;
            }
            line.write(block, at, Math.min(end - at, most + 1 - line.size()));
            boolean isEnded = end < filled;
            offset += end - at + (isEnded ? 1 : 0);
            at = end + (isEnded ? 1 : 0);
            if (isEnded) {
                return new Line(start, line.toByteArray(), true);
            }
        }
        return offset == start ? null : new Line(start, line.toByteArray(), false);
    }

    private boolean fill() throws IOException {
        filled = Math.max(0, in.read(block));
        at = 0;
        return filled > 0;
    }
}
