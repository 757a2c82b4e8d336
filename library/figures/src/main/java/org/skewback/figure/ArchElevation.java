package org.skewback.figure;

import java.util.ArrayList;
import java.util.List;
import org.skewback.sheet.Figure;

/**
 * Draws the elevation of a deck arch: rib, columns and deck, with the rib's axis against other
 * curves.
 *
 * <p>All shapes come as arrays: x from the left springing in metres, y above the springings in
 * metres. A drawing in the making belongs to one thread.
 */
public final class ArchElevation {

    private final String title;
    private final double[] x;
    private final double[] y;
    private final List<Curve> curves = new ArrayList<>();
    private String description = "";
    private double springingLevel;
    private double railLevel = Double.NaN;
    private double deckDepth;
    private double[] columns = {};
    private double columnWidth;
    private double[] piers = {};
    private double[] pierFeet = {};
    private double pierWidth;
    private double[] depths = {};

    /** A line compared with the axis; its arrays are never changed. */
    private static final class Curve {
        private final String name;
        private final double[] x;
        private final double[] y;
        private final LineStyle style;

        Curve(String name, double[] x, double[] y, LineStyle style) {
            this.name = name;
            this.x = x;
            this.y = y;
            this.style = style;
        }
    }

    private ArchElevation(String title, double[] x, double[] y) {
        this.title = Check.words("title", title);
        this.x = Check.rising("x of the axis", x);
        this.y = Check.finite("y of the axis", y);
        Check.atLeast("axis", x.length, 3);
        Check.sameLength("y of the axis", y, "x", x);
    }

    /**
     * Starts the elevation of an arch by its rib's axis.
     *
     * @param title the figure's title, one line
     * @param x x of the axis in metres, rising from springing to springing; at least three
     * @param y y of the axis above the springings in metres; as many as x
     * @return a drawing of the axis alone
     * @throws IllegalArgumentException if a value is not finite, x does not rise, or the numbers of
     *     values differ
     */
    public static ArchElevation of(String title, double[] x, double[] y) {
        return new ArchElevation(title, x, y);
    }

    /**
     * Says what the figure shows, for whoever cannot see it.
     *
     * @param text one or more sentences; without them span and rise are said
     * @return this drawing
     * @throws IllegalArgumentException if the text is blank
     */
    public ArchElevation describedBy(String text) {
        description = Check.words("description", text);
        return this;
    }

    /**
     * Sets the springings' level.
     *
     * @param level level in metres, finite; 0 unless set
     * @return this drawing
     * @throws IllegalArgumentException if the level is not finite
     */
    public ArchElevation springingLevel(double level) {
        springingLevel = Check.finite("springing level", level);
        return this;
    }

    /**
     * Draws the deck.
     *
     * @param railLevel level of the rail in metres, above the crown
     * @param depth from rail to underside in metres, positive
     * @return this drawing
     * @throws IllegalArgumentException if a value is not finite or the depth not positive
     */
    public ArchElevation deck(double railLevel, double depth) {
        this.railLevel = Check.finite("rail level", railLevel);
        this.deckDepth = Check.positive("deck depth", depth);
        return this;
    }

    /**
     * Draws columns from the axis to the underside of the deck.
     *
     * @param x x of each column in metres, within the span, rising
     * @param width width of a column along the bridge in metres, positive
     * @return this drawing
     * @throws IllegalArgumentException if a column is outside the span or the width not positive
     */
    public ArchElevation columns(double[] x, double width) {
        double[] places = Check.rising("x of columns", x);
        for (double place : places) {
            if (place < this.x[0] || place > this.x[this.x.length - 1]) {
                throw new IllegalArgumentException(
                        "column at x = "
                                + place
                                + " m is outside the span, "
                                + this.x[0]
                                + " to "
                                + this.x[this.x.length - 1]
                                + " m");
            }
        }
        columns = places;
        columnWidth = Check.positive("column width", width);
        return this;
    }

    /**
     * Draws piers beside the arch, from their feet to the underside of the deck.
     *
     * @param x x of each pier in metres, rising
     * @param footLevels level of each pier's foot in metres, finite; as many as x
     * @param width width of a pier along the bridge in metres, positive
     * @return this drawing
     * @throws IllegalArgumentException if a value is not finite, the numbers of values differ or the
     *     width is not positive
     */
    public ArchElevation piers(double[] x, double[] footLevels, double width) {
        piers = Check.rising("x of piers", x);
        pierFeet = Check.finite("levels of pier feet", footLevels);
        Check.sameLength("levels of pier feet", footLevels, "x of piers", x);
        pierWidth = Check.positive("pier width", width);
        return this;
    }

    /**
     * Draws the rib's edges at half its depth to either side of the axis, square to it.
     *
     * @param depths depth of the rib at each point of the axis in metres, positive
     * @return this drawing
     * @throws IllegalArgumentException if a depth is not positive or their number is not the axis's
     */
    public ArchElevation ribDepths(double[] depths) {
        for (int i = 0; i < depths.length; i++) {
            Check.positive("rib depth[" + i + "]", depths[i]);
        }
        Check.sameLength("rib depths", depths, "x of the axis", x);
        this.depths = depths.clone();
        return this;
    }

    /**
     * Draws another curve against the axis, labelled.
     *
     * @param name what to call it
     * @param x x of the curve in metres, rising; at least three
     * @param y y of the curve above the springings in metres; as many as x
     * @param style kind of line
     * @return this drawing
     * @throws IllegalArgumentException if a value is not finite, x does not rise, the numbers of
     *     values differ, or the name is blank
     */
    public ArchElevation curve(String name, double[] x, double[] y, LineStyle style) {
        Check.atLeast("curve " + name, x.length, 3);
        Check.sameLength("y of curve " + name, y, "x", x);
        curves.add(
                new Curve(
                        Check.printable("name of the curve", name),
                        Check.rising("x of curve " + name, x),
                        Check.finite("y of curve " + name, y),
                        style));
        return this;
    }

    /**
     * Draws.
     *
     * @return the figure
     * @throws IllegalArgumentException if the deck's underside is not above the crown
     */
    public Figure figure() {
        return drawing().figure();
    }

    /**
     * Gives the drawing, to which more can be added: ground, dimensions, labels.
     *
     * @return a drawing that holds all of this elevation and its scale bar
     * @throws IllegalArgumentException if the deck's underside is not above the crown
     */
    public Elevation drawing() {
        Point left = Point.at(x[0], y[0]);
        Point right = Point.at(x[x.length - 1], y[y.length - 1]);
        int crownIndex = highest();
        Point crown = Point.at(x[crownIndex], y[crownIndex]);
        double span = right.x() - left.x();
        double rise = crown.y() - left.y();
        Elevation drawing =
                Elevation.titled(title)
                        .datum(springingLevel)
                        .describedBy(
                                description.isEmpty()
                                        ? "Elevation of an arch, span "
                                                + Numbers.shortest(span, 2)
                                                + " m, rise "
                                                + Numbers.shortest(rise, 2)
                                                + " m."
                                        : description);
        drawDeck(drawing, left, right, crown);
        if (depths.length > 0) {
            drawRib(drawing);
        }
        double margin = 0.06 * span;
        drawing.centreLine(
                Point.at(left.x() - margin, left.y()), Point.at(right.x() + margin, right.y()));
        drawing.line(depths.length > 0 ? LineStyle.CENTRE : LineStyle.CUT, x, y);
        for (Curve curve : curves) {
            drawing.line(curve.style, curve.x, curve.y);
        }
        labelCurves(drawing);
        return drawing.horizontalDimension("span", left, right, left.y() - 0.055 * span)
                .verticalDimension(
                        "rise", Point.at(crown.x(), left.y()), crown, left.x() + 0.5 * span)
                .level("springing", left)
                .level("springing", right)
                .level("crown", crown)
                .scaleBar();
    }

    private void drawDeck(Elevation drawing, Point left, Point right, Point crown) {
        if (Double.isNaN(railLevel)) {
            return;
        }
        double rail = railLevel - springingLevel;
        double soffit = rail - deckDepth;
        if (soffit <= crown.y()) {
            throw new IllegalArgumentException(
                    "underside of the deck is at "
                            + (soffit + springingLevel)
                            + " m; it must be above the crown, "
                            + (crown.y() + springingLevel)
                            + " m");
        }
        for (double column : columns) {
            double foot = upperEdgeAt(column);
            if (soffit - foot > 0.5 * deckDepth) {
                drawing.bar(Point.at(column, foot), Point.at(column, soffit), columnWidth);
            }
        }
        for (int i = 0; i < piers.length; i++) {
            drawing.bar(
                    Point.at(piers[i], pierFeet[i] - springingLevel),
                    Point.at(piers[i], soffit),
                    pierWidth);
        }
        Point[] deck = {
            Point.at(left.x(), soffit),
            Point.at(right.x(), soffit),
            Point.at(right.x(), rail),
            Point.at(left.x(), rail)
        };
        drawing.area(Area.SEEN, deck)
                .outline(LineStyle.MEMBER, deck)
                .level("rail", Point.at(right.x(), rail));
    }

    private void drawRib(Elevation drawing) {
        double[][] upper = edge(0.5);
        double[][] lower = edge(-0.5);
        int n = x.length;
        double[] bandX = new double[2 * n];
        double[] bandY = new double[2 * n];
        for (int i = 0; i < n; i++) {
            bandX[i] = upper[0][i];
            bandY[i] = upper[1][i];
            bandX[2 * n - 1 - i] = lower[0][i];
            bandY[2 * n - 1 - i] = lower[1][i];
        }
        drawing.area(Area.SEEN, bandX, bandY)
                .line(LineStyle.MEMBER, upper[0], upper[1])
                .line(LineStyle.MEMBER, lower[0], lower[1]);
    }

    /** The line at a share of the rib's depth above the axis, square to it: x and y. */
    private double[][] edge(double share) {
        int n = x.length;
        double[][] edge = new double[2][n];
        for (int i = 0; i < n; i++) {
            int a = Math.max(0, i - 1);
            int b = Math.min(n - 1, i + 1);
            double dx = x[b] - x[a];
            double dy = y[b] - y[a];
            double off = share * depths[i] / Math.sqrt(dx * dx + dy * dy);
            edge[0][i] = x[i] - dy * off;
            edge[1][i] = y[i] + dx * off;
        }
        return edge;
    }

    private double upperEdgeAt(double place) {
        if (depths.length == 0) {
            return axisAt(place);
        }
        double[][] edge = edge(0.5);
        return between(edge[0], edge[1], place);
    }

    /** Each curve is named at a place of its own, where it is farthest from the axis nearby. */
    private void labelCurves(Elevation drawing) {
        int count = curves.size() + 1;
        for (int k = 0; k < count; k++) {
            // From the left quarter to the crown's left, away from rise and levels.
            double share = 0.12 + 0.26 * (k + 0.5) / count;
            double at = x[0] + share * (x[x.length - 1] - x[0]);
            if (k == 0) {
                drawing.label(Point.at(at, axisAt(at)), "rib axis");
            } else {
                Curve curve = curves.get(k - 1);
                if (at >= curve.x[0] && at <= curve.x[curve.x.length - 1]) {
                    drawing.label(
                            Point.at(at, between(curve.x, curve.y, at)), curve.name, curve.style);
                }
            }
        }
    }

    private double axisAt(double place) {
        return between(x, y, place);
    }

    static double between(double[] x, double[] y, double place) {
        int i = 1;
        while (i < x.length - 1 && x[i] < place) {
            i++;
        }
        return y[i - 1] + (place - x[i - 1]) / (x[i] - x[i - 1]) * (y[i] - y[i - 1]);
    }

    private int highest() {
        int best = 0;
        for (int i = 1; i < y.length; i++) {
            if (y[i] > y[best]) {
                best = i;
            }
        }
        return best;
    }
}
