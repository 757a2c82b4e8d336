package org.skewback.frame;

import java.util.Arrays;

/**
 * The releases and springs between a member's ends and its nodes, condensed out of its stiffness:
 * with E the motions that give and k their springs, K = K₀ − K₀E(EᵀK₀E + k)⁻¹EᵀK₀ (Przemieniecki
 * 1968, section 9.1, for hinges).
 */
final class Joints {

    /** A pivot below this share of its diagonal is round-off: the member would be loose. */
    private static final double LOOSE = 1e-12;

    private final int[] gives;
    private final double[][] rigid;
    private final double[][] factor;
    private final double[][] stiffness;

    Joints(String member, double[][] rigid, EndConnection start, EndConnection end) {
        this.rigid = rigid;
        int count = 0;
        int[] which = new int[12];
        double[] springs = new double[12];
        for (Motion motion : Motion.values()) {
            for (int atEnd = 0; atEnd < 2; atEnd++) {
                double k = (atEnd == 0 ? start : end).stiffness(motion);
                if (k < Double.POSITIVE_INFINITY) {
                    which[count] = 6 * atEnd + motion.index();
                    springs[count++] = k;
                }
            }
        }
        gives = Arrays.copyOf(which, count);
        factor = factorize(member, rigid, gives, springs);
        stiffness = condensed(springs);
    }

    /** Cholesky factor of EᵀK₀E + k. */
    private static double[][] factorize(
            String member, double[][] rigid, int[] gives, double[] springs) {
        int n = gives.length;
        double[][] l = new double[n][n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j <= i; j++) {
                double sum = rigid[gives[i]][gives[j]] + (i == j ? springs[i] : 0);
                double scale = sum;
                for (int k = 0; k < j; k++) {
                    sum -= l[i][k] * l[j][k];
                }
                if (i == j) {
                    if (sum <= LOOSE * scale) {
                        throw new IllegalArgumentException(
                                "member "
                                        + member
                                        + " is loose: with the releases at its ends it can move "
                                        + Motion.at(gives[i] % 6)
                                        + " (local axes) by itself; allowed are releases that"
                                        + " leave it held.");
                    }
                    l[i][i] = Math.sqrt(sum);
                } else {
                    l[i][j] = sum / l[j][j];
                }
            }
        }
        return l;
    }

    private double[][] condensed(double[] springs) {
        if (gives.length == 0) {
            return rigid;
        }
        double[][] k = new double[12][12];
        for (int j = 0; j < 12; j++) {
            double[] column = new double[12];
            for (int i = 0; i < 12; i++) {
                column[i] = rigid[i][j];
            }
            double[] reduced = clamped(column);
            for (int i = 0; i < 12; i++) {
                k[i][j] = reduced[i];
            }
        }
        for (int g = 0; g < gives.length; g++) {
            if (springs[g] == 0) {
                for (int i = 0; i < 12; i++) {
                    k[i][gives[g]] = 0;
                    k[gives[g]][i] = 0;
                }
            }
        }
        return k;
    }

    /** Stiffness with the joints in it. */
    double[][] stiffness() {
        return stiffness;
    }

    /** Forces on the ends for movements of the ends themselves, within the joints. */
    double[] rigid(double[] inside) {
        return FrameSystem.times(rigid, inside);
    }

    /** Forces of clamped nodes from those of clamped ends. */
    double[] clamped(double[] rigidForces) {
        if (gives.length == 0) {
            return rigidForces;
        }
        double[] slip = slip(rigidForces);
        double[] forces = rigidForces.clone();
        for (int g = 0; g < gives.length; g++) {
            for (int i = 0; i < 12; i++) {
                forces[i] += rigid[i][gives[g]] * slip[g];
            }
        }
        return forces;
    }

    /** Movements of the member's ends inside their joints, from those of the nodes. */
    double[] inside(double[] movements, double[] rigidClamped) {
        if (gives.length == 0) {
            return movements;
        }
        double[] forces = rigidClamped.clone();
        for (int i = 0; i < 12; i++) {
            for (int j = 0; j < 12; j++) {
                forces[i] += rigid[i][j] * movements[j];
            }
        }
        double[] slip = slip(forces);
        double[] inside = movements.clone();
        for (int g = 0; g < gives.length; g++) {
            inside[gives[g]] += slip[g];
        }
        return inside;
    }

    /** How far the ends give against the nodes: −(EᵀK₀E + k)⁻¹ Eᵀ f. */
    private double[] slip(double[] forces) {
        int n = gives.length;
        double[] x = new double[n];
        for (int i = 0; i < n; i++) {
            double sum = -forces[gives[i]];
            for (int k = 0; k < i; k++) {
                sum -= factor[i][k] * x[k];
            }
            x[i] = sum / factor[i][i];
        }
        for (int i = n - 1; i >= 0; i--) {
            double sum = x[i];
            for (int k = i + 1; k < n; k++) {
                sum -= factor[k][i] * x[k];
            }
            x[i] = sum / factor[i][i];
        }
        return x;
    }
}
