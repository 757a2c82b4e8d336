package org.skewback.benchmarks;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
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
import org.skewback.numeric.Eigenpairs;
import org.skewback.numeric.Eigenproblem;
import org.skewback.numeric.Factorization;
import org.skewback.numeric.LocalHistory;
import org.skewback.numeric.LocalMotion;
import org.skewback.numeric.Monitor;
import org.skewback.numeric.ReducedModel;
import org.skewback.numeric.SlidingBearing;
import org.skewback.numeric.SymmetricMatrix;

/**
 * What many loads, many stages and a long earthquake cost a structure of about 3 000 unknowns, on one
 * thread. The goals are 500, 400 and 100 ms.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class MotionBenchmark {

    private static final double STEP = 0.002;
    private static final int STEPS = 20_000;

    private final TestStructure.Matrices matrices = TestStructure.latticeArch(3000).assemble();
    private final SymmetricMatrix stiffness = matrices.stiffness();
    private final Factorization factorization = Factorization.of(stiffness);
    private final double[][] loads = loads(2000);
    private final LocalMotion motion = motion();
    private final List<double[]> shaking = shaking();
    private final List<double[]> records = List.of(record(3, 0.7, 0), record(2, 1.1, 1));

    private double[][] loads(int count) {
        Random random = new Random(1);
        double[][] made = new double[count][stiffness.order()];
        for (double[] load : made) {
            for (int k = 0; k < 6; k++) {
                load[random.nextInt(load.length)] = random.nextDouble();
            }
        }
        return made;
    }

    /** Unknowns along the first direction of nodes that can move. */
    private List<Integer> firstDirections() {
        double[] mass = matrices.mass().diagonal();
        List<Integer> found = new ArrayList<>();
        for (int i = 1; i < mass.length; i++) {
            if (mass[i] > 0 && mass[i - 1] == 0) {
                found.add(i);
            }
        }
        return found;
    }

    private LocalMotion motion() {
        Eigenpairs modes = Eigenproblem.vibration(stiffness, matrices.mass(), 30, Monitor.quiet());
        List<double[]> basis = new ArrayList<>();
        for (int i = 0; i < modes.size(); i++) {
            basis.add(modes.vector(i));
        }
        List<Integer> nodes = firstDirections();
        List<LocalMotion.Attachment> bearings = new ArrayList<>();
        for (int b = 0; b < 12; b++) {
            int unknown = nodes.get(nodes.size() * (2 * b + 1) / 24);
            double[] along = new double[stiffness.order()];
            double[] across = new double[stiffness.order()];
            along[unknown] = 1;
            across[unknown + 1] = 1;
            basis.add(factorization.solve(along));
            basis.add(factorization.solve(across));
            bearings.add(
                    new LocalMotion.Attachment(
                            new SlidingBearing(2e5, 2e8, 3e6), List.of(along, across)));
        }
        ReducedModel model =
                ReducedModel.of(stiffness, matrices.mass(), basis.toArray(new double[0][]));
        double[] damping = new double[model.size()];
        Arrays.fill(damping, 0.03);
        return new LocalMotion(model, damping, bearings, STEP);
    }

    private List<double[]> shaking() {
        double[] mass = matrices.mass().diagonal();
        double[] along = new double[mass.length];
        double[] across = new double[mass.length];
        for (int unknown : firstDirections()) {
            along[unknown] = -mass[unknown];
            across[unknown + 1] = -mass[unknown + 1];
        }
        return List.of(along, across);
    }

    private static double[] record(double amplitude, double period, double phase) {
        double[] record = new double[STEPS + 1];
        Arrays.setAll(
                record,
                n -> {
                    double t = n * STEP;
                    return amplitude
                            * StrictMath.sin(2 * StrictMath.PI * t / period + phase)
                            * StrictMath.sin(0.3 * t);
                });
        return record;
    }

    /**
     * Two thousand load positions.
     *
     * @return displacements
     */
    @Benchmark
    public double[][] manyLoads() {
        return factorization.solve(loads);
    }

    /**
     * Forty stages on one analysis.
     *
     * @return sum of one displacement
     */
    @Benchmark
    public double stages() {
        double sum = 0;
        for (int stage = 0; stage < 40; stage++) {
            SymmetricMatrix changed = stiffness.scaled(1 + 0.01 * stage);
            sum += factorization.symbolic().factorize(changed).solve(loads[stage])[0];
        }
        return sum;
    }

    /**
     * Twenty thousand steps with twelve sliding bearings, all histories kept.
     *
     * @return the motion
     */
    @Benchmark
    public LocalHistory slidingBearings() {
        return motion.run(shaking, records, Monitor.quiet());
    }
}
