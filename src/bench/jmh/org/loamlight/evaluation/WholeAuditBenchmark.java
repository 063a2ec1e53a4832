package org.loamlight.evaluation;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.loamlight.criterion.Knowledge;
import org.loamlight.criterion.KnowledgeReader;
import org.loamlight.finding.Finding;
import org.loamlight.setup.Setup;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Threads;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Whole audits, warm, from the bytes of a description to its findings, one setup of a mixed set after the other: how many a second, and how long each takes
 * (the samples give median and 99th percentile). Knowledge and rules are loaded before.
 */
@State(Scope.Benchmark)
@BenchmarkMode({Mode.Throughput, Mode.SampleTime})
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 2, jvmArgsAppend = {"-Xmx512m", "-XX:+UseSerialGC"})
@Warmup(iterations = 12, time = 4)
@Measurement(iterations = 5, time = 4)
public class WholeAuditBenchmark {
    @Param
    RulesFrom rules;

    private Knowledge knowledge;
    private Auditor auditor;

    /** Rules that find something else are not timed. */
    @org.openjdk.jmh.annotations.Setup
    public void load() {
        knowledge = KnowledgeReader.builtIn();
        auditor = rules.auditor(knowledge);
        RulesFrom.requireSameFindings(auditor, RulesFrom.BUILD.auditor(knowledge), JudgingBenchmark.asked(knowledge, MixedSetups.all()));
    }

    @Benchmark
    @Threads(1)
    public List<Finding> one_thread(MixedSetups setups) {
        return audit(setups.next());
    }

    @Benchmark
    @Threads(2)
    public List<Finding> two_threads(MixedSetups setups) {
        return audit(setups.next());
    }

    private List<Finding> audit(byte[] file) {
        Setup setup = MixedSetups.read(file, knowledge);
        return auditor.audit(setup, MixedSetups.day(setup)).findings();
    }
}
