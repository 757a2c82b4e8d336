package org.skewback.frame;

/**
 * The energy balance of a solution: both are equal in exact arithmetic (B. P. E. Clapeyron's
 * theorem, with terms for supports that move and deformations that are imposed).
 *
 * @param strain energy stored in members and springs, ½ ∫ sᵀ f s dx + ½ Σ k d², J
 * @param work ½ (loads · movements + reactions · movements of the ground − forces · deformations
 *     imposed), J
 */
public record Energy(double strain, double work) {}
