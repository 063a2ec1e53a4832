package org.loamlight.review;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.loamlight.criterion.Knowledge;
import org.loamlight.criterion.Waiver;
import org.loamlight.evaluation.Audit;
import org.loamlight.finding.Finding;
import org.loamlight.finding.Pair;
import org.loamlight.finding.Result;
import org.loamlight.ranking.Ranking;
import org.loamlight.setup.Animal;
import org.loamlight.wording.Units;
import org.loamlight.wording.Wording;

/** Puts the findings of an audit into the words a line of results holds. */
final class PointsInWords {
    private final Knowledge knowledge;
    private final Wording wording;

    PointsInWords(Knowledge knowledge, Units units) {
        this.knowledge = knowledge;
        this.wording = new Wording(units, knowledge);
    }

    /** @param dayTaken whether the setup names no day */
    Judged judged(Audit audit, boolean dayTaken) {
        Ranking ranking = Ranking.of(audit.findings(), audit.waived().inForce().keySet());
        return new Judged(audit.on(), dayTaken, audit.setup().title(), audit.setup().animals().stream().map(this::kept).toList(), wording.livesHere(audit),
                ranking.conclusion(), wording.conclusion(ranking, audit), points(audit, ranking));
    }

    private Kept kept(Animal animal) {
        return new Kept(animal.name(), animal.species(), knowledge.profile(animal.species()).species().english());
    }

    private List<Point> points(Audit audit, Ranking ranking) {
        Set<Pair> told = new HashSet<>();
        Stream.of(ranking.toDo(), ranking.toAsk(), ranking.waived()).flatMap(List::stream).forEach(finding -> told.add(finding.pair()));
        List<Point> points = new ArrayList<>();
        Stream.of(ranking.toDo(), ranking.toFindOut(), ranking.waived(), ranking.right(), ranking.notApplicable()).flatMap(List::stream)
                .forEach(finding -> points.add(point(finding, told.contains(finding.pair()) ? Optional.of(words(finding, audit)) : Optional.empty())));
        return points;
    }

    private static Point point(Finding finding, Optional<PointWords> words) {
        return new Point(finding.criterion().id(), finding.subject().key(), finding.result(), finding.grade(), finding.criterion().need(), words);
    }

    private PointWords words(Finding finding, Audit audit) {
        boolean isToDo = finding.result() == Result.NONCONFORMITY;
        Optional<LocalDate> leave = Optional.ofNullable(audit.waived().inForce().get(finding.pair())).map(Waiver::until);
        return new PointWords(finding.criterion().title(), wording.subject(finding.subject()),
                finding.result() == Result.NO_EVIDENCE ? wording.whatToFindOut(finding) : wording.found(finding),
                wording.required(finding), wording.difference(finding), isToDo ? wording.correction(finding) : measure(finding), wording.dueBy(finding, audit),
                wording.dueDay(finding, audit), finding.citations().stream().distinct().toList(), leave);
    }

    private String measure(Finding finding) {
        String how = wording.howToMeasure(finding);
        return "With: " + wording.instrument(finding) + "." + (how.isEmpty() ? "" : " " + how);
    }
}
