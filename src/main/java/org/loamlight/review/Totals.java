package org.loamlight.review;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.loamlight.criterion.Grade;
import org.loamlight.criterion.Need;
import org.loamlight.finding.Result;

/** Everything that is counted over all setups while they go by. */
public final class Totals {
    private static final Comparator<Row> BY_NAME = Comparator.comparing(Row::title).thenComparing(Row::animals);

    private final List<Row> rows = new ArrayList<>();
    private final Map<Need, Counts> needs = new EnumMap<>(Need.class);
    private final Map<String, Fault> faults = new HashMap<>();
    private final Map<String, Integer> species = new TreeMap<>();
    private final Set<String> ids = new TreeSet<>();
    private final Map<List<String>, List<String>> sameSpecies = new HashMap<>();
    private final Map<Optional<Row.Verdict>, Optional<Row.Verdict>> sameVerdicts = new HashMap<>();

    /** What the points about one need came to. */
    public static final class Counts {
        private final Map<Grade, Integer> toDo = new EnumMap<>(Grade.class);
        private final Map<Grade, Integer> toFindOut = new EnumMap<>(Grade.class);
        private int right;

        private void count(Point point) {
            if (point.isToDo()) {
                toDo.merge(point.grade(), 1, Integer::sum);
            } else if (point.isToFindOut()) {
                toFindOut.merge(point.grade(), 1, Integer::sum);
            } else if (point.result() == Result.CONFORMITY) {
                right++;
            }
        }

        public int toDo(Grade grade) {
            return toDo.getOrDefault(grade, 0);
        }

        public int toFindOut(Grade grade) {
            return toFindOut.getOrDefault(grade, 0);
        }

        public int right() {
            return right;
        }
    }

    /** @param start where its line of results begins */
    void add(Reviewed reviewed, long start) {
        List<Point> points = reviewed.judged().map(Judged::points).orElse(List.of());
        Row row = shared(Row.of(start, reviewed));
        rows.add(row);
        row.species().forEach(name -> species.merge(name, 1, Integer::sum));
        reviewed.judged().ifPresent(judged -> judged.animals().forEach(animal -> ids.add(animal.species())));
        Fault.Seen seen = new Fault.Seen();
        points.forEach(point -> {
            needs.computeIfAbsent(point.need(), first -> new Counts()).count(point);
            point.words().filter(words -> !point.isWaived()).ifPresent(words ->
                    faults.computeIfAbsent(point.criterion(), first -> new Fault(point, words.title())).count(point, row.species(), seen));
        });
    }

    private Row shared(Row row) {
        return row.sharing(sameSpecies.computeIfAbsent(row.species(), own -> own), sameVerdicts.computeIfAbsent(row.verdict(), own -> own));
    }

    /** The setups in the order in which they came in. */
    public List<Row> rows() {
        return Collections.unmodifiableList(rows);
    }

    /** The worst first. */
    public List<Row> worstFirst() {
        return rows.stream().sorted(Row.WORST_FIRST).toList();
    }

    /** For each need what its points came to; a need nothing was asked about has zeros. */
    public Counts of(Need need) {
        return needs.getOrDefault(need, new Counts());
    }

    /** The points that are open somewhere, the most frequent first. */
    public List<Fault> faults() {
        return faults.values().stream().sorted(Fault.MOST_FIRST).toList();
    }

    /** Ids of all species that are kept. */
    public Set<String> species() {
        return ids;
    }

    /** In how many setups a species is kept, by its name. */
    public int kept(String name) {
        return species.getOrDefault(name, 0);
    }

    /** Setups that were judged. */
    public int judged() {
        return (int) rows.stream().filter(Row::isJudged).count();
    }

    /** Files that could not be read. */
    public int unread() {
        return rows.size() - judged();
    }

    /** Groups of setups that have the same title and the same animals: each in the order in which they came in. */
    List<List<Row>> namesakes() {
        List<List<Row>> groups = new ArrayList<>();
        List<Row> sorted = rows.stream().filter(Row::isJudged).sorted(BY_NAME).toList();
        for (int start = 0, end; start < sorted.size(); start = end) {
            end = start + 1;
            while (end < sorted.size() && BY_NAME.compare(sorted.get(start), sorted.get(end)) == 0) {
                end++;
            }
            if (end - start > 1) {
                groups.add(sorted.subList(start, end));
            }
        }
        return groups;
    }
}
