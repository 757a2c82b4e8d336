package org.skewback.rock;

/**
 * Facts of the trade as checks of plausibility: common practice, no source. None of them replaces a
 * calculation; each says when a design departs from what is usual, so that somebody says why.
 *
 * @param usual whether the design is as is usual
 * @param remark what is usual, with the values looked at
 */
public record CommonPractice(boolean usual, String remark) {

    /**
     * Natural valley sides of 43° to 77° are cut to shape before anything is founded on them.
     *
     * @param natural inclination of the natural side, rad, from 0 to π/2
     * @param cut whether the side is cut to shape first
     * @return the finding
     * @throws IllegalArgumentException if the inclination is outside
     */
    public static CommonPractice foundingOnSide(double natural, boolean cut) {
        Require.within("inclination of the natural side", natural, 0, Math.PI / 2, "rad");
        double degrees = StrictMath.toDegrees(natural);
        boolean steep = degrees >= 43 && degrees <= 77;
        return new CommonPractice(
                cut || !steep,
                "common practice, no source: natural sides of 43° to 77° are cut to shape before"
                        + " founding; this one has "
                        + Math.round(degrees)
                        + "° and is "
                        + (cut ? "cut" : "not cut"));
    }

    /**
     * Weak jointed rock below a heavy load is grouted, anchored and sprayed rather than trusted.
     *
     * @param strengthIndex geological strength index GSI, from 5 to 100; weak below 45
     * @param grouted whether it is grouted
     * @param anchored whether it is anchored
     * @param sprayed whether it is sprayed with concrete
     * @return the finding
     * @throws IllegalArgumentException if the index is outside
     */
    public static CommonPractice weakRock(
            double strengthIndex, boolean grouted, boolean anchored, boolean sprayed) {
        Require.within("geological strength index", strengthIndex, 5, 100, "");
        boolean treated = grouted && anchored && sprayed;
        return new CommonPractice(
                strengthIndex >= 45 || treated,
                "common practice, no source: weak jointed rock is grouted, anchored and sprayed"
                        + " rather than trusted; GSI is "
                        + strengthIndex
                        + " and the rock is "
                        + (treated ? "treated so" : "not treated so throughout"));
    }

    /**
     * A locked-off tendon presses its block into the slope with the tendon's force.
     *
     * @param tendonForce force of the tendon, N, greater than 0
     * @param pressingForce force of the block on the rock that the design counts on, N
     * @return the finding: usual where both are one within 1 %
     * @throws IllegalArgumentException if the tendon's force is not positive
     */
    public static CommonPractice pressedBlock(double tendonForce, double pressingForce) {
        Require.positive("force of the tendon", tendonForce, "N");
        return new CommonPractice(
                Math.abs(pressingForce - tendonForce) <= 0.01 * tendonForce,
                "common practice, no source: a locked-off tendon of "
                        + Math.round(tendonForce / 1000)
                        + " kN presses its block into the slope with that force; counted on are "
                        + Math.round(pressingForce / 1000)
                        + " kN");
    }

    /**
     * Perimeter holes stand eight to twelve diameters apart.
     *
     * @param spacing spacing in a plan by others, m, greater than 0
     * @param diameter diameter of the holes, m, greater than 0
     * @return the finding; nothing here is a means to lay out holes
     * @throws IllegalArgumentException if a value is not positive
     */
    public static CommonPractice perimeterHoles(double spacing, double diameter) {
        double ratio =
                Require.positive("spacing of the holes", spacing, "m")
                        / Require.positive("diameter of the holes", diameter, "m");
        return new CommonPractice(
                ratio >= 8 && ratio <= 12,
                "common practice, no source: perimeter holes stand 8 to 12 diameters apart; here "
                        + Math.round(ratio * 10) / 10.0);
    }
}
