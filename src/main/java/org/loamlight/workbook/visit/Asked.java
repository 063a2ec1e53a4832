package org.loamlight.workbook.visit;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.loamlight.criterion.ResolvedLimit;
import org.loamlight.criterion.Where;
import org.loamlight.finding.Finding;
import org.loamlight.finding.Held;
import org.loamlight.quantity.Place;
import org.loamlight.quantity.Topic;
import org.loamlight.quantity.Zone;
import org.loamlight.setup.Subject;
import org.loamlight.setup.SubjectKind;
import org.loamlight.setup.Told;
import org.loamlight.wording.Wording;

/** What is asked of an answer: the limits its value is held against, or the points that rest on few answers and this one among them. */
final class Asked {
    /** A line more is not read beside an empty cell. Judgement. */
    private static final int MOST_LINES = 3;
    /** A point that rests on more answers says little about each of them. Judgement. */
    private static final int MOST_ANSWERS = 6;

    private final WalkPlan plan;
    private final Wording wording;

    Asked(WalkPlan plan, Wording wording) {
        this.plan = plan;
        this.wording = wording;
    }

    /** Of the answer at a path. */
    List<String> ofPath(String path, List<Finding> hanging) {
        return lines(hanging.stream().flatMap(finding -> finding.criterion().quantities().isEmpty() ? byRule(finding) : byLimit(finding, path)));
    }

    private static Stream<String> byRule(Finding finding) {
        return finding.criterion().reads().size() <= MOST_ANSWERS ? Stream.of(finding.criterion().title()) : Stream.empty();
    }

    private Stream<String> byLimit(Finding finding, String path) {
        Stream<ResolvedLimit> held = finding.held().stream().filter(one -> answerOf(one).equals(Optional.of(path))).map(Held::limit);
        Stream<ResolvedLimit> wanted = finding.wanted().stream().filter(limit -> answerOf(limit.topic(), finding.subject()).equals(Optional.of(path)));
        return Stream.concat(held, wanted).map(wording::limit);
    }

    private Optional<String> answerOf(Held held) {
        return answerOf(held.quantity().topic(), subject(held.quantity().place()).orElse(held.subject()));
    }

    private Optional<String> answerOf(Topic topic, Subject subject) {
        return plan.answerOf(topic).map(pattern -> Told.resolved(pattern, subject));
    }

    /** The part a place is; empty for a zone. */
    private static Optional<Subject> subject(Place place) {
        int colon = place.item().indexOf(':');
        return place.zone() != Zone.ITEM || colon < 0 ? Optional.empty() : Stream.of(SubjectKind.values())
                .filter(kind -> kind.id().equals(place.item().substring(0, colon))).findFirst().map(kind -> new Subject(kind, place.item().substring(colon + 1)));
    }

    /** @param reading the key of a reading that was taken */
    List<String> ofReading(String reading, List<Finding> hanging) {
        return lines(hanging.stream().flatMap(finding -> finding.held().stream()).filter(held -> held.quantity().source().equals(reading))
                .filter(held -> held.quantity().topic() != Topic.READING_AGE).map(Held::limit).filter(limit -> !isElsewhereToo(limit)).map(wording::limit));
    }

    /** Whether it need be kept at one place of the enclosure only, which this need not be. */
    private static boolean isElsewhereToo(ResolvedLimit limit) {
        return limit.where() == Where.SOMEWHERE && limit.place().zone() == Zone.ENCLOSURE;
    }

    /** Of a reading nobody took yet. */
    List<String> ofNew(NewReading reading, List<Finding> hanging) {
        return lines(hanging.stream().flatMap(finding -> finding.wanted().stream())
                .filter(limit -> NewReading.wantedFor(limit).equals(Optional.of(reading))).map(wording::limit));
    }

    private static List<String> lines(Stream<String> words) {
        return words.filter(line -> !line.isEmpty()).distinct().limit(MOST_LINES).toList();
    }
}
