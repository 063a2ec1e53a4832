package org.loamlight.evaluation;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.loamlight.criterion.Knowledge;
import org.loamlight.criterion.KnowledgeReader;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Judging alone, from facts to statements, warm, on one core, in the ways of {@link Way}. Reading, quantities and pairs come before it, closing after it; they
 * are the same for all.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(value = 3, jvmArgsAppend = {"-Xmx512m", "-XX:ActiveProcessorCount=1", "-XX:+UseSerialGC"})
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 2)
public class JudgingBenchmark {
    @Param
    Way way;

    private WayOfJudging judging;
    private List<Auditor.Asked> setups;
    private int taken;

    /** A way that states something else is not timed. */
    @Setup
    public void prepare() {
        Knowledge knowledge = KnowledgeReader.builtIn();
        setups = asked(knowledge, MixedSetups.all());
        judging = way.make(knowledge, setups);
    }

    /** Descriptions read, and audited as far as no rule is asked yet. */
    static List<Auditor.Asked> asked(Knowledge knowledge, List<byte[]> files) {
        Auditor auditor = RulesFrom.BUILD.auditor(knowledge);
        return files.stream().map(file -> MixedSetups.read(file, knowledge))
                .map(setup -> auditor.ask(setup, MixedSetups.day(setup))).toList();
    }

    @Benchmark
    public Object next() {
        taken = (taken + 1) % setups.size();
        return judging.judge(setups.get(taken));
    }
}
