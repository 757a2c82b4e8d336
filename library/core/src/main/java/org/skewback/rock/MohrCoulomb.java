package org.skewback.rock;

import org.skewback.quantity.Quantity;

/**
 * Equivalent Mohr–Coulomb strength over a range of stress.
 *
 * @param cohesion equivalent cohesion, c′
 * @param friction equivalent friction angle, φ′
 * @param upperStress greatest confining stress of the range, σ′_3max
 */
public record MohrCoulomb(Quantity cohesion, Quantity friction, Quantity upperStress) {}
