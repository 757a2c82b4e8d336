package org.skewback.frame;

import org.skewback.cable.Cable;
import org.skewback.cable.HangingCable;

/**
 * A cable between two nodes: an elastic catenary, exact in the vertical plane through its ends, with its
 * own weight acting along −z. It carries tension only and no loads but its weight.
 *
 * <p>How it takes part depends on the analysis. {@link LargeDisplacementAnalysis} and {@link StageAnalysis}
 * follow it exactly. Analyses that superpose take its tangent stiffness as it hangs between the nodes of
 * the model; its pull on the nodes there is a load of its own, {@link CablePull}.
 *
 * <p>Positions along it count its unstressed length from the start. {@link Warming} lengthens it by
 * 1.2e-5 per kelvin, as steel ropes (common practice, no source); give other lengthening as {@link
 * LackOfFit}.
 *
 * <p>Its ends may lie above each other, as those of a hanger: then it is straight while it is pulled, and
 * its tension grows upward by its weight. Where it is longer than it hangs by its weight alone it is slack:
 * it hangs folded from both ends, carries its weight and no more, and holds its nodes up or down only by
 * moving the fold, sideways not at all ({@link HangingCable#isFolded}).
 *
 * @param name what it is called
 * @param start node where it starts
 * @param end node where it ends, elsewhere than the start
 * @param cable unstressed length, weight and stiffness
 */
public record CableMember(String name, String start, String end, Cable cable) implements Member {

    /**
     * Checks the name.
     *
     * @param name what it is called
     * @param start node where it starts
     * @param end node where it ends
     * @param cable unstressed length, weight and stiffness
     * @throws IllegalArgumentException if the name is blank
     */
    public CableMember {
        Require.name("member", name);
    }

    /**
     * Makes a cable of the unstressed length that gives it a certain horizontal force between two places.
     *
     * @param name what it is called
     * @param start node where it starts
     * @param end node where it ends
     * @param weightPerLength weight of a metre of unstressed cable, N/m, 0 or more
     * @param axialStiffness EA, N
     * @param horizontalForce horizontal component H of the tension, N, greater than 0
     * @return the cable
     * @throws IllegalArgumentException if the nodes lie above each other, where {@link #hanger} serves, or
     *     a number is out of range
     */
    public static CableMember drawnTo(
            String name,
            Node start,
            Node end,
            double weightPerLength,
            double axialStiffness,
            double horizontalForce) {
        Vector reach = end.place().minus(start.place());
        HangingCable hanging =
                HangingCable.ofHorizontalForce(
                        weightPerLength,
                        axialStiffness,
                        Math.hypot(reach.x(), reach.y()),
                        reach.z(),
                        horizontalForce);
        return new CableMember(name, start.name(), end.name(), hanging.cable());
    }

    /**
     * Makes an upright cable of the unstressed length that gives it a certain tension at its lower end.
     *
     * @param name what it is called
     * @param start node where it starts
     * @param end node where it ends, straight above or below the start
     * @param weightPerLength weight of a metre of unstressed cable, N/m, 0 or more
     * @param axialStiffness EA, N
     * @param lowerTension tension at its lower end, N, 0 or more
     * @return the cable
     * @throws IllegalArgumentException if the nodes do not lie above each other or a number is out of range
     */
    public static CableMember hanger(
            String name,
            Node start,
            Node end,
            double weightPerLength,
            double axialStiffness,
            double lowerTension) {
        Vector reach = end.place().minus(start.place());
        if (reach.x() != 0 || reach.y() != 0) {
            throw Require.refused(
                    "level distance of the ends of hanger " + name,
                    Math.hypot(reach.x(), reach.y()),
                    "m",
                    "0 m");
        }
        HangingCable hanging =
                HangingCable.upright(weightPerLength, axialStiffness, reach.z(), lowerTension);
        return new CableMember(name, start.name(), end.name(), hanging.cable());
    }

    /**
     * Gives this cable with another unstressed length.
     *
     * @param length length without force, m, greater than 0
     * @return the cable
     * @throws IllegalArgumentException if the length is not greater than 0
     */
    public CableMember ofLength(double length) {
        return new CableMember(name, start, end, cable.ofLength(length));
    }
}
