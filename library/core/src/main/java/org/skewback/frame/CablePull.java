package org.skewback.frame;

import java.util.List;

/**
 * The forces with which cables, hung between the nodes of the model as it is drawn, pull at these nodes:
 * tension and weight. A load for analyses that superpose; exact ones take it by themselves.
 *
 * @param members names of the cables; all of the model where there is none
 */
public record CablePull(List<String> members) implements Load {

    /**
     * Copies the names.
     *
     * @param members names of the cables
     */
    public CablePull {
        members = List.copyOf(members);
    }

    /**
     * Makes the pull of all cables.
     *
     * @return the load
     */
    public static CablePull ofAll() {
        return new CablePull(List.of());
    }
}
