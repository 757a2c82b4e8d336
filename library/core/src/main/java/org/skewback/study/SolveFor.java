package org.skewback.study;

import java.util.List;
import java.util.Map;
import org.skewback.display.Displayable;
import org.skewback.numeric.NotConvergedException;
import org.skewback.quantity.Quantity;
import org.skewback.quantity.Routines;
import org.skewback.quantity.Tape;
import org.skewback.quantity.Unit;
import org.skewback.sheet.Check;
import org.skewback.sheet.Column;
import org.skewback.sheet.Table;

/**
 * Finds the value of one given with which a check just reaches a wanted utilisation.
 *
 * <pre>{@code
 * SolveFor.Solution full = SolveFor.utilisation(
 *         check, 1, z_w, Quantity.of(0, "m"), Quantity.of(4.3, "m"));
 * full.value();                                      // depth of water at which F is as required
 * }</pre>
 *
 * <p>Newton's method on the tape's derivative, kept within a bracket by bisection (W. H. Press and
 * others, Numerical Recipes, section 9.4; from memory). It never gives a last guess: what it gives
 * meets the equation to rounding.
 */
public final class SolveFor {

    private static final int MOST_STEPS = 200;

    /** Step, relative to the first bracket, that counts as none where the value is near 0. */
    private static final double NARROW = 1e-17;

    /** How far from the equation the value may be, relative to its two sides. */
    private static final double MET = 1e-9;

    private SolveFor() {}

    /**
     * A value found.
     *
     * @param check the check
     * @param given the given as it stands
     * @param value the value with which the check reaches the utilisation
     * @param utilisation the utilisation reached
     * @param steps steps that the iteration took
     */
    public record Solution(
            Check check, Quantity given, Quantity value, Quantity utilisation, int steps)
            implements Displayable {

        @Override
        public Map<String, String> display() {
            return StudyView.titled("Solved for " + Require.name(given) + ": " + check.title())
                    .table(
                            Table.of(
                                    "Value that just reaches the utilisation",
                                    Column.texts("given", List.of(Require.name(given))),
                                    Column.texts("as it stands", List.of(Words.of(given))),
                                    Column.texts("value found", List.of(Words.of(value))),
                                    Column.texts("utilisation", List.of(Words.of(utilisation)))),
                            List.of(given))
                    .bundle();
        }

        /**
         * Writes the value.
         *
         * @return such as {@code z_w = 1.234 m}
         */
        @Override
        public String toString() {
            return Require.name(given) + " = " + Words.of(value);
        }
    }

    /**
     * Finds the value.
     *
     * @param check the check; utilisation is as {@link Check#utilisation} has it
     * @param wanted utilisation wanted, more than 0; 1 at the limit
     * @param given the given to change, on which the check rests
     * @param low one end of where the value is sought
     * @param high the other end, more than low
     * @return the value, between the ends
     * @throws IllegalArgumentException when the utilisation is not positive, the bracket is empty,
     *     the check does not rest on the given, or the utilisation passes the one wanted an even
     *     number of times between the ends; the message names the bracket and what is at its ends
     * @throws NotConvergedException when the utilisation jumps past the one wanted
     * @throws ArithmeticException when the formula has no value on the way
     * @throws org.skewback.quantity.DimensionException when the dimensions differ
     */
    public static Solution utilisation(
            Check check, double wanted, Quantity given, Quantity low, Quantity high) {
        Solution plain = plain(check, wanted, given, low, high);
        StudyFormula formula = StudyFormula.of(check, List.of(given));
        Quantity least = check.least();
        Quantity most = check.most();
        SolveForRoutine.Output tied =
                Routines.tie(
                        new SolveForRoutine(),
                        new SolveForRoutine.Input(
                                check.title(),
                                check.demand(),
                                least == null ? List.of() : List.of(least),
                                most == null ? List.of() : List.of(most),
                                given,
                                formula.numbers().subList(1, formula.numbers().size()),
                                formula.text(),
                                wanted,
                                low,
                                high),
                        new SolveForRoutine.Output(plain.value(), plain.utilisation()));
        return new Solution(check, given, tied.value(), tied.utilisation(), plain.steps());
    }

    /** Finds the value without saying where it comes from. */
    static Solution plain(Check check, double wanted, Quantity given, Quantity low, Quantity high) {
        if (!(wanted > 0) || Double.isInfinite(wanted)) {
            throw Require.refused("utilisation wanted", wanted, "a finite number more than 0");
        }
        String name = Require.name(given);
        Require.sameDimension("least value of " + name, low, "the given,", given);
        Require.sameDimension("greatest value of " + name, high, "the given,", given);
        Require.sameKind("least value of " + name, low, given);
        Require.sameKind("greatest value of " + name, high, given);
        if (!(low.si() < high.si())) {
            throw Require.refused(
                    "greatest value of " + name, high, "more than the least value, " + low);
        }
        List<Quantity> sides = sides(check, wanted);
        Margin.requireReached(sides, List.of(given), "the check \"" + check.title() + "\"");
        return new Search(check, wanted, given, Tape.of(sides, List.of(given))).between(low, high);
    }

    /** The two sides of the equation: what uses the limit, and the wanted share of the limit. */
    private static List<Quantity> sides(Check check, double wanted) {
        Quantity least = check.least();
        Quantity most = check.most();
        Quantity demand = check.demand();
        if (least != null && most != null) {
            Quantity fromMiddle = demand.minus(least).minus(most.minus(demand)).abs();
            return List.of(fromMiddle, most.minus(least).times(wanted));
        }
        if (demand.unit().isReading()) {
            throw Require.refused(
                    "demand of the check \"" + check.title() + "\"", demand, "no reading in °C");
        }
        Quantity part = least == null ? demand : least;
        Quantity whole = least == null && most != null ? most : demand;
        return List.of(part, whole.times(wanted));
    }

    /** One search, with what it needs at each step. */
    private record Search(Check check, double wanted, Quantity given, Tape tape) {

        private double[] sidesAt(double x) {
            return tape.evaluate(new double[] {x});
        }

        private static double excess(double[] sides) {
            return sides[0] - sides[1];
        }

        private static boolean met(double[] sides) {
            return Math.abs(excess(sides)) <= MET * (Math.abs(sides[0]) + Math.abs(sides[1]));
        }

        Solution between(Quantity low, Quantity high) {
            double[] atLow = sidesAt(low.si());
            double[] atHigh = sidesAt(high.si());
            double below = excess(atLow);
            double above = excess(atHigh);
            if (below == 0 || above == 0) {
                return below == 0 ? found(low.si(), atLow, 0) : found(high.si(), atHigh, 0);
            }
            if (below > 0 == above > 0) {
                throw new IllegalArgumentException(
                        "the check \""
                                + check.title()
                                + "\" does not pass the utilisation "
                                + wanted
                                + " once between "
                                + at(low, atLow)
                                + " and "
                                + at(high, atHigh)
                                + "; allowed are ends on two sides of it");
            }
            return narrowed(low.si(), high.si(), below > 0, Math.abs(high.si() - low.si()));
        }

        private Solution narrowed(double low, double high, boolean falls, double width) {
            double from = low;
            double to = high;
            double x = from + 0.5 * (to - from);
            double last = width;
            for (int step = 1; step <= MOST_STEPS; step++) {
                double[] sides = sidesAt(x);
                double excess = excess(sides);
                if (excess == 0) {
                    return found(x, sides, step);
                }
                if (excess > 0 == falls) {
                    from = x;
                } else {
                    to = x;
                }
                double newton = excess / slope(x);
                double next = x - newton;
                if (next == x) {
                    return foundOrJump(x, step); // What is left is less than rounding.
                }
                // A step that leaves the bracket, or gains less than half, gives way to bisection.
                boolean good = next > from && next < to && Math.abs(newton) <= 0.5 * last;
                double tried = good ? next : from + 0.5 * (to - from);
                last = Math.abs(tried - x);
                if (last <= NARROW * width || tried == from || tried == to) {
                    return foundOrJump(tried, step);
                }
                x = tried;
            }
            throw notFound(x, MOST_STEPS);
        }

        private double slope(double x) {
            try {
                double[][] slopes = tape.gradient(new double[] {x});
                return slopes[0][0] - slopes[1][0];
            } catch (ArithmeticException e) {
                return Double.NaN; // No derivative here, as of a root at zero: bisect.
            }
        }

        private Solution foundOrJump(double x, int step) {
            double[] sides = sidesAt(x);
            if (!met(sides)) {
                throw notFound(x, step);
            }
            return found(x, sides, step);
        }

        private NotConvergedException notFound(double x, int step) {
            double[] sides = sidesAt(x);
            return new NotConvergedException(
                    "the value of "
                            + Require.name(given)
                            + " with which the check \""
                            + check.title()
                            + "\" reaches the utilisation "
                            + wanted
                            + " was not found in "
                            + step
                            + " steps; at "
                            + Require.quantity(x, given.unit())
                            + " it is "
                            + utilisation(sides));
        }

        private String utilisation(double[] sides) {
            double reached = wanted * (sides[0] / sides[1]);
            return Double.isFinite(reached) ? Words.of(Quantity.of(reached)) : "beyond all numbers";
        }

        private Solution found(double x, double[] sides, int steps) {
            boolean between = check.least() != null && check.most() != null;
            if (!between && !(sides[0] > 0 && sides[1] > 0)) {
                throw new IllegalArgumentException(
                        "the check \""
                                + check.title()
                                + "\" has no utilisation at "
                                + Require.quantity(x, given.unit())
                                + ", where demand and limit are not positive");
            }
            double reached = sides[0] == sides[1] ? wanted : wanted * sides[0] / sides[1];
            return new Solution(
                    check, given, Require.quantity(x, given.unit()), Quantity.of(reached), steps);
        }

        private String at(Quantity end, double[] sides) {
            Unit unit = given.unit();
            return Require.name(given)
                    + " = "
                    + Words.of(end.si(), unit)
                    + " (utilisation "
                    + utilisation(sides)
                    + ")";
        }
    }
}
