package org.loamlight.review;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.loamlight.ranking.Conclusion;

/**
 * What of a result is kept in memory: one setup in a list of all. A million of them have to find room, so that they are flat and share what
 * many of them say alike; the rest is read again from the line.
 *
 * @param start    where its line of results begins
 * @param number   its place in the review, from 1
 * @param file     where it lies
 * @param line     its line in a file of JSON Lines; 0 for a file of its own
 * @param title    as the setup says; may be empty
 * @param animals  names of its animals: "Tansy, Marl"; empty for a file that cannot be read
 * @param species  what keepers call its species, each once; empty for a file that cannot be read
 * @param verdict  what was concluded; empty for a file that cannot be read
 * @param problems what keeps it from being judged, shortened; empty when it was judged
 * @param isDefect whether the program failed, and not the file
 * @param tally    how many of its points are open, by grade
 */
public record Row(long start, int number, String file, int line, String title, String animals, List<String> species, Optional<Verdict> verdict, List<String> problems,
        boolean isDefect, Tally tally) {
    /** A file that cannot be read comes right after dangers: nothing at all is known of it. */
    private static final int UNREAD = 1;

    /** The worst first: conclusion, then dangers, harms, what is not known, shortfalls; else in the order in which they came. */
    public static final Comparator<Row> WORST_FIRST = Comparator.comparingInt(Row::rank)
            .thenComparing(row -> row.tally, Tally.WORST_FIRST).thenComparingInt(Row::number);

    private static final int LONGEST_PROBLEM = 400;
    private static final int MOST_PROBLEMS = 5;

    /**
     * What was concluded of a setup.
     *
     * @param inWords as it is printed
     * @param on      day of the audit
     */
    public record Verdict(Conclusion conclusion, String inWords, LocalDate on) {
    }

    static Row of(long start, Reviewed whole) {
        List<Kept> animals = whole.judged().map(Judged::animals).orElse(List.of());
        return new Row(start, whole.number(), whole.file(), whole.line(), whole.judged().map(Judged::title).orElse(""),
                animals.stream().map(Kept::name).collect(Collectors.joining(", ")), animals.stream().map(Kept::english).distinct().toList(),
                whole.judged().map(judged -> new Verdict(judged.conclusion(), judged.inWords(), judged.on())), shortened(whole.problems()), whole.isDefect(),
                Tally.of(whole.judged().map(Judged::points).orElse(List.of())));
    }

    private static List<String> shortened(List<String> all) {
        List<String> problems = all.stream().limit(MOST_PROBLEMS).map(problem -> problem.length() <= LONGEST_PROBLEM ? problem
                : problem.substring(0, problem.offsetByCodePoints(0, problem.codePointCount(0, LONGEST_PROBLEM))) + " ...").collect(Collectors.toCollection(ArrayList::new));
        if (all.size() > MOST_PROBLEMS) {
            problems.add("(" + (all.size() - MOST_PROBLEMS) + " further problems)");
        }
        return List.copyOf(problems);
    }

    /** The same with what many rows say alike in the place of its own. */
    Row sharing(List<String> sameSpecies, Optional<Verdict> sameVerdict) {
        return new Row(start, number, file, line, title, animals, sameSpecies, sameVerdict, problems, isDefect, tally);
    }

    private int rank() {
        return verdict.map(found -> found.conclusion == Conclusion.NOT_READY ? 0 : UNREAD + found.conclusion.ordinal()).orElse(UNREAD);
    }

    /** Whether it was judged. */
    public boolean isJudged() {
        return verdict.isPresent();
    }

    /** Where it lies, with the line where it has one: "all.jsonl, line 17". */
    public String name() {
        return Incoming.name(file, line);
    }

    /** What a reader knows it by: its title, else its file. */
    public String label() {
        return title.isBlank() ? name() : title;
    }

    /** The conclusion as it is printed; {@code unread} for a file that cannot be read. */
    public String inWords(String unread) {
        return verdict.map(Verdict::inWords).orElse(unread);
    }
}
