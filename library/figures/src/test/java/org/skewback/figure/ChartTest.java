package org.skewback.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.skewback.figure.FigureTest.refused;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

/** Charts: ticks that are true, lines that run on, names that don't collide, clear errors. */
class ChartTest {

    private static Chart chart() {
        return Chart.titled("Chart")
                .describedBy("A chart.")
                .x("distance", "m")
                .y("eccentricity", "mm");
    }

    /** Ticks are read back from the page: their places must be a linear scale of their numbers. */
    @Test
    void ticksAreALinearScaleThatFitsTheData() throws Exception {
        double[] x = {0, 100, 336};
        double[] y = {-40, 110, 20};
        Svg svg = new Svg(chart().line("one", x, y, LineStyle.RESULT).figure().svg());
        List<double[]> curve = svg.stroked(LineStyle.RESULT);
        assertEquals(3, curve.size(), "one path, so that the dash runs on");
        List<double[]> across = new ArrayList<>();
        List<double[]> up = new ArrayList<>();
        for (Element text : svg.all("text")) {
            String content = text.getTextContent().replace('\u2212', '-');
            if (content.matches("-?\\d+")) {
                double value = Double.parseDouble(content);
                if (text.getAttribute("text-anchor").equals("middle")) {
                    across.add(new double[] {value, Double.parseDouble(text.getAttribute("x"))});
                } else {
                    up.add(new double[] {value, Double.parseDouble(text.getAttribute("y"))});
                }
            }
        }
        assertTrue(across.size() >= 4 && across.size() <= 10, across.size() + " ticks across");
        assertTrue(up.size() >= 4 && up.size() <= 12, up.size() + " ticks up");
        double perX = (curve.get(2)[0] - curve.get(0)[0]) / 336;
        for (double[] tick : across) {
            assertEquals(curve.get(0)[0] + perX * tick[0], tick[1], 0.1);
        }
        double perY = (curve.get(1)[1] - curve.get(0)[1]) / 150;
        for (double[] tick : up) {
            double drop = 0.33 * Board.SMALL;
            assertEquals(curve.get(0)[1] + perY * (tick[0] + 40) + drop, tick[1], 0.1);
        }
    }

    /** An axis of dates names whole years, at their first of January; a short one names months. */
    @Test
    void datesAreNamedByTheirYearOrWithinAYearByTheirMonth() {
        double[] years = {
            Ticks.year(LocalDate.of(2022, 10, 1)), Ticks.year(LocalDate.of(2026, 7, 1))
        };
        Ticks long4 = Ticks.dates(years, 0, 300, 36);
        assertEquals(List.of("2023", "2024", "2025", "2026"), long4.labels());
        double perYear = 300 / (years[1] - years[0]);
        assertEquals((2023 - years[0]) * perYear, long4.places().get(0), 1e-9);
        assertEquals(List.of("2024", "2026"), Ticks.dates(years, 0, 300, 90).labels());
        double[] months = {
            Ticks.year(LocalDate.of(2023, 11, 20)), Ticks.year(LocalDate.of(2024, 5, 2))
        };
        Ticks within = Ticks.dates(months, 0, 160, 36);
        assertEquals(List.of("2024-01", "2024-03", "2024-05"), within.labels());
        // 2024 is a leap year: 1 May is its 122nd day.
        double perDay = 160 / (months[1] - months[0]) / 366;
        assertEquals(
                121 * perDay, within.places().get(2) - within.places().get(0), 1e-9, "days apart");
    }

    /** The chart of readings over years names no half years. */
    @Test
    void readingsOverYearsStandOverWholeYears() throws Exception {
        Svg svg = new Svg(GroundDemo.monitoringChart().svg());
        List<String> labels =
                svg.all("text").stream()
                        .map(Element::getTextContent)
                        .filter(text -> text.startsWith("202"))
                        .toList();
        assertEquals(List.of("2023", "2024", "2025", "2026"), labels);
    }

    /** Equal ratios take equal steps: read back from the page. */
    @Test
    void logarithmicAxesTakeEqualStepsForEqualRatios() throws Exception {
        double[] x = {1, 10, 100};
        double[] y = {0.5, 5, 50};
        Svg svg =
                new Svg(
                        chart().line("one", x, y, LineStyle.RESULT)
                                .logarithmicX()
                                .logarithmicY()
                                .figure()
                                .svg());
        List<double[]> curve = svg.stroked(LineStyle.RESULT);
        assertEquals(3, curve.size());
        assertEquals(curve.get(1)[0] - curve.get(0)[0], curve.get(2)[0] - curve.get(1)[0], 0.1);
        assertEquals(curve.get(1)[1] - curve.get(0)[1], curve.get(2)[1] - curve.get(1)[1], 0.1);
        assertEquals(curve.get(1)[0], Double.parseDouble(svg.text("10").getAttribute("x")), 0.1);
        refused(
                () -> chart().line("one", new double[] {0, 1}, y2()).logarithmicX().figure(),
                "x of chart \"Chart\" is 0.0; it must be positive");
        refused(
                () ->
                        chart().line("one", new double[] {1, 2}, y2())
                                .limit("bound", -1)
                                .logarithmicY()
                                .figure(),
                "y of chart \"Chart\" is -1.0; it must be positive");
    }

    private static double[] y2() {
        return new double[] {1, 2};
    }

    @Test
    void pointsAloneMakeAChart() throws Exception {
        Chart chart = chart().points("read", new double[] {1, 2, 4}, new double[] {3, 5, 4});
        List<Mark> marks = chart.picture().marks();
        long hollow = marks.stream().filter(m -> m instanceof Mark.Stroke s && s.closed()).count();
        assertEquals(4, hollow, "three points and the one beside their name");
        refused(
                () -> chart.points("read", new double[] {1}, new double[] {1}),
                "points \"read\" are there already");
    }

    @Test
    void numbersDoNotFollowTheLocale() {
        Locale before = Locale.getDefault();
        String usual = Demo.eccentricities().figure().svg();
        try {
            Locale.setDefault(Locale.GERMANY);
            assertEquals(usual, Demo.eccentricities().figure().svg());
        } finally {
            Locale.setDefault(before);
        }
        assertTrue(usual.contains(">1.5</text>"));
    }

    @Test
    void lineIsClippedToTheRangeGiven() throws Exception {
        Svg svg =
                new Svg(
                        chart().line(
                                        "up",
                                        new double[] {0, 10},
                                        new double[] {0, 100},
                                        LineStyle.CUT)
                                .xRange(0, 10)
                                .yRange(0, 50)
                                .figure()
                                .svg());
        List<double[]> curve = svg.stroked(LineStyle.CUT);
        double[] axis =
                svg.all("path").stream()
                        .filter(path -> path.getAttribute("stroke-width").equals("0.6"))
                        .map(path -> Svg.points(path.getAttribute("d")))
                        .filter(line -> Math.abs(line.get(0)[1] - line.get(1)[1]) < 1e-9)
                        .filter(line -> line.get(1)[0] - line.get(0)[0] > 100)
                        .map(line -> new double[] {line.get(0)[0], line.get(1)[0]})
                        .findFirst()
                        .orElseThrow();
        // Half the y range is reached at half the x range.
        assertEquals((axis[0] + axis[1]) / 2, curve.get(1)[0], 0.1);
    }

    @Test
    void lineAlongTheAxisIsDrawn() throws Exception {
        Svg svg = new Svg(Demo.eccentricities().figure().svg());
        assertEquals(2, svg.stroked(LineStyle.THIRD).size());
        String width = Double.toString(LineStyle.THIRD.pen().width());
        long drawn =
                svg.all("path").stream()
                        .filter(path -> path.getAttribute("stroke-width").equals(width))
                        .count();
        assertEquals(2, drawn, "the line itself and the piece beside its name");
    }

    @Test
    void linesTellApartWithoutColour() {
        List<Pen> pens = new ArrayList<>();
        for (LineStyle style : LineStyle.values()) {
            Pen pen = style.pen();
            for (Pen other : pens) {
                assertTrue(
                        !pen.dash().equals(other.dash())
                                || Math.abs(pen.width() - other.width()) > 0.1,
                        style + " looks like another");
            }
            pens.add(pen);
        }
    }

    @Test
    void namesSpreadNoFartherThanTheyMust() {
        double[] apart = Chart.spread(new double[] {10, 50}, 0, 100);
        assertEquals(10, apart[0]);
        assertEquals(50, apart[1]);
        double pitch = 1.25 * Board.SMALL;
        double[] close = Chart.spread(new double[] {95, 96, 97}, 0, 100);
        assertEquals(100, close[2], 1e-12);
        assertEquals(pitch, close[2] - close[1], 1e-12);
        assertEquals(pitch, close[1] - close[0], 1e-12);
    }

    @Test
    void badInputIsNamed() {
        double[] two = {0, 1};
        refused(() -> Chart.titled("c").line("l", two, new double[] {0, Double.NaN}), "is NaN");
        refused(() -> Chart.titled("c").line("l", new double[0], new double[0]), "has 0 points");
        refused(() -> Chart.titled("c").x("time", " "), "unit of x is blank");
        refused(
                () -> Chart.titled("c").describedBy("d").line("l", two, two).figure(),
                "a name and a unit of x");
        refused(() -> chart().figure(), "must have a line");
        refused(() -> chart().line("l", two, two).line("l", two, two), "its own");
        refused(() -> chart().xRange(3, 3), "x range[1] is 3.0");
        refused(
                () -> chart().line("l", new double[] {1, 1}, two).figure(),
                "x of all lines is 1.0");
        refused(
                () -> chart().size(80, 60).line("w".repeat(50), two, two).figure(),
                "too little for the names");
    }
}
