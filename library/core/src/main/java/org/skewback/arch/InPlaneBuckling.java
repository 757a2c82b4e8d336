package org.skewback.arch;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.EigenDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.QRDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.skewback.form.Axis;
import org.skewback.numeric.NotConvergedException;

/**
 * Buckling in its plane of an arch that follows the line of thrust of its load, so that it is free of
 * moments until it buckles.
 *
 * <p><b>Load.</b> Dead and vertical: each piece of load stays with the piece of rib that it stands on and
 * keeps its size and direction. (A load that stays uniform per plan length of the <i>deformed</i> arch
 * gives other numbers, up to a tenth apart.) The rib does not shorten. With the rotation φ of the axis,
 *
 * <pre>
 * ∫ E I cos θ φ′² dx = H ∫ φ²/cos² θ dx,   ∫ φ dx = 0,   ∫ φ tan θ dx = 0,
 * </pre>
 *
 * the second variation of the energy with N = H/cos θ and the closure of the axis; φ is 0 at a fixed
 * springing and may jump at a crown hinge. It is solved with Legendre polynomials on each half, whose
 * degree rises until two answers agree to 1e-9. Source: the energy criterion after S. P. Timoshenko and J.
 * M. Gere, <i>Theory of Elastic Stability</i>, 2nd ed. 1961, chapter 7 (from memory), derived anew.
 */
public final class InPlaneBuckling {

    private static final int LOWEST_DEGREE = 12;
    private static final int HIGHEST_DEGREE = 36;
    private static final int STEP = 6;
    private static final double AGREEMENT = 1e-9;

    private final Axis axis;
    private final DoubleUnaryOperator bending;
    private final ArchHinges hinges;
    private final double crown;

    /**
     * Makes the problem.
     *
     * @param axis the axis, nowhere upright; taken for the line of thrust of its load
     * @param bending E I at a position x in m, N·m², greater than 0
     * @param hinges where the hinges are
     * @param crown position of the crown hinge, or any position inside the span where there is none, m
     * @throws IllegalArgumentException if the crown is not within the span or the axis is upright at a
     *     springing
     */
    public InPlaneBuckling(
            Axis axis, DoubleUnaryOperator bending, ArchHinges hinges, double crown) {
        this.axis = axis;
        this.bending = bending;
        this.hinges = hinges;
        this.crown = crown;
        if (!(crown > 0 && crown < axis.span())) {
            throw Require.refused(
                    "position of the crown", crown, "m", "between 0 m and " + axis.span() + " m");
        }
        Require.finite("slope of the axis at the left springing", axis.slope(0), "");
        Require.finite("slope of the axis at the right springing", axis.slope(axis.span()), "");
    }

    /**
     * Gives the lowest shapes.
     *
     * @param count how many, 1 to 6
     * @return the shapes, from the lowest thrust upward
     * @throws IllegalArgumentException if the count is out of range or a stiffness is not positive
     * @throws NotConvergedException if the shapes do not settle
     */
    public List<ArchBucklingMode> modes(int count) {
        Require.within("number of buckling shapes", count, 1, 6, "");
        List<ArchBucklingMode> previous = solved(LOWEST_DEGREE, count);
        double change = Double.NaN;
        for (int degree = LOWEST_DEGREE + STEP; degree <= HIGHEST_DEGREE; degree += STEP) {
            List<ArchBucklingMode> modes = solved(degree, count);
            change = 0;
            for (int i = 0; i < count; i++) {
                double thrust = modes.get(i).thrust();
                change = Math.max(change, Math.abs(thrust / previous.get(i).thrust() - 1));
            }
            if (change <= AGREEMENT) {
                return modes;
            }
            previous = modes;
        }
        throw new NotConvergedException(
                "The buckling shapes of the arch did not settle with polynomials of degree "
                        + HIGHEST_DEGREE
                        + "; the last change of a thrust was "
                        + change
                        + " of it.");
    }

    private List<ArchBucklingMode> solved(int degree, int count) {
        List<Piece> pieces = pieces(degree);
        int size = pieces.size() * (degree + 1);
        double[][] stiff = new double[size][size];
        double[][] geometric = new double[size][size];
        List<double[]> conditions = new ArrayList<>();
        double[] level = new double[size];
        double[] upright = new double[size];
        for (int i = 0; i < pieces.size(); i++) {
            pieces.get(i).add(i * (degree + 1), stiff, geometric, level, upright);
        }
        conditions.add(level);
        conditions.add(upright);
        for (int i = 1; i < pieces.size(); i++) {
            if (!(hinges.atCrown() && pieces.get(i).from == crown)) {
                double[] joined = new double[size];
                for (int j = 0; j <= degree; j++) {
                    joined[(i - 1) * (degree + 1) + j] = 1;
                    joined[i * (degree + 1) + j] = j % 2 == 0 ? -1 : 1;
                }
                conditions.add(joined);
            }
        }
        if (!hinges.atSpringings()) {
            double[] left = new double[size];
            double[] right = new double[size];
            for (int j = 0; j <= degree; j++) {
                left[j] = j % 2 == 0 ? 1 : -1;
                right[(pieces.size() - 1) * (degree + 1) + j] = 1;
            }
            conditions.add(left);
            conditions.add(right);
        }
        return lowest(stiff, geometric, conditions, pieces, degree, count);
    }

    private List<ArchBucklingMode> lowest(
            double[][] stiff,
            double[][] geometric,
            List<double[]> conditions,
            List<Piece> pieces,
            int degree,
            int count) {
        RealMatrix held =
                new Array2DRowRealMatrix(conditions.toArray(double[][]::new), false).transpose();
        int size = held.getRowDimension();
        RealMatrix free =
                new QRDecomposition(held)
                        .getQ()
                        .getSubMatrix(0, size - 1, conditions.size(), size - 1);
        RealMatrix k = free.transpose().multiply(new Array2DRowRealMatrix(stiff)).multiply(free);
        RealMatrix g =
                free.transpose().multiply(new Array2DRowRealMatrix(geometric)).multiply(free);
        // K v = H G v with G = L Lᵀ: the symmetric problem of L⁻¹ K L⁻ᵀ.
        RealMatrix lower = new CholeskyDecomposition(symmetric(g)).getL();
        RealMatrix half = forward(lower, k);
        RealMatrix standard = forward(lower, half.transpose());
        EigenDecomposition eigen = new EigenDecomposition(symmetric(standard));
        double[] values = eigen.getRealEigenvalues();
        List<ArchBucklingMode> modes = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            int at = values.length - 1 - i;
            RealVector shape = eigen.getEigenvector(at).copy();
            MatrixUtils.solveUpperTriangularSystem(lower.transpose(), shape);
            modes.add(
                    new ArchBucklingMode(
                            values[at], lift(free.operate(shape).toArray(), pieces, degree)));
        }
        return List.copyOf(modes);
    }

    /** Takes away what rounding left of a difference between a matrix and its transpose. */
    private static RealMatrix symmetric(RealMatrix matrix) {
        return matrix.add(matrix.transpose()).scalarMultiply(0.5);
    }

    private static RealMatrix forward(RealMatrix lower, RealMatrix right) {
        RealMatrix solved = right.copy();
        for (int column = 0; column < right.getColumnDimension(); column++) {
            RealVector vector = right.getColumnVector(column);
            MatrixUtils.solveLowerTriangularSystem(lower, vector);
            solved.setColumnVector(column, vector);
        }
        return solved;
    }

    /** The integral of φ dx, scaled. */
    private DoubleUnaryOperator lift(double[] shape, List<Piece> pieces, int degree) {
        int steps = 400;
        double largest = 0;
        for (int i = 0; i <= steps; i++) {
            double value = raised(shape, pieces, degree, axis.span() * i / steps);
            if (Math.abs(value) > Math.abs(largest)) {
                largest = value;
            }
        }
        double scale = 1 / largest;
        return x -> scale * raised(shape, pieces, degree, x);
    }

    private double raised(double[] shape, List<Piece> pieces, int degree, double x) {
        Require.within("x", x, 0, axis.span(), "m");
        double sum = 0;
        for (int i = 0; i < pieces.size(); i++) {
            Piece piece = pieces.get(i);
            if (x <= piece.from) {
                break;
            }
            double t = 2 * (Math.min(x, piece.to) - piece.from) / (piece.to - piece.from) - 1;
            double[] p = legendre(t, degree + 1);
            double half = (piece.to - piece.from) / 2;
            // ∫ P_n = (P_{n+1} − P_{n−1})/(2n + 1) from −1
            sum += half * shape[i * (degree + 1)] * (t + 1);
            for (int n = 1; n <= degree; n++) {
                sum += half * shape[i * (degree + 1) + n] * (p[n + 1] - p[n - 1]) / (2 * n + 1);
            }
        }
        return sum;
    }

    private List<Piece> pieces(int degree) {
        TreeSet<Double> ends = new TreeSet<>(axis.breaks());
        ends.add(0.0);
        ends.add(crown);
        ends.add(axis.span());
        List<Piece> pieces = new ArrayList<>();
        Double from = null;
        for (Double to : ends) {
            if (from != null) {
                pieces.add(new Piece(from, to, degree));
            }
            from = to;
        }
        return pieces;
    }

    /** A part of the span with polynomials of its own. */
    private final class Piece {

        final double from;
        final double to;
        private final int degree;

        Piece(double from, double to, int degree) {
            this.from = from;
            this.to = to;
            this.degree = degree;
        }

        void add(
                int first,
                double[][] stiff,
                double[][] geometric,
                double[] level,
                double[] upright) {
            GaussIntegrator rule = new GaussIntegratorFactory().legendre(2 * degree + 8);
            double half = (to - from) / 2;
            for (int point = 0; point < rule.getNumberOfPoints(); point++) {
                double t = rule.getPoint(point);
                double x = from + half * (1 + t);
                double weight = half * rule.getWeight(point);
                double slope = axis.slope(x);
                double secant = StrictMath.hypot(1, slope);
                double bent =
                        Require.positive(
                                        "bending stiffness at x = " + x + " m",
                                        bending.applyAsDouble(x),
                                        "N·m²")
                                / secant
                                / (half * half);
                double[] p = legendre(t, degree);
                double[] d = derivatives(t, p);
                for (int i = 0; i <= degree; i++) {
                    level[first + i] += weight * p[i];
                    upright[first + i] += weight * p[i] * slope;
                    for (int j = 0; j <= degree; j++) {
                        stiff[first + i][first + j] += weight * bent * d[i] * d[j];
                        geometric[first + i][first + j] += weight * secant * secant * p[i] * p[j];
                    }
                }
            }
        }
    }

    /** Legendre polynomials by Bonnet's recursion. */
    private static double[] legendre(double t, int degree) {
        double[] p = new double[degree + 1];
        p[0] = 1;
        if (degree > 0) {
            p[1] = t;
        }
        for (int n = 1; n < degree; n++) {
            p[n + 1] = ((2 * n + 1) * t * p[n] - n * p[n - 1]) / (n + 1);
        }
        return p;
    }

    private static double[] derivatives(double t, double[] p) {
        double[] d = new double[p.length];
        for (int n = 1; n < p.length; n++) {
            d[n] = n * p[n - 1] + t * d[n - 1];
        }
        return d;
    }
}
