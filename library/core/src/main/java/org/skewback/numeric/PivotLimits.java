package org.skewback.numeric;

/**
 * When a pivot counts as zero and when as suspiciously small, relative to its scale: the diagonal
 * entry before elimination or, where that is zero, the largest aᵢⱼ²/|aᵢᵢ| of the column.
 *
 * <p>For a positive definite matrix the ratio of pivot to scale is at least 1/κ of the matrix scaled
 * to unit diagonal, and the digits lost in that unknown are about −log₁₀ of the ratio.
 *
 * @param zero ratio below which a pivot counts as zero, 0 or more
 * @param small ratio below which a pivot is reported, not less than {@code zero}
 */
public record PivotLimits(double zero, double small) {

    /**
     * Checks the limits.
     *
     * @param zero ratio below which a pivot counts as zero
     * @param small ratio below which a pivot is reported
     * @throws IllegalArgumentException when a limit is negative or not finite, or zero above small
     */
    public PivotLimits {
        Require.notNegative("limit of zero pivots", zero);
        Require.notNegative("limit of small pivots", small);
        if (zero > small) {
            throw new IllegalArgumentException(
                    "limit of zero pivots is "
                            + zero
                            + "; allowed is at most that of small pivots, "
                            + small
                            + ".");
        }
    }

    /**
     * Gives the limits used where none are named: zero below 1e-13, reported below 1e-10. Rounding
     * leaves about 1e-16 to 1e-14 of the scale where a structure is free to move; 1e-10 still leaves
     * five or six good digits.
     *
     * @return the usual limits
     */
    public static PivotLimits usual() {
        return new PivotLimits(1e-13, 1e-10);
    }
}
