package org.loamlight.review;

import org.loamlight.setup.JsonFile;

/**
 * One description as it came in, not read yet.
 *
 * @param file    where it lies, as a reader would look it up: "club/tansy.json", "club.zip: tansy.json"
 * @param line    its line in a file of JSON Lines, from 1; 0 for a file of its own
 * @param bytes   its content; of one that is too large to be read just more than is read
 * @param problem what keeps it from being read; empty when nothing does
 */
public record Incoming(String file, int line, byte[] bytes, String problem) {

    /** A file of its own. */
    static Incoming file(String file, byte[] bytes) {
        return new Incoming(file, 0, bytes, "");
    }

    /** Something that cannot be read, and why. */
    static Incoming unreadable(String file, int line, String problem) {
        return new Incoming(file, line, new byte[0], problem);
    }

    /** With the line where it has one: "all.jsonl, line 17". */
    public String name() {
        return name(file, line);
    }

    /** @param line 0 for a file of its own */
    static String name(String file, int line) {
        return line == 0 ? file : file + ", line " + line;
    }

    /** SHA-256 of its content, lower-case hexadecimal. */
    String sha256() {
        return JsonFile.sha256(bytes);
    }
}
