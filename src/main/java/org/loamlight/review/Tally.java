package org.loamlight.review;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loamlight.criterion.Grade;
import org.loamlight.finding.Result;

/**
 * How many points came to what. Points somebody gave leave for count as waived and for nothing else.
 *
 * @param notRight  not right, by grade; a grade without any is left out
 * @param notKnown  not known or not decided, each question once, by grade
 * @param gravest   gravest grade that is open, of those questions too that other points ask already; empty when nothing is open
 */
public record Tally(Map<Grade, Integer> notRight, Map<Grade, Integer> notKnown, int right, int notApplicable, int waived, Optional<Grade> gravest) {
    /** A setup nothing is known of. */
    static final Tally NONE = of(List.of());

    static final Comparator<Tally> WORST_FIRST = Comparator.comparingInt((Tally tally) -> -tally.toDo(Grade.CRITICAL))
            .thenComparingInt(tally -> -tally.toDo(Grade.MAJOR)).thenComparingInt(tally -> -tally.toFindOut(Grade.CRITICAL))
            .thenComparingInt(tally -> -tally.toFindOut(Grade.MAJOR)).thenComparingInt(tally -> -tally.toDo(Grade.MINOR))
            .thenComparingInt(tally -> -tally.toFindOut());

    static Tally of(List<Point> points) {
        Map<Grade, Integer> toDo = new EnumMap<>(Grade.class);
        Map<Grade, Integer> toFindOut = new EnumMap<>(Grade.class);
        points.stream().filter(Point::isToDo).forEach(point -> toDo.merge(point.grade(), 1, Integer::sum));
        points.stream().filter(Point::isToFindOut).forEach(point -> toFindOut.merge(point.grade(), 1, Integer::sum));
        return new Tally(toDo, toFindOut, count(points, Result.CONFORMITY), count(points, Result.NOT_APPLICABLE), (int) points.stream().filter(Point::isWaived).count(),
                points.stream().filter(point -> point.isOpen() && !point.isWaived()).map(Point::grade).min(Comparator.naturalOrder()));
    }

    private static int count(List<Point> points, Result result) {
        return (int) points.stream().filter(point -> point.result() == result).count();
    }

    public int toDo(Grade grade) {
        return notRight.getOrDefault(grade, 0);
    }

    public int toFindOut(Grade grade) {
        return notKnown.getOrDefault(grade, 0);
    }

    public int toDo() {
        return notRight.values().stream().mapToInt(Integer::intValue).sum();
    }

    public int toFindOut() {
        return notKnown.values().stream().mapToInt(Integer::intValue).sum();
    }
}
