package org.loamlight.criterion;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What is known of a species.
 *
 * @param also     other names keepers use
 * @param note     what a reader of the profile must know; may be empty
 * @param habits   for each habit of {@link Species} by its key where it stands
 * @param limits   chosen and not chosen, those for every reptile included where the species has none of its own for their topic
 * @param notMeant criteria that do not hold for it
 */
public record Profile(Species species, List<String> also, String note, Map<String, Citation> habits, Limits limits,
        List<NotMeant> notMeant) {

    public Profile(Species species, List<String> also, String note, Map<String, Citation> habits, List<Limit> limits, List<NotMeant> notMeant) {
        this(species, also, note, habits, Limits.of(limits), notMeant);
    }

    /** Every name keepers use for the species, the common one first, then the scientific one. */
    public List<String> names() {
        return names(species.english(), species.latin(), also);
    }

    static List<String> names(String english, String latin, List<String> also) {
        return Stream.concat(Stream.of(english, latin), also.stream()).toList();
    }

    /** The same with further limits. */
    Profile with(List<Limit> further) {
        return new Profile(species, also, note, habits, Stream.concat(limits.stream(), further.stream()).toList(), notMeant);
    }

    /** Published limits of a criterion that are not applied, or other readings of those that are; empty when there are none. */
    public Stream<Limit> notChosen(String criterion) {
        return limits.of(criterion).stream().map(PreparedLimit::limit).filter(limit -> !limit.chosen());
    }

    /** The limits applied for a criterion; empty when there is none. */
    public Stream<Limit> chosen(String criterion) {
        return limits.of(criterion).stream().map(PreparedLimit::limit).filter(Limit::chosen);
    }

    /** Why a criterion does not hold for the species; empty when it does. */
    public Optional<String> whyNotMeant(String criterion) {
        for (NotMeant one : notMeant) {
            if (one.criterion().equals(criterion)) {
                return Optional.of(one.reason());
            }
        }
        return Optional.empty();
    }
}
