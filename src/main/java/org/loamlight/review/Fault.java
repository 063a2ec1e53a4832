package org.loamlight.review;

import java.util.Comparator;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.loamlight.criterion.Grade;
import org.loamlight.criterion.Need;

/** How often one criterion came to what over all setups. It counts setups, not parts: two bad lamps in one setup are one. */
public final class Fault {
    /** The most frequent first. */
    public static final Comparator<Fault> MOST_FIRST = Comparator.comparingInt((Fault fault) -> -fault.notRight).thenComparing(Fault::grade)
            .thenComparingInt(fault -> -fault.notKnown).thenComparing(Fault::criterion);

    private final String criterion;
    private final String title;
    private final Need need;
    private Grade grade;
    private int notRight;
    private int notKnown;
    private final Map<String, int[]> bySpecies = new TreeMap<>();

    Fault(Point point, String title) {
        this.criterion = point.criterion();
        this.title = title;
        this.need = point.need();
        this.grade = point.grade();
    }

    /** Which criteria of one setup were counted already. */
    static final class Seen {
        private final Set<String> notRight = new HashSet<>();
        private final Set<String> notKnown = new HashSet<>();
    }

    void count(Point point, Iterable<String> species, Seen seen) {
        grade = grade.graver(point.grade());
        if (point.isToDo() && seen.notRight.add(criterion)) {
            notRight++;
            species.forEach(name -> of(name)[0]++);
        } else if (point.isToFindOut() && seen.notKnown.add(criterion)) {
            notKnown++;
            species.forEach(name -> of(name)[1]++);
        }
    }

    private int[] of(String species) {
        return bySpecies.computeIfAbsent(species, name -> new int[2]);
    }

    public String criterion() {
        return criterion;
    }

    public String title() {
        return title;
    }

    public Need need() {
        return need;
    }

    /** The gravest grade it was found with. */
    public Grade grade() {
        return grade;
    }

    /** In how many setups it is not right. */
    public int notRight() {
        return notRight;
    }

    /** In how many it is not known or not decided. */
    public int notKnown() {
        return notKnown;
    }

    /** For each species, by its name, in how many setups that hold it the point is not right; species without any are left out. */
    public Map<String, Integer> notRightBySpecies() {
        Map<String, Integer> found = new TreeMap<>();
        bySpecies.forEach((name, counts) -> {
            if (counts[0] > 0) {
                found.put(name, counts[0]);
            }
        });
        return found;
    }
}
