package org.loamlight.criterion;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.loamlight.quantity.Unit;
import org.loamlight.setup.Animal;
import org.loamlight.setup.Setup;

/** A limit with what is the same for every setup, so that it is worked out once. */
final class PreparedLimit {
    private final Limit limit;
    private final List<BodyMeasure> measures;
    private final boolean isForEverybody;
    private final Once<Ends> constant = Once.by(this::inUnitOfTopic);

    PreparedLimit(Limit limit) {
        this.limit = limit;
        Set<BodyMeasure> of = EnumSet.noneOf(BodyMeasure.class);
        limit.atLeast().ifPresent(bound -> measure(bound).ifPresent(of::add));
        limit.atMost().ifPresent(bound -> measure(bound).ifPresent(of::add));
        limit.increment().amounts().forEach(bound -> measure(bound).ifPresent(of::add));
        this.measures = List.copyOf(of);
        this.isForEverybody = limit.scope().equals(Scope.ALL);
    }

    private static Optional<BodyMeasure> measure(Bound bound) {
        return bound instanceof Bound.Factor factor ? Optional.of(factor.of()) : Optional.empty();
    }

    /**
     * A limit in the unit of its topic.
     *
     * @param low         lower end; negative infinity when open
     * @param high        upper end; infinity when open
     * @param uncertainty standard uncertainty of the ends, 0 or more
     */
    record Ends(double low, double high, double uncertainty) {
    }

    Limit limit() {
        return limit;
    }

    /** Whether it is out of the question for an animal, whatever else is still unknown of it. */
    boolean excludes(Animal animal, Setup setup) {
        return !isForEverybody && limit.scope().excludes(animal, setup);
    }

    /** The questions about the animal that decide whether it is meant and are not answered. */
    List<String> open(Animal animal, Setup setup) {
        return isForEverybody ? List.of() : limit.scope().open(animal, setup);
    }

    /** What must be known to state it in numbers, each measure once; empty for constants. */
    List<BodyMeasure> measures() {
        return measures;
    }

    /** Whether it is the same for every animal and every number of animals it is meant for. */
    boolean isConstant() {
        return measures.isEmpty() && limit.increment().gains().isEmpty();
    }

    /** The ends of a limit that {@link #isConstant()}. */
    Ends constant() {
        return constant.get();
    }

    private Ends inUnitOfTopic() {
        Unit unit = limit.topic().unit();
        double low = limit.atLeast().map(bound -> ((Bound.Constant) bound).in(unit)).orElse(Double.NEGATIVE_INFINITY);
        double high = limit.atMost().map(bound -> ((Bound.Constant) bound).in(unit)).orElse(Double.POSITIVE_INFINITY);
        return new Ends(limit.capped(low), high, 0);
    }
}
