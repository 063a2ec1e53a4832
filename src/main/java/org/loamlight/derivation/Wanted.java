package org.loamlight.derivation;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import org.loamlight.quantity.Topic;

/**
 * The ends of what all animals of a setup want, by topic and in the topic's unit, the strictest of all limits: for values that
 * are computed towards a limit, such as the hours until the air is too cold. They judge nothing; only limits do.
 */
public final class Wanted {
    /** Nothing is asked for. */
    public static final Wanted NOTHING = new Builder().build();

    private final Map<Topic, Double> lows;
    private final Map<Topic, Double> highs;
    private final Set<Topic> asked;

    private Wanted(Builder builder) {
        this.asked = EnumSet.copyOf(builder.asked);
        this.lows = new EnumMap<>(builder.lows);
        this.highs = new EnumMap<>(builder.highs);
    }

    /** The highest of all lower ends; empty when none is asked for. */
    public OptionalDouble atLeast(Topic topic) {
        return of(lows, topic);
    }

    /** The lowest of all upper ends; empty when none is asked for. */
    public OptionalDouble atMost(Topic topic) {
        return of(highs, topic);
    }

    /** Whether any limit asks for the topic, of the species or of a code; what nobody asks for need not be computed. */
    public boolean asks(Topic topic) {
        return asked.contains(topic);
    }

    private static OptionalDouble of(Map<Topic, Double> ends, Topic topic) {
        Double end = ends.get(topic);
        return end == null ? OptionalDouble.empty() : OptionalDouble.of(end);
    }

    /** Collects limits, the strictest end of each topic. */
    public static final class Builder {
        private final Map<Topic, Double> lows = new EnumMap<>(Topic.class);
        private final Map<Topic, Double> highs = new EnumMap<>(Topic.class);
        private final Set<Topic> asked = EnumSet.noneOf(Topic.class);

        /** Adds one limit, open ends as infinities. */
        public Builder add(Topic topic, double low, double high) {
            if (low != Double.NEGATIVE_INFINITY) {
                lows.merge(topic, low, Math::max);
            }
            if (high != Double.POSITIVE_INFINITY) {
                highs.merge(topic, high, Math::min);
            }
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
