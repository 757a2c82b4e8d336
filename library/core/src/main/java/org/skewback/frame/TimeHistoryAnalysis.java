package org.skewback.frame;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.skewback.numeric.DirectIntegration;
import org.skewback.numeric.Eigenpairs;
import org.skewback.numeric.Eigenproblem;
import org.skewback.numeric.Factorization;
import org.skewback.numeric.LocalHistory;
import org.skewback.numeric.LocalMotion;
import org.skewback.numeric.Monitor;
import org.skewback.numeric.NotConvergedException;
import org.skewback.numeric.ReducedModel;
import org.skewback.numeric.SymmetricMatrix;
import org.skewback.numeric.TimeScheme;

/**
 * Motion of a frame under records of ground acceleration, from rest, step by step.
 *
 * <p>By modes: each mode is stepped exactly under records that run straight from step to step ({@code
 * PiecewiseLinearStepping}). Bearings and stops act between nodes on what modes and, for each of their
 * directions, the static shape of a unit force there can do ({@code LocalMotion}); their displacements are
 * the only unknowns of a step. Directly: all unknowns by Newmark's method or that of Hilber, Hughes and
 * Taylor ({@code DirectIntegration}).
 *
 * <p>The structure itself is linear. Stiffness and mass are those of the modal analysis given, so that the
 * state under permanent loads counts ({@link ModalAnalysis#under}); permanent forces themselves are not in
 * the results. A record from outside keeps its own baseline: what is integrated from it drifts with it.
 */
public final class TimeHistoryAnalysis {

    private final DynamicSystem system;
    private final double damping;
    private final List<NonlinearLink> links;

    private TimeHistoryAnalysis(DynamicSystem system, double damping, List<NonlinearLink> links) {
        this.system = system;
        this.damping = damping;
        this.links = links;
    }

    /**
     * Makes a structure ready.
     *
     * @param structure model, masses and preload
     * @return the analysis, with a damping ratio of 0.05 in every mode
     */
    public static TimeHistoryAnalysis of(ModalAnalysis structure) {
        return new TimeHistoryAnalysis(structure.system(), 0.05, List.of());
    }

    /**
     * Gives this analysis with another damping of its modes.
     *
     * @param ratio damping ratio ζ of each mode, 0 or more
     * @return the analysis
     * @throws IllegalArgumentException if the ratio is negative
     */
    public TimeHistoryAnalysis damped(double ratio) {
        return new TimeHistoryAnalysis(
                system, Require.notNegative("damping ratio", ratio, ""), links);
    }

    /**
     * Gives this analysis with bearings and stops besides.
     *
     * @param more links, added to those given before
     * @return the analysis
     * @throws IllegalArgumentException if a node is not in the model or a name is there twice
     */
    public TimeHistoryAnalysis with(NonlinearLink... more) {
        List<NonlinearLink> all = new ArrayList<>(links);
        for (NonlinearLink link : more) {
            system.divided().model().indexOfNode(link.start());
            system.divided().model().indexOfNode(link.end());
            if (all.stream().anyMatch(other -> other.name().equals(link.name()))) {
                throw new IllegalArgumentException(
                        "link " + link.name() + " is there twice; allowed is once.");
            }
            all.add(link);
        }
        return new TimeHistoryAnalysis(system, damping, List.copyOf(all));
    }

    /**
     * Runs a motion by modes, all supports shaken together; movements are against the ground. Reactions
     * leave out the mass at the support itself, as {@link FrameHistory#reaction} says.
     *
     * @param count number of modes, 1 or more
     * @param motion the ground
     * @return the history
     * @throws NotConvergedException if modes or the displacements of a step cannot be found
     */
    public FrameHistory modal(int count, GroundMotion motion) {
        return modal(count, motion, Monitor.quiet());
    }

    /**
     * Runs a motion by modes, all supports shaken together; movements are against the ground. Reactions
     * leave out the mass at the support itself, as {@link FrameHistory#reaction} says.
     *
     * @param count number of modes, 1 or more
     * @param motion the ground
     * @param monitor may stop the work
     * @return the history
     * @throws NotConvergedException if modes or the displacements of a step cannot be found
     */
    public FrameHistory modal(int count, GroundMotion motion, Monitor monitor) {
        List<double[]> loads = new ArrayList<>();
        List<double[]> records = new ArrayList<>();
        motion.accelerations()
                .forEach(
                        (axis, record) -> {
                            loads.add(negative(system.drag()[axis.index()]));
                            records.add(record);
                        });
        return run(count, motion.step(), loads, records, List.of(), List.of(), monitor);
    }

    /**
     * Runs a motion by modes, supports shaken each in its own way; movements are absolute, those of the
     * supports included. Takes no bearings and stops.
     *
     * @param count number of modes, 1 or more
     * @param step time step Δt, s, greater than 0
     * @param motions what shakes which supports; supports not named stand still
     * @param monitor may stop the work
     * @return the history
     * @throws IllegalArgumentException if records differ in length, a node has no support, or there are
     *     bearings or stops
     * @throws NotConvergedException if modes cannot be found
     */
    public FrameHistory modal(
            int count, double step, List<SupportMotion> motions, Monitor monitor) {
        Require.positive("time step", step, "s");
        if (!links.isEmpty() || motions.isEmpty()) {
            throw new IllegalArgumentException(
                    "there are "
                            + links.size()
                            + " bearings and stops and "
                            + motions.size()
                            + " motions of supports; allowed are none and at least one.");
        }
        Factorization factorization = Factorization.of(system.stiffness());
        List<double[]> loads = new ArrayList<>();
        List<double[]> records = new ArrayList<>();
        List<InertiaShape> follows = new ArrayList<>();
        List<double[]> displacements = new ArrayList<>();
        int length = motions.get(0).accelerations().length;
        for (SupportMotion motion : motions) {
            GroundMotion.requireRecord(motion.accelerations(), length);
            double[] u = follow(motion, factorization);
            loads.add(negative(inertia(u)));
            records.add(motion.accelerations());
            follows.add(new InertiaShape(system, u, new double[u.length]));
            displacements.add(GroundMotion.displacement(motion.accelerations(), step));
        }
        return run(count, step, loads, records, follows, displacements, monitor);
    }

    /** How all follow slowly when supports move by 1 m. */
    private double[] follow(SupportMotion motion, Factorization factorization) {
        FrameSystem pieces = system.divided().system();
        List<Load> ground = new ArrayList<>();
        for (String node : motion.nodes()) {
            ground.add(new GroundMovement(node, motion.axis().axis(), Vector.ZERO));
        }
        AppliedLoads applied = pieces.apply(ground);
        boolean[] present = new boolean[pieces.elements().size()];
        for (int p = 0; p < present.length; p++) {
            present[p] = system.divided().isPresent(p);
        }
        double[] x = factorization.solve(pieces.rightHandSide(applied, present));
        return pieces.movements(x, applied);
    }

    /** M a on the unknowns, a of all nodes in global axes. */
    private double[] inertia(double[] a) {
        FrameSystem pieces = system.divided().system();
        double[] forces = new double[a.length];
        double[] twelve = new double[12];
        for (int p = 0; p < pieces.elements().size(); p++) {
            if (system.divided().isPresent(p)) {
                Element element = pieces.elements().get(p);
                FrameSystem.gather(element, a, twelve);
                FrameSystem.add(element, FrameSystem.times(system.massOf(p), twelve), 1, forces);
            }
        }
        for (NodalMass mass : system.nodal()) {
            int at = 6 * system.divided().model().indexOfNode(mass.node());
            for (int i = 0; i < 6; i++) {
                forces[at + i] += (i < 3 ? mass.mass() : mass.rotary().get(i - 3)) * a[at + i];
            }
        }
        return onUnknowns(forces);
    }

    private double[] onUnknowns(double[] global) {
        FrameSystem pieces = system.divided().system();
        pieces.holds().allToOwn(global);
        double[] picked = new double[pieces.count()];
        for (int i = 0; i < global.length; i++) {
            if (pieces.unknown(i) >= 0) {
                picked[pieces.unknown(i)] = global[i];
            }
        }
        return picked;
    }

    private static double[] negative(double[] a) {
        return Arrays.stream(a).map(x -> -x).toArray();
    }

    private List<double[]> directions(NonlinearLink link) {
        FrameModel model = system.divided().division().model();
        List<double[]> all = new ArrayList<>();
        for (Vector direction : link.directions()) {
            double[] b = new double[6 * model.nodes().size()];
            for (int k = 0; k < 3; k++) {
                b[6 * model.indexOfNode(link.end()) + k] += direction.get(k);
                b[6 * model.indexOfNode(link.start()) + k] -= direction.get(k);
            }
            double[] picked = onUnknowns(b);
            if (Arrays.stream(picked).allMatch(x -> x == 0)) {
                throw new IllegalArgumentException(
                        "link "
                                + link.name()
                                + " follows what supports hold; allowed are nodes that move.");
            }
            all.add(picked);
        }
        return all;
    }

    private FrameHistory run(
            int count,
            double step,
            List<double[]> loads,
            List<double[]> records,
            List<InertiaShape> follows,
            List<double[]> displacements,
            Monitor monitor) {
        Require.within("number of modes", count, 1, Integer.MAX_VALUE, "");
        Eigenpairs pairs =
                Eigenproblem.vibration(system.stiffness(), system.mass(), count, monitor);
        List<LocalMotion.Attachment> attachments = new ArrayList<>();
        List<double[]> vectors = new ArrayList<>();
        for (int i = 0; i < pairs.size(); i++) {
            vectors.add(pairs.vector(i));
        }
        if (!links.isEmpty()) {
            double highest = Math.abs(pairs.value(pairs.size() - 1));
            Factorization soft = Factorization.of(system.stiffness());
            if (soft.isSingular() || pairs.value(0) <= 1e-9 * highest) {
                // What floats on its bearings alone has no static shape; a slow vibration does as
                // well.
                soft =
                        Factorization.of(
                                SymmetricMatrix.combine(
                                        1, system.stiffness(), 1e-2 * highest, system.mass()));
            }
            for (NonlinearLink link : links) {
                List<double[]> directions = directions(link);
                attachments.add(new LocalMotion.Attachment(link.element(), directions));
                for (double[] direction : directions) {
                    addIndependent(soft.solve(direction), vectors);
                }
            }
        }
        ReducedModel model =
                links.isEmpty()
                        ? ReducedModel.of(pairs)
                        : ReducedModel.of(
                                system.stiffness(),
                                system.mass(),
                                vectors.toArray(new double[0][]));
        double[] ratios = new double[model.size()];
        Arrays.fill(ratios, damping);
        LocalHistory history =
                new LocalMotion(model, ratios, attachments, step).run(loads, records, monitor);
        List<InertiaShape> shapes = new ArrayList<>();
        List<double[]> coordinates = new ArrayList<>();
        for (int i = 0; i < model.size(); i++) {
            double[] u = system.divided().movements(model.shape(i));
            double omega = model.circularFrequencies()[i];
            // Of modes the inertia along members is known; static shapes have none.
            double square = links.isEmpty() ? omega * omega : 0;
            shapes.add(
                    new InertiaShape(system, u, Arrays.stream(u).map(x -> square * x).toArray()));
            coordinates.add(history.coordinate(i));
        }
        shapes.addAll(follows);
        coordinates.addAll(displacements);
        return FrameHistory.ofShapes(system, step, shapes, coordinates, links, history);
    }

    /** Adds a vector unless those before, made orthogonal in the mass, leave next to nothing of it. */
    private void addIndependent(double[] vector, List<double[]> vectors) {
        double[] rest = vector.clone();
        double whole = system.mass().form(rest, rest);
        for (int pass = 0; pass < 2; pass++) {
            for (double[] other : vectors) {
                double square = system.mass().form(other, other);
                double share = system.mass().form(other, rest) / square;
                for (int i = 0; i < rest.length; i++) {
                    rest[i] -= share * other[i];
                }
            }
        }
        if (system.mass().form(rest, rest) > 1e-10 * whole) {
            vectors.add(rest);
        }
    }

    /**
     * Runs a motion directly on all unknowns, all supports shaken together; movements are against the
     * ground. Reactions hold the mass at the support itself. Takes no bearings and stops.
     *
     * @param motion the ground
     * @param scheme Newmark's method or that of Hilber, Hughes and Taylor
     * @param rayleigh damping of mass and stiffness
     * @param monitor may stop the work, and is told how far it is
     * @return the history; it keeps all movements: 16 bytes for each unknown and step
     * @throws IllegalArgumentException if there are bearings or stops
     */
    public FrameHistory direct(
            GroundMotion motion, TimeScheme scheme, RayleighDamping rayleigh, Monitor monitor) {
        if (!links.isEmpty()) {
            throw new IllegalArgumentException(
                    "there are "
                            + links.size()
                            + " bearings and stops; allowed are none where all unknowns are"
                            + " stepped.");
        }
        Map<Motion, double[]> records = new EnumMap<>(motion.accelerations());
        int order = system.stiffness().order();
        DirectIntegration integration =
                new DirectIntegration(
                        system.stiffness(),
                        system.mass(),
                        SymmetricMatrix.combine(
                                rayleigh.ofMass(),
                                system.mass(),
                                rayleigh.ofStiffness(),
                                system.stiffness()),
                        scheme,
                        motion.step(),
                        new double[order],
                        new double[order],
                        load(records, 0),
                        monitor);
        double[][] u = new double[motion.size()][];
        double[][] a = new double[motion.size()][];
        for (int n = 0; n < u.length; n++) {
            if (n > 0) {
                integration.advance(load(records, n));
            }
            u[n] = integration.displacement();
            a[n] = integration.acceleration();
            if (n % 64 == 0) {
                monitor.at("time history", (double) n / u.length);
            }
        }
        return FrameHistory.ofStates(system, motion.step(), u, a, records);
    }

    private double[] load(Map<Motion, double[]> records, int n) {
        double[] load = new double[system.stiffness().order()];
        records.forEach(
                (axis, record) -> {
                    for (int i = 0; i < load.length; i++) {
                        load[i] -= record[n] * system.drag()[axis.index()][i];
                    }
                });
        return load;
    }
}
