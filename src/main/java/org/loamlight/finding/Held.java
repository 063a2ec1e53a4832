package org.loamlight.finding;

import java.util.Set;
import org.loamlight.criterion.DecisionRule;
import org.loamlight.criterion.Grade;
import org.loamlight.criterion.ResolvedLimit;
import org.loamlight.physics.Conformance;
import org.loamlight.quantity.Method;
import org.loamlight.quantity.Quantity;
import org.loamlight.setup.Subject;

/**
 * Stated by the limit rules: a quantity was held against a limit.
 *
 * @param probability that the true value lies within the limit (JCGM 106:2012, 7.3 and 7.4)
 */
public record Held(String criterion, Subject subject, Quantity quantity, ResolvedLimit limit, Decision decision, double probability) {
    /** From this conformance probability on a guarded criterion conforms (coverage of 95 %, JCGM 106:2012, 7.5.4). */
    static final double CONFORMS_FROM = 0.95;
    /** Up to this conformance probability a guarded criterion does not conform. */
    static final double FAILS_UP_TO = 0.05;

    private static final Set<Method> WORKED_OUT = Set.of(Method.COMPUTED, Method.MODELLED);

    /** Decides by the limit's rule. */
    public static Held of(Quantity quantity, ResolvedLimit limit) {
        double uncertainty = Conformance.combine(quantity.uncertainty(), limit.uncertainty());
        double probability = Conformance.probability(quantity.value(), uncertainty, limit.low(), limit.high());
        Decision decision = limit.decision() == DecisionRule.SIMPLE ? simple(quantity, limit) : guarded(probability, quantity);
        if (quantity.origin().method() == Method.ESTIMATED) {
            decision = estimated(probability);
        }
        if (limit.decision() == DecisionRule.SHOWN) {
            decision = Decision.UNDECIDED;
        }
        return new Held(limit.criterion(), limit.subject(), quantity, limit, decision, probability);
    }

    /** What is usual for things of its kind decides only where hardly one of them would conform. */
    private static Decision estimated(double probability) {
        return probability <= FAILS_UP_TO ? Decision.OUTSIDE : Decision.UNDECIDED;
    }

    /** The limit decides, unless a value that was only worked out is so doubtful that it cannot be told from either nothing or the limit. */
    private static Decision simple(Quantity quantity, ResolvedLimit limit) {
        if (WORKED_OUT.contains(quantity.origin().method()) && quantity.isSwallowed()
                && quantity.uncertainty() >= (limit.hasHigh() ? limit.high() : limit.low())) {
            return Decision.UNDECIDED;
        }
        return Conformance.within(quantity.value(), limit.low(), limit.high()) ? Decision.INSIDE : Decision.OUTSIDE;
    }

    /** A model without a reading never makes a guarded criterion conform. */
    private static Decision guarded(double probability, Quantity quantity) {
        if (probability <= FAILS_UP_TO) {
            return Decision.OUTSIDE;
        }
        return probability >= CONFORMS_FROM && quantity.origin().method() != Method.MODELLED ? Decision.INSIDE : Decision.UNDECIDED;
    }

    /** The grade of this shortfall: the limit's, but never more than MAJOR on a model alone, nor more than MINOR on an estimate. */
    public Grade grade() {
        return switch (quantity.origin().method()) {
            case MODELLED -> limit.grade().milder(Grade.MAJOR);
            case ESTIMATED -> limit.grade().milder(Grade.MINOR);
            default -> limit.grade();
        };
    }

    /** Whether the value lies below the limit's lower end, if only by what its uncertainty may explain. */
    public boolean isBelow() {
        return quantity.value() < limit.low();
    }

    /** Whether the value lies above the limit's upper end, if only by what its uncertainty may explain. */
    public boolean isAbove() {
        return quantity.value() > limit.high();
    }

    /** How far the value lies outside, in the topic's unit; 0 inside. */
    public double shortfall() {
        return Math.max(0, Math.max(limit.low() - quantity.value(), quantity.value() - limit.high()));
    }

    /** {@link #shortfall()} over the width of the allowed range, or over the limit where one side is open; 0 inside. */
    public double distance() {
        double width = limit.hasLow() && limit.hasHigh() ? limit.high() - limit.low() : Math.abs(limit.hasLow() ? limit.low() : limit.high());
        return shortfall() == 0 ? 0 : width == 0 ? Double.MAX_VALUE : shortfall() / width;
    }
}
