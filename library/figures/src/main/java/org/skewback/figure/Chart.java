package org.skewback.figure;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYChartBuilder;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.style.XYStyler;
import org.knowm.xchart.style.markers.SeriesMarkers;
import org.skewback.sheet.Figure;

/**
 * Draws a chart of lines and points in the house style: light grid, axes named with their units,
 * linear or logarithmic, each line named at its right end beside a piece of it.
 *
 * <p>The two axes have scales of their own; what is to be seen in its true shape belongs in an
 * {@link Elevation}. A chart in the making belongs to one thread.
 */
public final class Chart {

    private static final double MM = Board.MILLIMETRE;
    private static final double UNITS_PER_MM = 40;

    /** Least distance between two ticks, so that their numbers stand apart. */
    private static final double LEAST_BETWEEN_X = 13 * MM;

    private static final double LEAST_BETWEEN_Y = 8 * MM;
    private static final double POINTS_PER_UNIT = MM / UNITS_PER_MM;
    private static final double SAMPLE = 9 * MM;
    private static final double LABEL_PITCH = 1.25 * Board.SMALL;

    /** The chart sets room aside for a title's height, which any text with an ascender has. */
    private static final String ROOM_FOR_TITLE = "Xg";

    private static final int MOST_LINES = 8;
    private static final Pen GRID = Pen.full(0.5, Ink.GRID);
    private static final Pen AXIS = Pen.full(0.6, Ink.GREY);
    private static final LineStyle[] IN_TURN = {
        LineStyle.FIRST, LineStyle.SECOND, LineStyle.THIRD, LineStyle.FOURTH
    };

    private final String title;
    private final List<Line> lines = new ArrayList<>();
    private final List<Limit> limits = new ArrayList<>();
    private final List<Cloud> clouds = new ArrayList<>();
    private String description = "";
    private String xTitle = "";
    private String yTitle = "";
    private double width = 165;
    private double height = 80;
    private double[] xRange = {};
    private double[] yRange = {};
    private boolean dates;
    private boolean logarithmicX;
    private boolean logarithmicY;

    /** A line; its arrays are never changed. */
    private static final class Line {
        private final String name;
        private final double[] x;
        private final double[] y;
        private final LineStyle style;

        Line(String name, double[] x, double[] y, LineStyle style) {
            this.name = name;
            this.x = x;
            this.y = y;
            this.style = style;
        }
    }

    /** Values read at single places; its arrays are never changed. */
    private static final class Cloud {
        private final String name;
        private final double[] x;
        private final double[] y;
        private final Marker marker;

        Cloud(String name, double[] x, double[] y, Marker marker) {
            this.name = name;
            this.x = x;
            this.y = y;
            this.marker = marker;
        }
    }

    /**
     * A level line.
     *
     * @param name what it bounds
     * @param y where it lies
     */
    private record Limit(String name, double y) {}

    /**
     * A name at a line's right end.
     *
     * @param text the name
     * @param style the line's style
     * @param marker the points' marker, or null for a line
     * @param x the line's right end in points
     * @param y the same
     */
    private record Tag(String text, LineStyle style, @Nullable Marker marker, double x, double y) {}

    private Chart(String title) {
        this.title = Check.words("title", title);
    }

    /**
     * Starts a chart.
     *
     * @param title its title, one line without a number
     * @return an empty chart
     * @throws IllegalArgumentException if the title is blank
     */
    public static Chart titled(String title) {
        return new Chart(title);
    }

    /**
     * Says what the chart shows, for whoever cannot see it. Without it there is no figure.
     *
     * @param text one or more sentences
     * @return this chart
     * @throws IllegalArgumentException if the text is blank
     */
    public Chart describedBy(String text) {
        description = Check.words("description", text);
        return this;
    }

    /**
     * Names the horizontal axis.
     *
     * @param quantity what is measured
     * @param unit its unit as printed; empty or "1" for a plain number
     * @return this chart
     * @throws IllegalArgumentException if the name is blank or the font lacks a character of either
     */
    public Chart x(String quantity, String unit) {
        xTitle = axisTitle("x", quantity, unit);
        return this;
    }

    /** Names the horizontal axis and makes it one of dates, written by {@link Ticks#year}. */
    Chart dates(String name) {
        dates = true;
        return x(name, "");
    }

    /**
     * Names the vertical axis.
     *
     * @param quantity what is measured
     * @param unit its unit as printed; empty or "1" for a plain number
     * @return this chart
     * @throws IllegalArgumentException if the name is blank or the font lacks a character of either
     */
    public Chart y(String quantity, String unit) {
        yTitle = axisTitle("y", quantity, unit);
        return this;
    }

    /**
     * Adds a line in the next of the house's four styles.
     *
     * @param name what it shows
     * @param x x of each point in the axis's unit, finite; at least two
     * @param y y of each point in the axis's unit, finite; as many as x
     * @return this chart
     * @throws IllegalArgumentException if a value is not finite, the numbers of values differ, or
     *     four lines have been styled so already
     */
    public Chart line(String name, double[] x, double[] y) {
        for (LineStyle style : IN_TURN) {
            if (lines.stream().noneMatch(line -> line.style == style)) {
                return line(name, x, y, style);
            }
        }
        throw new IllegalArgumentException(
                "line \""
                        + name
                        + "\" would be the fifth; the house has four styles in turn, so give it one"
                        + " or draw two charts");
    }

    /**
     * Adds a line in a given style.
     *
     * @param name what it shows
     * @param x x of each point in the axis's unit, finite; at least two
     * @param y y of each point in the axis's unit, finite; as many as x
     * @param style weight, dash and colour; no two lines of a chart have the same
     * @return this chart
     * @throws IllegalArgumentException if a value is not finite, the numbers of values differ, the
     *     style or the name is taken, or there would be more than eight lines
     */
    public Chart line(String name, double[] x, double[] y, LineStyle style) {
        Check.printable("name of the line", name);
        Check.atLeast("line \"" + name + "\"", x.length, 2);
        Check.sameLength("y of line \"" + name + "\"", y, "x", x);
        for (Line line : lines) {
            if (line.style == style || line.name.equals(name)) {
                throw new IllegalArgumentException(
                        "line \""
                                + name
                                + "\" has the name or the style ("
                                + style
                                + ") of line \""
                                + line.name
                                + "\"; both must be its own");
            }
        }
        if (lines.size() >= MOST_LINES) {
            throw new IllegalArgumentException(
                    "line \"" + name + "\" would be the ninth; a chart has at most " + MOST_LINES);
        }
        lines.add(
                new Line(
                        name,
                        Check.finite("x of line \"" + name + "\"", x),
                        Check.finite("y of line \"" + name + "\"", y),
                        style));
        return this;
    }

    /**
     * Adds values that were read at single places, each with the next of the house's four markers.
     *
     * @param name what they show
     * @param x x of each point in the axis's unit, finite; at least one
     * @param y y of each point in the axis's unit, finite; as many as x
     * @return this chart
     * @throws IllegalArgumentException if a value is not finite, the numbers of values differ, the
     *     name is taken, or four rows of points are there already
     */
    public Chart points(String name, double[] x, double[] y) {
        Check.printable("name of the points", name);
        Check.atLeast("points \"" + name + "\"", x.length, 1);
        Check.sameLength("y of points \"" + name + "\"", y, "x", x);
        if (clouds.size() >= Marker.IN_TURN.size()) {
            throw new IllegalArgumentException(
                    "points \"" + name + "\" would be the fifth row; the house has four markers");
        }
        if (clouds.stream().anyMatch(cloud -> cloud.name.equals(name))) {
            throw new IllegalArgumentException(
                    "points \"" + name + "\" are there already; each row has a name of its own");
        }
        clouds.add(
                new Cloud(
                        name,
                        Check.finite("x of points \"" + name + "\"", x),
                        Check.finite("y of points \"" + name + "\"", y),
                        Marker.IN_TURN.get(clouds.size())));
        return this;
    }

    /**
     * Makes the horizontal axis logarithmic: equal steps for equal ratios.
     *
     * @return this chart, whose x must all be positive
     */
    public Chart logarithmicX() {
        logarithmicX = true;
        return this;
    }

    /**
     * Makes the vertical axis logarithmic: equal steps for equal ratios.
     *
     * @return this chart, whose y and limits must all be positive
     */
    public Chart logarithmicY() {
        logarithmicY = true;
        return this;
    }

    /**
     * Adds a level line that bounds the others.
     *
     * @param name what it bounds
     * @param y where it lies, in the axis's unit, finite
     * @return this chart
     * @throws IllegalArgumentException if the value is not finite or the name blank
     */
    public Chart limit(String name, double y) {
        limits.add(
                new Limit(
                        Check.printable("name of the limit", name),
                        Check.finite("limit \"" + name + "\"", y)));
        return this;
    }

    /**
     * Sets the printed size.
     *
     * @param widthMillimetres width in mm, 80 to 400; 165 unless set
     * @param heightMillimetres height in mm, 40 to 560; 80 unless set
     * @return this chart
     * @throws IllegalArgumentException if a size is out of its range
     */
    public Chart size(double widthMillimetres, double heightMillimetres) {
        width = Check.within("width in mm", widthMillimetres, 80, 400);
        height = Check.within("height in mm", heightMillimetres, 40, 560);
        return this;
    }

    /**
     * Sets what the horizontal axis covers; unless set, all that the lines cover.
     *
     * @param from left end in the axis's unit, finite
     * @param to right end, greater
     * @return this chart
     * @throws IllegalArgumentException if the ends are not finite or do not rise
     */
    public Chart xRange(double from, double to) {
        xRange = Check.rising("x range", new double[] {from, to});
        return this;
    }

    /**
     * Sets what the vertical axis covers; unless set, all lines and limits with a little room.
     *
     * @param from lower end in the axis's unit, finite
     * @param to upper end, greater
     * @return this chart
     * @throws IllegalArgumentException if the ends are not finite or do not rise
     */
    public Chart yRange(double from, double to) {
        yRange = Check.rising("y range", new double[] {from, to});
        return this;
    }

    /**
     * Draws.
     *
     * @return the figure; later changes of this chart do not reach it
     * @throws IllegalArgumentException if there is neither line nor points, no description, an axis
     *     without name and unit, or a value that is not positive on a logarithmic axis
     */
    public Figure figure() {
        return new DrawnFigure(picture());
    }

    Picture picture() {
        required("a line or points", lines.isEmpty() && clouds.isEmpty());
        required("a description; say what it shows with describedBy", description.isEmpty());
        required("a name and a unit of x", xTitle.isEmpty());
        required("a name and a unit of y", yTitle.isEmpty());

        double widest = 0;
        for (Line line : lines) {
            widest = Math.max(widest, TextFace.REGULAR.width(line.name));
        }
        for (Limit limit : limits) {
            widest = Math.max(widest, TextFace.REGULAR.width(limit.name));
        }
        for (Cloud cloud : clouds) {
            widest = Math.max(widest, TextFace.REGULAR.width(cloud.name));
        }
        double tagRoom = widest * Board.SMALL * 1.03 + SAMPLE + 4 * MM;
        double plotWidth = width * MM - tagRoom;
        if (plotWidth < 45 * MM) {
            throw new IllegalArgumentException(
                    "chart \""
                            + title
                            + "\" is "
                            + width
                            + " mm wide, too little for the names of its lines; make it wider or"
                            + " shorten them");
        }

        XYChart chart = chart((int) (plotWidth / POINTS_PER_UNIT));
        PlotRecorder recorder = new PlotRecorder(POINTS_PER_UNIT);
        chart.paint(recorder, chart.getWidth(), chart.getHeight());
        return new Picture(
                title, description, width * MM, height * MM, laidOut(chart, recorder.marks()));
    }

    private XYChart chart(int unitsWide) {
        XYChart chart =
                new XYChartBuilder()
                        .width(unitsWide)
                        .height((int) (height * UNITS_PER_MM))
                        .title("")
                        .xAxisTitle(ROOM_FOR_TITLE)
                        .yAxisTitle(ROOM_FOR_TITLE)
                        .build();
        double[] x = xRange.length > 0 ? onX(xRange) : covered(true);
        double[] y = yRange.length > 0 ? onY(yRange) : covered(false);
        Color unseen = new Color(0, 0, 0, 0);
        Font font = ChartFont.UNIT.deriveFont((float) (Board.SMALL / POINTS_PER_UNIT));
        XYStyler styler = chart.getStyler();
        styler.setLocale(Locale.ROOT);
        styler.setChartTitleVisible(false);
        styler.setLegendVisible(false);
        styler.setAntiAlias(false);
        styler.setChartBackgroundColor(unseen);
        styler.setPlotBackgroundColor(unseen);
        styler.setPlotBorderVisible(false);
        styler.setPlotContentSize(1);
        styler.setPlotMargin(0);
        styler.setChartPadding((int) (1.5 * UNITS_PER_MM));
        // The grid stands at our own ticks.
        styler.setPlotGridLinesVisible(false);
        // Text is measured by the chart, so that there is room for it, but written by us.
        styler.setXAxisTickLabelsColor(unseen);
        styler.setYAxisTickLabelsColor(unseen);
        styler.setAxisTickLabelsFont(font);
        styler.setAxisTitleFont(font);
        styler.setChartFontColor(unseen);
        styler.setAxisTitlePadding((int) (1.6 * UNITS_PER_MM));
        styler.setAxisTickMarksColor(unseen);
        styler.setXAxisTickMarksColor(unseen);
        styler.setYAxisTickMarksColor(unseen);
        styler.setAxisTickMarkLength((int) (0.8 * UNITS_PER_MM));
        styler.setAxisTickPadding((int) UNITS_PER_MM);
        styler.setXAxisTickMarkSpacingHint((int) (16 * UNITS_PER_MM));
        styler.setYAxisTickMarkSpacingHint((int) (9 * UNITS_PER_MM));
        styler.setXAxisTickLabelsFormattingFunction(value -> number(value, logarithmicX));
        styler.setYAxisTickLabelsFormattingFunction(value -> number(value, logarithmicY));
        styler.setXAxisMin(x[0]).setXAxisMax(x[1]).setYAxisMin(y[0]).setYAxisMax(y[1]);
        for (Limit limit : limits) {
            series(
                    chart,
                    "limit " + limit.name,
                    x,
                    onY(new double[] {limit.y, limit.y}),
                    LineStyle.LIMIT);
        }
        for (Line line : lines) {
            series(chart, "line " + line.name, onX(line.x), onY(line.y), line.style);
        }
        if (lines.isEmpty() && limits.isEmpty()) {
            // The chart places its axes by its lines, so points alone need one that is not seen.
            XYSeries unseenLine = chart.addSeries("points", x, new double[] {y[0], y[0]});
            unseenLine.setMarker(SeriesMarkers.NONE);
            unseenLine.setLineColor(unseen);
        }
        return chart;
    }

    private static String number(double value, boolean logarithmic) {
        return Numbers.shortest(logarithmic ? StrictMath.pow(10, value) : value, 8);
    }

    private double[] onX(double[] values) {
        return logarithmicX ? logarithms("x", values) : values;
    }

    private double[] onY(double[] values) {
        return logarithmicY ? logarithms("y", values) : values;
    }

    private double[] logarithms(String axis, double[] values) {
        double[] logarithms = new double[values.length];
        for (int i = 0; i < values.length; i++) {
            if (!(values[i] > 0)) {
                throw new IllegalArgumentException(
                        axis
                                + " of chart \""
                                + title
                                + "\" is "
                                + values[i]
                                + "; it must be positive on a logarithmic axis");
            }
            logarithms[i] = StrictMath.log10(values[i]);
        }
        return logarithms;
    }

    private static void series(
            XYChart chart, String name, double[] x, double[] y, LineStyle style) {
        XYSeries series = chart.addSeries(name, x, y);
        series.setMarker(SeriesMarkers.NONE);
        series.setLineColor(new Color(style.pen().ink().rgb()));
        series.setLineStyle(awt(style.pen()));
    }

    private static BasicStroke awt(Pen pen) {
        float width = (float) (pen.width() / POINTS_PER_UNIT);
        if (pen.dash().isEmpty()) {
            return new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND);
        }
        float[] dash = new float[pen.dash().size()];
        for (int i = 0; i < dash.length; i++) {
            dash[i] = (float) (pen.dash().get(i) / POINTS_PER_UNIT);
        }
        return new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, dash, 0);
    }

    /** Grid, axes, lines and text of the page. */
    private List<Mark> laidOut(XYChart chart, List<Mark> painted) {
        double[] x = {chart.getStyler().getXAxisMin(), chart.getStyler().getXAxisMax()};
        double[] y = {chart.getStyler().getYAxisMin(), chart.getStyler().getYAxisMax()};
        double left = chart.getScreenXFromChart(x[0]) * POINTS_PER_UNIT;
        double right = chart.getScreenXFromChart(x[1]) * POINTS_PER_UNIT;
        double bottom = chart.getScreenYFromChart(y[0]) * POINTS_PER_UNIT;
        double top = chart.getScreenYFromChart(y[1]) * POINTS_PER_UNIT;

        List<Mark> marks = new ArrayList<>();
        Ticks atX =
                logarithmicX
                        ? Ticks.logarithmic(x, left, right, LEAST_BETWEEN_X)
                        : dates
                                ? Ticks.dates(x, left, right, LEAST_BETWEEN_X)
                                : Ticks.along(x, left, right, LEAST_BETWEEN_X);
        Ticks atY =
                logarithmicY
                        ? Ticks.logarithmic(y, bottom, top, LEAST_BETWEEN_Y)
                        : Ticks.along(y, bottom, top, LEAST_BETWEEN_Y);
        for (double tick : atX.places()) {
            marks.add(straight(tick, top, tick, bottom, GRID));
        }
        for (double tick : atY.places()) {
            marks.add(straight(left, tick, right, tick, GRID));
        }
        if (!logarithmicY && y[0] < 0 && y[1] > 0) {
            double zero = chart.getScreenYFromChart(0) * POINTS_PER_UNIT;
            marks.add(straight(left, zero, right, zero, AXIS));
        }
        marks.add(straight(left, top, left, bottom, AXIS));
        marks.add(straight(left, bottom, right, bottom, AXIS));
        marks.addAll(painted);
        for (Cloud cloud : clouds) {
            double[] px = onX(cloud.x);
            double[] py = onY(cloud.y);
            for (int i = 0; i < px.length; i++) {
                if (px[i] >= x[0] && px[i] <= x[1] && py[i] >= y[0] && py[i] <= y[1]) {
                    cloud.marker.draw(
                            marks,
                            chart.getScreenXFromChart(px[i]) * POINTS_PER_UNIT,
                            chart.getScreenYFromChart(py[i]) * POINTS_PER_UNIT);
                }
            }
        }

        tickLabels(marks, atX, true, bottom);
        tickLabels(marks, atY, false, left);
        double pageBottom = height * MM;
        marks.add(
                new Mark.Words(
                        xTitle,
                        (left + right) / 2,
                        pageBottom - 1.2 * MM,
                        Mark.Anchor.MIDDLE,
                        Board.SMALL,
                        0,
                        Ink.BLACK));
        marks.add(
                new Mark.Words(
                        yTitle,
                        1.2 * MM + 0.72 * Board.SMALL,
                        (top + bottom) / 2,
                        Mark.Anchor.MIDDLE,
                        Board.SMALL,
                        -90,
                        Ink.BLACK));
        tags(marks, tagsOf(chart, x, y), right, top, bottom);
        return marks;
    }

    private static void tickLabels(List<Mark> marks, Ticks ticks, boolean horizontal, double axis) {
        double length = 0.8 * MM;
        for (int i = 0; i < ticks.places().size(); i++) {
            double tick = ticks.places().get(i);
            String text = ticks.labels().get(i);
            if (text.isEmpty()) {
                continue;
            }
            if (horizontal) {
                marks.add(straight(tick, axis, tick, axis + length, AXIS));
                marks.add(
                        new Mark.Words(
                                text,
                                tick,
                                axis + 2 * MM + 0.66 * Board.SMALL,
                                Mark.Anchor.MIDDLE,
                                Board.SMALL,
                                0,
                                Ink.BLACK));
            } else {
                marks.add(straight(axis - length, tick, axis, tick, AXIS));
                marks.add(
                        new Mark.Words(
                                text,
                                axis - 1.7 * MM,
                                tick + 0.33 * Board.SMALL,
                                Mark.Anchor.END,
                                Board.SMALL,
                                0,
                                Ink.BLACK));
            }
        }
    }

    private List<Tag> tagsOf(XYChart chart, double[] x, double[] y) {
        List<Tag> tags = new ArrayList<>();
        for (Line line : lines) {
            double[] end = rightEnd(onX(line.x), onY(line.y), x);
            tags.add(tag(chart, line.name, line.style, null, end, y));
        }
        for (Limit limit : limits) {
            double[] end = {x[1], onY(new double[] {limit.y})[0]};
            tags.add(tag(chart, limit.name, LineStyle.LIMIT, null, end, y));
        }
        for (Cloud cloud : clouds) {
            double[] end = rightEnd(onX(cloud.x), onY(cloud.y), x);
            tags.add(tag(chart, cloud.name, LineStyle.MEMBER, cloud.marker, end, y));
        }
        return tags;
    }

    /** The point farthest right within the range. */
    private static double[] rightEnd(double[] px, double[] py, double[] range) {
        int last = -1;
        for (int i = 0; i < px.length; i++) {
            if (px[i] <= range[1] && (last < 0 || px[i] >= px[last])) {
                last = i;
            }
        }
        return new double[] {last < 0 ? range[1] : px[last], last < 0 ? py[0] : py[last]};
    }

    private static Tag tag(
            XYChart chart,
            String name,
            LineStyle style,
            @Nullable Marker marker,
            double[] end,
            double[] range) {
        double x = end[0];
        double inside = Math.min(range[1], Math.max(range[0], end[1]));
        return new Tag(
                name,
                style,
                marker,
                chart.getScreenXFromChart(x) * POINTS_PER_UNIT,
                chart.getScreenYFromChart(inside) * POINTS_PER_UNIT);
    }

    /** Names at the lines' right ends, spread just so far that none covers another. */
    private void tags(List<Mark> marks, List<Tag> tags, double right, double top, double bottom) {
        List<Tag> sorted = new ArrayList<>(tags);
        sorted.sort(Comparator.comparingDouble(Tag::y));
        double[] wanted = sorted.stream().mapToDouble(Tag::y).toArray();
        double[] places = spread(wanted, top + 0.4 * LABEL_PITCH, bottom - 0.4 * LABEL_PITCH);
        for (int i = 0; i < places.length; i++) {
            Tag tag = sorted.get(i);
            double sampleX = right + 2.2 * MM;
            marks.add(
                    straight(
                            tag.x() + 0.3 * MM,
                            tag.y(),
                            sampleX,
                            places[i],
                            Pen.full(0.4, Ink.GREY)));
            Marker marker = tag.marker();
            if (marker == null) {
                marks.add(
                        straight(
                                sampleX,
                                places[i],
                                sampleX + SAMPLE,
                                places[i],
                                tag.style().pen()));
            } else {
                marker.draw(marks, sampleX + SAMPLE / 2, places[i]);
            }
            marks.add(
                    new Mark.Words(
                            tag.text(),
                            sampleX + SAMPLE + 1.2 * MM,
                            places[i] + 0.3 * Board.SMALL,
                            Mark.Anchor.START,
                            Board.SMALL,
                            0,
                            tag.style().words()));
        }
    }

    /** Moves places apart to at least one pitch, within bounds, order kept. */
    static double[] spread(double[] wanted, double first, double last) {
        double[] places = wanted.clone();
        double low = first;
        for (int i = 0; i < places.length; i++) {
            places[i] = Math.max(places[i], low);
            low = places[i] + LABEL_PITCH;
        }
        double high = last;
        for (int i = places.length - 1; i >= 0; i--) {
            places[i] = Math.min(places[i], high);
            high = places[i] - LABEL_PITCH;
        }
        return places;
    }

    private double[] covered(boolean horizontal) {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (Line line : lines) {
            for (double value : horizontal ? onX(line.x) : onY(line.y)) {
                least = Math.min(least, value);
                most = Math.max(most, value);
            }
        }
        for (Cloud cloud : clouds) {
            for (double value : horizontal ? onX(cloud.x) : onY(cloud.y)) {
                least = Math.min(least, value);
                most = Math.max(most, value);
            }
        }
        if (horizontal) {
            if (least == most) {
                throw new IllegalArgumentException(
                        "x of all lines is " + least + "; there must be at least two values");
            }
            // A point at the very edge would be cut; a line may end there.
            double beside = clouds.isEmpty() ? 0 : 0.03 * (most - least);
            return new double[] {least - beside, most + beside};
        }
        for (Limit limit : limits) {
            double at = onY(new double[] {limit.y})[0];
            least = Math.min(least, at);
            most = Math.max(most, at);
        }
        double room = least == most ? Math.max(1, Math.abs(least)) * 0.5 : 0.06 * (most - least);
        // Lines that only just leave zero, as rounded results do, still start from the axis.
        double zero = 1e-6 * (most - least);
        return new double[] {
            Math.abs(least) <= zero ? Math.min(0, least) : least - room,
            Math.abs(most) <= zero ? Math.max(0, most) : most + room
        };
    }

    private void required(String what, boolean missing) {
        if (missing) {
            throw new IllegalArgumentException(
                    "chart \"" + title + "\" must have " + what + "; it has none");
        }
    }

    private static String axisTitle(String axis, String quantity, String unit) {
        String name = Check.printable("name of " + axis, quantity);
        return unit.isEmpty() || unit.equals("1")
                ? name
                : name + " (" + Check.printable("unit of " + axis, unit) + ")";
    }

    private static Mark straight(double x0, double y0, double x1, double y1, Pen pen) {
        return new Mark.Stroke(List.of(new double[] {x0, y0, x1, y1}), false, pen);
    }
}
