package org.skewback.frame;

/** The axes in which a load on a member is given. */
public enum LoadAxes {
    /** Global axes, per length of the member. */
    GLOBAL,
    /** Local axes of the member, per length of the member. */
    LOCAL,
    /**
     * Global axes, each component per length of the member's projection across that component: a
     * load along z is per length on plan, as snow is.
     */
    PROJECTED
}
