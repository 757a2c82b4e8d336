package org.skewback.slope;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.skewback.slope.Refused.refused;

import java.util.Optional;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.skewback.quantity.Quantity;

/** Laws of the wedge. */
class WedgeTest {

    private static final Orientation FACE = Orientation.ofDegrees(65, 185);
    private static final Orientation UPPER = Orientation.ofDegrees(12, 195);
    private static final Orientation A = Orientation.ofDegrees(45, 105);
    private static final Orientation B = Orientation.ofDegrees(70, 235);

    private static WedgeLoads loads(
            Orientation a, Orientation b, Orientation face, Orientation upper, double height) {
        return WedgeLoads.of(
                WedgeShape.ofTotalHeight(a, b, face, upper, height),
                new WedgeJoint(a, 600 * height, StrictMath.toRadians(30)),
                new WedgeJoint(b, 1200 * height, StrictMath.toRadians(20)),
                25e3);
    }

    private static Optional<WedgeLoads> wedge(double dipA, double toA, double dipB, double toB) {
        try {
            return Optional.of(
                    loads(
                            Orientation.ofDegrees(dipA, toA),
                            Orientation.ofDegrees(dipB, toB),
                            FACE,
                            UPPER,
                            40));
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    private static double shortFactor(Orientation a, Orientation b, double water) {
        WedgeAngles angles = WedgeAngles.of(a, b, FACE, UPPER);
        Quantity x =
                ShortWedge.x(
                        Quantity.of(angles.angle24()),
                        Quantity.of(angles.angle45()),
                        Quantity.of(angles.angle2a()));
        Quantity y =
                ShortWedge.y(
                        Quantity.of(angles.angle13()),
                        Quantity.of(angles.angle35()),
                        Quantity.of(angles.angle1b()));
        Quantity plunge = Quantity.of(angles.plunge5());
        Quantity between = Quantity.of(angles.between());
        return ShortWedge.factor(
                        new ShortWedge.Terms(
                                Quantity.of(24, "kPa"),
                                Quantity.of(48, "kPa"),
                                x,
                                y,
                                Quantity.of(25, "kN/m³"),
                                Quantity.of(water, "kN/m³"),
                                Quantity.of(40, "m")),
                        ShortWedge.normalNumber(
                                Quantity.of(a.dip()), Quantity.of(b.dip()), plunge, between),
                        Quantity.of(30, "°"),
                        ShortWedge.normalNumber(
                                Quantity.of(b.dip()), Quantity.of(a.dip()), plunge, between),
                        Quantity.of(20, "°"))
                .si();
    }

    @Property
    void theShortFormulaAgreesWithTheVectors(
            @ForAll @DoubleRange(min = 30, max = 85) double dipA,
            @ForAll @DoubleRange(min = 95, max = 150) double toA,
            @ForAll @DoubleRange(min = 40, max = 85) double dipB,
            @ForAll @DoubleRange(min = 200, max = 260) double toB) {
        Optional<WedgeLoads> wedge = wedge(dipA, toA, dipB, toB);
        Assume.that(wedge.isPresent());
        WedgeLoads dry = wedge.orElseThrow();
        WedgeLoads wet = dry.withWater(WedgeWater.full(dry.shape(), 9810));
        for (double water : new double[] {0, 9.81}) {
            WedgeSlide slide = WedgeSlide.of(water == 0 ? dry : wet);
            Assume.that(slide.contact() == WedgeSlide.Contact.BOTH);
            double expected =
                    shortFactor(dry.jointA().orientation(), dry.jointB().orientation(), water);
            assertEquals(expected, slide.factor(), 1e-6 * expected);
        }
    }

    @Property
    void aLevelAnchorAgainstTheSlideNeverLowersSafetyWhileBothJointsPress(
            @ForAll @DoubleRange(min = 30, max = 85) double dipA,
            @ForAll @DoubleRange(min = 95, max = 150) double toA,
            @ForAll @DoubleRange(min = 40, max = 85) double dipB,
            @ForAll @DoubleRange(min = 200, max = 260) double toB,
            @ForAll @DoubleRange(max = 0.2) double part,
            @ForAll AnchorConvention convention) {
        // Square to the line of intersection, it presses the joints in the ratio that the weight
        // does.
        Optional<WedgeLoads> wedge = wedge(dipA, toA, dipB, toB);
        Assume.that(wedge.isPresent());
        WedgeLoads bare = wedge.orElseThrow();
        WedgeSlide free = WedgeSlide.of(bare);
        Assume.that(free.contact() == WedgeSlide.Contact.BOTH);
        SpaceForce anchor = SpaceForce.of(part * free.weight(), bare.shape().trend() + Math.PI, 0);
        Assume.that(part * StrictMath.cos(free.plunge()) < StrictMath.sin(free.plunge()));
        double held = WedgeSlide.of(bare.withAnchor(anchor, convention)).factor();
        assertTrue(held >= free.factor() * (1 - 1e-9), held + " " + free.factor());
    }

    @Property
    void turningOrMirroringTheMapChangesNothing(
            @ForAll @DoubleRange(min = -100, max = 100) double turn) {
        double plain = WedgeSlide.of(loads(A, B, FACE, UPPER, 40)).factor();
        double turned =
                WedgeSlide.of(
                                loads(
                                        turned(A, turn),
                                        turned(B, turn),
                                        turned(FACE, turn),
                                        turned(UPPER, turn),
                                        40))
                        .factor();
        double mirrored =
                WedgeSlide.of(loads(mirrored(A), mirrored(B), mirrored(FACE), mirrored(UPPER), 40))
                        .factor();
        assertEquals(plain, turned, 1e-9);
        assertEquals(plain, mirrored, 1e-9);
    }

    private static Orientation turned(Orientation o, double degrees) {
        return new Orientation(o.dip(), o.dipDirection() + StrictMath.toRadians(degrees));
    }

    private static Orientation mirrored(Orientation o) {
        return new Orientation(o.dip(), -o.dipDirection());
    }

    @Property
    void sizeChangesNothingWhereCohesionGrowsWithIt(
            @ForAll @DoubleRange(min = 1, max = 500) double height) {
        double plain = WedgeSlide.of(loads(A, B, FACE, UPPER, 40)).factor();
        assertEquals(plain, WedgeSlide.of(loads(A, B, FACE, UPPER, height)).factor(), 1e-9);
    }

    @Property
    void moreWaterNeverRaisesSafetyWhileBothJointsPress(
            @ForAll @DoubleRange(min = 35, max = 85) double dipA,
            @ForAll @DoubleRange(min = 95, max = 150) double toA,
            @ForAll @DoubleRange(min = 45, max = 85) double dipB,
            @ForAll @DoubleRange(min = 200, max = 260) double toB,
            @ForAll @DoubleRange(max = 100e3) double onA,
            @ForAll @DoubleRange(max = 100e3) double onB,
            @ForAll @DoubleRange(max = 1) double part) {
        Optional<WedgeLoads> wedge = wedge(dipA, toA, dipB, toB);
        Assume.that(wedge.isPresent());
        WedgeLoads dry = wedge.orElseThrow();
        WedgeSlide more = WedgeSlide.of(dry.withWater(new WedgeWater(onA, onB, 0)));
        WedgeSlide less = WedgeSlide.of(dry.withWater(new WedgeWater(part * onA, part * onB, 0)));
        Assume.that(more.contact() == WedgeSlide.Contact.BOTH);
        assertTrue(more.factor() <= less.factor() * (1 + 1e-12));
    }

    @Property
    void aWedgeThatSlidesOnOneJointIsASlideOnAPlane(
            @ForAll @DoubleRange(min = 35, max = 60) double dipA,
            @ForAll @DoubleRange(min = 150, max = 180) double toA,
            @ForAll @DoubleRange(min = 60, max = 88) double dipB,
            @ForAll @DoubleRange(min = 200, max = 260) double toB) {
        Orientation a = Orientation.ofDegrees(dipA, toA);
        Orientation b = Orientation.ofDegrees(dipB, toB);
        Optional<WedgeLoads> wedge = wedge(dipA, toA, dipB, toB);
        Assume.that(wedge.isPresent());
        double friction = StrictMath.toRadians(30);
        WedgeSlide slide =
                WedgeSlide.of(
                        WedgeLoads.of(
                                wedge.orElseThrow().shape(),
                                new WedgeJoint(a, 0, friction),
                                new WedgeJoint(b, 50e3, friction),
                                25e3));
        // Joint A alone carries where its steepest line leads away from joint B.
        Vector steepest = Vector.ofTrend(a.dipDirection(), a.dip());
        Assume.that(steepest.dot(b.normal()) > 1e-6);
        assertEquals(WedgeSlide.Contact.JOINT_A, slide.contact());
        assertEquals(StrictMath.tan(friction) / StrictMath.tan(a.dip()), slide.factor(), 1e-9);
        assertEquals(toA, StrictMath.toDegrees(slide.trend()), 1e-6);
    }

    @Test
    void waterThatLiftsTheBlockLeavesNoFactor() {
        WedgeLoads dry = loads(A, B, FACE, UPPER, 40);
        WedgeSlide slide = WedgeSlide.of(dry.withWater(new WedgeWater(1e6, 1e6, 0)));
        assertEquals(WedgeSlide.Contact.LOST, slide.contact());
        assertEquals(0, slide.factor());
    }

    @Test
    void aCrackFarBackTakesOffLittleAndItsWaterCounts() {
        WedgeShape whole = WedgeShape.ofTotalHeight(A, B, FACE, UPPER, 40);
        WedgeShape cut = whole.withTensionCrack(Orientation.ofDegrees(80, 170), 12);
        assertTrue(cut.volume() < whole.volume());
        assertTrue(cut.crackArea() > 0);
        assertTrue(cut.areaA() < whole.areaA());
        WedgeJoint a = new WedgeJoint(A, 24e3, StrictMath.toRadians(30));
        WedgeJoint b = new WedgeJoint(B, 48e3, StrictMath.toRadians(20));
        WedgeLoads dry = WedgeLoads.of(cut, a, b, 25e3);
        assertTrue(
                WedgeSlide.of(dry.withWater(WedgeWater.full(cut, 9810))).factor()
                        < WedgeSlide.of(dry).factor());
        refused(
                "distance of the tension crack",
                () -> whole.withTensionCrack(Orientation.ofDegrees(80, 170), 1000));
    }

    @Test
    void theCrestHeightGivesTheSameShapeAsTheTotalHeight() {
        WedgeShape byCrest = WedgeShape.ofCrestHeight(A, B, FACE, UPPER, 30);
        WedgeShape byTotal = WedgeShape.ofTotalHeight(A, B, FACE, UPPER, byCrest.totalHeight());
        assertEquals(byTotal.volume(), byCrest.volume(), 1e-9 * byTotal.volume());
        assertTrue(byCrest.totalHeight() > 30);
    }

    @Property
    void theVolumeIsThatOfTheTetrahedron(@ForAll @DoubleRange(min = 1, max = 100) double height) {
        WedgeShape shape = WedgeShape.ofTotalHeight(A, B, FACE, UPPER, height);
        // Its corners: the outcrop in the face, the back end, and both crest points.
        double[] back =
                shape.corners(0).stream()
                        .filter(c -> Math.abs(c[2] - height) < 1e-6)
                        .findFirst()
                        .orElseThrow();
        double[] first = otherThan(shape, 0, back);
        double[] second = otherThan(shape, 1, back);
        Vector u = new Vector(back[0], back[1], back[2]);
        Vector v = new Vector(first[0], first[1], first[2]);
        Vector w = new Vector(second[0], second[1], second[2]);
        double expected = Math.abs(u.dot(v.cross(w))) / 6;
        assertEquals(expected, shape.volume(), 1e-9 * expected);
    }

    private static double[] otherThan(WedgeShape shape, int side, double[] back) {
        return shape.corners(side).stream()
                .filter(
                        c ->
                                Math.abs(c[0]) + Math.abs(c[1]) + Math.abs(c[2]) > 1e-6
                                        && Math.abs(c[2] - back[2]) > 1e-6)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void anAnchorUpTheLineRaisesSafetyByBothConventions() {
        WedgeLoads dry = loads(A, B, FACE, UPPER, 40);
        SpaceForce anchor = SpaceForce.of(20e6, dry.shape().trend() + Math.PI, 0.05);
        double bare = WedgeSlide.of(dry).factor();
        double active = WedgeSlide.of(dry.withAnchor(anchor, AnchorConvention.ACTIVE)).factor();
        double passive = WedgeSlide.of(dry.withAnchor(anchor, AnchorConvention.PASSIVE)).factor();
        assertTrue(active > passive && passive > bare);
    }

    @Test
    void kinematicsSayWhatCannotSlide() {
        Orientation face = Orientation.ofDegrees(65, 185);
        double friction = StrictMath.toRadians(35);
        double spread = StrictMath.toRadians(20);
        assertTrue(
                KinematicTest.planar(Orientation.ofDegrees(45, 190), face, friction, spread)
                        .possible());
        assertTrue(
                !KinematicTest.planar(Orientation.ofDegrees(45, 220), face, friction, spread)
                        .possible());
        assertTrue(
                !KinematicTest.planar(Orientation.ofDegrees(70, 185), face, friction, spread)
                        .possible());
        assertTrue(
                !KinematicTest.planar(Orientation.ofDegrees(30, 185), face, friction, spread)
                        .possible());
        assertTrue(!KinematicTest.wedge(A, B, face, friction).possible());
        assertTrue(KinematicTest.wedge(A, B, face, StrictMath.toRadians(25)).possible());
        assertTrue(
                KinematicTest.toppling(Orientation.ofDegrees(75, 5), face, friction, spread)
                        .possible());
        assertTrue(
                !KinematicTest.toppling(Orientation.ofDegrees(50, 5), face, friction, spread)
                        .possible());
    }

    @Test
    void badInputIsRefusedByName() {
        refused("parallel", () -> WedgeShape.ofTotalHeight(A, A, FACE, UPPER, 40));
        refused(
                "plunges",
                () -> WedgeShape.ofTotalHeight(A, B, Orientation.ofDegrees(25, 185), UPPER, 40));
        refused(
                "total height of the wedge is -1.0 m",
                () -> WedgeShape.ofTotalHeight(A, B, FACE, UPPER, -1));
        refused(
                "swapped",
                () ->
                        WedgeLoads.of(
                                WedgeShape.ofTotalHeight(A, B, FACE, UPPER, 40),
                                new WedgeJoint(B, 0, 0.5),
                                new WedgeJoint(A, 0, 0.5),
                                25e3));
        refused("dip is 190", () -> Orientation.ofDegrees(190, 0));
    }
}
