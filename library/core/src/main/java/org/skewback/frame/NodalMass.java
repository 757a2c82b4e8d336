package org.skewback.frame;

/**
 * A mass fixed to a node.
 *
 * @param node the node
 * @param mass kg, 0 or more
 * @param rotary moments of inertia about the global axes through the node, kg·m², each 0 or more
 */
public record NodalMass(String node, double mass, Vector rotary) {

    /**
     * Checks the numbers.
     *
     * @param node the node
     * @param mass kg
     * @param rotary moments of inertia about the global axes, kg·m²
     * @throws IllegalArgumentException if a number is negative or not finite
     */
    public NodalMass {
        Require.notNegative("mass at node " + node, mass, "kg");
        for (int k = 0; k < 3; k++) {
            Require.notNegative(
                    "moment of inertia at node " + node + " " + Motion.at(3 + k),
                    rotary.get(k),
                    "kg·m²");
        }
    }

    /**
     * Makes a mass without moments of inertia.
     *
     * @param node the node
     * @param mass kg, 0 or more
     * @return the mass
     */
    public static NodalMass of(String node, double mass) {
        return new NodalMass(node, mass, Vector.ZERO);
    }
}
