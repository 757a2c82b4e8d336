package org.skewback.form;

import java.util.OptionalDouble;
import org.skewback.quantity.Quantity;

/**
 * The catenary turned over, as an arch: {@code y = a [cosh(c/a) − cosh((x − c)/a)]} with the
 * parameter {@code a} and the crown at {@code x = c}. It is the funicular of a load uniform along
 * the axis, whose thrust is {@code H = w a}.
 *
 * <p>Source of the closed forms: H. M. Irvine, Cable Structures, MIT Press 1981, ch. 1 (book and
 * chapter from memory; the checks do not rest on it).
 */
public final class Catenary implements Axis {

    private final double span;
    private final double rightLevel;
    private final double parameter;
    private final double crown;

    private Catenary(double span, double rightLevel, double parameter) {
        this.span = span;
        this.rightLevel = rightLevel;
        this.parameter = parameter;
        this.crown =
                span / 2
                        + parameter
                                * Hyperbolic.asinh(
                                        rightLevel
                                                / (2
                                                        * parameter
                                                        * StrictMath.sinh(span / (2 * parameter))));
    }

    /**
     * Makes a catenary of given rise between springings at one level, {@code a (cosh(L/2a) − 1) =
     * f}.
     *
     * @param span level distance between the springings, m, greater than 0
     * @param rise height of the crown above the springings, m, greater than 0
     * @return the catenary
     * @throws IllegalArgumentException if a value is not finite and positive
     */
    public static Catenary ofRise(double span, double rise) {
        return ofRise(span, rise, 0);
    }

    /**
     * Makes a catenary of given rise between springings at different levels.
     *
     * <p>With {@code v = L/2a} the rise over the middle of the chord is {@code f = L √(1 + (h/L)²
     * (v/sinh v)²) sinh²(v/2)/v}, solved for {@code v} to a relative 1e-15 (Brent).
     *
     * @param span level distance between the springings, L, m, greater than 0
     * @param rise height of the axis above the middle of the chord, f, m, greater than 0
     * @param rightLevel height of the right springing above the left one, h, m
     * @return the catenary
     * @throws IllegalArgumentException if a value is not finite, or span or rise is not positive,
     *     or the rise is more than 100 spans
     */
    public static Catenary ofRise(double span, double rise, double rightLevel) {
        Require.positive("span", span, "m");
        Require.positive("rise", rise, "m");
        Require.finite("level of the right springing", rightLevel, "m");
        double ratio = rise / span;
        if (ratio > 100) {
            throw Require.refused("rise", rise, "m", "at most 100 times the span of " + span);
        }
        double inclination = rightLevel / span;
        double steepest = 4 * ratio;
        double flattest = StrictMath.log1p(steepest / Math.sqrt(1 + inclination * inclination));
        double half =
                Roots.between(
                        "catenary of rise " + rise + " m",
                        v -> logRise(v, inclination) - StrictMath.log(ratio),
                        flattest * (1 - 1e-9),
                        steepest * (1 + 1e-9));
        return new Catenary(span, rightLevel, span / (2 * half));
    }

    /** ln of the rise over the middle of the chord, in spans, for {@code v = L/2a}. */
    private static double logRise(double v, double inclination) {
        double chordTerm = inclination * StrictMath.exp(-Hyperbolic.logSinhc(v));
        return StrictMath.log(v / 4)
                + 2 * Hyperbolic.logSinhc(v / 2)
                + StrictMath.log1p(chordTerm * chordTerm) / 2;
    }

    /**
     * Makes a catenary of given length along the axis between springings at different levels.
     *
     * <p>With {@code v = L/2a}: {@code √(S² − h²)/L = sinh(v)/v}, solved for {@code v} to a
     * relative 1e-15 (Brent). How flat a catenary a length can describe is limited by its digits:
     * at a rise of L/1000 the last digit of the length moves the rise by about 4e-11 of itself.
     *
     * @param span level distance between the springings, L, m, greater than 0
     * @param length length along the axis, S, m, greater than the chord and at most 1e6 spans
     * @param rightLevel height of the right springing above the left one, h, m
     * @return the catenary
     * @throws IllegalArgumentException if a value is not finite, the span is not positive, or the
     *     length is not longer than the chord
     */
    public static Catenary ofLength(double span, double length, double rightLevel) {
        Require.positive("span", span, "m");
        Require.finite("level of the right springing", rightLevel, "m");
        double chord = Math.hypot(span, rightLevel);
        if (!(length > chord && length <= 1e6 * span)) {
            throw Require.refused(
                    "length",
                    length,
                    "m",
                    "more than the chord between the springings, "
                            + chord
                            + " m, and at most 1e6 spans");
        }
        double square = (length - chord) / span * ((length + chord) / span);
        double excess = square / (1 + Math.sqrt(1 + square));
        double target = StrictMath.log1p(excess);
        // v²/6 − v⁴/180 ≤ ln(sinh v / v) ≤ v²/6, and sinh v / v ≥ 1 + v²/6.
        double flattest = Math.sqrt(6 * target);
        double steepest = Math.sqrt(6 * excess);
        double half =
                Roots.between(
                        "catenary of length " + length + " m",
                        v -> Hyperbolic.logSinhc(v) - target,
                        flattest * (1 - 1e-9),
                        steepest * (1 + 1e-9));
        return new Catenary(span, rightLevel, span / (2 * half));
    }

    /**
     * Makes a catenary of given parameter between springings at different levels.
     *
     * @param span level distance between the springings, m, greater than 0
     * @param parameter parameter a, m: thrust over weight per length; at least span/1000
     * @param rightLevel height of the right springing above the left one, m
     * @return the catenary
     * @throws IllegalArgumentException if a value is not finite or out of its range
     */
    public static Catenary ofParameter(double span, double parameter, double rightLevel) {
        Require.positive("span", span, "m");
        Require.positive("parameter of the catenary", parameter, "m");
        Require.finite("level of the right springing", rightLevel, "m");
        if (parameter < span / 1000) {
            throw Require.refused(
                    "parameter of the catenary", parameter, "m", "at least span/1000");
        }
        return new Catenary(span, rightLevel, parameter);
    }

    @Override
    public double span() {
        return span;
    }

    @Override
    public double rightLevel() {
        return rightLevel;
    }

    /**
     * Gives the parameter, which is the radius of curvature at the crown and the thrust over the
     * weight per length.
     *
     * @return the parameter a in m
     */
    public double parameter() {
        return parameter;
    }

    /**
     * Gives the position of the crown, where the tangent is level; between springings at very
     * different levels it may lie outside the span.
     *
     * @return the position in m
     */
    public double crown() {
        return crown;
    }

    /**
     * Gives the height of the axis above the middle of the chord.
     *
     * @return the rise in m
     */
    public double rise() {
        return y(span / 2) - rightLevel / 2;
    }

    @Override
    public double y(double x) {
        double at = Require.within("x", x, 0, span, "m");
        // cosh A − cosh B as a product: a flat arch keeps its digits.
        return 2
                * parameter
                * StrictMath.sinh(at / (2 * parameter))
                * StrictMath.sinh((2 * crown - at) / (2 * parameter));
    }

    @Override
    public double slope(double x) {
        double at = Require.within("x", x, 0, span, "m");
        return StrictMath.sinh((crown - at) / parameter);
    }

    @Override
    public OptionalDouble curvature(double x) {
        double at = Require.within("x", x, 0, span, "m");
        double secant = StrictMath.cosh((crown - at) / parameter);
        return OptionalDouble.of(1 / (parameter * secant * secant));
    }

    @Override
    public double arcLength(double from, double to) {
        double left = Require.within("x", from, 0, span, "m");
        double right = Require.within("x", to, 0, span, "m");
        return 2
                * parameter
                * StrictMath.cosh(((left + right) / 2 - crown) / parameter)
                * StrictMath.sinh((right - left) / (2 * parameter));
    }

    @Override
    public double arcMoment(double from, double to) {
        double left = Require.within("x", from, 0, span, "m");
        double right = Require.within("x", to, 0, span, "m");
        double middle = (left + right) / 2;
        double half = (right - left) / (2 * parameter);
        // ∫ (m + z) cosh((m − c + z)/a) dz over −a·half … a·half.
        return middle * arcLength(left, right)
                + 2
                        * parameter
                        * parameter
                        * StrictMath.sinh((middle - crown) / parameter)
                        * Hyperbolic.xCoshMinusSinh(half);
    }

    @Override
    public String toString() {
        return "Catenary[span="
                + span
                + ", parameter="
                + parameter
                + ", rightLevel="
                + rightLevel
                + "]";
    }

    /**
     * Gives the thrust, {@code H = w a}.
     *
     * @param weight load per length of axis, w
     * @param parameter parameter of the catenary, a, greater than 0
     * @return the horizontal component of the force along the axis
     * @throws IllegalArgumentException if the parameter is not positive, or an argument has the
     *     wrong dimension
     */
    public static Quantity thrust(Quantity weight, Quantity parameter) {
        Require.dimension(weight, "N/m");
        Require.positive("parameter of the catenary", parameter, "m");
        return weight.times(parameter);
    }

    /**
     * Gives the force along the axis at a depth below the crown, {@code N = w (a + d)}; in a chain,
     * the tension at a height above its lowest point.
     *
     * @param weight load per length of axis, w
     * @param parameter parameter of the catenary, a, greater than 0
     * @param depth level difference to the crown, d; the rise for a springing
     * @return the force
     * @throws IllegalArgumentException if the parameter is not positive, or an argument has the
     *     wrong dimension
     */
    public static Quantity axialForce(Quantity weight, Quantity parameter, Quantity depth) {
        Require.dimension(weight, "N/m");
        Require.positive("parameter of the catenary", parameter, "m");
        return weight.times(parameter.plus(depth));
    }

    /**
     * Gives the rise, with the springings at one level, {@code f = a (cosh(L/(2 a)) − 1)}.
     *
     * @param parameter parameter of the catenary, a, greater than 0
     * @param span level distance between the springings, L, greater than 0
     * @return the rise
     * @throws IllegalArgumentException if an argument is not positive or not a length
     */
    public static Quantity rise(Quantity parameter, Quantity span) {
        Require.positive("parameter of the catenary", parameter, "m");
        Require.positive("span", span, "m");
        return parameter.times(span.over(parameter.times(2)).cosh().minus(1));
    }

    /**
     * Gives the length of the axis, with the springings at one level, {@code S = 2 a sinh(L/(2
     * a))}.
     *
     * @param parameter parameter of the catenary, a, greater than 0
     * @param span level distance between the springings, L, greater than 0
     * @return the length
     * @throws IllegalArgumentException if an argument is not positive or not a length
     */
    public static Quantity arcLength(Quantity parameter, Quantity span) {
        Require.positive("parameter of the catenary", parameter, "m");
        Require.positive("span", span, "m");
        return parameter.times(2).times(span.over(parameter.times(2)).sinh());
    }

    /**
     * Gives the inclination of the axis at a springing, with both at one level, {@code
     * arctan(sinh(L/(2 a)))}.
     *
     * @param parameter parameter of the catenary, a, greater than 0
     * @param span level distance between the springings, L, greater than 0
     * @return the angle to the level
     * @throws IllegalArgumentException if an argument is not positive or not a length
     */
    public static Quantity springingAngle(Quantity parameter, Quantity span) {
        Require.positive("parameter of the catenary", parameter, "m");
        Require.positive("span", span, "m");
        return span.over(parameter.times(2)).sinh().atan();
    }
}
