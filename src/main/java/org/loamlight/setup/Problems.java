package org.loamlight.setup;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Collects the problems of one file, so that all can be told at once. */
public final class Problems {
    /** More than this many are not read by anybody; the rest is counted. */
    private static final int MOST_TOLD = 50;

    private final String file;
    private final List<Problem> found = new ArrayList<>();
    private final Set<String> sheets = new LinkedHashSet<>();

    public Problems(String file) {
        this.file = file;
    }

    public void add(JsonValue at, String what, String allowed) {
        add(at.at(), what, allowed);
    }

    public void add(JsonPlace at, String what, String allowed) {
        String cell = at.sheet().isEmpty() ? "" : at.cell();
        found.add(new Problem(file, at.line(), at.column(), at.path(), what, allowed, cell));
        sheets.add(sheet(cell));
    }

    /** Sheets come in the order in which something was wrong on them first. */
    private static String sheet(String cell) {
        return cell.substring(0, cell.lastIndexOf('!') + 1);
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
    public ProblemsFound found() {
        return new ProblemsFound(told());
    }

    private List<Problem> told() {
        List<Problem> sorted = new ArrayList<>(found);
        List<String> order = List.copyOf(sheets);
        sorted.sort(Comparator.comparingInt((Problem problem) -> order.indexOf(sheet(problem.cell()))).thenComparingInt(Problem::line)
                .thenComparingInt(Problem::column));
        if (sorted.size() <= MOST_TOLD) {
            return sorted;
        }
        List<Problem> first = new ArrayList<>(sorted.subList(0, MOST_TOLD));
        int further = sorted.size() - MOST_TOLD;
        first.add(new Problem(file, 0, 0, "", further + (further == 1 ? " further problem" : " further problems"), "put these right first"));
        return first;
    }
}
