package org.skewback.benchmarks;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.skewback.quantity.Quantity;

/** What a node of the graph costs; {@code -prof gc} shows its bytes. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(2)
public class QuantityBenchmark {

    private final Quantity load = Quantity.of(148, "kN/m");
    private final Quantity span = Quantity.of(336, "m");
    private final Quantity rise = Quantity.of(72, "m");
    private final Quantity eight = Quantity.of(8);

    /**
     * One product: one node.
     *
     * @return the node
     */
    @Benchmark
    public Quantity product() {
        return load.times(span);
    }

    /**
     * The thrust of a parabola: four nodes.
     *
     * @return the thrust
     */
    @Benchmark
    public Quantity thrust() {
        return load.times(span.squared()).over(rise.times(eight));
    }

    /**
     * One quantity from a number and the text of a unit.
     *
     * @return the quantity
     */
    @Benchmark
    public Quantity fromText() {
        return Quantity.of(148, "kN/m");
    }
}
