package org.skewback.numeric;

/**
 * Exact stepping of m ü + c u̇ + k u = p(t) for a load that runs straight from step to step: the only
 * error is rounding, whatever the step (N. C. Nigam and P. C. Jennings, Calculation of response
 * spectra from strong-motion earthquake records, Bulletin of the Seismological Society of America 59
 * (1969), 909–922).
 *
 * <p>Their recurrence is found here from the matrix exponential of the oscillator with its load as two
 * further states (C. F. Van Loan, Computing integrals involving the matrix exponential, IEEE
 * Transactions on Automatic Control 23 (1978), 395–404), which holds alike for under-, critically and
 * overdamped oscillators and for a free mass.
 */
public final class PiecewiseLinearStepping {

    private static final int STATES = 4;
    private static final int TERMS = 20;

    private final double mass;
    private final double damping;
    private final double stiffness;
    private final double step;

    /** u₁ = d[0]u₀ + d[1]u̇₀ + d[2]p₀ + d[3]p₁, and u̇₁ with v. */
    private final double[] d;

    private final double[] v;

    private PiecewiseLinearStepping(double mass, double damping, double stiffness, double step) {
        this.mass = mass;
        this.damping = damping;
        this.stiffness = stiffness;
        this.step = step;
        double squared = stiffness * step * step / mass;
        double scale = Math.max(1, Math.sqrt(squared));
        double[][] a = new double[STATES][STATES];
        a[0][1] = scale;
        a[1][0] = -squared / scale;
        a[1][1] = -damping * step / mass;
        a[1][2] = 1;
        a[2][3] = 1;
        double[][] e = exponential(a);
        double load = step * step / mass;
        d =
                new double[] {
                    e[0][0],
                    e[0][1] * step / scale,
                    (e[0][2] - e[0][3]) * load / scale,
                    e[0][3] * load / scale
                };
        v =
                new double[] {
                    e[1][0] * scale / step,
                    e[1][1],
                    (e[1][2] - e[1][3]) * load / step,
                    e[1][3] * load / step
                };
    }

    /**
     * Prepares stepping.
     *
     * @param mass mass m in kg, above 0
     * @param damping damping coefficient c in N·s/m, 0 or more
     * @param stiffness stiffness k in N/m, 0 or more
     * @param step time step in s, above 0
     * @return the stepping
     * @throws IllegalArgumentException when a value is out of its range
     */
    public static PiecewiseLinearStepping of(
            double mass, double damping, double stiffness, double step) {
        Require.positive("mass", mass);
        Require.notNegative("damping", damping);
        Require.notNegative("stiffness", stiffness);
        Require.positive("step", step);
        return new PiecewiseLinearStepping(mass, damping, stiffness, step);
    }

    /**
     * Prepares stepping of ü + 2ζω u̇ + ω² u = p, for modal coordinates and response spectra.
     *
     * @param circularFrequency ω in rad/s, 0 or more
     * @param dampingRatio ζ, 0 or more
     * @param step time step in s, above 0
     * @return the stepping
     * @throws IllegalArgumentException when a value is out of its range
     */
    public static PiecewiseLinearStepping ofRatio(
            double circularFrequency, double dampingRatio, double step) {
        Require.notNegative("circular frequency", circularFrequency);
        Require.notNegative("damping ratio", dampingRatio);
        return of(
                1,
                2 * dampingRatio * circularFrequency,
                circularFrequency * circularFrequency,
                step);
    }

    /** Exponential of a small matrix by Taylor's series of a fraction of it, squared up again. */
    private static double[][] exponential(double[][] a) {
        double norm = 0;
        for (double[] row : a) {
            norm = Math.max(norm, Vectors.sumOfSizes(row));
        }
        int halvings = Math.max(0, Math.getExponent(norm) + 2);
        double[][] part = new double[STATES][STATES];
        for (int i = 0; i < STATES; i++) {
            for (int j = 0; j < STATES; j++) {
                part[i][j] = Math.scalb(a[i][j], -halvings);
            }
        }
        double[][] sum = new double[STATES][STATES];
        for (int i = 0; i < STATES; i++) {
            sum[i][i] = 1;
        }
        for (int term = TERMS; term >= 1; term--) {
            sum = product(part, sum);
            for (int i = 0; i < STATES; i++) {
                Vectors.scale(1.0 / term, sum[i]);
                sum[i][i] += 1;
            }
        }
        for (int k = 0; k < halvings; k++) {
            sum = product(sum, sum);
        }
        return sum;
    }

    private static double[][] product(double[][] a, double[][] b) {
        double[][] product = new double[STATES][STATES];
        for (int i = 0; i < STATES; i++) {
            for (int k = 0; k < STATES; k++) {
                Vectors.add(a[i][k], b[k], product[i]);
            }
        }
        return product;
    }

    /**
     * Steps through a load.
     *
     * @param loads load p at 0, Δt, 2Δt … in N, at least one, finite; straight between
     * @param displacement u at time 0 in m
     * @param velocity u̇ at time 0 in m/s
     * @return the response at the times of the loads
     * @throws IllegalArgumentException when there is no load or a value is not finite
     */
    public OscillatorResponse respond(double[] loads, double displacement, double velocity) {
        Require.atLeast("number of loads", loads.length, 1);
        Require.finite("load", loads);
        double[] us = new double[loads.length];
        double[] vs = new double[loads.length];
        double[] as = new double[loads.length];
        us[0] = Require.finite("displacement", displacement);
        vs[0] = Require.finite("velocity", velocity);
        as[0] = acceleration(us[0], vs[0], loads[0]);
        for (int n = 1; n < loads.length; n++) {
            us[n] = displacement(us[n - 1], vs[n - 1], loads[n - 1], loads[n]);
            vs[n] = velocity(us[n - 1], vs[n - 1], loads[n - 1], loads[n]);
            as[n] = acceleration(us[n], vs[n], loads[n]);
        }
        return new OscillatorResponse(step, us, vs, as);
    }

    /**
     * Gives the displacement one step on.
     *
     * @param displacement u at the start of the step
     * @param velocity u̇ there
     * @param load p there
     * @param nextLoad p at the end of the step
     * @return u at the end of the step
     */
    public double displacement(double displacement, double velocity, double load, double nextLoad) {
        return d[0] * displacement + d[1] * velocity + d[2] * load + d[3] * nextLoad;
    }

    /**
     * Gives the velocity one step on.
     *
     * @param displacement u at the start of the step
     * @param velocity u̇ there
     * @param load p there
     * @param nextLoad p at the end of the step
     * @return u̇ at the end of the step
     */
    public double velocity(double displacement, double velocity, double load, double nextLoad) {
        return v[0] * displacement + v[1] * velocity + v[2] * load + v[3] * nextLoad;
    }

    private double acceleration(double displacement, double velocity, double load) {
        return (load - damping * velocity - stiffness * displacement) / mass;
    }

    /** Coefficients of u₀, u̇₀, p₀ and p₁ in the displacement one step on. */
    double[] displacementCoefficients() {
        return d.clone();
    }

    /** Coefficients of u₀, u̇₀, p₀ and p₁ in the velocity one step on. */
    double[] velocityCoefficients() {
        return v.clone();
    }
}
