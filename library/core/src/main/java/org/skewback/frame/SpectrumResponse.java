package org.skewback.frame;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;

/**
 * Largest responses to an earthquake given by its spectrum, all without sign, each combined by itself.
 */
public final class SpectrumResponse {

    private final Modes modes;
    private final List<InertiaShape> shapes;
    private final List<Motion> axes;
    private final List<double[]> amplitudes;
    private final List<InertiaShape> rests;
    private final List<Double> restAmplitudes;
    private final ModalRule rule;
    private final DirectionRule directions;
    private final double[][] correlation;

    SpectrumResponse(
            Modes modes,
            List<InertiaShape> shapes,
            List<Motion> axes,
            List<double[]> amplitudes,
            List<InertiaShape> rests,
            List<Double> restAmplitudes,
            ModalRule rule,
            DirectionRule directions,
            double damping) {
        this.modes = modes;
        this.shapes = shapes;
        this.axes = axes;
        this.amplitudes = amplitudes;
        this.rests = rests;
        this.restAmplitudes = restAmplitudes;
        this.rule = rule;
        this.directions = directions;
        int count = shapes.size();
        correlation = new double[count][count];
        for (int i = 0; i < count; i++) {
            for (int j = 0; j < count; j++) {
                correlation[i][j] =
                        ModalRule.correlation(
                                modes.get(i).circularFrequency(),
                                damping,
                                modes.get(j).circularFrequency(),
                                damping);
            }
        }
    }

    private double[] combined(int size, Function<InertiaShape, double[]> response) {
        double[][] byMode = new double[shapes.size()][];
        for (int i = 0; i < byMode.length; i++) {
            byMode[i] = response.apply(shapes.get(i));
        }
        double[] found = new double[size];
        double[][] byAxis = new double[size][axes.size()];
        for (int d = 0; d < axes.size(); d++) {
            double[] rest = rests.isEmpty() ? new double[size] : response.apply(rests.get(d));
            double factor = rests.isEmpty() ? 0 : restAmplitudes.get(d);
            for (int k = 0; k < size; k++) {
                double[] values = new double[byMode.length];
                for (int i = 0; i < values.length; i++) {
                    values[i] = amplitudes.get(d)[i] * byMode[i][k];
                }
                byAxis[k][d] = Math.hypot(modal(values), factor * rest[k]);
            }
        }
        for (int k = 0; k < size; k++) {
            found[k] = directions.combine(byAxis[k]);
        }
        return found;
    }

    private double modal(double[] values) {
        double sum = 0;
        for (int i = 0; i < values.length; i++) {
            switch (rule) {
                case SUM_OF_SIZES -> sum += Math.abs(values[i]);
                case SUM_OF_SQUARES -> sum += values[i] * values[i];
                case COMPLETE_QUADRATIC -> {
                    for (int j = 0; j < values.length; j++) {
                        sum += correlation[i][j] * values[i] * values[j];
                    }
                }
            }
        }
        return rule == ModalRule.SUM_OF_SIZES ? sum : Math.sqrt(Math.max(0, sum));
    }

    /**
     * Gives the largest movement of a node against the ground.
     *
     * @param node the node
     * @return displacement and rotation, each component by itself and without sign, global axes
     * @throws IllegalArgumentException if there is no such node
     */
    public Movement movement(String node) {
        int at = 6 * modes.system().divided().model().indexOfNode(node);
        double[] six = combined(6, shape -> Arrays.copyOfRange(shape.movements(), at, at + 6));
        return new Movement(Vector.of(six, 0), Vector.of(six, 3));
    }

    /**
     * Gives the largest movement of a point of a member against the ground.
     *
     * @param member the member
     * @param position distance from its start, 0 to its length, m
     * @return displacement and rotation, each component by itself and without sign, global axes
     * @throws IllegalArgumentException if there is no such member or it is not so long
     */
    public Movement movement(String member, double position) {
        double[] six = combined(6, shape -> shape.along(member, position));
        return new Movement(Vector.of(six, 0), Vector.of(six, 3));
    }

    /**
     * Gives the largest forces at a section.
     *
     * @param member the member
     * @param position distance from its start, 0 to its length, m
     * @return each force by itself and without sign
     * @throws IllegalArgumentException if there is no such member or it is not so long
     */
    public SectionForces forces(String member, double position) {
        return SectionForces.of(combined(6, shape -> shape.section(member, position)));
    }

    /**
     * Gives the largest reaction of a node.
     *
     * @param node the node
     * @return force and moment, each component by itself and without sign, global axes
     * @throws IllegalArgumentException if there is no such node, or it has no support
     */
    public Reaction reaction(String node) {
        int index = supported(node);
        double[] six = combined(6, shape -> shape.reaction(index));
        return new Reaction(node, Vector.of(six, 0), Vector.of(six, 3));
    }

    private int supported(String node) {
        int index = modes.system().divided().model().indexOfNode(node);
        if (!modes.system().divided().system().holds().isSupported(index)) {
            throw new IllegalArgumentException(
                    "node " + node + " has no support; allowed are nodes with one.");
        }
        return index;
    }

    /**
     * Gives the largest sum of all reactions.
     *
     * @return its components, each by itself and without sign, N
     */
    public Vector baseForce() {
        return Vector.of(combined(3, this::sumOfReactions), 0);
    }

    private double[] sumOfReactions(InertiaShape shape) {
        double[] sum = new double[3];
        FrameModel model = modes.system().divided().model();
        for (int n = 0; n < model.nodes().size(); n++) {
            if (modes.system().divided().system().holds().isSupported(n)) {
                double[] six = shape.reaction(n);
                for (int k = 0; k < 3; k++) {
                    sum[k] += six[k];
                }
            }
        }
        return sum;
    }

    /**
     * Gives the force with which the ground drives each mode along one axis, Γ²S_a.
     *
     * @param axis direction of the ground, one of those with a spectrum
     * @return one force for each mode, N
     * @throws IllegalArgumentException if there is no spectrum along the axis
     */
    public double[] modalBaseForces(Motion axis) {
        double[] forces = new double[shapes.size()];
        for (int i = 0; i < forces.length; i++) {
            Mode mode = modes.get(i);
            forces[i] =
                    amplitude(axis)[i]
                            * mode.participation(axis)
                            * mode.circularFrequency()
                            * mode.circularFrequency();
        }
        return forces;
    }

    private double[] amplitude(Motion axis) {
        int d = axes.indexOf(axis);
        if (d < 0) {
            throw new IllegalArgumentException(
                    "there is no spectrum " + axis + "; allowed are directions given one.");
        }
        return amplitudes.get(d);
    }

    /**
     * Gives a force of one mode at a section, with its sign, for motion of the ground along one axis.
     *
     * @param index number of the mode, 0 for the lowest
     * @param axis direction of the ground, one of those with a spectrum
     * @param member the member
     * @param position distance from its start, m
     * @return the six forces at the largest swing of the mode
     * @throws IllegalArgumentException if there is no such member, mode or direction
     */
    public SectionForces modalForces(int index, Motion axis, String member, double position) {
        double[] s = shapes.get(index).section(member, position);
        double factor = amplitude(axis)[index];
        for (int k = 0; k < 6; k++) {
            s[k] *= factor;
        }
        return SectionForces.of(s);
    }

    /**
     * Gives the mass that the modes leave out along an axis.
     *
     * @param axis {@link Motion#ALONG_X}, {@link Motion#ALONG_Y} or {@link Motion#ALONG_Z}
     * @return total mass less the sum of effective masses, kg; mass on supports is in it
     * @throws IllegalArgumentException if the axis is one of rotation
     */
    public double missingMass(Motion axis) {
        return modes.totalMass() * (1 - modes.massShare(axis));
    }

    /**
     * Writes what took part as a table for reading.
     *
     * @return rules, and for each direction the share of the mass in the modes and the missing mass
     */
    @Override
    public String toString() {
        StringBuilder text =
                new StringBuilder(
                        "Modes combined by "
                                + words(rule.name())
                                + ", directions by "
                                + words(directions.name())
                                + "; values without sign.\n");
        for (Motion axis : axes) {
            text.append(
                    String.format(
                            Locale.ROOT,
                            "%s: %d modes take %.1f %% of the mass along; %.6g kg %s.%n",
                            axis,
                            shapes.size(),
                            100 * modes.massShare(axis),
                            missingMass(axis),
                            rests.isEmpty() ? "left out" : "added as a static response"));
        }
        return text.toString();
    }

    private static String words(String name) {
        return name.toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
