package org.loamlight.criterion;

import java.util.List;
import java.util.Set;

/**
 * The limits of one pair, and what is missing to state the others.
 *
 * @param limits  in numbers; empty when none is meant for these animals or none could be stated
 * @param missing paths of unanswered questions that decide about a limit; empty when all is known
 */
public record Resolution(List<ResolvedLimit> limits, Set<String> missing) {
    /** No limit is meant. */
    public static final Resolution NONE = new Resolution(List.of(), Set.of());

    public Resolution {
        limits = List.copyOf(limits);
        missing = Set.copyOf(missing);
    }

    /** Whether no limit is meant for these animals at all. */
    public boolean isEmpty() {
        return limits.isEmpty() && missing.isEmpty();
    }
}
