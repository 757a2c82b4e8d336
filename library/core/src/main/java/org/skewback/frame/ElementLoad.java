package org.skewback.frame;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** What acts on one member in one load case, in its local axes. Filled while a case is read. */
final class ElementLoad {

    /** No load. */
    static final ElementLoad NONE = new ElementLoad();

    /**
     * A distributed load q(t) = q₀ + q₁t + q₂t² from one place to another, t from its begin.
     *
     * @param from where it begins, m
     * @param to where it ends, m
     * @param force coefficients by power and axis, N/m
     * @param moment coefficients by power and axis, N·m/m
     */
    @SuppressWarnings("ArrayRecordComponent") // stays in this package, never changed
    record Piece(double from, double to, double[][] force, double[][] moment) {

        double intensity(double[][] coefficients, int axis, double x) {
            double t = x - from;
            return coefficients[0][axis] + t * (coefficients[1][axis] + t * coefficients[2][axis]);
        }

        /** ∫ q (t − t₀)ᵏ dt from t₀ to the end, k = 0 or 1, for x = from + t₀. */
        double beyond(double[][] coefficients, int axis, double x, int moment) {
            double low = Math.max(0, x - from);
            double high = to - from;
            if (low >= high) {
                return 0;
            }
            // The arm is measured from x, which may lie before the piece.
            double reach = high - low;
            double arm = from + low - x;
            double q0 =
                    coefficients[0][axis]
                            + low * (coefficients[1][axis] + low * coefficients[2][axis]);
            double q1 = coefficients[1][axis] + 2 * low * coefficients[2][axis];
            double q2 = coefficients[2][axis];
            double sum = reach * (q0 + reach * (q1 / 2 + reach * q2 / 3));
            if (moment == 0) {
                return sum;
            }
            return arm * sum + reach * reach * (q0 / 2 + reach * (q1 / 3 + reach * q2 / 4));
        }
    }

    /**
     * A load at one place.
     *
     * @param at distance from the start, m
     * @param force by axis, N
     * @param moment by axis, N·m
     */
    @SuppressWarnings("ArrayRecordComponent") // stays in this package, never changed
    record Point(double at, double[] force, double[] moment) {}

    /**
     * A tendon on a parabola: eccentricity e(x) = e₀ + e₁ x + e₂ x², both axes.
     *
     * @param force tension, N
     * @param y coefficients along y
     * @param z coefficients along z
     */
    @SuppressWarnings("ArrayRecordComponent") // stays in this package, never changed
    record Cable(double force, double[] y, double[] z) {}

    /**
     * A gap at one place.
     *
     * @param at distance from the start, m
     * @param component number of the force that it is conjugate to
     * @param amount m or rad
     */
    record Gap(double at, int component, double amount) {}

    private final List<Piece> pieces = new ArrayList<>();
    private final List<Point> points = new ArrayList<>();
    private final List<Cable> cables = new ArrayList<>();
    private final List<Gap> gaps = new ArrayList<>();
    private final double[] strain = new double[6];
    private double heldTension;
    private double standing;

    void add(Piece piece) {
        pieces.add(piece);
    }

    void add(Point point) {
        points.add(point);
    }

    void add(Cable cable) {
        cables.add(cable);
    }

    void add(Gap gap) {
        gaps.add(gap);
    }

    void addStrain(int component, double amount) {
        strain[component] += amount;
    }

    /** Lets a cable pull as it hangs, times a factor. */
    void addStanding(double factor) {
        standing += factor;
    }

    double standing() {
        return standing;
    }

    double heldTension() {
        return heldTension;
    }

    void addHeldTension(double amount) {
        heldTension += amount;
    }

    List<Piece> pieces() {
        return pieces;
    }

    List<Point> points() {
        return points;
    }

    List<Gap> gaps() {
        return gaps;
    }

    boolean hasCables() {
        return !cables.isEmpty();
    }

    /** Adds a multiple of another load. */
    void plus(double factor, ElementLoad other) {
        for (Piece piece : other.pieces) {
            pieces.add(
                    new Piece(
                            piece.from,
                            piece.to,
                            scaled(factor, piece.force),
                            scaled(factor, piece.moment)));
        }
        for (Point point : other.points) {
            points.add(
                    new Point(point.at, scaled(factor, point.force), scaled(factor, point.moment)));
        }
        for (Cable cable : other.cables) {
            cables.add(new Cable(factor * cable.force, cable.y, cable.z));
        }
        for (Gap gap : other.gaps) {
            gaps.add(new Gap(gap.at, gap.component, factor * gap.amount));
        }
        for (int i = 0; i < strain.length; i++) {
            strain[i] += factor * other.strain[i];
        }
        heldTension += factor * other.heldTension;
        standing += factor * other.standing;
    }

    private static double[] scaled(double factor, double[] values) {
        double[] scaled = new double[values.length];
        for (int i = 0; i < values.length; i++) {
            scaled[i] = factor * values[i];
        }
        return scaled;
    }

    private static double[][] scaled(double factor, double[][] values) {
        double[][] scaled = new double[values.length][];
        for (int i = 0; i < values.length; i++) {
            scaled[i] = scaled(factor, values[i]);
        }
        return scaled;
    }

    /**
     * Adds to the section forces at x those of the loads beyond it, on the member held at its start
     * only.
     *
     * @param x distance from the start, m
     * @param after whether a point load exactly at x is passed already
     * @param s section forces, added to
     */
    void addForcesBeyond(double x, boolean after, double[] s) {
        for (Piece piece : pieces) {
            if (piece.to > x) {
                double[][] q = piece.force;
                double[][] m = piece.moment;
                s[0] += piece.beyond(q, 0, x, 0);
                s[1] -= piece.beyond(q, 1, x, 0);
                s[2] -= piece.beyond(q, 2, x, 0);
                s[3] += piece.beyond(m, 0, x, 0);
                s[4] += piece.beyond(q, 2, x, 1) - piece.beyond(m, 1, x, 0);
                s[5] += piece.beyond(q, 1, x, 1) + piece.beyond(m, 2, x, 0);
            }
        }
        for (Point point : points) {
            if (point.at > x || (point.at == x && !after)) {
                double arm = point.at - x;
                s[0] += point.force[0];
                s[1] -= point.force[1];
                s[2] -= point.force[2];
                s[3] += point.moment[0];
                s[4] += arm * point.force[2] - point.moment[1];
                s[5] += arm * point.force[1] + point.moment[2];
            }
        }
    }

    /** Adds the forces that tendons put on the section by themselves. */
    void addCableForces(double x, double[] s) {
        for (Cable cable : cables) {
            double p = cable.force;
            s[0] -= p;
            s[1] += p * (cable.y[1] + 2 * x * cable.y[2]);
            s[2] += p * (cable.z[1] + 2 * x * cable.z[2]);
            s[4] += p * (cable.z[0] + x * (cable.z[1] + x * cable.z[2]));
            s[5] += p * (cable.y[0] + x * (cable.y[1] + x * cable.y[2]));
        }
    }

    /** Adds to the deformations at x those imposed: temperature, lack of fit, initial force. */
    void addStrains(double[] flexibility, double[] e) {
        for (int i = 0; i < e.length; i++) {
            e[i] += strain[i];
        }
        e[0] -= heldTension * flexibility[0];
    }

    /**
     * What acts on a length of the member across one of its axes, for {@link BentSpan}: between breaks
     * all of it is smooth.
     *
     * @param axis 1 for local y, 2 for local z
     * @param from begin of the length, m
     * @param to its end, m
     * @param span its stiffness
     */
    BentSpan.On across(int axis, double from, double to, BentSpan span) {
        BentSpan.On on = BentSpan.On.nothing();
        double sense = axis == 1 ? 1 : -1;
        double middle = (from + to) / 2;
        for (Piece piece : pieces) {
            if (piece.from < middle && middle < piece.to) {
                addShifted(piece.force, axis, from - piece.from, 1, on.force());
                addShifted(piece.moment, 3 - axis, from - piece.from, sense, on.moment());
            }
        }
        on.curvature()[0] += strain[6 - axis];
        on.slip()[0] += strain[axis];
        for (Cable cable : cables) {
            double[] e = axis == 1 ? cable.y : cable.z;
            double slope = e[1] + 2 * from * e[2];
            double share = cable.force / span.bending();
            on.curvature()[0] += share * (e[0] + from * (e[1] + from * e[2]));
            on.curvature()[1] += share * slope;
            on.curvature()[2] += share * e[2];
            on.slip()[0] += cable.force * span.shear() * slope;
            on.slip()[1] += cable.force * span.shear() * 2 * e[2];
        }
        return on;
    }

    /** Adds a polynomial of t as one of t − shift. */
    private static void addShifted(
            double[][] byPower, int axis, double shift, double factor, double[] to) {
        double a = byPower[0][axis];
        double b = byPower[1][axis];
        double c = byPower[2][axis];
        to[0] += factor * (a + shift * (b + shift * c));
        to[1] += factor * (b + 2 * shift * c);
        to[2] += factor * c;
    }

    /** Places where something begins, ends or acts, between 0 and a limit, both included, ascending. */
    double[] breaks(double limit) {
        double[] all = new double[2 + 2 * pieces.size() + points.size() + gaps.size()];
        int count = kept(0, limit, all, 0);
        count = kept(limit, limit, all, count);
        for (Piece piece : pieces) {
            count = kept(piece.from, limit, all, count);
            count = kept(piece.to, limit, all, count);
        }
        for (Point point : points) {
            count = kept(point.at, limit, all, count);
        }
        for (Gap gap : gaps) {
            count = kept(gap.at, limit, all, count);
        }
        Arrays.sort(all, 0, count);
        int distinct = 0;
        for (int i = 0; i < count; i++) {
            if (i == 0 || all[i] != all[i - 1]) {
                all[distinct++] = all[i];
            }
        }
        return Arrays.copyOf(all, distinct);
    }

    /** Keeps a place that lies between 0 and a limit; gives how many are kept. */
    private static int kept(double place, double limit, double[] all, int count) {
        if (!(place >= 0 && place <= limit)) {
            return count;
        }
        // Adding 0 makes −0 the 0 that it is.
        all[count] = place + 0.0;
        return count + 1;
    }

    double strain(int component) {
        return strain[component];
    }

    boolean isNothing() {
        boolean any = heldTension != 0 || standing != 0;
        for (double e : strain) {
            any |= e != 0;
        }
        return !any && pieces.isEmpty() && points.isEmpty() && cables.isEmpty() && gaps.isEmpty();
    }
}
