package org.skewback.numeric;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.EigenDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.junit.jupiter.api.Test;

/** Eigenvalues against dense decompositions and closed forms, repeated and massless ones included. */
class EigenproblemTest {

    /** Eigenvalues θ of L⁻¹S L⁻ᵀ where K = L Lᵀ: S x = θ K x. */
    private static double[] dense(SymmetricMatrix k, SymmetricMatrix s) {
        double[][] full = k.toDense();
        RealMatrix lower =
                new CholeskyDecomposition(new Array2DRowRealMatrix(full), 1e-9, 1e-300).getL();
        RealMatrix inverse =
                new org.apache.commons.math3.linear.LUDecomposition(lower).getSolver().getInverse();
        RealMatrix reduced =
                inverse.multiply(new Array2DRowRealMatrix(s.toDense()))
                        .multiply(inverse.transpose());
        RealMatrix mirrored = reduced.add(reduced.transpose()).scalarMultiply(0.5);
        double[] theta = new EigenDecomposition(mirrored).getRealEigenvalues();
        Arrays.sort(theta);
        return theta;
    }

    private static SymmetricMatrix mass(long seed, int order, double massless) {
        Random random = new Random(seed + 1);
        double[] mass = new double[order];
        for (int i = 0; i < order; i++) {
            mass[i] = random.nextDouble() < massless ? 0 : 0.5 + random.nextDouble();
        }
        return SymmetricMatrix.ofDiagonal(mass);
    }

    @Property(tries = 200)
    void vibrationFindsTheLowestOfADenseSolver(
            @ForAll long seed,
            @ForAll @IntRange(min = 1, max = 50) int order,
            @ForAll @IntRange(min = 1, max = 12) int count) {
        SymmetricMatrix k = RandomMatrices.definite(seed, order);
        SymmetricMatrix m = mass(seed, order, order % 2 == 0 ? 0 : 0.4);
        double[] theta = dense(k, m);
        int finite = (int) Arrays.stream(m.diagonal()).filter(value -> value > 0).count();
        Eigenpairs pairs = Eigenproblem.vibration(k, m, count, Monitor.quiet());
        assertEquals(Math.min(count, finite), pairs.size());
        for (int i = 0; i < pairs.size(); i++) {
            double wanted = 1 / theta[order - 1 - i];
            assertEquals(wanted, pairs.value(i), 1e-9 * wanted);
            assertTrue(pairs.residual(i) < 1e-8, () -> Arrays.toString(pairs.values()));
            for (int j = 0; j < pairs.size(); j++) {
                assertEquals(i == j ? 1 : 0, m.form(pairs.vector(i), pairs.vector(j)), 1e-7);
            }
            double[] left = k.times(pairs.vector(i));
            double[] right = m.times(pairs.vector(i));
            for (int r = 0; r < order; r++) {
                assertEquals(left[r], pairs.value(i) * right[r], 1e-6 * Vectors.largest(left));
            }
        }
    }

    @Property(tries = 200)
    void bucklingFindsTheLowestPositiveOfADenseSolver(
            @ForAll long seed,
            @ForAll @IntRange(min = 1, max = 40) int order,
            @ForAll @IntRange(min = 1, max = 8) int count) {
        SymmetricMatrix k = RandomMatrices.definite(seed, order);
        SymmetricMatrix g = RandomMatrices.indefinite(seed + 7, order);
        double[] theta = dense(k, g.scaled(-1));
        int positive = (int) Arrays.stream(theta).filter(value -> value > 0).count();
        Eigenpairs pairs = Eigenproblem.buckling(k, g, count, Monitor.quiet());
        assertEquals(Math.min(count, positive), pairs.size());
        for (int i = 0; i < pairs.size(); i++) {
            double wanted = 1 / theta[order - 1 - i];
            assertEquals(wanted, pairs.value(i), 1e-9 * wanted);
            assertEquals(1, k.form(pairs.vector(i), pairs.vector(i)), 1e-12);
        }
    }

    @Test
    void repeatedEigenvaluesOfASquareGridAreAllFound() {
        int side = 30;
        SymmetricMatrix k = RandomMatrices.grid(side, side);
        double[] ones = new double[side * side];
        Arrays.fill(ones, 1);
        Eigenpairs pairs =
                Eigenproblem.vibration(k, SymmetricMatrix.ofDiagonal(ones), 20, Monitor.quiet());
        double[] exact = new double[side * side];
        for (int i = 0; i < side; i++) {
            for (int j = 0; j < side; j++) {
                exact[i * side + j] = line(i, side) + line(j, side);
            }
        }
        Arrays.sort(exact);
        for (int i = 0; i < 20; i++) {
            assertEquals(exact[i], pairs.value(i), 1e-12 * exact[i]);
        }
        assertTrue(pairs.countBelow() >= 20);
    }

    private static double line(int i, int side) {
        double sine = StrictMath.sin((i + 1) * StrictMath.PI / (2 * (side + 1)));
        return 4 * sine * sine;
    }

    @Test
    void sixEqualOscillatorsGiveOneValueSixTimes() {
        double[] k = {4, 4, 4, 4, 4, 4, 9};
        double[] m = {1, 1, 1, 1, 1, 1, 1};
        Eigenpairs pairs =
                Eigenproblem.vibration(
                        SymmetricMatrix.ofDiagonal(k),
                        SymmetricMatrix.ofDiagonal(m),
                        7,
                        Monitor.quiet());
        assertEquals(7, pairs.size());
        for (int i = 0; i < 6; i++) {
            assertEquals(4, pairs.value(i), 1e-12);
        }
        assertEquals(9, pairs.value(6), 1e-12);
        Eigenpairs two =
                Eigenproblem.vibration(
                        SymmetricMatrix.ofDiagonal(k),
                        SymmetricMatrix.ofDiagonal(m),
                        2,
                        Monitor.quiet());
        assertEquals(2, two.size());
        assertEquals(6, two.countBelow());
    }

    @Test
    void aFreeChainHasOneZeroEigenvalue() {
        int order = 40;
        SymmetricAssembler sum = new SymmetricAssembler(RandomMatrices.grid(order, 1).pattern());
        for (int i = 0; i + 1 < order; i++) {
            sum.add(new int[] {i, i + 1}, new double[][] {{1, -1}, {-1, 1}});
        }
        double[] ones = new double[order];
        Arrays.fill(ones, 1);
        Eigenpairs pairs =
                Eigenproblem.vibration(
                        sum.matrix(), SymmetricMatrix.ofDiagonal(ones), 3, Monitor.quiet());
        assertEquals(0, pairs.value(0), 1e-10);
        for (int i = 1; i < 3; i++) {
            double sine = StrictMath.sin(i * StrictMath.PI / (2 * order));
            assertEquals(4 * sine * sine, pairs.value(i), 1e-10 * pairs.value(i));
        }
    }

    /** r of (K − λM) x = r, by multiplication. */
    private static double[] left(SymmetricMatrix k, SymmetricMatrix m, double lambda, double[] x) {
        double[] left = k.times(x);
        double[] right = m.times(x);
        for (int i = 0; i < left.length; i++) {
            left[i] -= lambda * right[i];
        }
        return left;
    }

    @Test
    void theResidualOfAVibrationIsWhatItsMatricesLeave() {
        SymmetricMatrix k = RandomMatrices.grid(40, 37);
        SymmetricMatrix m = mass(3, k.order(), 0);
        Eigenpairs pairs = Eigenproblem.vibration(k, m, 9, Monitor.quiet());
        int seen = 0;
        for (int i = 0; i < pairs.size(); i++) {
            double[] r = left(k, m, pairs.value(i), pairs.vector(i));
            double square = 0;
            for (int j = 0; j < r.length; j++) {
                square += r[j] * r[j] / m.get(j, j);
            }
            double residual = Math.sqrt(square) / pairs.value(i);
            // Below that, the product has more rounding than residual.
            if (residual > 1e-11) {
                assertEquals(residual, pairs.residual(i), 2e-3 * residual);
                seen++;
            }
        }
        assertTrue(seen > 0, "no residual is above rounding");
    }

    @Test
    void theResidualOfABucklingShapeIsWhatItsMatricesLeave() {
        SymmetricMatrix k = RandomMatrices.grid(16, 15);
        SymmetricMatrix g = RandomMatrices.indefinite(11, k.order());
        Eigenpairs pairs = Eigenproblem.buckling(k, g, 6, Monitor.quiet());
        var solver =
                new CholeskyDecomposition(new Array2DRowRealMatrix(k.toDense()), 1e-9, 1e-300)
                        .getSolver();
        int seen = 0;
        for (int i = 0; i < pairs.size(); i++) {
            double theta = 1 / pairs.value(i);
            // −G x − θ K x, of which A x − θ x is the solution with K.
            double[] r = left(g.scaled(-1), k, theta, pairs.vector(i));
            double[] e = solver.solve(new ArrayRealVector(r)).toArray();
            double residual = Math.sqrt(Vectors.dot(e, r)) / theta;
            if (residual > 1e-12) {
                assertEquals(residual, pairs.residual(i), 2e-3 * residual);
                seen++;
            }
        }
        assertTrue(seen > 0, "no residual is above rounding");
    }

    @Test
    void theCountIsTakenJustAboveTheLast() {
        SymmetricMatrix k = RandomMatrices.grid(20, 17);
        SymmetricMatrix m = mass(5, k.order(), 0.3);
        Eigenpairs pairs = Eigenproblem.vibration(k, m, 7, Monitor.quiet());
        double last = pairs.value(6);
        assertEquals(last * (1 + 1e-6), pairs.checkedTo(), 1e-9 * last);
        assertEquals(7, pairs.countBelow());
        assertEquals(7, Eigenproblem.countBelow(k, m, pairs.checkedTo(), Monitor.quiet()));
    }

    @Test
    void aLoadThatOnlyStiffensNeverBuckles() {
        SymmetricMatrix k = RandomMatrices.grid(6, 6);
        assertEquals(0, Eigenproblem.buckling(k, k, 3, Monitor.quiet()).size());
    }

    @Test
    void anUnstableStructureIsRefused() {
        SymmetricMatrix k = RandomMatrices.grid(6, 6).scaled(-1);
        assertThrows(
                IllegalArgumentException.class,
                () -> Eigenproblem.buckling(k, k, 3, Monitor.quiet()));
    }

    @Property(tries = 100)
    void sturmCountsAgreeWithADenseSolver(
            @ForAll long seed, @ForAll @IntRange(min = 2, max = 40) int order) {
        SymmetricMatrix k = RandomMatrices.definite(seed, order);
        SymmetricMatrix m = mass(seed, order, 0.3);
        double[] theta = dense(k, m);
        double value = 1.5 * k.norm() * new Random(seed).nextDouble();
        int wanted = 0;
        for (double each : theta) {
            wanted += each > 0 && 1 / each < value ? 1 : 0;
        }
        assertEquals(wanted, Eigenproblem.countBelow(k, m, value, Monitor.quiet()));
    }
}
