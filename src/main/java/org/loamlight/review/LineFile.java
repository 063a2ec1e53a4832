package org.loamlight.review;

import java.io.BufferedOutputStream;
import java.io.ByteArrayOutputStream;
import java.io.Closeable;
import java.io.IOException;
import java.io.OutputStream;
import java.io.RandomAccessFile;
import java.io.UncheckedIOException;
import java.nio.channels.Channels;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

/** A file of lines that is written from beginning to end, and any line of which can be read again by where it begins. */
public final class LineFile implements Closeable {
    private static final int BLOCK = 8192;

    private final RandomAccessFile file;
    private final OutputStream out;
    private long end;

    private LineFile(RandomAccessFile file, OutputStream out) {
        this.file = file;
        this.out = out;
    }

    private static LineFile of(RandomAccessFile file) {
        return new LineFile(file, new BufferedOutputStream(Channels.newOutputStream(file.getChannel()), BLOCK));
    }

    /** For lines nobody will read again: they are counted and not kept, however many come. */
    public static LineFile unkept() {
        return new LineFile(null, OutputStream.nullOutputStream());
    }

    /** A new file; one of that name is written over. */
    public static LineFile create(Path path) throws IOException {
        RandomAccessFile file = new RandomAccessFile(path.toFile(), "rw");
        file.setLength(0);
        return of(file);
    }

    /** A file that is only read. */
    static LineFile open(Path path) throws IOException {
        return of(new RandomAccessFile(path.toFile(), "r"));
    }

    /**
     * Adds a line, which reaches the disk at once: a run that is killed loses none of those before.
     *
     * @return where it begins
     */
    public long append(String line) throws IOException {
        byte[] bytes = (line + "\n").getBytes(StandardCharsets.UTF_8);
        long start = end;
        out.write(bytes);
        out.flush();
        end += bytes.length;
        return start;
    }

    /**
     * The line that begins there, without its line feed. Any thread may ask, while nothing is written.
     *
     * @throws IllegalStateException when lines are not kept
     */
    public synchronized String read(long start) {
        if (file == null) {
            throw new IllegalStateException("Lines that were not kept cannot be read again");
        }
        try {
            file.seek(start);
            ByteArrayOutputStream line = new ByteArrayOutputStream();
            byte[] block = new byte[BLOCK];
            for (int read = file.read(block); read > 0; read = file.read(block)) {
                int length = lengthOfLine(block, read);
                line.write(block, 0, length);
                if (length < read) {
                    break;
                }
            }
            return line.toString(StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException("A line that was written cannot be read again", e);
        }
    }

    private static int lengthOfLine(byte[] block, int read) {
        for (int i = 0; i < read; i++) {
            if (block[i] == '\n') {
                return i;
            }
        }
        return read;
    }

    @Override
    public void close() throws IOException {
        if (file != null) {
            file.close();
        }
    }
}
