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
import org.skewback.quantity.Quantity;
import org.skewback.quantity.Source;
import org.skewback.sheet.Check;
import org.skewback.study.DesignPoint;
import org.skewback.study.Distribution;
import org.skewback.study.FirstOrderSecondMoment;
import org.skewback.study.Reliability;
import org.skewback.study.Sampling;
import org.skewback.study.Simulation;
import org.skewback.study.Uncertainty;

/**
 * What a million safety factors of a plane slide cost, drawing of cohesion, friction angle and depth
 * of water included (formulas of E. Hoek and J. W. Bray, Rock Slope Engineering, 1981; from memory).
 *
 * <p>The goal is 80 ms on one thread.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 8, time = 1)
@Fork(2)
public class SimulationBenchmark {

    private static final int MILLION = 1_000_000;

    /** Threads of the simulation. */
    @Param({"1", "2"})
    int threads = 1;

    private final Quantity cohesion = given("c", 25, "kPa");
    private final Quantity friction = given("φ", 37, "°");
    private final Quantity water = given("z_w", 3, "m");
    private final Check check = new Check("sliding", factor(), Quantity.of(1), null);
    private final Uncertainty uncertain =
            Uncertainty.none()
                    .with(
                            cohesion,
                            Distribution.normal(Quantity.of(25, "kPa"), Quantity.of(5, "kPa")))
                    .with(friction, Distribution.normal(Quantity.of(37, "°"), Quantity.of(3, "°")))
                    .with(water, Distribution.uniform(Quantity.of(0, "m"), Quantity.of(4, "m")));
    private final Reliability alone = Reliability.of(check, uncertain);
    private final Reliability bound =
            Reliability.of(check, uncertain.correlated(cohesion, friction, -0.5));

    private static Quantity given(String symbol, double value, String unit) {
        return Quantity.given(symbol, value, unit, "", Source.assumption("an example"));
    }

    private Quantity factor() {
        Quantity height = Quantity.of(12, "m");
        Quantity plane = Quantity.of(35, "°");
        Quantity face = Quantity.of(60, "°");
        Quantity crack = Quantity.of(4.34799, "m");
        Quantity waterWeight = Quantity.of(9.81, "kN/m³");
        Quantity one = Quantity.of(1);
        Quantity area = height.minus(crack).over(plane.sin());
        Quantity uplift = waterWeight.times(water).times(area).over(2);
        Quantity push = waterWeight.times(water.squared()).over(2);
        Quantity shape =
                one.minus(crack.over(height).squared())
                        .over(plane.tan())
                        .minus(one.over(face.tan()));
        Quantity block = Quantity.of(26, "kN/m³").times(height.squared()).over(2).times(shape);
        Quantity normal = block.times(plane.cos()).minus(uplift).minus(push.times(plane.sin()));
        return cohesion.times(area)
                .plus(normal.times(friction.tan()))
                .over(block.times(plane.sin()).plus(push.times(plane.cos())));
    }

    /**
     * A million samples of independent givens.
     *
     * @return what was found
     */
    @Benchmark
    public Simulation independent() {
        return alone.simulate(Sampling.of(MILLION).on(threads));
    }

    /**
     * A million samples with cohesion and friction correlated.
     *
     * @return what was found
     */
    @Benchmark
    public Simulation correlated() {
        return bound.simulate(Sampling.of(MILLION).on(threads));
    }

    /**
     * The design point.
     *
     * @return the point
     */
    @Benchmark
    public DesignPoint designPoint() {
        return alone.designPoint();
    }

    /**
     * The derivatives at the means.
     *
     * @return moments
     */
    @Benchmark
    public FirstOrderSecondMoment firstOrderSecondMoment() {
        return alone.firstOrderSecondMoment();
    }
}
