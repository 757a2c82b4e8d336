package org.skewback.figure;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import org.skewback.frame.BeamColumn;
import org.skewback.frame.EndConnection;
import org.skewback.frame.FrameModel;
import org.skewback.frame.Member;
import org.skewback.frame.Motion;
import org.skewback.frame.Support;
import org.skewback.frame.Vector;

/** The part of a model that a figure shows: members, their nodes, and what holds these. */
final class FrameScene {

    private static final double MM = Board.MILLIMETRE;

    /** Nodes nearer together than this on the page, in points, are one dot. */
    private static final double ONE_DOT = 0.5;

    /** A member of which less is seen than this share of its length is a point. */
    private static final double END_ON = 1e-6;

    /** Signs of joints stand this far from their node. */
    private static final double OFF_NODE = 1.5 * MM;

    private final FrameModel model;
    private final List<MemberLine> lines = new ArrayList<>();
    private final Map<String, Vector> nodes = new LinkedHashMap<>();
    private final Map<String, List<Support>> supports = new LinkedHashMap<>();
    private final Map<String, List<Vector>> directions = new LinkedHashMap<>();

    FrameScene(FrameModel model, Predicate<Member> which) {
        this.model = model;
        for (Member member : model.members()) {
            if (which.test(member)) {
                add(MemberLine.of(model, member));
            }
        }
        for (Support support : model.supports()) {
            if (nodes.containsKey(support.node())) {
                supports.computeIfAbsent(support.node(), fresh -> new ArrayList<>()).add(support);
            }
        }
    }

    private void add(MemberLine line) {
        lines.add(line);
        nodes.put(line.member().start(), line.startNode());
        nodes.put(line.member().end(), line.endNode());
        Vector along = line.endNode().minus(line.startNode());
        if (along.length() > 0) {
            join(line.member().start(), along.unit());
            join(line.member().end(), along.unit().times(-1));
        }
    }

    private void join(String node, Vector direction) {
        directions.computeIfAbsent(node, fresh -> new ArrayList<>()).add(direction);
    }

    FrameModel model() {
        return model;
    }

    List<MemberLine> lines() {
        return lines;
    }

    /** Nodes at which the members drawn join, in the order in which they are met. */
    Map<String, Vector> nodes() {
        return nodes;
    }

    /** Bounds of the nodes in a view at scale 1: left, top, right, bottom, downwards positive. */
    double[] extent(FrameView view) {
        double[] b = {
            Double.POSITIVE_INFINITY,
            Double.POSITIVE_INFINITY,
            Double.NEGATIVE_INFINITY,
            Double.NEGATIVE_INFINITY
        };
        for (MemberLine line : lines) {
            for (Vector place :
                    List.of(line.startNode(), line.start(), line.end(), line.endNode())) {
                b[0] = Math.min(b[0], view.x(place));
                b[1] = Math.min(b[1], -view.y(place));
                b[2] = Math.max(b[2], view.x(place));
                b[3] = Math.max(b[3], -view.y(place));
            }
        }
        return b;
    }

    /** Larger of width and height in a view, m. */
    double reach(FrameView view) {
        double[] b = extent(view);
        return Math.max(b[2] - b[0], b[3] - b[1]);
    }

    /** Draws the members by kind, with their rigid arms; gives the kinds drawn. */
    Set<MemberKind> drawMembers(FramePage page, Set<FrameSign> used) {
        Map<MemberKind, LineBundle> bundles = new EnumMap<>(MemberKind.class);
        LineBundle arms = new LineBundle();
        for (MemberLine line : lines) {
            if (line.isLink()) {
                drawLink(page, line, used);
                continue;
            }
            if (!isEndOn(page, line)) {
                bundles.computeIfAbsent(MemberKind.of(line.member()), fresh -> new LineBundle())
                        .add(page.line(line.start(), line.end()));
            }
            if (addArms(page, line, arms)) {
                used.add(FrameSign.ARM);
            }
        }
        arms.draw(page.board(), FrameSign.ARM_PEN);
        // Heavy lines last, so that none is broken by a thin one that lies on it.
        List<MemberKind> kinds = new ArrayList<>(bundles.keySet());
        for (int i = kinds.size() - 1; i >= 0; i--) {
            bundles.getOrDefault(kinds.get(i), new LineBundle())
                    .draw(page.board(), kinds.get(i).pen());
        }
        return bundles.keySet();
    }

    /** Whether a member is seen as a point. */
    private static boolean isEndOn(FramePage page, MemberLine line) {
        return page.view().seen(line.end().minus(line.start())) < END_ON * line.length();
    }

    private static boolean addArms(FramePage page, MemberLine line, LineBundle arms) {
        boolean any = false;
        if (!line.start().equals(line.startNode())) {
            arms.add(page.line(line.startNode(), line.start()));
            any = true;
        }
        if (!line.end().equals(line.endNode())) {
            arms.add(page.line(line.end(), line.endNode()));
            any = true;
        }
        return any;
    }

    private static void drawLink(FramePage page, MemberLine line, Set<FrameSign> used) {
        double[] xy = page.line(line.startNode(), line.endNode());
        if (StrictMath.hypot(xy[2] - xy[0], xy[3] - xy[1]) > 4 * MM) {
            page.board()
                    .stroke(
                            FrameSign.zigzag(xy[0], xy[1], xy[2], xy[3]),
                            false,
                            MemberKind.LINK.pen());
        } else {
            FrameSign.LINK.draw(page.board(), (xy[0] + xy[2]) / 2, (xy[1] + xy[3]) / 2, 1, 0, 1);
        }
        used.add(FrameSign.LINK);
    }

    /** Draws the members' axes with one pen. */
    void drawAxes(FramePage page, Pen pen) {
        LineBundle bundle = new LineBundle();
        for (MemberLine line : lines) {
            if (!line.isLink() && !isEndOn(page, line)) {
                bundle.add(page.line(line.start(), line.end()));
            }
        }
        bundle.draw(page.board(), pen);
    }

    void drawNodes(FramePage page) {
        Set<List<Long>> drawn = new HashSet<>();
        for (Vector place : nodes.values()) {
            double x = page.x(place);
            double y = page.y(place);
            if (drawn.add(List.of(Math.round(x / ONE_DOT), Math.round(y / ONE_DOT)))) {
                page.board().fill(Annotations.disc(x, y, 0.45 * MM), Ink.BLACK);
            }
        }
    }

    /** Draws the signs of all supports of nodes drawn. */
    void drawSupports(FramePage page, double size, Set<FrameSign> used) {
        supports.forEach((node, held) -> drawSupport(page, size, used, node, held));
    }

    void drawSupport(
            FramePage page, double size, Set<FrameSign> used, String node, List<Support> held) {
        Vector place = model.node(node).place();
        new SupportSigns(page, size, used).draw(place, held, model.isInPlane(), away(page, node));
    }

    /** Mean direction on the page away from the members that join at a node. */
    private double[] away(FramePage page, String node) {
        double[] sum = new double[2];
        List<Vector> joined = directions.getOrDefault(node, List.of());
        for (Vector direction : joined) {
            double[] way = page.direction(direction);
            sum[0] -= way[0] / joined.size();
            sum[1] -= way[1] / joined.size();
        }
        return sum;
    }

    /** Draws what is released or sprung at the ends of members. */
    void drawJoints(FramePage page, Set<FrameSign> used) {
        for (MemberLine line : lines) {
            if (line.member() instanceof BeamColumn beam) {
                joint(page, line, line.start(), line.end(), beam.startConnection(), used);
                joint(page, line, line.end(), line.start(), beam.endConnection(), used);
            }
        }
    }

    private void joint(
            FramePage page,
            MemberLine line,
            Vector at,
            Vector other,
            EndConnection connection,
            Set<FrameSign> used) {
        if (connection.equals(EndConnection.RIGID)) {
            return;
        }
        double[] xy = page.line(at, other);
        double length = StrictMath.hypot(xy[2] - xy[0], xy[3] - xy[1]);
        if (length < 4 * OFF_NODE) {
            return;
        }
        double ux = (xy[2] - xy[0]) / length;
        double uy = (xy[3] - xy[1]) / length;
        double off = OFF_NODE;
        for (FrameSign sign : signs(page.view(), line, connection)) {
            sign.draw(page.board(), xy[0] + off * ux, xy[1] + off * uy, ux, uy, 1);
            used.add(sign);
            off += 1.3 * OFF_NODE;
        }
    }

    /** Hinges and springs about axes that are seen as a turn in the picture, and all that slides. */
    private Set<FrameSign> signs(FrameView view, MemberLine line, EndConnection connection) {
        Set<FrameSign> signs = EnumSet.noneOf(FrameSign.class);
        List<Vector> axes = model.localAxes(line.name());
        for (Motion motion : Motion.values()) {
            double stiffness = connection.stiffness(motion);
            if (stiffness == Double.POSITIVE_INFINITY) {
                continue;
            }
            boolean bending = motion.isRotation() && motion != Motion.ABOUT_X;
            Vector axis = axes.get(motion == Motion.ABOUT_Y ? 1 : 2);
            if (bending && view.isTrue() && Math.abs(axis.dot(view.towards())) < 0.5) {
                continue;
            }
            if (!bending) {
                signs.add(FrameSign.SLIDING_JOINT);
            } else {
                signs.add(stiffness == 0 ? FrameSign.HINGE : FrameSign.SPRUNG_JOINT);
            }
        }
        return signs;
    }
}
