package org.loamlight.evaluation;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.loamlight.criterion.Criterion;
import org.loamlight.quantity.Topic;

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
    /** No other criterion of the catalogue has limits on this topic. */
    ONE_CRITERION_HAS_THE_TOPIC {
        @Override
        boolean covers(RuleMutant mutant) {
            return mutant.change().startsWith("ResolvedLimit without criterion == ")
                    && topic(mutant).map(topic -> limited(Topic.valueOf(topic)).size() == 1).orElse(false);
        }
    };

    private static final Pattern FETCHES = Pattern.compile("Applies\\( criterion == \"([^\"]+)\", (\\$\\w+) : subject \\)");
    private static final Pattern TOPIC = Pattern.compile("topic == Topic\\.(\\w+)");

    abstract boolean covers(RuleMutant mutant);

    static boolean isAmong(RuleMutant mutant) {
        return Arrays.stream(values()).anyMatch(kind -> kind.covers(mutant));
    }

    private static Optional<String> topic(RuleMutant mutant) {
        return TOPIC.matcher(mutant.pattern()).results().map((MatchResult found) -> found.group(1)).findFirst();
    }

    /** Criteria that may have limits on a topic. */
    private static Set<String> limited(Topic topic) {
        Set<String> criteria = new HashSet<>();
        BuiltIn.KNOWLEDGE.criteria().values().stream().filter(one -> one.quantities().contains(topic)).map(Criterion::id).forEach(criteria::add);
        BuiltIn.KNOWLEDGE.profiles().values().stream().flatMap(profile -> profile.limits().stream()).filter(limit -> limit.topic() == topic)
                .forEach(limit -> criteria.add(limit.criterion()));
        return criteria;
    }
}
