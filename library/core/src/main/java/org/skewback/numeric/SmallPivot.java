package org.skewback.numeric;

/**
 * A pivot that came out small or zero: a structure is free, or nearly free, to move there.
 *
 * @param row unknown, 0 to n − 1, in the numbering of the matrix
 * @param pivot the pivot left by elimination
 * @param scale what it is measured against, see {@link PivotLimits}
 * @param zero whether it counts as zero, so that the matrix counts as singular
 */
public record SmallPivot(int row, double pivot, double scale, boolean zero) {

    /**
     * Gives the size of the pivot against its scale.
     *
     * @return |pivot|/scale; 0 when the scale is 0
     */
    public double ratio() {
        return scale == 0 ? 0 : Math.abs(pivot) / scale;
    }
}
