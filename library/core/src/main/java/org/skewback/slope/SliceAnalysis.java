package org.skewback.slope;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import org.skewback.numeric.NotConvergedException;

/** Safety of the ground above one slip surface, by methods of slices. */
public final class SliceAnalysis {

    private static final double TOLERANCE = 1e-13;

    private final Slices slices;
    private final SlipSurface surface;

    private SliceAnalysis(Slices slices, SlipSurface surface) {
        this.slices = slices;
        this.surface = surface;
    }

    /**
     * Cuts the ground above a surface into slices.
     *
     * <p>Of a circle the longest piece of the lower arc below the ground is taken; the mass slides
     * toward the lower of its ends. Slices are of one width between corners of the ground and of the
     * surface.
     *
     * @param section the section
     * @param surface the surface
     * @param count number of slices, about, at least 3
     * @return the analysis
     * @throws IllegalArgumentException if there are too few slices, or the surface does not lie in
     *     the ground, leaves the section or overhangs
     */
    public static SliceAnalysis of(SlopeSection section, SlipSurface surface, int count) {
        Require.atLeast("number of slices", count, 3);
        Slices slices = new Slices(new SectionModel(section), count);
        Slices.Status status =
                surface instanceof SlipCircle circle
                        ? fillCircle(slices, circle, section.ground())
                        : slices.fill((SlipPolygon) surface);
        if (status != Slices.Status.GOOD) {
            throw new IllegalArgumentException(
                    "The surface " + surface + " " + words(status) + ".");
        }
        return new SliceAnalysis(slices, surface);
    }

    /** Cuts the ground above the arc between two ends that are known. */
    static SliceAnalysis between(
            SlopeSection section, SlipCircle circle, double left, double right, int count) {
        Slices slices = new Slices(new SectionModel(section), count);
        Slices.Status status = slices.fill(circle, left, right);
        if (status != Slices.Status.GOOD) {
            throw new IllegalArgumentException("The surface " + circle + " " + words(status) + ".");
        }
        return new SliceAnalysis(slices, circle);
    }

    private static String words(Slices.Status status) {
        return switch (status) {
            case ABOVE_GROUND -> "rises above the ground between its ends";
            case NO_CROSSING -> "cuts no piece off the slope";
            case OVERHANGS -> "overhangs at an end: its arc reaches the level of the centre";
            case BEYOND_SECTION -> "reaches beyond the ground line of the section";
            case GOOD -> "is good";
        };
    }

    private static Slices.Status fillCircle(Slices slices, SlipCircle circle, ProfileLine ground) {
        double[] ends = ends(circle, ground);
        if (ends.length == 0) {
            return Slices.Status.NO_CROSSING;
        }
        return slices.fill(circle, ends[0], ends[1]);
    }

    /** Ends of the longest piece of the lower arc that lies below the ground. */
    private static double[] ends(SlipCircle circle, ProfileLine ground) {
        SortedSet<Double> crossings = new TreeSet<>();
        for (int i = 0; i + 1 < ground.size(); i++) {
            addCrossings(crossings, circle, ground, i);
        }
        double[] best = {};
        double before = Double.NaN;
        for (double at : crossings) {
            if (!Double.isNaN(before) && (best.length == 0 || at - before > best[1] - best[0])) {
                double middle = (before + at) / 2;
                if (circle.low(middle) < ground.y(middle)) {
                    best = new double[] {before, at};
                }
            }
            before = at;
        }
        return best;
    }

    private static void addCrossings(
            SortedSet<Double> crossings, SlipCircle circle, ProfileLine ground, int i) {
        double x0 = ground.pointX(i);
        double y0 = ground.pointY(i);
        double dx = ground.pointX(i + 1) - x0;
        double dy = ground.pointY(i + 1) - y0;
        double fx = x0 - circle.x();
        double fy = y0 - circle.y();
        double a = dx * dx + dy * dy;
        double half = fx * dx + fy * dy;
        double c = fx * fx + fy * fy - circle.radius() * circle.radius();
        double discriminant = half * half - a * c;
        if (discriminant < 0) {
            return;
        }
        double root = Math.sqrt(discriminant);
        for (double t : new double[] {(-half - root) / a, (-half + root) / a}) {
            if (t >= -1e-12 && t <= 1 + 1e-12 && y0 + t * dy <= circle.y()) {
                crossings.add(x0 + Math.max(0, Math.min(1, t)) * dx);
            }
        }
    }

    /**
     * Gives the factor of safety.
     *
     * @param method the method
     * @return factor and slices
     * @throws IllegalArgumentException if the method is for circles only and the surface is none, or
     *     nothing drives the mass
     * @throws NotConvergedException if the iteration does not end, or ends where a base is so steep
     *     against the slide that the method has no meaning there
     */
    public SliceResult factor(SliceMethod method) {
        if (method.circlesOnly() && !(surface instanceof SlipCircle)) {
            throw new IllegalArgumentException(
                    "method is "
                            + method
                            + "; allowed for a surface that is no circle are JANBU,"
                            + " JANBU_CORRECTED, SPENCER and MORGENSTERN_PRICE.");
        }
        SliceSolver solver = new SliceSolver(slices, TOLERANCE);
        double factor = solve(solver, method, surface);
        if (Double.isNaN(factor)) {
            throw failed(method, solver);
        }
        double correction = method == SliceMethod.JANBU_CORRECTED ? solver.correction() : 1;
        return new SliceResult(
                method,
                factor,
                solver.lambda(),
                correction,
                table(method, factor / correction, solver));
    }

    static double solve(SliceSolver solver, SliceMethod method, SlipSurface surface) {
        return switch (method) {
            case ORDINARY -> solver.ordinary((SlipCircle) surface);
            case BISHOP -> solver.bishop((SlipCircle) surface);
            case JANBU -> solver.janbu();
            case JANBU_CORRECTED -> solver.janbu() * solver.correction();
            case SPENCER -> solver.rigorous(false);
            case MORGENSTERN_PRICE -> solver.rigorous(true);
        };
    }

    private RuntimeException failed(SliceMethod method, SliceSolver solver) {
        String where = "on the surface " + surface + " by " + method;
        return switch (solver.failure()) {
            case NOTHING_DRIVES ->
                    new IllegalArgumentException(
                            "Nothing drives the mass " + where + "; there is no factor.");
            case STEEP_BASE ->
                    new NotConvergedException(
                            "The factor of safety "
                                    + where
                                    + " has no meaning: cos α + sin α tan φ/F is "
                                    + solver.leastM()
                                    + " at one slice; allowed is at least 0.2. The lower end is"
                                    + " too steep.");
            default ->
                    new NotConvergedException(
                            "The factor of safety " + where + " was not found in 100 rounds.");
        };
    }

    private List<SliceResult.Slice> table(SliceMethod method, double factor, SliceSolver solver) {
        boolean rigorous = method == SliceMethod.SPENCER || method == SliceMethod.MORGENSTERN_PRICE;
        List<SliceResult.Slice> table = new ArrayList<>();
        for (int i = 0; i < slices.count(); i++) {
            double between = rigorous ? solver.between()[i + 1] : 0;
            double before = rigorous ? solver.between()[i] : 0;
            double shear =
                    rigorous
                            ? solver.lambda()
                                    * (solver.shape()[i] * before - solver.shape()[i + 1] * between)
                            : 0;
            double normal = normal(i, method, factor, before - between, shear);
            table.add(
                    new SliceResult.Slice(
                            slices.direction() * (slices.place[i] + slices.place[i + 1]) / 2,
                            slices.width[i],
                            slices.soilWeight[i],
                            StrictMath.asin(slices.sine[i]),
                            normal - slices.uplift[i],
                            (slices.held[i]
                                            + slices.passive[i]
                                            + (normal - slices.uplift[i]) * slices.tangent[i])
                                    / factor,
                            between));
        }
        return table;
    }

    /** Force square to the base: across it for the ordinary and the rigorous, upright for others. */
    private double normal(int i, SliceMethod method, double factor, double pushed, double shear) {
        if (method == SliceMethod.BISHOP
                || method == SliceMethod.JANBU
                || method == SliceMethod.JANBU_CORRECTED) {
            double fixed =
                    (slices.held[i] + slices.passive[i] - slices.uplift[i] * slices.tangent[i])
                            / factor;
            double m = slices.cosine[i] + slices.sine[i] * slices.tangent[i] / factor;
            return (slices.upright[i] - fixed * slices.sine[i]) / m;
        }
        return (slices.upright[i] + shear) * slices.cosine[i]
                - (slices.level[i] + pushed) * slices.sine[i];
    }

    /**
     * Gives the depth of the tension crack at the upper end.
     *
     * @return depth, m
     */
    public double crackDepth() {
        return slices.crack();
    }
}
