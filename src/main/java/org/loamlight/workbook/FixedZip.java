package org.loamlight.workbook;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.Collections;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
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
                add(found.getName(), in, out);
            }
        }
        return packed.toByteArray();
    }

    /** Packs a zip that is too large for the memory; {@code packed} is closed. */
    static void copy(Path zip, OutputStream packed) throws IOException {
        try (ZipFile in = new ZipFile(zip.toFile()); ZipOutputStream out = new ZipOutputStream(packed)) {
            for (ZipEntry found : Collections.list(in.entries())) {
                try (InputStream content = in.getInputStream(found)) {
                    add(found.getName(), content, out);
                }
            }
        }
    }

    private static void add(String name, InputStream content, ZipOutputStream out) throws IOException {
        ZipEntry entry = new ZipEntry(name);
        entry.setTimeLocal(NO_TIME);
        out.putNextEntry(entry);
        content.transferTo(out);
        out.closeEntry();
    }
}
