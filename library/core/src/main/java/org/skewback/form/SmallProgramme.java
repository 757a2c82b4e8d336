package org.skewback.form;

import java.util.Arrays;
import java.util.OptionalInt;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.jspecify.annotations.Nullable;
import org.skewback.numeric.NotConvergedException;

/**
 * A linear programme of few unknowns and many constraints: maximise the last unknown subject to
 * {@code rows · x ≤ limits}.
 *
 * <p>The dual simplex method (V. Chvátal, Linear Programming, Freeman 1983, ch. 10; chapter from
 * memory) with as many constraints held as there are unknowns: the constraint most violated enters,
 * and the point is solved anew from the constraints held, so that no rounding builds up. The simplex
 * of Commons Math 3.6.1 works on the whole tableau and was seen to call programmes of this kind
 * infeasible that are not.
 */
final class SmallProgramme {

    private static final double VIOLATED = 1e-12;
    private static final double PIVOT = 1e-11;
    private static final int MOST_PIVOTS = 5000;

    private final double[][] rows;
    private final double[] limits;
    private final int unknowns;

    /**
     * Takes the constraints and adds bounds on the size of every unknown.
     *
     * @param bound each unknown's bound in magnitude
     */
    SmallProgramme(double[][] rows, double[] limits, double[] bound) {
        unknowns = bound.length;
        int given = rows.length;
        this.rows = Arrays.copyOf(rows, given + 2 * unknowns);
        this.limits = Arrays.copyOf(limits, given + 2 * unknowns);
        for (int k = 0; k < unknowns; k++) {
            for (int sign = 0; sign < 2; sign++) {
                double[] row = new double[unknowns];
                row[k] = sign == 0 ? 1 : -1;
                this.rows[given + 2 * k + sign] = row;
                this.limits[given + 2 * k + sign] = bound[k];
            }
        }
    }

    /**
     * Gives the best point, or null if no point meets all constraints.
     *
     * @throws NotConvergedException if 5000 changes of the constraints held are not enough
     */
    double @Nullable [] solve() {
        int[] held = new int[unknowns];
        Arrays.setAll(held, k -> rows.length - 2 * unknowns + 2 * k);
        double[] objective = new double[unknowns];
        objective[unknowns - 1] = 1;
        for (int pivot = 0; pivot < MOST_PIVOTS; pivot++) {
            RealMatrix matrix = new Array2DRowRealMatrix(unknowns, unknowns);
            double[] right = new double[unknowns];
            for (int k = 0; k < unknowns; k++) {
                matrix.setRow(k, rows[held[k]]);
                right[k] = limits[held[k]];
            }
            double[] point = solve(matrix, right);
            OptionalInt entering = mostViolated(point);
            if (entering.isEmpty()) {
                return point;
            }
            RealMatrix transposed = matrix.transpose();
            double[] weights = solve(transposed, objective);
            double[] change = solve(transposed, rows[entering.getAsInt()]);
            int leaving = leaving(weights, change);
            if (leaving < 0) {
                return null;
            }
            held[leaving] = entering.getAsInt();
        }
        throw new NotConvergedException(
                "The linear programme did not end within " + MOST_PIVOTS + " pivots.");
    }

    private OptionalInt mostViolated(double[] point) {
        double worst = VIOLATED;
        OptionalInt found = OptionalInt.empty();
        for (int i = 0; i < rows.length; i++) {
            double sum = -limits[i];
            double size = Math.abs(limits[i]);
            for (int k = 0; k < unknowns; k++) {
                sum += rows[i][k] * point[k];
                size += Math.abs(rows[i][k] * point[k]);
            }
            if (sum > worst * size) {
                worst = sum / size;
                found = OptionalInt.of(i);
            }
        }
        return found;
    }

    /** The constraint whose weight is used up first as the entering one takes over, or −1. */
    private int leaving(double[] weights, double[] change) {
        double largest = Arrays.stream(change).map(Math::abs).max().orElse(0);
        int leaving = -1;
        double least = Double.POSITIVE_INFINITY;
        for (int k = 0; k < unknowns; k++) {
            if (change[k] > PIVOT * largest) {
                double ratio = Math.max(0, weights[k]) / change[k];
                // Of equal ratios the larger pivot, which keeps the held constraints apart.
                if (ratio < least || (ratio == least && change[k] > change[leaving])) {
                    least = ratio;
                    leaving = k;
                }
            }
        }
        return leaving;
    }

    private static double[] solve(RealMatrix matrix, double[] right) {
        return new LUDecomposition(matrix, 0)
                .getSolver()
                .solve(new ArrayRealVector(right, false))
                .toArray();
    }
}
