package org.skewback.slope;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.skewback.slope.Refused.refused;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.skewback.quantity.Quantity;

/** Laws of the slide on a plane. */
class PlaneSlideTest {

    private static final Quantity WATER = Quantity.of(9.81, "kN/m³");

    private static Quantity m(double value) {
        return Quantity.of(value, "m");
    }

    private static Quantity degrees(double value) {
        return Quantity.of(value, "°");
    }

    private static PlaneBlock block(double height, double weight) {
        return PlaneBlock.crackBehindCrest(
                m(height),
                degrees(60),
                degrees(35),
                degrees(0),
                m(height / 3),
                Quantity.of(weight, "kN/m³"));
    }

    private static PlaneSlide slide(double cohesion, double friction) {
        return PlaneSlide.of(block(12, 26), Quantity.of(cohesion, "kPa"), degrees(friction));
    }

    private static double factor(PlaneSlide slide) {
        return slide.factor().si();
    }

    @Property
    void moreWaterNeverRaisesSafety(
            @ForAll @DoubleRange(min = 0, max = 100) double cohesion,
            @ForAll @DoubleRange(min = 1, max = 60) double friction,
            @ForAll @DoubleRange(max = 1) double low,
            @ForAll @DoubleRange(max = 1) double high) {
        PlaneBlock block = block(12, 26);
        double depth = block.crackDepth().in("m");
        PlaneSlide less =
                slide(cohesion, friction)
                        .withWater(PlaneWater.inCrack(block, m(depth * low * high), WATER));
        PlaneSlide more =
                slide(cohesion, friction)
                        .withWater(PlaneWater.inCrack(block, m(depth * high), WATER));
        assertTrue(factor(more) <= factor(less) * (1 + 1e-12));
    }

    @Property
    void aLevelAnchorForceNeverLowersSafetyAndTheActiveFormNeverAsksForMore(
            @ForAll @DoubleRange(min = 0, max = 100) double cohesion,
            @ForAll @DoubleRange(min = 1, max = 60) double friction,
            @ForAll @DoubleRange(max = 500) double force) {
        PlaneSlide bare = slide(cohesion, friction);
        for (AnchorConvention convention : AnchorConvention.values()) {
            PlaneSlide held = bare.withAnchor(Quantity.of(force, "kN/m"), degrees(0), convention);
            assertTrue(factor(held) >= factor(bare) * (1 - 1e-12));
        }
        Quantity wanted = Quantity.of(factor(bare) + 0.5);
        if (wanted.si() >= 1) {
            assertTrue(
                    bare.anchorForce(wanted, degrees(0), AnchorConvention.ACTIVE).si()
                            <= bare.anchorForce(wanted, degrees(0), AnchorConvention.PASSIVE).si()
                                    * (1 + 1e-12));
        }
    }

    @Property
    void aSteepAnchorLowersTheSafetyOfACohesiveSlide(
            @ForAll @DoubleRange(min = 1, max = 300) double force) {
        // Beyond 90° − ψ_p an active anchor has a part down the plane.
        PlaneSlide held =
                slide(50, 10)
                        .withAnchor(
                                Quantity.of(force, "kN/m"), degrees(80), AnchorConvention.ACTIVE);
        assertTrue(factor(held) < factor(slide(50, 10)));
    }

    @Property
    void theAnchorForceFoundGivesTheFactorWanted(
            @ForAll @DoubleRange(min = 1.3, max = 2) double wanted,
            @ForAll @DoubleRange(min = -10, max = 30) double plunge,
            @ForAll AnchorConvention convention) {
        PlaneSlide bare = slide(10, 35);
        Quantity force = bare.anchorForce(Quantity.of(wanted), degrees(plunge), convention);
        assertEquals(
                wanted,
                factor(bare.withAnchor(force, degrees(plunge), convention)),
                1e-12 * wanted);
    }

    @Property
    void theFactorDependsOnCohesionOverWeightAndHeight(
            @ForAll @DoubleRange(min = 0.1, max = 10) double scale) {
        double plain = factor(slide(25, 37));
        PlaneSlide scaled =
                PlaneSlide.of(block(12 * scale, 26), Quantity.of(25 * scale, "kPa"), degrees(37));
        assertEquals(plain, factor(scaled), 1e-12 * plain);
    }

    @Test
    void theYieldCoefficientGivesAFactorOfOne() {
        PlaneSlide slide = slide(25, 37);
        assertEquals(1, factor(slide.withEarthquake(slide.yieldCoefficient())), 1e-13);
    }

    @Test
    void theBestPlungeAsksForTheLeastForce() {
        PlaneSlide slide = slide(0, 30);
        Quantity wanted = Quantity.of(1.5);
        double best = slide.bestPlunge(wanted).in("°");
        double least = slide.anchorForce(wanted, degrees(best), AnchorConvention.ACTIVE).si();
        for (double off : new double[] {-2, 2}) {
            assertTrue(
                    slide.anchorForce(wanted, degrees(best + off), AnchorConvention.ACTIVE).si()
                            > least);
        }
    }

    @Test
    void theCriticalCrackIsTheWorst() {
        Quantity height = m(12);
        double depth = PlaneBlock.criticalCrackDepth(height, degrees(60), degrees(35)).in("m");
        double distance =
                PlaneBlock.criticalCrackDistance(height, degrees(60), degrees(35)).in("m");
        assertEquals(
                depth,
                PlaneBlock.crackBehindCrest(
                                height,
                                degrees(60),
                                degrees(35),
                                degrees(0),
                                m(distance),
                                Quantity.of(26, "kN/m³"))
                        .crackDepth()
                        .in("m"),
                1e-12);
        double least = ofDepth(depth);
        assertTrue(ofDepth(depth - 0.1) > least);
        assertTrue(ofDepth(depth + 0.1) > least);
    }

    private static double ofDepth(double depth) {
        return factor(
                PlaneSlide.of(
                        PlaneBlock.ofCrackDepth(
                                m(12),
                                degrees(60),
                                degrees(35),
                                m(depth),
                                Quantity.of(26, "kN/m³")),
                        Quantity.of(25, "kPa"),
                        degrees(37)));
    }

    @Test
    void aCrackAtTheCrestIsOneOfBothForms() {
        PlaneBlock behind =
                PlaneBlock.crackBehindCrest(
                        m(12),
                        degrees(60),
                        degrees(35),
                        degrees(0),
                        m(0),
                        Quantity.of(26, "kN/m³"));
        PlaneBlock inFace =
                PlaneBlock.crackInFace(
                        m(12), degrees(60), degrees(35), m(0), Quantity.of(26, "kN/m³"));
        assertEquals(behind.crackDepth().si(), inFace.crackDepth().si(), 1e-12);
        assertEquals(behind.area().si(), inFace.area().si(), 1e-12);
        assertEquals(behind.weight().si(), inFace.weight().si(), 1e-9);
    }

    @Test
    void badInputIsRefusedByName() {
        PlaneBlock block = block(12, 26);
        refused("height of the face is -12.0 m", () -> block(-12, 26));
        refused("unit weight of the rock", () -> block(12, 0));
        refused(
                "dip of the face",
                () -> PlaneBlock.criticalCrackDepth(m(12), degrees(30), degrees(35)));
        refused("depth of water", () -> PlaneWater.inCrack(block, m(5), WATER));
        refused("cohesion is -1", () -> slide(-1, 30));
        refused("friction angle is 90", () -> slide(1, 90));
        refused(
                "amplification by topography is 0.9",
                () -> SeismicCoefficient.level(Quantity.of(0.3), Quantity.of(1), Quantity.of(0.9)));
        refused(
                "height of the slope is 40.0 m",
                () -> SeismicCoefficient.heightFactor(m(40), Quantity.of(0.45), Quantity.of(0.3)));
        refused(
                "driving force",
                () ->
                        slide(0, 30)
                                .withAnchor(
                                        Quantity.of(2000, "kN/m"),
                                        degrees(0),
                                        AnchorConvention.ACTIVE)
                                .factor());
        refused(
                "plunge of the anchors",
                () ->
                        slide(0, 10)
                                .anchorForce(
                                        Quantity.of(1.5), degrees(-140), AnchorConvention.ACTIVE));
    }
}
