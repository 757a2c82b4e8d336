package org.skewback.cable;

/**
 * A point of a hanging cable.
 *
 * @param x level distance from the start, m
 * @param z height above the start, m
 * @param tension tension T, N
 * @param vertical vertical component of the tension, N, positive where the cable falls toward its end
 */
public record CablePoint(double x, double z, double tension, double vertical) {}
