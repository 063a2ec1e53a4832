package org.loamlight.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.loamlight.ranking.Outcome;

/**
 * What changed in one setup.
 *
 * @param now    the setup today; empty when it is gone
 * @param before the setup at the earlier review; empty when it joined
 * @param points what became of each point that was or is open, in the order of {@link Change}
 */
public record Changed(Optional<Reviewed> now, Optional<Reviewed> before, List<ChangedPoint> points) {

    /**
     * What became of one point.
     *
     * @param then the point at the earlier review; empty when it was not asked
     * @param now  the point today; empty when it is not asked any more
     */
    public record ChangedPoint(Change change, Optional<Point> then, Optional<Point> now) {
    }

    /** The setup joined, is gone, or its points changed. */
    static Changed of(Optional<Reviewed> now, Optional<Reviewed> before) {
        if (now.isEmpty() || before.isEmpty()) {
            return new Changed(now, before, List.of());
        }
        List<ChangedPoint> points = new ArrayList<>();
        Map<String, Point> then = byKey(before.get());
        Map<String, Point> today = byKey(now.get());
        today.forEach((key, point) -> compared(Optional.ofNullable(then.get(key)), Optional.of(point)).ifPresent(points::add));
        then.forEach((key, point) -> {
            if (!today.containsKey(key)) {
                compared(Optional.of(point), Optional.empty()).ifPresent(points::add);
            }
        });
        points.sort(Comparator.comparing(ChangedPoint::change));
        return new Changed(now, before, points);
    }

    private static Map<String, Point> byKey(Reviewed reviewed) {
        Map<String, Point> points = new LinkedHashMap<>();
        reviewed.judged().map(Judged::points).orElse(List.of()).forEach(point -> points.put(point.key(), point));
        return points;
    }

    /** A question that another point asks both times is told there. */
    private static Optional<ChangedPoint> compared(Optional<Point> then, Optional<Point> now) {
        boolean isTold = Stream.concat(then.stream(), now.stream()).anyMatch(point -> point.isOpen() && point.words().isPresent());
        return isTold ? org.loamlight.ranking.Change.became(then.map(Changed::outcome), now.map(Changed::outcome))
                .map(kind -> new ChangedPoint(Change.of(kind), then, now)) : Optional.empty();
    }

    private static Outcome outcome(Point point) {
        return new Outcome(point.result(), point.grade());
    }

    /** The setup joined or is gone; empty when it is there both times. */
    public Optional<Change> ofSetup() {
        return before.isEmpty() ? Optional.of(Change.JOINED) : now.isEmpty() ? Optional.of(Change.GONE) : Optional.empty();
    }

    /** How many points changed in each way; a way without any is left out. */
    public Map<Change, Integer> counts() {
        Map<Change, Integer> counts = new EnumMap<>(Change.class);
        points.forEach(point -> counts.merge(point.change(), 1, Integer::sum));
        return counts;
    }
}
