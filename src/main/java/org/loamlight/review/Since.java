package org.loamlight.review;

import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;

/** What changed since an earlier review, whose lines of results are read again as they are needed. */
public final class Since implements Closeable {
    private final Review review;
    private final LineFile file;
    private final List<Earlier> earlier = new ArrayList<>();
    /** Which earlier setup each of today's is. */
    private final Map<Integer, Earlier> same = new LinkedHashMap<>();
    private final Set<Earlier> found = new HashSet<>();
    private final Map<Change, Integer> counts = new EnumMap<>(Change.class);
    private final Map<Integer, String> ofSetups = new HashMap<>();
    private int unreadable;

    private record Earlier(long start, Identity identity, Basis basis) {
    }

    private Since(Review review, LineFile file) {
        this.review = review;
        this.file = file;
    }

    /** Thrown when an earlier review cannot be compared with; says why and the way out. */
    public static final class NotComparable extends Exception {
        private static final long serialVersionUID = 1;

        NotComparable(String message) {
            super(message);
        }
    }

    /**
     * Compares a review that is finished.
     *
     * @param earlier the lines of results of an earlier one
     * @throws NotComparable when there is no line of results in it, or names were taken out of it
     */
    public static Since of(Path earlier, Review review) throws IOException, NotComparable {
        Since since = new Since(review, LineFile.open(earlier));
        try {
            since.index(earlier);
            since.match();
            since.count();
            return since;
        } catch (NotComparable e) {
            since.close();
            throw e;
        }
    }

    /** Whether a file can be compared with: asked before the work is done. */
    public static void requireComparable(Path earlier) throws IOException, NotComparable {
        try (InputStream in = Files.newInputStream(earlier)) {
            LinesIn.Line line = new LinesIn(in, Integer.MAX_VALUE - 1).next();
            Optional<Reviewed> first = line == null ? Optional.empty() : ReviewedReader.head(new String(line.bytes(), StandardCharsets.UTF_8));
            requireComparable(first, earlier);
        }
    }

    private static void requireComparable(Optional<Reviewed> first, Path earlier) throws NotComparable {
        if (first.isEmpty()) {
            throw new NotComparable(earlier + ": this is no result file of a review; it is written with loamlight review --jsonl FILE");
        }
        if (first.get().basis().isAnonymous()) {
            throw new NotComparable(earlier + ": names were taken out of this review, so no setup can be known again; compare with a result file that has them");
        }
    }

    private void index(Path path) throws IOException, NotComparable {
        requireComparable(path);
        try (InputStream in = Files.newInputStream(path)) {
            LinesIn lines = new LinesIn(in, Integer.MAX_VALUE - 1);
            for (LinesIn.Line line = lines.next(); line != null; line = lines.next()) {
                Optional<Reviewed> head = ReviewedReader.head(new String(line.bytes(), StandardCharsets.UTF_8));
                unreadable += head.isEmpty() && !line.isBlank() ? 1 : 0;
                long start = line.start();
                head.filter(one -> one.judged().isPresent()).ifPresent(one -> earlier.add(new Earlier(start, Identity.of(one, Optional.empty()), one.basis())));
            }
        }
    }

    private void match() {
        Map<Integer, Identity> today = new LinkedHashMap<>();
        review.totals().rows().stream().filter(Row::isJudged)
                .forEach(row -> today.put(row.number(), Identity.of(review.head(row), review.key(row.number()))));
        for (Function<Identity, Optional<String>> way : Identity.WAYS) {
            Map<String, Optional<Integer>> now = unique(today.keySet().stream().filter(number -> !same.containsKey(number)).toList(), number -> way.apply(today.get(number)));
            Map<String, Optional<Earlier>> then = unique(earlier.stream().filter(one -> !found.contains(one)).toList(), one -> way.apply(one.identity()));
            now.forEach((name, number) -> number.ifPresent(found -> then.getOrDefault(name, Optional.empty()).ifPresent(before -> put(found, before))));
        }
    }

    private void put(Integer number, Earlier before) {
        same.put(number, before);
        found.add(before);
    }

    /** What each name stands for; empty where it stands for several. */
    private static <T> Map<String, Optional<T>> unique(List<T> all, Function<T, Optional<String>> name) {
        Map<String, Optional<T>> named = new LinkedHashMap<>();
        all.forEach(one -> name.apply(one).ifPresent(key -> named.merge(key, Optional.of(one), (first, second) -> Optional.empty())));
        return named;
    }

    private void count() {
        forEach(changed -> {
            changed.counts().forEach((change, many) -> counts.merge(change, many, Integer::sum));
            changed.now().ifPresent(now -> ofSetups.put(now.number(), told(changed)));
        });
    }

    private static String told(Changed changed) {
        List<String> told = new ArrayList<>();
        changed.ofSetup().ifPresent(change -> told.add(change.inWords()));
        changed.counts().forEach((change, many) -> told.add(many + " " + change.inWords()));
        return String.join(", ", told);
    }

    /** Every setup of today, the worst first, then those that are gone in their earlier order. */
    public void forEach(Consumer<Changed> taker) {
        review.totals().worstFirst().stream().filter(Row::isJudged).map(this::changed).forEach(taker);
        List<Earlier> gone = earlier.stream().filter(one -> !found.contains(one)).toList();
        for (int i = 0; i < gone.size(); i++) {
            Reviewed before = read(gone.get(i));
            taker.accept(Changed.of(Optional.empty(), Optional.of(review.with().anonymous() ? NoNames.gone(before, i + 1) : before)));
        }
    }

    private Changed changed(Row row) {
        Reviewed now = review.whole(row);
        Optional<Reviewed> before = Optional.ofNullable(same.get(now.number())).map(this::read);
        return Changed.of(Optional.of(now), review.key(now.number()).isPresent() ? before.map(one -> NoNames.of(one, now, review.key(now.number()).get())) : before);
    }

    private Reviewed read(Earlier one) {
        return ReviewedReader.read(file.read(one.start())).orElseThrow(() -> new IllegalStateException("A line of the earlier review cannot be read again"));
    }

    /** How many points of setups that were there both times changed in each way; a way without any is left out. */
    public Map<Change, Integer> points() {
        return Collections.unmodifiableMap(counts);
    }

    /** What changed in one of today's setups: "2 put right, 3 still open". */
    public String of(Row row) {
        return ofSetups.getOrDefault(row.number(), "");
    }

    /** Setups that were there and are no more. */
    public int goneSetups() {
        return earlier.size() - found.size();
    }

    /** Setups that are there for the first time. */
    public int joinedSetups() {
        return review.totals().judged() - same.size();
    }

    /** Whether any setup was judged then with other knowledge or options than now, so that points can be new because they are asked now. */
    public boolean isOtherwiseJudged() {
        Basis now = review.with().basis();
        return earlier.stream().anyMatch(one -> !one.basis().sha256().equals(now.sha256()));
    }

    /** Lines of the earlier file that could not be read. */
    public int unreadable() {
        return unreadable;
    }

    @Override
    public void close() throws IOException {
        file.close();
    }
}
