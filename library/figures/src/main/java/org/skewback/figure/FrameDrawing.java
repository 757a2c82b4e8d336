package org.skewback.figure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.skewback.frame.FrameModel;
import org.skewback.frame.Vector;

/**
 * Draws the model of a frame: members by kind, nodes, supports by the directions that they hold,
 * joints, springs and links, with names and dimensions where wanted.
 *
 * <p>In elevation, plan and cross-section lengths are true and there is a scale bar; signs show what is
 * held in the plane of the picture. In an axonometric view the axes carry the scale.
 */
public final class FrameDrawing extends FrameFigure<FrameDrawing> {

    /** More names than this do not fit a page. */
    static final int MOST_NAMES = 400;

    /** A name that would break two lines is better left out. */
    private static final double CLEAR = 12;

    /** More dots than this say nothing. */
    private static final int MOST_DOTS = 600;

    private final List<Dimension> dimensions = new ArrayList<>();
    private List<String> nodeNames = List.of();
    private List<String> memberNames = List.of();
    private boolean allNodes;
    private boolean allMembers;
    private boolean overall = true;

    /**
     * A distance to show.
     *
     * @param name word before the value; may be empty
     * @param from first node
     * @param to second node
     * @param level whether along the horizontal of the picture, else along its vertical
     */
    private record Dimension(String name, String from, String to, boolean level) {}

    private FrameDrawing(String title, FrameModel model) {
        super(title, model, FrameView.elevation());
    }

    /**
     * Starts the drawing of a model, in elevation.
     *
     * @param title the figure's title, one line
     * @param model the model
     * @return a drawing of all members, with the overall dimensions and without names
     * @throws IllegalArgumentException if the title is blank
     */
    public static FrameDrawing of(String title, FrameModel model) {
        return new FrameDrawing(title, model);
    }

    @Override
    FrameDrawing self() {
        return this;
    }

    /**
     * Writes names of nodes where there is room for them.
     *
     * @param names the nodes; none for all that are shown, at most 400
     * @return this drawing
     * @throws IllegalArgumentException if a node is not in the model
     */
    public FrameDrawing nodeNames(String... names) {
        nodeNames = List.of(names);
        nodeNames.forEach(model()::node);
        allNodes = names.length == 0;
        return this;
    }

    /**
     * Writes names of members where there is room for them.
     *
     * @param names the members; none for all that are shown, at most 400
     * @return this drawing
     * @throws IllegalArgumentException if a member is not in the model
     */
    public FrameDrawing memberNames(String... names) {
        memberNames = List.of(names);
        memberNames.forEach(model()::member);
        allMembers = names.length == 0;
        return this;
    }

    /**
     * Dimensions the distance of two nodes along the picture's horizontal. The overall dimensions give
     * way to those asked for.
     *
     * @param name word before the value, such as span; empty for none
     * @param from first node
     * @param to second node
     * @return this drawing
     * @throws IllegalArgumentException if a node is not in the model
     */
    public FrameDrawing horizontalDimension(String name, String from, String to) {
        return dimension(name, from, to, true);
    }

    /**
     * Dimensions the distance of two nodes along the picture's vertical. The overall dimensions give
     * way to those asked for.
     *
     * @param name word before the value, such as rise; empty for none
     * @param from first node
     * @param to second node
     * @return this drawing
     * @throws IllegalArgumentException if a node is not in the model
     */
    public FrameDrawing verticalDimension(String name, String from, String to) {
        return dimension(name, from, to, false);
    }

    private FrameDrawing dimension(String name, String from, String to, boolean level) {
        model().node(from);
        model().node(to);
        String word = name.isEmpty() ? "" : Check.printable("dimension name", name);
        dimensions.add(new Dimension(word, from, to, level));
        overall = false;
        return this;
    }

    @Override
    Picture picture() {
        FrameScene scene = scene();
        List<String> nodes = allNodes ? List.copyOf(scene.nodes().keySet()) : nodeNames;
        List<String> members =
                allMembers ? scene.lines().stream().map(MemberLine::name).toList() : memberNames;
        requireFew("nodes", nodes.size());
        requireFew("members", members.size());
        return Fit.picture(
                title(),
                described(words(scene), ""),
                width(),
                mostHeight(),
                scene.extent(view()),
                scale -> drawn(scene, scale, nodes, members));
    }

    private static void requireFew(String what, int count) {
        if (count > MOST_NAMES) {
            throw new IllegalArgumentException(
                    "names of "
                            + what
                            + " to write are "
                            + count
                            + "; allowed are at most "
                            + MOST_NAMES
                            + ", so name those that matter");
        }
    }

    private String words(FrameScene scene) {
        long held =
                model().supports().stream()
                        .map(support -> support.node())
                        .filter(scene.nodes()::containsKey)
                        .distinct()
                        .count();
        double[] b = scene.extent(view());
        String text =
                "Frame model in "
                        + (view().isTrue() ? "" : "an ")
                        + view().name()
                        + ": "
                        + count(scene.lines().size(), "member")
                        + " between "
                        + count(scene.nodes().size(), "node")
                        + ", "
                        + count((int) held, "node")
                        + " held by supports";
        return view().isTrue()
                ? text
                        + "; "
                        + Numbers.shortest(b[2] - b[0], 2)
                        + " m wide and "
                        + Numbers.shortest(b[3] - b[1], 2)
                        + " m high in the picture."
                : text + ".";
    }

    private Board drawn(FrameScene scene, double scale, List<String> nodes, List<String> members) {
        Board board = new Board(scale);
        FramePage page = new FramePage(board, view());
        Set<FrameSign> used = EnumSet.noneOf(FrameSign.class);
        Set<MemberKind> kinds = scene.drawMembers(page, used);
        scene.drawSupports(page, 1, used);
        if (scene.nodes().size() <= MOST_DOTS) {
            scene.drawNodes(page);
            scene.drawJoints(page, used);
        }
        drawDimensions(scene, page);
        int left = writeNames(scene, page, nodes, members);
        FrameFooter footer = new FrameFooter(board, room());
        if (view().isTrue()) {
            footer.axes(view(), 8 * MM, "");
            footer.scaleBar();
        } else {
            double each = Numbers.niceBelow(16 * MM / scale);
            footer.axes(view(), each * scale, "each axis " + Numbers.shortest(each, 6) + " m");
        }
        kinds.forEach(kind -> footer.key(kind.pen(), kind.words()));
        used.forEach(footer::key);
        List<String> all = new ArrayList<>();
        all.add(view().isTrue() ? "seen in " + view().name() : view().name());
        if (view().isTrue() && !used.isEmpty() && !model().isInPlane() && !isFlat(model())) {
            all.add("signs show what is held or released in the plane of the picture");
        }
        if (left > 0) {
            all.add(count(left, "name") + " left out for want of room");
        }
        all.addAll(notes());
        footer.notes(all);
        return board;
    }

    private int writeNames(
            FrameScene scene, FramePage page, List<String> nodes, List<String> members) {
        int left = 0;
        for (String name : nodes) {
            Vector place = scene.nodes().get(name);
            if (place == null) {
                throw new IllegalArgumentException(
                        "node " + name + " is to be named but has no member that is shown");
            }
            Check.printable("name of node", name);
            double[] way = {0, -1};
            left +=
                    NearText.write(
                                    page.board(),
                                    page.x(place),
                                    page.y(place),
                                    name,
                                    Ink.BLACK,
                                    way,
                                    9,
                                    CLEAR)
                            ? 0
                            : 1;
        }
        List<MemberLine> beside = new ArrayList<>();
        for (MemberLine line : scene.lines()) {
            if (!allMembers && !members.contains(line.name())) {
                continue;
            }
            Check.printable("name of member", line.name());
            double[] xy = page.line(line.start(), line.end());
            if (!NearText.along(page.board(), xy, line.name(), Ink.RUST)) {
                beside.add(line);
            }
        }
        for (MemberLine line : beside) {
            double[] xy = page.line(line.start(), line.end());
            double[] way = {xy[3] - xy[1], xy[0] - xy[2]};
            left +=
                    NearText.write(
                                    page.board(),
                                    (xy[0] + xy[2]) / 2,
                                    (xy[1] + xy[3]) / 2,
                                    line.name(),
                                    Ink.RUST,
                                    way[1] > 0 ? new double[] {-way[0], -way[1]} : way,
                                    13,
                                    CLEAR)
                            ? 0
                            : 1;
        }
        return left;
    }

    private void drawDimensions(FrameScene scene, FramePage page) {
        if (!view().isTrue()) {
            return;
        }
        double[] b = scene.extent(view());
        double low = -b[3];
        double offLow = 9 * MM / page.board().scale();
        if (overall) {
            if (b[2] > b[0]) {
                across(page, "", Point.at(b[0], low), Point.at(b[2], low), low - offLow);
            }
            if (b[3] > b[1]) {
                up(page, "", Point.at(b[2], -b[3]), Point.at(b[2], -b[1]), b[2] + offLow);
            }
        }
        int[] rows = new int[4];
        // The short ones inside, so that help lines cross no other dimension.
        List<Dimension> inTurn = new ArrayList<>(dimensions);
        inTurn.sort(Comparator.comparingDouble(this::seen));
        for (Dimension dimension : inTurn) {
            if (seen(dimension) == 0) {
                throw new IllegalArgumentException(
                        "dimension from node "
                                + dimension.from()
                                + " to node "
                                + dimension.to()
                                + " is 0 m in the "
                                + view().name()
                                + "; the nodes must be seen apart");
            }
            Point a = point(dimension.from());
            Point c = point(dimension.to());
            if (dimension.level()) {
                boolean above = (a.y() + c.y()) / 2 > -(b[1] + b[3]) / 2;
                double off = offLow * (1 + 0.75 * rows[above ? 1 : 0]++);
                across(page, dimension.name(), a, c, above ? off - b[1] : -b[3] - off);
            } else {
                boolean right = (a.x() + c.x()) / 2 >= (b[0] + b[2]) / 2;
                double off = offLow * (1 + 0.75 * rows[right ? 3 : 2]++);
                up(page, dimension.name(), a, c, right ? b[2] + off : b[0] - off);
            }
        }
    }

    private Point point(String node) {
        Vector place = model().node(node).place();
        return Point.at(view().x(place), view().y(place));
    }

    private double seen(Dimension dimension) {
        Point a = point(dimension.from());
        Point c = point(dimension.to());
        return dimension.level() ? Math.abs(a.x() - c.x()) : Math.abs(a.y() - c.y());
    }

    private static void across(FramePage page, String name, Point from, Point to, double y) {
        String text = measured(name, Math.abs(to.x() - from.x()));
        Annotations.level(page.board(), from, to, y, text);
    }

    private static void up(FramePage page, String name, Point from, Point to, double x) {
        String text = measured(name, Math.abs(to.y() - from.y()));
        Annotations.upright(page.board(), from, to, x, text);
    }

    private static String measured(String name, double distance) {
        return (name.isEmpty() ? "" : name + " ") + Numbers.shortest(distance, 2) + " m";
    }
}
