package org.loamlight.criterion;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.loamlight.setup.Purpose;

/**
 * One thing a code asks for in figures.
 *
 * @param id       key within its code, clause first: "2-2-24-floor"
 * @param clause   where it stands, as the code counts
 * @param asks     what it is about in a few words: "floor area"
 * @param beside   id of the criterion that looks at the same and lends it its page; empty when none does
 * @param reads    questions it looks at; empty when {@code beside} tells them
 * @param species  ids of the species it is for
 * @param purposes purposes of housing it holds for
 * @param grade    grade of not meeting it; never more than MINOR unless its text was read
 * @param source   id of the {@link Source} its limits are cited from
 * @param limits   in figures; those not chosen are other readings, each naming the policy that decides between them
 */
public record CodePoint(String id, String clause, String asks, Optional<String> beside, List<String> reads, Set<String> species,
        Set<Purpose> purposes, Grade grade, DecisionRule decision, Standing standing, String source, List<Limit> limits) {

    /** Whether it is for any of these species. */
    public boolean isFor(Set<String> kept) {
        return kept.stream().anyMatch(species::contains);
    }
}
