package org.loamlight.quantity;

import java.util.List;
import java.util.Objects;

/**
 * A value that limits can be held against.
 *
 * @param topic       what it is about; fixes the unit
 * @param place       where it holds
 * @param value       in {@code topic.unit()}, finite
 * @param uncertainty standard uncertainty in the same unit (k = 1), zero or more; zero only for counts and exact statements
 * @param origin      what it rests on
 * @param trail       how it came about, in order; empty for a value taken over as read
 */
public record Quantity(Topic topic, Place place, double value, double uncertainty, Origin origin, List<Step> trail) {
    public Quantity {
        Objects.requireNonNull(topic, "topic");
        Objects.requireNonNull(place, "place");
        Objects.requireNonNull(origin, "origin");
        trail = List.copyOf(trail);
        if (!Double.isFinite(value) || !(uncertainty >= 0) || Double.isInfinite(uncertainty)) {
            throw new IllegalArgumentException(
                    "A quantity is finite, its uncertainty too and not negative; got " + topic + " " + value + " ± " + uncertainty);
        }
    }

    /**
     * Whether its doubt swallows it: its standard uncertainty is as large as itself, so that one time in six there is none of it at all,
     * or the uncertainty cannot be right. Never where it is certain, nor for temperatures, whose zero is not nothing.
     */
    public boolean isSwallowed() {
        return topic.unit().dimension() != Dimension.TEMPERATURE && uncertainty > 0 && value <= uncertainty;
    }

    /** Whether there is none of it: the question rules ask of counts. */
    public boolean isZero() {
        return value == 0;
    }

    /** Subject key of what it rests on. */
    public String source() {
        return origin.source();
    }

    /** Of what tells quantities apart as a rule: while rules are judged it is asked for many times, and a trail is long. */
    @Override
    public int hashCode() {
        return 31 * (31 * topic.hashCode() + place.hashCode()) + Double.hashCode(value);
    }

    public Amount amount() {
        return new Amount(value, topic.unit());
    }
}
