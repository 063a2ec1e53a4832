package org.loamlight.evaluation;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.loamlight.criterion.Knowledge;
import org.loamlight.criterion.KnowledgeReader;
import org.loamlight.setup.ProblemsFound;
import org.loamlight.setup.Setup;
import org.loamlight.setup.SetupReader;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * One audit of one real setup, warm, on one core: quantities, pairs, rules, findings. Knowledge, rules and the setup are read before; nothing is
 * printed.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 3, jvmArgsAppend = {"-XX:ActiveProcessorCount=1", "-XX:+UseSerialGC"})
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 2)
public class AuditBenchmark {
    private Auditor auditor;
    private Setup setup;

    @org.openjdk.jmh.annotations.Setup
    public void read() throws IOException, ProblemsFound {
        Knowledge knowledge = KnowledgeReader.builtIn();
        Path file = Path.of("examples/foster-corn-snake.json");
        auditor = new Auditor(knowledge, RuleBase.load(knowledge));
        setup = SetupReader.read(file.toString(), Files.readAllBytes(file), knowledge.speciesNames());
    }

    @Benchmark
    public Audit one() {
        return auditor.audit(setup, setup.on().orElseThrow());
    }
}
