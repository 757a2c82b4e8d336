package org.skewback.figure;

import org.skewback.sheet.Figure;

/**
 * Draws a hanging chain and, above it, the arch that mirrors it, under the same loads.
 *
 * <p>The chain's tension is the arch's compression: R. Hooke, <i>A description of helioscopes and
 * some other instruments</i> (London, 1676), anagram "Ut pendet continuum flexile, sic stabit
 * contiguum rigidum inversum" (title and year known from memory).
 */
public final class ChainTurnedOver {

    private ChainTurnedOver() {}

    /**
     * Draws chain and arch.
     *
     * @param title the figure's title, one line
     * @param x x of each joint in metres, rising, from support to support; at least three
     * @param depths how far each joint of the chain hangs below the supports in metres, zero at both
     *     ends; as many as x
     * @param loads load at each joint in kN, positive downwards; as many as x; ends may be zero
     * @return the figure
     * @throws IllegalArgumentException if a value is not finite, x does not rise, the numbers of
     *     values differ or the chain does not hang below its supports
     */
    public static Figure of(String title, double[] x, double[] depths, double[] loads) {
        return drawing(title, x, depths, loads).figure();
    }

    static Elevation drawing(String title, double[] x, double[] depths, double[] loads) {
        double[] px = Check.rising("x of the chain", x);
        double[] down = Check.finite("depths of the chain", depths);
        Check.atLeast("chain", px.length, 3);
        Check.sameLength("depths of the chain", down, "x", px);
        Check.sameLength("loads in kN", loads, "x", px);
        int n = px.length;
        if (down[0] != 0 || down[n - 1] != 0) {
            throw new IllegalArgumentException(
                    "depths of the chain at its supports are "
                            + down[0]
                            + " and "
                            + down[n - 1]
                            + " m; both must be 0");
        }
        double[] chain = new double[n];
        double[] loadY = new double[n];
        int lowest = 0;
        double sag = 0;
        for (int i = 0; i < n; i++) {
            chain[i] = -down[i];
            if (down[i] > sag) {
                sag = down[i];
                lowest = i;
            }
        }
        if (sag == 0) {
            throw new IllegalArgumentException(
                    "sag of the chain is 0 m; it must hang below its supports");
        }
        System.arraycopy(down, 0, loadY, 0, n);
        double span = px[n - 1] - px[0];
        Point left = Point.at(px[0], 0);
        Point right = Point.at(px[n - 1], 0);
        double margin = 0.05 * span;
        Elevation drawing =
                Elevation.titled(title)
                        .describedBy(
                                "A chain hangs between two supports "
                                        + Numbers.shortest(span, 2)
                                        + " m apart with a sag of "
                                        + Numbers.shortest(sag, 2)
                                        + " m; turned over about the line of the supports it is"
                                        + " the arch that carries the same loads in compression"
                                        + " alone.")
                        .centreLine(Point.at(px[0] - margin, 0), Point.at(px[n - 1] + margin, 0))
                        .line(LineStyle.CUT, px, down)
                        .line(LineStyle.SECOND, px, chain);
        for (int i = 1; i < n - 1; i++) {
            drawing.line(LineStyle.HIDDEN, Point.at(px[i], down[i]), Point.at(px[i], chain[i]));
        }
        double name = px[0] + 0.8 * span;
        double beside = px[lowest] + 0.3 * (px[Math.min(n - 1, lowest + 1)] - px[lowest]);
        return drawing.loads(px, loadY, loads)
                .horizontalDimension("span", left, right, -sag - 0.05 * span)
                .verticalDimension(
                        "sag", Point.at(px[lowest], 0), Point.at(px[lowest], -sag), beside)
                .verticalDimension(
                        "rise", Point.at(px[lowest], 0), Point.at(px[lowest], sag), beside)
                .label(Point.at(name, ArchElevation.between(px, down, name)), "arch in compression")
                .label(
                        Point.at(name, ArchElevation.between(px, chain, name)),
                        "chain in tension",
                        LineStyle.SECOND)
                .note("the chain carries the same loads")
                .scaleBar();
    }
}
