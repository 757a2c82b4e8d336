package org.skewback.slope;

import org.skewback.numeric.NotConvergedException;

/** The level earthquake coefficient at which a slope just slides. */
public final class YieldCoefficient {

    private static final double LARGEST = 2;

    private YieldCoefficient() {}

    /**
     * Finds the coefficient on one surface by bisection.
     *
     * @param section the section; the upward coefficient it holds stays
     * @param surface the surface
     * @param method the method
     * @param slices number of slices, about
     * @return yield coefficient k_y, from 0 to 2, within 1e-10
     * @throws IllegalArgumentException if the mass slides without an earthquake, or not at a
     *     coefficient of 2
     * @throws NotConvergedException if a factor is not found
     */
    public static double of(
            SlopeSection section, SlipSurface surface, SliceMethod method, int slices) {
        double still = at(section, surface, method, slices, 0);
        if (still < 1) {
            throw Require.refused(
                    "factor of safety without an earthquake", still, "", "at least 1");
        }
        double low = 0;
        double high = LARGEST;
        double shaken = at(section, surface, method, slices, high);
        if (shaken >= 1) {
            throw Require.refused(
                    "factor of safety at an earthquake coefficient of 2", shaken, "", "below 1");
        }
        while (high - low > 1e-10) {
            double middle = (low + high) / 2;
            if (at(section, surface, method, slices, middle) >= 1) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private static double at(
            SlopeSection section,
            SlipSurface surface,
            SliceMethod method,
            int slices,
            double coefficient) {
        return SliceAnalysis.of(
                        section.withEarthquake(coefficient, section.upward()), surface, slices)
                .factor(method)
                .factor();
    }
}
