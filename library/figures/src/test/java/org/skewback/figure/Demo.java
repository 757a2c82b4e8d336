package org.skewback.figure;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;

/** Shapes of the invented Ostrel Gorge crossing, which the tests draw. */
final class Demo {

    static final double SPAN = 336;
    static final double RISE = 72;

    private Demo() {}

    static double[] across(int parts) {
        double[] x = new double[parts + 1];
        for (int i = 0; i <= parts; i++) {
            x[i] = SPAN * i / parts;
        }
        return x;
    }

    static double[] heights(double[] x, DoubleUnaryOperator shape) {
        return Arrays.stream(x).map(shape).toArray();
    }

    static double parabola(double x) {
        return 4 * RISE * x * (SPAN - x) / (SPAN * SPAN);
    }

    static double circle(double x) {
        double radius = (SPAN * SPAN / 4 + RISE * RISE) / (2 * RISE);
        double u = x - SPAN / 2;
        return Math.sqrt(radius * radius - u * u) - (radius - RISE);
    }

    /** Catenary of parameter a with this span and rise: a (cosh(L / 2a) − 1) = f, by bisection. */
    static double catenary(double x) {
        double low = 50;
        double high = 1000;
        for (int i = 0; i < 80; i++) {
            double a = (low + high) / 2;
            if (a * (StrictMath.cosh(SPAN / 2 / a) - 1) > RISE) {
                low = a;
            } else {
                high = a;
            }
        }
        return RISE - low * (StrictMath.cosh((x - SPAN / 2) / low) - 1);
    }

    static double[] ribDepths(double[] x) {
        return heights(x, v -> 6 + 3 * Math.abs(2 * v / SPAN - 1));
    }

    static ArchElevation arch() {
        double[] x = across(56);
        return ArchElevation.of(
                        "Rib axis against circle and catenary", x, heights(x, Demo::parabola))
                .describedBy(
                        "Elevation of the arch of the Ostrel Gorge crossing: the parabolic axis"
                            + " lies between a circle and a catenary of the same span and rise.")
                .springingLevel(764)
                .deck(843.2, 3.4)
                .columns(Arrays.copyOfRange(across(14), 1, 14), 1.8)
                .piers(new double[] {0, SPAN}, new double[] {770, 770}, 3.6)
                .curve("circle", x, heights(x, Demo::circle), LineStyle.SECOND)
                .curve("catenary", x, heights(x, Demo::catenary), LineStyle.THIRD);
    }

    static ArchElevation rib() {
        double[] x = across(56);
        return ArchElevation.of("The arch", x, heights(x, Demo::parabola))
                .springingLevel(764)
                .deck(843.2, 3.4)
                .columns(Arrays.copyOfRange(across(14), 1, 14), 1.8)
                .piers(new double[] {0, SPAN}, new double[] {770, 770}, 3.6)
                .ribDepths(ribDepths(x));
    }

    static double[] loads() {
        return heights(
                across(14), x -> x == 0 || x == SPAN ? 0 : 4100 + 14 * Math.abs(x - SPAN / 2));
    }

    static Elevation chain() {
        double[] x = across(14);
        return ChainTurnedOver.drawing(
                "A chain turned over", x, heights(x, Demo::parabola), loads());
    }

    static Elevation polygon() {
        double[] inner = Arrays.copyOfRange(loads(), 1, 14);
        double total = Arrays.stream(inner).sum();
        return ForcePolygon.drawing("Force polygon of the dead load", inner, total / 2, 41_500);
    }

    /** A footing in section: cut and hatched, on hatched ground, with tight and aligned dimensions. */
    static Elevation skewbackSection() {
        Point a = Point.at(0, 0);
        Point b = Point.at(14, 0);
        Point c = Point.at(14, 6.5);
        Point d = Point.at(7.2, 11);
        Point e = Point.at(0, 11);
        return Elevation.titled("Skewback at the west springing")
                .describedBy("Section through the concrete skewback with the rib's two chords.")
                .datum(757)
                .size(110, 120)
                .ground(
                        new double[] {-8, 0, 0.01, 13.99, 14, 22},
                        new double[] {9, 9, 0, 0, 2, -3},
                        2.2)
                .cut(a, b, c, d, e)
                .bar(Point.at(8.6, 10.1), Point.at(16.2, 19.6), 1.2)
                .bar(Point.at(13.1, 7.1), Point.at(20.7, 16.6), 1.2)
                .centreLine(Point.at(8.6, 6.0), Point.at(20.2, 20.5))
                .horizontalDimension("", a, b, -4.5)
                .horizontalDimension("", e, d, 13)
                .verticalDimension("", b, c, 24)
                .alignedDimension("chords", Point.at(15.6, 18.85), Point.at(20.1, 15.85), 3.2)
                .alignedDimension("", c, d, -2.5)
                .level("", e)
                .level("springing", Point.at(10.85, 8.6))
                .label(Point.at(4, 4), "concrete C35/45")
                .scaleBar();
    }

    static Chart eccentricities() {
        double[] x = across(56);
        return Chart.titled("Distance of other curves from the parabola")
                .describedBy(
                        "The circle lies up to about 2 m above the parabola near the quarter"
                                + " points, the catenary less.")
                .x("distance from the west springing", "m")
                .y("height above the parabola", "m")
                .line("circle", x, heights(x, v -> circle(v) - parabola(v)))
                .line("catenary", x, heights(x, v -> catenary(v) - parabola(v)))
                .line("parabola", new double[] {0, SPAN}, new double[] {0, 0})
                .limit("limit set for the form", 1);
    }
}
