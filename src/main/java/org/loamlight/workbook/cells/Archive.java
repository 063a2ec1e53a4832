package org.loamlight.workbook.cells;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.CRC32;
import java.util.zip.Inflater;
import java.util.zip.InflaterInputStream;
import java.util.zip.ZipException;

/**
 * A zip archive in memory, read by the directory at its end as spreadsheet programs do (PKWARE APPNOTE 6.3.10, 4.3.7, 4.3.12, 4.3.16, 4.5.3). Streams that
 * follow an archive from its beginning stumble over sizes of eight bytes behind the data, which some programs write even of small files.
 */
final class Archive {
    private static final int END = 0x06054b50;
    private static final int LENGTH_OF_END = 22;
    private static final int ENTRY = 0x02014b50;
    private static final int LENGTH_OF_ENTRY = 46;
    private static final int LOCAL = 0x04034b50;
    private static final int LENGTH_OF_LOCAL = 30;
    private static final int EIGHT_BYTES = 0xFFFFFFFF;
    private static final int EXTRA_OF_EIGHT_BYTES = 1;
    private static final int STORED = 0;
    private static final int DEFLATED = 8;

    private final ByteBuffer file;
    private final List<Entry> entries = new ArrayList<>();

    /** @param packed length of the data as packed; @param at where its local header begins */
    record Entry(String name, int method, int crc, long packed, long at) {
    }

    private Archive(byte[] file) {
        this.file = ByteBuffer.wrap(file).order(ByteOrder.LITTLE_ENDIAN);
    }

    /** @throws IOException when the file has no directory that can be followed */
    static Archive of(byte[] file) throws IOException {
        Archive archive = new Archive(file);
        try {
            archive.directory();
        } catch (IndexOutOfBoundsException e) {
            throw new ZipException("The directory leads out of the file");
        }
        return archive;
    }

    List<Entry> entries() {
        return entries;
    }

    private void directory() throws IOException {
        int end = file.limit() - LENGTH_OF_END;
        while (file.getInt(end) != END) {
            end--;
        }
        int at = file.getInt(end + 16);
        for (int left = unsigned(end + 10); left > 0; left--) {
            require(file.getInt(at) == ENTRY);
            int name = unsigned(at + 28);
            int extra = unsigned(at + 30);
            entries.add(entry(at, name, extra));
            at += LENGTH_OF_ENTRY + name + extra + unsigned(at + 32);
        }
    }

    private Entry entry(int at, int name, int extra) {
        String named = new String(file.array(), at + LENGTH_OF_ENTRY, name, StandardCharsets.UTF_8);
        long[] sizes = {file.getInt(at + 24), file.getInt(at + 20), file.getInt(at + 42)};
        int field = at + LENGTH_OF_ENTRY + name;
        int end = field + extra;
        while (field + 4 <= end && unsigned(field) != EXTRA_OF_EIGHT_BYTES) {
            field += 4 + unsigned(field + 2);
        }
        for (int i = 0, next = field + 4; i < sizes.length; i++) {
            if (sizes[i] == EIGHT_BYTES) {
                sizes[i] = file.getLong(next);
                next += Long.BYTES;
            }
        }
        return new Entry(named, unsigned(at + 10), file.getInt(at + 16), sizes[1], sizes[2]);
    }

    private int unsigned(int at) {
        return Short.toUnsignedInt(file.getShort(at));
    }

    private static void require(boolean holds) throws ZipException {
        if (!holds) {
            throw new ZipException("The archive is damaged");
        }
    }

    /**
     * The data of an entry, unpacked to so many bytes at most.
     *
     * @throws IOException when it cannot be unpacked, or its check sum is another
     */
    byte[] unpacked(Entry entry, int most) throws IOException {
        int local = (int) entry.at;
        require(local == entry.at && local >= 0 && local <= file.limit() - LENGTH_OF_LOCAL && file.getInt(local) == LOCAL);
        int begin = local + LENGTH_OF_LOCAL + unsigned(local + 26) + unsigned(local + 28);
        require(entry.packed >= 0 && entry.packed <= file.limit() - begin && (entry.method == STORED || entry.method == DEFLATED));
        byte[] content = content(new ByteArrayInputStream(file.array(), begin, (int) entry.packed), entry.method, most);
        CRC32 crc = new CRC32();
        crc.update(content);
        require(content.length == most || (int) crc.getValue() == entry.crc);
        return content;
    }

    private static byte[] content(InputStream packed, int method, int most) throws IOException {
        if (method == STORED) {
            return packed.readNBytes(most);
        }
        Inflater inflater = new Inflater(true);
        try {
            return new InflaterInputStream(packed, inflater).readNBytes(most);
        } finally {
            inflater.end();
        }
    }
}
