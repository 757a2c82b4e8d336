package org.skewback.benchmarks;

import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.skewback.quantity.Quantity;
import org.skewback.quantity.Source;
import org.skewback.quantity.Tape;

/**
 * What a tape costs a sample, on the safety factor of a plane slide with a vertical tension crack (E.
 * Hoek and J. W. Bray, Rock Slope Engineering, 1981, chapter 7; from memory).
 *
 * <p>With {@code five} inputs, depths of crack and water, cohesion, friction angle and unit weight
 * vary; the tape's operations are sums, products and quotients and one tangent. With {@code eight},
 * the height and both angles of the slope vary too, which adds functions of angles. Divide by the
 * number of operations, which is printed at the start, for the cost of one.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(2)
public class TapeBenchmark {

    private static final int SAMPLES = 1 << 14;

    /** Which inputs vary. */
    @Param({"five", "eight"})
    String varied = "five";

    private Tape tape = Tape.of(List.of(Quantity.of(1)), List.of());
    private double[][] inputs = {};
    private double[] one = {};
    private double[][] outputs = {};
    private double[][][] gradients = {};

    private static Quantity given(String symbol, double value, String unit) {
        return Quantity.given(symbol, value, unit, "", Source.assumption("an example"));
    }

    /** Compiles the tape and draws the samples, within 5 % of the middle. */
    @Setup
    public void compile() {
        Quantity height = given("H", 12, "m");
        Quantity face = given("ψ_f", 60, "°");
        Quantity plane = given("ψ_p", 35, "°");
        Quantity crack = given("z", 3, "m");
        Quantity water = given("z_w", 1.5, "m");
        Quantity cohesion = given("c", 25, "kPa");
        Quantity friction = given("φ", 37, "°");
        Quantity weight = given("γ", 26, "kN/m³");
        List<Quantity> varying =
                varied.equals("five")
                        ? List.of(crack, water, cohesion, friction, weight)
                        : List.of(height, face, plane, crack, water, cohesion, friction, weight);
        Quantity factor = safety(height, face, plane, crack, water, cohesion, friction, weight);
        tape = Tape.of(List.of(factor), varying);
        one = varying.stream().mapToDouble(Quantity::si).toArray();
        Random random = new Random(1);
        inputs = new double[one.length][SAMPLES];
        for (int i = 0; i < one.length; i++) {
            for (int s = 0; s < SAMPLES; s++) {
                inputs[i][s] = one[i] * (0.95 + 0.1 * random.nextDouble());
            }
        }
        outputs = new double[1][SAMPLES];
        gradients = new double[1][one.length][SAMPLES];
        System.out.println(varied + " inputs: " + tape.operations() + " operations a sample");
    }

    private static Quantity safety(
            Quantity height,
            Quantity face,
            Quantity plane,
            Quantity crack,
            Quantity water,
            Quantity cohesion,
            Quantity friction,
            Quantity weight) {
        Quantity waterWeight = Quantity.of(9.81, "kN/m³");
        Quantity one = Quantity.of(1);
        Quantity area = height.minus(crack).over(plane.sin());
        Quantity uplift = waterWeight.times(water).times(area).over(2);
        Quantity thrust = waterWeight.times(water.squared()).over(2);
        Quantity shape =
                one.minus(crack.over(height).squared())
                        .over(plane.tan())
                        .minus(one.over(face.tan()));
        Quantity block = weight.times(height.squared()).over(2).times(shape);
        Quantity normal = block.times(plane.cos()).minus(uplift).minus(thrust.times(plane.sin()));
        return cohesion.times(area)
                .plus(normal.times(friction.tan()))
                .over(block.times(plane.sin()).plus(thrust.times(plane.cos())));
    }

    /**
     * One sample of many, values only.
     *
     * @return the results
     */
    @Benchmark
    @OperationsPerInvocation(SAMPLES)
    public double[][] evaluateInBlocks() {
        tape.evaluate(inputs, SAMPLES, outputs);
        return outputs;
    }

    /**
     * One sample of many, values and derivatives.
     *
     * @return the derivatives
     */
    @Benchmark
    @OperationsPerInvocation(SAMPLES)
    public double[][][] gradientInBlocks() {
        tape.evaluateWithGradient(inputs, SAMPLES, outputs, gradients);
        return gradients;
    }

    /**
     * One sample by itself, values only.
     *
     * @return the result
     */
    @Benchmark
    public double[] evaluateSingly() {
        return tape.evaluate(one);
    }

    /**
     * One sample by itself, values and derivatives.
     *
     * @return the derivatives
     */
    @Benchmark
    public double[][] gradientSingly() {
        return tape.gradient(one);
    }
}
