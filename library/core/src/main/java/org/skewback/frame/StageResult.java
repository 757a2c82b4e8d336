package org.skewback.frame;

import java.util.Map;

/**
 * The structure at the end of a stage.
 *
 * @param name name of the stage
 * @param solution total movements and forces, everything locked in included
 * @param unstressedLengths length of each present member without its forces and temperature, m
 */
public record StageResult(
        String name, FrameSolution solution, Map<String, Double> unstressedLengths) {

    /**
     * Copies the lengths.
     *
     * @param name name of the stage
     * @param solution total movements and forces
     * @param unstressedLengths length of each present member without its forces, m
     */
    public StageResult {
        unstressedLengths = Map.copyOf(unstressedLengths);
    }
}
