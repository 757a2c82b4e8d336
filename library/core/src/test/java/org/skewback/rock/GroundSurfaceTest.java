package org.skewback.rock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.skewback.rock.Refused.refused;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.skewback.data.CsvTable;

/** Surfaces of triangles are Delaunay's, cover their outline, and hold the volumes of closed forms. */
class GroundSurfaceTest {

    private static SurveyPoint p(double x, double y, double level) {
        return new SurveyPoint(x, y, level);
    }

    /** Points on a coarse grid, so that many stand on one line or one circle. */
    private static List<SurveyPoint> scattered(long seed, int count) {
        Random random = new Random(seed);
        List<List<Integer>> places = new ArrayList<>();
        for (int x = 0; x < 9; x++) {
            for (int y = 0; y < 9; y++) {
                places.add(List.of(x, y));
            }
        }
        Collections.shuffle(places, random);
        List<SurveyPoint> points = new ArrayList<>();
        for (List<Integer> place : places.subList(0, count)) {
            // A tenth is no binary fraction: what stood on one line now nearly does.
            points.add(p(0.1 * place.get(0), 0.1 * place.get(1), random.nextDouble()));
        }
        points.add(p(-1, -1, 0));
        points.add(p(2, -1, 0));
        points.add(p(-1, 2, 0));
        points.add(p(2, 2, 0));
        return points;
    }

    @Property(tries = 200)
    void noCircleThroughATriangleHoldsAnotherPoint(
            @ForAll long seed, @ForAll @IntRange(max = 60) int count) {
        List<SurveyPoint> points = scattered(seed, count);
        GroundSurface surface = GroundSurface.through(points);
        assertEquals(9, surface.planArea(), 1e-12);
        // Euler's formula for an outline of the four outer corners alone.
        assertEquals(2 * points.size() - 2 - 4, surface.triangles().size());
        for (GroundSurface.Triangle t : surface.triangles()) {
            assertTrue(t.planArea() > 0);
            for (SurveyPoint point : points) {
                assertTrue(PlanePredicates.inCircle(t.first(), t.second(), t.third(), point) <= 0);
            }
        }
    }

    @Property(tries = 100)
    void theSurfaceDoesNotDependOnTheOrderOfPointsAndGoesThroughThem(@ForAll long seed) {
        List<SurveyPoint> points = scattered(seed, 25);
        GroundSurface surface = GroundSurface.through(points);
        Collections.shuffle(points, new Random(seed + 1));
        assertEquals(surface.triangles(), GroundSurface.through(points).triangles());
        for (SurveyPoint point : points) {
            assertEquals(point.level(), surface.level(point.x(), point.y()), 1e-12);
        }
    }

    @Property(tries = 100)
    void cutLessFillIsTheDifferenceOfTheVolumesOverOneBase(@ForAll long seed) {
        GroundSurface upper = GroundSurface.through(scattered(seed, 20));
        GroundSurface lower = GroundSurface.through(scattered(seed + 1, 30));
        GroundSurface.Volumes there = upper.volumesDownTo(lower);
        GroundSurface.Volumes back = lower.volumesDownTo(upper);
        assertEquals(9, there.planArea(), 1e-9);
        assertEquals(there.cut(), back.fill(), 1e-9);
        assertEquals(there.fill(), back.cut(), 1e-9);
        assertEquals(prisms(upper) - prisms(lower), there.cut() - there.fill(), 1e-9);
    }

    private static double prisms(GroundSurface surface) {
        return surface.triangles().stream()
                .mapToDouble(
                        t ->
                                t.planArea()
                                        * (t.first().level()
                                                + t.second().level()
                                                + t.third().level())
                                        / 3)
                .sum();
    }

    @Test
    void aSlopingPlaneThroughLevelGroundCutsAndFillsByHalves() {
        GroundSurface ground =
                GroundSurface.through(List.of(p(0, 0, 5), p(8, 0, 5), p(0, 6, 5), p(8, 6, 5)));
        GroundSurface plane =
                GroundSurface.through(
                        List.of(p(0, 0, 1), p(8, 0, 9), p(0, 6, 1), p(8, 6, 9), p(3, 2, 4)));
        GroundSurface.Volumes volumes = ground.volumesDownTo(plane);
        // Two wedges, 4 m long, 4 m high, 6 m wide.
        assertEquals(48, volumes.cut(), 1e-12);
        assertEquals(48, volumes.fill(), 1e-12);
    }

    @Test
    void aBayOfTheOutlineIsLeftOutWithItsLongSides() {
        List<SurveyPoint> hoof = new ArrayList<>();
        for (int i = 0; i <= 10; i++) {
            hoof.add(p(i, 0, 0));
            hoof.add(p(i, 1, 0));
        }
        for (int j = 2; j <= 10; j++) {
            hoof.add(p(0, j, 0));
            hoof.add(p(1, j, 0));
            hoof.add(p(9, j, 0));
            hoof.add(p(10, j, 0));
        }
        GroundSurface surface = GroundSurface.through(hoof);
        assertEquals(100, surface.planArea(), 1e-12);
        // In both inner corners a triangle of half a square is as short as those of the hoof.
        assertEquals(28 + 2 * 0.5, surface.trimmed(1.5).planArea(), 1e-12);
    }

    @Test
    void badPointsAreRefused() {
        refused(
                "number of points of a surface is 2",
                () -> GroundSurface.through(List.of(p(0, 0, 0), p(1, 0, 0))));
        refused(
                "Two points stand at x = 1.0 m, y = 0.0 m, at levels 3.0 m and 4.0 m",
                () ->
                        GroundSurface.through(
                                List.of(p(0, 0, 0), p(1, 0, 3), p(0, 1, 0), p(1, 0, 4))));
        refused(
                "All 4 points of the surface stand on one line",
                () ->
                        GroundSurface.through(
                                List.of(p(0, 0, 0), p(1, 1, 3), p(2, 2, 0), p(5, 5, 4))));
        refused("level of the point is NaN", () -> p(0, 0, Double.NaN));
        GroundSurface small = GroundSurface.through(List.of(p(0, 0, 0), p(1, 0, 0), p(0, 1, 0)));
        GroundSurface far = GroundSurface.through(List.of(p(9, 0, 0), p(10, 0, 0), p(9, 1, 0)));
        refused("cover no ground in common", () -> small.volumesDownTo(far));
        refused("within the outline of the surface", () -> small.level(0.9, 0.9));
        refused("longest side of a triangle is 0.5 m", () -> small.trimmed(0.5));
    }

    @Test
    void aTableOfPointsIsReadOrRefusedByRow() {
        String good = "x [m],y [m],level [m]\n0,0,700\n10,0,704\n0,10,708\n10,10,713\n";
        assertEquals(2, SurveyTable.surface(CsvTable.parse("points", good)).triangles().size());
        refused(
                "points, line 4: column x is \"10\"; allowed is another place in plan than that in"
                        + " line 3",
                () ->
                        SurveyTable.surface(
                                CsvTable.parse(
                                        "points", good.replace("0,10,708", "10,0.0004,708"))));
        refused(
                "points: All 3 points of the surface stand on one line",
                () ->
                        SurveyTable.surface(
                                CsvTable.parse(
                                        "points", "x [m],y [m],level [m]\n0,0,1\n1,1,2\n2,2,4\n")));
    }
}
