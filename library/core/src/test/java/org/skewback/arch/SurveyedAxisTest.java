package org.skewback.arch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.skewback.arch.Refused.assertRefused;

import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.skewback.data.CsvTable;
import org.skewback.form.Parabola;

class SurveyedAxisTest {

    private static final Parabola TRUE = new Parabola(336, 72);

    /** Through points of a parabola the axis is that parabola, but for its straight ends. */
    @Property(tries = 30)
    void pointsOfAParabolaGiveTheParabola(@ForAll @IntRange(min = 40, max = 296) int x) {
        SurveyedAxis axis = surveyed();

        assertEquals(TRUE.y(x), axis.y(x), 0.01);
        assertEquals(TRUE.slope(x), axis.slope(x), 0.005);
        assertEquals(
                TRUE.curvature(x).orElseThrow(),
                axis.curvature(x).orElseThrow(),
                0.05 * TRUE.curvature(x).orElseThrow());
    }

    /** It passes through every point, is as long as the curve, and breaks where the points are. */
    @Test
    void itPassesThroughItsPoints() {
        SurveyedAxis axis = surveyed();

        assertEquals(TRUE.y(24), axis.y(24), 1e-12);
        assertEquals(336, axis.span());
        assertEquals(0, axis.rightLevel(), 1e-12);
        assertEquals(TRUE.arcLength(), axis.arcLength(), 0.01);
        assertEquals(27, axis.breaks().size());
    }

    /** Levels of a survey count from the left springing, on whatever datum they are. */
    @Test
    void levelsCountFromTheLeftSpringing() {
        SurveyedAxis axis =
                SurveyedAxis.of(
                        CsvTable.parse(
                                "survey", "x [m],z [m]\n100,764\n268,836\n352,818\n436,764\n"),
                        "x",
                        "z");

        assertEquals(336, axis.span());
        assertEquals(72, axis.y(168), 1e-9);
    }

    @Test
    void badInputIsNamed() {
        assertRefused(
                () -> SurveyedAxis.through(new double[] {0, 1}, new double[] {0, 1}),
                "number of surveyed points is 2");
        assertRefused(
                () -> SurveyedAxis.through(new double[] {0, 2, 1}, new double[] {0, 1, 0}),
                "position of a surveyed point is 1.0 m",
                "more than 2.0 m");
        assertRefused(
                () -> SurveyedAxis.through(new double[] {1, 2, 3}, new double[] {0, 1, 0}),
                "position of the first surveyed point is 1.0 m");
        assertRefused(() -> surveyed().y(340), "x is 340.0 m");
    }

    private static SurveyedAxis surveyed() {
        double[] x = IntStream.rangeClosed(0, 28).mapToDouble(i -> 12 * i).toArray();
        return SurveyedAxis.through(
                x, IntStream.range(0, 29).mapToDouble(i -> TRUE.y(x[i])).toArray());
    }
}
