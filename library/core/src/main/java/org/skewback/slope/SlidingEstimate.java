package org.skewback.slope;

import org.skewback.quantity.Quantity;

/**
 * Permanent displacement of a slope in an earthquake from regressions on records: first estimates,
 * with a scatter of a factor of two and more either way.
 */
public final class SlidingEstimate {

    private SlidingEstimate() {}

    /**
     * Estimates by the ratio of yield to peak acceleration, {@code lg D = 0.215 + lg[(1 − r)^2.341
     * r^−1.438]}, D in cm.
     *
     * <p>Source: R. W. Jibson, Regression models for estimating coseismic landslide displacement,
     * Engineering Geology 91 (2007) (coefficients from memory).
     *
     * @param ratio yield over peak acceleration, r, more than 0, less than 1
     * @return the displacement
     * @throws IllegalArgumentException if the ratio is outside
     */
    public static Quantity jibson(Quantity ratio) {
        return regression(ratio, 0.215, 2.341, -1.438, Quantity.of(0));
    }

    /**
     * Estimates by ratio and magnitude, {@code lg D = −2.710 + lg[(1 − r)^2.335 r^−1.478] + 0.424
     * M}, D in cm.
     *
     * <p>Source: as for {@link #jibson}.
     *
     * @param ratio yield over peak acceleration, r, more than 0, less than 1
     * @param magnitude moment magnitude, M, from 5.3 to 7.6
     * @return the displacement
     * @throws IllegalArgumentException if a value is outside
     */
    public static Quantity jibsonWithMagnitude(Quantity ratio, Quantity magnitude) {
        Require.within("magnitude", magnitude, 5.3, 7.6, "");
        return regression(ratio, -2.710, 2.335, -1.478, magnitude.times(0.424));
    }

    /**
     * Estimates by Arias intensity, {@code lg D = 2.401 lg I_a − 3.481 lg k_y − 3.230}, D in cm,
     * I_a in m/s.
     *
     * <p>Source: as for {@link #jibson}.
     *
     * @param arias Arias intensity, I_a, more than 0, a speed
     * @param yield yield coefficient, k_y, more than 0, less than 1
     * @return the displacement
     * @throws IllegalArgumentException if a value is outside
     */
    public static Quantity jibsonWithArias(Quantity arias, Quantity yield) {
        Require.positive("Arias intensity", arias, "m/s");
        Require.positive("yield coefficient", yield, "");
        Quantity exponent =
                arias.per("m/s")
                        .log10()
                        .times(2.401)
                        .minus(yield.log10().times(3.481))
                        .minus(3.230);
        return centimetres(exponent);
    }

    /**
     * Estimates by the ratio of yield to peak acceleration, {@code lg D = 0.90 + lg[(1 − r)^2.53
     * r^−1.09]}, D in cm.
     *
     * <p>Source: N. N. Ambraseys and J. M. Menu, Earthquake-induced ground displacements, Earthquake
     * Engineering and Structural Dynamics 16 (1988) (coefficients from memory).
     *
     * @param ratio yield over peak acceleration, r, from 0.1 to 0.9
     * @return the displacement
     * @throws IllegalArgumentException if the ratio is outside
     */
    public static Quantity ambraseysMenu(Quantity ratio) {
        Require.within("ratio of yield to peak acceleration", ratio, 0.1, 0.9, "");
        return regression(ratio, 0.90, 2.53, -1.09, Quantity.of(0));
    }

    private static Quantity regression(
            Quantity ratio, double constant, double rest, double part, Quantity more) {
        double r = ratio.in("");
        if (!(r > 0 && r < 1)) {
            throw Require.refused(
                    "ratio of yield to peak acceleration", r, "", "more than 0, less than 1");
        }
        Quantity exponent =
                Quantity.of(1)
                        .minus(ratio)
                        .log10()
                        .times(rest)
                        .plus(ratio.log10().times(part))
                        .plus(constant);
        return centimetres(more.isLeaf() && more.si() == 0 ? exponent : exponent.plus(more));
    }

    private static Quantity centimetres(Quantity exponent) {
        return Quantity.of(1, "cm").times(exponent.times(Quantity.of(10).ln()).exp());
    }
}
