package org.loamlight.criterion;

import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * Everything that was compiled from rules/. Maps may read a value when it is first asked for; to whoever asks they do not change.
 *
 * @param version    version of the tool it was built with
 * @param sha256     SHA-256 of the knowledge file, lower-case hexadecimal
 * @param criteria   by id, in the order of their ids
 * @param profiles   by species id, in the order of their ids
 * @param sources    by id
 * @param limitRules names of the shared limit rules
 * @param speciesNames for each species id the names keepers use, the common one first
 * @param codes      codes that were chosen beside the needs of the species; empty for none
 * @param house      rules of a house; empty for none
 */
public record Knowledge(String version, String sha256, Map<String, Criterion> criteria, Map<String, Profile> profiles,
        Map<String, Source> sources, List<Caution> cautions, List<String> limitRules,
        Map<String, List<String>> speciesNames, List<Code> codes, Optional<HouseRules> house) {

    /** Knowledge whose species are called as their profiles say. */
    public Knowledge(String version, String sha256, Map<String, Criterion> criteria, Map<String, Profile> profiles,
            Map<String, Source> sources, List<Caution> cautions, List<String> limitRules) {
        this(version, sha256, criteria, profiles, sources, cautions, limitRules, names(profiles), List.of(), Optional.empty());
    }

    /**
     * The same with what codes ask of those who keep these species. Nothing of the species' own needs is changed.
     *
     * @param species ids of the species that are kept; what codes ask for others is left out
     */
    public Knowledge withCodes(List<Code> chosen, Set<String> species) {
        return chosen.isEmpty() ? this : new CodeCriteria(this, species).with(chosen);
    }

    /** The same with the rules of a house beside the needs of the species; codes are added after them. */
    public Knowledge withHouse(HouseRules rules) {
        return new HouseCriteria(this).with(rules);
    }

    private static Map<String, List<String>> names(Map<String, Profile> profiles) {
        Map<String, List<String>> names = new TreeMap<>();
        profiles.forEach((id, profile) -> names.put(id, profile.names()));
        return names;
    }

    /** The criterion of an id that is known to exist. */
    public Criterion criterion(String id) {
        return Optional.ofNullable(criteria.get(id)).orElseThrow(() -> new NoSuchElementException("There is no criterion " + id));
    }

    /** The profile of a species that is known to exist. */
    public Profile profile(String species) {
        return Optional.ofNullable(profiles.get(species)).orElseThrow(() -> new NoSuchElementException("There is no species " + species));
    }

    /** The source of an id that is known to exist. */
    public Source source(String id) {
        return Optional.ofNullable(sources.get(id)).orElseThrow(() -> new NoSuchElementException("There is no source " + id));
    }
}
