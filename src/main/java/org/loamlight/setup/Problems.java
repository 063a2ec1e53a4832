package org.loamlight.setup;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Collects the problems of one file, so that all can be told at once. */
public final class Problems {
    /** More than this many are not read by anybody; the rest is counted. */
    private static final int MOST_TOLD = 50;

    private final String file;
    private final List<Problem> found = new ArrayList<>();

    public Problems(String file) {
        this.file = file;
    }

    public void add(JsonValue at, String what, String allowed) {
        add(at.at(), what, allowed);
    }

    void add(JsonPlace at, String what, String allowed) {
        found.add(new Problem(file, at.line(), at.column(), at.path(), what, allowed));
    }

    /** Whether nothing was wrong so far. */
    public boolean isEmpty() {
        return found.isEmpty();
    }

    /** Ends the reading when anything was wrong. */
    public void throwIfAny() throws ProblemsFound {
        if (!found.isEmpty()) {
            throw found();
        }
    }

    /** Everything that was wrong so far, to be thrown. */
    ProblemsFound found() {
        return new ProblemsFound(told());
    }

    private List<Problem> told() {
        List<Problem> sorted = new ArrayList<>(found);
        sorted.sort(Comparator.comparingInt(Problem::line).thenComparingInt(Problem::column));
        if (sorted.size() <= MOST_TOLD) {
            return sorted;
        }
        List<Problem> first = new ArrayList<>(sorted.subList(0, MOST_TOLD));
        int further = sorted.size() - MOST_TOLD;
        first.add(new Problem(file, 0, 0, "", further + (further == 1 ? " further problem" : " further problems"), "put these right first"));
        return first;
    }
}
