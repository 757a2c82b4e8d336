package org.skewback.numeric;

import java.util.List;

/** A system cannot be solved because pivots are zero; says in which rows. */
public final class SingularMatrixException extends ArithmeticException {

    private static final long serialVersionUID = 1L;

    private final transient List<SmallPivot> zeroPivots;

    /**
     * Makes the exception.
     *
     * @param zeroPivots the zero pivots, at least one
     */
    public SingularMatrixException(List<SmallPivot> zeroPivots) {
        super(message(zeroPivots));
        this.zeroPivots = List.copyOf(zeroPivots);
    }

    private static String message(List<SmallPivot> pivots) {
        SmallPivot first = pivots.get(0);
        return String.format(
                "the matrix is singular: %d zero pivot%s, the first in row %d, %s of scale %s.",
                pivots.size(),
                pivots.size() == 1 ? "" : "s",
                first.row(),
                first.pivot(),
                first.scale());
    }

    /**
     * Gives the rows where elimination found nothing left.
     *
     * @return the zero pivots, in order of elimination
     */
    public List<SmallPivot> zeroPivots() {
        return zeroPivots;
    }
}
