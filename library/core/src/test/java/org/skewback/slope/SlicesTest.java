package org.skewback.slope;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.skewback.slope.Refused.refused;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.skewback.numeric.NotConvergedException;
import org.skewback.quantity.Quantity;

/** Laws of the methods of slices and of the search. */
class SlicesTest {

    private static final double FRICTION = StrictMath.toRadians(20);

    private static double[] p(double x, double y) {
        return new double[] {x, y};
    }

    private static SlopeSection slope(double scale, double cohesion) {
        return SlopeSection.of(
                ProfileLine.through(
                        p(0, 12 * scale),
                        p(20 * scale, 12 * scale),
                        p(44 * scale, 0),
                        p(80 * scale, 0)),
                Soil.of("clay", 19e3, cohesion, FRICTION));
    }

    private static final SlipCircle CIRCLE = new SlipCircle(38, 22, 23);

    private static double factor(SlopeSection section, SliceMethod method) {
        return SliceAnalysis.of(section, CIRCLE, 60).factor(method).factor();
    }

    @Property
    void theMirrorImageHasTheSameFactor(@ForAll SliceMethod method) {
        SlopeSection section =
                slope(1, 12e3)
                        .withWaterTable(ProfileLine.through(p(0, 9), p(20, 8), p(44, 0), p(80, 0)))
                        .withEarthquake(0.05, 0.02)
                        .withSurcharge(new Surcharge(10, 18, 20e3))
                        .withForce(new SectionForce(22, 11, 30e3, 60e3))
                        .withAnchor(
                                new SectionAnchor(
                                        32, 6, 0.3, 80e3, 18, 5, AnchorConvention.ACTIVE));
        double plain = factor(section, method);
        double mirrored =
                SliceAnalysis.of(section.mirrored(), new SlipCircle(-38, 22, 23), 60)
                        .factor(method)
                        .factor();
        assertEquals(plain, mirrored, 1e-9);
    }

    @Property
    void sizeChangesNothingWhereCohesionGrowsWithIt(
            @ForAll SliceMethod method, @ForAll @DoubleRange(min = 0.2, max = 20) double scale) {
        double scaled =
                SliceAnalysis.of(
                                slope(scale, 12e3 * scale),
                                new SlipCircle(38 * scale, 22 * scale, 23 * scale),
                                60)
                        .factor(method)
                        .factor();
        assertEquals(factor(slope(1, 12e3), method), scaled, 1e-9);
    }

    @Property(tries = 200)
    void moreWaterNeverRaisesSafety(
            @ForAll SliceMethod method,
            @ForAll @DoubleRange(max = 12) double height,
            @ForAll @DoubleRange(max = 1) double part) {
        assertTrue(factor(wet(height), method) <= factor(wet(height * part), method) * (1 + 1e-9));
    }

    private static SlopeSection wet(double height) {
        return slope(1, 12e3)
                .withWaterTable(
                        ProfileLine.through(p(0, height), p(20, height), p(44, 0), p(80, 0)));
    }

    @Property
    void aHigherPorePressureRatioNeverRaisesSafety(
            @ForAll SliceMethod method, @ForAll @DoubleRange(max = 0.5) double ratio) {
        ProfileLine ground = slope(1, 0).ground();
        Soil soil = Soil.of("clay", 19e3, 12e3, FRICTION);
        assertTrue(
                factor(SlopeSection.of(ground, soil.withPoreRatio(ratio)), method)
                        <= factor(SlopeSection.of(ground, soil), method));
    }

    @Property
    void aLevelAnchorNeverLowersSafety(
            @ForAll SliceMethod method, @ForAll @DoubleRange(max = 150e3) double force) {
        SectionAnchor anchor = new SectionAnchor(34, 5, 0, force, 25, 5, AnchorConvention.ACTIVE);
        assertTrue(
                factor(slope(1, 12e3).withAnchor(anchor), method)
                        >= factor(slope(1, 12e3), method) * (1 - 1e-9));
    }

    @Test
    void aStraightSurfaceIsASlideOnAPlaneByEveryMethod() {
        // A face of 45° with a plane of 30° through its toe, water-free, shaken.
        double run = 10;
        double end = 10 / StrictMath.tan(StrictMath.toRadians(30));
        SlopeSection section =
                SlopeSection.of(
                                ProfileLine.through(p(-10, 0), p(0, 0), p(run, 10), p(60, 10)),
                                Soil.of("rock", 25e3, 8e3, StrictMath.toRadians(28)))
                        .withEarthquake(0.1, 0.05);
        SlipPolygon plane = SlipPolygon.through(p(0, 0), p(end, 10));
        Quantity expected =
                PlaneSlide.of(
                                PlaneBlock.ofCrackDepth(
                                        Quantity.of(10, "m"),
                                        Quantity.of(45, "°"),
                                        Quantity.of(30, "°"),
                                        Quantity.of(0, "m"),
                                        Quantity.of(25, "kN/m³")),
                                Quantity.of(8, "kPa"),
                                Quantity.of(28, "°"))
                        .withEarthquake(Quantity.of(0.1), Quantity.of(0.05))
                        .factor();
        SliceAnalysis analysis = SliceAnalysis.of(section, plane, 40);
        for (SliceMethod method :
                List.of(SliceMethod.JANBU, SliceMethod.SPENCER, SliceMethod.MORGENSTERN_PRICE)) {
            // The seismic coefficient upward acts on the level one too in the closed form.
            assertEquals(expected.si(), analysis.factor(method).factor(), 2e-9, method.toString());
        }
    }

    @Test
    void theForcesFoundBySpencerBalance() {
        SliceResult result =
                SliceAnalysis.of(slope(1, 12e3), CIRCLE, 60).factor(SliceMethod.SPENCER);
        double level = 0;
        double upright = 0;
        for (SliceResult.Slice slice : result.slices()) {
            double sine = StrictMath.sin(slice.baseAngle());
            double cosine = StrictMath.cos(slice.baseAngle());
            level += slice.effectiveNormal() * sine - slice.mobilised() * cosine;
            upright += slice.effectiveNormal() * cosine + slice.mobilised() * sine - slice.weight();
        }
        double weight = result.slices().stream().mapToDouble(SliceResult.Slice::weight).sum();
        assertEquals(0, level, 1e-8 * weight);
        assertEquals(0, upright, 1e-8 * weight);
        assertEquals(0, result.slices().get(result.slices().size() - 1).between(), 1e-6 * weight);
    }

    @Test
    void anAnchorHoldsByTheShareOfItsBondBehindTheSurface() {
        SlopeSection bare = slope(1, 12e3);
        double without = factor(bare, SliceMethod.BISHOP);
        double whole = factor(bare.withAnchor(anchor(30, 10)), SliceMethod.BISHOP);
        double partly = factor(bare.withAnchor(anchor(1, 30)), SliceMethod.BISHOP);
        double none = factor(bare.withAnchor(anchor(1, 1)), SliceMethod.BISHOP);
        assertTrue(whole > partly && partly > without);
        assertEquals(without, none, 1e-12);
    }

    private static SectionAnchor anchor(double free, double bond) {
        return new SectionAnchor(34, 5, 0.2, 100e3, free, bond, AnchorConvention.ACTIVE);
    }

    @Test
    void aLayerLikeItsNeighbourChangesNothing() {
        Soil soil = Soil.of("clay", 19e3, 12e3, FRICTION);
        SlopeSection two =
                SlopeSection.layered(
                        slope(1, 0).ground(),
                        List.of(
                                new SlopeLayer(soil, ProfileLine.through(p(0, 6), p(80, -4))),
                                new SlopeLayer(soil, ProfileLine.through(p(0, -9), p(80, -9)))));
        for (SliceMethod method : SliceMethod.values()) {
            assertEquals(factor(slope(1, 12e3), method), factor(two, method), 1e-9);
        }
    }

    @Test
    void theSearchDependsNeitherOnItsGridNorOnThreads() {
        SlopeSection section = slope(1, 12e3);
        SearchWindow window = SearchWindow.of(5, 25, 35, 60);
        CriticalCircle first =
                CriticalCircle.search(section, window.tried(10, 10, 5), SliceMethod.BISHOP);
        for (int k = 2; k <= 8; k *= 2) {
            CriticalCircle finer =
                    CriticalCircle.search(
                            section, window.tried(10 * k, 10 * k, 5 * k), SliceMethod.BISHOP);
            assertEquals(first.factor(), finer.factor(), 1e-3 * first.factor());
        }
        CriticalCircle alone = CriticalCircle.search(section, window, SliceMethod.SPENCER);
        assertEquals(
                alone, CriticalCircle.search(section, window, SliceMethod.SPENCER, 4, () -> false));
        assertEquals(
                alone.factor(), alone.analysis(section).factor(SliceMethod.SPENCER).factor(), 1e-8);
        CriticalPolygon free = CriticalPolygon.search(section, alone, SliceMethod.SPENCER, 10, 50);
        assertTrue(free.factor() < alone.factor() * 1.005);
        CriticalPolygon fine = free;
        for (int corners = 19; corners <= 73; corners = 2 * corners - 1) {
            fine = fine.refined(section, 80);
        }
        CriticalPolygon finest = fine;
        for (int corners = 145; corners <= 577; corners = 2 * corners - 1) {
            finest = finest.refined(section, corners);
        }
        assertEquals(fine.factor(), finest.factor(), 1e-3 * fine.factor());
    }

    /** Two layers that dip, a water table, a crack, an earthquake and an anchor. */
    private static SlopeSection mixed() {
        return SlopeSection.layered(
                        slope(1, 0).ground(),
                        List.of(
                                new SlopeLayer(
                                        Soil.of("gravel", 18e3, 4e3, StrictMath.toRadians(30)),
                                        ProfileLine.through(p(0, 7), p(44, -2), p(80, -3))),
                                new SlopeLayer(
                                        Soil.of("clay", 20e3, 14e3, StrictMath.toRadians(16)),
                                        slope(1, 0).ground())))
                .withWaterTable(ProfileLine.through(p(0, 8), p(20, 7), p(44, 0), p(80, 0)))
                .withEarthquake(0.05, 0.02)
                .withTensionCrack(1.5, 1)
                .withAnchor(new SectionAnchor(32, 6, 0.2, 60e3, 14, 6, AnchorConvention.ACTIVE));
    }

    @Test
    void threeDoublingsOfTheGridMoveTheLeastFactorByNoThousandthInMixedGround() {
        SearchWindow window = SearchWindow.of(2, 22, 34, 60).sliced(30);
        for (SliceMethod method :
                List.of(SliceMethod.BISHOP, SliceMethod.JANBU, SliceMethod.MORGENSTERN_PRICE)) {
            double first = CriticalCircle.search(mixed(), window.tried(8, 8, 6), method).factor();
            double last = CriticalCircle.search(mixed(), window.tried(64, 64, 48), method).factor();
            assertEquals(first, last, 1e-3 * first, method.name());
        }
    }

    @Property(tries = 12)
    void anyNumberOfThreadsFindsTheSameCircle(
            @ForAll SliceMethod method, @ForAll @IntRange(min = 2, max = 9) int threads) {
        SearchWindow window = SearchWindow.of(2, 22, 34, 60).tried(12, 12, 6).sliced(20);
        assertEquals(
                CriticalCircle.search(mixed(), window, method),
                CriticalCircle.search(mixed(), window, method, threads, () -> false));
    }

    @Test
    void aFinerSurfaceNeedsAsManySlices() {
        SlopeSection section = slope(1, 12e3);
        CriticalPolygon free =
                new CriticalPolygon(
                        SlipPolygon.through(p(0, 0), p(5, 0.2), p(12, 4)), SliceMethod.JANBU, 1);
        refused("number of slices is 4", () -> free.refined(section, 4));
    }

    @Test
    void aSearchThatLeavesOutThePulledCirclesThrows() {
        double run = 10 / StrictMath.tan(StrictMath.toRadians(60));
        SlopeSection steep =
                SlopeSection.of(
                        ProfileLine.through(p(-40, 0), p(0, 0), p(run, 10), p(run + 60, 10)),
                        Soil.of("clay", 20e3, 27.5e3, StrictMath.toRadians(10)));
        SearchWindow window = SearchWindow.of(-5, 1.5, 4.5, 30).tried(20, 20, 10);
        NotConvergedException thrown =
                assertThrows(
                        NotConvergedException.class,
                        () -> CriticalCircle.search(steep, window, SliceMethod.SPENCER));
        assertTrue(thrown.getMessage().contains("tension crack"), thrown.getMessage());
    }

    @Test
    void theAnchorForceFoundGivesTheFactorWanted() {
        SlopeSection section =
                slope(1, 6e3)
                        .withAnchor(
                                new SectionAnchor(
                                        40, 2, 0.1, 50e3, 30, 6, AnchorConvention.ACTIVE));
        SearchWindow window = SearchWindow.of(5, 25, 35, 60).tried(15, 15, 8);
        AnchorDemand demand = AnchorDemand.of(section, window, SliceMethod.BISHOP, 1.15);
        assertTrue(demand.multiplier() > 0);
        assertEquals(1.15, demand.critical().factor(), 1e-5);
        assertEquals(1, demand.reaches().size());
        refused(
                "no force of these anchors helps",
                () ->
                        AnchorDemand.of(
                                slope(1, 6e3)
                                        .withAnchor(
                                                new SectionAnchor(
                                                        30,
                                                        7,
                                                        0.3,
                                                        50e3,
                                                        1,
                                                        1,
                                                        AnchorConvention.ACTIVE)),
                                window,
                                SliceMethod.BISHOP,
                                1.8));
    }

    @Test
    void theYieldCoefficientGivesAFactorOfOne() {
        double yield = YieldCoefficient.of(slope(1, 12e3), CIRCLE, SliceMethod.BISHOP, 60);
        assertEquals(1, factor(slope(1, 12e3).withEarthquake(yield, 0), SliceMethod.BISHOP), 1e-8);
    }

    @Test
    void partialFactorsDivideTheStrength() {
        double plain = factor(slope(1, 12e3), SliceMethod.BISHOP);
        double design =
                factor(slope(1, 12e3).with(PartialFactors.onStrength()), SliceMethod.BISHOP);
        assertEquals(plain / 1.25, design, 1e-9);
    }

    @Test
    void badInputIsRefusedByName() {
        SlopeSection section = slope(1, 12e3);
        refused("x of point 2 is 0.0 m", () -> ProfileLine.through(p(0, 0), p(0, 1)));
        refused(
                "bottom of layer 2, b is at 7.0 m",
                () ->
                        SlopeSection.layered(
                                section.ground(),
                                List.of(
                                        new SlopeLayer(
                                                Soil.of("a", 1, 1, 0),
                                                ProfileLine.through(p(0, 6), p(80, 6))),
                                        new SlopeLayer(
                                                Soil.of("b", 1, 1, 0),
                                                ProfileLine.through(p(0, 5), p(80, 7))),
                                        new SlopeLayer(
                                                Soil.of("c", 1, 1, 0),
                                                ProfileLine.through(p(0, 0), p(80, 0))))));
        refused(
                "water table is at 13.0 m",
                () -> section.withWaterTable(ProfileLine.through(p(0, 13), p(80, 0))));
        refused("unit weight of clay", () -> Soil.of("clay", -1, 0, 0));
        refused(
                "cuts no piece off",
                () -> SliceAnalysis.of(section, new SlipCircle(40, 100, 5), 50));
        refused(
                "rises above the ground",
                () ->
                        SliceAnalysis.of(
                                section, SlipPolygon.through(p(10, 12), p(30, 11), p(44, 0)), 50));
        refused(
                "method is BISHOP",
                () ->
                        SliceAnalysis.of(
                                        section,
                                        SlipPolygon.through(p(10, 12), p(30, 2), p(44, 0)),
                                        50)
                                .factor(SliceMethod.BISHOP));
        refused(
                "search window",
                () ->
                        CriticalCircle.search(
                                section, SearchWindow.of(-5, 20, 30, 50), SliceMethod.BISHOP));
        refused("number of slices is 2", () -> SliceAnalysis.of(section, CIRCLE, 2));
    }
}
