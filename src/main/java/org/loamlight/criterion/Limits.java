package org.loamlight.criterion;

import java.util.AbstractList;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.RandomAccess;

/** The limits of a profile in their order. Those of one criterion are found without going through all of them. */
public final class Limits extends AbstractList<Limit> implements RandomAccess {
    private final List<Limit> all;
    private final Once<Map<String, List<PreparedLimit>>> byCriterion = Once.by(this::prepared);

    private Limits(List<Limit> all) {
        this.all = List.copyOf(all);
    }

    static Limits of(List<Limit> all) {
        return all instanceof Limits limits ? limits : new Limits(all);
    }

    @Override
    public Limit get(int index) {
        return all.get(index);
    }

    @Override
    public int size() {
        return all.size();
    }

    /** The limits of a criterion, chosen or not, in their order; empty when there is none. */
    List<PreparedLimit> of(String criterion) {
        return byCriterion.get().getOrDefault(criterion, List.of());
    }

    private Map<String, List<PreparedLimit>> prepared() {
        Map<String, List<PreparedLimit>> prepared = new HashMap<>();
        all.forEach(limit -> prepared.computeIfAbsent(limit.criterion(), none -> new ArrayList<>()).add(new PreparedLimit(limit)));
        return prepared;
    }
}
