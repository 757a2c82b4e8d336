package org.skewback.slope;

/**
 * Methods of slices, by what they ask of equilibrium and say of the forces between slices.
 *
 * <p>Sources, all from memory: W. Fellenius (1927) and D. W. Taylor (1937) for the ordinary method;
 * A. W. Bishop, Géotechnique 5 (1955); N. Janbu, Embankment-Dam Engineering, Casagrande Volume
 * (1973); E. Spencer, Géotechnique 17 (1967); N. R. Morgenstern and V. E. Price, Géotechnique 15
 * (1965); D. G. Fredlund and J. Krahn, Canadian Geotechnical Journal 14 (1977).
 */
public enum SliceMethod {
    /** Moments about the centre; forces between slices left out. Circles only; often too low. */
    ORDINARY(true),
    /** Moments about the centre and upright forces; shear between slices left out. Circles only. */
    BISHOP(true),
    /** Level and upright forces; shear between slices left out. Too low as it stands. */
    JANBU(false),
    /** As {@link #JANBU}, times a factor that stands for the shear between slices. */
    JANBU_CORRECTED(false),
    /** Forces and moments; the forces between slices all of one inclination. */
    SPENCER(false),
    /** Forces and moments; their inclination a half sine from end to end. */
    MORGENSTERN_PRICE(false);

    private final boolean circlesOnly;

    SliceMethod(boolean circlesOnly) {
        this.circlesOnly = circlesOnly;
    }

    boolean circlesOnly() {
        return circlesOnly;
    }
}
