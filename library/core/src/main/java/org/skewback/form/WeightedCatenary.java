package org.skewback.form;

import java.util.OptionalDouble;
import org.skewback.quantity.Quantity;

/**
 * The weighted catenary, {@code y = f [1 − (cosh kξ − 1)/(m − 1)]} with {@code ξ = |2x/L − 1|} and
 * {@code k = arcosh m}: the funicular of a load that grows from the crown to the springing in step
 * with the depth of fill under a level road, {@code g = g_c cosh kξ}.
 *
 * <p>The form is that of A. Strassner, Neuere Methoden zur Statik der Rahmentragwerke und der
 * elastischen Bogenträger (named from memory; the checks do not rest on it).
 *
 * @param span level distance between the springings, L, m, greater than 0
 * @param rise height of the crown above the springings, f, m, greater than 0
 * @param ratio load per plan length at the springing over that at the crown, m, 1 (a parabola) to
 *     1000
 */
public record WeightedCatenary(double span, double rise, double ratio) implements Axis {

    /**
     * Makes a weighted catenary between springings at one level.
     *
     * @param span level distance between the springings, L, m, greater than 0
     * @param rise height of the crown above the springings, f, m, greater than 0
     * @param ratio load per plan length at the springing over that at the crown, m, 1 (a parabola)
     *     to 1000
     * @throws IllegalArgumentException if a value is not finite or out of its range
     */
    public WeightedCatenary {
        Require.positive("span", span, "m");
        Require.positive("rise", rise, "m");
        if (!(ratio >= 1 && ratio <= 1000)) {
            throw Require.refused("ratio of loads", ratio, "", "from 1 to 1000");
        }
    }

    @Override
    public double rightLevel() {
        return 0;
    }

    /**
     * Gives the exponent {@code k = arcosh m}.
     *
     * @return the exponent, 0 for a parabola
     */
    public double exponent() {
        return Hyperbolic.acoshOnePlus(ratio - 1);
    }

    @Override
    public double y(double x) {
        double k = exponent();
        double part = fromMiddle(x);
        // (cosh kξ − 1)/(cosh k − 1) = [sinh(kξ/2)/sinh(k/2)]², which tends to ξ².
        double share = k == 0 ? part : StrictMath.sinh(k * part / 2) / StrictMath.sinh(k / 2);
        return rise * (1 - share * share);
    }

    @Override
    public double slope(double x) {
        double k = exponent();
        double part = fromMiddle(x);
        double steepness =
                k == 0
                        ? 2 * part
                        : k
                                * StrictMath.sinh(k * part)
                                / (2 * StrictMath.sinh(k / 2) * StrictMath.sinh(k / 2));
        return -2 * rise / span * steepness;
    }

    @Override
    public OptionalDouble curvature(double x) {
        double k = exponent();
        double bend =
                k == 0
                        ? 2
                        : k
                                * k
                                * StrictMath.cosh(k * fromMiddle(x))
                                / (2 * StrictMath.sinh(k / 2) * StrictMath.sinh(k / 2));
        double secant = Math.sqrt(1 + slope(x) * slope(x));
        return OptionalDouble.of(4 * rise / (span * span) * bend / (secant * secant * secant));
    }

    /** Distance from the middle in half spans, −1 to 1. */
    private double fromMiddle(double x) {
        double at = Require.within("x", x, 0, span, "m");
        return (2 * at - span) / span;
    }

    /**
     * Gives the exponent, {@code k = arcosh m}.
     *
     * @param ratio load at the springing over that at the crown, m, at least 1
     * @return the exponent
     * @throws IllegalArgumentException if the ratio is not a plain number
     * @throws ArithmeticException if the ratio is less than 1
     */
    public static Quantity exponent(Quantity ratio) {
        return ratio.acosh();
    }

    /**
     * Gives the thrust, {@code H = g_c (m − 1) L²/(4 k² f)}.
     *
     * @param crownLoad load per plan length at the crown, g_c
     * @param ratio load at the springing over that at the crown, m, greater than 1
     * @param exponent exponent k, from {@link #exponent(Quantity)}
     * @param span level distance between the springings, L, greater than 0
     * @param rise height of the crown above the springings, f, greater than 0
     * @return the horizontal component of the force
     * @throws IllegalArgumentException if span, rise or exponent is not positive, or an argument has
     *     the wrong dimension
     */
    public static Quantity thrust(
            Quantity crownLoad, Quantity ratio, Quantity exponent, Quantity span, Quantity rise) {
        Require.dimension(crownLoad, "N/m");
        Require.positive("exponent of the weighted catenary", exponent, "");
        Require.positive("span", span, "m");
        Require.positive("rise", rise, "m");
        return crownLoad
                .times(ratio.minus(1))
                .times(span.squared())
                .over(exponent.squared().times(4).times(rise));
    }

    /**
     * Gives the vertical force at a springing, {@code V = g_c L sinh k/(2 k)}.
     *
     * @param crownLoad load per plan length at the crown, g_c
     * @param exponent exponent k, from {@link #exponent(Quantity)}, greater than 0
     * @param span level distance between the springings, L, greater than 0
     * @return the vertical component of the force
     * @throws IllegalArgumentException if span or exponent is not positive, or an argument has the
     *     wrong dimension
     */
    public static Quantity springingVertical(Quantity crownLoad, Quantity exponent, Quantity span) {
        Require.dimension(crownLoad, "N/m");
        Require.positive("exponent of the weighted catenary", exponent, "");
        Require.positive("span", span, "m");
        return crownLoad.times(span).times(exponent.sinh()).over(exponent.times(2));
    }

    /**
     * Gives the drop of the axis below the crown at the quarter points over the rise, {@code 1/(2 +
     * √(2 (m + 1)))}.
     *
     * @param ratio load at the springing over that at the crown, m, at least 1
     * @return the drop over the rise; 1/4 for a parabola
     * @throws IllegalArgumentException if the ratio is not a plain number
     */
    public static Quantity quarterDrop(Quantity ratio) {
        return Quantity.of(1).over(ratio.plus(1).times(2).root().plus(2));
    }
}
