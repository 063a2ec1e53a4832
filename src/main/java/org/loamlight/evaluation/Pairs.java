package org.loamlight.evaluation;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.loamlight.criterion.Condition;
import org.loamlight.criterion.Criterion;
import org.loamlight.criterion.Knowledge;
import org.loamlight.criterion.LimitResolver;
import org.loamlight.criterion.Profile;
import org.loamlight.criterion.Resolution;
import org.loamlight.finding.Pair;
import org.loamlight.setup.Animal;
import org.loamlight.setup.Setup;
import org.loamlight.setup.Subject;
import org.loamlight.setup.SubjectKind;
import org.loamlight.setup.Told;

/** Lists what has to be judged: every criterion for each of its subjects, with the reason where it does not apply. */
final class Pairs {
    /** Sentence keys of the reasons why a criterion does not apply. */
    static final String BY_PURPOSE = "not-applicable.purpose";
    static final String BY_CONDITION = "not-applicable.condition.";
    static final String NO_LIMIT = "not-applicable.no-limit";

    private final Setup setup;
    private final Knowledge knowledge;
    private final LimitResolver limits;

    Pairs(Setup setup, Knowledge knowledge) {
        this.setup = setup;
        this.knowledge = knowledge;
        this.limits = new LimitResolver(setup, knowledge);
    }

    /**
     * A criterion and one subject.
     *
     * @param limits    its limits in numbers, and what is missing to state others
     * @param notBecause sentence key or sentence why it does not apply; empty when it does
     * @param untold    whether the section its subjects stand in is not told at all
     */
    record Listed(Criterion criterion, Subject subject, Resolution limits, String notBecause, boolean untold) {
        Pair pair() {
            return new Pair(criterion.id(), subject);
        }

        boolean applies() {
            return notBecause.isEmpty() && !untold;
        }
    }

    /** In the order of criterion id and of the file. */
    List<Listed> all() {
        List<Listed> all = new ArrayList<>();
        for (Criterion criterion : knowledge.criteria().values()) {
            subjects(criterion.subject()).forEach(subject -> all.add(listed(criterion, subject)));
        }
        return all;
    }

    /** Where nobody told whether there is any, one nameless subject stands for all of them. */
    private List<Subject> subjects(SubjectKind kind) {
        return isTold(kind) ? setup.subjects(kind) : List.of(new Subject(kind, ""));
    }

    private boolean isTold(SubjectKind kind) {
        return kind == SubjectKind.ENCLOSURE || setup.told().answer(kind.section()).isPresent();
    }

    private Listed listed(Criterion criterion, Subject subject) {
        Resolution resolution = isWithoutLimits(criterion) ? new Resolution(List.of(), Set.of())
                : limits.resolve(criterion, subject);
        boolean untold = !isTold(criterion.subject());
        return new Listed(criterion, subject, resolution, untold ? generalReason(criterion, subject) : reason(criterion, subject, resolution),
                untold);
    }

    private static boolean isWithoutLimits(Criterion criterion) {
        return criterion.quantities().isEmpty() || criterion.informs();
    }

    private String reason(Criterion criterion, Subject subject, Resolution resolution) {
        String general = generalReason(criterion, subject);
        boolean withoutLimit = general.isEmpty() && !isWithoutLimits(criterion) && resolution.isEmpty();
        return withoutLimit ? NO_LIMIT : general;
    }

    private String generalReason(Criterion criterion, Subject subject) {
        if (!criterion.purposes().contains(setup.purpose())) {
            return BY_PURPOSE;
        }
        Optional<String> notMeant = notMeant(criterion, subject);
        return notMeant.orElseGet(() -> criterion.appliesWhen().stream().filter(condition -> !mayHold(condition, subject)).findFirst()
                .map(condition -> BY_CONDITION + condition.name().toLowerCase(Locale.ROOT).replace('_', '-')).orElse(""));
    }

    private Optional<String> notMeant(Criterion criterion, Subject subject) {
        List<Optional<String>> reasons = profiles(subject).stream().map(profile -> profile.whyNotMeant(criterion.id())).toList();
        return reasons.stream().allMatch(Optional::isPresent) ? reasons.get(0) : Optional.empty();
    }

    private boolean mayHold(Condition condition, Subject subject) {
        if (subject.kind() != SubjectKind.ENCLOSURE && subject.name().isEmpty()) {
            return profiles(subject).stream().anyMatch(profile -> condition.mayHold(profile.species(), Subject.ENCLOSURE, setup));
        }
        return profiles(subject).stream().anyMatch(profile -> condition.mayHold(profile.species(), subject, setup));
    }

    private List<Profile> profiles(Subject subject) {
        return setup.animals().stream()
                .filter(animal -> subject.kind() != SubjectKind.ANIMAL || animal.name().equals(subject.name()))
                .map(Animal::species).distinct().map(knowledge::profile).toList();
    }

    /** Whether a pair's own questions are answered; the paths that are not. */
    List<String> unanswered(List<String> patterns, Subject subject) {
        return patterns.stream().filter(pattern -> !setup.told().has(pattern, subject))
                .map(pattern -> Told.resolved(pattern, subject)).toList();
    }
}
