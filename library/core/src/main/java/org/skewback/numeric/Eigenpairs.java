package org.skewback.numeric;

/**
 * Eigenvalues and eigenvectors found, by increasing eigenvalue, checked to be without gap by a Sturm
 * count.
 */
public final class Eigenpairs {

    private final double[] values;
    private final double[][] vectors;
    private final double[] residuals;
    private final double checkedTo;
    private final int countBelow;

    Eigenpairs(
            double[] values,
            double[][] vectors,
            double[] residuals,
            double checkedTo,
            int countBelow) {
        this.values = values;
        this.vectors = vectors;
        this.residuals = residuals;
        this.checkedTo = checkedTo;
        this.countBelow = countBelow;
    }

    /**
     * Gives the number of pairs: as many as asked for, or all there are.
     *
     * @return pairs
     */
    public int size() {
        return values.length;
    }

    /**
     * Gives an eigenvalue.
     *
     * @param index 0 for the lowest
     * @return λ: ω² in rad²/s² for vibration, the load factor for buckling
     */
    public double value(int index) {
        return values[Require.index("index", index, values.length)];
    }

    /**
     * Gives the eigenvalues.
     *
     * @return λ in increasing order, a copy
     */
    public double[] values() {
        return values.clone();
    }

    /**
     * Gives an eigenvector x, scaled to xᵀM x = 1 for vibration and to xᵀK x = 1 for buckling, its
     * largest component positive.
     *
     * @param index 0 for the lowest
     * @return x, a copy
     */
    public double[] vector(int index) {
        return vectors[Require.index("index", index, values.length)].clone();
    }

    /**
     * Gives the residual of a pair, measured again on the pair returned. For vibration it is ‖(K − σM) x −
     * μM x‖ / μ with μ = λ − σ, in the norm of M⁻¹ (of a mass matrix that is singular, that of the unknowns
     * that have mass), x scaled to xᵀM x = 1; for buckling ‖A x − θ x‖ / θ with A = K⁻¹G and θ = 1/λ, in the
     * norm of K. An eigenvalue lies within that relative distance of λ − σ, or of λ.
     *
     * @param index 0 for the lowest
     * @return relative residual
     */
    public double residual(int index) {
        return residuals[Require.index("index", index, values.length)];
    }

    /**
     * Gives the value just above the last eigenvalue up to which the count was checked.
     *
     * @return the value; 0 when there are no pairs
     */
    public double checkedTo() {
        return checkedTo;
    }

    /**
     * Gives the number of eigenvalues below {@link #checkedTo()}, counted by the inertia of the shifted
     * matrix. It is greater than {@link #size()} when the last eigenvalue is repeated and not all of
     * its vectors were asked for; for buckling only positive eigenvalues count.
     *
     * @return the count
     */
    public int countBelow() {
        return countBelow;
    }
}
