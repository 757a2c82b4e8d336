package org.skewback.slope;

import org.skewback.quantity.Quantity;

/**
 * Water forces on a block above a sliding plane, per metre run.
 *
 * @param uplift force on the sliding plane, square to it, U, in N/m
 * @param push level force in the tension crack, V, in N/m
 */
public record PlaneWater(Quantity uplift, Quantity push) {

    /**
     * Gives the forces of water that fills the tension crack to a depth and seeps out along the
     * plane to its toe, {@code V = ½ γ_w z_w²}, {@code U = ½ γ_w z_w A}.
     *
     * <p>Water in the crack presses on the plane too: the pressure at the foot of the crack falls
     * off in a straight line to nothing where the plane comes out. Drains in the crack or the plane
     * are allowed for by the lower depth of water that they are shown to keep. Source: E. Hoek and
     * J. W. Bray, Rock Slope Engineering (1981), ch. 7 (from memory).
     *
     * @param block the block
     * @param depth depth of water in the crack, z_w, from 0 to the depth of the crack
     * @param unitWeight unit weight of water, γ_w, more than 0
     * @return the forces
     * @throws IllegalArgumentException if the depth is outside, or the unit weight not positive
     */
    public static PlaneWater inCrack(PlaneBlock block, Quantity depth, Quantity unitWeight) {
        Require.within("depth of water", depth, 0, block.crackDepth().in("m"), "m");
        Require.positive("unit weight of water", unitWeight, "kN/m³");
        return new PlaneWater(
                unitWeight.times(depth).times(block.area()).over(2),
                unitWeight.times(depth.squared()).over(2));
    }

    /**
     * Gives the uplift of water on the plane alone, the pressure rising in a straight line to a
     * greatest value somewhere and falling to nothing at both ends, {@code U = ½ p A}.
     *
     * @param block the block
     * @param greatest greatest pressure on the plane, p, at least 0
     * @return the forces, without a push
     * @throws IllegalArgumentException if the pressure is negative
     */
    public static PlaneWater onPlane(PlaneBlock block, Quantity greatest) {
        Require.notNegative("greatest water pressure", greatest, "kPa");
        return new PlaneWater(greatest.times(block.area()).over(2), Quantity.of(0, "kN/m"));
    }
}
