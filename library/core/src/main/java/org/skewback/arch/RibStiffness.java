package org.skewback.arch;

import java.util.function.DoubleUnaryOperator;
import org.skewback.form.Axis;

/**
 * Stiffness of a rib along the span.
 *
 * @param bending E I at a position x in m, N·m², greater than 0
 * @param axial E A at a position x in m, N, greater than 0; infinite where shortening is left out
 */
public record RibStiffness(DoubleUnaryOperator bending, DoubleUnaryOperator axial) {

    /**
     * Makes a rib of one section.
     *
     * @param bending E I, N·m², greater than 0
     * @param axial E A, N, greater than 0; infinite where shortening is left out
     * @return the stiffness
     * @throws IllegalArgumentException if a value is not greater than 0
     */
    public static RibStiffness uniform(double bending, double axial) {
        Require.positive("bending stiffness", bending, "N·m²");
        requireAxial(axial);
        return new RibStiffness(x -> bending, x -> axial);
    }

    /**
     * Makes a rib whose second moment of area grows from the crown as {@code I = I_c sec θ}, with one
     * area.
     *
     * @param axis the axis, whose slope θ is taken
     * @param atCrown E I_c, N·m², greater than 0
     * @param axial E A, N, greater than 0; infinite where shortening is left out
     * @return the stiffness
     * @throws IllegalArgumentException if a value is not greater than 0
     */
    public static RibStiffness growing(Axis axis, double atCrown, double axial) {
        Require.positive("bending stiffness at the crown", atCrown, "N·m²");
        requireAxial(axial);
        return new RibStiffness(x -> atCrown * StrictMath.hypot(1, axis.slope(x)), x -> axial);
    }

    /** Makes the rib that a routine names: uniform, or growing as I_c sec θ. */
    static RibStiffness ofGrowth(String growth, Axis axis, double bending, double axial) {
        return switch (growth) {
            case "uniform" -> uniform(bending, axial);
            case "growing" -> growing(axis, bending, axial);
            default ->
                    throw new IllegalArgumentException(
                            "growth of the second moment of area is \""
                                    + growth
                                    + "\"; allowed are uniform, and growing for I = I_c sec θ.");
        };
    }

    private static void requireAxial(double axial) {
        if (!(axial > 0)) {
            throw Require.refused("axial stiffness", axial, "N", "a number greater than 0");
        }
    }
}
