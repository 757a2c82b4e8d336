package org.skewback.figure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.Consumer;
import org.skewback.sheet.Figure;

/**
 * Draws an elevation, a section or a plan to one scale in both directions.
 *
 * <p>Coordinates are metres, x to the right and y upwards. Each call adds to the drawing and gives
 * the drawing back; {@link #figure()} sets the scale so that all of it, text included, fits the
 * width, and gives an immutable figure. Text keeps clear of other text and, where it can, of lines.
 * A drawing in the making belongs to one thread.
 */
public final class Elevation {

    /** Width of text on an A4 page with usual margins, in millimetres. */
    static final double A4_TEXT_WIDTH = 165;

    static final double A4_MOST_HEIGHT = 200;
    static final int AREAS = 0;
    static final int LINES = 1;
    static final int LOADS = 2;
    static final int DIMENSIONS = 3;
    static final int LEVELS = 4;
    static final int LABELS = 5;
    private static final double MM = Board.MILLIMETRE;

    private final String title;
    private final String unit;
    private final List<Item> items = new ArrayList<>();
    private final List<String> notes = new ArrayList<>();
    private String description = "";
    private double datum;
    private int decimals = 2;
    private double width = A4_TEXT_WIDTH;
    private double mostHeight = A4_MOST_HEIGHT;
    private boolean scaleBar;

    /**
     * Something to draw.
     *
     * @param layer order of drawing, lowest first
     * @param draw how
     */
    private record Item(int layer, Consumer<Board> draw) {

        boolean isShape() {
            return layer == AREAS || layer == LINES;
        }
    }

    private Elevation(String title, String unit) {
        this.title = Check.words("title", title);
        this.unit = unit;
    }

    /**
     * Starts a drawing.
     *
     * @param title its title, one line without a number
     * @return an empty drawing
     * @throws IllegalArgumentException if the title is blank
     */
    public static Elevation titled(String title) {
        return new Elevation(title, "m");
    }

    /** Starts a drawing whose coordinates are not metres. */
    static Elevation inUnit(String title, String unit) {
        return new Elevation(title, unit);
    }

    /**
     * Says what the drawing shows, for whoever cannot see it. Without it there is no figure.
     *
     * @param text one or more sentences
     * @return this drawing
     * @throws IllegalArgumentException if the text is blank
     */
    public Elevation describedBy(String text) {
        description = Check.words("description", text);
        return this;
    }

    /**
     * Sets the level of y = 0, which level marks add to y.
     *
     * @param level level in metres, finite; 0 unless set
     * @return this drawing
     * @throws IllegalArgumentException if the level is not finite
     */
    public Elevation datum(double level) {
        datum = Check.finite("datum", level);
        return this;
    }

    /**
     * Sets how many decimals dimensions have at most.
     *
     * @param most 0 to 4; 2 unless set; trailing zeros are left out
     * @return this drawing
     * @throws IllegalArgumentException if the number is out of its range
     */
    public Elevation decimals(int most) {
        decimals = (int) Check.within("decimals", most, 0, 4);
        return this;
    }

    /**
     * Sets the printed width and the greatest printed height.
     *
     * @param widthMillimetres printed width in mm, 40 to 400; 165 unless set
     * @param mostHeightMillimetres greatest printed height in mm, 30 to 560; 200 unless set
     * @return this drawing
     * @throws IllegalArgumentException if a size is out of its range
     */
    public Elevation size(double widthMillimetres, double mostHeightMillimetres) {
        width = Check.within("width in mm", widthMillimetres, 40, 400);
        mostHeight = Check.within("height in mm", mostHeightMillimetres, 30, 560);
        return this;
    }

    /**
     * Draws an open line.
     *
     * @param style kind of line
     * @param points at least two
     * @return this drawing
     * @throws IllegalArgumentException if there are fewer than two points
     */
    public Elevation line(LineStyle style, Point... points) {
        return stroke(style, List.of(points), false);
    }

    /**
     * Draws an open line from arrays.
     *
     * @param style kind of line
     * @param x x of each point in metres, finite; at least two
     * @param y y of each point in metres, finite; as many as x
     * @return this drawing
     * @throws IllegalArgumentException if a value is not finite or the numbers of values differ
     */
    public Elevation line(LineStyle style, double[] x, double[] y) {
        return stroke(style, points(x, y), false);
    }

    /**
     * Draws a closed line.
     *
     * @param style kind of line
     * @param points corners in order, at least three
     * @return this drawing
     * @throws IllegalArgumentException if there are fewer than three points
     */
    public Elevation outline(LineStyle style, Point... points) {
        return stroke(style, List.of(points), true);
    }

    /**
     * Fills, and for {@link Area#CUT} and {@link Area#GROUND} hatches, an area; draws no outline.
     *
     * @param kind kind of area
     * @param points corners in order, at least three; overlapping loops follow the even-odd rule
     * @return this drawing
     * @throws IllegalArgumentException if there are fewer than three points
     */
    public Elevation area(Area kind, Point... points) {
        return area(kind, List.of(points));
    }

    /**
     * Fills, and for {@link Area#CUT} and {@link Area#GROUND} hatches, an area given by arrays.
     *
     * @param kind kind of area
     * @param x x of each corner in metres, finite; at least three
     * @param y y of each corner in metres, finite; as many as x
     * @return this drawing
     * @throws IllegalArgumentException if a value is not finite or the numbers of values differ
     */
    public Elevation area(Area kind, double[] x, double[] y) {
        return area(kind, points(x, y));
    }

    /**
     * Draws a piece that is cut: filled, hatched and with a heavy outline.
     *
     * @param points corners in order, at least three
     * @return this drawing
     * @throws IllegalArgumentException if there are fewer than three points
     */
    public Elevation cut(Point... points) {
        return area(Area.CUT, points).outline(LineStyle.CUT, points);
    }

    /**
     * Draws a straight member by its axis: light fill, medium outline.
     *
     * @param from one end of the axis
     * @param to the other end, not the same point
     * @param thickness depth across the axis in metres, positive
     * @return this drawing
     * @throws IllegalArgumentException if the thickness is not positive or the ends coincide
     */
    public Elevation bar(Point from, Point to, double thickness) {
        Check.positive("thickness", thickness);
        double length = apart("bar", from, to);
        double dx = -(to.y() - from.y()) / length * thickness / 2;
        double dy = (to.x() - from.x()) / length * thickness / 2;
        Point[] corners = {
            Point.at(from.x() + dx, from.y() + dy),
            Point.at(to.x() + dx, to.y() + dy),
            Point.at(to.x() - dx, to.y() - dy),
            Point.at(from.x() - dx, from.y() - dy)
        };
        return area(Area.SEEN, corners).outline(LineStyle.MEMBER, corners);
    }

    /**
     * Draws the ground's surface with a hatched band below it.
     *
     * @param x x of each point of the surface in metres, finite; at least two
     * @param y y of each point in metres, finite; as many as x
     * @param depth how far down the hatching reaches, in metres, positive
     * @return this drawing
     * @throws IllegalArgumentException if a value is not finite, the numbers of values differ, or the
     *     depth is not positive
     */
    public Elevation ground(double[] x, double[] y, double depth) {
        Check.positive("depth of the ground's hatching", depth);
        List<Point> band = new ArrayList<>(points(x, y));
        Check.atLeast("ground", band.size(), 2);
        for (int i = x.length - 1; i >= 0; i--) {
            band.add(Point.at(x[i], y[i] - depth));
        }
        return area(Area.GROUND, band).line(LineStyle.CUT, x, y);
    }

    /**
     * Draws a centre line.
     *
     * @param from one end
     * @param to the other end
     * @return this drawing
     */
    public Elevation centreLine(Point from, Point to) {
        return line(LineStyle.CENTRE, from, to);
    }

    /**
     * Dimensions the horizontal distance of two points.
     *
     * @param name word or symbol before the value; empty for none
     * @param from first point
     * @param to second point, at another x
     * @param y where the dimension line lies, in metres, finite
     * @return this drawing
     * @throws IllegalArgumentException if the distance is zero
     */
    public Elevation horizontalDimension(String name, Point from, Point to, double y) {
        Check.finite("y of the dimension line", y);
        double distance = Math.abs(to.x() - from.x());
        String text = measured(name, distance);
        items.add(new Item(DIMENSIONS, board -> Annotations.level(board, from, to, y, text)));
        return this;
    }

    /**
     * Dimensions the vertical distance of two points.
     *
     * @param name word or symbol before the value; empty for none
     * @param from first point
     * @param to second point, at another y
     * @param x where the dimension line lies, in metres, finite
     * @return this drawing
     * @throws IllegalArgumentException if the distance is zero
     */
    public Elevation verticalDimension(String name, Point from, Point to, double x) {
        Check.finite("x of the dimension line", x);
        double distance = Math.abs(to.y() - from.y());
        String text = measured(name, distance);
        items.add(new Item(DIMENSIONS, board -> Annotations.upright(board, from, to, x, text)));
        return this;
    }

    /**
     * Dimensions the distance of two points along their line.
     *
     * @param name word or symbol before the value; empty for none
     * @param from first point
     * @param to second point, not the same
     * @param offset distance of the dimension line from the two points in metres, to the left of the
     *     way from the first to the second; negative for the right; finite
     * @return this drawing
     * @throws IllegalArgumentException if the points coincide
     */
    public Elevation alignedDimension(String name, Point from, Point to, double offset) {
        Check.finite("offset of the dimension line", offset);
        double distance = from.distanceTo(to);
        String text = measured(name, distance);
        double dx = -(to.y() - from.y()) / distance * offset;
        double dy = (to.x() - from.x()) / distance * offset;
        items.add(
                new Item(
                        DIMENSIONS,
                        board ->
                                Annotations.dimension(
                                        board,
                                        from,
                                        to,
                                        board.x(from.x() + dx),
                                        board.y(from.y() + dy),
                                        board.x(to.x() + dx),
                                        board.y(to.y() + dy),
                                        text)));
        return this;
    }

    /**
     * Marks the level of a point; the number is the datum plus the point's y, with two decimals.
     *
     * @param name word before the number; empty for none
     * @param at the point
     * @return this drawing
     */
    public Elevation level(String name, Point at) {
        // The datum may be set later, so the text is made when the drawing is.
        String before = name.isEmpty() ? "" : Check.printable("level name", name) + " ";
        items.add(
                new Item(
                        LEVELS,
                        board ->
                                Annotations.level(
                                        board, at, before + Numbers.level(datum + at.y()))));
        return this;
    }

    /**
     * Writes beside a point, with a leader, where it spoils least.
     *
     * @param at the point the leader starts from
     * @param text what to say, one line
     * @return this drawing
     * @throws IllegalArgumentException if the text is blank or the font lacks a character of it
     */
    public Elevation label(Point at, String text) {
        return label(at, text, LineStyle.MEMBER);
    }

    /**
     * Writes beside a point of a line, in that line's colour, with a leader.
     *
     * @param at the point the leader starts from
     * @param text what to say, one line
     * @param of the line it names
     * @return this drawing
     * @throws IllegalArgumentException if the text is blank or the font lacks a character of it
     */
    public Elevation label(Point at, String text, LineStyle of) {
        Check.printable("label", text);
        items.add(new Item(LABELS, board -> Annotations.label(board, at, text, of.words())));
        return this;
    }

    /**
     * Writes at a chosen place beside a point, with a leader.
     *
     * @param at the point the leader starts from
     * @param text what to say, one line
     * @param right how far right of the point the leader ends, in printed millimetres, finite
     * @param up how far above the point, in printed millimetres, finite
     * @return this drawing
     * @throws IllegalArgumentException if the text is blank or a shift is not finite
     */
    public Elevation label(Point at, String text, double right, double up) {
        Check.printable("label", text);
        Check.finite("shift of the label to the right", right);
        Check.finite("shift of the label upwards", up);
        items.add(
                new Item(
                        LABELS,
                        board ->
                                Annotations.label(
                                        board, at, text, Ink.BLACK, right * MM, -up * MM)));
        return this;
    }

    /**
     * Draws vertical loads as arrows whose lengths are to one scale, with their values.
     *
     * @param x x of each load in metres, rising; at least one
     * @param y y of each arrow's tip in metres; as many as x
     * @param kilonewtons each load in kN, positive downwards, finite; as many as x; none is drawn
     *     for 0
     * @return this drawing
     * @throws IllegalArgumentException if a value is not finite or the numbers of values differ
     */
    public Elevation loads(double[] x, double[] y, double[] kilonewtons) {
        double[] px = Check.rising("x of loads", x);
        double[] py = Check.finite("y of loads", y);
        double[] values = Check.finite("loads in kN", kilonewtons);
        Check.atLeast("loads", px.length, 1);
        Check.sameLength("y of loads", py, "x", px);
        Check.sameLength("loads in kN", values, "x", px);
        // Loads of a model on a table would all round to 0 kN.
        boolean small = Arrays.stream(values).map(Math::abs).max().orElse(0) < 1;
        double[] printed = Arrays.stream(values).map(v -> small ? 1000 * v : v).toArray();
        items.add(new Item(LOADS, board -> Annotations.loads(board, px, py, printed, 13 * MM)));
        String note = small ? "loads in N" : "loads in kN";
        if (!notes.contains(note)) {
            notes.add(note);
        }
        return this;
    }

    /** Draws in a layer of its own making, for figures built on this drawing. */
    Elevation drawn(int layer, Consumer<Board> how) {
        items.add(new Item(layer, how));
        return this;
    }

    /** Writes a value to the right of a point where there is room. */
    Elevation value(Point at, String text) {
        items.add(new Item(LABELS, board -> Annotations.value(board, at, text)));
        return this;
    }

    /**
     * Adds a note beside the scale bar.
     *
     * @param text the note, one short line
     * @return this drawing
     * @throws IllegalArgumentException if the text is blank or the font lacks a character of it
     */
    public Elevation note(String text) {
        notes.add(Check.printable("note", text));
        return this;
    }

    /**
     * Asks for a scale bar below the drawing.
     *
     * @return this drawing
     */
    public Elevation scaleBar() {
        scaleBar = true;
        return this;
    }

    /**
     * Sets the scale and draws.
     *
     * @return the figure; later changes of this drawing do not reach it
     * @throws IllegalArgumentException if nothing is drawn, nothing described, or the text alone is
     *     wider than the page
     */
    public Figure figure() {
        return new DrawnFigure(picture());
    }

    Picture picture() {
        if (description.isEmpty()) {
            throw new IllegalArgumentException(
                    "elevation \""
                            + title
                            + "\" has no description; say what it shows with describedBy");
        }
        Board shapes = new Board(1, false);
        items.stream().filter(Item::isShape).forEach(item -> item.draw().accept(shapes));
        if (shapes.marks().isEmpty()) {
            throw new IllegalArgumentException(
                    "elevation \"" + title + "\" has no line and no area; add at least one");
        }
        return Fit.picture(
                title,
                description,
                width,
                mostHeight,
                Geometry.extent(shapes.marks()),
                this::drawn);
    }

    private Board drawn(double scale) {
        Board board = new Board(scale);
        items.stream()
                .sorted(Comparator.comparingInt(Item::layer))
                .forEach(item -> item.draw().accept(board));
        if (scaleBar) {
            Annotations.scaleBar(board, unit, notes);
        }
        return board;
    }

    private Elevation stroke(LineStyle style, List<Point> points, boolean closed) {
        Check.atLeast(closed ? "outline" : "line", points.size(), closed ? 3 : 2);
        items.add(new Item(LINES, board -> board.stroke(board.page(points), closed, style.pen())));
        return this;
    }

    private Elevation area(Area kind, List<Point> points) {
        Check.atLeast("area", points.size(), 3);
        List<Point> corners = List.copyOf(points);
        items.add(new Item(AREAS, board -> board.area(board.page(corners), kind)));
        return this;
    }

    private String measured(String name, double distance) {
        if (distance == 0) {
            throw new IllegalArgumentException(
                    "dimension \"" + name + "\" is 0; the points must be apart");
        }
        String before = name.isEmpty() ? "" : Check.printable("dimension name", name) + " ";
        return before + Numbers.shortest(distance, decimals) + " " + unit;
    }

    private static double apart(String name, Point from, Point to) {
        double distance = from.distanceTo(to);
        if (distance == 0) {
            throw new IllegalArgumentException(name + " has length 0; its ends must be apart");
        }
        return distance;
    }

    private static List<Point> points(double[] x, double[] y) {
        Check.sameLength("y", y, "x", x);
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < x.length; i++) {
            Check.finite("x[" + i + "]", x[i]);
            Check.finite("y[" + i + "]", y[i]);
            points.add(Point.at(x[i], y[i]));
        }
        return points;
    }
}
