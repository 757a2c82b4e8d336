package org.skewback.arch;

import java.util.List;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.skewback.form.Axis;
import org.skewback.form.SimpleBeam;
import org.skewback.form.VerticalLoad;

/**
 * An arch of any axis and stiffness, two-hinged or fixed, by the force method.
 *
 * <p>The released structure is the simple beam of the same axis. The redundants are the thrust H and,
 * where the springings are fixed, the moments M_A and M_B there. With the chord {@code h x/L} between the
 * springings and V₀, M₀ of the beam,
 *
 * <pre>
 * M = M₀ − H (y − h x/L) + M_A (1 − x/L) + M_B x/L
 * V = V₀ + H h/L + (M_B − M_A)/L
 * N = H cos θ + V sin θ,   Q = V cos θ − H sin θ
 * </pre>
 *
 * and the redundants follow from the principle of virtual forces, {@code ∫(m M/EI + n N/EA − n ε) ds =}
 * work of the reactions on what the springings are moved. Shear deformation and the curvature of the rib
 * in the law of bending are left out. Source: the force method, as in any text on statically
 * indeterminate structures; I. A. Karnovsky, <i>Theory of Arched Structures</i> (Springer 2012), chapters
 * 3 and 4 (from memory).
 */
public final class ElasticArch {

    private static final int THRUST = 0;
    private static final int LEFT = 1;
    private static final int RIGHT = 2;

    private final Axis axis;
    private final RibStiffness stiffness;
    private final Springings springings;
    private final AlongRib along;
    private final int redundants;
    private final LUDecomposition flexibility;

    /**
     * Makes the arch.
     *
     * @param axis the axis
     * @param stiffness E I and E A along the span
     * @param springings how it is held
     * @throws IllegalArgumentException if a stiffness is not greater than 0 somewhere
     */
    public ElasticArch(Axis axis, RibStiffness stiffness, Springings springings) {
        this.axis = axis;
        this.stiffness = stiffness;
        this.springings = springings;
        this.along = new AlongRib(axis);
        this.redundants = springings == Springings.PINNED ? 1 : 3;
        this.flexibility = new LUDecomposition(flexibility());
    }

    /**
     * Gives the axis.
     *
     * @return the axis
     */
    public Axis axis() {
        return axis;
    }

    /**
     * Gives the forces under a load, on springings that do not move.
     *
     * @param load vertical load, on the span
     * @return the forces
     * @throws IllegalArgumentException if the load reaches beyond the span
     */
    public ArchForces under(VerticalLoad load) {
        return under(load, SpringingMovement.NONE);
    }

    /**
     * Gives the forces under a load and a movement.
     *
     * @param load vertical load, on the span; {@link VerticalLoad#together} of nothing for none
     * @param movement warming, spread and rotation
     * @return the forces
     * @throws IllegalArgumentException if the load reaches beyond the span, or a springing that is a
     *     hinge is turned
     */
    public ArchForces under(VerticalLoad load, SpringingMovement movement) {
        if (springings == Springings.PINNED
                && (movement.leftTurn() != 0 || movement.rightTurn() != 0)) {
            throw Require.refused(
                    "rotation of a springing",
                    movement.leftTurn() != 0 ? movement.leftTurn() : movement.rightTurn(),
                    "rad",
                    "0 where the springings are hinges");
        }
        SimpleBeam beam = SimpleBeam.under(load, axis);
        double[] gap =
                along.integrate(
                        "the thrust",
                        place -> virtual(place, beam, movement.strain()),
                        beam.breaks());
        double level = axis.rightLevel() / axis.span();
        double[] side = new double[redundants];
        side[THRUST] = -movement.spread() - level * movement.rightRise() - gap[THRUST];
        if (redundants > 1) {
            double tilt = movement.rightRise() / axis.span();
            side[LEFT] = tilt - movement.leftTurn() - gap[LEFT];
            side[RIGHT] = -tilt + movement.rightTurn() - gap[RIGHT];
        }
        double[] found = flexibility.getSolver().solve(new ArrayRealVector(side, false)).toArray();
        return new ArchForces(
                axis,
                stiffness,
                beam,
                movement,
                found[THRUST],
                redundants > 1 ? found[LEFT] : 0,
                redundants > 1 ? found[RIGHT] : 0);
    }

    /**
     * Gives the forces under a force of 1 N at each of several positions: each list element is one
     * ordinate of all influence lines of the arch.
     *
     * @param positions positions from the left springing, m, each on the span
     * @return the forces, one for each position
     * @throws IllegalArgumentException if a position lies off the span
     */
    public List<ArchForces> influence(List<Double> positions) {
        return positions.stream().map(x -> under(VerticalLoad.point(1, x))).toList();
    }

    private RealMatrix flexibility() {
        double[] sums =
                along.integrate(
                        "the flexibility of the arch",
                        place -> {
                            double[] moments = unitMoments(place);
                            double[] forces = unitForces(place);
                            double bending = bending(place.x());
                            double axial = axial(place.x());
                            double[] values = new double[redundants * redundants];
                            for (int i = 0; i < redundants; i++) {
                                for (int j = 0; j < redundants; j++) {
                                    values[i * redundants + j] =
                                            moments[i] * moments[j] / bending
                                                    + forces[i] * forces[j] / axial;
                                }
                            }
                            return values;
                        },
                        List.of());
        double[][] rows = new double[redundants][redundants];
        for (int i = 0; i < redundants; i++) {
            System.arraycopy(sums, i * redundants, rows[i], 0, redundants);
        }
        return new Array2DRowRealMatrix(rows, false);
    }

    private double[] virtual(AlongRib.Place place, SimpleBeam beam, double strain) {
        double[] moments = unitMoments(place);
        double[] forces = unitForces(place);
        double bent = beam.moment(place.x()) / bending(place.x());
        double shortened = beam.shear(place.x()) * place.sine() / axial(place.x()) - strain;
        double[] values = new double[redundants];
        for (int i = 0; i < redundants; i++) {
            values[i] = moments[i] * bent + forces[i] * shortened;
        }
        return values;
    }

    private double[] unitMoments(AlongRib.Place place) {
        double share = place.x() / axis.span();
        double above = axis.chord(place.x()) - place.y();
        return redundants == 1 ? new double[] {above} : new double[] {above, 1 - share, share};
    }

    private double[] unitForces(AlongRib.Place place) {
        double thrust = place.cosine() + axis.rightLevel() / axis.span() * place.sine();
        double turn = place.sine() / axis.span();
        return redundants == 1 ? new double[] {thrust} : new double[] {thrust, -turn, turn};
    }

    private double bending(double x) {
        return Require.positive(
                "bending stiffness at x = " + x + " m",
                stiffness.bending().applyAsDouble(x),
                "N·m²");
    }

    private double axial(double x) {
        double value = stiffness.axial().applyAsDouble(x);
        if (!(value > 0)) {
            throw Require.refused(
                    "axial stiffness at x = " + x + " m", value, "N", "a number greater than 0");
        }
        return value;
    }
}
