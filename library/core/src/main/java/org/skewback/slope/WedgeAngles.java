package org.skewback.slope;

/**
 * The angles of a wedge that the short formulas want, exact from the orientations; the trade reads
 * them off a stereonet.
 *
 * <p>Lines: 1 joint A with the face, 2 joint B with the face, 3 joint A with the upper slope, 4
 * joint B with the upper slope, 5 joint A with joint B; n_a and n_b are the normals. Source: E. Hoek
 * and J. W. Bray, Rock Slope Engineering (1981), ch. 8 (from memory).
 *
 * @param plunge5 plunge of line 5, ψ_5, rad
 * @param trend5 trend of line 5, rad
 * @param between angle between the normals n_a and n_b, rad
 * @param angle24 angle between lines 2 and 4, rad
 * @param angle45 angle between lines 4 and 5, rad
 * @param angle2a angle between line 2 and n_a, rad, at most π/2
 * @param angle13 angle between lines 1 and 3, rad
 * @param angle35 angle between lines 3 and 5, rad
 * @param angle1b angle between line 1 and n_b, rad, at most π/2
 */
public record WedgeAngles(
        double plunge5,
        double trend5,
        double between,
        double angle24,
        double angle45,
        double angle2a,
        double angle13,
        double angle35,
        double angle1b) {

    /**
     * Finds the angles.
     *
     * @param jointA orientation of joint A
     * @param jointB orientation of joint B
     * @param face orientation of the face
     * @param upper orientation of the upper slope
     * @return the angles
     * @throws IllegalArgumentException if two of the planes are parallel
     */
    public static WedgeAngles of(
            Orientation jointA, Orientation jointB, Orientation face, Orientation upper) {
        Vector a = jointA.normal();
        Vector b = jointB.normal();
        Vector line1 = line("Joint A and the face", a, face.normal());
        Vector line2 = line("Joint B and the face", b, face.normal());
        Vector line3 = line("Joint A and the upper slope", a, upper.normal());
        Vector line4 = line("Joint B and the upper slope", b, upper.normal());
        Vector line5 = line("Joints A and B", a, b);
        return new WedgeAngles(
                line5.plunge(),
                line5.trend(),
                angle(a, b),
                angle(line2, line4),
                angle(line4, line5),
                acute(line2, a),
                angle(line1, line3),
                angle(line3, line5),
                acute(line1, b));
    }

    /** The line of intersection of two planes, pointing down. */
    private static Vector line(String which, Vector first, Vector second) {
        Vector line = first.cross(second);
        if (line.length() < 1e-9) {
            throw new IllegalArgumentException(which + " are parallel: they do not intersect.");
        }
        return line.z() > 0 ? line.unit().times(-1) : line.unit();
    }

    private static double angle(Vector first, Vector second) {
        return StrictMath.atan2(first.cross(second).length(), first.dot(second));
    }

    private static double acute(Vector first, Vector second) {
        double angle = angle(first, second);
        return Math.min(angle, Math.PI - angle);
    }
}
