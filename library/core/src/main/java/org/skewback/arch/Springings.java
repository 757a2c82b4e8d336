package org.skewback.arch;

/** How an arch is held at its springings. */
public enum Springings {
    /** Hinges at both springings. */
    PINNED,
    /** Both springings held against turning. */
    FIXED
}
