package org.skewback.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.jspecify.annotations.Nullable;
import org.skewback.sheet.Figure;
import org.skewback.slope.ProfileLine;
import org.skewback.slope.SectionAnchor;
import org.skewback.slope.SectionForce;
import org.skewback.slope.SliceResult;
import org.skewback.slope.SlipCircle;
import org.skewback.slope.SlipPolygon;
import org.skewback.slope.SlipSurface;
import org.skewback.slope.SlopeSection;
import org.skewback.slope.Surcharge;

/**
 * Draws a section through a slope to one scale: ground and what it was before the cut, layers, the
 * joint set, water, surfaces of sliding with their slices, anchors with free length and bond, and
 * the loads on the ground.
 *
 * <p>Coordinates are those of the section: x to the right in metres, y the level in metres. A
 * drawing in the making belongs to one thread.
 */
public final class SlopeSectionFigure {

    private static final double MM = Board.MILLIMETRE;
    private static final Pen WATER = new Pen(0.9, Ink.BLUE, List.of(6.0, 1.6));
    private static final Pen JOINT = Pen.full(0.45, Ink.HATCH);
    private static final Pen BOND = Pen.full(2.4, Ink.BLACK);
    private static final Pen FORCE = Pen.full(1.1, Ink.RUST);
    private static final int ARC_PARTS = 72;
    private static final LineStyle[] SURFACES = {
        LineStyle.RESULT, LineStyle.SECOND, LineStyle.FOURTH, LineStyle.THIRD
    };

    private final String title;
    private final SlopeSection section;
    private final List<Surface> surfaces = new ArrayList<>();
    private final List<Plane> planes = new ArrayList<>();
    private final List<Remark> remarks = new ArrayList<>();
    private String description = "";
    private @Nullable ProfileLine natural;
    private double jointDip = Double.NaN;
    private double jointSpacing;
    private double blockSide = 1.4;
    private double left;
    private double right;
    private double bottom = Double.NaN;
    private double[] printed = {165, 150};

    /**
     * A surface of sliding.
     *
     * @param name what to call it
     * @param surface the surface
     * @param result its slices
     */
    private record Surface(String name, SlipSurface surface, SliceResult result) {}

    /**
     * A plane of sliding with a tension crack.
     *
     * @param name what to call it
     * @param toe where it comes out
     * @param crackFoot where the crack meets it
     * @param crackTop level of the crack at the ground
     * @param water depth of water in the crack
     */
    private record Plane(String name, Point toe, Point crackFoot, double crackTop, double water) {}

    /**
     * A word beside a point.
     *
     * @param at the point
     * @param text the word
     */
    private record Remark(Point at, String text) {}

    private SlopeSectionFigure(String title, SlopeSection section) {
        this.title = Check.words("title", title);
        this.section = section;
        ProfileLine ground = section.ground();
        left = ground.pointX(0);
        right = ground.pointX(ground.size() - 1);
    }

    /**
     * Starts a drawing by its section.
     *
     * @param title the figure's title, one line
     * @param section the section with its layers, water, loads and anchors
     * @return a drawing of the section alone
     * @throws IllegalArgumentException if the title is blank
     */
    public static SlopeSectionFigure of(String title, SlopeSection section) {
        return new SlopeSectionFigure(title, section);
    }

    /**
     * Says what the figure shows, for whoever cannot see it. Without it there is no figure.
     *
     * @param text one or more sentences
     * @return this drawing
     * @throws IllegalArgumentException if the text is blank
     */
    public SlopeSectionFigure describedBy(String text) {
        description = Check.words("description", text);
        return this;
    }

    /**
     * Draws the ground as it was before the cut, dashed where it differs.
     *
     * @param line the line
     * @return this drawing
     */
    public SlopeSectionFigure naturalGround(ProfileLine line) {
        natural = line;
        return this;
    }

    /**
     * Draws the traces of a joint set as fine dashes in the ground.
     *
     * @param apparentDip apparent dip in the section in degrees, positive where it falls to the
     *     right, from −90 to 90
     * @param spacing distance between the rows of dashes drawn, square to them, in metres, positive;
     *     for legibility, not the spacing of the joints
     * @return this drawing
     * @throws IllegalArgumentException if a value is out of its range
     */
    public SlopeSectionFigure joints(double apparentDip, double spacing) {
        Check.within("apparent dip in degrees", apparentDip, -90, 90);
        Check.positive("spacing of the traces", spacing);
        jointDip = apparentDip;
        jointSpacing = spacing;
        return this;
    }

    /**
     * Draws a surface of sliding with its slices.
     *
     * @param name what to call it, perhaps with its factor of safety
     * @param surface the surface
     * @param result its slices
     * @return this drawing
     * @throws IllegalArgumentException if the name is blank, or there are four surfaces already
     */
    public SlopeSectionFigure slip(String name, SlipSurface surface, SliceResult result) {
        Check.printable("name of the surface", name);
        if (surfaces.size() >= SURFACES.length) {
            throw new IllegalArgumentException(
                    "surface \"" + name + "\" would be the fifth; a section shows at most four");
        }
        surfaces.add(new Surface(name, surface, result));
        return this;
    }

    /**
     * Draws a plane of sliding with an upright tension crack at its upper end.
     *
     * @param name what to call it
     * @param toe where the plane comes out
     * @param crackFoot where the crack meets the plane
     * @param crackTop level of the crack at the ground, at least that of its foot
     * @param water depth of water in the crack in metres, from 0 to its depth
     * @return this drawing
     * @throws IllegalArgumentException if a value is out of its range
     */
    public SlopeSectionFigure plane(
            String name, Point toe, Point crackFoot, double crackTop, double water) {
        Check.printable("name of the plane", name);
        Check.within("level of the crack", crackTop, crackFoot.y(), Double.MAX_VALUE);
        Check.within("depth of water in the crack", water, 0, crackTop - crackFoot.y());
        planes.add(new Plane(name, toe, crackFoot, crackTop, water));
        return this;
    }

    /**
     * Sets the side of the blocks at the anchors' heads.
     *
     * @param side side along the slope in metres, positive; 1.4 unless set
     * @return this drawing
     * @throws IllegalArgumentException if the side is not positive
     */
    public SlopeSectionFigure blocks(double side) {
        blockSide = Check.positive("side of a block", side);
        return this;
    }

    /**
     * Writes beside a point, with a leader.
     *
     * @param at the point
     * @param text what to say, one line
     * @return this drawing
     * @throws IllegalArgumentException if the text is blank
     */
    public SlopeSectionFigure label(Point at, String text) {
        remarks.add(new Remark(at, Check.printable("label", text)));
        return this;
    }

    /**
     * Sets what part of the section is drawn.
     *
     * @param from left end in metres, within the ground line
     * @param to right end in metres, greater, within the ground line
     * @param lowest level to which the ground is drawn in metres, finite
     * @return this drawing
     * @throws IllegalArgumentException if the part leaves the ground line
     */
    public SlopeSectionFigure range(double from, double to, double lowest) {
        ProfileLine ground = section.ground();
        double end = ground.pointX(ground.size() - 1);
        Check.within("left end in m", from, ground.pointX(0), end);
        Check.within("right end in m", to, Math.nextUp(from), end);
        Check.finite("lowest level", lowest);
        left = from;
        right = to;
        bottom = lowest;
        return this;
    }

    /**
     * Sets the printed size.
     *
     * @param widthMillimetres printed width in mm, 40 to 400; 165 unless set
     * @param mostHeightMillimetres greatest printed height in mm, 30 to 560; 150 unless set
     * @return this drawing
     */
    public SlopeSectionFigure size(double widthMillimetres, double mostHeightMillimetres) {
        printed = new double[] {widthMillimetres, mostHeightMillimetres};
        return this;
    }

    /**
     * Draws.
     *
     * @return the figure
     * @throws IllegalArgumentException if nothing is described or a size is out of its range
     */
    public Figure figure() {
        return drawing().figure();
    }

    /**
     * Gives the drawing, to which more can be added: dimensions, levels, labels.
     *
     * @return a drawing that holds all of this section and its scale bar
     */
    public Elevation drawing() {
        Elevation drawing = Elevation.titled(title).size(printed[0], printed[1]);
        if (!description.isEmpty()) {
            drawing.describedBy(description);
        }
        double low = Double.isNaN(bottom) ? lowest() : bottom;
        List<Point> top = line(section.ground(), left, right);
        List<Point> body = new ArrayList<>(top);
        body.add(Point.at(right, low));
        body.add(Point.at(left, low));
        drawing.area(Area.SEEN, body.toArray(new Point[0]));
        if (!Double.isNaN(jointDip)) {
            List<Point[]> traces = traces(low);
            drawing.drawn(Elevation.AREAS, board -> traces(board, traces));
        }
        drawLayers(drawing, low);
        ProfileLine before = natural;
        if (before != null) {
            drawing.line(LineStyle.HIDDEN, line(before, left, right).toArray(new Point[0]));
            labelNatural(drawing, before);
        }
        for (int i = 0; i < surfaces.size(); i++) {
            drawSurface(drawing, surfaces.get(i), SURFACES[i]);
        }
        planes.forEach(plane -> drawPlane(drawing, plane));
        ProfileLine table = section.waterTable();
        if (table != null) {
            drawWater(drawing, table);
        }
        drawing.line(LineStyle.CUT, top.toArray(new Point[0]));
        drawAnchors(drawing);
        drawLoads(drawing);
        remarks.forEach(remark -> drawing.label(remark.at(), remark.text()));
        return drawing.scaleBar();
    }

    private double lowest() {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (Point point : line(section.ground(), left, right)) {
            low = Math.min(low, point.y());
            high = Math.max(high, point.y());
        }
        double span = Math.max(high - low, 0.1 * (right - left));
        for (Surface surface : surfaces) {
            for (Point point : course(surface)) {
                low = Math.min(low, point.y());
            }
        }
        return low - 0.12 * span;
    }

    /** Points of a line between two places, both ends included. */
    private static List<Point> line(ProfileLine line, double from, double to) {
        List<Point> points = new ArrayList<>();
        points.add(Point.at(from, line.y(from)));
        for (int i = 0; i < line.size(); i++) {
            if (line.pointX(i) > from && line.pointX(i) < to) {
                points.add(Point.at(line.pointX(i), line.pointY(i)));
            }
        }
        points.add(Point.at(to, line.y(to)));
        return points;
    }

    private void drawLayers(Elevation drawing, double low) {
        DoubleUnaryOperator above = section.ground()::y;
        int count = section.layers().size();
        for (int i = 0; i < count; i++) {
            DoubleUnaryOperator upper = above;
            DoubleUnaryOperator lower = at -> low;
            if (i + 1 < count) {
                ProfileLine bottomLine = section.layers().get(i).bottom();
                lower = at -> Math.max(low, Math.min(upper.applyAsDouble(at), bottomLine.y(at)));
                List<Point> seen = new ArrayList<>();
                for (Point point : line(bottomLine, left, right)) {
                    seen.add(Point.at(point.x(), lower.applyAsDouble(point.x())));
                }
                drawing.line(LineStyle.CENTRE, seen.toArray(new Point[0]));
            }
            if (count > 1) {
                DoubleUnaryOperator under = lower;
                double at = thickest(upper, under);
                double middle = (upper.applyAsDouble(at) + under.applyAsDouble(at)) / 2;
                drawing.label(Point.at(at, middle), section.layers().get(i).soil().name());
            }
            above = lower;
        }
    }

    private double thickest(DoubleUnaryOperator upper, DoubleUnaryOperator lower) {
        double best = left;
        double most = -1;
        for (int i = 4; i < 37; i++) {
            double at = left + (right - left) * i / 40;
            double thick = upper.applyAsDouble(at) - lower.applyAsDouble(at);
            if (thick > most) {
                most = thick;
                best = at;
            }
        }
        return best;
    }

    /** The natural ground is named where it is farthest from the new one. */
    private void labelNatural(Elevation drawing, ProfileLine before) {
        double best = left;
        double most = 0;
        for (int i = 0; i <= 200; i++) {
            double at = left + (right - left) * i / 200;
            double off = Math.abs(before.y(at) - section.ground().y(at));
            if (off > most) {
                most = off;
                best = at;
            }
        }
        if (most > 0) {
            drawing.label(Point.at(best, before.y(best)), "natural ground");
        }
    }

    /** Dashes along the joints, staggered from row to row, kept below the ground. */
    private List<Point[]> traces(double low) {
        double angle = StrictMath.toRadians(jointDip);
        double ux = StrictMath.cos(angle);
        double uy = -StrictMath.sin(angle);
        double dash = 1.3 * jointSpacing;
        double pitch = 2.6 * jointSpacing;
        double x0 = (left + right) / 2;
        double y0 = low;
        double reach = (right - left) + 2 * (highest() - low);
        int rows = (int) Math.ceil(reach / jointSpacing);
        int steps = (int) Math.ceil(reach / pitch);
        List<Point[]> traces = new ArrayList<>();
        for (int row = -rows; row <= rows; row++) {
            for (int step = -steps; step <= steps; step++) {
                double along = (step + (row % 2 == 0 ? 0 : 0.5)) * pitch;
                double ax = x0 + along * ux - row * jointSpacing * uy;
                double ay = y0 + along * uy + row * jointSpacing * ux;
                double bx = ax + dash * ux;
                double by = ay + dash * uy;
                if (inGround(ax, ay, low) && inGround(bx, by, low)) {
                    traces.add(new Point[] {Point.at(ax, ay), Point.at(bx, by)});
                }
            }
        }
        return traces;
    }

    private boolean inGround(double x, double y, double low) {
        return x > left && x < right && y > low && y < section.ground().y(x);
    }

    private double highest() {
        return line(section.ground(), left, right).stream()
                .mapToDouble(Point::y)
                .max()
                .orElseThrow();
    }

    /** Traces are no obstacle to text, which stands on white. */
    private static void traces(Board board, List<Point[]> traces) {
        List<double[]> lines =
                traces.stream().map(trace -> board.page(List.of(trace[0], trace[1]))).toList();
        if (!lines.isEmpty()) {
            board.marks().add(new Mark.Stroke(lines, false, JOINT));
        }
    }

    private void drawSurface(Elevation drawing, Surface surface, LineStyle style) {
        List<Point> course = course(surface);
        if (course.size() < 2) {
            return;
        }
        ProfileLine ground = section.ground();
        List<double[]> edges = new ArrayList<>();
        for (SliceResult.Slice slice : surface.result().slices()) {
            double at = slice.x() + slice.width() / 2;
            edges.add(new double[] {at, level(surface, at), ground.y(at)});
        }
        drawing.drawn(
                Elevation.AREAS,
                board -> {
                    List<double[]> lines = new ArrayList<>();
                    for (double[] e : edges) {
                        if (e[0] >= left && e[0] <= right && e[2] > e[1]) {
                            lines.add(
                                    new double[] {
                                        board.x(e[0]), board.y(e[1]), board.x(e[0]), board.y(e[2])
                                    });
                        }
                    }
                    if (!lines.isEmpty()) {
                        board.marks().add(new Mark.Stroke(lines, false, Pen.full(0.4, Ink.GREY)));
                    }
                });
        drawing.line(style, course.toArray(new Point[0]));
        Point middle = course.get((int) (0.55 * (course.size() - 1)));
        drawing.label(middle, surface.name(), style);
    }

    /** The surface from end to end, within what is drawn, with the upright crack at its upper end. */
    private List<Point> course(Surface surface) {
        double from = Double.POSITIVE_INFINITY;
        double to = Double.NEGATIVE_INFINITY;
        for (SliceResult.Slice slice : surface.result().slices()) {
            from = Math.min(from, slice.x() - slice.width() / 2);
            to = Math.max(to, slice.x() + slice.width() / 2);
        }
        from = Math.max(from, left);
        to = Math.min(to, right);
        List<Point> points = new ArrayList<>();
        if (!(from < to)) {
            return points;
        }
        if (surface.surface() instanceof SlipPolygon polygon) {
            points.addAll(line(polygon.line(), from, to));
        } else {
            for (int i = 0; i <= ARC_PARTS; i++) {
                double at = from + (to - from) * i / ARC_PARTS;
                points.add(Point.at(at, level(surface, at)));
            }
        }
        ProfileLine ground = section.ground();
        double small = 1e-3 * (to - from);
        Point first = points.get(0);
        Point last = points.get(points.size() - 1);
        if (ground.y(first.x()) - first.y() > small && first.x() > left) {
            points.add(0, Point.at(first.x(), ground.y(first.x())));
        }
        if (ground.y(last.x()) - last.y() > small && last.x() < right) {
            points.add(Point.at(last.x(), ground.y(last.x())));
        }
        return points;
    }

    private static double level(Surface surface, double at) {
        if (surface.surface() instanceof SlipCircle circle) {
            double off = at - circle.x();
            return circle.y()
                    - Math.sqrt(Math.max(0, circle.radius() * circle.radius() - off * off));
        }
        return ((SlipPolygon) surface.surface()).line().y(at);
    }

    private static void drawPlane(Elevation drawing, Plane plane) {
        Point top = Point.at(plane.crackFoot().x(), plane.crackTop());
        drawing.line(LineStyle.RESULT, plane.toe(), plane.crackFoot());
        if (plane.crackTop() > plane.crackFoot().y()) {
            drawing.line(LineStyle.MEMBER, plane.crackFoot(), top);
        }
        if (plane.water() > 0) {
            double surface = plane.crackFoot().y() + plane.water();
            drawing.drawn(
                    Elevation.LOADS,
                    board -> {
                        double x = board.x(plane.crackFoot().x());
                        double foot = board.y(plane.crackFoot().y());
                        board.segment(x, foot, x, board.y(surface), Pen.full(2.2, Ink.BLUE));
                        waterMark(board, x, board.y(surface));
                    });
        }
        drawing.label(
                Point.at(
                        0.65 * plane.toe().x() + 0.35 * plane.crackFoot().x(),
                        0.65 * plane.toe().y() + 0.35 * plane.crackFoot().y()),
                plane.name(),
                LineStyle.RESULT);
    }

    private void drawWater(Elevation drawing, ProfileLine table) {
        List<Point> points = line(table, left, right);
        double at = left + 0.3 * (right - left);
        drawing.drawn(Elevation.LINES, board -> board.stroke(board.page(points), false, WATER));
        drawing.drawn(
                Elevation.LOADS, board -> waterMark(board, board.x(at), board.y(table.y(at))));
        drawing.label(Point.at(at, table.y(at)), "water table", LineStyle.RESULT);
    }

    /** A triangle that stands on the water, with two strokes below it. */
    private static void waterMark(Board board, double x, double y) {
        double half = 1.1 * MM;
        double[] triangle = {x, y, x - half, y - 1.8 * MM, x + half, y - 1.8 * MM};
        board.fill(triangle, Ink.WHITE);
        board.stroke(triangle, true, Pen.full(0.6, Ink.BLUE));
        board.segment(x - half, y + 0.6 * MM, x + half, y + 0.6 * MM, Pen.full(0.6, Ink.BLUE));
        board.segment(
                x - half / 2, y + 1.2 * MM, x + half / 2, y + 1.2 * MM, Pen.full(0.6, Ink.BLUE));
    }

    private void drawAnchors(Elevation drawing) {
        ProfileLine ground = section.ground();
        double into = ground.pointY(0) >= ground.pointY(ground.size() - 1) ? -1 : 1;
        boolean named = false;
        for (SectionAnchor anchor : section.anchors()) {
            double dx = into * StrictMath.cos(anchor.plunge());
            double dy = -StrictMath.sin(anchor.plunge());
            Point head = Point.at(anchor.x(), anchor.y());
            Point bond =
                    Point.at(
                            head.x() + dx * anchor.freeLength(),
                            head.y() + dy * anchor.freeLength());
            double all = anchor.freeLength() + anchor.bondLength();
            Point end = Point.at(head.x() + dx * all, head.y() + dy * all);
            drawing.line(LineStyle.MEMBER, head, bond);
            drawing.drawn(
                    Elevation.LINES,
                    board ->
                            board.segment(
                                    board.x(bond.x()),
                                    board.y(bond.y()),
                                    board.x(end.x()),
                                    board.y(end.y()),
                                    BOND));
            drawBlock(drawing, head, dx, dy);
            if (!named) {
                drawing.label(
                        Point.at((head.x() + bond.x()) / 2, (head.y() + bond.y()) / 2),
                        "free length");
                drawing.label(Point.at((bond.x() + end.x()) / 2, (bond.y() + end.y()) / 2), "bond");
                named = true;
            }
        }
    }

    private void drawBlock(Elevation drawing, Point head, double dx, double dy) {
        double half = blockSide / 2;
        double deep = blockSide / 2.8;
        Point[] corners = {
            Point.at(head.x() - dy * half, head.y() + dx * half),
            Point.at(head.x() - dy * half - dx * deep, head.y() + dx * half - dy * deep),
            Point.at(head.x() + dy * half - dx * deep, head.y() - dx * half - dy * deep),
            Point.at(head.x() + dy * half, head.y() - dx * half)
        };
        drawing.area(Area.CUT, corners).outline(LineStyle.MEMBER, corners);
    }

    private void drawLoads(Elevation drawing) {
        for (Surcharge load : section.surcharges()) {
            double from = Math.max(left, load.from());
            double to = Math.min(right, load.to());
            if (from < to) {
                drawing.drawn(Elevation.LOADS, board -> surcharge(board, from, to));
                double at = (from + to) / 2;
                drawing.label(
                        Point.at(at, section.ground().y(at)),
                        Numbers.shortest(load.pressure() / 1000, 0) + " kPa");
            }
        }
        double most =
                section.forces().stream()
                        .mapToDouble(f -> StrictMath.hypot(f.horizontal(), f.downward()))
                        .max()
                        .orElse(0);
        for (SectionForce force : section.forces()) {
            double size = StrictMath.hypot(force.horizontal(), force.downward());
            if (size == 0) {
                continue;
            }
            double length = Math.max(6, 17 * size / most) * MM;
            drawing.drawn(
                    Elevation.LOADS,
                    board -> {
                        double x = board.x(force.x());
                        double y = board.y(force.y());
                        double ux = force.horizontal() / size;
                        double uy = force.downward() / size;
                        board.segment(
                                x - ux * length,
                                y - uy * length,
                                x - ux * 2 * MM,
                                y - uy * 2 * MM,
                                FORCE);
                        board.arrowhead(x, y, ux, uy, 2.8 * MM, Ink.RUST);
                    });
            drawing.label(
                    Point.at(force.x(), force.y()),
                    Numbers.shortest(size / 1000, 0) + " kN/m",
                    LineStyle.SECOND);
        }
    }

    private void surcharge(Board board, double from, double to) {
        double length = 4.5 * MM;
        int count = (int) Math.max(2, Math.round(board.x(to - from) / (4 * MM)));
        for (int i = 0; i <= count; i++) {
            double at = from + (to - from) * i / count;
            double x = board.x(at);
            double y = board.y(section.ground().y(at));
            board.segment(x, y - length, x, y - MM, Pen.full(0.7, Ink.RUST));
            board.arrowhead(x, y, 0, 1, 1.8 * MM, Ink.RUST);
        }
    }
}
