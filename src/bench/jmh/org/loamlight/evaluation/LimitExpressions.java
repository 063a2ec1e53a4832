package org.loamlight.evaluation;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.apache.commons.jexl3.JexlBuilder;
import org.apache.commons.jexl3.JexlContext;
import org.apache.commons.jexl3.JexlEngine;
import org.apache.commons.jexl3.JexlExpression;
import org.loamlight.criterion.DecisionRule;
import org.loamlight.criterion.ResolvedLimit;
import org.loamlight.finding.Decision;
import org.loamlight.finding.Held;
import org.loamlight.physics.Conformance;
import org.loamlight.quantity.Method;
import org.loamlight.quantity.Quantity;

/**
 * Each limit as an expression of a general expression engine, its ends written into it: {@code value >= 19.98 && value <= 32.03 ? 'INSIDE' : 'OUTSIDE'}. Every
 * different one is compiled once and kept. The probability is arithmetic, which is the same Java for every way.
 */
final class LimitExpressions {
    private static final String ESTIMATE = "estimated ? (probability <= 0.05 ? 'OUTSIDE' : 'UNDECIDED') : ";
    private static final String GUARDED = "probability <= 0.05 ? 'OUTSIDE' : probability >= 0.95 && !modelled ? 'INSIDE' : 'UNDECIDED'";

    private final JexlEngine engine = new JexlBuilder().strict(true).silent(false).create();
    private final Map<Ends, JexlExpression> compiled = new ConcurrentHashMap<>();

    /** All that one expression differs from another by. */
    private record Ends(DecisionRule decision, double low, double high) {
        String expression() {
            return switch (decision) {
                case SHOWN -> "'UNDECIDED'";
                case GUARDED -> ESTIMATE + "(" + GUARDED + ")";
                case SIMPLE -> ESTIMATE + "(swallowed && uncertainty >= " + (hasHigh() ? high : low) + " ? 'UNDECIDED' : " + inside() + " ? 'INSIDE' : 'OUTSIDE')";
            };
        }

        private String inside() {
            String above = "value >= " + (low - Conformance.LIMIT_TOLERANCE * StrictMath.abs(low));
            String below = "value <= " + (high + Conformance.LIMIT_TOLERANCE * StrictMath.abs(high));
            return !hasHigh() ? above : low == Double.NEGATIVE_INFINITY ? below : above + " && " + below;
        }

        private boolean hasHigh() {
            return high != Double.POSITIVE_INFINITY;
        }
    }

    /** What an expression may ask of a value. */
    private record Known(Quantity quantity, double probability) implements JexlContext {
        @Override
        public Object get(String name) {
            Method method = quantity.origin().method();
            return switch (name) {
                case "value" -> quantity.value();
                case "uncertainty" -> quantity.uncertainty();
                case "probability" -> probability;
                case "estimated" -> method == Method.ESTIMATED;
                case "modelled" -> method == Method.MODELLED;
                case "swallowed" -> quantity.isSwallowed() && (method == Method.MODELLED || method == Method.COMPUTED);
                default -> null;
            };
        }

        @Override
        public boolean has(String name) {
            return get(name) != null;
        }

        @Override
        public void set(String name, Object value) {
            throw new UnsupportedOperationException("An expression decides; it changes nothing: " + name);
        }
    }

    /** Decides as {@link Held#of} does. */
    Held held(Quantity quantity, ResolvedLimit limit) {
        double uncertainty = Conformance.combine(quantity.uncertainty(), limit.uncertainty());
        double probability = Conformance.probability(quantity.value(), uncertainty, limit.low(), limit.high());
        Ends ends = new Ends(limit.decision(), limit.low(), limit.high());
        Object decision = compiled.computeIfAbsent(ends, one -> engine.createExpression(one.expression())).evaluate(new Known(quantity, probability));
        return new Held(limit.criterion(), limit.subject(), quantity, limit, Decision.valueOf((String) decision), probability);
    }
}
