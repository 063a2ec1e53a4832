package org.loamlight.evaluation;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.loamlight.criterion.Criterion;
import org.loamlight.criterion.Limit;
import org.loamlight.quantity.Topic;
import org.loamlight.setup.SubjectKind;

/** Mutants that no setup can tell from their rule, each kind with its reason. */
enum EquivalentMutant {
    /**
     * {@link Closing} counts a link only where the cause was found wrong and the effect is open. A rule that states links and
     * fetches more subjects than the two criteria have links pairs that are no findings, or do not apply, and nothing comes of it.
     * Every subject has several criteria, so fetching it by any other finds it too.
     */
    SUBJECT_OF_A_LINK {
        @Override
        boolean covers(RuleMutant mutant) {
            Matcher fetched = FETCHES.matcher(mutant.pattern());
            return fetched.matches() && mutant.rule().then().contains("new Explains( ")
                    && mutant.rule().then().contains('"' + fetched.group(1) + "\", " + fetched.group(2))
                    && List.of("without criterion == ", "with criterion != ").stream().anyMatch(changed -> mutant.change().contains(changed));
        }
    },
    /**
     * No other criterion of the catalogue has limits on this topic, or none whose subjects are of the kind of part that the rule looks
     * for quantities at.
     */
    ONE_CRITERION_HAS_THE_TOPIC {
        @Override
        boolean covers(RuleMutant mutant) {
            return mutant.change().startsWith("ResolvedLimit without criterion == ")
                    && topic(mutant).map(topic -> limited(Topic.valueOf(topic), kind(mutant)).size() == 1).orElse(false);
        }
    },
    /** A quantity that a limit is meant for has the limit's topic. Naming the topic as well lets quantities go straight to the rule. */
    TOPIC_OF_ITS_LIMIT {
        @Override
        boolean covers(RuleMutant mutant) {
            Matcher meant = MEANT.matcher(mutant.pattern());
            return mutant.change().startsWith("Quantity without topic == ") && meant.find()
                    && topicsOfLimit(mutant, meant.group(2)).equals(Set.of(Topic.valueOf(meant.group(1))));
        }
    };

    private static final Pattern FETCHES = Pattern.compile("Applies\\( criterion == \"([^\"]+)\", (\\$\\w+) : subject \\)");
    private static final Pattern MEANT = Pattern.compile("Quantity\\( topic == Topic\\.(\\w+), (\\$\\w+)\\.isMeantFor\\( this \\) == true");
    private static final Pattern LIMIT = Pattern.compile("(\\$\\w+) : ResolvedLimit\\( criterion == \"([^\"]+)\"(?:, topic == Topic\\.(\\w+))?[, ]");
    private static final Pattern SUBJECT = Pattern.compile("(\\$\\w+) : subject");
    private static final Pattern TOPIC = Pattern.compile("topic == Topic\\.(\\w+)");

    abstract boolean covers(RuleMutant mutant);

    static boolean isAmong(RuleMutant mutant) {
        return Arrays.stream(values()).anyMatch(kind -> kind.covers(mutant));
    }

    /** The topic a pattern names, or the one of the quantities its limit is meant for. */
    private static Optional<String> topic(RuleMutant mutant) {
        Stream<MatchResult> meant = MEANT.matcher(mutant.rule().when()).results().filter(one -> mutant.pattern().startsWith(one.group(2) + " : "));
        return Stream.concat(TOPIC.matcher(mutant.pattern()).results(), meant).map(found -> found.group(1)).findFirst();
    }

    /** The kind of part a rule looks for quantities at, by the subject of the limit; empty where it does not. */
    private static Optional<SubjectKind> kind(RuleMutant mutant) {
        return SUBJECT.matcher(mutant.pattern()).results().filter(found -> mutant.rule().when().contains("place.item == " + found.group(1) + ".key()"))
                .map(found -> BuiltIn.KNOWLEDGE.criteria().get(mutant.rule().criterion()).subject()).findFirst();
    }

    /** What the limits may be about that are bound to a variable: all limits of its criterion, or the topic that is named. */
    private static Set<Topic> topicsOfLimit(RuleMutant mutant, String variable) {
        return LIMIT.matcher(mutant.rule().when()).results().filter(found -> found.group(1).equals(variable))
                .flatMap(found -> found.group(3) != null ? Stream.of(Topic.valueOf(found.group(3)))
                        : Arrays.stream(Topic.values()).filter(topic -> limited(topic, Optional.empty()).contains(found.group(2))))
                .collect(Collectors.toSet());
    }

    /** Criteria that may have limits on a topic, those about one kind of subject where it is given. */
    private static Set<String> limited(Topic topic, Optional<SubjectKind> kind) {
        Stream<String> named = BuiltIn.KNOWLEDGE.criteria().values().stream().filter(one -> one.quantities().contains(topic)).map(Criterion::id);
        Stream<String> used = BuiltIn.KNOWLEDGE.profiles().values().stream().flatMap(profile -> profile.limits().stream())
                .filter(limit -> limit.topic() == topic).map(Limit::criterion);
        return Stream.concat(named, used).filter(id -> kind.map(BuiltIn.KNOWLEDGE.criteria().get(id).subject()::equals).orElse(true))
                .collect(Collectors.toSet());
    }
}
