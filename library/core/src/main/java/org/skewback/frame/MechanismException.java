package org.skewback.frame;

/** The structure, or a part of it, can move without resistance; says which node and how. */
public final class MechanismException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    private final transient FreeMotion motion;

    /**
     * Makes the exception.
     *
     * @param motion the motion that nothing resists
     */
    public MechanismException(FreeMotion motion) {
        this("", motion);
    }

    /**
     * Makes the exception.
     *
     * @param when when it is so, with a blank at its end; empty for always
     * @param motion the motion that nothing resists
     */
    MechanismException(String when, FreeMotion motion) {
        super(
                when
                        + "the structure is a mechanism: "
                        + motion
                        + " without resistance; allowed is a structure whose supports and members"
                        + " hold every node.");
        this.motion = motion;
    }

    /**
     * Gives the motion that nothing resists.
     *
     * @return node and direction
     */
    public FreeMotion motion() {
        return motion;
    }
}
