package org.skewback.numeric;

/**
 * A stop that a displacement meets: force −k(d − g) on the structure where d exceeds the opening g,
 * none elsewhere. For a stop in the other direction give the displacement with the other sign. The
 * mean force over a step is the change of stored energy over the movement, so that a stop neither
 * takes nor makes energy (O. Gonzalez, Time integration and discrete Hamiltonian systems, Journal of
 * Nonlinear Science 6 (1996), 449–467, for the principle).
 *
 * @param opening g in m; negative for a stop that presses from the start
 * @param stiffness k in N/m, above 0
 */
public record Gap(double opening, double stiffness) implements LocalElement {

    /**
     * Checks the values.
     *
     * @param opening g
     * @param stiffness k
     * @throws IllegalArgumentException when a value is out of its range
     */
    public Gap {
        Require.finite("opening", opening);
        Require.positive("stiffness", stiffness);
    }

    @Override
    public int directions() {
        return 1;
    }

    @Override
    public int stateSize() {
        return 0;
    }

    @Override
    public void follow(
            double[] state,
            int stateAt,
            double[] from,
            double[] to,
            int at,
            double[] next,
            double[] mean) {
        double a = Math.max(0, from[at] - opening);
        double b = Math.max(0, to[at] - opening);
        double movement = to[at] - from[at];
        // (b² − a²)/2 over the movement; where both press, the movement is b − a.
        mean[at] =
                (a > 0 && b > 0) || movement == 0
                        ? -stiffness * (a + b) / 2
                        : -stiffness * (b - a) * (b + a) / (2 * movement);
    }

    @Override
    public void force(double[] state, int stateAt, double[] displacement, int at, double[] force) {
        force[at] = -stiffness * Math.max(0, displacement[at] - opening);
    }

    @Override
    public double stored(double[] state, int stateAt, double[] displacement, int at) {
        double press = Math.max(0, displacement[at] - opening);
        return stiffness * press * press / 2;
    }
}
