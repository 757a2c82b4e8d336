package org.skewback.frame;

/**
 * The ground under the supports of a node moves; rigid supports and springs of that node follow it along
 * and about the directions that they hold. Along other directions the movement has no effect.
 *
 * @param node node with supports
 * @param translation movement, m
 * @param rotation rotation, rad
 */
public record GroundMovement(String node, Vector translation, Vector rotation) implements Load {}
