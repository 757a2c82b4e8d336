package org.skewback.frame;

/** The six forces at a section of a member. */
public enum ForceComponent {
    /** Axial force N. */
    AXIAL(0, "N"),
    /** Shear force V_y. */
    SHEAR_Y(1, "V_y"),
    /** Shear force V_z. */
    SHEAR_Z(2, "V_z"),
    /** Torque T. */
    TORQUE(3, "T"),
    /** Bending moment M_y. */
    MOMENT_Y(4, "M_y"),
    /** Bending moment M_z. */
    MOMENT_Z(5, "M_z");

    private final int index;
    private final String symbol;

    ForceComponent(int index, String symbol) {
        this.index = index;
        this.symbol = symbol;
    }

    /**
     * Tells moments from forces.
     *
     * @return whether the unit is N·m, not N
     */
    public boolean isMoment() {
        return index() >= 3;
    }

    /**
     * Gives the symbol.
     *
     * @return N, V_y, V_z, T, M_y or M_z
     */
    public String symbol() {
        return symbol;
    }

    /** Number of this in arrays of six. */
    int index() {
        return index;
    }

    /** The one with a number. */
    static ForceComponent at(int index) {
        return values()[index];
    }
}
