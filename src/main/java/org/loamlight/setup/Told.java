package org.loamlight.setup;

import java.util.Collections;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Which questions the setup answers, and how. Paths name repeated parts by their name: {@code heaters[basking lamp].guard}.
 *
 * @param answers path of every member that was given and is not "not looked", with its answer as written
 */
public record Told(Map<String, String> answers) {
    private static final String PART = "[]";

    public Told {
        // An audit looks up some hundred of them, for which this map takes half the time of one of Map.copyOf.
        answers = Collections.unmodifiableMap(new HashMap<>(answers));
    }

    /**
     * Whether the question is answered.
     *
     * @param pattern path as front matter writes it, with {@code []} for the part the subject is ("heaters[].guard")
     */
    public boolean has(String pattern, Subject subject) {
        return answers.containsKey(resolved(pattern, subject));
    }

    /** The answer as written; empty when the question is not answered. */
    public Optional<String> answer(String path) {
        return Optional.ofNullable(answers.get(path));
    }

    /** Every answer in the order of its path. */
    public Map<String, String> sorted() {
        return new TreeMap<>(answers);
    }

    /** The pattern with the subject's name in its brackets: "heaters[basking lamp].guard". */
    public static String resolved(String pattern, Subject subject) {
        String section = subject.kind().section();
        return pattern.startsWith(section) && pattern.startsWith(PART, section.length())
                ? section + "[" + subject.name() + "]" + pattern.substring(section.length() + PART.length()) : pattern;
    }
}
