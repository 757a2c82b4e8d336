package org.skewback.frame;

import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import org.skewback.numeric.LocalHistory;

/** What a frame did during an earthquake, time by time. Every result is a new array. */
public final class FrameHistory {

    private final DynamicSystem system;
    private final double step;
    private final int times;
    private final Series series;
    private final List<NonlinearLink> links;
    private final @Nullable LocalHistory local;

    /** Gives a response at all times. */
    private interface Series {
        double[] of(ToDoubleFunction<InertiaShape> response);
    }

    private FrameHistory(
            DynamicSystem system,
            double step,
            int times,
            Series series,
            List<NonlinearLink> links,
            @Nullable LocalHistory local) {
        this.system = system;
        this.step = step;
        this.times = times;
        this.series = series;
        this.links = links;
        this.local = local;
    }

    static FrameHistory ofShapes(
            DynamicSystem system,
            double step,
            List<InertiaShape> shapes,
            List<double[]> coordinates,
            List<NonlinearLink> links,
            LocalHistory local) {
        int times = coordinates.get(0).length;
        return new FrameHistory(
                system,
                step,
                times,
                response -> {
                    double[] sum = new double[times];
                    for (int i = 0; i < shapes.size(); i++) {
                        double share = response.applyAsDouble(shapes.get(i));
                        double[] q = coordinates.get(i);
                        for (int n = 0; n < times; n++) {
                            sum[n] += share * q[n];
                        }
                    }
                    return sum;
                },
                links,
                local);
    }

    static FrameHistory ofStates(
            DynamicSystem system,
            double step,
            double[][] u,
            double[][] a,
            Map<Motion, double[]> records) {
        return new FrameHistory(
                system,
                step,
                u.length,
                response -> {
                    double[] values = new double[u.length];
                    for (int n = 0; n < values.length; n++) {
                        double[] inertia = system.divided().movements(a[n]);
                        for (int i = 0; i < inertia.length; i++) {
                            inertia[i] = -inertia[i];
                        }
                        for (Map.Entry<Motion, double[]> record : records.entrySet()) {
                            for (int i = record.getKey().index(); i < inertia.length; i += 6) {
                                inertia[i] -= record.getValue()[n];
                            }
                        }
                        values[n] =
                                response.applyAsDouble(
                                        new InertiaShape(
                                                system, system.divided().movements(u[n]), inertia));
                    }
                    return values;
                },
                List.of(),
                null);
    }

    /**
     * Gives the time step.
     *
     * @return Δt, s
     */
    public double step() {
        return step;
    }

    /**
     * Gives the number of times.
     *
     * @return values in each result, for 0, Δt, 2Δt …
     */
    public int size() {
        return times;
    }

    /**
     * Gives the movement of a node.
     *
     * @param node the node
     * @param motion which of its motions, global axes
     * @return m or rad, at each time
     * @throws IllegalArgumentException if there is no such node
     */
    public double[] movement(String node, Motion motion) {
        int at = 6 * system.divided().model().indexOfNode(node) + motion.index();
        return series.of(shape -> shape.movements()[at]);
    }

    /**
     * Gives the movement of a point of a member.
     *
     * @param member the member
     * @param position distance from its start, 0 to its length, m
     * @param motion which of its motions, global axes
     * @return m or rad, at each time
     * @throws IllegalArgumentException if there is no such member or it is not so long
     */
    public double[] movement(String member, double position, Motion motion) {
        return series.of(shape -> shape.along(member, position)[motion.index()]);
    }

    /**
     * Gives a force at a section.
     *
     * @param member the member
     * @param position distance from its start, 0 to its length, m
     * @param component the force
     * @return N or N·m, at each time
     * @throws IllegalArgumentException if there is no such member or it is not so long
     */
    public double[] force(String member, double position, ForceComponent component) {
        return series.of(shape -> shape.section(member, position)[component.index()]);
    }

    /**
     * Gives what the supports of a node exert on the structure. Where all unknowns were stepped directly,
     * the mass at the support itself, which goes with the ground, is in it. By modes it is not: modes
     * leave the support at rest, so that its nodal mass and its share of the members that meet there
     * are to be added, times the acceleration of the ground.
     *
     * @param node the node
     * @param motion direction of the force or axis of the moment
     * @return N or N·m, at each time; what is damped there is left out
     * @throws IllegalArgumentException if there is no such node, or it has no support
     */
    public double[] reaction(String node, Motion motion) {
        int index = system.divided().model().indexOfNode(node);
        if (!system.divided().system().holds().isSupported(index)) {
            throw new IllegalArgumentException(
                    "node " + node + " has no support; allowed are nodes with one.");
        }
        return series.of(shape -> shape.reaction(index)[motion.index()]);
    }

    private LocalHistory local() {
        if (local == null) {
            throw new IllegalStateException(
                    "all unknowns were stepped directly; allowed are histories by modes.");
        }
        return local;
    }

    private int link(String name) {
        for (int i = 0; i < links.size(); i++) {
            if (links.get(i).name().equals(name)) {
                return i;
            }
        }
        throw new IllegalArgumentException(
                "link " + name + " is not in the history, which has " + links.size() + ".");
    }

    /**
     * Gives the movement that a bearing or stop follows.
     *
     * @param name name of the link
     * @param direction number of its direction, from 0
     * @return movement of its end against its start, m, at each time
     * @throws IllegalArgumentException if there is no such link or direction
     */
    public double[] linkMovement(String name, int direction) {
        return local().displacement(link(name), direction);
    }

    /**
     * Gives the force of a bearing or stop.
     *
     * @param name name of the link
     * @param direction number of its direction, from 0
     * @return force on the node at its end, N, at each time
     * @throws IllegalArgumentException if there is no such link or direction
     */
    public double[] linkForce(String name, int direction) {
        return local().force(link(name), direction);
    }

    /**
     * Gives the account of energy in the motion against the ground.
     *
     * @return where the work of the ground went
     * @throws IllegalStateException if all unknowns were stepped directly
     */
    public LocalHistory.Energy energy() {
        return local().energy();
    }

    /**
     * Gives the largest size in a result.
     *
     * @param values values at each time
     * @return largest |value|
     */
    public static double largest(double[] values) {
        double largest = 0;
        for (double value : values) {
            largest = Math.max(largest, Math.abs(value));
        }
        return largest;
    }
}
