package org.skewback.arch;

import java.util.TreeSet;
import org.skewback.form.Axis;
import org.skewback.form.SimpleBeam;
import org.skewback.form.VerticalLoad;

/** Reactions, internal forces and deflections of an {@link ElasticArch} under one load. */
public final class ArchForces {

    private final Axis axis;
    private final RibStiffness stiffness;
    private final SimpleBeam beam;
    private final SpringingMovement movement;
    private final double thrust;
    private final double leftMoment;
    private final double rightMoment;

    ArchForces(
            Axis axis,
            RibStiffness stiffness,
            SimpleBeam beam,
            SpringingMovement movement,
            double thrust,
            double leftMoment,
            double rightMoment) {
        this.axis = axis;
        this.stiffness = stiffness;
        this.beam = beam;
        this.movement = movement;
        this.thrust = thrust;
        this.leftMoment = leftMoment;
        this.rightMoment = rightMoment;
    }

    /**
     * Gives the thrust.
     *
     * @return the horizontal component at both springings, N, inward positive
     */
    public double thrust() {
        return thrust;
    }

    /**
     * Gives the moment at the left springing.
     *
     * @return the moment in N·m, sagging positive; 0 at a hinge
     */
    public double leftMoment() {
        return leftMoment;
    }

    /**
     * Gives the moment at the right springing.
     *
     * @return the moment in N·m, sagging positive; 0 at a hinge
     */
    public double rightMoment() {
        return rightMoment;
    }

    /**
     * Gives the vertical reaction of the left springing.
     *
     * @return the reaction in N, upward positive
     */
    public double leftVertical() {
        return beam.leftReaction() + tilt();
    }

    /**
     * Gives the vertical reaction of the right springing.
     *
     * @return the reaction in N, upward positive
     */
    public double rightVertical() {
        return beam.rightReaction() - tilt();
    }

    /**
     * Gives the bending moment.
     *
     * @param x position from the left springing, 0 to span, m
     * @return the moment in N·m, sagging positive
     * @throws IllegalArgumentException if {@code x} lies outside the span
     */
    public double moment(double x) {
        double share = x / axis.span();
        return beam.moment(x)
                - thrust * (axis.y(x) - axis.chord(x))
                + leftMoment * (1 - share)
                + rightMoment * share;
    }

    /**
     * Gives the axial force, {@code N = H cos θ + V sin θ}; at a point load, that to its right.
     *
     * @param x position from the left springing, 0 to span, m
     * @return the force in N, compression positive
     * @throws IllegalArgumentException if {@code x} lies outside the span
     */
    public double axial(double x) {
        double angle = axis.angle(x);
        return thrust * StrictMath.cos(angle) + (beam.shear(x) + tilt()) * StrictMath.sin(angle);
    }

    /**
     * Gives the shear force square to the axis, {@code Q = V cos θ − H sin θ}; at a point load, that to
     * its right.
     *
     * @param x position from the left springing, 0 to span, m
     * @return the force in N, positive where the part to the left pushes outward
     * @throws IllegalArgumentException if {@code x} lies outside the span
     */
    public double shear(double x) {
        double angle = axis.angle(x);
        return (beam.shear(x) + tilt()) * StrictMath.cos(angle) - thrust * StrictMath.sin(angle);
    }

    /**
     * Gives the vertical deflection by virtual forces on the simple beam of the same axis.
     *
     * @param x position from the left springing, 0 to span, m
     * @return the deflection in m, downward positive, against the left springing
     * @throws IllegalArgumentException if {@code x} lies outside the span
     */
    public double deflection(double x) {
        SimpleBeam unit = SimpleBeam.under(VerticalLoad.point(1, x), axis.span());
        TreeSet<Double> breaks = new TreeSet<>(beam.breaks());
        if (x > 0 && x < axis.span()) {
            breaks.add(x);
        }
        // In parts, since they may cancel: each is then as exact as its own size allows.
        double sum = 0;
        for (double part :
                new AlongRib(axis)
                        .integrate("the deflection", place -> virtual(place, unit), breaks)) {
            sum += part;
        }
        return sum - movement.rightRise() * x / axis.span();
    }

    private double[] virtual(AlongRib.Place place, SimpleBeam unit) {
        double x = place.x();
        double share = x / axis.span();
        double bending = unit.moment(x) / stiffness.bending().applyAsDouble(x);
        double axial = unit.shear(x) * place.sine();
        return new double[] {
            bending * beam.moment(x),
            bending * -thrust * (place.y() - axis.chord(x)),
            bending * (leftMoment * (1 - share) + rightMoment * share),
            axial * axial(place) / stiffness.axial().applyAsDouble(x),
            -axial * movement.strain()
        };
    }

    private double axial(AlongRib.Place place) {
        return thrust * place.cosine() + (beam.shear(place.x()) + tilt()) * place.sine();
    }

    /** What thrust and springing moments add to the left reaction of the simple beam. */
    private double tilt() {
        return (thrust * axis.rightLevel() + rightMoment - leftMoment) / axis.span();
    }
}
