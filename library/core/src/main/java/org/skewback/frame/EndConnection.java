package org.skewback.frame;

/**
 * How an end of a member is joined to its node: for each motion in local axes rigid, released, or by
 * a spring.
 *
 * @param alongX stiffness along local x, N/m; infinite for rigid, 0 for released
 * @param alongY stiffness along local y, N/m; infinite for rigid, 0 for released
 * @param alongZ stiffness along local z, N/m; infinite for rigid, 0 for released
 * @param aboutX stiffness about local x, N·m/rad; infinite for rigid, 0 for released
 * @param aboutY stiffness about local y, N·m/rad; infinite for rigid, 0 for released
 * @param aboutZ stiffness about local z, N·m/rad; infinite for rigid, 0 for released
 */
public record EndConnection(
        double alongX, double alongY, double alongZ, double aboutX, double aboutY, double aboutZ) {

    private static final double RIGIDLY = Double.POSITIVE_INFINITY;

    /** Everything rigid. */
    public static final EndConnection RIGID =
            new EndConnection(RIGIDLY, RIGIDLY, RIGIDLY, RIGIDLY, RIGIDLY, RIGIDLY);

    /**
     * A pin: rotations about local y and z released, torsion kept so that the member does not spin.
     */
    public static final EndConnection PINNED =
            RIGID.released(Motion.ABOUT_Y).released(Motion.ABOUT_Z);

    /**
     * Checks the stiffnesses.
     *
     * @param alongX along local x, N/m
     * @param alongY along local y, N/m
     * @param alongZ along local z, N/m
     * @param aboutX about local x, N·m/rad
     * @param aboutY about local y, N·m/rad
     * @param aboutZ about local z, N·m/rad
     * @throws IllegalArgumentException if one is negative
     */
    public EndConnection {
        Require.stiffness("stiffness of an end along x", alongX, "N/m");
        Require.stiffness("stiffness of an end along y", alongY, "N/m");
        Require.stiffness("stiffness of an end along z", alongZ, "N/m");
        Require.stiffness("stiffness of an end about x", aboutX, "N·m/rad");
        Require.stiffness("stiffness of an end about y", aboutY, "N·m/rad");
        Require.stiffness("stiffness of an end about z", aboutZ, "N·m/rad");
    }

    /**
     * Gives this connection with one motion released.
     *
     * @param motion motion in local axes
     * @return the connection
     */
    public EndConnection released(Motion motion) {
        return with(motion, 0);
    }

    /**
     * Gives this connection with a spring.
     *
     * @param motion motion in local axes
     * @param stiffness N/m or N·m/rad; 0 for released, infinite for rigid
     * @return the connection
     * @throws IllegalArgumentException if the stiffness is negative
     */
    public EndConnection with(Motion motion, double stiffness) {
        double[] all = {alongX, alongY, alongZ, aboutX, aboutY, aboutZ};
        all[motion.index()] = stiffness;
        return new EndConnection(all[0], all[1], all[2], all[3], all[4], all[5]);
    }

    /**
     * Gives one stiffness.
     *
     * @param motion motion in local axes
     * @return N/m or N·m/rad; 0 for released, infinite for rigid
     */
    public double stiffness(Motion motion) {
        return switch (motion) {
            case ALONG_X -> alongX;
            case ALONG_Y -> alongY;
            case ALONG_Z -> alongZ;
            case ABOUT_X -> aboutX;
            case ABOUT_Y -> aboutY;
            case ABOUT_Z -> aboutZ;
        };
    }
}
