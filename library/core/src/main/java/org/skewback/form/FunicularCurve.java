package org.skewback.form;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import org.skewback.numeric.NotConvergedException;

/**
 * The funicular of any vertical load: the line {@code y = h x/L + M₀(x)/H} between the springings,
 * along which the load is carried by thrust alone ({@code M₀}: moment of the simply supported beam).
 *
 * <p>Source: the method of the closing line, in any text on graphic statics; for a load given on
 * plan it is a closed form. A load per length of axis depends on the line sought; then the load is
 * spread along one trial line after another until the slope moves by less than 1e-12 of the
 * steepest slope (at most 500 times).
 */
public final class FunicularCurve implements Axis {

    private static final double SETTLED = 1e-12;
    private static final int MOST_ROUNDS = 500;

    private final SimpleBeam beam;
    private final double rightLevel;
    private final double thrust;
    private final ArcTable arc;

    private FunicularCurve(SimpleBeam beam, double rightLevel, double thrust) {
        this.beam = beam;
        this.rightLevel = rightLevel;
        this.thrust = thrust;
        this.arc = ArcTable.of(beam.span(), beam.breaks(), this::slope);
    }

    /**
     * Draws the funicular that passes a given point between the springings.
     *
     * @param load the load
     * @param span level distance between the springings, m, greater than 0
     * @param rightLevel height of the right springing above the left one, m
     * @param x position of the point, strictly between the springings, m
     * @param y height of the point above the left springing, m
     * @return the funicular, with the thrust that follows
     * @throws LoadNotCarriedException if no thrust greater than 0 makes the line pass the point,
     *     because it lies on the chord or on the side to which the load doesn't bend
     * @throws IllegalArgumentException if a value is not finite, the point is not between the
     *     springings, or the load reaches beyond the span
     * @throws NotConvergedException if the line under a load per length of axis does not settle
     */
    public static FunicularCurve through(
            VerticalLoad load, double span, double rightLevel, double x, double y) {
        Require.positive("span", span, "m");
        Require.finite("level of the right springing", rightLevel, "m");
        Require.finite("height of the given point", y, "m");
        if (!(x > 0 && x < span)) {
            throw Require.refused(
                    "position of the given point", x, "m", "strictly between 0 and " + span);
        }
        double rise = y - rightLevel * x / span;
        return settle(load, span, rightLevel, beam -> thrustFor(beam, x, rise));
    }

    /** Thrust that lifts the line by a given height over the chord. */
    static double thrustFor(SimpleBeam beam, double x, double rise) {
        double thrust = beam.moment(x) / rise;
        if (!(thrust > 0 && thrust < Double.POSITIVE_INFINITY)) {
            throw new LoadNotCarriedException(
                    "No thrust carries the load through the point at x = "
                            + x
                            + " m, "
                            + rise
                            + " m above the chord: the moment of the simply supported beam there"
                            + " is "
                            + beam.moment(x)
                            + " N·m, and the two must have the same sign.");
        }
        return thrust;
    }

    /**
     * Draws the funicular of a given thrust.
     *
     * @param load the load
     * @param span level distance between the springings, m, greater than 0
     * @param rightLevel height of the right springing above the left one, m
     * @param thrust horizontal component of the force along the line, N, greater than 0
     * @return the funicular
     * @throws IllegalArgumentException if a value is not finite, span or thrust is not positive, or
     *     the load reaches beyond the span
     * @throws NotConvergedException if the line under a load per length of axis does not settle
     */
    public static FunicularCurve ofThrust(
            VerticalLoad load, double span, double rightLevel, double thrust) {
        Require.positive("span", span, "m");
        Require.finite("level of the right springing", rightLevel, "m");
        Require.positive("thrust", thrust, "N");
        return settle(load, span, rightLevel, beam -> thrust);
    }

    private static FunicularCurve settle(
            VerticalLoad load, double span, double rightLevel, ToDoubleFunction<SimpleBeam> rule) {
        if (!load.followsAxis()) {
            SimpleBeam beam = SimpleBeam.under(load, span);
            return new FunicularCurve(beam, rightLevel, rule.applyAsDouble(beam));
        }
        ArcTable trial = ArcTable.of(span, List.of(), x -> rightLevel / span);
        FunicularCurve line = on(trial, load, span, rightLevel, rule);
        double change = Double.NaN;
        for (int round = 0; round < MOST_ROUNDS; round++) {
            FunicularCurve next = on(line.arc, load, span, rightLevel, rule);
            change = next.slopeChangeFrom(line);
            if (change <= SETTLED) {
                return next;
            }
            if (!Double.isFinite(change)) {
                break;
            }
            line = next;
        }
        throw new NotConvergedException(
                "The funicular of a load per length of axis did not settle in "
                        + MOST_ROUNDS
                        + " rounds; the slope still moved by "
                        + change
                        + " of the steepest, allowed is "
                        + SETTLED
                        + ".");
    }

    private static FunicularCurve on(
            ArcMeasure arc,
            VerticalLoad load,
            double span,
            double rightLevel,
            ToDoubleFunction<SimpleBeam> rule) {
        SimpleBeam beam = SimpleBeam.under(load, span, arc);
        return new FunicularCurve(beam, rightLevel, rule.applyAsDouble(beam));
    }

    private double slopeChangeFrom(FunicularCurve other) {
        double steepest = Double.MIN_NORMAL;
        double change = 0;
        for (double x : ArcTable.panelEnds(span(), beam.breaks())) {
            double slope = slope(x);
            steepest = Math.max(steepest, Math.abs(slope));
            change = Math.max(change, Math.abs(slope - other.slope(x)));
        }
        return change / steepest;
    }

    /**
     * Gives the thrust.
     *
     * @return the horizontal component of the force along the line in N
     */
    public double thrust() {
        return thrust;
    }

    /**
     * Gives the simply supported beam under the same load.
     *
     * @return the beam
     */
    public SimpleBeam beam() {
        return beam;
    }

    /**
     * Gives the force along the line, {@code H √(1 + y′²)}; at a point load, that to its right.
     *
     * @param x position from the left springing, 0 to span, m
     * @return the force in N, compression positive
     * @throws IllegalArgumentException if {@code x} lies outside the span
     */
    public double force(double x) {
        double slope = slope(x);
        return thrust * Math.sqrt(1 + slope * slope);
    }

    /**
     * Gives the forces with which the springings hold the line.
     *
     * @return the forces
     */
    public SpringingForces springings() {
        return SpringingForces.of(beam, thrust, rightLevel);
    }

    @Override
    public double span() {
        return beam.span();
    }

    @Override
    public double rightLevel() {
        return rightLevel;
    }

    @Override
    public double y(double x) {
        return chord(x) + beam.moment(x) / thrust;
    }

    @Override
    public double slope(double x) {
        return rightLevel / span() + beam.shear(x) / thrust;
    }

    @Override
    public OptionalDouble curvature(double x) {
        double at = Require.within("x", x, 0, span(), "m");
        if (beam.breaks().contains(at)) {
            return OptionalDouble.empty();
        }
        double slope = slope(at);
        double secant = Math.sqrt(1 + slope * slope);
        // The intensities are those to the right, so the last point takes the value at its left.
        double inside = at == span() ? Math.nextDown(at) : at;
        double perPlanLength = beam.planIntensity(inside) + beam.axisIntensity(inside) * secant;
        return OptionalDouble.of(perPlanLength / thrust / (secant * secant * secant));
    }

    @Override
    public List<Double> breaks() {
        return beam.breaks();
    }

    @Override
    public double arcLength(double from, double to) {
        return arc.arcLength(
                Require.within("x", from, 0, span(), "m"), Require.within("x", to, 0, span(), "m"));
    }

    @Override
    public double arcMoment(double from, double to) {
        return arc.arcMoment(
                Require.within("x", from, 0, span(), "m"), Require.within("x", to, 0, span(), "m"));
    }

    @Override
    public String toString() {
        return "FunicularCurve[span="
                + span()
                + ", rightLevel="
                + rightLevel
                + ", thrust="
                + thrust
                + "]";
    }
}
