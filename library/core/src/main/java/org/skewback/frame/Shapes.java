package org.skewback.frame;

import java.util.Arrays;

/**
 * How a member moves along itself when its nodes move: the exact shapes of the unloaded member, with
 * its shear flexibility, taper and joints in them (Przemieniecki 1968, section 11.4, for uniform
 * members).
 */
final class Shapes {

    /** Rows: displacements, rotations of the section, and their derivatives along the member. */
    static final int U = 0;

    static final int V = 1;
    static final int W = 2;
    static final int TWIST = 3;
    static final int TURN_Y = 4;
    static final int TURN_Z = 5;
    static final int SLOPE = 6;

    private final Element element;
    private final boolean uniform;
    private final ElementState[] states = new ElementState[12];

    Shapes(Element element) {
        this.element = element;
        uniform =
                element.member() instanceof BeamColumn beam
                        && beam.profile() instanceof SectionProfile.Uniform;
        for (int j = 0; j < 12; j++) {
            double[] unit = new double[12];
            unit[j] = 1;
            states[j] = element.state(unit, ElementLoad.NONE);
        }
    }

    /** The twelve quantities at x for a unit movement of each of the twelve end motions. */
    double[][] at(double x) {
        double[][] rows = new double[12][12];
        double[] f = element.flexibility(x);
        for (int j = 0; j < 12; j++) {
            double[] e = states[j].forces(x, false);
            for (int k = 0; k < 6; k++) {
                e[k] *= f[k];
            }
            double[] u = uniform ? polynomial(states[j], f, x) : states[j].movement(x);
            for (int k = 0; k < 6; k++) {
                rows[k][j] = u[k];
            }
            rows[SLOPE][j] = e[0];
            rows[SLOPE + V][j] = u[TURN_Z] - e[1];
            rows[SLOPE + W][j] = -u[TURN_Y] - e[2];
            rows[SLOPE + TWIST][j] = e[3];
            rows[SLOPE + TURN_Y][j] = -e[4];
            rows[SLOPE + TURN_Z][j] = e[5];
        }
        return rows;
    }

    /** Movement at x where deformations are constant or linear along the member. */
    private double[] polynomial(ElementState state, double[] f, double x) {
        double[] start = state.forces(0, false);
        double[] end = state.forces(element.length(), false);
        double[] u = Arrays.copyOf(state.ends(), 6);
        double toY = (end[5] - start[5]) / element.length();
        double toZ = (end[4] - start[4]) / element.length();
        u[V] += x * (u[TURN_Z] - f[1] * start[1] + f[5] * x * (start[5] / 2 + x * toY / 6));
        u[W] += x * (-u[TURN_Y] - f[2] * start[2] + f[4] * x * (start[4] / 2 + x * toZ / 6));
        u[U] += x * f[0] * start[0];
        u[TWIST] += x * f[3] * start[3];
        u[TURN_Y] -= f[4] * x * (start[4] + x * toZ / 2);
        u[TURN_Z] += f[5] * x * (start[5] + x * toY / 2);
        return u;
    }
}
