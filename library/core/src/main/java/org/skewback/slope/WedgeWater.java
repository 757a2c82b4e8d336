package org.skewback.slope;

/**
 * Mean water pressures on the planes of a wedge.
 *
 * @param onA mean pressure on joint A, Pa
 * @param onB mean pressure on joint B, Pa
 * @param inCrack mean pressure in the tension crack, Pa
 */
public record WedgeWater(double onA, double onB, double inCrack) {

    /**
     * Makes pressures.
     *
     * @param onA mean pressure on joint A, Pa, at least 0
     * @param onB mean pressure on joint B, Pa, at least 0
     * @param inCrack mean pressure in the tension crack, Pa, at least 0
     * @throws IllegalArgumentException if a pressure is negative
     */
    public WedgeWater {
        Require.notNegative("mean water pressure on joint A", onA, "Pa");
        Require.notNegative("mean water pressure on joint B", onB, "Pa");
        Require.notNegative("mean water pressure in the tension crack", inCrack, "Pa");
    }

    /**
     * Gives no water.
     *
     * @return no pressure anywhere
     */
    public static WedgeWater dry() {
        return new WedgeWater(0, 0, 0);
    }

    /**
     * Gives the pressures of joints filled by heavy rain, seeping out in the face.
     *
     * <p>Without a crack: {@code u = γ_w H/6}, the pressure being greatest, ½ γ_w H, half-way up the
     * line of intersection and nothing along the outcrops. With a crack of depth z at its lowest
     * point: {@code u = γ_w z/3} on all three, the pressure being greatest there. Source: E. Hoek
     * and J. W. Bray, Rock Slope Engineering (1981), ch. 8 and app. 2 (from memory).
     *
     * @param shape the wedge
     * @param unitWeight unit weight of water, N/m³, greater than 0
     * @return the pressures
     * @throws IllegalArgumentException if the unit weight is not positive
     */
    public static WedgeWater full(WedgeShape shape, double unitWeight) {
        Require.positive("unit weight of water", unitWeight, "N/m³");
        if (shape.crackArea() > 0) {
            double mean = unitWeight * shape.crackDepth() / 3;
            return new WedgeWater(mean, mean, mean);
        }
        double mean = unitWeight * shape.totalHeight() / 6;
        return new WedgeWater(mean, mean, 0);
    }
}
