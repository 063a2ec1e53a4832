package org.loamlight.criterion;

import java.util.Optional;
import org.loamlight.quantity.Place;
import org.loamlight.quantity.Topic;
import org.loamlight.quantity.Zone;
import org.loamlight.setup.Subject;

/**
 * A limit as written in a profile.
 *
 * @param criterion id of the criterion it belongs to
 * @param topic     what is limited
 * @param zone      where; {@link Zone#ITEM} for the thing the criterion is applied to
 * @param where     whether it must be kept everywhere or somewhere
 * @param atLeast   lower end; empty when there is none
 * @param atMost    upper end; empty when there is none
 * @param cap       what the lower end never rises above; empty when there is none
 * @param grade     grade of falling short of it; empty for the criterion's own
 * @param chosen    whether it is applied; otherwise it is shown beside the chosen one
 * @param why       why it was chosen or not; empty when nothing needs saying
 */
public record Limit(String criterion, Topic topic, Zone zone, Where where, Optional<Bound> atLeast, Optional<Bound> atMost, Scope scope,
        Increment increment, Optional<Bound.Constant> cap, Optional<Grade> grade, Citation citation, boolean chosen, String why) {

    /** Where it is asked for when it is held against a subject: its zone, or the subject itself. */
    public Place placeFor(Subject subject) {
        return zone == Zone.ITEM ? Place.at(subject.key()) : Place.of(zone);
    }

    /** A lower end (in the topic's unit) that does not rise above the cap. */
    double capped(double low) {
        return cap.map(most -> Math.min(low, most.in(topic.unit()))).orElse(low);
    }

    /** The same limit of another criterion. */
    Limit of(String other) {
        return new Limit(other, topic, zone, where, atLeast, atMost, scope, increment, cap, grade, citation, chosen, why);
    }
}
