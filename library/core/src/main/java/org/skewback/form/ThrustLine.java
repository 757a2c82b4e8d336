package org.skewback.form;

import java.util.List;
import java.util.TreeSet;

/**
 * The line of thrust in a three-hinged arch, with hinges at both springings and at a given point of
 * the axis, under vertical load: {@code y_t = h x/L + M₀(x)/H} with {@code H = M₀(x_h)/(y(x_h) − h
 * x_h/L)}.
 *
 * <p>Source: statics of the three-hinged arch, in any text on structural analysis. In an arch with
 * fewer hinges it is one possible line of thrust, not the elastic one.
 */
public final class ThrustLine {

    private final Axis axis;
    private final SimpleBeam beam;
    private final double hinge;
    private final double thrust;

    private ThrustLine(Axis axis, SimpleBeam beam, double hinge, double thrust) {
        this.axis = axis;
        this.beam = beam;
        this.hinge = hinge;
        this.thrust = thrust;
    }

    /**
     * Draws the line of thrust.
     *
     * @param axis axis of the arch
     * @param load load on the arch; load per length of axis is spread along this axis
     * @param hinge position of the third hinge, m, strictly between the springings
     * @return the line of thrust
     * @throws LoadNotCarriedException if the thrust would not be a compression
     * @throws IllegalArgumentException if the hinge is not between the springings or the load
     *     reaches beyond the span
     */
    public static ThrustLine inThreeHinged(Axis axis, VerticalLoad load, double hinge) {
        if (!(hinge > 0 && hinge < axis.span())) {
            throw Require.refused(
                    "position of the hinge", hinge, "m", "strictly between 0 and " + axis.span());
        }
        SimpleBeam beam = SimpleBeam.under(load, axis);
        double rise = axis.y(hinge) - axis.chord(hinge);
        return new ThrustLine(axis, beam, hinge, FunicularCurve.thrustFor(beam, hinge, rise));
    }

    /**
     * Gives the axis of the arch.
     *
     * @return the axis
     */
    public Axis axis() {
        return axis;
    }

    /**
     * Gives the position of the third hinge.
     *
     * @return the position from the left springing in m
     */
    public double hinge() {
        return hinge;
    }

    /**
     * Gives the thrust.
     *
     * @return the horizontal component in N, compression positive
     */
    public double thrust() {
        return thrust;
    }

    /**
     * Gives the forces with which the springings hold the arch.
     *
     * @return the forces
     */
    public SpringingForces springings() {
        return SpringingForces.of(beam, thrust, axis.rightLevel());
    }

    /**
     * Gives the height of the line of thrust above the left springing.
     *
     * @param x position from the left springing, 0 to span, m
     * @return the ordinate in m
     * @throws IllegalArgumentException if {@code x} lies outside the span
     */
    public double y(double x) {
        return axis.chord(x) + beam.moment(x) / thrust;
    }

    /**
     * Gives the vertical distance of the line of thrust from the axis.
     *
     * @param x position from the left springing, 0 to span, m
     * @return the eccentricity in m, positive above the axis
     * @throws IllegalArgumentException if {@code x} lies outside the span
     */
    public double eccentricity(double x) {
        return y(x) - axis.y(x);
    }

    /**
     * Gives the bending moment, {@code M = H e}.
     *
     * @param x position from the left springing, 0 to span, m
     * @return the moment in N·m, sagging positive
     * @throws IllegalArgumentException if {@code x} lies outside the span
     */
    public double moment(double x) {
        return thrust * eccentricity(x);
    }

    /**
     * Gives the vertical component of the force; under a point load, that to its right.
     *
     * @param x position from the left springing, 0 to span, m
     * @return the force that the left part exerts on the right one in N, positive upward
     * @throws IllegalArgumentException if {@code x} lies outside the span
     */
    public double vertical(double x) {
        return beam.shear(x) + thrust * axis.rightLevel() / axis.span();
    }

    /**
     * Gives the force along the axis, {@code N = H cos θ + V sin θ}.
     *
     * @param x position from the left springing, 0 to span, m
     * @return the force in N, compression positive
     * @throws IllegalArgumentException if {@code x} lies outside the span
     */
    public double normalForce(double x) {
        double angle = axis.angle(x);
        return thrust * StrictMath.cos(angle) + vertical(x) * StrictMath.sin(angle);
    }

    /**
     * Gives the force across the axis, {@code Q = V cos θ − H sin θ}.
     *
     * @param x position from the left springing, 0 to span, m
     * @return the force in N, positive when the left part pushes the right one outward
     * @throws IllegalArgumentException if {@code x} lies outside the span
     */
    public double shearForce(double x) {
        double angle = axis.angle(x);
        return vertical(x) * StrictMath.cos(angle) - thrust * StrictMath.sin(angle);
    }

    /**
     * Gives the distance from the axis, along its normal, at which the force crosses the section
     * square to the axis, {@code e_n = M/N}.
     *
     * @param x position from the left springing, 0 to span, m
     * @return the eccentricity in m, positive above the axis
     * @throws LoadNotCarriedException if the section is not in compression
     * @throws IllegalArgumentException if {@code x} lies outside the span
     */
    public double normalEccentricity(double x) {
        double normal = normalForce(x);
        if (!(normal > 0)) {
            throw new LoadNotCarriedException(
                    "normal force at x = "
                            + x
                            + " m is "
                            + normal
                            + " N; allowed is compression, greater than 0.");
        }
        return moment(x) / normal;
    }

    /**
     * Finds the largest vertical eccentricity.
     *
     * <p>Sampled at 96 positions between each two breaks of load or axis and refined there; the
     * position is good to about 1e-8 of the span, the eccentricity to rounding.
     *
     * @return the largest eccentricity in magnitude, and where it is
     */
    public Deviation largestEccentricity() {
        Extremum largest = Extremum.ofMagnitude(axis.span(), breaks(), this::eccentricity);
        return new Deviation(largest.x(), largest.value());
    }

    /**
     * Finds the largest eccentricity along the normal.
     *
     * @return the largest eccentricity in magnitude, and where it is
     * @throws LoadNotCarriedException if a section is not in compression
     */
    public Deviation largestNormalEccentricity() {
        Extremum largest = Extremum.ofMagnitude(axis.span(), breaks(), this::normalEccentricity);
        return new Deviation(largest.x(), largest.value());
    }

    /**
     * Checks whether the force stays inside the kern everywhere, so that each section is in
     * compression over its whole depth if it behaves elastically.
     *
     * @param above distance of the kern point from the axis towards the extrados, m, greater than 0
     * @param below distance of the kern point from the axis towards the intrados, m, greater than 0
     * @return the section that uses most of its kern
     * @throws LoadNotCarriedException if a section is not in compression
     * @throws IllegalArgumentException if a distance is not finite and positive
     */
    public KernCheck kern(double above, double below) {
        Require.positive("kern distance towards the extrados", above, "m");
        Require.positive("kern distance towards the intrados", below, "m");
        Extremum worst =
                Extremum.ofMagnitude(
                        axis.span(),
                        breaks(),
                        x -> {
                            double eccentricity = normalEccentricity(x);
                            return eccentricity / (eccentricity > 0 ? above : below);
                        });
        return new KernCheck(
                worst.x(),
                worst.value() * (worst.value() > 0 ? above : below),
                worst.value() > 0 ? above : below);
    }

    /**
     * Checks the middle third of a rectangular section, {@code |e_n| ≤ d/6}.
     *
     * @param depth depth of the section square to the axis, d, m, greater than 0
     * @return the section that uses most of its kern
     * @throws LoadNotCarriedException if a section is not in compression
     * @throws IllegalArgumentException if the depth is not finite and positive
     */
    public KernCheck middleThird(double depth) {
        Require.positive("depth of the section", depth, "m");
        return kern(depth / 6, depth / 6);
    }

    private List<Double> breaks() {
        TreeSet<Double> breaks = new TreeSet<>(beam.breaks());
        breaks.addAll(axis.breaks());
        breaks.add(hinge);
        return List.copyOf(breaks);
    }
}
