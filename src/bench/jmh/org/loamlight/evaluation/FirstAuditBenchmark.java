package org.loamlight.evaluation;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.loamlight.finding.Finding;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/**
 * How long a process that has just started works until it has the findings of its first setup: knowledge, rules, audit. Once in each fork, nothing warm. The start
 * of the JVM is not in it; {@code src/bench/first-audit} times whole processes.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 7, jvmArgsAppend = {"-Xmx512m", "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC"})
@Warmup(iterations = 0)
@Measurement(iterations = 1)
public class FirstAuditBenchmark {
    @Param
    RulesFrom rules;

    private List<Finding> found;

    @Benchmark
    public List<Finding> first() {
        found = FirstAudit.with(rules);
        return found;
    }

    /**
     * Compared afterwards, since before it the comparison would warm what is timed; {@link WholeAuditBenchmark} compares the whole mixed set. The processor time JMH
     * tells holds the comparison too: only the time by the clock is that of the first audit.
     */
    @TearDown
    public void compare() {
        String expected = FirstAudit.inShort(FirstAudit.with(RulesFrom.BUILD));
        if (!FirstAudit.inShort(found).equals(expected)) {
            throw new IllegalStateException("The first audit had " + FirstAudit.inShort(found) + " instead of " + expected);
        }
    }
}
