package org.skewback.anchor;

import org.skewback.quantity.Quantity;

/** The block at an anchor's head as a stiff pad on rock, the pressure below it taken as even. */
public final class AnchorBlock {

    private AnchorBlock() {}

    /**
     * Gives the pressure below a square plate with a hole, {@code σ = P/(a² − π d²/4)}.
     *
     * @param force anchor force, P, more than 0
     * @param plate side of the plate, a, more than 0
     * @param hole diameter of the hole, d, at least 0, less than the side
     * @return the pressure on the concrete
     * @throws IllegalArgumentException if a value is outside
     */
    public static Quantity plateBearing(Quantity force, Quantity plate, Quantity hole) {
        Require.positive("anchor force", force, "kN");
        Require.positive("side of the plate", plate, "mm");
        Require.within("diameter of the hole", hole, 0, plate.in("mm") * (1 - 1e-9), "mm");
        return force.over(plate.squared().minus(hole.squared().times(Math.PI).over(4)));
    }

    /**
     * Gives the pressure of a rectangular block on the rock, {@code q = P/(B L)}.
     *
     * @param force anchor force, P, more than 0
     * @param width width of the block, B, more than 0
     * @param length length of the block, L, more than 0
     * @return the pressure
     * @throws IllegalArgumentException if a value is not positive
     */
    public static Quantity rockBearing(Quantity force, Quantity width, Quantity length) {
        Require.positive("anchor force", force, "kN");
        Require.positive("width of the block", width, "m");
        Require.positive("length of the block", length, "m");
        return force.over(width.times(length));
    }

    /**
     * Gives the bending moment per width at the edge of the plate, {@code m = q (B − a)²/8}.
     *
     * @param pressure pressure on the rock, q, more than 0
     * @param width width of the block, B, more than the plate's
     * @param plate side of the plate, a, more than 0
     * @return moment per width
     * @throws IllegalArgumentException if a value is outside
     */
    public static Quantity bending(Quantity pressure, Quantity width, Quantity plate) {
        Require.positive("pressure on the rock", pressure, "kPa");
        Require.positive("side of the plate", plate, "mm");
        Quantity overhang = width.minus(plate);
        Require.positive("width of the block less the plate's", overhang, "m");
        return pressure.times(overhang.squared()).over(8);
    }

    /**
     * Gives the shear stress around the plate at half the effective depth from its edge, {@code v =
     * (P − q (a + d)²)/(4 (a + d) d)}.
     *
     * @param force anchor force, P, more than 0
     * @param pressure pressure on the rock, q, more than 0
     * @param plate side of the plate, a, more than 0
     * @param depth effective depth, d, more than 0
     * @return the shear stress, to be compared with the strength of the code that applies
     * @throws IllegalArgumentException if a value is not positive, or the perimeter lies outside the
     *     block so that nothing punches
     */
    public static Quantity punching(
            Quantity force, Quantity pressure, Quantity plate, Quantity depth) {
        Require.positive("anchor force", force, "kN");
        Require.positive("pressure on the rock", pressure, "kPa");
        Require.positive("side of the plate", plate, "mm");
        Require.positive("effective depth", depth, "mm");
        Quantity side = plate.plus(depth);
        Quantity through = force.minus(pressure.times(side.squared()));
        Require.positive("force through the perimeter", through, "kN");
        return through.over(side.times(4).times(depth));
    }
}
