package org.skewback.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.skewback.figure.FigureTest.refused;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.skewback.figure.Stereonet.Projection;
import org.skewback.slope.Orientation;

/** Projections of the half sphere against closed forms. */
class StereonetTest {

    private static double radius(Projection projection, double plunge) {
        double[] at = projection.place(StrictMath.toRadians(33), StrictMath.toRadians(plunge));
        return StrictMath.hypot(at[0], at[1]);
    }

    @Test
    void northIsUpAndEastIsRight() {
        for (Projection projection : Projection.values()) {
            double[] north = projection.place(0, 0);
            assertEquals(0, north[0], 1e-15);
            assertEquals(1, north[1], 1e-15);
            double[] east = projection.place(Math.PI / 2, 0);
            assertEquals(1, east[0], 1e-15);
            assertEquals(0, radius(projection, 90), 1e-15);
        }
    }

    /** tan 22.5° = √2 − 1. */
    @Test
    void equalAnglesPutAPlungeOfHalfARightAngleAtRootTwoLessOne() {
        assertEquals(Math.sqrt(2) - 1, radius(Projection.EQUAL_ANGLE, 45), 1e-15);
    }

    /** A cap of the sphere below plunge p has the area 2π (1 − sin p); the rim's is 2π. */
    @Test
    void equalAreasKeepTheAreaOfEveryCap() {
        for (double plunge = 0; plunge <= 90; plunge += 7.5) {
            double r = radius(Projection.EQUAL_AREA, plunge);
            assertEquals(1 - StrictMath.sin(StrictMath.toRadians(plunge)), r * r, 1e-14);
        }
    }

    /**
     * By equal angles a plane of dip δ is the arc of a circle of radius 1/cos δ about a point tan δ
     * from the middle, on the side it does not dip to.
     */
    @Test
    void greatCirclesAreCircles() throws Exception {
        double dip = StrictMath.toRadians(58);
        double direction = StrictMath.toRadians(224);
        Svg svg =
                new Svg(
                        Stereonet.titled("One plane", Projection.EQUAL_ANGLE)
                                .describedBy("One plane.")
                                .plane("J4", new Orientation(dip, direction))
                                .figure()
                                .svg());
        List<double[]> arc = svg.stroked(LineStyle.FIRST);
        List<double[]> rim = svg.stroked(LineStyle.MEMBER);
        double cx = 0;
        double cy = 0;
        for (int i = 0; i < rim.size() - 1; i++) {
            cx += rim.get(i)[0] / (rim.size() - 1);
            cy += rim.get(i)[1] / (rim.size() - 1);
        }
        double scale = StrictMath.hypot(rim.get(0)[0] - cx, rim.get(0)[1] - cy);
        assertTrue(scale > 100, "the net fills the page, radius " + scale + " points");
        double x = -StrictMath.tan(dip) * StrictMath.sin(direction);
        double y = -StrictMath.tan(dip) * StrictMath.cos(direction);
        for (double[] point : arc) {
            double east = (point[0] - cx) / scale;
            double north = -(point[1] - cy) / scale;
            assertEquals(1 / StrictMath.cos(dip), StrictMath.hypot(east - x, north - y), 5e-4);
        }
    }

    /** Where the zone begins, the face's apparent dip is the friction angle: cos θ = tan φ/tan ψ. */
    @Test
    void slidingZoneLiesBetweenFrictionAndFace() {
        Orientation face = Orientation.ofDegrees(65, 270);
        double friction = StrictMath.toRadians(30);
        Elevation net =
                Stereonet.titled("Zone", Projection.EQUAL_AREA)
                        .describedBy("A zone.")
                        .slidingZone(face, friction)
                        .drawing();
        double half = StrictMath.acos(StrictMath.tan(friction) / StrictMath.tan(face.dip()));
        assertEquals(friction, face.apparentDip(face.dipDirection() + half), 1e-12);
        Mark.Fill zone =
                (Mark.Fill)
                        net.picture().marks().stream()
                                .filter(
                                        m ->
                                                m instanceof Mark.Fill fill
                                                        && fill.polygons().get(0).length > 200)
                                .findFirst()
                                .orElseThrow();
        double[] box = Geometry.bounds(List.of(zone));
        double scale =
                (box[3] - box[1]) / 2 / (StrictMath.sin(half) * radius(Projection.EQUAL_AREA, 30));
        double wide = radius(Projection.EQUAL_AREA, 30) - radius(Projection.EQUAL_AREA, 65);
        double deep = radius(Projection.EQUAL_AREA, 30) * StrictMath.cos(half);
        double left = radius(Projection.EQUAL_AREA, 30);
        assertEquals(
                left - Math.min(deep, radius(Projection.EQUAL_AREA, 65)),
                (box[2] - box[0]) / scale,
                2e-3);
        assertTrue(wide > 0);
    }

    /** A cone about an upright pole is the friction circle seen from the pole: both are one circle. */
    @Test
    void frictionConeOfALevelJointIsTheCircleOfItsComplement() throws Exception {
        double friction = StrictMath.toRadians(32);
        String cone =
                Stereonet.titled("Net", Projection.EQUAL_ANGLE)
                        .describedBy("A net.")
                        .frictionCone("cone", new Orientation(0, 0), friction)
                        .figure()
                        .svg();
        String circle =
                Stereonet.titled("Net", Projection.EQUAL_ANGLE)
                        .describedBy("A net.")
                        .frictionCircle("cone", Math.PI / 2 - friction)
                        .figure()
                        .svg();
        double[] a = Svg.points(dashed(cone)).get(0);
        double[] b = Svg.points(dashed(circle)).get(0);
        assertEquals(reach(cone), reach(circle), 0.05);
        assertTrue(a.length == b.length);
    }

    private static String dashed(String svg) throws Exception {
        return new Svg(svg)
                .all("path").stream()
                        .filter(path -> path.getAttribute("stroke-dasharray").equals("2.6 1.6"))
                        .map(path -> path.getAttribute("d"))
                        .findFirst()
                        .orElseThrow();
    }

    private static double reach(String svg) throws Exception {
        List<double[]> points = Svg.points(dashed(svg));
        double least = points.stream().mapToDouble(p -> p[0]).min().orElseThrow();
        double most = points.stream().mapToDouble(p -> p[0]).max().orElseThrow();
        return most - least;
    }

    @Test
    void badInputIsNamed() {
        Stereonet net = Stereonet.titled("Bad", Projection.EQUAL_AREA);
        refused(() -> net.plane(" ", Orientation.ofDegrees(30, 0)), "name of the plane is blank");
        refused(() -> net.plane("over", Orientation.ofDegrees(120, 0)), "dip in rad is 2.09");
        refused(() -> net.poles("none", List.of()), "set \"none\" has 0 points");
        refused(() -> net.line("up", 0, -0.2), "plunge in rad is -0.2");
        refused(
                () -> net.slidingZone(Orientation.ofDegrees(30, 0), 0.6),
                "friction angle in rad is 0.6");
        refused(net::figure, "no description");
    }
}
