package org.skewback.frame;

import java.util.List;

/**
 * Loads that act together.
 *
 * @param name what the case is called
 * @param loads the loads
 */
public record LoadCase(String name, List<Load> loads) {

    /**
     * Checks the numbers.
     *
     * @param name what the case is called
     * @param loads the loads
     * @throws IllegalArgumentException if the name is blank
     */
    public LoadCase {
        Require.name("load case", name);
        loads = List.copyOf(loads);
    }

    /**
     * Makes a case of some loads.
     *
     * @param name what the case is called
     * @param loads the loads
     * @return the case
     */
    public static LoadCase of(String name, Load... loads) {
        return new LoadCase(name, List.of(loads));
    }
}
