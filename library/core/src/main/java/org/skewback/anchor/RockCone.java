package org.skewback.anchor;

import org.skewback.quantity.Quantity;

/**
 * The cone of rock that an upright anchor would pull out, by its weight alone.
 *
 * <p>Strength of the rock around it is left out, which is much on the safe side in sound rock and not
 * in broken. Where anchors stand closer than the cones are wide, the cones overlap and the force per
 * anchor falls. Source: G. S. Littlejohn and D. A. Bruce, Rock anchors: state of the art (1977) (from
 * memory).
 */
public final class RockCone {

    private RockCone() {}

    /**
     * Gives the weight, {@code W = γ π D³ tan²θ/3}.
     *
     * @param depth depth of the apex, D, more than 0
     * @param halfAngle half of the opening angle, θ, more than 0°, less than 90°; 30° in broken, 45°
     *     in sound rock
     * @param unitWeight unit weight of the rock, under water less the water's, γ, more than 0
     * @return the weight
     * @throws IllegalArgumentException if a value is outside
     */
    public static Quantity weight(Quantity depth, Quantity halfAngle, Quantity unitWeight) {
        Require.positive("depth of the cone", depth, "m");
        return perCube(halfAngle, unitWeight).times(depth.cubed());
    }

    /**
     * Gives the depth of the apex at which the weight is the force times its factor, {@code D =
     * ∛(3 T S/(γ π tan²θ))}.
     *
     * @param force anchor force, T, more than 0
     * @param safety factor of safety, S, at least 1
     * @param halfAngle half of the opening angle, θ, more than 0°, less than 90°
     * @param unitWeight unit weight of the rock, γ, more than 0
     * @return the depth
     * @throws IllegalArgumentException if a value is outside
     */
    public static Quantity depth(
            Quantity force, Quantity safety, Quantity halfAngle, Quantity unitWeight) {
        Require.positive("anchor force", force, "kN");
        Require.within("factor of safety", safety, 1, 10, "");
        return force.times(safety).over(perCube(halfAngle, unitWeight)).cubeRoot();
    }

    private static Quantity perCube(Quantity halfAngle, Quantity unitWeight) {
        Require.within("half angle of the cone", halfAngle, 1e-3, 89.999, "°");
        Require.positive("unit weight of the rock", unitWeight, "kN/m³");
        return unitWeight.times(halfAngle.tan().squared()).times(Math.PI).over(3);
    }
}
