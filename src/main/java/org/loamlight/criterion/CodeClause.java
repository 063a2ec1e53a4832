package org.loamlight.criterion;

import java.util.List;
import java.util.Set;

/**
 * One thing a code asks for in words, or in figures nothing here can be held against.
 *
 * @param id       key within its code, clause first
 * @param clause   where it stands, as the code counts
 * @param says     what it asks, in our own words
 * @param species  ids of the species it is for; empty for all
 * @param judgedBy ids of the criteria that judge it already; empty when nobody can judge it from a description
 */
public record CodeClause(String id, String clause, String says, Set<String> species, List<String> judgedBy, Standing standing) {

    /** Whether it is for any of these species. */
    public boolean isFor(Set<String> kept) {
        return species.isEmpty() || kept.stream().anyMatch(species::contains);
    }
}
