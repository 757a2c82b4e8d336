package org.skewback.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.skewback.frame.Support;
import org.skewback.frame.Vector;

/** Chooses and draws the signs of what holds a node, by the directions that are held. */
final class SupportSigns {

    /** A direction of which less is seen runs towards the eye. */
    private static final double SEEN = 0.35;

    private static final double SAME = 1e-3;

    private final FramePage page;
    private final double size;
    private final Set<FrameSign> used;

    /**
     * Makes ready to draw.
     *
     * @param page the page
     * @param size 1 for signs of the usual size
     * @param used the signs drawn are added to it
     */
    SupportSigns(FramePage page, double size, Set<FrameSign> used) {
        this.page = page;
        this.size = size;
        this.used = used;
    }

    /**
     * Draws what holds a node.
     *
     * @param place the node's place
     * @param supports its supports
     * @param inPlane whether the whole model moves in the x–z plane only
     * @param away page direction away from the members that join there; (0, 0) where unknown
     */
    void draw(Vector place, List<Support> supports, boolean inPlane, double[] away) {
        List<Vector> moves = new ArrayList<>();
        List<Vector> turns = new ArrayList<>();
        double x = page.x(place);
        double y = page.y(place);
        for (Support support : supports) {
            if (support.rigid()) {
                addIndependent(support.rotation() ? turns : moves, support.direction());
            }
        }
        if (page.view().isTrue()) {
            drawInPlane(x, y, moves, turns, away);
        } else {
            drawInSpace(x, y, moves, inPlane ? 3 : turns.size(), turns, away);
        }
        for (Support support : supports) {
            if (!support.rigid()) {
                spring(x, y, support, away);
            }
        }
    }

    private void drawInPlane(
            double x, double y, List<Vector> moves, List<Vector> turns, double[] away) {
        List<Vector> seen = new ArrayList<>();
        for (Vector move : moves) {
            if (page.view().seen(move) > SEEN) {
                addIndependent(seen, projected(move));
            }
        }
        Vector eye = page.view().towards();
        boolean turning = turns.stream().anyMatch(turn -> Math.abs(turn.dot(eye)) > 0.9);
        double[] down = downwards(away);
        if (seen.size() >= 2) {
            // A clamp stands across the members, a pin on level ground.
            if (turning) {
                sign(FrameSign.CLAMP, x, y, known(away) ? away : down);
            } else {
                sign(FrameSign.PIN, x, y, down);
            }
        } else if (seen.size() == 1) {
            double[] along = outwards(page.direction(seen.get(0)), away);
            sign(turning ? FrameSign.GUIDE : FrameSign.ROLLER, x, y, along);
        } else if (turning) {
            sign(FrameSign.TURN, x, y, down);
        }
    }

    private void drawInSpace(
            double x, double y, List<Vector> moves, int held, List<Vector> turns, double[] away) {
        double[] down = downwards(away);
        if (moves.size() == 3) {
            sign(held == 3 ? FrameSign.CLAMP : FrameSign.PIN, x, y, down);
        } else {
            for (Vector move : moves) {
                if (page.view().seen(move) > SEEN) {
                    sign(FrameSign.STRUT, x, y, outwards(page.direction(move), away));
                }
            }
        }
        if (moves.size() == 3 && turns.size() == 2) {
            axis(FrameSign.FREE_AXIS, x, y, turns.get(0).cross(turns.get(1)));
        } else if (held != 3 || moves.size() != 3) {
            turns.forEach(turn -> axis(FrameSign.TURN_AXIS, x, y, turn));
        }
    }

    private void axis(FrameSign sign, double x, double y, Vector axis) {
        if (page.view().seen(axis) > SEEN) {
            sign(sign, x, y, page.direction(axis));
        }
    }

    private void spring(double x, double y, Support spring, double[] away) {
        if (spring.rotation()) {
            double facing = Math.abs(spring.direction().dot(page.view().towards()));
            if (!page.view().isTrue() || facing > 0.9) {
                sign(FrameSign.TURN_SPRING, x, y, new double[] {1, 0});
            }
        } else if (page.view().seen(spring.direction()) > SEEN) {
            sign(FrameSign.SPRING, x, y, outwards(page.direction(spring.direction()), away));
        }
    }

    private void sign(FrameSign sign, double x, double y, double[] direction) {
        used.add(sign);
        sign.draw(page.board(), x, y, direction[0], direction[1], size);
    }

    private Vector projected(Vector v) {
        FrameView view = page.view();
        return view.right().times(view.x(v)).plus(view.up().times(view.y(v))).unit();
    }

    /** Keeps directions at right angles to one another, as many as there are independent ones. */
    private static void addIndependent(List<Vector> held, Vector direction) {
        Vector rest = direction;
        for (Vector other : held) {
            rest = rest.minus(other.times(rest.dot(other)));
        }
        if (rest.length() > SAME) {
            // The first keeps its own direction, which is what the sign must follow.
            held.add(rest.unit());
        }
    }

    private static boolean known(double[] away) {
        return Math.abs(away[0]) + Math.abs(away[1]) > 0.2;
    }

    /** Down, unless the members hang below their support. */
    private static double[] downwards(double[] away) {
        return new double[] {0, away[1] < -0.6 ? -1 : 1};
    }

    /** Along a line, towards the side where no member is; down or left where that is no help. */
    private static double[] outwards(double[] line, double[] away) {
        double side = line[0] * away[0] + line[1] * away[1];
        if (Math.abs(side) < 0.3) {
            side = Math.abs(line[1]) > 0.3 ? line[1] : -line[0];
        }
        return side >= 0 ? line : new double[] {-line[0], -line[1]};
    }
}
