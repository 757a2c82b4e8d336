package org.skewback.frame;

import java.util.Arrays;

/** A response spectrum for design: pseudo-acceleration by period, for the damping it was made for. */
public interface DesignSpectrum {

    /**
     * Gives the pseudo-acceleration ω²·(largest displacement) of an oscillator.
     *
     * @param period natural period T, s, 0 or more
     * @return S_a, m/s²
     * @throws IllegalArgumentException if the period is out of range
     */
    double acceleration(double period);

    /**
     * Makes a spectrum of points, straight between them.
     *
     * @param periods periods from 0 on, increasing, s
     * @param accelerations pseudo-acceleration at each, m/s², 0 or more
     * @return the spectrum; it refuses periods beyond the last
     * @throws IllegalArgumentException if lengths differ, the periods do not increase from 0, or a number
     *     is negative or not finite
     */
    static DesignSpectrum ofPoints(double[] periods, double[] accelerations) {
        if (periods.length != accelerations.length || periods.length < 2) {
            throw new IllegalArgumentException(
                    "a spectrum of "
                            + periods.length
                            + " periods and "
                            + accelerations.length
                            + " accelerations; allowed are as many of both, at least 2.");
        }
        double[] at = periods.clone();
        double[] values = accelerations.clone();
        for (int i = 0; i < at.length; i++) {
            Require.notNegative("acceleration of a spectrum", values[i], "m/s²");
            if (i == 0 ? at[0] != 0 : !(at[i] > at[i - 1] && Double.isFinite(at[i]))) {
                throw Require.refused(
                        "period " + i + " of a spectrum",
                        at[i],
                        "s",
                        i == 0 ? "0 s" : "more than the one before");
            }
        }
        return period -> {
            Require.within("period", period, 0, at[at.length - 1], "s");
            int i = Arrays.binarySearch(at, period);
            if (i >= 0) {
                return values[i];
            }
            int k = -i - 1;
            double share = (period - at[k - 1]) / (at[k] - at[k - 1]);
            return values[k - 1] + share * (values[k] - values[k - 1]);
        };
    }
}
