package org.skewback.study;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.skewback.display.Displayable;
import org.skewback.numeric.NotConvergedException;
import org.skewback.quantity.Quantity;
import org.skewback.sheet.Check;
import org.skewback.sheet.Column;
import org.skewback.sheet.Table;

/**
 * The most likely way for a check to fail, and what it says about the probability: the first-order
 * reliability method.
 *
 * @param check the check
 * @param givens the uncertain givens
 * @param index reliability index β of A. M. Hasofer and N. C. Lind (1974): distance of the limit g =
 *     0 from the origin of independent standard normal numbers; negative where the check fails at
 *     the medians
 * @param probability probability of failure Φ(−β), exact where the limit is flat in that space
 * @param values the givens at the design point, in their order
 * @param influences direction to the design point by each given, in their order; the sum of the
 *     squares is 1. Positive where a greater given makes the check fail
 * @param steps steps that the iteration took
 */
public record DesignPoint(
        Check check,
        List<Quantity> givens,
        Quantity index,
        Quantity probability,
        List<Quantity> values,
        List<Quantity> influences,
        int steps)
        implements Displayable {

    private static final int MOST_STEPS = 200;
    private static final int MOST_HALVINGS = 30;

    /** How near the limit must be, and how straight below the origin, in standard deviations. */
    private static final double NEAR = 1e-9;

    private static final double STRAIGHT = 1e-6;

    /** Share of the descent that a step must bring (Armijo). */
    private static final double DESCENT = 1e-4;

    /**
     * Keeps copies, so that nobody can change it from outside.
     *
     * @param check the check
     * @param givens the uncertain givens
     * @param index reliability index
     * @param probability probability of failure
     * @param values the givens at the design point
     * @param influences direction to the design point by each given
     * @param steps steps that the iteration took
     */
    public DesignPoint {
        givens = List.copyOf(givens);
        values = List.copyOf(values);
        influences = List.copyOf(influences);
    }

    /** Where the search stands; its arrays are never changed. */
    private static final class Place {
        private final double[] u;
        private final double[] z;
        private final double[] x;
        private final double g;

        Place(double[] u, double[] z, double[] x, double g) {
            this.u = u;
            this.z = z;
            this.x = x;
            this.g = g;
        }

        double length() {
            return Math.sqrt(dot(u, u));
        }
    }

    /**
     * The step of Hasofer and Lind with R. Rackwitz and B. Fiessler (1978), shortened until the merit
     * ½‖u‖² + c|g| falls: Y. Zhang and A. Der Kiureghian, Two improved algorithms for reliability
     * analysis (1995).
     */
    static DesignPoint of(Margin margin, Uncertainty uncertainty, StandardSpace space) {
        Place place = place(margin, space, new double[space.size()]);
        for (int step = 0; step <= MOST_STEPS; step++) {
            double[] byNormal =
                    space.slopesByNormal(
                            margin.tape().gradient(place.x)[Margin.MARGIN], place.z, place.x);
            double[] slopes = space.slopesByStandard(byNormal);
            double slope = Math.sqrt(dot(slopes, slopes));
            if (!(slope > 0)) {
                throw new NotConvergedException(
                        "the search for the design point of the check \""
                                + margin.check().title()
                                + "\" came after "
                                + step
                                + " steps to a place where no uncertain given changes the margin");
            }
            double along = dot(place.u, slopes) / slope;
            double[] next = new double[slopes.length];
            double aside = 0;
            for (int i = 0; i < next.length; i++) {
                double unit = slopes[i] / slope;
                next[i] = (along - place.g / slope) * unit;
                aside += square(place.u[i] - along * unit);
            }
            boolean near = Math.abs(place.g) <= NEAR * slope;
            if (near && Math.sqrt(aside) <= STRAIGHT * Math.max(1, place.length())) {
                return result(-along, place, byNormal, margin.check(), uncertainty, step);
            }
            place = shortened(margin, space, place, next, slope);
        }
        throw new NotConvergedException(
                "the design point of the check \""
                        + margin.check().title()
                        + "\" was not found in "
                        + MOST_STEPS
                        + " steps; the margin is still "
                        + place.g
                        + " in SI units, at "
                        + Arrays.toString(place.u)
                        + " in standard normal numbers");
    }

    private static Place shortened(
            Margin margin, StandardSpace space, Place place, double[] wanted, double slope) {
        double length = Math.sqrt(dot(wanted, wanted));
        double weight = 2 * Math.max(place.length(), length) / slope;
        if (Math.abs(place.g) > NEAR * slope) {
            weight = Math.max(weight, length * length / Math.abs(place.g));
        }
        double before = merit(place, weight);
        double share = 1;
        ArithmeticException refused = null;
        for (int i = 0; i < MOST_HALVINGS; i++) {
            double[] u = new double[wanted.length];
            double moved = 0;
            for (int k = 0; k < u.length; k++) {
                double change = share * (wanted[k] - place.u[k]);
                u[k] = place.u[k] + change;
                moved += change * change;
            }
            try {
                Place tried = place(margin, space, u);
                if (merit(tried, weight) <= before - DESCENT * moved || Math.sqrt(moved) < NEAR) {
                    return tried;
                }
            } catch (ArithmeticException e) {
                refused = e; // A shorter step may stay where the formula has a value.
            }
            share /= 2;
        }
        String message =
                "the search for the design point of the check \""
                        + margin.check().title()
                        + "\" found no step that comes nearer; the margin is "
                        + place.g
                        + " in SI units";
        throw refused == null
                ? new NotConvergedException(message)
                : new NotConvergedException(message + ": " + refused.getMessage(), refused);
    }

    private static double merit(Place place, double weight) {
        return 0.5 * dot(place.u, place.u) + weight * Math.abs(place.g);
    }

    private static Place place(Margin margin, StandardSpace space, double[] u) {
        double[] z = space.correlated(u);
        double[] x = space.values(z);
        return new Place(u, z, x, margin.tape().evaluate(x)[Margin.MARGIN]);
    }

    private static DesignPoint result(
            double index,
            Place place,
            double[] byNormal,
            Check check,
            Uncertainty uncertainty,
            int steps) {
        double size = Math.sqrt(dot(byNormal, byNormal));
        Quantity[] values = new Quantity[byNormal.length];
        Quantity[] influences = new Quantity[byNormal.length];
        for (int i = 0; i < values.length; i++) {
            values[i] = Require.quantity(place.x[i], uncertainty.givens().get(i).unit());
            influences[i] = Quantity.of(byNormal[i] == 0 ? 0 : -byNormal[i] / size);
        }
        return new DesignPoint(
                check,
                uncertainty.givens(),
                Quantity.of(index),
                Quantity.of(ReliabilityIndex.probability(index)),
                List.of(values),
                List.of(influences),
                steps);
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }

    private static double square(double x) {
        return x * x;
    }

    DesignPointRoutine.Output figures() {
        return new DesignPointRoutine.Output(index, probability, values, influences);
    }

    /** This with figures that know where they come from. */
    DesignPoint with(DesignPointRoutine.Output tied) {
        return new DesignPoint(
                check,
                givens,
                tied.index(),
                tied.probability(),
                tied.values(),
                tied.influences(),
                steps);
    }

    /**
     * Gives the design point as a table.
     *
     * @return given, its value as it stands, its value at the design point, influence
     */
    public Table table() {
        return Table.of(
                "Design point",
                Column.texts("given", givens.stream().map(Require::name).toList()),
                Column.texts("value", givens.stream().map(Words::of).toList()),
                Column.texts("at the design point", values.stream().map(Words::of).toList()),
                Column.of("influence", "", influences, 3));
    }

    @Override
    public Map<String, String> display() {
        return StudyView.titled("Design point: " + check.title())
                .saying(
                        "Reliability index "
                                + Words.of(index)
                                + ", probability of failure "
                                + Words.of(probability)
                                + ". A positive influence means that more of the given makes the"
                                + " check fail.")
                .table(table(), givens)
                .cautioning()
                .bundle();
    }

    /**
     * Writes the figures.
     *
     * @return such as {@code reliability index 3.686, probability of failure 1.141 × 10⁻⁴ …}
     */
    @Override
    public String toString() {
        return "reliability index "
                + Words.of(index)
                + ", probability of failure "
                + Words.of(probability)
                + ", design point "
                + values.stream().map(Words::of).toList();
    }
}
