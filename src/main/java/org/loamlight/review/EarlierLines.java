package org.loamlight.review;

import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Results an earlier run left, to be taken over where the content and what it is judged with are the same. Only where each stands is
 * kept in memory. A line cut in half, as a killed run leaves it, is none.
 */
public final class EarlierLines implements Closeable {
    private final List<LineFile> files = new ArrayList<>();
    private final Map<String, Place> places = new HashMap<>();

    private record Place(LineFile file, long start) {
    }

    private EarlierLines() {
    }

    /** No earlier results. */
    public static EarlierLines none() {
        return new EarlierLines();
    }

    /** @param left files of results that are there */
    public static EarlierLines of(List<Path> left) throws IOException {
        EarlierLines earlier = new EarlierLines();
        for (Path path : left) {
            LineFile file = LineFile.open(path);
            earlier.files.add(file);
            try (InputStream in = Files.newInputStream(path)) {
                earlier.index(new LinesIn(in, Integer.MAX_VALUE - 1), file);
            }
        }
        return earlier;
    }

    private void index(LinesIn lines, LineFile file) throws IOException {
        for (LinesIn.Line line = lines.next(); line != null; line = lines.next()) {
            if (line.isWhole()) {
                long start = line.start();
                ReviewedReader.head(new String(line.bytes(), StandardCharsets.UTF_8)).filter(found -> found.judged().isPresent())
                        .ifPresent(found -> places.put(key(found.sha256(), found.basis(), found.number()), new Place(file, start)));
            }
        }
    }

    private static String key(String sha256, Basis basis, int number) {
        return String.join("/", sha256, basis.sha256(), basis.options(), basis.isAnonymous() ? String.valueOf(number) : "");
    }

    /** The result of the same content, judged with the same on the same day. */
    Optional<Reviewed> find(String sha256, Judging with, int number) {
        return Optional.ofNullable(places.get(key(sha256, with.basis(), number))).flatMap(place -> ReviewedReader.read(place.file().read(place.start())))
                .filter(found -> found.judged().filter(judged -> !judged.dayTaken() || judged.on().equals(with.today())).isPresent());
    }

    @Override
    public void close() throws IOException {
        for (LineFile file : files) {
            file.close();
        }
    }
}
