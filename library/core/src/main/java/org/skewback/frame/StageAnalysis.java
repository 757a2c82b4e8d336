package org.skewback.frame;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.SingularMatrixException;
import org.skewback.numeric.Monitor;
import org.skewback.numeric.NotConvergedException;
import org.skewback.numeric.SymbolicFactorization;

/**
 * Linear statics of a structure that is built, changed and taken down step by step.
 *
 * <p>The model holds all nodes and members that ever are; none is there at first, while its supports
 * are. Each stage is solved for the total: a member keeps the movements of its nodes at which it is
 * free of stress, from its installation on, and a support the place at which it took its node. So
 * what is locked in stays, order counts where it should, and steps undone in reverse leave nothing
 * behind.
 *
 * <p>Cables are exact catenaries between their nodes where these have moved to, found by iteration within
 * each stage; the rest of the structure is linear. Their weight and pull act from their installation on.
 * {@link StageAction.Tension} and {@link StageAction.Jack} change their unstressed length; one that is
 * fitted is as much longer as its ends have moved apart along its chord.
 */
public final class StageAnalysis {

    private static final int MOST_HANGINGS = 60;

    /** Change of the forces of cables, over the largest, at which they hang still. */
    private static final double HANGS_STILL = 1e-10;

    private final FrameModel model;
    private final FrameSystem whole;
    private final SymbolicFactorization symbolic;

    private StageAnalysis(FrameModel model) {
        this.model = model;
        whole = FrameSystem.ofAllMotions(model);
        symbolic = SymbolicFactorization.of(whole.stiffnessPattern());
    }

    /**
     * Makes a model ready; this is where the order of elimination is found, once for all stages.
     *
     * @param model all nodes and members that ever are, and the supports that are there at first
     * @return the analysis
     * @throws IllegalArgumentException if a member or support cannot be used
     */
    public static StageAnalysis of(FrameModel model) {
        return new StageAnalysis(model);
    }

    /**
     * Goes through the stages.
     *
     * @param stages the stages in order
     * @return the structure at the end of each
     * @throws MechanismException if the structure cannot stand at the end of a stage
     * @throws IllegalArgumentException if an action names what is not there, or what is there already
     */
    public List<StageResult> run(List<Stage> stages) {
        return run(stages, Monitor.quiet());
    }

    /**
     * Goes through the stages.
     *
     * @param stages the stages in order
     * @param monitor may stop the work, and is told how far it is
     * @return the structure at the end of each
     * @throws MechanismException if the structure cannot stand at the end of a stage
     * @throws IllegalArgumentException if an action names what is not there, or what is there already
     */
    public List<StageResult> run(List<Stage> stages, Monitor monitor) {
        Site site = new Site();
        List<StageResult> results = new ArrayList<>();
        for (Stage stage : stages) {
            monitor.at("stage " + stage.name(), (double) results.size() / stages.size());
            try {
                results.add(site.run(stage));
            } catch (MechanismException e) {
                throw new MechanismException("in stage " + stage.name() + " ", e.motion());
            } catch (IllegalArgumentException e) {
                throw new IllegalArgumentException(
                        "in stage " + stage.name() + ": " + e.getMessage(), e);
            }
        }
        return List.copyOf(results);
    }

    /** What is there, while the stages go on. */
    private final class Site {

        private final List<Element> elements = new ArrayList<>(whole.elements());
        private final boolean[] present = new boolean[elements.size()];
        private final ElementLoad[] misfit = new ElementLoad[elements.size()];
        private final double[] lengthening = new double[elements.size()];
        private final Map<String, LoadCase> loads = new LinkedHashMap<>();
        private final Map<Support, Double> supports = new LinkedHashMap<>();
        private double[] movements = new double[6 * model.nodes().size()];
        private boolean[] standing = new boolean[model.nodes().size()];
        private AppliedLoads last = AppliedLoads.of(model, elements, List.of());

        Site() {
            for (int m = 0; m < misfit.length; m++) {
                misfit[m] = new ElementLoad();
            }
            for (Support support : model.supports()) {
                supports.put(support, 0.0);
            }
        }

        StageResult run(Stage stage) {
            Map<Integer, Double> targets = new LinkedHashMap<>();
            for (StageAction action : stage.actions()) {
                act(action, targets);
            }
            LinearAnalysis analysis = solve(targets);
            double off = hang();
            for (int k = 0; k < MOST_HANGINGS && off > HANGS_STILL; k++) {
                analysis = solve(targets);
                off = hang();
            }
            if (off > HANGS_STILL) {
                throw new NotConvergedException(
                        "cables in stage "
                                + stage.name()
                                + ": after "
                                + MOST_HANGINGS
                                + " solutions their forces still change by "
                                + off
                                + " of the largest.");
            }
            FrameSolution solution = analysis.solution(stage.name(), last, movements);
            Map<String, Double> lengths = new HashMap<>();
            standing = new boolean[standing.length];
            for (int m = 0; m < present.length; m++) {
                if (present[m]) {
                    Element element = elements.get(m);
                    lengths.put(
                            element.name(),
                            element instanceof CableElement cable
                                    ? unstressed(m, cable)
                                    : element.length() + lengthening[m]);
                    standing[element.start()] = true;
                    standing[element.end()] = true;
                }
            }
            return new StageResult(stage.name(), solution, lengths);
        }

        private double unstressed(int m, CableElement cable) {
            return cable.unstressedLength() + misfit[m].strain(0) * cable.length();
        }

        /**
         * Hangs cables between their nodes as these are now, of the length they have now.
         *
         * @return how much their forces differ from those solved with, over the largest
         */
        private double hang() {
            double largest = 0;
            double off = 0;
            for (int m = 0; m < present.length; m++) {
                if (present[m] && elements.get(m) instanceof CableElement cable) {
                    double[] twelve = new double[12];
                    FrameSystem.gather(cable, movements, twelve);
                    double[] solved =
                            cable.toGlobal(
                                    cable.state(cable.toLocal(twelve), misfit[m]).endForces());
                    CableElement now = cable.at(model, unstressed(m, cable), twelve);
                    double[] pull = now.pull();
                    for (int i = 0; i < 12; i++) {
                        largest = Math.max(largest, Math.abs(pull[i]));
                        off = Math.max(off, Math.abs(pull[i] - solved[i]));
                    }
                    if (off > HANGS_STILL * largest) {
                        elements.set(m, now);
                        misfit[m] = hanging();
                    }
                }
            }
            return largest == 0 ? 0 : off / largest;
        }

        private LinearAnalysis solve(Map<Integer, Double> targets) {
            FrameSystem system = whole.stage(elements, present, supports);
            LinearAnalysis analysis = LinearAnalysis.of(system, symbolic, present);
            AppliedLoads applied = applied(system);
            List<AppliedLoads> all = new ArrayList<>();
            all.add(applied);
            for (int m : targets.keySet()) {
                ElementLoad longer = new ElementLoad();
                longer.addStrain(0, 1 / elements.get(m).length());
                all.add(AppliedLoads.onMember(model, m, longer));
            }
            double[][] right = new double[all.size()][];
            for (int c = 0; c < right.length; c++) {
                right[c] = system.rightHandSide(all.get(c), present);
            }
            double[][] solved = analysis.factorization().solve(right);
            double[] found = system.movements(solved[0], applied);
            if (!targets.isEmpty()) {
                found = tension(analysis, targets, all, solved, found);
                applied = applied(system);
            }
            movements = found;
            last = applied;
            return analysis;
        }

        /** Changes unstressed lengths so that forces are met, and gives the movements then. */
        private double[] tension(
                LinearAnalysis analysis,
                Map<Integer, Double> targets,
                List<AppliedLoads> all,
                double[][] solved,
                double[] found) {
            int[] members = targets.keySet().stream().mapToInt(Integer::intValue).toArray();
            double[] wanted = targets.values().stream().mapToDouble(Double::doubleValue).toArray();
            int n = members.length;
            double[] missing = new double[n];
            RealMatrix influence = MatrixUtils.createRealMatrix(n, n);
            double[][] unit = new double[n][];
            for (int i = 0; i < n; i++) {
                missing[i] = wanted[i] - axial(analysis, all.get(0), found, members[i]);
                unit[i] = analysis.system().movements(solved[i + 1], all.get(i + 1));
            }
            for (int j = 0; j < n; j++) {
                for (int i = 0; i < n; i++) {
                    influence.setEntry(i, j, axial(analysis, all.get(j + 1), unit[j], members[i]));
                }
            }
            double stiffest = 0;
            for (int j = 0; j < n; j++) {
                ElementLoad unitLonger = all.get(j + 1).member(members[j]);
                stiffest =
                        Math.max(
                                stiffest,
                                Math.abs(elements.get(members[j]).clamped(unitLonger)[6]));
            }
            double[] change;
            try {
                change =
                        new LUDecomposition(influence, 1e-10 * stiffest)
                                .getSolver()
                                .solve(MatrixUtils.createRealVector(missing))
                                .toArray();
            } catch (SingularMatrixException e) {
                throw new IllegalArgumentException(
                        "forces of the members tensioned follow from equilibrium, whatever their"
                                + " lengths; allowed are members whose force jacking changes.",
                        e);
            }
            double[] sum = found.clone();
            for (int j = 0; j < n; j++) {
                lengthen(members[j], change[j]);
                for (int i = 0; i < sum.length; i++) {
                    sum[i] += change[j] * unit[j][i];
                }
            }
            return sum;
        }

        private double axial(
                LinearAnalysis analysis, AppliedLoads applied, double[] u, int member) {
            return analysis.solution("tension", applied, u).state(member).forces(0, true)[0];
        }

        private AppliedLoads applied(FrameSystem system) {
            List<Load> all = new ArrayList<>();
            for (LoadCase one : loads.values()) {
                for (Load load : one.loads()) {
                    if (load instanceof SelfWeight weight) {
                        all.add(new SelfWeight(weight.acceleration(), weighing(weight)));
                    } else {
                        all.add(load);
                    }
                }
            }
            // A weight of no member at all would read as the weight of every one.
            all.removeIf(load -> load instanceof SelfWeight weight && weight.members().isEmpty());
            AppliedLoads applied = system.apply(all);
            for (int m = 0; m < present.length; m++) {
                if (applied.isLoaded(m) && !present[m]) {
                    throw new IllegalArgumentException(
                            "member "
                                    + elements.get(m).name()
                                    + " is loaded but not there; allowed are loads on what is"
                                    + " there.");
                }
                if (present[m]) {
                    applied.addOnMember(m, misfit[m]);
                }
            }
            applied.takePlaces();
            return applied;
        }

        private List<String> weighing(SelfWeight weight) {
            List<String> names = new ArrayList<>();
            for (int m = 0; m < present.length; m++) {
                String name = elements.get(m).name();
                if (present[m] && (weight.members().isEmpty() || weight.members().contains(name))) {
                    names.add(name);
                }
            }
            return names;
        }

        private void act(StageAction action, Map<Integer, Double> targets) {
            if (action instanceof StageAction.Install install) {
                for (String name : install.members()) {
                    install(name, install.fit());
                }
            } else if (action instanceof StageAction.Dismantle dismantle) {
                for (String name : dismantle.members()) {
                    int m = there(name);
                    present[m] = false;
                    elements.set(m, whole.elements().get(m));
                }
            } else if (action instanceof StageAction.Apply apply) {
                if (loads.put(apply.loads().name(), apply.loads()) != null) {
                    throw new IllegalArgumentException(
                            "load case "
                                    + apply.loads().name()
                                    + " is on already; allowed is to put it on once.");
                }
            } else if (action instanceof StageAction.Withdraw withdraw) {
                if (loads.remove(withdraw.loads()) == null) {
                    throw new IllegalArgumentException(
                            "load case "
                                    + withdraw.loads()
                                    + " is not on; allowed are "
                                    + loads.keySet()
                                    + ".");
                }
            } else if (action instanceof StageAction.Tension tension) {
                targets.put(withLength(tension.member()), tension.force());
            } else if (action instanceof StageAction.Jack jack) {
                lengthen(withLength(jack.member()), jack.lengthening());
            } else if (action instanceof StageAction.Release release) {
                joint(release.member(), release.atEnd(), release.motion(), 0);
            } else if (action instanceof StageAction.Lock lock) {
                lock(lock);
            } else if (action instanceof StageAction.Hold hold) {
                hold(hold.support());
            } else if (action instanceof StageAction.LetGo letGo) {
                if (supports.remove(letGo.support()) == null) {
                    throw new IllegalArgumentException(
                            "support "
                                    + letGo.support()
                                    + " is not there; allowed are those that are.");
                }
            }
        }

        private int there(String name) {
            int m = model.indexOfMember(name);
            if (!present[m]) {
                throw new IllegalArgumentException(
                        "member " + name + " is not there; allowed are members installed.");
            }
            return m;
        }

        private int withLength(String name) {
            int m = there(name);
            if (elements.get(m).length() == 0) {
                throw new IllegalArgumentException(
                        "link " + name + " is tensioned; allowed are members with a length.");
            }
            return m;
        }

        private void install(String name, StageAction.Fit fit) {
            int m = model.indexOfMember(name);
            if (present[m]) {
                throw new IllegalArgumentException(
                        "member " + name + " is there already; allowed is to install it once.");
            }
            present[m] = true;
            misfit[m] = elements.get(m) instanceof CableElement ? hanging() : new ElementLoad();
            lengthening[m] = 0;
            if (fit == StageAction.Fit.FITTED) {
                Element element = elements.get(m);
                double[] twelve = new double[12];
                FrameSystem.gather(element, movements, twelve);
                for (int i = 0; i < 12; i++) {
                    if (!standing[i < 6 ? element.start() : element.end()]) {
                        twelve[i] = 0;
                    }
                }
                fit(m, element.toLocal(twelve));
            }
        }

        private ElementLoad hanging() {
            ElementLoad hangs = new ElementLoad();
            hangs.addStanding(1);
            return hangs;
        }

        /** Makes a member free of stress when its ends have moved like this. */
        private void fit(int m, double[] v) {
            Element element = elements.get(m);
            lengthening[m] += element.fit(v, misfit[m]);
        }

        private void lengthen(int m, double amount) {
            misfit[m].addStrain(0, amount / elements.get(m).length());
            lengthening[m] += amount;
        }

        private void joint(String name, boolean atEnd, Motion motion, double stiffness) {
            int m = there(name);
            if (!(elements.get(m).member() instanceof BeamColumn beam)) {
                throw new IllegalArgumentException(
                        "a joint of member "
                                + name
                                + " is changed; allowed are joints of beam-columns.");
            }
            EndConnection at = atEnd ? beam.endConnection() : beam.startConnection();
            if (at.stiffness(motion) == stiffness) {
                throw new IllegalArgumentException(
                        "the joint of member "
                                + name
                                + " "
                                + motion
                                + " is so already; allowed is a change.");
            }
            EndConnection changed = at.with(motion, stiffness);
            BeamColumn other =
                    atEnd
                            ? beam.connected(beam.startConnection(), changed)
                            : beam.connected(changed, beam.endConnection());
            elements.set(m, Element.of(model, other));
        }

        /** A joint locked keeps the angle at which it stands. */
        private void lock(StageAction.Lock lock) {
            int m = there(lock.member());
            Element element = elements.get(m);
            double[] slip = new double[12];
            if (standing[element.start()] && standing[element.end()]) {
                double[] twelve = new double[12];
                FrameSystem.gather(element, movements, twelve);
                double[] nodes = element.toLocal(twelve);
                int i = (lock.atEnd() ? 6 : 0) + lock.motion().index();
                double[] inside = element.state(nodes, last.member(m)).ends();
                slip[i] = nodes[i] - inside[i];
            }
            joint(lock.member(), lock.atEnd(), lock.motion(), Double.POSITIVE_INFINITY);
            fit(m, slip);
        }

        private void hold(Support support) {
            int node = model.indexOfNode(support.node());
            double[] d = FrameSystem.direction(support);
            double place = 0;
            for (int k = 0; k < 6 && standing[node]; k++) {
                place += d[k] * movements[6 * node + k];
            }
            if (supports.put(support, place) != null) {
                throw new IllegalArgumentException(
                        "support " + support + " is there already; allowed is to add it once.");
            }
        }
    }
}
