package org.skewback.frame;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.skewback.numeric.Factorization;
import org.skewback.numeric.SmallPivot;
import org.skewback.numeric.SymbolicFactorization;

/**
 * Linear statics: K u = P, with one factorization for any number of load cases.
 *
 * <p>Bars for tension only or compression only are taken to carry both here.
 */
public final class LinearAnalysis {

    /** Below this share of a node's stiffest direction a direction is suspiciously weak. */
    private static final double WEAK = 1e-10;

    private final FrameSystem system;
    private final Factorization factorization;
    private final boolean[] present;
    private final List<String> warnings;

    private LinearAnalysis(FrameSystem system, Factorization factorization, boolean[] present) {
        this.system = system;
        this.factorization = factorization;
        this.present = present;
        warnings = warnings(system, factorization);
    }

    /**
     * Assembles and factorizes the stiffness of a model.
     *
     * @param model the structure
     * @return the analysis, ready for load cases
     * @throws MechanismException if a part of the structure can move without resistance
     * @throws IllegalArgumentException if a member or support cannot be used
     */
    public static LinearAnalysis of(FrameModel model) {
        FrameSystem system = new FrameSystem(model);
        boolean[] all = new boolean[system.elements().size()];
        Arrays.fill(all, true);
        return of(system, SymbolicFactorization.of(system.stiffnessPattern()), all);
    }

    static LinearAnalysis of(
            FrameSystem system, SymbolicFactorization symbolic, boolean[] present) {
        Factorization factorization = symbolic.factorize(system.stiffness(present));
        for (SmallPivot pivot : factorization.smallPivots()) {
            if (pivot.zero()) {
                throw new MechanismException(motion(system, factorization, pivot));
            }
        }
        return new LinearAnalysis(system, factorization, present.clone());
    }

    private static List<String> warnings(FrameSystem system, Factorization factorization) {
        List<String> warnings = new ArrayList<>();
        for (SmallPivot pivot : factorization.smallPivots()) {
            warnings.add(
                    String.format(
                            Locale.ROOT,
                            "the structure is nearly a mechanism: %s with a resistance of %.1e of"
                                    + " what its members give there; about %.0f of 16 digits are"
                                    + " lost.",
                            motion(system, factorization, pivot),
                            pivot.ratio(),
                            -StrictMath.log10(pivot.ratio())));
        }
        double[] diagonal = factorization.matrix().diagonal();
        for (int half = 0; half < 2 * system.model().nodes().size(); half++) {
            addWeakDirections(system, diagonal, half, warnings);
        }
        return List.copyOf(warnings);
    }

    /** Directions in which a node is held by next to nothing, against its stiffest direction. */
    private static void addWeakDirections(
            FrameSystem system, double[] diagonal, int half, List<String> warnings) {
        double largest = 0;
        for (int k = 0; k < 3; k++) {
            int unknown = system.unknown(3 * half + k);
            largest = Math.max(largest, unknown < 0 ? 0 : diagonal[unknown]);
        }
        for (int k = 0; k < 3; k++) {
            int unknown = system.unknown(3 * half + k);
            if (unknown >= 0 && diagonal[unknown] < WEAK * largest) {
                double[] u = new double[6 * system.model().nodes().size()];
                u[3 * half + k] = 1;
                system.holds().toGlobal(u);
                warnings.add(
                        String.format(
                                Locale.ROOT,
                                "the structure is nearly a mechanism: %s with a stiffness of %.1e"
                                        + " of that in the node's stiffest direction.",
                                FreeMotion.of(system.model(), u, half / 2),
                                diagonal[unknown] / largest));
            }
        }
    }

    private static FreeMotion motion(
            FrameSystem system, Factorization factorization, SmallPivot pivot) {
        double[] z = factorization.freeMovement(pivot);
        double[] u = new double[6 * system.model().nodes().size()];
        for (int i = 0; i < u.length; i++) {
            if (system.unknown(i) >= 0) {
                u[i] = z[system.unknown(i)];
            }
        }
        system.holds().toGlobal(u);
        return FreeMotion.of(system.model(), u, system.motionOf(pivot.row()) / 6);
    }

    /**
     * Gives the structure.
     *
     * @return the model analysed
     */
    public FrameModel model() {
        return system.model();
    }

    /**
     * Counts the unknowns.
     *
     * @return number of displacements and rotations solved for
     */
    public int unknowns() {
        return system.count();
    }

    /**
     * Lists what should make the reader suspicious: near mechanisms, with node and direction.
     *
     * @return warnings, empty where there are none
     */
    public List<String> warnings() {
        return warnings;
    }

    /**
     * Solves for one load case.
     *
     * @param loads the case
     * @return what the structure does
     * @throws IllegalArgumentException if a load names what is not there or cannot be carried
     */
    public FrameSolution solve(LoadCase loads) {
        return solve(List.of(loads)).get(0);
    }

    /**
     * Solves for many load cases.
     *
     * @param cases the cases
     * @return one solution for each, in order
     * @throws IllegalArgumentException if a load names what is not there or cannot be carried
     */
    public List<FrameSolution> solve(List<LoadCase> cases) {
        double[][] right = new double[cases.size()][];
        List<AppliedLoads> applied = new ArrayList<>(cases.size());
        for (int c = 0; c < right.length; c++) {
            AppliedLoads loads = system.apply(cases.get(c).loads());
            applied.add(loads);
            right[c] = system.rightHandSide(loads, present);
        }
        double[][] solutions = factorization.solve(right);
        List<FrameSolution> results = new ArrayList<>(cases.size());
        for (int c = 0; c < right.length; c++) {
            AppliedLoads loads = applied.get(c);
            results.add(
                    solution(cases.get(c).name(), loads, system.movements(solutions[c], loads)));
        }
        return List.copyOf(results);
    }

    FrameSolution solution(String name, AppliedLoads loads, double[] movements) {
        return new FrameSolution(name, system, loads, movements, present, warnings);
    }

    FrameSystem system() {
        return system;
    }

    Factorization factorization() {
        return factorization;
    }

    boolean[] present() {
        return present.clone();
    }
}
