package org.loamlight.drawing;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.loamlight.finding.Finding;
import org.loamlight.finding.Held;
import org.loamlight.finding.Pair;
import org.loamlight.quantity.Quantity;
import org.loamlight.quantity.Topic;
import org.loamlight.ranking.Ranking;
import org.loamlight.setup.Subject;

/** Under which number each open finding stands. */
public final class Numbers {
    private final Ranking ranking;
    private final Map<Pair, Integer> numbers = new HashMap<>();

    private Numbers(Ranking ranking, int before) {
        this.ranking = ranking;
        ranking.toDo().forEach(finding -> numbers.put(finding.pair(), numbers.size() + 1));
        ranking.toFindOut().forEach(finding -> numbers.put(finding.pair(), numbers.size() + 1 - before));
    }

    /** As the report counts: what is to be found out goes on where what is to be done ends. */
    public static Numbers ofReport(Ranking ranking) {
        return new Numbers(ranking, 0);
    }

    /** As the workbook counts: each of its sheets begins with 1. */
    public static Numbers ofWorkbook(Ranking ranking) {
        return new Numbers(ranking, ranking.toDo().size());
    }

    List<Integer> toDo(Subject subject) {
        return numbers(ranking.toDo(), finding -> isAbout(finding, subject));
    }

    List<Integer> toFindOut(Subject subject) {
        return numbers(ranking.toFindOut(), finding -> isAbout(finding, subject));
    }

    /** " !3 ?12": the numbers of findings about a size of the enclosure; empty without any. */
    String about(Topic topic) {
        Predicate<Finding> about = finding -> finding.deciding().map(Held::quantity).filter(one -> one.topic() == topic).isPresent()
                || finding.held().isEmpty() && finding.wanted().stream().anyMatch(limit -> limit.topic() == topic);
        return Part.marked(numbers(ranking.toDo(), about), numbers(ranking.toFindOut(), about));
    }

    private List<Integer> numbers(List<Finding> findings, Predicate<Finding> wanted) {
        return findings.stream().filter(wanted).map(finding -> numbers.get(finding.pair())).sorted().toList();
    }

    /** About the part itself, or about a value that was read with it or holds at it. */
    private static boolean isAbout(Finding finding, Subject subject) {
        return finding.subject().equals(subject) || finding.deciding().map(Held::quantity).filter(value -> isOf(value, subject)).isPresent();
    }

    private static boolean isOf(Quantity value, Subject subject) {
        return value.source().equals(subject.key()) || value.place().item().equals(subject.key());
    }
}
