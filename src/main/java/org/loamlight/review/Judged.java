package org.loamlight.review;

import java.time.LocalDate;
import java.util.List;
import org.loamlight.ranking.Conclusion;

/**
 * What the audit of one setup came to.
 *
 * @param on         day of the audit
 * @param dayTaken   whether the setup names no day, so that the day of the review was taken
 * @param title      as the setup says; may be empty
 * @param livesHere  whether one of the animals lives there already
 * @param conclusion in one word
 * @param inWords    the conclusion as it is printed
 * @param points     every finding: to do, to find out, waived, right, not applicable, in the order of their rank
 */
public record Judged(LocalDate on, boolean dayTaken, String title, List<Kept> animals, boolean livesHere, Conclusion conclusion, String inWords,
        List<Point> points) {
    public Judged {
        animals = List.copyOf(animals);
        points = List.copyOf(points);
    }
}
