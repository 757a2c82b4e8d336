package org.skewback.slope;

import java.util.ArrayList;
import java.util.List;

/**
 * The block that two joints, a face, the upper slope and perhaps a tension crack cut out, found as
 * the space that their planes enclose.
 *
 * <p>The point where the line of intersection of the joints comes out in the face is the origin. The
 * line of intersection must come out in the face and reach the upper slope.
 */
public final class WedgeShape {

    private static final int JOINT_A = 0;
    private static final int JOINT_B = 1;
    private static final int CRACK = 4;

    private final Orientation jointA;
    private final Orientation jointB;
    private final Orientation face;
    private final Orientation upper;
    private final Vector line;
    private final double height;
    private final Vector atTop;
    private final HalfSpaces.@org.jspecify.annotations.Nullable Side crack;
    private final HalfSpaces body;

    private WedgeShape(
            Orientation jointA,
            Orientation jointB,
            Orientation face,
            Orientation upper,
            Vector atTop,
            HalfSpaces.@org.jspecify.annotations.Nullable Side crack) {
        this.jointA = jointA;
        this.jointB = jointB;
        this.face = face;
        this.upper = upper;
        this.atTop = atTop;
        this.crack = crack;
        this.line = lineUp(jointA, jointB);
        this.height = upper.normal().dot(atTop) / upper.normal().dot(line) * line.z();
        List<HalfSpaces.Side> sides = new ArrayList<>();
        sides.add(new HalfSpaces.Side(jointA.normal().times(-1), Vector.ORIGIN));
        sides.add(new HalfSpaces.Side(jointB.normal().times(-1), Vector.ORIGIN));
        sides.add(new HalfSpaces.Side(face.normal(), Vector.ORIGIN));
        sides.add(new HalfSpaces.Side(upper.normal(), atTop));
        if (crack != null) {
            sides.add(crack);
        }
        this.body = new HalfSpaces(sides, height / line.z());
        for (int i = 0; i < 4; i++) {
            if (body.face(i).size() < 3) {
                throw new IllegalArgumentException(
                        "The planes enclose no wedge: "
                                + List.of("joint A", "joint B", "the face", "the upper slope")
                                        .get(i)
                                + " has no part in it.");
            }
        }
    }

    /**
     * Cuts out the wedge of a total height: from where the line of intersection comes out in the
     * face up to where it meets the upper slope.
     *
     * @param jointA orientation of joint A
     * @param jointB orientation of joint B
     * @param face orientation of the face
     * @param upper orientation of the upper slope
     * @param height total height of the wedge, m, greater than 0
     * @return the wedge
     * @throws IllegalArgumentException if the height is not positive or the planes cut out no wedge
     */
    public static WedgeShape ofTotalHeight(
            Orientation jointA,
            Orientation jointB,
            Orientation face,
            Orientation upper,
            double height) {
        Require.positive("total height of the wedge", height, "m");
        Vector up = lineUp(jointA, jointB);
        requireDaylight(up, face, upper);
        return new WedgeShape(jointA, jointB, face, upper, up.times(height / up.z()), null);
    }

    /**
     * Cuts out the wedge of a height of the face, taken on joint A: from where the line of
     * intersection comes out up to where joint A meets the crest.
     *
     * @param jointA orientation of joint A
     * @param jointB orientation of joint B
     * @param face orientation of the face
     * @param upper orientation of the upper slope
     * @param height height of the crest on joint A, m, greater than 0
     * @return the wedge
     * @throws IllegalArgumentException if the height is not positive, joint A meets the face in a
     *     level line, or the planes cut out no wedge
     */
    public static WedgeShape ofCrestHeight(
            Orientation jointA,
            Orientation jointB,
            Orientation face,
            Orientation upper,
            double height) {
        Require.positive("height of the crest", height, "m");
        requireDaylight(lineUp(jointA, jointB), face, upper);
        Vector trace = jointA.normal().cross(face.normal());
        if (Math.abs(trace.z()) < 1e-9) {
            throw new IllegalArgumentException(
                    "Joint A meets the face in a level line, so that the height of the crest says"
                            + " nothing; give the total height.");
        }
        return new WedgeShape(jointA, jointB, face, upper, trace.times(height / trace.z()), null);
    }

    /**
     * Cuts the wedge off at a tension crack.
     *
     * @param orientation orientation of the crack
     * @param behindCrest distance of the crack from the crest along the trace of joint A on the
     *     upper slope, m, greater than 0
     * @return the smaller wedge
     * @throws IllegalArgumentException if the distance is not positive, the crack runs along the
     *     trace, or it does not cut the wedge
     */
    public WedgeShape withTensionCrack(Orientation orientation, double behindCrest) {
        Require.positive("distance of the tension crack behind the crest", behindCrest, "m");
        Vector trace = jointA.normal().cross(upper.normal());
        Vector inward = trace.dot(face.normal()) < 0 ? trace.unit() : trace.unit().times(-1);
        Vector along = jointA.normal().cross(face.normal());
        Vector crest = along.times(upper.normal().dot(atTop) / upper.normal().dot(along));
        Vector point = crest.plus(inward.times(behindCrest));
        Vector normal = orientation.normal();
        double offset = normal.dot(point);
        if (Math.abs(offset) < 1e-9 * height) {
            throw new IllegalArgumentException(
                    "The tension crack passes through the toe of the wedge.");
        }
        Vector outward = offset > 0 ? normal : normal.times(-1);
        WedgeShape cut =
                new WedgeShape(
                        jointA, jointB, face, upper, atTop, new HalfSpaces.Side(outward, point));
        if (cut.body.face(CRACK).size() < 3) {
            throw Require.refused(
                    "distance of the tension crack behind the crest",
                    behindCrest,
                    "m",
                    "one at which it cuts the wedge");
        }
        return cut;
    }

    private static Vector lineUp(Orientation a, Orientation b) {
        Vector line = a.normal().cross(b.normal());
        if (line.length() < 1e-9) {
            throw new IllegalArgumentException("Joints A and B are parallel: they make no wedge.");
        }
        if (Math.abs(line.z()) < 1e-9 * line.length()) {
            throw new IllegalArgumentException(
                    "The line of intersection of joints A and B is level: no wedge slides on it.");
        }
        return line.z() > 0 ? line.unit() : line.unit().times(-1);
    }

    private static void requireDaylight(Vector up, Orientation face, Orientation upper) {
        Vector down = up.times(-1);
        if (!(face.normal().dot(up) < 0 && upper.normal().dot(up) > 0)) {
            double trend = down.trend();
            throw new IllegalArgumentException(
                    "The line of intersection plunges "
                            + StrictMath.toDegrees(down.plunge())
                            + "° toward "
                            + StrictMath.toDegrees(trend)
                            + "°, where the face dips "
                            + StrictMath.toDegrees(face.apparentDip(trend))
                            + "° and the upper slope "
                            + StrictMath.toDegrees(upper.apparentDip(trend))
                            + "°; allowed is less than the face and more than the upper slope.");
        }
    }

    /**
     * Gives the total height of the wedge that no crack cuts off: of the line of intersection from
     * the face to the upper slope.
     *
     * @return the height, m
     */
    public double totalHeight() {
        return height;
    }

    /**
     * Gives the volume.
     *
     * @return volume, m³
     */
    public double volume() {
        return body.volume();
    }

    /**
     * Gives the area on joint A.
     *
     * @return area, m²
     */
    public double areaA() {
        return body.area(JOINT_A);
    }

    /**
     * Gives the area on joint B.
     *
     * @return area, m²
     */
    public double areaB() {
        return body.area(JOINT_B);
    }

    /**
     * Gives the area of the tension crack.
     *
     * @return area, m²; 0 without a crack
     */
    public double crackArea() {
        return crack == null ? 0 : body.area(CRACK);
    }

    /**
     * Gives the depth of the lowest point of the tension crack, on the line of intersection, below
     * the upper slope.
     *
     * @return depth taken upright, m; 0 without a crack
     */
    public double crackDepth() {
        if (crack == null) {
            return 0;
        }
        Vector lowest = line.times(crack.outward().dot(crack.point()) / crack.outward().dot(line));
        return upper.normal().dot(atTop.minus(lowest)) / upper.normal().z();
    }

    /**
     * Gives the plunge of the line of intersection.
     *
     * @return plunge below the level, rad
     */
    public double plunge() {
        return line.times(-1).plunge();
    }

    /**
     * Gives the trend of the line of intersection, downward.
     *
     * @return trend clockwise from north, rad
     */
    public double trend() {
        return line.times(-1).trend();
    }

    /**
     * Gives the corners of one side of the block for drawing, in order around it.
     *
     * @param side 0 joint A, 1 joint B, 2 the face, 3 the upper slope, 4 the tension crack
     * @return corners as {east, north, up}, m, from where the line of intersection comes out
     * @throws IllegalArgumentException if there is no such side
     */
    public List<double[]> corners(int side) {
        if (side < 0 || side > (crack == null ? 3 : CRACK)) {
            throw new IllegalArgumentException(
                    "side is " + side + "; allowed is 0 to " + (crack == null ? 3 : CRACK) + ".");
        }
        return body.face(side).stream()
                .map(corner -> new double[] {corner.x(), corner.y(), corner.z()})
                .toList();
    }

    Vector lineDown() {
        return line.times(-1);
    }

    Vector normalA() {
        return jointA.normal();
    }

    Vector normalB() {
        return jointB.normal();
    }

    /** Unit vector out of the block through the tension crack; zero without. */
    Vector crackOutward() {
        return crack == null ? Vector.ORIGIN : crack.outward().unit();
    }
}
