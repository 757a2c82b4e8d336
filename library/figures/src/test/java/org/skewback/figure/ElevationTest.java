package org.skewback.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.skewback.figure.FigureTest.refused;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Elevations and sections: true to scale, dimensions that say what was measured, clear errors. */
class ElevationTest {

    @Test
    void oneScaleInBothDirections() throws Exception {
        Svg svg = new Svg(Demo.arch().figure().svg());
        List<double[]> axis = svg.stroked(LineStyle.CUT);
        double[] left = axis.get(0);
        double[] crown = axis.get(28);
        double[] right = axis.get(56);
        double across = (right[0] - left[0]) / Demo.SPAN;
        double up = (left[1] - crown[1]) / Demo.RISE;
        // Output is rounded to a hundredth of a point.
        assertEquals(across, up, 0.02 / Demo.RISE);
    }

    @Test
    void drawingFillsTheWidthItIsGiven() {
        Picture picture = Demo.arch().drawing().picture();
        double[] b = Geometry.bounds(picture.marks());
        assertTrue(b[2] - b[0] > 0.99 * picture.width());
    }

    @Test
    void tallDrawingKeepsToItsHeight() {
        Picture picture =
                Elevation.titled("Mast")
                        .describedBy("A mast.")
                        .size(165, 100)
                        .bar(Point.at(0, 0), Point.at(0, 36), 1)
                        .verticalDimension("", Point.at(0, 0), Point.at(0, 36), 4)
                        .scaleBar()
                        .picture();
        assertTrue(picture.height() <= 100 * Board.MILLIMETRE);
        assertTrue(picture.height() > 99 * Board.MILLIMETRE);
    }

    @Test
    void dimensionsSayWhatTheyMeasure() throws Exception {
        Point a = Point.at(3, 4);
        Point b = Point.at(15, 9);
        String text =
                Elevation.titled("Triangle")
                        .describedBy("A line with its three dimensions.")
                        .line(LineStyle.CUT, a, b)
                        .horizontalDimension("", a, b, 0)
                        .verticalDimension("rise", a, b, 18)
                        .alignedDimension("", a, b, 3)
                        .figure()
                        .svg();
        List<String> texts = new Svg(text).texts();
        // 5, 12, 13 is Pythagoras' second triple.
        assertEquals(List.of("12 m", "rise 5 m", "13 m"), texts);
    }

    @Test
    void dimensionLineIsAsLongAsItsText() throws Exception {
        Svg svg = new Svg(Demo.arch().figure().svg());
        List<double[]> axis = svg.stroked(LineStyle.CUT);
        double span = axis.get(56)[0] - axis.get(0)[0];
        double middle = (axis.get(56)[0] + axis.get(0)[0]) / 2;
        double shown = Double.parseDouble(svg.text("span 336 m").getAttribute("x"));
        assertEquals(middle, shown, 0.02, "the text stands at the middle of what it measures");
        boolean drawn =
                svg.all("path").stream()
                        .filter(path -> path.getAttribute("stroke-width").equals("0.5"))
                        .map(path -> Svg.points(path.getAttribute("d")))
                        .anyMatch(
                                line ->
                                        line.size() == 2
                                                && line.get(0)[1] == line.get(1)[1]
                                                && line.get(0)[1] > axis.get(0)[1] + 5
                                                && Math.abs(line.get(1)[0] - line.get(0)[0] - span)
                                                        < 0.03);
        assertTrue(drawn);
    }

    @Test
    void scaleBarIsTrue() throws Exception {
        Svg svg = new Svg(Demo.arch().figure().svg());
        List<double[]> axis = svg.stroked(LineStyle.CUT);
        double scale = (axis.get(56)[0] - axis.get(0)[0]) / Demo.SPAN;
        double zero = Double.parseDouble(svg.text("0").getAttribute("x"));
        double hundred = Double.parseDouble(svg.text("100").getAttribute("x"));
        assertEquals(100 * scale, hundred - zero, 0.03);
        boolean framed =
                svg.all("path").stream()
                        .filter(path -> path.getAttribute("stroke-width").equals("0.5"))
                        .map(path -> Svg.points(path.getAttribute("d")))
                        .anyMatch(
                                points ->
                                        points.size() == 4
                                                && Math.abs(points.get(0)[0] - zero) < 0.02
                                                && Math.abs(points.get(1)[0] - hundred) < 0.02);
        assertTrue(framed);
    }

    @Test
    void levelsAddTheDatum() throws Exception {
        List<String> texts = new Svg(Demo.arch().figure().svg()).texts();
        assertTrue(texts.contains("springing +764.00"));
        assertTrue(texts.contains("crown +836.00"));
        assertTrue(texts.contains("rail +843.20"));
        assertEquals("\u00b10.00", Numbers.level(0));
        assertEquals("\u22121.50", Numbers.level(-1.5));
    }

    @Test
    void loadArrowsAreToOneScale() throws Exception {
        String text =
                Elevation.titled("Beam")
                        .describedBy("A beam with three loads.")
                        .line(LineStyle.CUT, Point.at(0, 0), Point.at(30, 0))
                        .loads(
                                new double[] {5, 15, 25},
                                new double[] {0, 0, 0},
                                new double[] {100, 200, -50})
                        .scaleBar()
                        .figure()
                        .svg();
        Svg svg = new Svg(text);
        double beam = svg.stroked(LineStyle.CUT).get(0)[1];
        List<Double> tails =
                svg.all("path").stream()
                        .filter(path -> path.getAttribute("stroke-width").equals("0.9"))
                        .map(path -> Svg.points(path.getAttribute("d")).get(0)[1])
                        .toList();
        assertEquals(3, tails.size());
        double unit = (beam - tails.get(0)) / 100;
        assertTrue(unit > 0);
        assertEquals(200 * unit, beam - tails.get(1), 0.05);
        assertEquals(-50 * unit, beam - tails.get(2), 0.05);
        assertTrue(svg.texts().containsAll(List.of("100", "200", "\u221250", "loads in kN")));
    }

    @Test
    void badInputIsNamed() {
        Elevation drawing = Elevation.titled("Bad").describedBy("Bad.");
        refused(() -> Point.at(Double.NaN, 0), "point x is NaN");
        refused(() -> drawing.line(LineStyle.CUT), "line has 0 points");
        refused(
                () -> drawing.line(LineStyle.CUT, new double[] {0, 1}, new double[] {0}),
                "y has 1 values");
        refused(
                () ->
                        drawing.line(
                                LineStyle.CUT,
                                new double[] {0, 1},
                                new double[] {0, Double.POSITIVE_INFINITY}),
                "y[1] is Infinity");
        refused(() -> drawing.area(Area.CUT, Point.at(0, 0), Point.at(1, 1)), "area has 2 points");
        refused(() -> drawing.bar(Point.at(0, 0), Point.at(1, 0), -0.4), "thickness is -0.4");
        refused(() -> drawing.bar(Point.at(0, 0), Point.at(0, 0), 1), "bar has length 0");
        refused(
                () -> drawing.alignedDimension("span", Point.at(2, 2), Point.at(2, 2), 1),
                "dimension \"span\" is 0");
        refused(
                () -> drawing.loads(new double[] {1}, new double[] {0}, new double[] {Double.NaN}),
                "loads in kN[0] is NaN");
        refused(() -> drawing.size(20, 100), "width in mm is 20.0");
        refused(drawing::figure, "no line and no area");
        refused(
                () ->
                        Elevation.titled("Tight")
                                .describedBy("Too much text.")
                                .size(40, 30)
                                .line(LineStyle.CUT, Point.at(0, 0), Point.at(1, 0))
                                .label(Point.at(0, 0), "m".repeat(60))
                                .figure(),
                "does not fit");
    }

    @Test
    void archNamesWhatIsWrong() {
        double[] x = Demo.across(4);
        double[] y = Demo.heights(x, Demo::parabola);
        refused(
                () -> ArchElevation.of("a", new double[] {0, 2, 1}, new double[3]),
                "x of the axis[2] is 1.0");
        refused(
                () -> ArchElevation.of("a", x, y).deck(70, 2).figure(),
                "underside of the deck is at 68.0");
        refused(
                () -> ArchElevation.of("a", x, y).columns(new double[] {400}, 1),
                "column at x = 400.0");
        refused(
                () -> ArchElevation.of("a", x, y).ribDepths(new double[] {1, 0, 1, 1, 1}),
                "rib depth[1] is 0.0");
        refused(() -> ForcePolygon.of("a", new double[] {1}, 0.5, 0), "thrust in kN is 0.0");
        refused(() -> ForcePolygon.of("a", new double[] {0}, 0, 1), "loads are all 0");
        refused(
                () -> ChainTurnedOver.of("a", x, new double[] {1, 2, 3, 2, 0}, new double[5]),
                "depths of the chain at its supports are 1.0 and 0.0");
    }

    @Test
    void loadsBelowAKilonewtonArePrintedInNewtons() {
        String svg =
                ChainTurnedOver.of(
                                "A chain on a table",
                                new double[] {0, 1, 2},
                                new double[] {0, 0.5, 0},
                                new double[] {0, 0.034, 0})
                        .svg();
        assertTrue(svg.contains(">34</text>"), svg);
        assertTrue(svg.contains("loads in N"), svg);
    }
}
