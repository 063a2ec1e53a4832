package org.loamlight.workbook;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.LocalDateTime;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;

/** Packs a zip file again without the time at which it was made. */
final class FixedZip {
    /** At the first second of 1980, the beginning of zip time, Java adds a second time stamp that depends on the zone. */
    private static final LocalDateTime NO_TIME = LocalDateTime.of(1980, 2, 1, 0, 0);

    private FixedZip() {
    }

    static byte[] of(byte[] zip) throws IOException {
        ByteArrayOutputStream packed = new ByteArrayOutputStream(zip.length);
        try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(zip)); ZipOutputStream out = new ZipOutputStream(packed)) {
            for (ZipEntry found = in.getNextEntry(); found != null; found = in.getNextEntry()) {
                ZipEntry entry = new ZipEntry(found.getName());
                entry.setTimeLocal(NO_TIME);
                out.putNextEntry(entry);
                in.transferTo(out);
                out.closeEntry();
            }
        }
        return packed.toByteArray();
    }
}
