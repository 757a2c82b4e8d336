package org.skewback.anchor;

/**
 * How a tendon is kept from rust, to be noted with the anchor.
 *
 * <p>Names of classes after PTI, Recommendations for prestressed rock and soil anchors (from memory);
 * EN 1537 speaks of temporary and permanent anchors.
 */
public enum CorrosionProtection {
    /** Encapsulated tendon, two barriers: permanent anchors in ground that may attack. */
    CLASS_I,
    /** Grout as the one barrier: permanent anchors in ground that does not attack. */
    CLASS_II,
    /** No barrier beyond the grout over the bond: up to two years. */
    TEMPORARY
}
