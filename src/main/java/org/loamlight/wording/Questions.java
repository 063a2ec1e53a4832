package org.loamlight.wording;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.loamlight.setup.SubjectKind;

/** Unanswered questions of a setup in plain words, from their paths: "heaters[basking lamp].guard". */
final class Questions {
    private static final String PREFIX = "path.";
    /** Longest first, so that "lamps[].readings[].index" goes before "lamps[].index". */
    private static final List<Question> KNOWN = Sentences.keys().stream().filter(key -> key.startsWith(PREFIX))
            .map(key -> Question.of(key.substring(PREFIX.length())))
            .sorted(Comparator.comparingInt((Question one) -> one.after.length()).reversed().thenComparing(one -> one.pattern)).toList();

    private Questions() {
    }

    /**
     * A known question, cut at the name of the part it asks about.
     *
     * @param pattern path with {@code []} where the name stands
     * @param before  up to and with the opening bracket; empty when the question names no part
     * @param after   from the closing bracket on
     */
    private record Question(String pattern, String before, String after) {
        static Question of(String pattern) {
            int name = pattern.indexOf("[]");
            return name < 0 ? new Question(pattern, "", pattern) : new Question(pattern, pattern.substring(0, name + 1), pattern.substring(name + 1));
        }

        Optional<String> askedBy(String path) {
            if (before.isEmpty()) {
                return path.equals(pattern) ? Optional.of(Sentences.of(PREFIX + pattern)) : Optional.empty();
            }
            boolean fits = path.length() >= pattern.length() && path.startsWith(before) && path.endsWith(after);
            return fits ? Optional.of(inWords(path.substring(before.length(), path.length() - after.length()))) : Optional.empty();
        }

        private String inWords(String name) {
            String section = before.substring(0, before.length() - 1);
            if (name.isEmpty()) {
                return Sentences.of(PREFIX + pattern, Sentences.of("each." + section));
            }
            return Sentences.of(PREFIX + pattern, section.equals(SubjectKind.ANIMAL.section()) ? name : quoted(name));
        }
    }

    /** A name as it stands in a sentence; animals go without the marks, as people do. */
    static String quoted(String name) {
        return '"' + name + '"';
    }

    /** The question in words; the path itself for one that has no words yet. */
    static String inWords(String path) {
        return KNOWN.stream().map(question -> question.askedBy(path)).flatMap(Optional::stream).findFirst().orElse(path);
    }

    /** Several questions, each once, in their order. */
    static List<String> inWords(List<String> paths) {
        return new ArrayList<>(paths.stream().map(Questions::inWords).distinct().toList());
    }

    /** Whether the path only says in which list something is lacking. */
    static boolean isSection(String path) {
        return path.indexOf('.') < 0 && path.indexOf('[') < 0;
    }
}
