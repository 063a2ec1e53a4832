package org.loamlight.evaluation;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
    private final List<Profile> ofAll;
    private final Map<SubjectKind, List<Judged>> judged = new EnumMap<>(SubjectKind.class);

    Pairs(Setup setup, Knowledge knowledge) {
        this.setup = setup;
        this.knowledge = knowledge;
        this.limits = new LimitResolver(setup, knowledge);
        this.ofAll = setup.animals().stream().map(Animal::species).distinct().map(knowledge::profile).toList();
    }

    /**
     * A criterion and one subject.
     *
     * @param limits    its limits in numbers, and what is missing to state others; none where it does not apply
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
            for (Judged subject : judged.computeIfAbsent(criterion.subject(), this::judged)) {
                all.add(listed(criterion, subject));
            }
        }
        return all;
    }

    /**
     * A subject with what every criterion asks of it.
     *
     * @param thing    what conditions about things look at
     * @param profiles of the species it matters to, each once
     * @param untold   whether nobody told whether there is any of its kind; then one nameless subject stands for all of them
     */
    private record Judged(Subject subject, Object thing, List<Profile> profiles, boolean untold) {
    }

    private List<Judged> judged(SubjectKind kind) {
        boolean untold = kind != SubjectKind.ENCLOSURE && setup.told().answer(kind.section()).isEmpty();
        List<Judged> judged = new ArrayList<>();
        for (Subject subject : untold ? List.of(new Subject(kind, "")) : setup.subjects(kind)) {
            judged.add(new Judged(subject, thing(subject), profiles(subject), untold));
        }
        return judged;
    }

    private Object thing(Subject subject) {
        return Condition.thing(subject.name().isEmpty() ? Subject.ENCLOSURE : subject, setup);
    }

    private List<Profile> profiles(Subject subject) {
        if (subject.kind() != SubjectKind.ANIMAL || ofAll.size() == 1) {
            return ofAll;
        }
        return setup.animals().stream().filter(animal -> animal.name().equals(subject.name()))
                .map(Animal::species).distinct().map(knowledge::profile).toList();
    }

    private Listed listed(Criterion criterion, Judged judged) {
        String reason = reason(criterion, judged);
        if (!reason.isEmpty() || judged.untold || isWithoutLimits(criterion)) {
            return new Listed(criterion, judged.subject, Resolution.NONE, reason, judged.untold);
        }
        Resolution resolution = limits.resolve(criterion, judged.subject);
        return new Listed(criterion, judged.subject, resolution, resolution.isEmpty() ? NO_LIMIT : "", false);
    }

    private static boolean isWithoutLimits(Criterion criterion) {
        return criterion.quantities().isEmpty() || criterion.informs();
    }

    /** Why it does not apply, its limits aside; empty when it does. */
    private String reason(Criterion criterion, Judged judged) {
        if (!criterion.purposes().contains(setup.purpose())) {
            return BY_PURPOSE;
        }
        Optional<String> notMeant = notMeant(criterion, judged);
        return notMeant.isPresent() ? notMeant.get() : unmet(criterion, judged);
    }

    /** The reason of the first profile, where no profile means it. */
    private static Optional<String> notMeant(Criterion criterion, Judged judged) {
        for (Profile profile : judged.profiles) {
            if (profile.whyNotMeant(criterion.id()).isEmpty()) {
                return Optional.empty();
            }
        }
        return judged.profiles.get(0).whyNotMeant(criterion.id());
    }

    private static String unmet(Criterion criterion, Judged judged) {
        for (Condition condition : criterion.appliesWhen()) {
            if (!mayHold(condition, judged)) {
                return BY_CONDITION + condition.id();
            }
        }
        return "";
    }

    private static boolean mayHold(Condition condition, Judged judged) {
        for (Profile profile : judged.profiles) {
            if (condition.mayHold(profile.species(), judged.thing)) {
                return true;
            }
        }
        return false;
    }

    /** Whether a pair's own questions are answered; the paths that are not. */
    List<String> unanswered(List<String> patterns, Subject subject) {
        List<String> unanswered = new ArrayList<>();
        for (String pattern : patterns) {
            String path = Told.resolved(pattern, subject);
            if (setup.told().answer(path).isEmpty()) {
                unanswered.add(path);
            }
        }
        return unanswered;
    }
}
