package org.skewback.frame;

import java.util.List;

/**
 * The weight of members: density × area × acceleration along each. Where the area changes along a
 * member, a parabola through its values at both ends and the middle is taken, which is exact for linear
 * tapers of the shapes of {@code org.skewback.steel}. Rigid arms and springs weigh nothing.
 *
 * @param acceleration acceleration of the ground's pull, m/s²; (0, 0, −9.80665) for standard gravity
 * @param members members that weigh; empty for all
 */
public record SelfWeight(Vector acceleration, List<String> members) implements Load {

    /**
     * Checks the numbers.
     *
     * @param acceleration acceleration of the ground's pull, m/s²; (0, 0, −9.80665) for standard gravity
     * @param members members that weigh; empty for all
     */
    public SelfWeight {
        members = List.copyOf(members);
    }

    /**
     * Makes the weight of all members under standard gravity, 9.80665 m/s² (ISO 80000-3:2006,
     * 3-9.2), downward.
     *
     * @return the load
     */
    public static SelfWeight standard() {
        return new SelfWeight(new Vector(0, 0, -9.80665), List.of());
    }
}
