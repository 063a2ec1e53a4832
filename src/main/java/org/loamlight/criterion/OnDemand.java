package org.loamlight.criterion;

import java.util.AbstractMap;
import java.util.AbstractSet;
import java.util.Collections;
import java.util.Iterator;
import java.util.Map;
import java.util.Set;

/** A map that cannot be changed and reads each value when it is first asked for. Going through its values reads them all. */
final class OnDemand<V> extends AbstractMap<String, V> {
    private final Once<Map<String, Once<V>>> values;

    /** @param values by key, in the order of the keys; they themselves may be found out on demand */
    OnDemand(Once<Map<String, Once<V>>> values) {
        this.values = values;
    }

    @Override
    public V get(Object key) {
        Once<V> value = values.get().get(key);
        return value == null ? null : value.get();
    }

    @Override
    public boolean containsKey(Object key) {
        return values.get().containsKey(key);
    }

    @Override
    public int size() {
        return values.get().size();
    }

    @Override
    public Set<String> keySet() {
        return Collections.unmodifiableSet(values.get().keySet());
    }

    @Override
    public Set<Entry<String, V>> entrySet() {
        return new AbstractSet<>() {
            @Override
            public Iterator<Entry<String, V>> iterator() {
                return values.get().entrySet().stream().map(one -> Map.entry(one.getKey(), one.getValue().get())).iterator();
            }

            @Override
            public int size() {
                return OnDemand.this.size();
            }
        };
    }
}
