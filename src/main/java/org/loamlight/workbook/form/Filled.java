package org.loamlight.workbook.form;

import java.util.HashMap;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import org.loamlight.setup.Problems;
import org.loamlight.setup.Question;
import org.loamlight.workbook.cells.Cell;

/** Everything that was filled in, by key and by the number of the thing. */
final class Filled {
    private final Map<String, Cell> keys = new HashMap<>();
    private final Map<String, SortedMap<Integer, FilledIn>> answers = new HashMap<>();

    /** Whether the row of a key comes up for the first time; a second one is a problem. */
    boolean isNew(Question question, Cell key, Problems problems) {
        Cell earlier = keys.putIfAbsent(question.path(), key);
        if (earlier != null) {
            problems.add(key.place(question.path()), "this question is asked twice, first in " + earlier.place("").inWords(), "keep one of the two rows");
        }
        return earlier == null;
    }

    void put(Question question, int thing, FilledIn answer) {
        answers.computeIfAbsent(question.path(), missing -> new TreeMap<>()).put(thing, answer);
    }

    /** Whether no sheet had any key. */
    boolean isNoForm() {
        return keys.isEmpty();
    }

    /** Where the row of a key is; empty when the form lacks it. */
    Optional<Cell> key(String path) {
        return Optional.ofNullable(keys.get(path));
    }

    /** The answer about a thing; what is asked once is asked about thing 1. */
    Optional<FilledIn> answer(String path, int thing) {
        return Optional.ofNullable(answers.getOrDefault(path, new TreeMap<>()).get(thing));
    }

    /** Numbers of the things of a list about which anything was answered. */
    NavigableSet<Integer> things(String list, FormPlan plan) {
        NavigableSet<Integer> things = new TreeSet<>();
        plan.about(list).forEach(question -> things.addAll(answers.getOrDefault(question.path(), new TreeMap<>()).keySet()));
        return things;
    }
}
