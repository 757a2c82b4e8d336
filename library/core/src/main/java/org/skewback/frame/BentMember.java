package org.skewback.frame;

import java.util.ArrayList;
import java.util.List;

/**
 * A member bent in one plane, made of uniform spans in a row; the movements where they meet are
 * eliminated. Movements at a place are w, along the local axis of the plane, and ψ = w′ without shear:
 * the turn about z in the plane of y, against the turn about y in the plane of z.
 */
final class BentMember {

    private static final BentSpan.On NOTHING = BentSpan.On.nothing();
    private static final BentSpan.Place REST = new BentSpan.Place(0, 0, 0, 0, 0);

    private final double[] places;
    private final BentSpan[] spans;
    private final int axis;
    private final double[][] pivots;
    private final double[][] stiffness = new double[4][4];

    /**
     * Makes a member ready.
     *
     * @param places where spans begin and end, from 0 to the length, m
     * @param spans the spans
     * @param axis local axis across which it bends: 1 for y, 2 for z
     * @throws UnstableMember where it is unstable while its ends are held
     */
    BentMember(double[] places, BentSpan[] spans, int axis) {
        this.places = places;
        this.spans = spans;
        this.axis = axis;
        for (BentSpan span : spans) {
            if (!(span.stretch() > 1e-12 && span.argument() > BentSpan.CLAMPED * (1 - 1e-13))) {
                throw new UnstableMember();
            }
        }
        pivots = pivots();
        Loaded bare = new Loaded(ElementLoad.NONE);
        for (int j = 0; j < 4; j++) {
            double[] unit = new double[4];
            unit[j] = 1;
            double[] forces = bare.ends(bare.movements(unit));
            for (int i = 0; i < 4; i++) {
                stiffness[i][j] = forces[i];
            }
        }
        for (int i = 0; i < 4; i++) {
            for (int j = 0; j < i; j++) {
                double mean = (stiffness[i][j] + stiffness[j][i]) / 2;
                stiffness[i][j] = mean;
                stiffness[j][i] = mean;
            }
        }
    }

    private double[][] stiffness(BentSpan span) {
        double[][] k = new double[4][];
        for (int j = 0; j < 4; j++) {
            double w = j == 0 ? 1 : 0;
            double turn = j == 1 ? 1 : 0;
            BentSpan.Place free =
                    span.at(span.length(), new BentSpan.Place(w, turn, 0, 0, 0), NOTHING);
            double[] p =
                    span.toMove((j == 2 ? 1 : 0) - free.across(), (j == 3 ? 1 : 0) - free.turn());
            BentSpan.Place end =
                    span.at(span.length(), new BentSpan.Place(w, turn, p[0], 0, p[1]), NOTHING);
            k[j] = new double[] {p[1], -p[0], -end.force(), end.moment()};
        }
        return k;
    }

    /**
     * Blocks of the elimination from the start on: for each inner place the inverse of its pivot block
     * (three of a symmetric one), then by rows the block that couples it with the next.
     */
    private double[][] pivots() {
        int inner = spans.length - 1;
        double[][] blocks = new double[inner][];
        if (inner == 0) {
            return blocks;
        }
        double[][] before = stiffness(spans[0]);
        double[] reduced = new double[3];
        for (int i = 0; i < inner; i++) {
            double[][] after = stiffness(spans[i + 1]);
            double a = before[2][2] + after[0][0] - reduced[0];
            double b = before[2][3] + after[0][1] - reduced[1];
            double d = before[3][3] + after[1][1] - reduced[2];
            double determinant = a * d - b * b;
            if (!(a > 0 && determinant > 1e-13 * a * d)) {
                throw new UnstableMember();
            }
            double p = d / determinant;
            double q = -b / determinant;
            double s = a / determinant;
            double[] c = {after[0][2], after[0][3], after[1][2], after[1][3]};
            blocks[i] = new double[] {p, q, s, c[0], c[1], c[2], c[3]};
            reduced =
                    new double[] {
                        c[0] * (p * c[0] + q * c[2]) + c[2] * (q * c[0] + s * c[2]),
                        c[0] * (p * c[1] + q * c[3]) + c[2] * (q * c[1] + s * c[3]),
                        c[1] * (p * c[1] + q * c[3]) + c[3] * (q * c[1] + s * c[3])
                    };
            before = after;
        }
        return blocks;
    }

    /** Against w and ψ at the start and at the end. */
    double[][] stiffness() {
        return stiffness;
    }

    /** Forces on the ends, along w and ψ, while these are held. */
    double[] clamped(ElementLoad load) {
        Loaded loaded = new Loaded(load);
        return loaded.ends(loaded.movements(new double[4]));
    }

    /** The member under load, its ends moved. */
    Loaded bent(double[] ends, ElementLoad load) {
        Loaded loaded = new Loaded(load);
        loaded.settle(loaded.movements(ends));
        return loaded;
    }

    /** A stretch within a span on which all loads are smooth, and what happens just before it. */
    @SuppressWarnings("ArrayRecordComponent") // stays in this file, never changed
    private record Stretch(double from, BentSpan part, BentSpan.On on, double[] before) {}

    /** Spans with their loads. */
    final class Loaded {

        private final List<List<Stretch>> stretches = new ArrayList<>();
        private final double[] atEnd;
        private final List<List<BentSpan.Place>> starts = new ArrayList<>();
        private final double[][] free;

        Loaded(ElementLoad load) {
            double length = places[places.length - 1];
            double[] breaks = load.breaks(length);
            int next = 0;
            for (int i = 0; i < spans.length; i++) {
                List<Stretch> row = new ArrayList<>();
                double from = places[i];
                while (from < places[i + 1]) {
                    while (next < breaks.length && breaks[next] <= from) {
                        next++;
                    }
                    double to =
                            next < breaks.length
                                    ? Math.min(breaks[next], places[i + 1])
                                    : places[i + 1];
                    BentSpan part =
                            new BentSpan(
                                    to - from,
                                    spans[i].bending(),
                                    spans[i].shear(),
                                    spans[i].axial());
                    row.add(
                            new Stretch(
                                    from,
                                    part,
                                    load.isNothing() ? NOTHING : load.across(axis, from, to, part),
                                    happens(load, from, part.axial())));
                    from = to;
                }
                stretches.add(row);
            }
            atEnd = happens(load, length, spans[spans.length - 1].axial());
            free = new double[spans.length][];
            for (int i = 0; i < spans.length; i++) {
                free[i] = array(march(i, REST, new ArrayList<>()));
            }
        }

        /** Jumps of w, ψ, M and Q at a place, where the axial force steps aside with a slip. */
        private double[] happens(ElementLoad load, double x, double axial) {
            double[] jump = new double[4];
            double sense = axis == 1 ? 1 : -1;
            for (ElementLoad.Gap gap : load.gaps()) {
                if (gap.at() == x && gap.component() == axis) {
                    jump[0] -= gap.amount();
                    jump[2] -= axial * gap.amount();
                } else if (gap.at() == x && gap.component() == 6 - axis) {
                    jump[1] += gap.amount();
                }
            }
            for (ElementLoad.Point point : load.points()) {
                if (point.at() == x) {
                    jump[2] -= sense * point.moment()[3 - axis];
                    jump[3] += point.force()[axis];
                }
            }
            return jump;
        }

        private BentSpan.Place jumped(BentSpan.Place place, double[] jump) {
            return new BentSpan.Place(
                    place.across() + jump[0],
                    place.turn() + jump[1],
                    place.moment() + jump[2],
                    0,
                    place.force() + jump[3]);
        }

        /** Follows a span from a state just before its start to just past its end. */
        private BentSpan.Place march(int i, BentSpan.Place start, List<BentSpan.Place> at) {
            BentSpan.Place place = start;
            for (Stretch stretch : stretches.get(i)) {
                place = jumped(place, stretch.before);
                at.add(place);
                place = stretch.part.at(stretch.part.length(), place, stretch.on);
            }
            return i == spans.length - 1 ? jumped(place, atEnd) : place;
        }

        private double[] array(BentSpan.Place place) {
            return new double[] {place.across(), place.turn(), place.moment(), place.force()};
        }

        private BentSpan.Place start(int i, double[] moved) {
            BentSpan span = spans[i];
            BentSpan.Place bare =
                    span.at(
                            span.length(),
                            new BentSpan.Place(moved[2 * i], moved[2 * i + 1], 0, 0, 0),
                            NOTHING);
            double[] p =
                    span.toMove(
                            moved[2 * i + 2] - bare.across() - free[i][0],
                            moved[2 * i + 3] - bare.turn() - free[i][1]);
            return new BentSpan.Place(moved[2 * i], moved[2 * i + 1], p[0], 0, p[1]);
        }

        private double[] forces(int i, double[] moved) {
            BentSpan.Place start = start(i, moved);
            BentSpan.Place end = march(i, start, new ArrayList<>());
            return new double[] {start.force(), -start.moment(), -end.force(), end.moment()};
        }

        /** Movements of all places for those of the ends. */
        double[] movements(double[] ends) {
            int last = spans.length;
            double[] moved = new double[2 * last + 2];
            System.arraycopy(ends, 0, moved, 0, 2);
            System.arraycopy(ends, 2, moved, 2 * last, 2);
            if (last == 1) {
                return moved;
            }
            double[] right = new double[2 * last + 2];
            for (int i = 0; i < last; i++) {
                double[] forces = forces(i, moved);
                for (int k = 0; k < 4; k++) {
                    right[2 * i + k] -= forces[k];
                }
            }
            for (int i = 1; i < last - 1; i++) {
                double[] b = pivots[i - 1];
                double u = b[0] * right[2 * i] + b[1] * right[2 * i + 1];
                double v = b[1] * right[2 * i] + b[2] * right[2 * i + 1];
                double[] c = pivots[i - 1];
                right[2 * i + 2] -= c[3] * u + c[5] * v;
                right[2 * i + 3] -= c[4] * u + c[6] * v;
            }
            for (int i = last - 1; i > 0; i--) {
                double[] b = pivots[i - 1];
                double u = right[2 * i];
                double v = right[2 * i + 1];
                if (i < last - 1) {
                    u -= b[3] * moved[2 * i + 2] + b[4] * moved[2 * i + 3];
                    v -= b[5] * moved[2 * i + 2] + b[6] * moved[2 * i + 3];
                }
                moved[2 * i] = b[0] * u + b[1] * v;
                moved[2 * i + 1] = b[1] * u + b[2] * v;
            }
            return moved;
        }

        /** Forces on the two ends, along w and ψ. */
        double[] ends(double[] moved) {
            double[] first = forces(0, moved);
            double[] end = forces(spans.length - 1, moved);
            return new double[] {first[0], first[1], end[2], end[3]};
        }

        private void settle(double[] moved) {
            for (int i = 0; i < spans.length; i++) {
                List<BentSpan.Place> row = new ArrayList<>();
                march(i, start(i, moved), row);
                starts.add(row);
            }
        }

        /** The state at x; where stretches meet, at the end of the one before or the start of the next. */
        BentSpan.Place at(double x, boolean after) {
            int span = 0;
            while (span + 1 < spans.length
                    && (after ? places[span + 1] <= x : places[span + 1] < x)) {
                span++;
            }
            List<Stretch> row = stretches.get(span);
            int k = 0;
            while (k + 1 < row.size()
                    && (after ? row.get(k + 1).from <= x : row.get(k + 1).from < x)) {
                k++;
            }
            Stretch stretch = row.get(k);
            return stretch.part.at(x - stretch.from, starts.get(span).get(k), stretch.on);
        }

        /** ½∫ M²/B + V²/G + N w′² dx, the tendons' own forces in M and V. */
        double energy(ElementLoad load, Gauss gauss) {
            double sum = 0;
            for (int i = 0; i < spans.length; i++) {
                for (int k = 0; k < stretches.get(i).size(); k++) {
                    Stretch stretch = stretches.get(i).get(k);
                    BentSpan part = stretch.part;
                    for (int p = 0; p < gauss.size(); p++) {
                        double x = gauss.point(p) * part.length();
                        BentSpan.Place here = part.at(x, starts.get(i).get(k), stretch.on);
                        double[] own = new double[6];
                        load.addCableForces(stretch.from + x, own);
                        double moment = here.moment() + own[6 - axis];
                        double shear = here.shear() + own[axis];
                        double tilt = here.shear() - here.force();
                        double bow = part.axial() == 0 ? 0 : tilt * tilt / part.axial();
                        double per =
                                moment * moment / part.bending()
                                        + shear * shear * part.shear()
                                        + bow;
                        sum += gauss.weight(p) * part.length() * per / 2;
                    }
                }
            }
            return sum;
        }
    }

    /** A member that is unstable while its ends are held. */
    static final class UnstableMember extends RuntimeException {
        private static final long serialVersionUID = 1L;
    }
}
