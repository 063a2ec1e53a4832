package org.loamlight.evaluation;

import java.util.List;
import java.util.stream.IntStream;
import org.loamlight.criterion.Knowledge;
import org.loamlight.criterion.KnowledgeReader;

/** Compares, without timing anything, what the ways that are timed against each other state and find. The benchmarks compare the same of the whole mixed set. */
public final class WaysAgree {
    /** Of the invented setups; no number they repeat themselves by. */
    private static final int EVERY = 5;

    private WaysAgree() {
    }

    /** Ends with an exception where they differ. */
    public static void main(String[] arguments) {
        Knowledge knowledge = KnowledgeReader.builtIn();
        List<byte[]> all = MixedSetups.all();
        List<Auditor.Asked> setups = JudgingBenchmark.asked(knowledge, IntStream.range(0, all.size()).filter(i -> i % EVERY == 0 || i >= MixedSetups.INVENTED).mapToObj(all::get).toList());
        Auditor program = RulesFrom.BUILD.auditor(knowledge);
        for (RulesFrom rules : RulesFrom.values()) {
            RulesFrom.requireSameFindings(rules.auditor(knowledge), program, setups);
        }
        for (Way way : Way.values()) {
            way.make(knowledge, setups);
        }
        System.out.println(RulesFrom.values().length + " origins of rules and " + Way.values().length + " ways of judging agree on " + setups.size() + " setups");
    }
}
