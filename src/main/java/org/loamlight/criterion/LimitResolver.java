package org.loamlight.criterion;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import org.loamlight.setup.Animal;
import org.loamlight.setup.Lamp;
import org.loamlight.setup.Measure;
import org.loamlight.setup.Setup;
import org.loamlight.setup.Subject;
import org.loamlight.setup.SubjectKind;
import org.loamlight.setup.Told;

/** Turns the limits of a profile into numbers for the animals of a setup. */
public final class LimitResolver {
    private final Setup setup;
    private final List<Kept> kept;

    public LimitResolver(Setup setup, Knowledge knowledge) {
        this.setup = setup;
        this.kept = setup.animals().stream().map(animal -> new Kept(animal, knowledge.profile(animal.species()).limits())).toList();
    }

    /** An animal and the limits of its species. */
    private record Kept(Animal animal, Limits limits) {
    }

    /**
     * The chosen limits of a criterion for a subject: for one animal its own, for everything else those of all animals, the
     * smallest and the largest alike.
     */
    public Resolution resolve(Criterion criterion, Subject subject) {
        return resolve(criterion, subject, Limit::chosen);
    }

    /**
     * The limits of a criterion for a subject as {@link #resolve(Criterion, Subject)} gives them, of those limits only that are
     * asked for: readings that were not chosen, or those of one topic.
     */
    public Resolution resolve(Criterion criterion, Subject subject, Predicate<Limit> which) {
        List<ResolvedLimit> limits = new ArrayList<>();
        List<String> missing = new ArrayList<>();
        for (Kept one : kept) {
            if (subject.kind() != SubjectKind.ANIMAL || subject.name().equals(one.animal.name())) {
                for (PreparedLimit prepared : one.limits.of(criterion.id())) {
                    if (which.test(prepared.limit()) && !prepared.excludes(one.animal, setup)) {
                        add(new Case(criterion, subject, one.animal, prepared), limits, missing);
                    }
                }
            }
        }
        if (missing.isEmpty()) {
            return limits.isEmpty() ? Resolution.NONE : new Resolution(limits, Set.of());
        }
        return new Resolution(limits, Set.copyOf(missing));
    }

    private record Case(Criterion criterion, Subject subject, Animal animal, PreparedLimit prepared) {
        Limit limit() {
            return prepared.limit();
        }
    }

    private void add(Case one, List<ResolvedLimit> limits, List<String> missing) {
        List<String> open = open(one);
        if (open.isEmpty()) {
            limits.add(resolved(one, one.prepared.isConstant() ? one.prepared.constant() : inNumbers(one)));
        } else {
            missing.addAll(open);
        }
    }

    private List<String> open(Case one) {
        List<String> ofScope = one.prepared.open(one.animal, setup);
        if (ofScope.isEmpty() && one.prepared.measures().isEmpty()) {
            return List.of();
        }
        List<String> open = new ArrayList<>();
        for (String question : ofScope) {
            open.add(Told.resolved(question, one.animal.subject()));
        }
        for (BodyMeasure of : one.prepared.measures()) {
            if (!measure(of, one).isKnown()) {
                open.add(Told.resolved(of.question(), of.isOfAnimal() ? one.animal.subject() : one.subject));
            }
        }
        return open;
    }

    private static ResolvedLimit resolved(Case one, PreparedLimit.Ends ends) {
        Limit limit = one.limit();
        return new ResolvedLimit(one.criterion.id(), one.subject, limit.topic(), limit.placeFor(one.subject), limit.where(), one.criterion.limitUse(),
                ends.low(), ends.high(), ends.uncertainty(), one.criterion.decision(), limit.grade().orElse(one.criterion.grade()), limit.citation(), one.animal.name());
    }

    private PreparedLimit.Ends inNumbers(Case one) {
        Limit limit = one.limit();
        double uncapped = limit.atLeast().isPresent() ? value(limit.atLeast().get(), one) : Double.NEGATIVE_INFINITY;
        double low = limit.capped(uncapped);
        double high = limit.atMost().isPresent() ? value(limit.atMost().get(), one) : Double.POSITIVE_INFINITY;
        double ofLow = low < uncapped || limit.atLeast().isEmpty() ? 0 : uncertainty(limit.atLeast().get(), one);
        double ofHigh = limit.atMost().isPresent() ? uncertainty(limit.atMost().get(), one) : 0;
        return new PreparedLimit.Ends(low, high, Math.max(ofLow, ofHigh));
    }

    /** With what further animals add, in the topic's unit. */
    private double value(Bound bound, Case one) {
        if (gainsNothing(one)) {
            return converted(bound, BigDecimal.ONE, one);
        }
        BigDecimal raised = BigDecimal.valueOf(converted(bound, gain(one.limit()), one));
        return one.limit().increment().amountsFor(setup.animals().size()).map(amount -> BigDecimal.valueOf(converted(amount, BigDecimal.ONE, one)))
                .reduce(raised, BigDecimal::add).doubleValue();
    }

    private double converted(Bound bound, BigDecimal gain, Case one) {
        if (bound instanceof Bound.Constant constant) {
            return constant.unit().convert(constant.value().multiply(gain), one.limit().topic().unit());
        }
        Bound.Factor factor = (Bound.Factor) bound;
        BigDecimal product = factor.times(BigDecimal.valueOf(measure(factor.of(), one).value())).multiply(gain);
        return factor.unit().convert(product, one.limit().topic().unit());
    }

    private static boolean gainsNothing(Case one) {
        return one.limit().increment().gains().isEmpty();
    }

    private BigDecimal gain(Limit limit) {
        return limit.increment().factorFor(setup.animals().size());
    }

    /** The measure is one and the same in the limit and in what is added, so that its errors add up. */
    private double uncertainty(Bound bound, Case one) {
        if (gainsNothing(one)) {
            return uncertaintyOf(bound, one);
        }
        double own = uncertaintyOf(bound, one) * gain(one.limit()).doubleValue();
        return own + one.limit().increment().amountsFor(setup.animals().size()).mapToDouble(amount -> uncertaintyOf(amount, one)).sum();
    }

    private double uncertaintyOf(Bound bound, Case one) {
        if (bound instanceof Bound.Factor factor) {
            Measure of = measure(factor.of(), one);
            return factor.unit().convertDifference(of.standardUncertainty() * factor.slope(of.value()), one.limit().topic().unit());
        }
        return 0;
    }

    private Measure measure(BodyMeasure of, Case one) {
        return switch (of) {
            case TOTAL_LENGTH -> one.animal.length();
            case BODY_MASS -> one.animal.mass();
            case HEAD_WIDTH -> one.animal.headWidth();
            case LAMP_MINIMUM_DISTANCE -> lamp(one.subject, Lamp::minimumDistance);
            case LAMP_LIFE -> lamp(one.subject, Lamp::life);
            case CARAPACE_LENGTH -> one.animal.carapace();
            case SNOUT_VENT_LENGTH -> one.animal.snoutVentLength();
            case MARKED_CLEARANCE -> markedClearance(one.subject);
            case STAND_RATING -> setup.enclosure().build().carries();
            case OUTLET_RATING -> setup.electrical().outlet();
        };
    }

    private Measure lamp(Subject subject, Function<Lamp, Measure> measure) {
        return setup.lamps().stream().filter(lamp -> lamp.subject().equals(subject)).findFirst().map(measure).orElse(Measure.UNKNOWN);
    }

    private Measure markedClearance(Subject subject) {
        return setup.heaters().stream().filter(heater -> heater.subject().equals(subject)).findFirst()
                .map(heater -> heater.fixing().marked()).orElse(Measure.UNKNOWN);
    }
}
