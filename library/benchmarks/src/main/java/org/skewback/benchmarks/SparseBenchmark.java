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
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.skewback.numeric.Eigenpairs;
import org.skewback.numeric.Eigenproblem;
import org.skewback.numeric.Factorization;
import org.skewback.numeric.Monitor;
import org.skewback.numeric.Ordering;
import org.skewback.numeric.SymbolicFactorization;
import org.skewback.numeric.SymmetricMatrix;

/** What ordering, factor, solution and modes of large structures cost, on one thread. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(value = 1, jvmArgs = "-Xmx400m")
public class SparseBenchmark {

    /** A lattice arch or a curved grillage, with about so many unknowns. */
    @Param({"A6000", "A60000", "G60000"})
    String structure = "A6000";

    private TestStructure.Matrices matrices = TestStructure.latticeArch(600).assemble();
    private Factorization factorization = Factorization.of(matrices.stiffness());
    private double[] load = {};

    /** Assembles and factorizes once. */
    @Setup
    public void assemble() {
        matrices = SolverComparison.structure(structure).assemble();
        factorization = Factorization.of(matrices.stiffness());
        load = SolverComparison.load(matrices.stiffness().order());
    }

    /**
     * The ordering alone.
     *
     * @return the ordering
     */
    @Benchmark
    public Ordering ordering() {
        return Ordering.minimumDegree(matrices.stiffness().pattern());
    }

    /**
     * Ordering, analysis, factor and one solution.
     *
     * @return the solution
     */
    @Benchmark
    public double[] factorAndSolve() {
        SymmetricMatrix stiffness = matrices.stiffness();
        return SymbolicFactorization.of(stiffness.pattern()).factorize(stiffness).solve(load);
    }

    /**
     * The numeric phase alone.
     *
     * @return the factorization
     */
    @Benchmark
    public Factorization factorAgain() {
        return factorization.symbolic().factorize(matrices.stiffness());
    }

    /**
     * One solution with the factor there.
     *
     * @return the solution
     */
    @Benchmark
    public double[] solve() {
        return factorization.solve(load);
    }

    /**
     * The twenty lowest modes.
     *
     * @return the modes
     */
    @Benchmark
    public Eigenpairs modes() {
        return Eigenproblem.vibration(matrices.stiffness(), matrices.mass(), 20, Monitor.quiet());
    }
}
