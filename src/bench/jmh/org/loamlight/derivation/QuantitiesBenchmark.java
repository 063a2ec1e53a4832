package org.loamlight.derivation;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import org.loamlight.quantity.Quantity;
import org.loamlight.quantity.Topic;
import org.loamlight.setup.ProblemsFound;
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
import org.openjdk.jmh.annotations.Warmup;

/**
 * All quantities of one crowded setup, warm, on one core: with 3 lamps, 4 heaters and 40 furnishings, and with twice the furnishings to see how the
 * work grows. Reading the file and evaluating the rules are not in it.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 3, jvmArgsAppend = {"-XX:ActiveProcessorCount=1", "-XX:+UseSerialGC"})
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 2)
public class QuantitiesBenchmark {
    private static final LocalDate AUDITED = LocalDate.of(2026, 11, 2);

    @Param({"40", "80"})
    int furnishings;

    private Setup setup;
    private Wanted wanted;

    /** A setup in which a topic is not derived would be measured as if its work were free. */
    @org.openjdk.jmh.annotations.Setup
    public void crowd() throws ProblemsFound {
        setup = CrowdedEnclosure.with(furnishings);
        wanted = CrowdedEnclosure.wanted();
        Set<Topic> lacking = new TreeSet<>(CrowdedEnclosure.COMPUTED);
        lacking.removeAll(all().stream().map(Quantity::topic).collect(Collectors.toSet()));
        if (!lacking.isEmpty()) {
            throw new IllegalStateException("The crowded enclosure tells too little to derive " + lacking);
        }
    }

    @Benchmark
    public List<Quantity> all() {
        return Derivation.quantities(setup, Axis.LENGTH, AUDITED, wanted);
    }
}
