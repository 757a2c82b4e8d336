package org.skewback.frame;

/**
 * A uniform length of a member bent in one plane under a constant axial force: Bψ″ = V, w′ = ψ − V/G −
 * γ₀, V = Q + N w′, with w the movement across, ψ the turn of the section, Q the force across the
 * undeformed axis (Q′ = q) and shear taken at right angles to the deformed axis (F. Engesser, 1891, as
 * in S. P. Timoshenko and J. M. Gere, Theory of Elastic Stability, 2nd edition, 1961, section 2.17). So
 * ψ″ = k²ψ + polynomial with k² = N/(B(1 + N/G)), whose solutions are exact for loads to degree 2.
 *
 * @param length ℓ, m
 * @param bending B = EI, N·m²
 * @param shear 1/G, G the shear stiffness, 1/N
 * @param axial N, positive in tension, N
 */
record BentSpan(double length, double bending, double shear, double axial) {

    private static final int HIGHEST = 6;
    private static final double[] FACTORIAL = {1, 1, 2, 6};

    /** k²ℓ² at which a length clamped at both ends buckles. */
    static final double CLAMPED = -4 * Math.PI * Math.PI;

    /**
     * What acts on it, as polynomials from its start.
     *
     * @param force q by power, N/m
     * @param moment distributed moment in the sense of ψ by power, N·m/m
     * @param curvature imposed ψ′ by power, 1/m
     * @param slip imposed γ₀ by power
     */
    @SuppressWarnings("ArrayRecordComponent") // stays in this package, never changed
    record On(double[] force, double[] moment, double[] curvature, double[] slip) {

        static On nothing() {
            return new On(new double[3], new double[3], new double[3], new double[2]);
        }
    }

    /** How it stands at a place: w, ψ, M, V and Q. */
    record Place(double across, double turn, double moment, double shear, double force) {}

    /** 1 + N/G; not above 0 where compression exceeds what shear can hold. */
    double stretch() {
        return 1 + axial * shear;
    }

    /** k²ℓ², negative in compression. */
    double argument() {
        return axial * length * length / (bending * stretch());
    }

    /** The state at x from that at the start. */
    Place at(double x, Place start, On on) {
        double g = stretch();
        double b = bending * g;
        double[] c = Stumpff.upTo(HIGHEST, axial / b * x * x);
        double[] q = on.force;
        double[] r = {
            (start.force - axial * on.slip[0]) / b + on.curvature[1] - on.moment[0] / bending,
            (q[0] - axial * on.slip[1]) / b + 2 * on.curvature[2] - on.moment[1] / bending,
            q[1] / 2 / b - on.moment[2] / bending,
            q[2] / 3 / b
        };
        double bow = start.moment / bending + on.curvature[0];
        double turn = start.turn * c[0] + bow * x * c[1];
        double rate = start.turn * axial / b * x * c[1] + bow * c[0];
        double sum = start.turn * x * c[1] + bow * x * x * c[2];
        double power = x;
        for (int j = 0; j < 4; j++) {
            double share = r[j] * FACTORIAL[j] * power;
            rate += share * c[j + 1];
            turn += share * x * c[j + 2];
            sum += share * x * x * c[j + 3];
            power *= x;
        }
        double force = start.force + x * (q[0] + x * (q[1] / 2 + x * q[2] / 3));
        double forces = x * (start.force + x * (q[0] / 2 + x * (q[1] / 6 + x * q[2] / 12)));
        double slip = on.slip[0] + x * on.slip[1];
        double slipped = x * (on.slip[0] + x * on.slip[1] / 2);
        double imposed = on.curvature[0] + x * (on.curvature[1] + x * on.curvature[2]);
        return new Place(
                start.across + (sum - slipped - shear * forces) / g,
                turn,
                bending * (rate - imposed),
                (force + axial * (turn - slip)) / g,
                force);
    }

    /**
     * Gives moment and force at the start that move the end by this much more.
     *
     * @param across movement along w still wanted at the end, m
     * @param turn movement along ψ still wanted at the end, rad
     * @return M and Q at the start
     */
    double[] toMove(double across, double turn) {
        double g = stretch();
        double[] c = Stumpff.upTo(3, argument());
        double l = length;
        double turnByMoment = l * c[1] / bending;
        double acrossByMoment = l * l * c[2] / (bending * g);
        double acrossByForce = (l * l * l * c[3] / (bending * g) - shear * l) / g;
        double determinant = turnByMoment * acrossByForce - acrossByMoment * acrossByMoment;
        return new double[] {
            (turn * acrossByForce - across * acrossByMoment) / determinant,
            (turnByMoment * across - acrossByMoment * turn) / determinant
        };
    }
}
