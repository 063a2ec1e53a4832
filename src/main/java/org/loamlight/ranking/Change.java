package org.loamlight.ranking;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.loamlight.criterion.Grade;
import org.loamlight.finding.Result;

/**
 * What became of one point from one audit to the next.
 *
 * @param pair   key of the pair: "heat.guard heater:basking lamp"
 * @param before what was found before; empty for a point that was not looked at
 * @param after  what is found now; empty for a point there is no more, as of a lamp that was taken away
 */
public record Change(String pair, Kind kind, Optional<Outcome> before, Optional<Outcome> after) {

    /** What became of it, the worst first. */
    public enum Kind {
        /** It was right, or was not there, and is open now. */
        NEW,
        /** It is graver than it was. */
        WORSE,
        /** It was not known and turned out to be wrong. */
        FOUND_WRONG,
        STILL_OPEN,
        /** It is still wrong, and less grave than it was. */
        LESS_GRAVE,
        PUT_RIGHT,
        /** It was not known and turned out to be right. */
        FOUND_RIGHT,
        /** It was open and does not apply any more, or what it was about is gone. */
        GONE
    }

    /**
     * Every point that is or was open.
     *
     * @param before outcomes by the keys of their pairs
     * @return by kind, by the grave before the mild, by key
     */
    public static List<Change> between(Map<String, Outcome> before, Map<String, Outcome> after) {
        Set<String> pairs = new TreeSet<>(before.keySet());
        pairs.addAll(after.keySet());
        List<Change> changes = new ArrayList<>();
        for (String pair : pairs) {
            Optional<Outcome> was = Optional.ofNullable(before.get(pair));
            Optional<Outcome> is = Optional.ofNullable(after.get(pair));
            became(was, is).ifPresent(kind -> changes.add(new Change(pair, kind, was, is)));
        }
        changes.sort(Comparator.comparing(Change::kind).thenComparing(Change::grade).thenComparing(Change::pair));
        return changes;
    }

    /** How grave it is, or was where it is no more. */
    public Grade grade() {
        return after.filter(Outcome::isOpen).or(() -> before).orElseThrow().grade();
    }

    /**
     * What became of one point.
     *
     * @param before what was found; empty for a point that was not looked at
     * @param after  what is found; empty for a point there is no more
     * @return empty for one that was open neither time
     */
    public static Optional<Kind> became(Optional<Outcome> before, Optional<Outcome> after) {
        boolean was = before.filter(Outcome::isOpen).isPresent();
        boolean is = after.filter(Outcome::isOpen).isPresent();
        if (was && is) {
            return Optional.of(open(before.get(), after.get()));
        }
        return was ? Optional.of(closed(before.get(), after)) : is ? Optional.of(Kind.NEW) : Optional.empty();
    }

    private static Kind closed(Outcome before, Optional<Outcome> after) {
        if (after.filter(now -> now.result() == Result.CONFORMITY).isEmpty()) {
            return Kind.GONE;
        }
        return before.result() == Result.NONCONFORMITY ? Kind.PUT_RIGHT : Kind.FOUND_RIGHT;
    }

    private static Kind open(Outcome before, Outcome after) {
        boolean wasWrong = before.result() == Result.NONCONFORMITY;
        boolean isWrong = after.result() == Result.NONCONFORMITY;
        if (!wasWrong && isWrong) {
            return Kind.FOUND_WRONG;
        }
        if (wasWrong && !isWrong) {
            return Kind.LESS_GRAVE;
        }
        int order = after.grade().compareTo(before.grade());
        return order == 0 ? Kind.STILL_OPEN : order < 0 ? Kind.WORSE : Kind.LESS_GRAVE;
    }
}
