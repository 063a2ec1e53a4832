package org.loamlight.workbook.cells;

import java.io.IOException;
import java.util.HashMap;
import java.util.Map;

/** The parts of an Office Open XML package (ECMA-376-2), unpacked up to a limit: what swells beyond it is never unpacked to its end. */
final class Parts {
    /** A form has about thirty parts. */
    static final int MOST_PARTS = 300;
    private static final int MEGABYTE = 1_000_000;

    private final Map<String, byte[]> parts = new HashMap<>();
    private final int megabytes;
    private int left;

    private Parts(int megabytes) {
        this.megabytes = megabytes;
        this.left = megabytes * MEGABYTE;
    }

    /** @param megabytes what all parts together may unpack to */
    static Parts of(byte[] file, int megabytes) throws NoWorkbook {
        Parts parts = new Parts(megabytes);
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
            throw new NoWorkbook("the workbook unpacks to more than " + megabytes + " megabytes", NoWorkbook.COPY);
        }
        if (parts.put(name, content) != null) {
            throw new NoWorkbook("the workbook is broken: it holds " + shown(name) + " twice", "save it again as .xlsx");
        }
        if (parts.size() > MOST_PARTS) {
            throw new NoWorkbook("the workbook has more than " + MOST_PARTS + " parts", NoWorkbook.COPY);
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
