package org.skewback.rock;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * The design line of a cut with benches, going up from its toe until it meets the ground.
 *
 * @param benchHeight height of each face, m
 * @param benchWidth width of each bench, m
 * @param faceAngle inclination of the faces, rad
 * @param benchFall fall of the benches toward the open side, as a part of their width
 */
public record BenchedCut(
        double benchHeight, double benchWidth, double faceAngle, double benchFall) {

    private static final int MOST_BENCHES = 1000;

    /**
     * Makes a rule for benches.
     *
     * @param benchHeight height of each face, m, greater than 0
     * @param benchWidth width of each bench, m, at least 0
     * @param faceAngle inclination of the faces, rad, greater than 0, at most π/2 less a thousandth
     * @param benchFall fall of the benches toward the open side, as a part of their width, from 0 to
     *     0.2
     * @throws IllegalArgumentException if a value is outside
     */
    public BenchedCut {
        Require.positive("height of a bench", benchHeight, "m");
        Require.notNegative("width of a bench", benchWidth, "m");
        if (!(faceAngle > 0 && faceAngle <= Math.PI / 2 - 1e-3)) {
            throw Require.refused(
                    "inclination of the face",
                    StrictMath.toDegrees(faceAngle),
                    "°",
                    "more than 0°, at most 89.9°");
        }
        Require.within("fall of a bench", benchFall, 0, 0.2, "");
    }

    /**
     * Lays the cut into the ground.
     *
     * @param ground ground line
     * @param toe distance across of the toe, m
     * @param level level of the toe, m, below the ground there
     * @param toRight whether the cut rises to the right
     * @return the design line from the toe to where it meets the ground
     * @throws IllegalArgumentException if the toe is not below the ground, or the line leaves the
     *     surveyed ground before it meets it
     */
    public SectionLine into(SectionLine ground, double toe, double level, boolean toRight) {
        if (!(level < ground.level(toe))) {
            throw Require.refused(
                    "level of the toe",
                    level,
                    "m",
                    "below the ground there, at " + ground.level(toe) + " m");
        }
        List<double[]> points = new ArrayList<>();
        points.add(new double[] {toe, level});
        double side = toRight ? 1 : -1;
        double run = benchHeight / StrictMath.tan(faceAngle);
        for (int bench = 0; bench < MOST_BENCHES; bench++) {
            if (piece(ground, points, side * run, benchHeight)
                    || piece(ground, points, side * benchWidth, benchWidth * benchFall)) {
                return line(points, toRight);
            }
        }
        throw new IllegalArgumentException(
                "The cut does not meet the ground within " + MOST_BENCHES + " benches.");
    }

    /** Adds a piece of the design line; tells whether it met the ground. */
    private static boolean piece(
            SectionLine ground, List<double[]> points, double run, double rise) {
        double[] from = points.get(points.size() - 1);
        double x = from[0] + run;
        if (run == 0) {
            return false;
        }
        List<Double> stops = new ArrayList<>(ground.offsets());
        stops.removeIf(at -> !((at - from[0]) * run > 0 && (x - at) * run > 0));
        if (run < 0) {
            Collections.reverse(stops);
        }
        stops.add(x);
        double before = from[0];
        for (double at : stops) {
            double here = from[1] + rise * (at - from[0]) / run;
            if (at < ground.left() || at > ground.right()) {
                throw Require.refused(
                        "distance across where the cut meets the ground",
                        at,
                        "m",
                        "within the surveyed ground, "
                                + ground.left()
                                + " m to "
                                + ground.right()
                                + " m");
            }
            double below = ground.level(at) - here;
            if (below <= 0) {
                double last = ground.level(before) - (from[1] + rise * (before - from[0]) / run);
                double part = last / (last - below);
                double meet = before + part * (at - before);
                points.add(new double[] {meet, ground.level(meet)});
                return true;
            }
            before = at;
        }
        points.add(new double[] {x, from[1] + rise});
        return false;
    }

    private static SectionLine line(List<double[]> points, boolean toRight) {
        List<Double> offsets = new ArrayList<>();
        List<Double> levels = new ArrayList<>();
        for (int i = 0; i < points.size(); i++) {
            double[] point = points.get(toRight ? i : points.size() - 1 - i);
            offsets.add(point[0]);
            levels.add(point[1]);
        }
        return SectionLine.of(offsets, levels);
    }
}
