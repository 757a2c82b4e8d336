package org.skewback.cable;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.skewback.numeric.NotConvergedException;

/**
 * A cable hung between two points, under its weight and vertical point loads: the elastic catenary,
 * exact in its plane. The two components of the tension at its start are found by Newton's method; they
 * make the complementary energy least, and where a step goes too far for that it is halved.
 *
 * <p>Where its ends lie above each other it is straight, its force grows upward by its weight, and a
 * formula gives it. Longer than that it {@linkplain #isFolded() hangs folded}, two strands beside each
 * other, and gives its ends no hold sideways. Forces and stiffness of a cable that is almost upright tend
 * to those of the upright one.
 */
public final class HangingCable {

    private static final int MOST_STEPS = 200;

    /** Distance of the end from where it should be, relative to the unstressed length. */
    private static final double CLOSE = 1e-13;

    /** Spans over length that rounding cannot tell from none. */
    private static final double UPRIGHT = 1e-14;

    /** Spans over the distance of the ends below which the upright cable is the better first guess. */
    private static final double STEEP = 0.01;

    private final Cable cable;
    private final List<CableLoad> loads;
    private final double span;
    private final double rise;
    private final double level;
    private final double vertical;

    private HangingCable(
            Cable cable,
            List<CableLoad> loads,
            double span,
            double rise,
            double level,
            double vertical) {
        this.cable = cable;
        this.loads = loads;
        this.span = span;
        this.rise = rise;
        this.level = level;
        this.vertical = vertical;
    }

    /**
     * Hangs a cable without loads.
     *
     * @param cable the cable
     * @param span level distance of its ends, m, 0 or more
     * @param rise height of its end above its start, m
     * @return the cable as it hangs
     * @throws IllegalArgumentException if the span is negative, or a weightless cable is slack
     * @throws NotConvergedException if no equilibrium is found
     */
    public static HangingCable between(Cable cable, double span, double rise) {
        return between(cable, List.of(), span, rise);
    }

    /**
     * Hangs a cable with loads on it.
     *
     * @param cable the cable
     * @param loads vertical loads, in any order, downward or upward
     * @param span level distance of its ends, m, 0 or more
     * @param rise height of its end above its start, m
     * @return the cable as it hangs
     * @throws IllegalArgumentException if the span is negative, a load lies beyond the end, or the cable
     *     is slack and nothing acts on it
     * @throws NotConvergedException if no equilibrium is found
     */
    public static HangingCable between(
            Cable cable, List<CableLoad> loads, double span, double rise) {
        Require.notNegative("span of a cable", span, "m");
        Require.finite("rise of a cable", rise, "m");
        List<CableLoad> sorted = new ArrayList<>(loads);
        sorted.sort(Comparator.comparingDouble(CableLoad::at));
        double sum = cable.weightPerLength() * cable.unstressedLength();
        for (CableLoad load : sorted) {
            if (load.at() > cable.unstressedLength()) {
                throw Require.refused(
                        "place of a load on a cable",
                        load.at(),
                        "m",
                        "at most its unstressed length, " + cable.unstressedLength() + " m");
            }
            sum += Math.abs(load.force());
        }
        double chord = Math.hypot(span, rise);
        if (sum == 0 && cable.unstressedLength() >= chord) {
            throw Require.refused(
                    "unstressed length of a cable that nothing acts on",
                    cable.unstressedLength(),
                    "m",
                    "less than the distance of its ends, " + chord + " m");
        }
        List<CableLoad> inOrder = List.copyOf(sorted);
        if (span <= UPRIGHT * cable.unstressedLength()) {
            return new HangingCable(
                    cable, inOrder, 0, rise, 0, PlumbLine.startVertical(cable, inOrder, rise));
        }
        return find(cable, inOrder, span, rise, sum);
    }

    /** Horizontal force with which the cable reaches across while it starts as if it hung upright. */
    private static double steepLevel(
            Cable cable, List<CableLoad> loads, double span, double vertical) {
        double high = span * cable.axialStiffness() / cable.unstressedLength();
        double low = 1e-40 * high;
        for (int i = 0; i < 40; i++) {
            double middle = Math.sqrt(low) * Math.sqrt(high);
            if (follow(cable, loads, middle, vertical).across() < span) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }

    private static HangingCable find(
            Cable cable, List<CableLoad> loads, double span, double rise, double weight) {
        double length = cable.unstressedLength();
        double chord = Math.hypot(span, rise);
        // A first guess: a parabola where it is slack, a spring where it is taut (H. B. Jayaraman
        // and
        // W. C. Knudson, Computers and Structures 14 (1981) 217–227, for the first).
        double slack = (length * length - rise * rise) / (span * span) - 1;
        double taut = cable.axialStiffness() * Math.max(0, chord / length - 1);
        double level =
                Math.max(
                        taut * span / chord,
                        slack > 1e-6 ? weight / (2 * Math.sqrt(3 * slack)) : weight);
        // Taut and weightless is told by its stretch alone.
        level = level == 0 ? cable.axialStiffness() * 1e-6 : level;
        double vertical = weight / 2 - level * rise / span;
        if (weight > 0 && span < STEEP * chord) {
            vertical = PlumbLine.startVertical(cable, loads, rise);
            level = steepLevel(cable, loads, span, vertical);
        }
        double before = Double.POSITIVE_INFINITY;
        boolean stuck = false;
        for (int step = 0; ; step++) {
            Catenary now = follow(cable, loads, level, vertical);
            double offX = span - now.across();
            double offZ = -rise - now.drop();
            boolean last = stuck || step == MOST_STEPS;
            // Where no step helps any more, a steep cable is as near as rounding lets it come.
            double off = last ? Math.hypot(offX, offZ) : distance(now, span, rise);
            boolean still = last || off > before / 2;
            if (off <= (still ? 1e3 : 1) * CLOSE * length) {
                return new HangingCable(cable, loads, span, rise, level, vertical);
            }
            if (last) {
                throw new NotConvergedException(
                        "cable of "
                                + length
                                + " m over "
                                + span
                                + " m with a rise of "
                                + rise
                                + " m: no equilibrium after "
                                + step
                                + " steps; the end is "
                                + off
                                + " m off.");
            }
            before = off;
            double determinant =
                    now.acrossByLevel() * now.dropByVertical()
                            - now.acrossByVertical() * now.acrossByVertical();
            double toLevel =
                    (now.dropByVertical() * offX - now.acrossByVertical() * offZ) / determinant;
            double toVertical =
                    (now.acrossByLevel() * offZ - now.acrossByVertical() * offX) / determinant;
            double share = 1;
            // The level force stays positive: below it there is no cable.
            while (level + share * toLevel <= 0.1 * level) {
                share /= 2;
            }
            int halvings = 0;
            double steepest = Math.abs(offX * toLevel + offZ * toVertical);
            while (slope(
                                    follow(
                                            cable,
                                            loads,
                                            level + share * toLevel,
                                            vertical + share * toVertical),
                                    span,
                                    rise,
                                    toLevel,
                                    toVertical)
                            >= steepest
                    && halvings++ < 40) {
                share /= 2;
            }
            stuck = halvings > 40;
            if (!stuck) {
                level += share * toLevel;
                vertical += share * toVertical;
            }
        }
    }

    /** How far the end is off; across in parts of the span, so that a steep cable is as exact. */
    private static double distance(Catenary reach, double span, double rise) {
        double part = 1 - reach.across() / span;
        return Math.hypot(part * Math.hypot(span, rise), -rise - reach.drop());
    }

    /**
     * How steeply the complementary energy ∫(T + T²/2EA) ds − H·span + V·rise rises or falls along a step.
     * It is convex in H and V, so that a step on which this grows goes too far.
     */
    private static double slope(
            Catenary reach, double span, double rise, double toLevel, double toVertical) {
        return Math.abs((reach.across() - span) * toLevel + (reach.drop() + rise) * toVertical);
    }

    static Catenary follow(Cable cable, List<CableLoad> loads, double level, double vertical) {
        Catenary sum = new Catenary(0, 0, 0, 0, 0);
        double at = 0;
        double v = vertical;
        for (CableLoad load : loads) {
            if (load.at() > at) {
                sum = sum.plus(Catenary.of(level, v, load.at() - at, cable));
                v -= cable.weightPerLength() * (load.at() - at);
                at = load.at();
            }
            v -= load.force();
        }
        return cable.unstressedLength() > at
                ? sum.plus(Catenary.of(level, v, cable.unstressedLength() - at, cable))
                : sum;
    }

    /**
     * Hangs a cable, without loads, of the unstressed length that gives it a certain horizontal force.
     *
     * @param weightPerLength weight of a metre of unstressed cable, N/m, 0 or more
     * @param axialStiffness EA, N
     * @param span level distance of its ends, m, greater than 0
     * @param rise height of its end above its start, m
     * @param horizontalForce horizontal component H of the tension, N, greater than 0
     * @return the cable as it hangs; {@link #cable()} has the length
     * @throws IllegalArgumentException if a number is out of range
     * @throws NotConvergedException if no equilibrium is found
     */
    public static HangingCable ofHorizontalForce(
            double weightPerLength,
            double axialStiffness,
            double span,
            double rise,
            double horizontalForce) {
        Require.positive("span of a cable", span, "m");
        Require.finite("rise of a cable", rise, "m");
        Require.positive("horizontal force of a cable", horizontalForce, "N");
        double chord = Math.hypot(span, rise);
        Cable cable = new Cable(chord, weightPerLength, axialStiffness);
        double parameter = weightPerLength * span / (2 * horizontalForce);
        if (parameter > 300) {
            throw Require.refused(
                    "horizontal force of a cable",
                    horizontalForce,
                    "N",
                    "at least 1/600 of the weight of a cable as long as the span");
        }
        double bow = parameter == 0 ? span : span * StrictMath.sinh(parameter) / parameter;
        double length = Math.hypot(bow, rise);
        // Vertical force of the inextensible catenary: Irvine 1981, section 1.2.
        double vertical =
                parameter == 0
                        ? -horizontalForce * rise / span
                        : weightPerLength / 2 * (length - rise / StrictMath.tanh(parameter));
        length /= 1 + horizontalForce * chord / span / axialStiffness;
        for (int step = 0; step < MOST_STEPS; step++) {
            Catenary now = Catenary.of(horizontalForce, vertical, length, cable);
            double offX = span - now.across();
            double offZ = -rise - now.drop();
            if (Math.hypot(offX, offZ) <= CLOSE * chord) {
                return new HangingCable(
                        cable.ofLength(length), List.of(), span, rise, horizontalForce, vertical);
            }
            double end = vertical - weightPerLength * length;
            double per = 1 / axialStiffness + 1 / Math.hypot(horizontalForce, end);
            double xByLength = horizontalForce * per;
            double zByLength = end * per;
            double determinant =
                    xByLength * now.dropByVertical() - zByLength * now.acrossByVertical();
            double toLength =
                    (offX * now.dropByVertical() - offZ * now.acrossByVertical()) / determinant;
            vertical += (xByLength * offZ - zByLength * offX) / determinant;
            length = Math.max(length / 2, length + toLength);
        }
        throw new NotConvergedException(
                "unstressed length of a cable over "
                        + span
                        + " m with a horizontal force of "
                        + horizontalForce
                        + " N: not found after "
                        + MOST_STEPS
                        + " steps; last "
                        + length
                        + " m.");
    }

    /**
     * Gives the cable that hangs.
     *
     * @return the cable, with its unstressed length
     */
    public Cable cable() {
        return cable;
    }

    /**
     * Lists the loads.
     *
     * @return loads from the start to the end
     */
    public List<CableLoad> loads() {
        return loads;
    }

    /**
     * Gives the level distance of the ends.
     *
     * @return span, m; 0 where the ends lie above each other
     */
    public double span() {
        return span;
    }

    /**
     * Gives the height of the end above the start.
     *
     * @return rise, m
     */
    public double rise() {
        return rise;
    }

    /**
     * Gives the horizontal component of the tension, the same all along.
     *
     * @return H, N; 0 where the ends lie above each other
     */
    public double horizontalForce() {
        return level;
    }

    /**
     * Tells whether the cable is too long to be pulled straight by its weight and loads while its ends
     * lie above each other: it hangs from both of them, in two strands.
     *
     * @return whether it is folded
     */
    public boolean isFolded() {
        return level == 0
                && follow(cable, loads, 0, vertical).acrossByLevel() == Double.POSITIVE_INFINITY;
    }

    /**
     * Gives the force with which the support at the start holds the cable up.
     *
     * @return V, N, positive upward
     */
    public double startVertical() {
        return vertical;
    }

    /**
     * Gives the force with which the support at the end holds the cable up.
     *
     * @return N, positive upward
     */
    public double endVertical() {
        double sum = cable.weightPerLength() * cable.unstressedLength() - vertical;
        for (CableLoad load : loads) {
            sum += load.force();
        }
        return sum;
    }

    /**
     * Gives the largest tension.
     *
     * @return T, N; of a cable without upward loads it is at the higher end
     */
    public double largestTension() {
        double largest = 0;
        double v = vertical;
        double at = 0;
        for (CableLoad load : loads) {
            largest = Math.max(largest, Math.abs(v));
            v -= cable.weightPerLength() * (load.at() - at);
            largest = Math.max(largest, Math.abs(v));
            v -= load.force();
            at = load.at();
        }
        largest = Math.max(largest, Math.max(Math.abs(v), Math.abs(endVertical())));
        return Math.hypot(level, largest);
    }

    /**
     * Gives a point of the cable.
     *
     * @param s unstressed length from the start, 0 to the unstressed length, m
     * @return its place and tension; at a load, just before it
     * @throws IllegalArgumentException if the cable is not so long
     */
    public CablePoint at(double s) {
        if (!(s >= 0 && s <= cable.unstressedLength())) {
            throw Require.refused(
                    "place on a cable",
                    s,
                    "m",
                    "from 0 m to its unstressed length, " + cable.unstressedLength() + " m");
        }
        if (s == 0) {
            return new CablePoint(0, 0, Math.hypot(level, vertical), vertical);
        }
        List<CableLoad> before = loads.stream().filter(load -> load.at() < s).toList();
        Catenary reach = follow(cable.ofLength(s), before, level, vertical);
        double v = vertical - cable.weightPerLength() * s;
        for (CableLoad load : before) {
            v -= load.force();
        }
        return new CablePoint(reach.across(), -reach.drop(), Math.hypot(level, v), v);
    }

    /**
     * Gives the largest depth below the chord, measured vertically.
     *
     * @return sag, m, 0 or more; where the ends lie above each other, depth below the lower one
     */
    public double sag() {
        if (span == 0) {
            return foldDepth();
        }
        double slope = rise / span;
        double sag = 0;
        double at = 0;
        double v = vertical;
        List<CableLoad> stops = new ArrayList<>(loads);
        stops.add(new CableLoad(cable.unstressedLength(), 0));
        for (CableLoad stop : stops) {
            sag = Math.max(sag, depth(stop.at(), slope));
            if (cable.weightPerLength() > 0) {
                // Deepest where the cable is parallel to the chord.
                double parallel = at + (v + level * slope) / cable.weightPerLength();
                if (parallel > at && parallel < stop.at()) {
                    sag = Math.max(sag, depth(parallel, slope));
                }
            }
            v -= cable.weightPerLength() * (stop.at() - at) + stop.force();
            at = stop.at();
        }
        return sag;
    }

    private double foldDepth() {
        double lowest = Math.min(0, rise);
        double deepest = lowest;
        double at = 0;
        double v = vertical;
        List<CableLoad> stops = new ArrayList<>(loads);
        stops.add(new CableLoad(cable.unstressedLength(), 0));
        for (CableLoad stop : stops) {
            double weightless = at + v / cable.weightPerLength();
            if (weightless > at && weightless < stop.at()) {
                deepest = Math.min(deepest, at(weightless).z());
            }
            deepest = Math.min(deepest, at(stop.at()).z());
            v -= cable.weightPerLength() * (stop.at() - at) + stop.force();
            at = stop.at();
        }
        return lowest - deepest;
    }

    private double depth(double s, double slope) {
        CablePoint point = at(s);
        return slope * point.x() - point.z();
    }

    /**
     * Gives how the force on the end changes when it is moved in the plane of the cable while the start
     * is held: the inverse of the flexibility of O'Brien and Francis.
     *
     * @return 2 × 2 matrix, N/m, rows and columns along x (away from the start) and z (up)
     */
    public double[][] stiffness() {
        Catenary now = follow(cable, loads, level, vertical);
        double both = now.acrossByVertical();
        double cross = both / (now.acrossByLevel() * now.dropByVertical() - both * both);
        return new double[][] {
            {1 / (now.acrossByLevel() - both * both / now.dropByVertical()), cross},
            {cross, 1 / (now.dropByVertical() - both * both / now.acrossByLevel())}
        };
    }

    /**
     * Gives how the force on the end changes when it is moved level, out of the plane of the cable, while
     * the start is held: H over span. Where the ends lie above each other every level direction is alike.
     *
     * @return N/m, 0 or more; 0 where it {@linkplain #isFolded() is folded}
     */
    public double stiffnessAcross() {
        return span == 0 ? stiffness()[0][0] : level / span;
    }

    /**
     * Hangs a straight cable, its ends above each other, of the unstressed length that gives it a certain
     * tension at its lower end: h = L₀ + (T L₀ + wL₀²/2)/EA, solved for L₀.
     *
     * @param weightPerLength weight w of a metre of unstressed cable, N/m, 0 or more
     * @param axialStiffness EA, N
     * @param rise height h of its end above its start, m, negative where it hangs down from its start, not
     *     0
     * @param lowerTension tension T at its lower end, N, 0 or more
     * @return the cable as it hangs; {@link #cable()} has the length
     * @throws IllegalArgumentException if a number is out of range
     */
    public static HangingCable upright(
            double weightPerLength, double axialStiffness, double rise, double lowerTension) {
        Require.finite("rise of a cable", rise, "m");
        double height = Require.positive("height of an upright cable", Math.abs(rise), "m");
        Require.notNegative("tension of a cable at its lower end", lowerTension, "N");
        double longer = 1 + lowerTension / axialStiffness;
        double length =
                2
                        * height
                        / (longer
                                + Math.sqrt(
                                        longer * longer
                                                + 2 * weightPerLength * height / axialStiffness));
        Cable cable = new Cable(length, weightPerLength, axialStiffness);
        double vertical = rise > 0 ? -lowerTension : lowerTension + weightPerLength * length;
        return new HangingCable(cable, List.of(), 0, rise, 0, vertical);
    }
}
