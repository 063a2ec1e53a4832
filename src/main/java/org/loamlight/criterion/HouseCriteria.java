package org.loamlight.criterion;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Puts the rules of a house beside what the species need. */
final class HouseCriteria {
    private final Knowledge plain;

    HouseCriteria(Knowledge plain) {
        this.plain = plain;
    }

    Knowledge with(HouseRules house) {
        Map<String, Criterion> criteria = new TreeMap<>(plain.criteria());
        house.regraded().forEach(one -> criteria.computeIfPresent(one.criterion(), (id, criterion) -> criterion.graded(one.grade())));
        house.points().forEach(point -> criteria.put(point.criterion(), house.criterion(point, beside(point.limit()), plain.version())));
        Map<String, Once<Profile>> profiles = new TreeMap<>();
        plain.profiles().keySet().forEach(id -> profiles.put(id, Once.by(() -> profile(plain.profile(id), house))));
        Map<String, Once<Source>> sources = new TreeMap<>();
        plain.sources().keySet().forEach(id -> sources.put(id, Once.by(() -> plain.source(id))));
        sources.put(HouseRules.SOURCE, Once.of(house.source()));
        return new Knowledge(plain.version(), plain.sha256(), criteria, new OnDemand<>(Once.of(profiles)), new OnDemand<>(Once.of(sources)), plain.cautions(),
                plain.limitRules(), plain.speciesNames(), plain.codes(), Optional.of(house));
    }

    /** The criterion that looks at the same topic, one of the whole enclosure before others. */
    private Criterion beside(Limit limit) {
        List<Criterion> all = plain.criteria().values().stream().filter(one -> !one.isOfCode() && one.quantities().contains(limit.topic())).toList();
        return all.stream().filter(Criterion::isLimit).findFirst().orElse(all.get(0));
    }

    private static Profile profile(Profile profile, HouseRules house) {
        List<NotMeant> left = house.left().stream().map(one -> new NotMeant(one.criterion(), "Left out by the rules of the house: " + one.why())).toList();
        Profile with = profile.with(house.limitsFor(profile.species().id()));
        return left.isEmpty() ? with : new Profile(with.species(), with.also(), with.note(), with.habits(), with.limits(),
                Stream.concat(left.stream(), with.notMeant().stream()).toList());
    }
}
