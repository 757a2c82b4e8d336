package org.skewback.frame;

/**
 * Stability functions of a uniform member without shear flexibility: the moments at its ends when the near
 * end is turned and the far end is clamped, M_near = s EI/L θ, M_far = s c EI/L θ (R. K. Livesley and D. B.
 * Chandler, Stability Functions for Structural Frameworks, 1956; M. R. Horne and W. Merchant, The
 * Stability of Frames, 1965). With ρ = P/P_E, compression positive, P_E = π²EI/L².
 *
 * @param stiffness s
 * @param carryOver c
 */
public record StabilityFunctions(double stiffness, double carryOver) {

    /**
     * Gives the functions.
     *
     * @param ratio ρ = P/P_E, less than 4, at which a member clamped at both ends buckles; negative in
     *     tension, −1000 or more
     * @return s and c
     * @throws IllegalArgumentException if the ratio is out of range
     */
    public static StabilityFunctions of(double ratio) {
        if (!(ratio < 4 && ratio >= -1000)) {
            throw Require.refused("ratio of axial force to Euler's", ratio, "", "−1000 to below 4");
        }
        double z = -ratio * Math.PI * Math.PI;
        int count = Math.max(1, (int) Math.ceil(Math.sqrt(Math.max(0, z) / 16)));
        double[] places = new double[count + 1];
        BentSpan[] spans = new BentSpan[count];
        for (int i = 0; i < count; i++) {
            places[i + 1] = (i + 1.0) / count;
            spans[i] = new BentSpan(1.0 / count, 1, 0, z);
        }
        double[][] k;
        try {
            k = new BentMember(places, spans, 1).stiffness();
        } catch (BentMember.UnstableMember e) {
            throw new IllegalArgumentException(
                    "ratio of axial force to Euler's is "
                            + ratio
                            + ", 4 within rounding; allowed is less than 4.",
                    e);
        }
        return new StabilityFunctions(k[1][1], k[1][3] / k[1][1]);
    }
}
