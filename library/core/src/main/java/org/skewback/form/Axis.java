package org.skewback.form;

import java.util.List;
import java.util.OptionalDouble;

/**
 * The centre line of an arch as a function of the level distance from the left springing; see the
 * package description for axes and signs.
 *
 * <p>Whoever implements it for a shape of their own gives span, level, ordinate, slope and
 * curvature; lengths then come by quadrature of the slope, which must be finite for that.
 */
public interface Axis extends ArcMeasure {

    /**
     * Makes an axis of a kind that a routine names, with springings at one level.
     *
     * @param kind {@code parabola}, {@code catenary} or {@code circular arc}
     * @param span level distance between the springings, m, greater than 0
     * @param rise height of the crown above the springings, m, greater than 0
     * @return the axis
     * @throws IllegalArgumentException if there is no such kind, or a length is not positive
     */
    static Axis ofKind(String kind, double span, double rise) {
        return switch (kind) {
            case "parabola" -> new Parabola(span, rise);
            case "catenary" -> Catenary.ofRise(span, rise);
            case "circular arc" -> new CircularArc(span, rise);
            default ->
                    throw new IllegalArgumentException(
                            "kind of axis is \""
                                    + kind
                                    + "\"; allowed are parabola, catenary and circular arc.");
        };
    }

    /**
     * Gives the level distance between the springings.
     *
     * @return the span in m, greater than 0
     */
    double span();

    /**
     * Gives the height of the right springing above the left one.
     *
     * @return the height in m
     */
    double rightLevel();

    /**
     * Gives the height above the left springing.
     *
     * @param x position from the left springing, 0 to span, m
     * @return the ordinate in m
     * @throws IllegalArgumentException if {@code x} lies outside the span
     */
    double y(double x);

    /**
     * Gives the slope {@code dy/dx}; at a corner, that of the side to the right.
     *
     * @param x position from the left springing, 0 to span, m
     * @return the slope; infinite where the axis is upright
     * @throws IllegalArgumentException if {@code x} lies outside the span
     */
    double slope(double x);

    /**
     * Gives the curvature {@code −y″/(1+y′²)^(3/2)}, positive where the axis is hollow below.
     *
     * @param x position from the left springing, 0 to span, m
     * @return the curvature in 1/m; empty at a corner
     * @throws IllegalArgumentException if {@code x} lies outside the span
     */
    OptionalDouble curvature(double x);

    /**
     * Gives the positions, strictly between the springings, where the slope or the curvature jumps.
     *
     * @return positions in m, ascending; empty for a smooth axis
     */
    default List<Double> breaks() {
        return List.of();
    }

    /**
     * Gives the inclination of the axis, {@code arctan(dy/dx)}.
     *
     * @param x position from the left springing, 0 to span, m
     * @return the angle in rad, −π/2 to π/2, positive when rising to the right
     * @throws IllegalArgumentException if {@code x} lies outside the span
     */
    default double angle(double x) {
        return StrictMath.atan(slope(x));
    }

    /**
     * Gives the height of the chord between the springings, {@code rightLevel · x / span}.
     *
     * @param x position from the left springing, m
     * @return the height in m
     */
    default double chord(double x) {
        return rightLevel() * x / span();
    }

    /**
     * Gives the length of the whole axis.
     *
     * @return the length in m
     */
    default double arcLength() {
        return arcLength(0, span());
    }

    @Override
    default double arcLength(double from, double to) {
        return Quadrature.integrate("the arc length", x -> hypotenuse(slope(x)), from, to);
    }

    @Override
    default double arcMoment(double from, double to) {
        return Quadrature.integrate(
                "the moment of the arc", x -> x * hypotenuse(slope(x)), from, to);
    }

    private static double hypotenuse(double slope) {
        return Math.sqrt(1 + slope * slope);
    }
}
