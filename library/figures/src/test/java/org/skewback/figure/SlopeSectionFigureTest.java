package org.skewback.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.skewback.figure.FigureTest.refused;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.skewback.slope.SliceAnalysis;
import org.skewback.slope.SliceMethod;
import org.skewback.slope.SliceResult;

/** Sections of slopes: one scale, anchors as long as they are, slices where they were cut. */
class SlopeSectionFigureTest {

    /** Bonds are 7 m long on the page, by the scale of the ground line. */
    @Test
    void anchorsAreToScale() throws Exception {
        Svg svg = new Svg(GroundDemo.slope().figure().svg());
        List<double[]> ground = svg.stroked(LineStyle.CUT);
        double scale = (ground.get(ground.size() - 1)[0] - ground.get(0)[0]) / 130;
        List<Double> bonds =
                svg.all("path").stream()
                        .filter(path -> path.getAttribute("stroke-width").equals("2.4"))
                        .map(path -> Svg.points(path.getAttribute("d")))
                        .map(
                                p ->
                                        StrictMath.hypot(
                                                p.get(1)[0] - p.get(0)[0],
                                                p.get(1)[1] - p.get(0)[1]))
                        .toList();
        assertEquals(4, bonds.size());
        bonds.forEach(bond -> assertEquals(7 * scale, bond, 0.05));
    }

    @Test
    void everySliceIsDrawnFromItsBaseToTheGround() {
        SliceResult result =
                SliceAnalysis.of(GroundDemo.section(), GroundDemo.circle(), 24)
                        .factor(SliceMethod.BISHOP);
        Mark.Stroke slices =
                (Mark.Stroke)
                        GroundDemo.slope().drawing().picture().marks().stream()
                                .filter(
                                        m ->
                                                m instanceof Mark.Stroke s
                                                        && s.pen().equals(Pen.full(0.4, Ink.GREY)))
                                .findFirst()
                                .orElseThrow();
        int inside = slices.lines().size();
        assertTrue(inside >= result.slices().size() - 1 && inside <= result.slices().size());
        slices.lines().forEach(line -> assertEquals(line[0], line[2], 1e-9));
    }

    @Test
    void jointsDipAsTheyShould() {
        Mark.Stroke traces =
                (Mark.Stroke)
                        GroundDemo.slope().drawing().picture().marks().stream()
                                .filter(
                                        m ->
                                                m instanceof Mark.Stroke s
                                                        && s.pen()
                                                                .equals(Pen.full(0.45, Ink.HATCH)))
                                .findFirst()
                                .orElseThrow();
        assertTrue(traces.lines().size() > 50);
        for (double[] line : traces.lines()) {
            double dip =
                    StrictMath.toDegrees(StrictMath.atan2(line[3] - line[1], line[2] - line[0]));
            assertEquals(33, dip, 1e-6);
        }
    }

    @Test
    void loadsAndNamesAreThere() throws Exception {
        List<String> texts = new Svg(GroundDemo.slope().figure().svg()).texts();
        assertTrue(
                texts.containsAll(
                        List.of(
                                "120 kPa",
                                "2081 kN/m",
                                "free length",
                                "bond",
                                "water table",
                                "natural ground",
                                "slip circle",
                                "plane of set J1",
                                "weathered schist")),
                texts.toString());
    }

    @Test
    void badInputIsNamed() {
        SlopeSectionFigure drawing = SlopeSectionFigure.of("Bad", GroundDemo.section());
        refused(() -> drawing.joints(120, 1), "apparent dip in degrees is 120.0");
        refused(() -> drawing.joints(30, 0), "spacing of the traces is 0.0");
        refused(() -> drawing.range(-80, 0, 0), "left end in m is -80.0");
        refused(() -> drawing.blocks(-1), "side of a block is -1.0");
        refused(
                () -> drawing.plane("p", Point.at(0, 0), Point.at(-9, 6), 10, 5),
                "depth of water in the crack is 5.0");
        refused(drawing::figure, "no description");
    }
}
