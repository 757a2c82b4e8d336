package org.skewback.frame;

/**
 * A point of the structure with six ways to move.
 *
 * @param name what it is called, unique in a model
 * @param place where it is, global axes, m
 */
public record Node(String name, Vector place) {

    /**
     * Checks the name.
     *
     * @param name what it is called
     * @param place where it is, m
     * @throws IllegalArgumentException if the name is blank
     */
    public Node {
        Require.name("node", name);
    }
}
