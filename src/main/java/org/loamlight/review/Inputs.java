package org.loamlight.review;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import org.loamlight.setup.JsonFile;

/**
 * Finds the descriptions in files, folders, zips and JSON Lines and hands them on one by one, in the order of the paths given, in
 * folders of the names. Whatever cannot be read is handed on with the reason, and the rest is read.
 */
public final class Inputs {
    /** Deeper than this no club sorts its folders; a loop of links would end here as well. */
    private static final int DEEPEST = 40;

    private final Set<Path> left;
    private final InputStream standardInput;
    private final Taker taker;
    private int passedOver;

    /** Takes what comes in, one by one. */
    @FunctionalInterface
    public interface Taker {
        /** @throws IOException when results cannot be written */
        void take(Incoming incoming) throws IOException;
    }

    /** @param from what is left out, and what standard input is; its paths are read one by one with {@link #read} */
    public Inputs(InputPaths from, Taker taker) {
        this.left = from.left().stream().map(Inputs::whole).collect(Collectors.toSet());
        this.standardInput = from.standardInput();
        this.taker = taker;
    }

    private static Path whole(Path path) {
        return path.toAbsolutePath().normalize();
    }

    /**
     * Hands on every description of a path.
     *
     * @return how many files in its folders are of no kind that is read
     * @throws IOException when results cannot be written
     */
    public int read(Path path) throws IOException {
        passedOver = 0;
        if (path.equals(InputPaths.STANDARD_INPUT)) {
            standardInput();
        } else if (Files.isDirectory(path)) {
            folder(path, 0);
        } else {
            file(path, Kind.of(path, true));
        }
        return passedOver;
    }

    /** How a file is read. */
    private enum Kind {
        ONE, LINES, ZIP, NONE;

        /** @param isNamed whether the user named it: then it is read whatever it is called */
        static Kind of(Path path, boolean isNamed) {
            String name = path.getFileName() == null ? "" : path.getFileName().toString().toLowerCase(Locale.ROOT);
            if (name.endsWith(".jsonl") || name.endsWith(".ndjson")) {
                return LINES;
            }
            if (name.endsWith(".zip")) {
                return ZIP;
            }
            return isNamed || isDescription(name) ? ONE : NONE;
        }
    }

    /** Whether a file is called as descriptions are: .json, .xlsx or .xlsm; what spreadsheet programs keep beside an open file is none. */
    static boolean isDescription(String name) {
        String lower = name.toLowerCase(Locale.ROOT);
        return !lower.startsWith("~$") && (lower.endsWith(".json") || lower.endsWith(".xlsx") || lower.endsWith(".xlsm"));
    }

    private void folder(Path folder, int depth) throws IOException {
        if (depth > DEEPEST) {
            taker.take(Incoming.unreadable(folder.toString(), 0, "folders lie in one another more than " + DEEPEST + " deep; move what lies there further up"));
            return;
        }
        List<Path> found = new ArrayList<>();
        try (DirectoryStream<Path> entries = Files.newDirectoryStream(folder)) {
            entries.forEach(found::add);
        } catch (IOException | DirectoryIteratorException e) {
            taker.take(Incoming.unreadable(folder.toString(), 0, "the folder cannot be read; check its permissions"));
        }
        found.sort(Comparator.comparing(path -> path.getFileName().toString()));
        for (Path path : found) {
            entry(path, depth);
        }
    }

    /** What is hidden is nobody's description; links to folders are not followed, they may lead back. */
    private void entry(Path path, int depth) throws IOException {
        if (path.getFileName().toString().startsWith(".") || left.contains(whole(path))) {
            return;
        }
        if (Files.isDirectory(path, LinkOption.NOFOLLOW_LINKS)) {
            folder(path, depth + 1);
        } else if (Kind.of(path, false) == Kind.NONE || Files.isDirectory(path)) {
            passedOver++;
        } else {
            file(path, Kind.of(path, false));
        }
    }

    /** It is left open: whoever opened it closes it. */
    private void standardInput() throws IOException {
        String name = InputPaths.shown(InputPaths.STANDARD_INPUT);
        try {
            new Reading(name, taker).lines(standardInput);
        } catch (NotRead e) {
            taker.take(Incoming.unreadable(name, 0, e.getMessage()));
        }
    }

    private void file(Path path, Kind kind) throws IOException {
        if (Files.notExists(path)) {
            taker.take(Incoming.unreadable(path.toString(), 0, "there is no such file"));
            return;
        }
        Reading reading = new Reading(path.toString(), taker);
        try (InputStream file = open(path)) {
            switch (kind) {
                case LINES -> reading.lines(file);
                case ZIP -> new Zip(path, taker).read(file);
                default -> reading.one(file);
            }
        } catch (NotRead e) {
            taker.take(Incoming.unreadable(path.toString(), 0, e.getMessage()));
        }
    }

    private static InputStream open(Path path) throws NotRead {
        try {
            return Files.newInputStream(path);
        } catch (IOException e) {
            throw new NotRead("the file cannot be read; check its permissions");
        }
    }

    /** Thrown when an input ends before its end; what was read of it stays. */
    static final class NotRead extends Exception {
        private static final long serialVersionUID = 1;

        NotRead(String problem) {
            super(problem);
        }
    }

    /** Reads the stream of one file. */
    record Reading(String name, Taker taker) {
        private static final int UTF_16_FIRST = 0xFE;
        private static final int UTF_16_SECOND = 0xFF;

        /** A description; of one that is too large no more than shows it. */
        void one(InputStream in) throws IOException, NotRead {
            byte[] bytes;
            try {
                bytes = in.readNBytes(JsonFile.MOST_BYTES + 1);
            } catch (IOException e) {
                throw new NotRead("the file cannot be read to its end");
            }
            taker.take(Incoming.file(name, bytes));
        }

        /** One description in each line; empty lines are passed over. */
        void lines(InputStream in) throws IOException, NotRead {
            LinesIn lines = new LinesIn(in, JsonFile.MOST_BYTES);
            int number = 0;
            for (LinesIn.Line line = next(lines); line != null; line = next(lines)) {
                number++;
                if (number == 1 && isUtf16(line.bytes())) {
                    throw new NotRead("the file is UTF-16 or no text at all; save it as UTF-8 text");
                }
                if (!line.isBlank() || line.bytes().length > JsonFile.MOST_BYTES) {
                    taker.take(new Incoming(name, number, line.bytes(), ""));
                }
            }
        }

        private static LinesIn.Line next(LinesIn lines) throws NotRead {
            try {
                return lines.next();
            } catch (IOException e) {
                throw new NotRead("the file cannot be read to its end");
            }
        }

        private static boolean isUtf16(byte[] line) {
            if (line.length < 2) {
                return false;
            }
            int first = Byte.toUnsignedInt(line[0]);
            int second = Byte.toUnsignedInt(line[1]);
            return first == UTF_16_FIRST && second == UTF_16_SECOND || first == UTF_16_SECOND && second == UTF_16_FIRST || first == 0 || second == 0;
        }
    }
}
