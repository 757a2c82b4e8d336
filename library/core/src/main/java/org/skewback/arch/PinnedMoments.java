package org.skewback.arch;

import org.skewback.form.Parabola;
import org.skewback.quantity.Quantity;

/** Moments of a parabolic arch whose line of thrust passes both springings. */
final class PinnedMoments {

    private PinnedMoments() {}

    /** {@code P min(a, x) (L − max(a, x))/L − H y}. */
    static Quantity under(
            Quantity load,
            Quantity position,
            Quantity x,
            Quantity span,
            Quantity rise,
            Quantity thrust) {
        Quantity beam =
                load.times(Quantity.min(position, x))
                        .times(span.minus(Quantity.max(position, x)))
                        .over(span);
        return beam.minus(thrust.times(Parabola.ordinate(span, rise, x)));
    }
}
