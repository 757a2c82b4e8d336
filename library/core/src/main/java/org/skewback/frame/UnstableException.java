package org.skewback.frame;

import java.util.Arrays;

/** A structure under loads at or beyond its critical load; says what gives way. */
public final class UnstableException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    /**
     * Makes the exception.
     *
     * @param load the load
     * @param what what gives way, as a clause
     */
    UnstableException(String load, String what) {
        super(
                "the structure is unstable"
                        + load
                        + ": "
                        + what
                        + "; allowed are loads below the critical one.");
    }

    /** For a member that is unstable between its ends. */
    static UnstableException of(Element element, double[] axial) {
        return new UnstableException(
                "",
                "member "
                        + element.name()
                        + " buckles between its ends under an axial force of "
                        + Arrays.stream(axial).min().orElse(0)
                        + " N");
    }
}
