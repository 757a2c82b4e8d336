package org.skewback.foundation;

import org.skewback.numeric.NotConvergedException;

/**
 * Pressure below a stiff rectangular footing with eccentricity in both directions, where part of the
 * base may gape.
 *
 * <p>The pressure is {@code p = max(0, a + b x + c y)}; the three numbers are found so that force and
 * both moments balance, by Newton's method on the clipped area, whose moments are exact.
 *
 * @param greatest greatest pressure, at a corner, Pa
 * @param contactPart part of the base that presses, from 0 to 1
 * @param atMiddle pressure of the plane at the middle, a, Pa; negative where the middle gapes
 * @param alongWidth change per length along the width, b, Pa/m
 * @param alongLength change per length along the length, c, Pa/m
 */
public record ContactPressure(
        double greatest,
        double contactPart,
        double atMiddle,
        double alongWidth,
        double alongLength) {

    private static final int ROUNDS = 200;
    private static final double TOLERANCE = 1e-12;

    /**
     * Finds the pressure.
     *
     * @param width side along x, m, greater than 0
     * @param length side along y, m, greater than 0
     * @param normal force square to the base, N, greater than 0
     * @param offX eccentricity along x, m; magnitude less than half the width
     * @param offY eccentricity along y, m; magnitude less than half the length
     * @return the pressure
     * @throws IllegalArgumentException if a value is outside, or the force passes outside the base
     * @throws NotConvergedException if Newton's method does not end, close to a corner or an edge
     */
    public static ContactPressure of(
            double width, double length, double normal, double offX, double offY) {
        Require.positive("width of the footing", width, "m");
        Require.positive("length of the footing", length, "m");
        Require.positive("force square to the base", normal, "N");
        requireOnBase("width", offX, width);
        requireOnBase("length", offY, length);
        // In numbers without unit: sides and mean pressure are 1.
        double u = offX / width;
        double v = offY / length;
        double[] plane = {1, 12 * u, 12 * v};
        double[] moments = moments(plane);
        for (int round = 0; round < ROUNDS; round++) {
            double[] gap = {1 - moments[0], u - moments[1], v - moments[2]};
            double worst = Math.max(Math.abs(gap[0]), Math.max(Math.abs(gap[1]), Math.abs(gap[2])));
            if (worst < TOLERANCE) {
                double mean = normal / (width * length);
                double top = Math.abs(plane[1]) / 2 + Math.abs(plane[2]) / 2 + plane[0];
                return new ContactPressure(
                        mean * top,
                        moments[3],
                        mean * plane[0],
                        mean * plane[1] / width,
                        mean * plane[2] / length);
            }
            double[] step = solve(moments, gap);
            double part = 1;
            double[] next = plane;
            double[] after = moments;
            // Shorter steps until the gap falls, as the area that presses changes shape.
            for (int halving = 0; halving < 60; halving++) {
                next =
                        new double[] {
                            plane[0] + part * step[0],
                            plane[1] + part * step[1],
                            plane[2] + part * step[2]
                        };
                after = moments(next);
                double then =
                        Math.max(
                                Math.abs(1 - after[0]),
                                Math.max(Math.abs(u - after[1]), Math.abs(v - after[2])));
                if (then < worst && after[3] > 0) {
                    break;
                }
                part /= 2;
            }
            plane = next;
            moments = after;
        }
        throw new NotConvergedException(
                "The contact pressure for eccentricities of "
                        + offX
                        + " m and "
                        + offY
                        + " m was not found in "
                        + ROUNDS
                        + " rounds.");
    }

    private static void requireOnBase(String side, double off, double full) {
        if (!(Math.abs(off) < full / 2)) {
            throw Require.refused(
                    "eccentricity along the " + side,
                    off,
                    "m",
                    "less than half the " + side + ", " + full / 2 + " m");
        }
    }

    /**
     * Force, both first moments, area, and the area's first and second moments, where the plane is
     * positive: {F, F_x, F_y, A, S_x, S_y, I_xx, I_xy, I_yy}.
     */
    private static double[] moments(double[] plane) {
        double[][] square = {{-0.5, -0.5}, {0.5, -0.5}, {0.5, 0.5}, {-0.5, 0.5}};
        double[][] clipped = new double[8][];
        int count = 0;
        for (int i = 0; i < 4; i++) {
            double[] a = square[i];
            double[] b = square[(i + 1) % 4];
            double pa = plane[0] + plane[1] * a[0] + plane[2] * a[1];
            double pb = plane[0] + plane[1] * b[0] + plane[2] * b[1];
            if (pa >= 0) {
                clipped[count++] = a;
            }
            if (pa * pb < 0) {
                double t = pa / (pa - pb);
                clipped[count++] =
                        new double[] {a[0] + t * (b[0] - a[0]), a[1] + t * (b[1] - a[1])};
            }
        }
        double[] m = new double[9];
        for (int i = 1; i + 1 < count; i++) {
            addTriangle(m, clipped[0], clipped[i], clipped[i + 1]);
        }
        m[0] = plane[0] * m[3] + plane[1] * m[4] + plane[2] * m[5];
        m[1] = plane[0] * m[4] + plane[1] * m[6] + plane[2] * m[7];
        m[2] = plane[0] * m[5] + plane[1] * m[7] + plane[2] * m[8];
        return m;
    }

    /** Adds a triangle by the midpoints of its sides, exact for squares of the coordinates. */
    private static void addTriangle(double[] m, double[] a, double[] b, double[] c) {
        double area = ((b[0] - a[0]) * (c[1] - a[1]) - (c[0] - a[0]) * (b[1] - a[1])) / 2;
        double[][] middles = {
            {(a[0] + b[0]) / 2, (a[1] + b[1]) / 2},
            {(b[0] + c[0]) / 2, (b[1] + c[1]) / 2},
            {(c[0] + a[0]) / 2, (c[1] + a[1]) / 2}
        };
        for (double[] p : middles) {
            double third = area / 3;
            m[3] += third;
            m[4] += third * p[0];
            m[5] += third * p[1];
            m[6] += third * p[0] * p[0];
            m[7] += third * p[0] * p[1];
            m[8] += third * p[1] * p[1];
        }
    }

    /** Solves for the change of the plane: the derivatives are the moments of the area. */
    private static double[] solve(double[] m, double[] gap) {
        double[][] a = {
            {m[3], m[4], m[5], gap[0]}, {m[4], m[6], m[7], gap[1]}, {m[5], m[7], m[8], gap[2]}
        };
        for (int i = 0; i < 3; i++) {
            int best = i;
            for (int k = i + 1; k < 3; k++) {
                if (Math.abs(a[k][i]) > Math.abs(a[best][i])) {
                    best = k;
                }
            }
            double[] swap = a[i];
            a[i] = a[best];
            a[best] = swap;
            for (int k = i + 1; k < 3; k++) {
                double factor = a[k][i] / a[i][i];
                for (int j = i; j < 4; j++) {
                    a[k][j] -= factor * a[i][j];
                }
            }
        }
        double[] x = new double[3];
        for (int i = 2; i >= 0; i--) {
            double sum = a[i][3];
            for (int j = i + 1; j < 3; j++) {
                sum -= a[i][j] * x[j];
            }
            x[i] = sum / a[i][i];
        }
        return x;
    }
}
