package org.skewback.form;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import org.skewback.numeric.NotConvergedException;

/**
 * The largest multiple of a load pattern for which some line of thrust still lies within the depth
 * of an arch without tension: the safe theorem of limit analysis, as a linear programme.
 *
 * <p>With the thrust H, the vertical force V and the moment M at the left springing and the factor λ
 * as unknowns, moment and normal force at each section square to the axis are linear in them, and
 * {@code |M| ≤ N d/2} is all that is asked. The material is taken to carry any compression and no
 * tension, the joints not to slide, all loads to act on the axis.
 *
 * <p>Source: J. Heyman, The Stone Skeleton, International Journal of Solids and Structures 2 (1966)
 * (named from memory). It is a measure for teaching and for masonry; for a steel rib it says
 * nothing of strength, buckling or the elastic line of thrust.
 *
 * @param factor largest multiple λ of the pattern
 * @param thrust thrust at that load, N
 * @param hinges sections where the line of thrust touches a face at that load, from left to right
 */
public record LimitLoad(double factor, double thrust, List<Hinge> hinges) {

    /** A face of the arch. */
    public enum Face {
        /** The outer face, above the axis. */
        EXTRADOS,
        /** The inner face, below the axis. */
        INTRADOS
    }

    /**
     * A section where the line of thrust touches a face, so that a hinge can form there.
     *
     * @param x position of the section's middle from the left springing, m
     * @param face the face touched
     */
    public record Hinge(double x, Face face) {}

    private static final int CANDIDATES = 2000;

    /** A face counts as touched within this part of half the depth. */
    private static final double TOUCHING = 1e-6;

    /** Bound of thrust, vertical force and moment over span, in sums of the steady load. */
    private static final double LARGEST_FORCE = 1e6;

    /** A pattern of more than this many times the steady load is called unlimited. */
    private static final double UNLIMITED = 1000;

    /**
     * Makes a result.
     *
     * @param factor largest multiple λ of the pattern
     * @param thrust thrust at that load, N
     * @param hinges sections where the line of thrust touches a face at that load, from left to
     *     right
     */
    public LimitLoad {
        hinges = List.copyOf(hinges);
    }

    /**
     * Finds the largest multiple of a pattern.
     *
     * <p>Some 2000 sections (denser near the springings) are looked at. The factor is therefore too
     * high by the little that a line of thrust leaves the depth between two of them, of the order of
     * 1e-6 of itself.
     *
     * @param axis axis of the arch
     * @param depth depth of the section square to the axis, m, greater than 0
     * @param steady load that is always there, such as self-weight; its sum greater than 0
     * @param pattern load that is multiplied; its sum greater than 0
     * @return the largest factor, the thrust, and the sections that open
     * @throws LoadNotCarriedException if no line of thrust lies within the depth under the steady
     *     load alone, or if the pattern can be carried without limit
     * @throws IllegalArgumentException if the depth is not positive, a sum of loads is not positive
     *     or a load reaches beyond the span
     * @throws NotConvergedException if the linear programme does not end
     */
    public static LimitLoad of(Axis axis, double depth, VerticalLoad steady, VerticalLoad pattern) {
        Require.positive("depth of the section", depth, "m");
        SimpleBeam under = SimpleBeam.under(steady, axis);
        SimpleBeam multiplied = SimpleBeam.under(pattern, axis);
        Require.positive("sum of the steady load", under.total(), "N");
        Require.positive("sum of the load pattern", multiplied.total(), "N");
        Programme programme = new Programme(axis, depth, under, multiplied);
        double[] solution = programme.solve();
        return new LimitLoad(
                solution[3] * under.total() / multiplied.total(),
                solution[0] * under.total(),
                programme.touched(solution));
    }

    /**
     * The linear programme in numbers without unit: lengths over the span, forces over the sum of
     * the steady load. Unknowns are H, V and M at the left springing, and the sum of the pattern.
     */
    private static final class Programme {

        private final double span;
        private final double[] positions;
        private final double[][] rows;
        private final double[] limits;

        Programme(Axis axis, double depth, SimpleBeam steady, SimpleBeam pattern) {
            span = axis.span();
            positions = candidates(axis, steady, pattern);
            rows = new double[2 * positions.length][];
            limits = new double[2 * positions.length];
            double half = depth / (2 * span);
            for (int i = 0; i < positions.length; i++) {
                double x = positions[i];
                double angle = axis.angle(x);
                double cosine = StrictMath.cos(angle);
                double sine = StrictMath.sin(angle);
                double steadyForce = (steady.leftReaction() - steady.shear(x)) / steady.total();
                double patternForce = (pattern.leftReaction() - pattern.shear(x)) / pattern.total();
                double steadyMoment =
                        (steady.leftReaction() * x - steady.moment(x)) / (steady.total() * span);
                double patternMoment =
                        (pattern.leftReaction() * x - pattern.moment(x)) / (pattern.total() * span);
                double[] moment = {-axis.y(x) / span, x / span, 1, -patternMoment};
                double[] normal = {cosine, sine, 0, -patternForce * sine};
                for (int face = 0; face < 2; face++) {
                    double side = face == 0 ? 1 : -1;
                    // side·M − N d/2 ≤ 0, divided by d/2.
                    double[] row = new double[4];
                    for (int k = 0; k < 4; k++) {
                        row[k] = side * moment[k] / half - normal[k];
                    }
                    rows[2 * i + face] = row;
                    limits[2 * i + face] = side * steadyMoment / half - steadyForce * sine;
                }
            }
        }

        private static double[] candidates(Axis axis, SimpleBeam steady, SimpleBeam pattern) {
            TreeSet<Double> places = new TreeSet<>();
            double span = axis.span();
            for (int i = 0; i <= CANDIDATES; i++) {
                double half = StrictMath.sin(Math.PI / 2 * i / CANDIDATES);
                places.add(Math.min(span, span * half * half));
            }
            TreeSet<Double> breaks = new TreeSet<>(axis.breaks());
            breaks.addAll(steady.breaks());
            breaks.addAll(pattern.breaks());
            for (double at : breaks) {
                // A jump counts on both of its sides.
                places.add(at);
                places.add(Math.nextDown(at));
            }
            return places.stream().mapToDouble(Double::doubleValue).toArray();
        }

        double[] solve() {
            double[][] all = Arrays.copyOf(rows, rows.length + 1);
            // The factor is not negative.
            all[rows.length] = new double[] {0, 0, 0, -1};
            double[] bounds = {LARGEST_FORCE, LARGEST_FORCE, LARGEST_FORCE, UNLIMITED};
            double[] solution =
                    new SmallProgramme(all, Arrays.copyOf(limits, rows.length + 1), bounds).solve();
            if (solution == null) {
                throw new LoadNotCarriedException(
                        "The arch does not stand under its steady load: no line of thrust lies"
                                + " within its depth.");
            }
            if (solution[3] > UNLIMITED * (1 - 1e-9)) {
                throw new LoadNotCarriedException(
                        "The load pattern has no limit: a line of thrust lies within the depth"
                                + " even under "
                                + UNLIMITED
                                + " times the steady load.");
            }
            return solution;
        }

        List<Hinge> touched(double[] solution) {
            double[] use = use(solution);
            List<Hinge> hinges = new ArrayList<>();
            for (int i = 0; i < positions.length; i++) {
                if (Math.abs(use[i]) > 1 - TOUCHING && peak(use, i)) {
                    hinges.add(new Hinge(positions[i], use[i] > 0 ? Face.EXTRADOS : Face.INTRADOS));
                }
            }
            return hinges;
        }

        /** Eccentricity of the force at each section over half the depth. */
        private double[] use(double[] solution) {
            double[] use = new double[positions.length];
            Arrays.setAll(
                    use,
                    i -> {
                        double above = value(2 * i, solution);
                        double below = value(2 * i + 1, solution);
                        double moment = (above - below) / 2;
                        double normal = -(above + below) / 2;
                        return normal > 0
                                ? moment / normal
                                : Math.copySign(Double.POSITIVE_INFINITY, moment);
                    });
            return use;
        }

        /** {@code side·M/(d/2) − N}. */
        private double value(int row, double[] solution) {
            double sum = -limits[row];
            for (int k = 0; k < 4; k++) {
                sum += rows[row][k] * solution[k];
            }
            return sum;
        }

        private static boolean peak(double[] use, int i) {
            double here = Math.abs(use[i]);
            boolean risen = i == 0 || here > Math.abs(use[i - 1]) || use[i] * use[i - 1] < 0;
            boolean falls =
                    i == use.length - 1 || here >= Math.abs(use[i + 1]) || use[i] * use[i + 1] < 0;
            return risen && falls;
        }
    }
}
