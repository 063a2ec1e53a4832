package org.loamlight.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import org.loamlight.ranking.Conclusion;

/**
 * What of a result is kept in memory: one setup in a list of all.
 *
 * @param start     where its line of results begins
 * @param reviewed  without its points; problems shortened
 * @param tally     how many of its points are open, by grade
 */
public record Row(long start, Reviewed reviewed, Tally tally) {
    /** A file that cannot be read comes right after dangers: nothing at all is known of it. */
    private static final int UNREAD = 1;

    /** The worst first: conclusion, then dangers, harms, what is not known, shortfalls; else in the order in which they came. */
    public static final Comparator<Row> WORST_FIRST = Comparator.comparingInt(Row::rank)
            .thenComparing(row -> row.tally, Tally.WORST_FIRST).thenComparingInt(row -> row.reviewed.number());

    private static final int LONGEST_PROBLEM = 400;
    private static final int MOST_PROBLEMS = 5;

    /** The same without its points, and not with every problem. */
    static Reviewed brief(Reviewed whole) {
        List<String> problems = whole.problems().stream().limit(MOST_PROBLEMS).map(problem -> problem.length() <= LONGEST_PROBLEM ? problem
                : problem.substring(0, problem.offsetByCodePoints(0, problem.codePointCount(0, LONGEST_PROBLEM))) + " ...").collect(Collectors.toCollection(ArrayList::new));
        if (whole.problems().size() > MOST_PROBLEMS) {
            problems.add("(" + (whole.problems().size() - MOST_PROBLEMS) + " further problems)");
        }
        return new Reviewed(whole.number(), whole.file(), whole.line(), whole.sha256(), whole.basis(), problems, whole.isDefect(), whole.judged().map(Judged::brief));
    }

    private int rank() {
        return reviewed.judged().map(judged -> judged.conclusion() == Conclusion.NOT_READY ? 0 : UNREAD + judged.conclusion().ordinal()).orElse(UNREAD);
    }

    /** Whether it was judged. */
    public boolean isJudged() {
        return reviewed.judged().isPresent();
    }

    /** Names of its animals: "Tansy, Marl"; empty for a file that cannot be read. */
    public String animals() {
        return reviewed.judged().map(judged -> judged.animals().stream().map(Kept::name).collect(Collectors.joining(", "))).orElse("");
    }

    /** What keepers call its species, each once; empty for a file that cannot be read. */
    public List<String> species() {
        return reviewed.judged().map(judged -> judged.animals().stream().map(Kept::english).distinct().toList()).orElse(List.of());
    }
}
