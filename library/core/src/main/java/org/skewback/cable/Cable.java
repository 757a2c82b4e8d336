package org.skewback.cable;

/**
 * A cable before it is hung.
 *
 * @param unstressedLength length L₀ without force at the temperature at which it hangs, m
 * @param weightPerLength weight w of a metre of unstressed cable, N/m; 0 where it is ignored
 * @param axialStiffness EA, N
 */
public record Cable(double unstressedLength, double weightPerLength, double axialStiffness) {

    /**
     * Checks the numbers.
     *
     * @param unstressedLength length without force, m
     * @param weightPerLength weight of a metre of unstressed cable, N/m
     * @param axialStiffness EA, N
     * @throws IllegalArgumentException if length or stiffness is not greater than 0, the weight
     *     negative, or a number not finite
     */
    public Cable {
        Require.positive("unstressed length of a cable", unstressedLength, "m");
        Require.notNegative("weight of a cable", weightPerLength, "N/m");
        Require.positive("axial stiffness of a cable", axialStiffness, "N");
    }

    /**
     * Gives this cable with another unstressed length.
     *
     * @param length length without force, m
     * @return the cable
     * @throws IllegalArgumentException if the length is not greater than 0
     */
    public Cable ofLength(double length) {
        return new Cable(length, weightPerLength, axialStiffness);
    }

    /**
     * Gives this cable warmed: longer by αΔT, of the same weight in all.
     *
     * @param rise rise of temperature ΔT, K
     * @param expansion coefficient of thermal expansion α, 1/K
     * @return the cable
     * @throws IllegalArgumentException if the cable would have no length left
     */
    public Cable warmed(double rise, double expansion) {
        double factor = 1 + Require.finite("warming of a cable", rise, "K") * expansion;
        return new Cable(unstressedLength * factor, weightPerLength / factor, axialStiffness);
    }
}
