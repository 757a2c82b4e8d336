package org.skewback.slope;

import java.util.List;
import org.skewback.numeric.NotConvergedException;
import org.skewback.quantity.Stop;

/**
 * The force that anchors must have for a wanted factor of safety on the worst circle, and whether
 * their bond lies behind it.
 *
 * <p>The forces of all anchors of the section are multiplied by one factor until the least factor of
 * safety in the window is the wanted one. Circles that pass through a bond meet a part of its
 * force, those behind it none, so that anchors too short to reach the wanted factor at any force are
 * found out.
 *
 * @param multiplier factor on the force of every anchor of the section; 0 where none is needed
 * @param critical the worst circle with those forces
 * @param reaches where that circle crosses each anchor
 */
public record AnchorDemand(double multiplier, CriticalCircle critical, List<Reach> reaches) {

    private static final double TOLERANCE = 1e-6;
    private static final double LARGEST = 1e6;

    /**
     * Where a circle crosses an anchor.
     *
     * @param anchor the anchor
     * @param crossing distance from the head to the circle along the anchor, m; infinite where the
     *     anchor does not reach the circle's ground
     * @param bondBehind whether the whole bond lies behind the circle
     */
    public record Reach(SectionAnchor anchor, double crossing, boolean bondBehind) {}

    /**
     * Copies the list.
     *
     * @param multiplier factor on the force of every anchor
     * @param critical the worst circle with those forces
     * @param reaches where that circle crosses each anchor
     */
    public AnchorDemand {
        reaches = List.copyOf(reaches);
    }

    /**
     * Finds the forces.
     *
     * @param section the section, with at least one anchor of a force greater than 0
     * @param window where to look for circles
     * @param method the method
     * @param wanted wanted factor of safety, greater than 0
     * @return the multiplier, the worst circle then, and the anchors' reach
     * @throws IllegalArgumentException if there is no anchor, or no force is enough: the anchors are
     *     too short or wrongly placed
     * @throws NotConvergedException if the forces are not found
     */
    public static AnchorDemand of(
            SlopeSection section, SearchWindow window, SliceMethod method, double wanted) {
        return of(section, window, method, wanted, () -> false);
    }

    /**
     * Finds the forces, and can be stopped.
     *
     * @param section the section, with at least one anchor of a force greater than 0
     * @param window where to look for circles
     * @param method the method
     * @param wanted wanted factor of safety, greater than 0
     * @param stop asked now and then
     * @return the multiplier, the worst circle then, and the anchors' reach
     * @throws IllegalArgumentException if there is no anchor, or no force is enough: the anchors are
     *     too short or wrongly placed
     * @throws NotConvergedException if the forces are not found
     */
    public static AnchorDemand of(
            SlopeSection section,
            SearchWindow window,
            SliceMethod method,
            double wanted,
            Stop stop) {
        Require.positive("wanted factor of safety", wanted, "");
        if (section.anchors().stream().noneMatch(anchor -> anchor.force() > 0)) {
            throw new IllegalArgumentException(
                    "The section has no anchor with a force to be multiplied.");
        }
        CriticalCircle without = at(section, window, method, 0, stop);
        if (without.factor() >= wanted) {
            return new AnchorDemand(0, without, reaches(section, without));
        }
        double low = 0;
        double high = 1;
        CriticalCircle critical = at(section, window, method, high, stop);
        double last = without.factor();
        while (critical.factor() < wanted) {
            if (high > LARGEST || (critical.factor() <= last * (1 + 1e-9) && high > 16)) {
                throw new IllegalArgumentException(
                        "wanted factor of safety is "
                                + wanted
                                + "; allowed is at most "
                                + critical.factor()
                                + ", beyond which no force of these anchors helps: circles pass"
                                + " behind them.");
            }
            last = critical.factor();
            low = high;
            high *= 2;
            critical = at(section, window, method, high, stop);
        }
        for (int round = 0; round < 60; round++) {
            if (high - low <= TOLERANCE * high) {
                return new AnchorDemand(high, critical, reaches(section, critical));
            }
            double middle = (low + high) / 2;
            CriticalCircle there = at(section, window, method, middle, stop);
            if (there.factor() >= wanted) {
                high = middle;
                critical = there;
            } else {
                low = middle;
            }
        }
        throw new NotConvergedException(
                "The anchor force for a factor of safety of " + wanted + " was not found.");
    }

    private static CriticalCircle at(
            SlopeSection section,
            SearchWindow window,
            SliceMethod method,
            double multiplier,
            Stop stop) {
        return CriticalCircle.search(
                section.withAnchorForceTimes(multiplier), window, method, 1, stop);
    }

    private static List<Reach> reaches(SlopeSection section, CriticalCircle critical) {
        boolean toRight =
                section.ground().y(critical.left()) >= section.ground().y(critical.right());
        return section.anchors().stream()
                .map(
                        anchor -> {
                            double crossing = crossing(anchor, critical, toRight);
                            return new Reach(anchor, crossing, crossing <= anchor.freeLength());
                        })
                .toList();
    }

    /** Distance along the anchor to the circle: the root of a quadratic, going in. */
    private static double crossing(SectionAnchor anchor, CriticalCircle critical, boolean toRight) {
        if (anchor.x() < critical.left() || anchor.x() > critical.right()) {
            return Double.POSITIVE_INFINITY;
        }
        double dx = (toRight ? -1 : 1) * StrictMath.cos(anchor.plunge());
        double dy = -StrictMath.sin(anchor.plunge());
        double fx = anchor.x() - critical.circle().x();
        double fy = anchor.y() - critical.circle().y();
        double half = fx * dx + fy * dy;
        double c = fx * fx + fy * fy - critical.circle().radius() * critical.circle().radius();
        double discriminant = half * half - c;
        return discriminant < 0 ? Double.POSITIVE_INFINITY : -half + Math.sqrt(discriminant);
    }
}
