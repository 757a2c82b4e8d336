package org.skewback.frame;

/**
 * How well a solution is in equilibrium, found from the forces given out, not from the equations
 * solved.
 *
 * @param residual largest force left over at a free motion of a node, over the largest force on a
 *     node; moments in the same way; the larger of both
 * @param force sum of all loads and reactions, N
 * @param moment their moment about the origin, N·m
 */
public record Equilibrium(double residual, Vector force, Vector moment) {}
