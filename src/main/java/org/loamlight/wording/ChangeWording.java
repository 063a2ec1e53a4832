package org.loamlight.wording;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.loamlight.criterion.Criterion;
import org.loamlight.criterion.Knowledge;
import org.loamlight.finding.Pair;
import org.loamlight.ranking.Change;
import org.loamlight.ranking.Outcome;

/** What changed from one audit to the next, in words. */
public final class ChangeWording {
    private final Knowledge knowledge;
    private final Wording wording;

    public ChangeWording(Knowledge knowledge, Wording wording) {
        this.knowledge = knowledge;
        this.wording = wording;
    }

    /** put right, still open, new, got worse ... */
    public String kind(Change.Kind kind) {
        return Wording.ofConstant("change.", kind);
    }

    /**
     * The title of the point; its id where the knowledge has no such point any more.
     *
     * @param key of the pair
     */
    public String what(String key) {
        Optional<Pair> pair = Pair.read(key);
        return pair.map(one -> knowledge.criteria().get(one.criterion())).map(Criterion::title).orElseGet(() -> pair.map(Pair::criterion).orElse(key));
    }

    /** The part a pair is about. */
    public String where(String key) {
        return Pair.read(key).map(pair -> wording.subject(pair.subject())).orElse("");
    }

    /** "not right, harm"; "right". */
    public String outcome(Outcome outcome) {
        String result = wording.result(outcome.result());
        return outcome.isOpen() ? Sentences.of("change.outcome", result, wording.grade(outcome.grade())) : result;
    }

    /** What is said of a point that was marked as done and is still found wrong. */
    public String unproven() {
        return Sentences.of("change.unproven");
    }

    public String unprovenExplained() {
        return Sentences.of("change.unproven.explained");
    }

    /** How many points became what: "2 put right, 1 new, 7 still open"; empty for no change. */
    public String counted(List<Change> changes) {
        Map<Change.Kind, Long> counts = changes.stream().collect(Collectors.groupingBy(Change::kind, TreeMap::new, Collectors.counting()));
        return counts.entrySet().stream().map(count -> count.getValue() + " " + kind(count.getKey())).collect(Collectors.joining(", "));
    }
}
