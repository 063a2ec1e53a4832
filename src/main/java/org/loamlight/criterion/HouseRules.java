package org.loamlight.criterion;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What a club or a rescue asks beyond what the species needs. Data only: nothing in it is ever executed. Its limits stand beside
 * those of the species and the worst decides, so that they tighten and never loosen; what a house sets lower or leaves out on
 * purpose is told with its reason.
 *
 * @param title    what the house calls them
 * @param issuer   who gave them
 * @param date     when
 * @param sha256   SHA-256 of the file, lower-case hexadecimal
 * @param limits   limits it adds, each with the species it is for
 * @param regraded grades it changes
 * @param left     criteria it leaves out
 * @param points   requirements of its own
 */
public record HouseRules(String title, String issuer, LocalDate date, String sha256, List<HouseLimit> limits, List<Regraded> regraded,
        List<LeftOut> left, List<HousePoint> points) {
    /** Id of the source that house rules are cited from. */
    public static final String SOURCE = "house";

    /** @param species ids of the species it is for; empty for all */
    public record HouseLimit(Limit limit, Set<String> species) {
        boolean isFor(String id) {
            return species.isEmpty() || species.contains(id);
        }
    }

    /** A criterion whose own grade is another one in this house; variants and limits with a grade of their own keep theirs. */
    public record Regraded(String criterion, Grade grade, String why) {
    }

    /** A criterion this house does not look at. */
    public record LeftOut(String criterion, String why) {
    }

    /**
     * A requirement of the house.
     *
     * @param id  key in the house; its criterion is "house." and this
     * @param why why the house asks it
     */
    public record HousePoint(String id, String title, Need need, Grade grade, String why, String correct, Limit limit, Set<String> species) {
        public String criterion() {
            return "house." + id;
        }
    }

    /** Where a house takes something away from a point that guards against danger or harm. */
    public record Loosened(String criterion, Grade before, Optional<Grade> after, String why) {
    }

    /** What these rules take away from points that guard against danger or harm, in the order of their ids. */
    public List<Loosened> loosened(Knowledge plain) {
        List<Loosened> loosened = new ArrayList<>();
        left.forEach(one -> guards(one.criterion(), plain).ifPresent(before -> loosened.add(new Loosened(one.criterion(), before, Optional.empty(), one.why()))));
        regraded.forEach(one -> guards(one.criterion(), plain).filter(before -> !one.grade().atLeast(plain.criterion(one.criterion()).grade()))
                .ifPresent(before -> loosened.add(new Loosened(one.criterion(), plain.criterion(one.criterion()).grade(), Optional.of(one.grade()), one.why()))));
        return loosened.stream().sorted(Comparator.comparing(Loosened::criterion)).toList();
    }

    /** The gravest grade a criterion can give, where that is harm or danger. */
    private static Optional<Grade> guards(String id, Knowledge plain) {
        Criterion criterion = plain.criterion(id);
        Grade gravest = criterion.grades().values().stream().reduce(criterion.grade(), Grade::graver);
        return Optional.of(gravest).filter(grade -> grade.atLeast(Grade.MAJOR));
    }

    /** The title with who gave it and when, as a reader would look it up. */
    public String inFull() {
        return title + ". " + issuer + ", " + date;
    }

    /** The same rules without the name of the house and of whoever gave them. */
    public HouseRules withoutNames() {
        return new HouseRules("House rules", "the house", date, sha256, limits, regraded, left, points);
    }

    Source source() {
        return new Source(SOURCE, inFull(), "the rules of this house");
    }

    /** The criterion of a point, which reads what the criterion that looks at the same topic reads. */
    Criterion criterion(HousePoint point, Criterion beside, String version) {
        Page page = new Page(point.title(), point.why(), beside.page().measure(), Map.of("", point.correct()), "", Map.of());
        return new Criterion(point.criterion(), point.title(), point.need(), point.grade(), Map.of(), beside.subject(), List.of(), beside.purposes(), List.of(),
                beside.reads(), List.of(point.limit().topic()), false, false, DecisionRule.SIMPLE, List.of(point.limit().citation()), List.of(), version, page, List.of());
    }

    /** All limits for a species, those of the house's own points included. */
    List<Limit> limitsFor(String species) {
        Stream<Limit> own = points.stream().filter(point -> point.species().isEmpty() || point.species().contains(species)).map(HousePoint::limit);
        return Stream.concat(limits.stream().filter(one -> one.isFor(species)).map(HouseLimit::limit), own).toList();
    }
}
