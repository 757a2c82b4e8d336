package org.skewback.arch;

import java.util.function.DoubleUnaryOperator;

/**
 * A shape into which an arch buckles in its plane.
 *
 * @param thrust thrust at which it buckles so, N
 * @param lift vertical displacement at a position x in m, scaled to a largest value of 1, upward
 *     positive
 */
public record ArchBucklingMode(double thrust, DoubleUnaryOperator lift) {}
