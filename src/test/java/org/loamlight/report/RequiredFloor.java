package org.loamlight.report;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import org.loamlight.criterion.Code;
import org.loamlight.criterion.CodePoint;
import org.loamlight.criterion.Knowledge;
import org.loamlight.criterion.LimitResolver;
import org.loamlight.criterion.ResolvedLimit;
import org.loamlight.quantity.Topic;
import org.loamlight.setup.Purpose;
import org.loamlight.setup.Setup;
import org.loamlight.setup.Subject;

/**
 * The smallest floor that meets everything asked of length, depth, floor and perimeter for the animals of a setup. Of a perimeter
 * the length gets what the depth leaves.
 */
final class RequiredFloor {
    /** Whatever shapes a floor. */
    private static final Set<Topic> TOPICS = Set.of(Topic.FLOOR_AREA, Topic.INSIDE_LENGTH, Topic.INSIDE_DEPTH, Topic.INSIDE_PERIMETER);
    private static final List<String> OWN = List.of("space.floor-area", "space.length", "space.depth");
    private static final double SQUARE_CENTIMETRES = 10_000;

    private RequiredFloor() {
    }

    /** What a code asks (m²); empty where it asks nothing that makes a floor. */
    static OptionalDouble byCode(Knowledge knowledge, Code code, Setup setup) {
        return smallest(knowledge, setup, points(code, setup.species()).stream().map(point -> code.criterion(point.id())));
    }

    /** What a code asks of the floor of permanent housing for any of these species. */
    static List<CodePoint> points(Code code, Set<String> species) {
        return code.points().stream().filter(point -> point.isFor(species) && point.purposes().contains(Purpose.PERMANENT)
                && point.limits().stream().anyMatch(limit -> limit.chosen() && TOPICS.contains(limit.topic()))).toList();
    }

    /** What the points of the species ask (m²). */
    static OptionalDouble bySpecies(Knowledge knowledge, Setup setup) {
        return smallest(knowledge, setup, OWN.stream());
    }

    private static OptionalDouble smallest(Knowledge knowledge, Setup setup, Stream<String> ids) {
        LimitResolver resolver = new LimitResolver(setup, knowledge);
        return smallest(ids.map(knowledge::criterion)
                .flatMap(criterion -> resolver.resolve(criterion, Subject.ENCLOSURE, limit -> limit.chosen() && TOPICS.contains(limit.topic())).limits().stream()).toList());
    }

    private static OptionalDouble smallest(List<ResolvedLimit> limits) {
        double depth = low(limits, Topic.INSIDE_DEPTH);
        double length = Math.max(low(limits, Topic.INSIDE_LENGTH), low(limits, Topic.INSIDE_PERIMETER) / 2 - depth);
        double floor = Math.max(low(limits, Topic.FLOOR_AREA), length * depth / SQUARE_CENTIMETRES);
        return floor > 0 ? OptionalDouble.of(floor) : OptionalDouble.empty();
    }

    private static double low(List<ResolvedLimit> limits, Topic topic) {
        return limits.stream().filter(limit -> limit.topic() == topic && limit.hasLow()).mapToDouble(ResolvedLimit::low).max().orElse(0);
    }
}
