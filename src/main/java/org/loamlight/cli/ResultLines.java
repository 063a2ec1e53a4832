package org.loamlight.cli;

import java.io.Closeable;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import org.loamlight.review.EarlierLines;
import org.loamlight.review.LineFile;

/**
 * Where the lines of results of a review are kept while it runs: beside their file, as FILE.part, so that a run that was killed can be
 * taken up again; else in a temporary file. What an earlier run left is kept as FILE.earlier until this one is done.
 */
final class ResultLines implements Closeable {
    private final Path target;
    private final Path part;
    private final LineFile lines;
    private final EarlierLines earlier;

    private ResultLines(Path target, Path part, LineFile lines, EarlierLines earlier) {
        this.target = target;
        this.part = part;
        this.lines = lines;
        this.earlier = earlier;
    }

    /** @param resumes whether results that are there already are taken over */
    static ResultLines in(Path target, boolean resumes) throws IOException {
        Path part = sibling(target, ".part");
        EarlierLines earlier = resumes ? EarlierLines.of(left(target, part)) : EarlierLines.none();
        return new ResultLines(target, part, LineFile.create(part), earlier);
    }

    /** Results nobody reads again. */
    static ResultLines unkept() {
        return new ResultLines(null, null, LineFile.unkept(), EarlierLines.none());
    }

    /** Results nobody asked to keep, which are read again for a workbook or to compare them. */
    static ResultLines temporary() throws IOException {
        Path part = Files.createTempFile("loamlight-review-", ".jsonl");
        return new ResultLines(null, part, LineFile.create(part), EarlierLines.none());
    }

    private static List<Path> left(Path target, Path part) throws IOException {
        Path kept = sibling(target, ".earlier");
        if (Files.exists(part) && Files.exists(kept)) {
            // Both were left: a run that took up another was killed as well. The half line at the end is ended, so that it stays one.
            try (OutputStream out = Files.newOutputStream(kept, StandardOpenOption.APPEND)) {
                out.write('\n');
                Files.copy(part, out);
            }
            Files.delete(part);
        } else if (Files.exists(part)) {
            Files.move(part, kept, StandardCopyOption.ATOMIC_MOVE);
        }
        List<Path> left = new ArrayList<>();
        for (Path path : List.of(target, kept)) {
            if (Files.exists(path)) {
                left.add(path);
            }
        }
        return left;
    }

    static Path sibling(Path target, String ending) {
        return target.resolveSibling(target.getFileName() + ending);
    }

    LineFile lines() {
        return lines;
    }

    EarlierLines earlier() {
        return earlier;
    }

    /** Puts the results in their place. */
    void deliver() throws Complaint, IOException {
        lines.close();
        earlier.close();
        if (target != null) {
            OutputFiles.move(part, target);
            Files.deleteIfExists(sibling(target, ".earlier"));
        }
    }

    @Override
    public void close() throws IOException {
        lines.close();
        earlier.close();
        if (target == null && part != null) {
            Files.deleteIfExists(part);
        }
    }
}
