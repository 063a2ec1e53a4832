package org.loamlight.workbook.cells;

import java.io.IOException;
import java.util.HashMap;
import java.util.Map;

/** The parts of an Office Open XML package (ECMA-376-2), unpacked up to a limit: what swells beyond it is never unpacked to its end. */
final class Parts {
    /** A form has about thirty parts. */
    static final int MOST_PARTS = 300;
    /** A form with a hundred parts of each kind unpacks to about six megabytes. */
    static final int MOST_UNPACKED = 30_000_000;

    private final Map<String, byte[]> parts = new HashMap<>();
    private int left = MOST_UNPACKED;

    private Parts() {
    }

    static Parts of(byte[] file) throws NoWorkbook {
        Parts parts = new Parts();
        try {
            Archive archive = Archive.of(file);
            for (Archive.Entry entry : archive.entries()) {
                parts.take(entry.name(), archive.unpacked(entry, parts.left + 1));
            }
        } catch (IOException e) {
            throw new NoWorkbook("the workbook is broken: it cannot be unpacked", "take another copy of it, or save it again as .xlsx without a password");
        }
        return parts;
    }

    private void take(String name, byte[] content) throws NoWorkbook {
        left -= content.length;
        if (left < 0) {
            throw new NoWorkbook("the workbook unpacks to more than " + MOST_UNPACKED / 1_000_000 + " megabytes",
                    "a form is far smaller; copy the answers into a new form");
        }
        if (parts.put(name, content) != null) {
            throw new NoWorkbook("the workbook is broken: it holds " + shown(name) + " twice", "save it again as .xlsx");
        }
        if (parts.size() > MOST_PARTS) {
            throw new NoWorkbook("the workbook has more than " + MOST_PARTS + " parts", "a form has eleven sheets; copy the answers into a new form");
        }
    }

    /** Gives the room of a part back that was read and will not be asked for again: asked for twice, it is missing. */
    void forget(String name) {
        parts.remove(name);
    }

    /** The part of that name. */
    byte[] get(String name) throws NoWorkbook {
        byte[] part = parts.get(name);
        if (part == null) {
            throw NoWorkbook.broken(shown(name));
        }
        return part;
    }

    boolean has(String name) {
        return parts.containsKey(name);
    }

    /** A name made fit for a message. */
    static String shown(String name) {
        String plain = name.replaceAll("[^\\p{Alnum}_./ -]", "?");
        return plain.length() <= 60 ? plain : plain.substring(0, 60) + "...";
    }
}
