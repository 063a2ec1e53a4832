package org.loamlight.ranking;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.loamlight.criterion.Grade;
import org.loamlight.finding.Finding;
import org.loamlight.finding.Result;
import org.loamlight.setup.Words;

/** What was found for one pair, as far as it is remembered from one audit to the next. */
public record Outcome(Result result, Grade grade) {
    private static final String BETWEEN = ", ";

    /** The outcomes by the keys of their pairs, in the order of the keys. */
    public static Map<String, Outcome> of(List<Finding> findings) {
        Map<String, Outcome> outcomes = new TreeMap<>();
        findings.forEach(finding -> outcomes.put(finding.pair().key(), new Outcome(finding.result(), finding.grade())));
        return outcomes;
    }

    /** Whether there is something to do or to find out. */
    public boolean isOpen() {
        return result != Result.CONFORMITY && result != Result.NOT_APPLICABLE;
    }

    /** As it is written down: "nonconformity, major". */
    public String inWords() {
        return Words.of(result) + BETWEEN + Words.of(grade);
    }

    /** Reads what {@link #inWords()} wrote; empty for anything else. */
    public static Optional<Outcome> read(String words) {
        int end = words.indexOf(BETWEEN);
        return end < 0 ? Optional.empty() : Words.find(words.substring(0, end), Result.class)
                .flatMap(result -> Words.find(words.substring(end + BETWEEN.length()), Grade.class).map(grade -> new Outcome(result, grade)));
    }
}
