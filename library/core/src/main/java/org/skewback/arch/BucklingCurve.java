package org.skewback.arch;

import org.skewback.quantity.Quantity;
import org.skewback.quantity.Source;

/** Column curves of EN 1993-1-1:2005, 6.3.1.2, with the bows of arches that EN 1993-2 sets beside them. */
public enum BucklingCurve {
    /** Curve a₀. */
    A0(0.13, 300),
    /** Curve a. */
    A(0.21, 300),
    /** Curve b. */
    B(0.34, 250),
    /** Curve c. */
    C(0.49, 200),
    /** Curve d. */
    D(0.76, 150);

    private final double imperfection;
    private final double bow;

    BucklingCurve(double imperfection, double bow) {
        this.imperfection = imperfection;
        this.bow = bow;
    }

    /**
     * Gives the imperfection factor of the curve as a cited value.
     *
     * @return α (table 6.1)
     */
    public Quantity imperfectionFactor() {
        return Quantity.given(
                "α",
                imperfection,
                "",
                "imperfection factor of the column curve",
                Source.standard("EN 1993-1-1:2005", "table 6.1, from memory"));
    }

    /**
     * Gives the divisor of the length from which the bow of an arch follows, for a curve a to d (EN 1993-2:2006,
     * annex D.3.5, from memory; hold it against the standard before use).
     *
     * @return length over bow: half the axis in one half-wave in the plane, span over two
     */
    public Quantity lengthOverBow() {
        return Quantity.given(
                "n_e",
                bow,
                "",
                "length over bow for the column curve",
                Source.standard("EN 1993-2:2006", "D.3.5, from memory"));
    }
}
