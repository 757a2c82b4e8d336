package org.skewback.frame;

import java.util.ArrayList;
import java.util.List;
import org.skewback.steel.Fibre;
import org.skewback.steel.Section;

/**
 * Forces, stresses and movements along one member, exact for the loads given; see the package for the
 * signs.
 */
public final class MemberForces {

    private final ElementState state;
    private final double length;

    MemberForces(ElementState state) {
        this.state = state;
        length = state.element().length();
    }

    /**
     * Gives the length.
     *
     * @return length of the flexible part, m
     */
    public double length() {
        return length;
    }

    /**
     * Lists the places between which all forces run smoothly: the ends, and where loads begin, end or
     * act.
     *
     * @return distances from the start, rising, the first 0 and the last the length, m
     */
    public double[] breaks() {
        return state.load().breaks(length).clone();
    }

    private double within(double position) {
        double slack = 1e-9 * length;
        return Math.max(
                0,
                Math.min(
                        length,
                        Require.within(
                                "position on member " + state.element().name(),
                                position,
                                -slack,
                                length + slack,
                                "m")));
    }

    /**
     * Gives the forces at a section; where a point load acts, those just before it.
     *
     * @param position distance from the start, 0 to the length, m
     * @return the forces
     * @throws IllegalArgumentException if the position is not on the member
     */
    public SectionForces at(double position) {
        return SectionForces.of(state.forces(within(position), false));
    }

    /**
     * Gives the forces at a section; where a point load acts, those just past it.
     *
     * @param position distance from the start, 0 to the length, m
     * @return the forces
     * @throws IllegalArgumentException if the position is not on the member
     */
    public SectionForces after(double position) {
        return SectionForces.of(state.forces(within(position), true));
    }

    /**
     * Gives the forces at the start, just past a load that acts there.
     *
     * @return the forces
     */
    public SectionForces start() {
        return after(0);
    }

    /**
     * Gives the forces at the end, just before a load that acts there.
     *
     * @return the forces
     */
    public SectionForces end() {
        return at(length);
    }

    /**
     * Gives the movement of a point of the axis.
     *
     * @param position distance from the start, 0 to the length, m
     * @return displacement and rotation, global axes
     * @throws IllegalArgumentException if the position is not on the member
     */
    public Movement movement(double position) {
        double[] local = state.movement(within(position));
        return new Movement(
                state.element().globalVector(local, 0), state.element().globalVector(local, 3));
    }

    /**
     * Gives the normal stress at a fibre.
     *
     * @param position distance from the start, 0 to the length, m
     * @param fibre the fibre
     * @return σ = N/A − M_y z/I_y − M_z y/I_z, Pa, positive in tension
     * @throws IllegalArgumentException if the position is not on the member or the member has no
     *     section
     */
    public double stress(double position, Fibre fibre) {
        return at(position).stress(section(position), fibre);
    }

    private Section section(double position) {
        Member member = state.element().member();
        if (member instanceof BeamColumn beam) {
            return beam.profile().at(within(position) / length);
        } else if (member instanceof Bar bar) {
            return bar.section();
        }
        throw new IllegalArgumentException(
                "member " + member.name() + " has no section; allowed are beam-columns and bars.");
    }

    /**
     * A largest or smallest value along a member.
     *
     * @param position distance from the start, m
     * @param forces all six forces there
     */
    public record Extreme(double position, SectionForces forces) {}

    /**
     * Finds the largest value of a force along the member.
     *
     * @param component the force
     * @return where it is, and the forces there
     */
    public Extreme largest(ForceComponent component) {
        return extreme(component, 1);
    }

    /**
     * Finds the smallest value of a force along the member.
     *
     * @param component the force
     * @return where it is, and the forces there
     */
    public Extreme smallest(ForceComponent component) {
        return extreme(component, -1);
    }

    private Extreme extreme(ForceComponent component, int sense) {
        int k = component.index();
        Extreme best = null;
        for (double x : candidates(k)) {
            for (boolean after : new boolean[] {false, true}) {
                if ((x == 0 && !after) || (x == length && after)) {
                    continue;
                }
                Extreme here = new Extreme(x, SectionForces.of(state.forces(x, after)));
                if (best == null
                        || sense * here.forces.get(component)
                                > sense * best.forces.get(component)) {
                    best = here;
                }
            }
        }
        return best == null ? new Extreme(0, SectionForces.of(state.forces(0, true))) : best;
    }

    /** Ends, places of loads, and between them the stationary points. */
    private List<Double> candidates(int k) {
        double[] breaks = state.marks();
        List<Double> all = new ArrayList<>();
        for (int b = 0; b < breaks.length; b++) {
            all.add(breaks[b]);
            if (b + 1 < breaks.length) {
                addStationary(breaks[b], breaks[b + 1], k, all);
            }
        }
        return all;
    }

    /** Between marks a force is a polynomial of degree 4 or close to one, which five values settle. */
    private void addStationary(double from, double to, int k, List<Double> all) {
        double width = to - from;
        double[] values = new double[5];
        for (int i = 0; i < 5; i++) {
            values[i] = state.forces(from + i * width / 4, i == 0)[k];
        }
        for (double t : Quartic.through(values).stationary()) {
            all.add(from + t * width);
        }
    }
}
