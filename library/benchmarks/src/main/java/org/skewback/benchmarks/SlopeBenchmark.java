package org.skewback.benchmarks;

import java.util.concurrent.TimeUnit;
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
import org.skewback.slope.CriticalCircle;
import org.skewback.slope.ProfileLine;
import org.skewback.slope.SearchWindow;
import org.skewback.slope.SliceMethod;
import org.skewback.slope.SlopeSection;
import org.skewback.slope.Soil;

/**
 * What the search for the critical circle costs: 32 000 circles of 50 slices and what follows from
 * the best of them, on one thread.
 *
 * <p>The goals are 0.3 s for Bishop and 2 s for Spencer.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 6, time = 1)
@Fork(2)
public class SlopeBenchmark {

    /** Method of slices. */
    @Param({"BISHOP", "SPENCER"})
    SliceMethod method = SliceMethod.BISHOP;

    private final SearchWindow window = SearchWindow.of(10, 35, 45, 80);
    private final SlopeSection section =
            SlopeSection.of(
                    ProfileLine.through(
                            new double[] {0, 25},
                            new double[] {30, 25},
                            new double[] {50, 35},
                            new double[] {100, 35}),
                    Soil.of("soil", 20e3, 3e3, StrictMath.toRadians(19.6)));

    /**
     * A slope of one soil.
     *
     * @return the critical circle
     */
    @Benchmark
    public CriticalCircle search() {
        return CriticalCircle.search(section, window, method);
    }
}
