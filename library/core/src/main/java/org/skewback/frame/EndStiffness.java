package org.skewback.frame;

/**
 * Stiffness of the end of a member whose start is held: along x, about x, and two symmetric blocks
 * (z, about y) and (y, about z).
 *
 * @param alongX N/m
 * @param aboutX N·m/rad
 * @param z block of movement along z and rotation about y: 11, 12, 22
 * @param y block of movement along y and rotation about z: 11, 12, 22
 */
@SuppressWarnings("ArrayRecordComponent") // stays in this package, never changed
record EndStiffness(double alongX, double aboutX, double[] z, double[] y) {

    /** Inverts the flexibility, given as along x, about x, z block, y block. */
    static EndStiffness ofFlexibility(double[] f) {
        return new EndStiffness(
                1 / f[0], 1 / f[1], inverse(f[2], f[3], f[4]), inverse(f[5], f[6], f[7]));
    }

    private static double[] inverse(double a, double b, double c) {
        double determinant = a * c - b * b;
        return new double[] {c / determinant, -b / determinant, a / determinant};
    }

    /** Forces on the end for its movement against the start. */
    double[] times(double[] d) {
        return new double[] {
            alongX * d[0],
            y[0] * d[1] + y[1] * d[5],
            z[0] * d[2] + z[1] * d[4],
            aboutX * d[3],
            z[1] * d[2] + z[2] * d[4],
            y[1] * d[1] + y[2] * d[5]
        };
    }

    /** The 12 × 12 stiffness of both ends, by equilibrium. */
    double[][] ofBothEnds(double length) {
        double[][] k = new double[12][];
        double[] none = new double[6];
        for (int j = 0; j < 12; j++) {
            double[] d = new double[6];
            if (j >= 6) {
                d[j - 6] = 1;
            } else {
                d[j] = -1;
                if (j == 5) {
                    d[1] -= length;
                } else if (j == 4) {
                    d[2] += length;
                }
            }
            k[j] = Element.bothEnds(length, times(d), none);
        }
        return k;
    }
}
