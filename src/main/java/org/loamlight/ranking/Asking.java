package org.loamlight.ranking;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.loamlight.criterion.DecisionRule;
import org.loamlight.criterion.ResolvedLimit;
import org.loamlight.finding.Finding;
import org.loamlight.finding.Held;
import org.loamlight.finding.Result;

/** Which open questions have to be asked, so that ten codes that lack one answer do not ask for it ten times. */
final class Asking {
    private Asking() {
    }

    /**
     * Everything that is unknown of the needs of the species, and what codes lack beyond that, each once. A figure of a code that is
     * only shown asks nothing: no answer could decide it.
     * <p>An answer that is asked for already, or a value of the same topic wherever it is to be read, is not asked for again.
     *
     * @param toFindOut no evidence and undecided, in the order of the ranking, which is kept
     */
    static List<Finding> once(List<Finding> toFindOut) {
        Set<String> asked = toFindOut.stream().filter(finding -> !finding.criterion().isOfCode()).flatMap(Asking::questions)
                .collect(Collectors.toCollection(HashSet::new));
        List<Finding> once = new ArrayList<>();
        for (Finding finding : toFindOut) {
            if (!finding.criterion().isOfCode() || !isOnlyShown(finding) && asked.addAll(questions(finding).toList())) {
                once.add(finding);
            }
        }
        return once;
    }

    private static boolean isOnlyShown(Finding finding) {
        return finding.result() == Result.UNDECIDED && finding.criterion().decision() == DecisionRule.SHOWN;
    }

    /** The answers it lacks; where only a list lacks a value, or a value is too close to tell, what is to be read. */
    private static Stream<String> questions(Finding finding) {
        List<String> answers = finding.missing().stream().filter(path -> !isSection(path)).toList();
        Stream<ResolvedLimit> values = Stream.concat(finding.wanted().stream(), finding.deciding().map(Held::limit).stream());
        Stream<String> read = values.map(limit -> limit.topic().id());
        return !finding.criterion().isOfCode() ? Stream.concat(answers.stream(), read) : answers.isEmpty() ? read : answers.stream();
    }

    /** A section as a whole: a list that lacks an entry. */
    private static boolean isSection(String path) {
        return path.indexOf('.') < 0 && path.indexOf('[') < 0;
    }
}
