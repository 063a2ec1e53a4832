package org.loamlight.review;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;

/**
 * Reads the descriptions in a zip, one after the other and within limits. Nothing is ever unpacked to the disk; entries whose path
 * leads out of the archive are told and not read.
 */
final class Zip {
    /** Descriptions are packed to about a tenth, many alike to a fiftieth; what swells more was made to. */
    private static final int MOST_SWELLING = 200;
    /** What may be unpacked of however small an archive. */
    private static final long ALWAYS_BYTES = 50_000_000;
    /** How the last record begins, and how long it is at most with a comment (ZIP application note, 4.3.16). */
    private static final String END = "PK\5\6";
    private static final int LONGEST_END = 22 + 65_535;

    private final Path path;
    private final String name;
    private final Inputs.Taker taker;
    private long left;

    Zip(Path path, Inputs.Taker taker) {
        this.path = path;
        this.name = path.toString();
        this.taker = taker;
        this.left = Math.max(ALWAYS_BYTES, path.toFile().length() * MOST_SWELLING);
    }

    /** @throws Inputs.NotRead when the archive is broken or unpacks to too much; what was read before stays */
    void read(InputStream file) throws IOException, Inputs.NotRead {
        // Names that are no UTF-8 and do not say so come from older programs: any of their bytes is a character here.
        ZipInputStream zip = new ZipInputStream(file, StandardCharsets.ISO_8859_1);
        int entries = 0;
        for (ZipEntry entry = next(zip); entry != null; entry = next(zip)) {
            entries++;
            entry(entry, zip);
        }
        if (entries == 0) {
            throw new Inputs.NotRead("there is nothing in this zip, or it is none");
        }
        if (!hasEnd()) {
            throw broken();
        }
    }

    /** Whether the record is there that ends every zip; one that was cut off between two entries reads like one that is whole. */
    private boolean hasEnd() {
        try (RandomAccessFile file = new RandomAccessFile(path.toFile(), "r")) {
            byte[] tail = new byte[(int) Math.min(file.length(), LONGEST_END)];
            file.seek(file.length() - tail.length);
            file.readFully(tail);
            return new String(tail, StandardCharsets.ISO_8859_1).contains(END);
        } catch (IOException e) {
            return false;
        }
    }

    private ZipEntry next(ZipInputStream zip) throws Inputs.NotRead {
        try {
            skip(zip);
            return zip.getNextEntry();
        } catch (IOException | IllegalArgumentException e) {
            throw broken();
        }
    }

    /** What is left of an entry has to be unpacked to find the next one, and counts. */
    private void skip(ZipInputStream zip) throws IOException, Inputs.NotRead {
        new Counted(zip).transferTo(OutputStream.nullOutputStream());
        requireRoom();
    }

    private Inputs.NotRead broken() {
        return new Inputs.NotRead("the zip is broken here, or locked with a password; what lies behind was not read. Pack it again");
    }

    private void requireRoom() throws Inputs.NotRead {
        if (left < 0) {
            throw new Inputs.NotRead("the zip unpacks to far more than descriptions do; what lies behind was not read. Pack the descriptions alone");
        }
    }

    private void entry(ZipEntry entry, ZipInputStream zip) throws IOException, Inputs.NotRead {
        String inside = entry.getName().replace('\\', '/');
        String shown = name + ": " + inside;
        String last = inside.substring(inside.lastIndexOf('/') + 1).toLowerCase(Locale.ROOT);
        if (entry.isDirectory() || last.startsWith(".") || inside.startsWith("__MACOSX/")) {
            return;
        }
        if (leadsOut(inside)) {
            taker.take(Incoming.unreadable(shown, 0, "its path leads out of the zip; it was not read"));
            return;
        }
        try {
            read(shown, last, new Counted(zip));
        } catch (Inputs.NotRead e) {
            // The rest of the archive may still be there: whether it is shows when the next entry is looked for.
            taker.take(Incoming.unreadable(shown, 0, e.getMessage()));
        }
        requireRoom();
    }

    private void read(String shown, String last, InputStream counted) throws IOException, Inputs.NotRead {
        Inputs.Reading reading = new Inputs.Reading(shown, taker);
        if (last.endsWith(".jsonl") || last.endsWith(".ndjson")) {
            reading.lines(counted);
        } else if (last.endsWith(".zip")) {
            taker.take(Incoming.unreadable(shown, 0, "it is a zip in a zip; it was not read. Unpack it first"));
        } else if (Inputs.isDescription(last)) {
            reading.one(counted);
        }
    }

    private static boolean leadsOut(String path) {
        return path.startsWith("/") || path.matches("[A-Za-z]:.*") || Arrays.asList(path.split("/")).contains("..");
    }

    /** Counts what is unpacked, and ends where that is too much. */
    private final class Counted extends FilterInputStream {
        Counted(InputStream in) {
            super(in);
        }

        @Override
        public int read() throws IOException {
            byte[] one = new byte[1];
            return read(one, 0, 1) < 1 ? -1 : Byte.toUnsignedInt(one[0]);
        }

        @Override
        public int read(byte[] into, int offset, int length) throws IOException {
            int read = left < 0 ? -1 : super.read(into, offset, length);
            left -= Math.max(0, read);
            return read;
        }
    }
}
