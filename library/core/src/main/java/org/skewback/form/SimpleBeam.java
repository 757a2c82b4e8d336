package org.skewback.form;

import java.util.List;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * The simply supported beam of the same span under the same load, whose moments draw the funicular:
 * {@code y = y_chord + M₀/H}.
 *
 * <p>Moments are sagging positive; shear is positive when the part to the left pushes up.
 */
public final class SimpleBeam {

    private final double span;
    private final List<VerticalLoad> parts;
    private final @Nullable ArcMeasure arc;
    private final double leftReaction;
    private final double rightReaction;

    private SimpleBeam(double span, VerticalLoad load, @Nullable ArcMeasure arc) {
        this.span = Require.positive("span", span, "m");
        this.parts = load.parts();
        this.arc = arc;
        for (VerticalLoad part : parts) {
            requireOnSpan(part);
        }
        this.leftReaction = momentUpTo(span) / span;
        this.rightReaction = forceUpTo(span) - leftReaction;
    }

    /**
     * Makes the beam under a load given on plan.
     *
     * @param load the load, no part of it per length of axis
     * @param span level distance between the supports, m, greater than 0
     * @return the beam
     * @throws IllegalArgumentException if the span is not positive, the load reaches beyond it, or
     *     the load follows an axis
     */
    public static SimpleBeam under(VerticalLoad load, double span) {
        if (load.followsAxis()) {
            throw new IllegalArgumentException(
                    "The load has a part per length of axis; name the axis it lies on.");
        }
        return new SimpleBeam(span, load, null);
    }

    /**
     * Makes the beam under a load on an arch; load per length of axis is spread along that axis.
     *
     * @param load the load
     * @param axis the axis, whose span is the beam's
     * @return the beam
     * @throws IllegalArgumentException if the load reaches beyond the span
     */
    public static SimpleBeam under(VerticalLoad load, Axis axis) {
        return new SimpleBeam(axis.span(), load, axis);
    }

    static SimpleBeam under(VerticalLoad load, double span, ArcMeasure arc) {
        return new SimpleBeam(span, load, arc);
    }

    /**
     * Gives the span.
     *
     * @return the span in m
     */
    public double span() {
        return span;
    }

    /**
     * Gives the whole load.
     *
     * @return the force in N, positive downward
     */
    public double total() {
        return forceUpTo(span);
    }

    /**
     * Gives the reaction of the left support.
     *
     * @return the force on the beam in N, positive upward
     */
    public double leftReaction() {
        return leftReaction;
    }

    /**
     * Gives the reaction of the right support.
     *
     * @return the force on the beam in N, positive upward
     */
    public double rightReaction() {
        return rightReaction;
    }

    /**
     * Gives the shear force; under a point load, that to its right.
     *
     * @param x position from the left support, 0 to span, m
     * @return the force in N
     * @throws IllegalArgumentException if {@code x} lies outside the span
     */
    public double shear(double x) {
        return leftReaction - forceUpTo(Require.within("x", x, 0, span, "m"));
    }

    /**
     * Gives the bending moment.
     *
     * @param x position from the left support, 0 to span, m
     * @return the moment in N·m, sagging positive
     * @throws IllegalArgumentException if {@code x} lies outside the span
     */
    public double moment(double x) {
        double at = Require.within("x", x, 0, span, "m");
        // From the nearer support, so that the moment at either end is 0 to the last digit.
        if (at > span / 2) {
            return rightReaction * (span - at) - momentBeyond(at);
        }
        return leftReaction * at - momentUpTo(at);
    }

    /**
     * Lists where the load begins, ends or jumps.
     *
     * @return positions strictly between the supports, m, ascending
     */
    public List<Double> breaks() {
        TreeSet<Double> breaks = new TreeSet<>();
        for (VerticalLoad part : parts) {
            if (part instanceof PointLoad point) {
                breaks.add(point.position());
            } else if (part instanceof LineLoad line) {
                breaks.add(line.from());
                breaks.add(line.to());
            } else if (part instanceof AxisLoad along) {
                breaks.add(along.from());
                breaks.add(along.to());
            }
        }
        return List.copyOf(breaks.tailSet(0.0, false).headSet(span, false));
    }

    boolean onlyPointLoads() {
        return parts.stream().allMatch(PointLoad.class::isInstance);
    }

    /** Load per plan length that does not follow the axis, right of a jump. */
    double planIntensity(double x) {
        double sum = 0;
        for (VerticalLoad part : parts) {
            if (part instanceof LineLoad line && x >= line.from() && x < line.to()) {
                sum += intensity(line, x);
            }
        }
        return sum;
    }

    /** Load per length of axis, right of a jump. */
    double axisIntensity(double x) {
        double sum = 0;
        for (VerticalLoad part : parts) {
            if (part instanceof AxisLoad along && x >= along.from() && x < along.to()) {
                sum += along.intensity();
            }
        }
        return sum;
    }

    private static double intensity(LineLoad line, double x) {
        return line.atFrom()
                + (line.atTo() - line.atFrom()) * ((x - line.from()) / (line.to() - line.from()));
    }

    /** Sum of the loads from the left support up to and at x. */
    private double forceUpTo(double x) {
        double sum = 0;
        for (VerticalLoad part : parts) {
            if (part instanceof PointLoad point) {
                sum += point.position() <= x ? point.force() : 0;
            } else if (part instanceof LineLoad line && x > line.from()) {
                double to = Math.min(x, line.to());
                sum += (line.atFrom() + intensity(line, to)) / 2 * (to - line.from());
            } else if (part instanceof AxisLoad along && x > along.from()) {
                double to = Math.min(x, along.to());
                sum += along.intensity() * arc().arcLength(along.from(), to);
            }
        }
        return sum;
    }

    /** Moment about x of the loads to its left. */
    private double momentUpTo(double x) {
        double sum = 0;
        for (VerticalLoad part : parts) {
            if (part instanceof PointLoad point) {
                sum += point.position() < x ? point.force() * (x - point.position()) : 0;
            } else if (part instanceof LineLoad line && x > line.from()) {
                double to = Math.min(x, line.to());
                sum += trapeziumMoment(line.from(), to, line.atFrom(), intensity(line, to), x);
            } else if (part instanceof AxisLoad along && x > along.from()) {
                double to = Math.min(x, along.to());
                sum +=
                        along.intensity()
                                * (x * arc().arcLength(along.from(), to)
                                        - arc().arcMoment(along.from(), to));
            }
        }
        return sum;
    }

    /** Moment about x of the loads to its right. */
    private double momentBeyond(double x) {
        double sum = 0;
        for (VerticalLoad part : parts) {
            if (part instanceof PointLoad point) {
                sum += point.position() > x ? point.force() * (point.position() - x) : 0;
            } else if (part instanceof LineLoad line && x < line.to()) {
                double from = Math.max(x, line.from());
                sum -= trapeziumMoment(from, line.to(), intensity(line, from), line.atTo(), x);
            } else if (part instanceof AxisLoad along && x < along.to()) {
                double from = Math.max(x, along.from());
                sum +=
                        along.intensity()
                                * (arc().arcMoment(from, along.to())
                                        - x * arc().arcLength(from, along.to()));
            }
        }
        return sum;
    }

    /** Moment about x of a load that varies linearly; positive when it lies to the left. */
    private static double trapeziumMoment(
            double from, double to, double atFrom, double atTo, double x) {
        double length = to - from;
        return atFrom * length / 2 * (x - from - length / 3)
                + atTo * length / 2 * (x - to + length / 3);
    }

    private ArcMeasure arc() {
        if (arc == null) {
            throw new IllegalStateException("A load per length of axis without its axis.");
        }
        return arc;
    }

    private void requireOnSpan(VerticalLoad part) {
        double end;
        String what;
        if (part instanceof PointLoad point) {
            end = point.position();
            what = "position of the point load";
        } else if (part instanceof LineLoad line) {
            end = line.to();
            what = "end of the loaded range";
        } else if (part instanceof AxisLoad along) {
            end = along.to();
            what = "end of the loaded range";
        } else {
            throw new IllegalStateException("A group within the single loads.");
        }
        Require.within(what, end, 0, span, "m");
    }
}
