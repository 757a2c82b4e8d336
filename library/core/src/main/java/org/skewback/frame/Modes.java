package org.skewback.frame;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.skewback.numeric.Eigenpairs;

/** The lowest natural vibrations of a structure. */
public final class Modes {

    private final DynamicSystem system;
    private final List<Mode> modes;
    private final double checkedTo;
    private final int countBelow;

    private Modes(DynamicSystem system, List<Mode> modes, double checkedTo, int countBelow) {
        this.system = system;
        this.modes = List.copyOf(modes);
        this.checkedTo = checkedTo;
        this.countBelow = countBelow;
    }

    static Modes of(DynamicSystem system, Eigenpairs pairs) {
        List<Mode> modes = new ArrayList<>();
        for (int k = 0; k < pairs.size(); k++) {
            double[] x = pairs.vector(k);
            double[] moved = system.divided().movements(x);
            ModeShape shape = new ModeShape(system.divided(), moved);
            if (dot(moved, shape.movements()) < 0) {
                for (int i = 0; i < x.length; i++) {
                    x[i] = -x[i];
                }
            }
            double[] participation = new double[3];
            for (int axis = 0; axis < 3; axis++) {
                participation[axis] = dot(x, system.drag()[axis]);
            }
            modes.add(new Mode(pairs.value(k), pairs.residual(k), x, participation, shape));
        }
        double checked = Math.sqrt(Math.max(0, pairs.checkedTo())) / (2 * Math.PI);
        return new Modes(system, modes, checked, pairs.countBelow());
    }

    static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }

    /**
     * Lists the modes.
     *
     * @return modes by increasing frequency
     */
    public List<Mode> list() {
        return modes;
    }

    /**
     * Gives a mode.
     *
     * @param index 0 for the lowest
     * @return the mode
     * @throws IndexOutOfBoundsException if there are not so many
     */
    public Mode get(int index) {
        return modes.get(index);
    }

    /**
     * Gives the mass of all, that at supports included.
     *
     * @return kg
     */
    public double totalMass() {
        return system.total();
    }

    /**
     * Gives the share of the total mass that the modes found take along with ground motion along an
     * axis. Codes ask for 0.9 or so; what lacks is stiff, or sits on supports.
     *
     * @param axis {@link Motion#ALONG_X}, {@link Motion#ALONG_Y} or {@link Motion#ALONG_Z}
     * @return sum of effective masses over total mass, 0 to 1
     * @throws IllegalArgumentException if the axis is one of rotation
     */
    public double massShare(Motion axis) {
        return modes.stream().mapToDouble(mode -> mode.effectiveMass(axis)).sum() / totalMass();
    }

    /**
     * Gives the effective height of a mode: the moment of its inertia forces about a level axis over their
     * sum, both for ground motion along a level direction at right angles to that axis (A. K. Chopra,
     * Dynamics of Structures, section 13.2, as remembered).
     *
     * @param index number of the mode, 0 for the lowest
     * @param axis {@link Motion#ALONG_X} or {@link Motion#ALONG_Y}
     * @param about a point of the axis of moments, at the base
     * @return h, m; of either sign; meaningless for a mode that takes no mass along
     * @throws IllegalArgumentException if the axis is another
     */
    public double effectiveHeight(int index, Motion axis, Vector about) {
        if (axis != Motion.ALONG_X && axis != Motion.ALONG_Y) {
            throw new IllegalArgumentException(
                    "direction of the ground is " + axis + "; allowed are along x and along y.");
        }
        Mode mode = modes.get(index);
        Vector turn = axis == Motion.ALONG_X ? Vector.Y : Vector.X.times(-1);
        FrameModel pieces = system.divided().division().model();
        double[] field = new double[6 * pieces.nodes().size()];
        for (int n = 0; n < pieces.nodes().size(); n++) {
            Vector moved = turn.cross(pieces.nodes().get(n).place().minus(about));
            for (int k = 0; k < 3; k++) {
                field[6 * n + k] = moved.get(k);
                field[6 * n + 3 + k] = turn.get(k);
            }
        }
        double[] shape = system.divided().movements(mode.vector());
        double moment = 0;
        double[] twelve = new double[12];
        for (int p = 0; p < system.divided().division().size(); p++) {
            if (system.divided().isPresent(p)) {
                Element element = system.divided().system().elements().get(p);
                FrameSystem.gather(element, field, twelve);
                double[] force = FrameSystem.times(system.massOf(p), twelve);
                FrameSystem.gather(element, shape, twelve);
                moment += dot(force, twelve);
            }
        }
        for (NodalMass mass : system.nodal()) {
            int at = 6 * pieces.indexOfNode(mass.node());
            for (int i = 0; i < 6; i++) {
                double m = i < 3 ? mass.mass() : mass.rotary().get(i - 3);
                moment += m * field[at + i] * shape[at + i];
            }
        }
        return moment / mode.participation(axis);
    }

    /**
     * Gives the frequency up to which the count was checked.
     *
     * @return frequency just above the last one, Hz
     */
    public double checkedTo() {
        return checkedTo;
    }

    /**
     * Counts the frequencies below {@link #checkedTo()} by the signs of the factorised matrix (Sturm).
     *
     * @return the count; larger than the number of modes when the last frequency is repeated
     */
    public int countBelow() {
        return countBelow;
    }

    DynamicSystem system() {
        return system;
    }

    /**
     * Writes the modes as a table for reading.
     *
     * @return frequency, period, main direction and effective masses of each mode
     */
    @Override
    public String toString() {
        StringBuilder text = new StringBuilder();
        for (int k = 0; k < modes.size(); k++) {
            Mode mode = modes.get(k);
            text.append(
                    String.format(
                            Locale.ROOT,
                            "mode %d: %.4g Hz (%.4g s), %s; mass taken along x %.1f %%, y %.1f %%,"
                                    + " z %.1f %%%n",
                            k + 1,
                            mode.frequency(),
                            mode.period(),
                            mode.shape().mainDirection(),
                            100 * mode.effectiveMass(Motion.ALONG_X) / totalMass(),
                            100 * mode.effectiveMass(Motion.ALONG_Y) / totalMass(),
                            100 * mode.effectiveMass(Motion.ALONG_Z) / totalMass()));
        }
        return text.append(
                        String.format(
                                Locale.ROOT,
                                "Total mass %.6g kg; Sturm count: %d frequencies below %.6g Hz.",
                                totalMass(),
                                countBelow,
                                checkedTo))
                .toString();
    }
}
