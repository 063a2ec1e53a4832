package org.loamlight.derivation;

import com.sun.management.OperatingSystemMXBean;
import java.lang.management.ManagementFactory;
import java.util.Collection;
import java.util.List;
import org.openjdk.jmh.infra.BenchmarkParams;
import org.openjdk.jmh.infra.IterationParams;
import org.openjdk.jmh.profile.InternalProfiler;
import org.openjdk.jmh.results.AggregationPolicy;
import org.openjdk.jmh.results.IterationResult;
import org.openjdk.jmh.results.Result;
import org.openjdk.jmh.results.ScalarResult;

/**
 * Processor time of the whole measuring process for one call, compiling and collecting garbage included. On a machine that does other work beside it,
 * this says what a call costs; the time by the clock says how long it had to wait as well.
 */
public final class ProcessorTime implements InternalProfiler {
    private static final double NANOSECONDS_PER_MILLISECOND = 1e6;

    private final OperatingSystemMXBean process = ManagementFactory.getPlatformMXBean(OperatingSystemMXBean.class);
    private long before;

    @Override
    public String getDescription() {
        return "processor time for one call";
    }

    @Override
    public void beforeIteration(BenchmarkParams benchmark, IterationParams iteration) {
        before = process.getProcessCpuTime();
    }

    @Override
    public Collection<? extends Result<?>> afterIteration(BenchmarkParams benchmark, IterationParams iteration, IterationResult result) {
        double milliseconds = (process.getProcessCpuTime() - before) / NANOSECONDS_PER_MILLISECOND;
        return List.of(new ScalarResult("processor", milliseconds / result.getMetadata().getAllOps(), "ms/op", AggregationPolicy.AVG));
    }
}
