package org.loamlight.review;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * By what a setup is known again at the next review.
 *
 * @param title   may be empty
 * @param animals names and species, sorted
 * @param file    name of its file without folders, with its line
 */
record Identity(String title, List<String> animals, String file) {
    /** Ways to know a setup again, the surest first; each counts only where it is said and fits one setup on either side. */
    static final List<Function<Identity, Optional<String>>> WAYS = List.of(
            one -> said(one.title.isBlank() || one.animals.isEmpty() ? "" : one.title + "\n" + one.animals),
            one -> said(one.animals.isEmpty() ? "" : one.animals.toString()), one -> said(one.title), one -> said(one.file));

    private static Optional<String> said(String text) {
        return Optional.of(text).filter(found -> !found.isBlank());
    }

    /** @param key what stood there where names were taken out; empty where they stand */
    static Identity of(Reviewed reviewed, Optional<NameKey> key) {
        Map<String, String> names = key.map(NameKey::names).orElse(Map.of());
        List<String> animals = reviewed.judged().map(Judged::animals).orElse(List.of()).stream()
                .map(animal -> names.getOrDefault(animal.name(), animal.name()) + " (" + animal.species() + ")").sorted().toList();
        String title = reviewed.judged().map(Judged::title).orElse("");
        String file = key.map(NameKey::file).orElse(reviewed.name());
        return new Identity(names.getOrDefault(title, title), animals, file.substring(Math.max(file.lastIndexOf('/'), file.lastIndexOf('\\')) + 1));
    }
}
