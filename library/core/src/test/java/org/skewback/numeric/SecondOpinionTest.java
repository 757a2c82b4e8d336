package org.skewback.numeric;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ludovic.netlib.arpack.ARPACK;
import dev.ludovic.netlib.arpack.JavaARPACK;
import java.util.Arrays;
import java.util.function.UnaryOperator;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.ejml.data.DMatrixRMaj;
import org.ejml.data.DMatrixSparseCSC;
import org.ejml.data.DMatrixSparseTriplet;
import org.ejml.interfaces.linsol.LinearSolverSparse;
import org.ejml.ops.DConvertMatrixStruct;
import org.ejml.sparse.FillReducing;
import org.ejml.sparse.csc.factory.LinearSolverFactory_DSCC;
import org.junit.jupiter.api.Test;
import org.netlib.util.doubleW;
import org.netlib.util.intW;

/** Larger sparse systems and their eigenvalues against two libraries that do the same. */
class SecondOpinionTest {

    private static double[] sparseCholesky(SymmetricMatrix a, double[] b) {
        DMatrixSparseTriplet triplet =
                new DMatrixSparseTriplet(a.order(), a.order(), 2 * a.entries());
        a.forEach(
                (row, column, value) -> {
                    triplet.addItem(row, column, value);
                    if (row != column) {
                        triplet.addItem(column, row, value);
                    }
                });
        DMatrixSparseCSC matrix = DConvertMatrixStruct.convert(triplet, (DMatrixSparseCSC) null);
        LinearSolverSparse<DMatrixSparseCSC, DMatrixRMaj> solver =
                LinearSolverFactory_DSCC.cholesky(FillReducing.NONE);
        assertTrue(solver.setA(matrix));
        DMatrixRMaj x = new DMatrixRMaj(a.order(), 1);
        solver.solve(new DMatrixRMaj(a.order(), 1, true, b), x);
        return x.getData();
    }

    @Property(tries = 15)
    void aSparseCholeskyFactorSaysTheSame(
            @ForAll long seed, @ForAll @IntRange(min = 200, max = 1500) int order) {
        SymmetricMatrix a = RandomMatrices.definite(seed, order);
        double[] b = RandomMatrices.vector(seed, order);
        double[] wanted = sparseCholesky(a, b);
        double[] found = Factorization.of(a).solve(b);
        assertArrayEquals(wanted, found, 1e-9 * Vectors.largest(wanted));
    }

    @Test
    void aWideGridFactorsAsASparseCholeskyFactorDoes() {
        SymmetricMatrix a = RandomMatrices.grid(70, 80);
        double[] b = RandomMatrices.vector(3, a.order());
        double[] wanted = sparseCholesky(a, b);
        assertArrayEquals(wanted, Factorization.of(a).solve(b), 1e-11 * Vectors.largest(wanted));
        Factorization band =
                SymbolicFactorization.of(a.pattern(), Ordering.reverseCuthillMcKee(a.pattern()))
                        .factorize(a);
        assertArrayEquals(wanted, band.solve(b), 1e-11 * Vectors.largest(wanted));
    }

    /** Largest eigenvalues of an operator self-adjoint in the product of B, by reverse communication. */
    private static double[] arpack(
            UnaryOperator<double[]> inverse, SymmetricMatrix mass, int count) {
        ARPACK arpack = JavaARPACK.getInstance();
        int n = mass.order();
        int basis = Math.min(n, 3 * count + 10);
        intW ido = new intW(0);
        intW info = new intW(0);
        doubleW tolerance = new doubleW(0);
        double[] residual = new double[n];
        double[] v = new double[n * basis];
        int[] parameters = new int[11];
        parameters[0] = 1;
        parameters[2] = 500;
        parameters[3] = 1;
        parameters[6] = 3;
        int[] pointers = new int[11];
        double[] work = new double[3 * n];
        int workLength = basis * (basis + 8);
        double[] small = new double[workLength];
        while (true) {
            arpack.dsaupd(
                    ido,
                    "G",
                    n,
                    "LM",
                    count,
                    tolerance,
                    residual,
                    basis,
                    v,
                    n,
                    parameters,
                    pointers,
                    work,
                    small,
                    workLength,
                    info);
            if (ido.val == 99) {
                break;
            }
            int from = pointers[0] - 1;
            int to = pointers[1] - 1;
            double[] x = Arrays.copyOfRange(work, from, from + n);
            double[] y =
                    switch (ido.val) {
                        case -1 -> inverse.apply(mass.times(x));
                        case 1 ->
                                inverse.apply(
                                        Arrays.copyOfRange(
                                                work, pointers[2] - 1, pointers[2] - 1 + n));
                        default -> mass.times(x);
                    };
            System.arraycopy(y, 0, work, to, n);
        }
        assertEquals(0, info.val);
        double[] values = new double[count];
        arpack.dseupd(
                false,
                "A",
                new boolean[basis],
                values,
                new double[n * count],
                n,
                0,
                "G",
                n,
                "LM",
                new intW(count),
                0,
                residual,
                basis,
                v,
                n,
                parameters,
                pointers,
                work,
                small,
                workLength,
                info);
        Arrays.sort(values);
        return values;
    }

    @Property(tries = 15)
    void implicitlyRestartedLanczosFindsTheSameModes(
            @ForAll long seed, @ForAll @IntRange(min = 60, max = 600) int order) {
        SymmetricMatrix k = RandomMatrices.definite(seed, order);
        double[] masses = new double[order];
        Arrays.setAll(masses, i -> i % 3 == 2 ? 0 : 1 + i % 5);
        SymmetricMatrix m = SymmetricMatrix.ofDiagonal(masses);
        Factorization factorization = Factorization.of(k);
        double[] wanted = arpack(factorization::solve, m, 8);
        Eigenpairs found = Eigenproblem.vibration(k, m, 8, Monitor.quiet());
        for (int i = 0; i < 8; i++) {
            assertEquals(wanted[i], found.value(i), 1e-9 * wanted[i]);
        }
    }
}
