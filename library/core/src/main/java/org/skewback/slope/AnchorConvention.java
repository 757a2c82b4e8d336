package org.skewback.slope;

/**
 * On which side of the factor of safety an anchor's force along the sliding surface stands.
 *
 * <p>With resistance R and driving force S before the anchor, force T along the surface t_s and
 * square to it t_n: active {@code F = (R + t_n tan φ)/(S − t_s)}, passive {@code F = (R + t_n tan φ
 * + t_s)/S}. At F = 1 both are one. To reach a wanted factor F, the passive form asks for more: at
 * friction angle 0 exactly F times as much. The active form belongs to anchors that are locked off
 * at a force which is there before the slope moves; the passive one to dowels that are strained by
 * the movement, whose force is as uncertain as the strength of the rock. A code or a project that
 * says which one to take has the last word.
 */
public enum AnchorConvention {
    /** The force along the surface is taken off the driving force. */
    ACTIVE,
    /** The force along the surface is added to the resistance. */
    PASSIVE
}
