package org.loamlight.criterion;

import java.util.Objects;
import org.loamlight.quantity.Place;
import org.loamlight.quantity.Quantity;
import org.loamlight.quantity.Topic;
import org.loamlight.setup.Subject;

/**
 * A limit in numbers, for one pair of criterion and subject.
 *
 * @param use         who holds quantities against it
 * @param low         lower end in the topic's unit; negative infinity when open
 * @param high        upper end in the topic's unit; infinity when open
 * @param uncertainty standard uncertainty of the ends, from the body measure they are a factor of; 0 for constants
 * @param grade       grade of falling short of it
 * @param animal      name of the animal it was resolved for
 */
public record ResolvedLimit(String criterion, Subject subject, Topic topic, Place place, Where where, LimitUse use, double low, double high,
        double uncertainty, DecisionRule decision, Grade grade, Citation citation, String animal) {

    public ResolvedLimit {
        Objects.requireNonNull(place, "place");
        if (!(low <= high) || Double.isNaN(uncertainty)) {
            throw new IllegalArgumentException("The limit of " + criterion + " runs from " + low + " to " + high);
        }
    }

    /** Of what tells limits apart as a rule: while rules are judged it is asked for many times. */
    @Override
    public int hashCode() {
        return 31 * (31 * (31 * criterion.hashCode() + topic.hashCode()) + Double.hashCode(low)) + Double.hashCode(high);
    }

    public boolean hasLow() {
        return low != Double.NEGATIVE_INFINITY;
    }

    public boolean hasHigh() {
        return high != Double.POSITIVE_INFINITY;
    }

    /** Whether it asks this of a quantity: of its topic, at its place. */
    public boolean isMeantFor(Quantity quantity) {
        return quantity.topic() == topic && quantity.place().isWithin(place);
    }
}
