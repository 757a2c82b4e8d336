package org.skewback.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Force polygon and chain: the statics can be measured in the drawing. */
class ArchFiguresTest {

    /**
     * A uniform load w on a three-hinged parabola of span L and rise f thrusts with w L² / 8 f; the
     * rays of its force polygon are then as steep as the chords of the parabola (statics of the
     * funicular polygon, any textbook; common practice, no source).
     */
    @Test
    void raysAreParallelToTheFunicular() throws Exception {
        double panel = 24;
        int panels = 14;
        double load = 100 * panel;
        double[] loads = new double[panels - 1];
        java.util.Arrays.fill(loads, load);
        double thrust = 100 * Demo.SPAN * Demo.SPAN / (8 * Demo.RISE);
        double reaction = load * (panels - 1) / 2;
        Svg svg = new Svg(ForcePolygon.of("Polygon", loads, reaction, thrust).svg());
        List<double[]> ray = svg.stroked(LineStyle.RESULT);
        double slope = (ray.get(0)[1] - ray.get(1)[1]) / (ray.get(1)[0] - ray.get(0)[0]);
        double chord = Demo.parabola(panel) / panel;
        assertEquals(chord, slope, 2e-4);
    }

    @Test
    void archMirrorsChain() throws Exception {
        Svg svg = new Svg(Demo.chain().figure().svg());
        List<double[]> arch = svg.stroked(LineStyle.CUT);
        List<double[]> chain = svg.stroked(LineStyle.SECOND);
        assertEquals(15, arch.size());
        double line = arch.get(0)[1];
        for (int i = 0; i < arch.size(); i++) {
            assertEquals(arch.get(i)[0], chain.get(i)[0], 0.02);
            assertEquals(line - arch.get(i)[1], chain.get(i)[1] - line, 0.03);
        }
    }

    @Test
    void everyLoadIsWrittenOnItsArrow() throws Exception {
        List<String> texts = new Svg(Demo.chain().figure().svg()).texts();
        assertEquals(2, texts.stream().filter("6116"::equals).count());
        assertTrue(texts.contains("4100"));
        assertTrue(texts.contains("loads in kN; the chain carries the same loads"));
    }
}
