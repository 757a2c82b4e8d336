package org.skewback.frame;

import java.util.List;
import org.skewback.numeric.Gap;
import org.skewback.numeric.LocalElement;
import org.skewback.numeric.SlidingBearing;

/**
 * A bearing or stop between two nodes that acts in time histories only: it follows the movement of its end
 * against its start.
 *
 * @param name what it is called
 * @param start node below, or on the ground
 * @param end node above
 * @param element what it does
 * @param directions unit vectors of the movements it follows, global axes, as many as the element has
 */
public record NonlinearLink(
        String name, String start, String end, LocalElement element, List<Vector> directions) {

    /**
     * Checks the directions and makes them unit vectors.
     *
     * @param name what it is called
     * @param start node below, or on the ground
     * @param end node above
     * @param element what it does
     * @param directions directions of the movements it follows, global axes
     * @throws IllegalArgumentException if the name is blank or there are more or fewer directions than
     *     the element has
     */
    public NonlinearLink {
        Require.name("link", name);
        directions = directions.stream().map(Vector::unit).toList();
        if (directions.size() != element.directions()) {
            throw new IllegalArgumentException(
                    "link "
                            + name
                            + " has "
                            + directions.size()
                            + " directions; allowed are the "
                            + element.directions()
                            + " of its element.");
        }
    }

    /**
     * Makes a bearing that slides along global x and y.
     *
     * @param name what it is called
     * @param start node below
     * @param end node above
     * @param bearing friction and stiffness
     * @return the link
     */
    public static NonlinearLink sliding(
            String name, String start, String end, SlidingBearing bearing) {
        return new NonlinearLink(name, start, end, bearing, List.of(Vector.X, Vector.Y));
    }

    /**
     * Makes a stop.
     *
     * @param name what it is called
     * @param start node that is hit
     * @param end node that hits
     * @param direction direction of the movement of the end against the start that closes the gap
     * @param gap opening and stiffness
     * @return the link
     */
    public static NonlinearLink stop(
            String name, String start, String end, Vector direction, Gap gap) {
        return new NonlinearLink(name, start, end, gap, List.of(direction));
    }
}
