package org.skewback.frame;

/**
 * What the supports of a node exert on the structure.
 *
 * @param node the node
 * @param force force, global axes, N
 * @param moment moment, global axes, N·m
 */
public record Reaction(String node, Vector force, Vector moment) {}
