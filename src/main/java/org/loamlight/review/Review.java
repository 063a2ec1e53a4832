package org.loamlight.review;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

/** A review while it runs, and what it came to. Results go to a file line by line; only what is counted is kept in memory. */
public final class Review {
    private final Judging with;
    private final EarlierLines earlier;
    private final LineFile lines;
    private final boolean keepsKeys;
    private final Totals totals = new Totals();
    private final List<String> notes = new ArrayList<>();
    /** By the number of the setup; empty where names stand in the results. */
    private final Map<Integer, NameKey> keys = new HashMap<>();

    /** Takes what a review writes while it runs. */
    public interface Listener {
        /** @param line a line of results, without line feed */
        void result(String line) throws IOException;

        /** @param line a line of the key to an anonymous review, without line feed */
        void key(String line) throws IOException;
    }

    /**
     * @param lines     where the results go, one line each; kept open by whoever made it
     * @param keepsKeys whether results without names shall be compared with some that have them
     */
    public Review(Judging with, EarlierLines earlier, LineFile lines, boolean keepsKeys) {
        this.with = with;
        this.earlier = earlier;
        this.lines = lines;
        this.keepsKeys = keepsKeys;
    }

    /**
     * Judges everything that lies there. The results are the same, and in the same order, whatever the number of workers.
     *
     * @param listener told of each line when it was written
     * @throws IOException when results cannot be written
     */
    public void run(InputPaths from, int workers, Listener listener) throws IOException {
        try (Workers threads = new Workers(workers, new Judge(with, earlier), outcome -> take(outcome, listener))) {
            for (Path path : from.paths()) {
                int before = totals.rows().size();
                int passedOver = new Inputs(from, threads::judge).read(path);
                threads.finish();
                note(path, totals.rows().size() - before, passedOver, notes::add);
            }
        }
    }

    private void take(Outcome outcome, Listener listener) throws IOException {
        String line = ReviewedJson.line(outcome.reviewed());
        totals.add(outcome.reviewed(), lines.append(line));
        listener.result(line);
        if (outcome.key().isPresent()) {
            if (keepsKeys) {
                keys.put(outcome.reviewed().number(), outcome.key().get());
            }
            listener.key(outcome.key().get().line());
        }
    }

    private void note(Path path, int found, int passedOver, Consumer<String> to) {
        String shown = with.anonymous() ? "A folder" : InputPaths.shown(path);
        if (found == 0 && path.equals(InputPaths.STANDARD_INPUT)) {
            to.accept("standard input: no description came in; send JSON Lines, one setup in each line.");
        } else if (found == 0) {
            to.accept(shown + ": no description lies there (.json, .jsonl, .xlsx or .zip).");
        }
        if (passedOver > 0) {
            to.accept(shown + ": " + passedOver + (passedOver == 1 ? " file" : " files") + " of another kind passed over.");
        }
    }

    /** What was noticed about the paths: one without descriptions, files of other kinds. */
    public List<String> notes() {
        return List.copyOf(notes);
    }

    /** The day it is dated by: the latest day of an audit, so that the same setups give the same review on any day; else today. */
    public LocalDate on() {
        return totals.rows().stream().flatMap(row -> row.verdict().stream()).map(Row.Verdict::on).max(Comparator.naturalOrder()).orElse(with.today());
    }

    public Totals totals() {
        return totals;
    }

    public Judging with() {
        return with;
    }

    /** Groups of setups of the same title and the same animals, each in the order in which they came in; none where names are taken out. */
    public List<List<Row>> namesakes() {
        return with.anonymous() ? List.of() : totals.namesakes();
    }

    /** Whose setup a result without names is; empty where they stand in it. */
    Optional<NameKey> key(int number) {
        return Optional.ofNullable(keys.get(number));
    }

    /** A result with all its points. */
    public Reviewed whole(Row row) {
        return again(ReviewedReader.read(lines.read(row.start())));
    }

    /** A result without its points. */
    Reviewed head(Row row) {
        return again(ReviewedReader.head(lines.read(row.start())));
    }

    private static Reviewed again(Optional<Reviewed> read) {
        return read.orElseThrow(() -> new IllegalStateException("A line of results cannot be read again"));
    }
}
