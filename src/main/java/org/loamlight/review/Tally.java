package org.loamlight.review;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.loamlight.criterion.Grade;
import org.loamlight.finding.Result;

/**
 * How many points came to what. Points somebody gave leave for count as waived and for nothing else.
 *
 * @param notRight  not right, by grade
 * @param notKnown  not known or not decided, each question once, by grade
 * @param gravest   gravest grade that is open, of those questions too that other points ask already; empty when nothing is open
 */
public record Tally(ByGrade notRight, ByGrade notKnown, int right, int notApplicable, int waived, Optional<Grade> gravest) {
    /** The same few grades are the gravest of a million setups. */
    private static final List<Optional<Grade>> GRADES = Arrays.stream(Grade.values()).map(Optional::of).toList();

    static final Comparator<Tally> WORST_FIRST = Comparator.comparingInt((Tally tally) -> -tally.toDo(Grade.CRITICAL))
            .thenComparingInt(tally -> -tally.toDo(Grade.MAJOR)).thenComparingInt(tally -> -tally.toFindOut(Grade.CRITICAL))
            .thenComparingInt(tally -> -tally.toFindOut(Grade.MAJOR)).thenComparingInt(tally -> -tally.toDo(Grade.MINOR))
            .thenComparingInt(tally -> -tally.toFindOut());

    /** One count for each grade. */
    public record ByGrade(int critical, int major, int minor, int improvement) {
        private static ByGrade of(List<Point> points, Predicate<Point> which) {
            int[] counts = new int[Grade.values().length];
            points.stream().filter(which).forEach(point -> counts[point.grade().ordinal()]++);
            return new ByGrade(counts[Grade.CRITICAL.ordinal()], counts[Grade.MAJOR.ordinal()], counts[Grade.MINOR.ordinal()], counts[Grade.IMPROVEMENT.ordinal()]);
        }

        private int of(Grade grade) {
            return switch (grade) {
                case CRITICAL -> critical;
                case MAJOR -> major;
                case MINOR -> minor;
                case IMPROVEMENT -> improvement;
            };
        }

        private int all() {
            return critical + major + minor + improvement;
        }
    }

    static Tally of(List<Point> points) {
        return new Tally(ByGrade.of(points, Point::isToDo), ByGrade.of(points, Point::isToFindOut), count(points, Result.CONFORMITY), count(points, Result.NOT_APPLICABLE),
                (int) points.stream().filter(Point::isWaived).count(),
                points.stream().filter(point -> point.isOpen() && !point.isWaived()).map(Point::grade).min(Comparator.naturalOrder()).flatMap(grade -> GRADES.get(grade.ordinal())));
    }

    private static int count(List<Point> points, Result result) {
        return (int) points.stream().filter(point -> point.result() == result).count();
    }

    public int toDo(Grade grade) {
        return notRight.of(grade);
    }

    public int toFindOut(Grade grade) {
        return notKnown.of(grade);
    }

    public int toDo() {
        return notRight.all();
    }

    public int toFindOut() {
        return notKnown.all();
    }
}
