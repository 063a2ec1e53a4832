package org.loamlight.setup;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The species that can be audited, by id, with the other names keepers use; may be without any. */
final class KnownSpecies {
    private static final int MOST_SUGGESTED = 3;

    private final Map<String, List<String>> names = new TreeMap<>();

    KnownSpecies(Map<String, ? extends Collection<String>> names) {
        names.forEach((id, others) -> this.names.put(id, List.copyOf(others)));
    }

    boolean has(String id) {
        return names.containsKey(id);
    }

    /** Every id, each with its first other name: "pantherophis-guttatus (corn snake)". */
    String all() {
        return shown(names.keySet());
    }

    /** The way out for an id that is not known: the id of that name, or the nearest ids, or all. */
    String hint(String found) {
        List<String> meant = names.keySet().stream().filter(id -> isNameOf(id, found)).toList();
        if (!meant.isEmpty()) {
            return "write its id, " + shown(meant);
        }
        List<String> near = Words.nearest(found, names.keySet().stream().flatMap(this::namesOf).toList(), MOST_SUGGESTED).stream()
                .flatMap(name -> names.keySet().stream().filter(id -> isNameOf(id, name))).distinct().toList();
        return near.isEmpty() ? "known are " + all() : "nearest known: " + shown(near);
    }

    private boolean isNameOf(String id, String found) {
        return namesOf(id).map(KnownSpecies::plain).anyMatch(plain(found)::equals);
    }

    private Stream<String> namesOf(String id) {
        return Stream.concat(Stream.of(id), names.get(id).stream());
    }

    private static String plain(String name) {
        return name.strip().toLowerCase(Locale.ROOT).replace(' ', '-').replace('_', '-');
    }

    private String shown(Collection<String> ids) {
        return ids.stream().map(id -> names.get(id).isEmpty() ? id : id + " (" + names.get(id).get(0) + ")").collect(Collectors.joining(", "));
    }
}
