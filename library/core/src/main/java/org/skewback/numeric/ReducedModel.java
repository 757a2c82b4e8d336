package org.skewback.numeric;

import java.util.Arrays;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.EigenDecomposition;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.NonPositiveDefiniteMatrixException;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * A structure described by a few shapes φᵢ that do not interact: φᵢᵀM φⱼ = δᵢⱼ, φᵢᵀK φⱼ = ωᵢ²δᵢⱼ, u = Σ φᵢqᵢ,
 * q̈ᵢ + 2ζᵢωᵢq̇ᵢ + ωᵢ²qᵢ = φᵢᵀf. Immutable.
 */
public final class ReducedModel {

    private final double[] frequencies;
    private final double[][] shapes;

    private ReducedModel(double[] frequencies, double[][] shapes) {
        this.frequencies = frequencies;
        this.shapes = shapes;
    }

    /**
     * Takes the modes of a structure as its shapes.
     *
     * @param modes modes of vibration
     * @return the model
     */
    public static ReducedModel of(Eigenpairs modes) {
        double[] frequencies = new double[modes.size()];
        double[][] shapes = new double[modes.size()][];
        for (int i = 0; i < frequencies.length; i++) {
            frequencies[i] = Math.sqrt(Math.max(0, modes.value(i)));
            shapes[i] = modes.vector(i);
        }
        return new ReducedModel(frequencies, shapes);
    }

    /**
     * Takes the best shapes in a span of vectors by the method of Rayleigh and Ritz: modes together with
     * the static shapes of forces at bearings, say, without which modes alone are too stiff there (R. R.
     * Craig and M. C. C. Bampton, Coupling of substructures for dynamic analyses, AIAA Journal 6 (1968),
     * 1313–1319, for the principle).
     *
     * @param stiffness K, positive semidefinite
     * @param mass M, positive semidefinite, of the same order
     * @param vectors vectors of n values each, independent, with mass
     * @return the model with as many shapes as vectors
     * @throws IllegalArgumentException when the vectors are dependent or without mass
     */
    public static ReducedModel of(
            SymmetricMatrix stiffness, SymmetricMatrix mass, double[][] vectors) {
        int count = vectors.length;
        Require.length("mass matrix", mass.order(), stiffness.order());
        Require.atLeast("number of vectors", count, 1);
        double[][] scaled = new double[count][];
        for (int i = 0; i < count; i++) {
            scaled[i] = Require.vector("vector", vectors[i], mass.order()).clone();
            double norm = Math.sqrt(mass.form(scaled[i], scaled[i]));
            Require.positive("modal mass of vector " + i, norm * norm);
            Vectors.scale(1 / norm, scaled[i]);
        }
        RealMatrix m = reduced(mass, scaled);
        RealMatrix lower;
        try {
            lower = new CholeskyDecomposition(m, 1e-9, 1e-12).getL();
        } catch (NonPositiveDefiniteMatrixException e) {
            throw new IllegalArgumentException(
                    "vector "
                            + e.getRow()
                            + " depends on those before; allowed are independent ones.",
                    e);
        }
        RealMatrix inverse = new LUDecomposition(lower, 0).getSolver().getInverse();
        RealMatrix square =
                inverse.multiply(reduced(stiffness, scaled)).multiply(inverse.transpose());
        EigenDecomposition small =
                new EigenDecomposition(square.add(square.transpose()).scalarMultiply(0.5));
        RealMatrix combinations = inverse.transpose().multiply(small.getV());
        double[] values = small.getRealEigenvalues();
        Integer[] order = new Integer[count];
        Arrays.setAll(order, i -> i);
        Arrays.sort(order, (a, b) -> Double.compare(values[a], values[b]));
        double[] frequencies = new double[count];
        double[][] shapes = new double[count][stiffness.order()];
        for (int i = 0; i < count; i++) {
            frequencies[i] = Math.sqrt(Math.max(0, values[order[i]]));
            for (int j = 0; j < count; j++) {
                Vectors.add(combinations.getEntry(j, order[i]), scaled[j], shapes[i]);
            }
        }
        return new ReducedModel(frequencies, shapes);
    }

    private static RealMatrix reduced(SymmetricMatrix matrix, double[][] vectors) {
        int count = vectors.length;
        double[][] reduced = new double[count][count];
        for (int i = 0; i < count; i++) {
            double[] product = matrix.times(vectors[i]);
            for (int j = 0; j <= i; j++) {
                reduced[i][j] = Vectors.dot(vectors[j], product);
                reduced[j][i] = reduced[i][j];
            }
        }
        return new Array2DRowRealMatrix(reduced, false);
    }

    /**
     * Gives the number of shapes.
     *
     * @return shapes
     */
    public int size() {
        return frequencies.length;
    }

    /**
     * Gives the circular frequencies.
     *
     * @return ωᵢ in rad/s, increasing, a copy
     */
    public double[] circularFrequencies() {
        return frequencies.clone();
    }

    /**
     * Gives a shape.
     *
     * @param index 0 for that of the lowest frequency
     * @return φ, a copy
     */
    public double[] shape(int index) {
        return shapes[Require.index("index", index, shapes.length)].clone();
    }

    /**
     * Reduces a load.
     *
     * @param load f, a value for each unknown of the structure
     * @return φᵢᵀf for each shape
     */
    public double[] reduce(double[] load) {
        double[] reduced = new double[shapes.length];
        for (int i = 0; i < shapes.length; i++) {
            Require.vector("load", load, shapes[i].length);
            reduced[i] = Vectors.dot(shapes[i], load);
        }
        return reduced;
    }

    /**
     * Gives the displacement of the structure.
     *
     * @param coordinates qᵢ for each shape
     * @return Σ φᵢqᵢ
     */
    public double[] expand(double[] coordinates) {
        Require.vector("coordinates", coordinates, shapes.length);
        double[] u = new double[shapes.length == 0 ? 0 : shapes[0].length];
        for (int i = 0; i < shapes.length; i++) {
            Vectors.add(coordinates[i], shapes[i], u);
        }
        return u;
    }
}
