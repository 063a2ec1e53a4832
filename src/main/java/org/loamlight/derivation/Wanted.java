package org.loamlight.derivation;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.OptionalDouble;
import java.util.Set;
import org.loamlight.quantity.Topic;

/**
 * The ends of what all animals of a setup want, by topic and in the topic's unit, the strictest of all limits: for values that
 * are computed towards a limit, such as the hours until the air is too cold. They judge nothing; only limits do.
 */
public final class Wanted {
    private static final int TOPICS = Topic.values().length;

    /** Nothing is asked for. */
    public static final Wanted NOTHING = new Builder().build();

    /** By the place of the topic in {@link Topic}; infinite where nothing is asked for. */
    private final double[] lows;
    private final double[] highs;
    private final Set<Topic> asked;

    private Wanted(Builder builder) {
        this.asked = EnumSet.copyOf(builder.asked);
        this.lows = builder.lows.clone();
        this.highs = builder.highs.clone();
    }

    /** The highest of all lower ends; empty when none is asked for. */
    public OptionalDouble atLeast(Topic topic) {
        return of(lows[topic.ordinal()]);
    }

    /** The lowest of all upper ends; empty when none is asked for. */
    public OptionalDouble atMost(Topic topic) {
        return of(highs[topic.ordinal()]);
    }

    /** Whether any limit asks for the topic, of the species or of a code; what nobody asks for need not be computed. */
    public boolean asks(Topic topic) {
        return asked.contains(topic);
    }

    private static OptionalDouble of(double end) {
        return Double.isInfinite(end) ? OptionalDouble.empty() : OptionalDouble.of(end);
    }

    /** Collects limits, the strictest end of each topic. */
    public static final class Builder {
        private final double[] lows = new double[TOPICS];
        private final double[] highs = new double[TOPICS];
        private final Set<Topic> asked = EnumSet.noneOf(Topic.class);

        public Builder() {
            Arrays.fill(lows, Double.NEGATIVE_INFINITY);
            Arrays.fill(highs, Double.POSITIVE_INFINITY);
        }

        /** Adds one limit, open ends as infinities. */
        public Builder add(Topic topic, double low, double high) {
            lows[topic.ordinal()] = Math.max(lows[topic.ordinal()], low);
            highs[topic.ordinal()] = Math.min(highs[topic.ordinal()], high);
            return ask(topic);
        }

        /** Notes that somebody asks for the topic, whatever the amount. */
        public Builder ask(Topic topic) {
            asked.add(topic);
            return this;
        }

        public Wanted build() {
            return new Wanted(this);
        }
    }
}
