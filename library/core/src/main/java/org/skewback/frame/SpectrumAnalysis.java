package org.skewback.frame;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.skewback.numeric.Factorization;

/**
 * Response to an earthquake given by its spectrum: each mode swings to Γ_i S_a(T_i)/ω_i² φ_i, and the
 * largest values of modes and directions are combined response by response (R. W. Clough and J. Penzien,
 * Dynamics of Structures, 2nd edition, 1993, section 26-3; EN 1998-1:2004, 4.3.3.3 and 4.3.3.5).
 *
 * <p>All supports move together. Results are sizes without a sign: forces combined this way do not act at
 * the same time and are not in equilibrium with each other.
 *
 * <p>Stiffness under the permanent load is that of the modes ({@link ModalAnalysis#under}). What modes
 * leave out of the mass can be added as a static response to the ground acceleration, S_a(0).
 */
public final class SpectrumAnalysis {

    private static final Motion[] AXES = {Motion.ALONG_X, Motion.ALONG_Y, Motion.ALONG_Z};

    private final Modes modes;
    private final double damping;
    private final ModalRule rule;
    private final DirectionRule directions;
    private final boolean missing;

    private SpectrumAnalysis(
            Modes modes,
            double damping,
            ModalRule rule,
            DirectionRule directions,
            boolean missing) {
        this.modes = modes;
        this.damping = damping;
        this.rule = rule;
        this.directions = directions;
        this.missing = missing;
    }

    /**
     * Makes the analysis of a structure.
     *
     * @param modes its lowest modes
     * @return the analysis: complete quadratic combination with a damping ratio of 0.05, directions by the
     *     sum of squares, no missing mass
     */
    public static SpectrumAnalysis of(Modes modes) {
        return new SpectrumAnalysis(
                modes, 0.05, ModalRule.COMPLETE_QUADRATIC, DirectionRule.SUM_OF_SQUARES, false);
    }

    /**
     * Gives this analysis with another damping in the correlation of modes; the spectrum has its own.
     *
     * @param ratio damping ratio ζ of all modes, greater than 0, at most 1
     * @return the analysis
     * @throws IllegalArgumentException if the ratio is out of range
     */
    public SpectrumAnalysis damped(double ratio) {
        Require.positive("damping ratio", ratio, "");
        Require.within("damping ratio", ratio, 0, 1, "");
        return new SpectrumAnalysis(modes, ratio, rule, directions, missing);
    }

    /**
     * Gives this analysis with another rule for modes.
     *
     * @param modalRule the rule
     * @return the analysis
     */
    public SpectrumAnalysis combinedBy(ModalRule modalRule) {
        return new SpectrumAnalysis(modes, damping, modalRule, directions, missing);
    }

    /**
     * Gives this analysis with another rule for directions.
     *
     * @param directionRule the rule
     * @return the analysis
     */
    public SpectrumAnalysis directionsBy(DirectionRule directionRule) {
        return new SpectrumAnalysis(modes, damping, rule, directionRule, missing);
    }

    /**
     * Gives this analysis with the mass that its modes leave out, as a static response to S_a(0) that is
     * independent of the modes.
     *
     * @return the analysis
     */
    public SpectrumAnalysis withMissingMass() {
        return new SpectrumAnalysis(modes, damping, rule, directions, true);
    }

    /**
     * Finds the response.
     *
     * @param spectra for each direction of the ground its spectrum
     * @return the response
     * @throws IllegalArgumentException if there is no spectrum, one is for a rotation, a spectrum refuses a
     *     period, or a mode has no stiffness
     */
    public SpectrumResponse under(Map<Motion, DesignSpectrum> spectra) {
        if (spectra.isEmpty()) {
            throw new IllegalArgumentException(
                    "there is no spectrum; allowed is at least one direction with its spectrum.");
        }
        for (Motion motion : spectra.keySet()) {
            if (motion.isRotation()) {
                throw new IllegalArgumentException(
                        "direction of the ground is " + motion + "; allowed are along x, y and z.");
            }
        }
        List<InertiaShape> shapes = new ArrayList<>();
        for (Mode mode : modes.list()) {
            double square = mode.circularFrequency() * mode.circularFrequency();
            double[] u = modes.system().divided().movements(mode.vector());
            double[] a = u.clone();
            for (int i = 0; i < a.length; i++) {
                a[i] *= square;
            }
            shapes.add(new InertiaShape(modes.system(), u, a));
        }
        List<Motion> axes = new ArrayList<>();
        List<double[]> amplitudes = new ArrayList<>();
        List<InertiaShape> rests = new ArrayList<>();
        List<Double> restAmplitudes = new ArrayList<>();
        Factorization factorization = missing ? Factorization.of(modes.system().stiffness()) : null;
        for (Motion axis : AXES) {
            DesignSpectrum spectrum = spectra.get(axis);
            if (spectrum == null) {
                continue;
            }
            double[] amplitude = new double[shapes.size()];
            for (int i = 0; i < amplitude.length; i++) {
                Mode mode = modes.get(i);
                double omega = mode.circularFrequency();
                if (!(omega > 0)) {
                    throw new IllegalArgumentException(
                            "frequency of mode "
                                    + (i + 1)
                                    + " is 0 Hz; allowed are structures that are held.");
                }
                amplitude[i] =
                        mode.participation(axis)
                                * spectrum.acceleration(mode.period())
                                / (omega * omega);
            }
            axes.add(axis);
            amplitudes.add(amplitude);
            if (factorization != null) {
                rests.add(rest(axis, factorization));
                restAmplitudes.add(spectrum.acceleration(0));
            }
        }
        return new SpectrumResponse(
                modes, shapes, axes, amplitudes, rests, restAmplitudes, rule, directions, damping);
    }

    /** What the modes leave out, under a unit acceleration. */
    private InertiaShape rest(Motion axis, Factorization factorization) {
        DynamicSystem system = modes.system();
        int nodes = system.divided().division().model().nodes().size();
        double[] a = new double[6 * nodes];
        for (int n = 0; n < nodes; n++) {
            a[6 * n + axis.index()] = 1;
        }
        double[] force = system.drag()[axis.index()].clone();
        for (Mode mode : modes.list()) {
            double[] u = system.divided().movements(mode.vector());
            double[] inertia = system.mass().times(mode.vector());
            for (int i = 0; i < a.length; i++) {
                a[i] -= mode.participation(axis) * u[i];
            }
            for (int i = 0; i < force.length; i++) {
                force[i] -= mode.participation(axis) * inertia[i];
            }
        }
        return new InertiaShape(system, system.divided().movements(factorization.solve(force)), a);
    }
}
