package org.skewback.arch;

import org.skewback.form.Parabola;
import org.skewback.quantity.Quantity;

/** What the shortening of a parabolic rib of one area does to its thrust. */
final class RibShortening {

    private RibShortening() {}

    /**
     * The thrust under a load uniform on plan.
     *
     * @param bending compliance from bending times E, ∫y²/I ds about the level of the thrust, 1/m
     */
    static Quantity thrust(
            Quantity load, Quantity bending, Quantity area, Quantity span, Quantity rise) {
        Quantity shortened = Parabola.arcLength(span, rise).over(area);
        Quantity lost = shortened.over(bending.plus(meanCosine(span, rise).over(area)));
        return Parabola.thrust(load, span, rise).times(Quantity.of(1).minus(lost));
    }

    static Quantity warming(
            Quantity modulus,
            Quantity expansion,
            Quantity warming,
            Quantity bending,
            Quantity area,
            Quantity span,
            Quantity rise) {
        return modulus.times(expansion)
                .times(warming)
                .times(span)
                .over(bending.plus(meanCosine(span, rise).over(area)));
    }

    /** {@code ∫cos θ dx = L arsinh(4 f/L)/(4 f/L)}. */
    private static Quantity meanCosine(Quantity span, Quantity rise) {
        Quantity slope = rise.times(4).over(span);
        return span.times(slope.asinh()).over(slope);
    }
}
