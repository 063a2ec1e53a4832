package org.loamlight.report;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.DoubleStream;
import org.loamlight.criterion.Code;
import org.loamlight.criterion.Knowledge;
import org.loamlight.criterion.Limit;
import org.loamlight.criterion.SizeClass;
import org.loamlight.setup.Setup;

/** Where the floor a code asks for a growing animal changes at a stroke. */
final class FloorSteps {
    private static final BigDecimal HAIR = new BigDecimal("0.001");
    /** What a hair of growth cannot explain. */
    private static final double SHARE = 0.01;

    private FloorSteps() {
    }

    /**
     * One such change.
     *
     * @param at       length (cm) at which it happens
     * @param included whether the floor is the new one at exactly this length
     * @param adult    whether it happens because the animal counts as adult from this length on
     * @param before   floor up to there (m²); 0 where none is asked for
     * @param after    floor from there (m²)
     */
    record FloorStep(BigDecimal at, boolean included, boolean adult, double before, double after) {
        boolean isFall() {
            return after < before;
        }

        /** Whether it lies behind an animal that has reached a length. */
        boolean isPassedAt(BigDecimal length) {
            return at.compareTo(length) < 0 || included && at.compareTo(length) == 0;
        }
    }

    /** All steps of a code for a species, in order of length. */
    static List<FloorStep> of(Knowledge knowledge, Code code, Growth growth) {
        Set<BigDecimal> borders = new TreeSet<>(Set.of(growth.adultFrom()));
        RequiredFloor.points(code, Set.of(growth.species())).stream().flatMap(point -> point.limits().stream().filter(Limit::chosen))
                .map(limit -> growth.isByShell() ? limit.scope().shell() : limit.scope().size()).flatMapToDouble(FloorSteps::ends).mapToObj(BigDecimal::valueOf).map(BigDecimal::stripTrailingZeros)
                .filter(end -> end.compareTo(growth.hatchling()) > 0 && end.compareTo(growth.longest()) < 0).forEach(borders::add);
        return borders.stream().flatMap(border -> at(knowledge, code, growth, border).stream()).toList();
    }

    private static DoubleStream ends(SizeClass size) {
        return DoubleStream.of(size.smallest(), size.largest()).filter(Double::isFinite);
    }

    /** The step at a length; empty where there is none. */
    private static Optional<FloorStep> at(Knowledge knowledge, Code code, Growth growth, BigDecimal border) {
        double below = floor(knowledge, code, growth.setup(border.subtract(HAIR), 1));
        double at = floor(knowledge, code, growth.setup(border, 1));
        double above = floor(knowledge, code, growth.setup(border.add(HAIR), 1));
        if (isNear(below, above)) {
            return Optional.empty();
        }
        boolean included = Math.abs(at - above) < Math.abs(at - below);
        return Optional.of(new FloorStep(border, included, isAsAdult(knowledge, code, growth, border), included ? below : at, included ? at : above));
    }

    /** Whether one that is still growing would not take the same step. */
    private static boolean isAsAdult(Knowledge knowledge, Code code, Growth growth, BigDecimal border) {
        BigDecimal above = border.add(HAIR);
        return border.compareTo(growth.adultFrom()) == 0
                && !isNear(floor(knowledge, code, growth.setup(above, 1)), floor(knowledge, code, growth.growing(above)));
    }

    private static boolean isNear(double one, double other) {
        return Math.abs(one - other) <= SHARE * Math.max(one, other);
    }

    private static double floor(Knowledge knowledge, Code code, Setup setup) {
        return RequiredFloor.byCode(knowledge, code, setup).orElse(0);
    }
}
