package org.loamlight.review;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.loamlight.criterion.Grade;
import org.loamlight.criterion.Need;
import org.loamlight.finding.Result;

/** Everything that is counted over all setups while they go by. */
public final class Totals {
    private final List<Row> rows = new ArrayList<>();
    private final Map<Need, Counts> needs = new EnumMap<>(Need.class);
    private final Map<String, Fault> faults = new HashMap<>();
    private final Map<String, Integer> species = new TreeMap<>();
    private final Set<String> ids = new TreeSet<>();

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
        Row row = new Row(start, Row.brief(reviewed), Tally.of(points));
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

    /** Groups of setups that have the same title and the same animals, or the same content: each in the order in which they came in. */
    public List<List<Row>> namesakes() {
        Map<String, List<Row>> groups = new TreeMap<>();
        rows.stream().filter(row -> row.isJudged() && !row.reviewed().basis().isAnonymous())
                .forEach(row -> groups.computeIfAbsent(row.reviewed().judged().orElseThrow().title() + "\n" + row.animals(), first -> new ArrayList<>()).add(row));
        return groups.values().stream().filter(group -> group.size() > 1).toList();
    }
}
