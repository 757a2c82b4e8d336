package org.skewback.numeric;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.EigenDecomposition;
import org.apache.commons.math3.linear.LUDecomposition;
import org.junit.jupiter.api.Test;

/** LDLᵀ against the dense decompositions of Commons Math, and what it says of singular matrices. */
class FactorizationTest {

    private static double[] dense(SymmetricMatrix a, double[] b) {
        return new LUDecomposition(new Array2DRowRealMatrix(a.toDense()))
                .getSolver()
                .solve(new ArrayRealVector(b))
                .toArray();
    }

    private static Ordering ordering(int kind, SymmetricPattern pattern) {
        return switch (kind) {
            case 0 -> Ordering.natural(pattern.order());
            case 1 -> Ordering.reverseCuthillMcKee(pattern);
            default -> Ordering.minimumDegree(pattern);
        };
    }

    @Property(tries = 200)
    void everyUnknownIsOrderedOnce(
            @ForAll long seed,
            @ForAll @IntRange(max = 80) int order,
            @ForAll @IntRange(max = 2) int kind) {
        int[] sequence = ordering(kind, RandomMatrices.definite(seed, order).pattern()).sequence();
        Arrays.sort(sequence);
        assertArrayEquals(Ordering.natural(order).sequence(), sequence);
    }

    @Property(tries = 300)
    void solvesDefiniteSystemsAsADenseSolverDoes(
            @ForAll long seed,
            @ForAll @IntRange(min = 1, max = 60) int order,
            @ForAll @IntRange(max = 2) int kind) {
        SymmetricMatrix a = RandomMatrices.definite(seed, order);
        double[] b = RandomMatrices.vector(seed, order);
        Factorization factorization =
                SymbolicFactorization.of(a.pattern(), ordering(kind, a.pattern())).factorize(a);
        assertEquals(new Inertia(0, 0, order), factorization.inertia());
        double[] wanted = dense(a, b);
        assertArrayEquals(wanted, factorization.solve(b), 1e-9 * Vectors.largest(wanted));
    }

    @Property(tries = 300)
    void solvesIndefiniteSystemsAndCountsTheirEigenvalues(
            @ForAll long seed,
            @ForAll @IntRange(min = 1, max = 40) int order,
            @ForAll @IntRange(max = 2) int kind) {
        SymmetricMatrix a = RandomMatrices.indefinite(seed, order);
        double[] b = RandomMatrices.vector(seed, order);
        Factorization factorization =
                SymbolicFactorization.of(a.pattern(), ordering(kind, a.pattern())).factorize(a);
        double[] wanted = dense(a, b);
        assertArrayEquals(wanted, factorization.solve(b), 1e-9 * Vectors.largest(wanted));
        double[] eigenvalues =
                new EigenDecomposition(new Array2DRowRealMatrix(a.toDense())).getRealEigenvalues();
        int negative = (int) Arrays.stream(eigenvalues).filter(value -> value < 0).count();
        assertEquals(new Inertia(negative, 0, order - negative), factorization.inertia());
    }

    @Property(tries = 60)
    void manyRightHandSidesAreSolvedAsSingleOnesAre(
            @ForAll long seed,
            @ForAll @IntRange(min = 1, max = 60) int order,
            @ForAll @IntRange(max = 70) int count) {
        SymmetricMatrix a = RandomMatrices.indefinite(seed, order);
        double[][] loads = new double[count][];
        for (int c = 0; c < count; c++) {
            loads[c] = RandomMatrices.vector(seed + c, order);
        }
        Factorization factorization = Factorization.of(a);
        double[][] together = factorization.solve(loads);
        assertEquals(count, together.length);
        for (int c = 0; c < count; c++) {
            double[] single = factorization.solve(loads[c]);
            assertArrayEquals(single, together[c], 1e-11 * Vectors.largest(single));
        }
    }

    @Property(tries = 100)
    void refinementLeavesABackwardErrorOfRounding(
            @ForAll long seed, @ForAll @IntRange(min = 1, max = 60) int order) {
        SymmetricMatrix a = RandomMatrices.definite(seed, order);
        double[] b = RandomMatrices.vector(seed, order);
        RefinedSolution solution = Factorization.of(a).solveRefined(b);
        assertTrue(solution.backwardError() < 1e-14, () -> "" + solution.backwardError());
        double[] product = a.times(solution.x());
        for (int i = 0; i < order; i++) {
            assertEquals(b[i], product[i], solution.residual() * (1 + 1e-9) + 1e-300);
        }
    }

    @Property(tries = 100)
    void conditionEstimateIsALowerBoundWithinThree(
            @ForAll long seed, @ForAll @IntRange(min = 1, max = 40) int order) {
        SymmetricMatrix a = RandomMatrices.definite(seed, order);
        double inverse =
                new LUDecomposition(new Array2DRowRealMatrix(a.toDense()))
                        .getSolver()
                        .getInverse()
                        .getNorm();
        double exact = a.norm() * inverse;
        double estimate = Factorization.of(a).conditionEstimate();
        assertTrue(estimate <= exact * (1 + 1e-9) && estimate >= exact / 3);
    }

    @Test
    void aSmallPivotTellsItsSizeAndItsScale() {
        // One unknown joined to the ground by next to nothing: what elimination leaves is that.
        double least = 3e-11;
        SymmetricMatrix matrix =
                SymmetricMatrix.ofDense(new double[][] {{4, -4}, {-4, 4 * (1 + least)}});
        Factorization factorization = Factorization.of(matrix);
        SmallPivot pivot = factorization.smallPivots().get(0);
        assertEquals(4 * least, pivot.pivot(), 1e-15);
        assertEquals(4, pivot.scale(), 1e-9);
        assertEquals(least, pivot.ratio(), 1e-15);
        assertEquals(1, factorization.smallPivots().size());
        // Without a diagonal it is measured by what the other unknown may put there.
        Factorization bordered =
                Factorization.of(SymmetricMatrix.ofDense(new double[][] {{4, 6}, {6, 0}}));
        assertEquals(new Inertia(1, 0, 1), bordered.inertia());
        assertArrayEquals(
                new double[] {4, 9},
                Elimination.pivotScales(SymmetricMatrix.ofDense(new double[][] {{4, 6}, {6, 0}})));
        assertArrayEquals(
                new double[] {9, 4},
                Elimination.pivotScales(SymmetricMatrix.ofDense(new double[][] {{0, 6}, {6, 4}})));
    }

    @Test
    void aMatrixGivesBackWhatWasPutIntoIt() {
        SymmetricMatrix matrix =
                SymmetricMatrix.ofEntries(
                        3,
                        new int[] {0, 1, 1, 2, 0, 1},
                        new int[] {0, 1, 0, 1, 2, 1},
                        new double[] {1, 2, -2, -5, 4, 1});
        double[][] dense = {{1, -2, 4}, {-2, 3, -5}, {4, -5, 0}};
        for (int i = 0; i < 3; i++) {
            assertArrayEquals(dense[i], matrix.toDense()[i]);
            for (int j = 0; j < 3; j++) {
                assertEquals(dense[i][j], matrix.get(i, j));
            }
        }
        assertArrayEquals(new double[] {1, 3, 0}, matrix.diagonal());
        assertEquals(10, matrix.norm());
        assertArrayEquals(new double[] {7, 10, 9}, matrix.timesSizes(new double[] {1, -1, 1}));
    }

    @Test
    void aFreeChainNamesItsLastUnknownAndItsMovement() {
        int order = 50;
        SymmetricAssembler sum = new SymmetricAssembler(RandomMatrices.grid(order, 1).pattern());
        for (int i = 0; i + 1 < order; i++) {
            sum.add(new int[] {i, i + 1}, new double[][] {{3, -3}, {-3, 3}});
        }
        Factorization factorization = Factorization.of(sum.matrix());
        assertEquals(new Inertia(0, 1, order - 1), factorization.inertia());
        SmallPivot pivot = factorization.smallPivots().get(0);
        assertTrue(pivot.zero());
        double[] movement = factorization.freeMovement(pivot);
        for (double value : movement) {
            assertEquals(1, value, 1e-12);
        }
        SingularMatrixException refused =
                assertThrows(
                        SingularMatrixException.class,
                        () -> factorization.solve(new double[order]));
        assertEquals(pivot, refused.zeroPivots().get(0));
        assertEquals(Double.POSITIVE_INFINITY, factorization.conditionEstimate());
    }

    @Test
    void minimumDegreeFillsAGridFarLessThanABand() {
        SymmetricMatrix grid = RandomMatrices.grid(60, 60);
        long band =
                SymbolicFactorization.of(grid.pattern(), Ordering.natural(3600)).factorEntries();
        long least = SymbolicFactorization.of(grid.pattern()).factorEntries();
        assertTrue(least < 0.35 * band, least + " of " + band);
    }
}
