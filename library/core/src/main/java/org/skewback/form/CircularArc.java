package org.skewback.form;

import java.util.OptionalDouble;
import org.skewback.quantity.Quantity;

/**
 * A segment of a circle between springings at one level, up to the semicircle.
 *
 * @param span level distance between the springings, L, m, greater than 0
 * @param rise height of the crown above the springings, f, m, greater than 0 and at most half the
 *     span
 */
public record CircularArc(double span, double rise) implements Axis {

    /**
     * Makes a segment from span and rise.
     *
     * @param span level distance between the springings, L, m, greater than 0
     * @param rise height of the crown above the springings, f, m, greater than 0 and at most half
     *     the span
     * @throws IllegalArgumentException if a value is not finite and positive, or the rise exceeds
     *     half the span
     */
    public CircularArc {
        Require.positive("span", span, "m");
        Require.positive("rise", rise, "m");
        if (rise > span / 2) {
            throw Require.refused(
                    "rise", rise, "m", "at most half the span of " + span + " m (a semicircle)");
        }
    }

    /**
     * Makes a semicircle.
     *
     * @param radius radius, m, greater than 0
     * @return the semicircle, of span 2R and rise R
     * @throws IllegalArgumentException if the radius is not finite and positive
     */
    public static CircularArc semicircle(double radius) {
        return new CircularArc(2 * Require.positive("radius", radius, "m"), radius);
    }

    /**
     * Makes the flatter of the two segments of a given radius, {@code f = R − √(R² − L²/4)}.
     *
     * @param span level distance between the springings, m, greater than 0
     * @param radius radius, m, at least half the span
     * @return the segment
     * @throws IllegalArgumentException if the span is not positive or the radius is less than half
     *     of it
     */
    public static CircularArc ofRadius(double span, double radius) {
        double half = Require.positive("span", span, "m") / 2;
        if (!(radius >= half && radius < Double.POSITIVE_INFINITY)) {
            throw Require.refused(
                    "radius", radius, "m", "a finite number of at least half the span, " + half);
        }
        return new CircularArc(
                span, half * half / (radius + Math.sqrt((radius - half) * (radius + half))));
    }

    /**
     * Gives the radius, {@code R = L²/(8f) + f/2}.
     *
     * @return the radius in m
     */
    public double radius() {
        return span * span / (8 * rise) + rise / 2;
    }

    @Override
    public double rightLevel() {
        return 0;
    }

    @Override
    public double y(double x) {
        double fromMiddle = fromMiddle(x);
        double radius = radius();
        // The drop below the crown, written so that a flat arc keeps its digits.
        double drop = fromMiddle * fromMiddle / (radius + upright(fromMiddle));
        return rise - drop;
    }

    @Override
    public double slope(double x) {
        double fromMiddle = fromMiddle(x);
        return -fromMiddle / upright(fromMiddle);
    }

    @Override
    public OptionalDouble curvature(double x) {
        Require.within("x", x, 0, span, "m");
        return OptionalDouble.of(1 / radius());
    }

    @Override
    public double arcLength(double from, double to) {
        return radius() * (fromCrown(to) - fromCrown(from));
    }

    @Override
    public double arcMoment(double from, double to) {
        double left = fromCrown(from);
        double right = fromCrown(to);
        double radius = radius();
        // cos left − cos right as a product: no loss of digits for a flat arc.
        double cosines =
                2 * StrictMath.sin((left + right) / 2) * StrictMath.sin((right - left) / 2);
        return span / 2 * radius * (right - left) + radius * radius * cosines;
    }

    private double fromMiddle(double x) {
        return Require.within("x", x, 0, span, "m") - span / 2;
    }

    /** Height above the centre of the circle at a distance from the middle. */
    private double upright(double fromMiddle) {
        double radius = radius();
        return Math.sqrt(Math.max(0, (radius - fromMiddle) * (radius + fromMiddle)));
    }

    /** Angle at the centre from the crown to a position, positive to the right. */
    private double fromCrown(double x) {
        double fromMiddle = fromMiddle(x);
        return StrictMath.atan2(fromMiddle, upright(fromMiddle));
    }

    /**
     * Gives the radius, {@code R = L²/(8 f) + f/2}.
     *
     * @param span level distance between the springings, L, greater than 0
     * @param rise height of the crown above the springings, f, greater than 0
     * @return the radius
     * @throws IllegalArgumentException if span or rise is not positive or not a length
     */
    public static Quantity radius(Quantity span, Quantity rise) {
        Require.positive("span", span, "m");
        Require.positive("rise", rise, "m");
        return span.squared().over(rise.times(8)).plus(rise.over(2));
    }

    /**
     * Gives the angle at the centre from the crown to a springing, {@code α = 2 arctan(2 f/L)}.
     *
     * @param span level distance between the springings, L, greater than 0
     * @param rise height of the crown above the springings, f, greater than 0
     * @return the angle, which is also the inclination of the axis at the springing
     * @throws IllegalArgumentException if span or rise is not positive or not a length
     */
    public static Quantity halfAngle(Quantity span, Quantity rise) {
        Require.positive("span", span, "m");
        Require.positive("rise", rise, "m");
        return rise.times(2).over(span).atan().times(2);
    }

    /**
     * Gives the length of the axis, {@code S = 2 R α}.
     *
     * @param radius radius, R, greater than 0
     * @param halfAngle angle at the centre from the crown to a springing, α
     * @return the length
     * @throws IllegalArgumentException if the radius is not positive, or an argument has the wrong
     *     dimension
     */
    public static Quantity arcLength(Quantity radius, Quantity halfAngle) {
        Require.positive("radius", radius, "m");
        Require.positive("angle from crown to springing", halfAngle, "rad");
        return radius.times(2).times(halfAngle);
    }
}
