package org.skewback.numeric;

/**
 * How many eigenvalues of a symmetric matrix are negative, zero and positive: by Sylvester's law of
 * inertia the same as the signs of the pivots of LDLᵀ.
 *
 * @param negative number of negative ones
 * @param zero number of zero ones
 * @param positive number of positive ones
 */
public record Inertia(int negative, int zero, int positive) {}
