package org.loamlight.wording;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.loamlight.criterion.Grade;
import org.loamlight.criterion.HouseRules;
import org.loamlight.criterion.Knowledge;
import org.loamlight.criterion.Waiver;
import org.loamlight.finding.Finding;

/** The rules of a house and waivers in words. */
public final class HouseWording {
    private final Knowledge knowledge;
    private final Wording wording;

    /** @param knowledge with the rules of the house */
    public HouseWording(Knowledge knowledge, Wording wording) {
        this.knowledge = knowledge;
        this.wording = wording;
    }

    /** Who gave leave, until when and why. */
    public String leave(Waiver waiver) {
        return Sentences.of("house.leave", waiver.grantedBy(), waiver.until(), waiver.reason());
    }

    /** That leave has run out, and when. */
    public String ranOut(Waiver waiver) {
        return Sentences.of("house.ran-out", waiver.until(), waiver.grantedBy(), waiver.reason());
    }

    /** That a waiver waived nothing here. */
    public String unused(Waiver waiver) {
        String whom = Stream.of(waiver.setup(), waiver.animal(), waiver.subject()).flatMap(Optional::stream).reduce((one, other) -> one + ", " + other).orElse("");
        return Sentences.of("house.unused", waiver.criterion(), whom, waiver.until());
    }

    /** A warning where a danger is waived; empty where none is. */
    public Optional<String> dangerWaived(List<Finding> waived) {
        return waived.stream().anyMatch(finding -> finding.grade() == Grade.CRITICAL) ? Optional.of(Sentences.of("house.danger-waived")) : Optional.empty();
    }

    /** What the house adds, changes and leaves out, one sentence each, in the order of its file. */
    public List<String> changes(HouseRules house) {
        Stream<String> limits = house.limits().stream().map(one -> Sentences.of("house.limit", title(one.limit().criterion()), wording.limit(one.limit()), whom(one.species().stream()), one.limit().why()));
        Stream<String> points = house.points().stream().map(one -> Sentences.of("house.point", one.title(), wording.limit(one.limit()), whom(one.species().stream()), one.why()));
        Stream<String> grades = house.regraded().stream().map(one -> Sentences.of("house.grade", title(one.criterion()), wording.grade(one.grade()), one.why()));
        Stream<String> left = house.left().stream().map(one -> Sentences.of("house.left-out", title(one.criterion()), one.why()));
        return Stream.of(limits, points, grades, left).flatMap(all -> all).toList();
    }

    /** A warning for each point that guards against danger or harm and that the house sets lower or leaves out. */
    public List<String> loosened(HouseRules house) {
        return house.loosened(knowledge).stream().map(one -> one.after().map(after -> Sentences.of("house.loosened.graded", title(one.criterion()), wording.grade(one.before()), wording.grade(after)))
                .orElseGet(() -> Sentences.of("house.loosened.left-out", title(one.criterion()), wording.grade(one.before())))).toList();
    }

    private String title(String criterion) {
        return knowledge.criterion(criterion).title();
    }

    private String whom(Stream<String> species) {
        String names = species.sorted().map(id -> knowledge.profile(id).species().english()).reduce((one, other) -> one + ", " + other).orElse("");
        return names.isEmpty() ? Sentences.of("house.all-species") : names;
    }
}
