package org.skewback.rock;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;

/**
 * The triangles of points in plan whose circles hold no other point.
 *
 * <p>Points are added from left to right, each joined to what it sees of the outline; then shared
 * sides are turned until no circle through a triangle holds the corner beyond. Source: C. L. Lawson,
 * Software for C¹ surface interpolation, in Mathematical Software III (1977) (from memory). Triangle
 * t has the half sides 3t to 3t + 2; each begins at a point and knows the half side opposite.
 */
final class Delaunay {

    private static final int NONE = -1;

    private final List<SurveyPoint> points;
    private final int[] origin;
    private final int[] twin;
    private int count;

    /** Outline: of each point on it the next one to the left around, and the half side to it. */
    private final int[] next;

    private final int[] previous;
    private final int[] outer;

    private Delaunay(List<SurveyPoint> points) {
        this.points = points;
        int most = 2 * points.size();
        origin = new int[3 * most];
        twin = new int[3 * most];
        next = new int[points.size()];
        previous = new int[points.size()];
        outer = new int[points.size()];
        Arrays.fill(twin, NONE);
    }

    /**
     * Finds the triangles.
     *
     * @param sorted points by ascending x, then y, no two at one place, not all on one line
     * @return three places in the list for each triangle, going round to the left
     */
    static int[] triangles(List<SurveyPoint> sorted) {
        Delaunay made = new Delaunay(sorted);
        made.grow();
        made.turnSides();
        return Arrays.copyOf(made.origin, 3 * made.count);
    }

    private static int ahead(int half) {
        return half % 3 == 2 ? half - 2 : half + 1;
    }

    private static int behind(int half) {
        return half % 3 == 0 ? half + 2 : half - 1;
    }

    private int side(int a, int b, int c) {
        return PlanePredicates.side(points.get(a), points.get(b), points.get(c));
    }

    private void grow() {
        int apex = 2;
        while (side(0, 1, apex) == 0) {
            apex++;
        }
        // The points before it lie on one line: a fan from the first that does not.
        boolean left = side(0, 1, apex) > 0;
        int last = apex - 1;
        int inner = NONE;
        for (int i = 0; i < last; i++) {
            int t = left ? add(i, i + 1, apex) : add(i + 1, i, apex);
            // Half sides: along the line, then the two to and from the apex.
            outline(left ? i : i + 1, left ? i + 1 : i, t);
            int early = left ? t + 2 : t + 1;
            int late = left ? t + 1 : t + 2;
            if (inner == NONE) {
                outline(left ? apex : 0, left ? 0 : apex, early);
            } else {
                join(inner, early);
            }
            inner = late;
        }
        outline(left ? last : apex, left ? apex : last, inner);
        for (int p = apex + 1; p < points.size(); p++) {
            addToOutline(p);
        }
    }

    private int add(int a, int b, int c) {
        int at = 3 * count++;
        origin[at] = a;
        origin[at + 1] = b;
        origin[at + 2] = c;
        return at;
    }

    private void outline(int from, int to, int half) {
        next[from] = to;
        previous[to] = from;
        outer[from] = half;
    }

    private void join(int a, int b) {
        twin[a] = b;
        twin[b] = a;
    }

    /** The point lies beyond all others, and the last one added is on the outline and in its sight. */
    private void addToOutline(int p) {
        int from = p - 1;
        while (side(previous[from], from, p) < 0) {
            from = previous[from];
        }
        int to = p - 1;
        while (side(to, next[to], p) < 0) {
            to = next[to];
        }
        int before = NONE;
        int at = from;
        while (at != to) {
            int ahead = next[at];
            int t = add(ahead, at, p);
            join(t, outer[at]);
            if (before == NONE) {
                outline(from, p, t + 1);
            } else {
                join(before, t + 1);
            }
            before = t + 2;
            at = ahead;
        }
        outline(p, to, before);
    }

    private void turnSides() {
        Deque<Integer> open = new ArrayDeque<>();
        for (int half = 0; half < 3 * count; half++) {
            open.push(half);
        }
        while (!open.isEmpty()) {
            int half = open.pop();
            int other = twin[half];
            if (other == NONE || !holdsBeyond(half, other)) {
                continue;
            }
            turn(half, other);
            for (int changed : new int[] {half, behind(half), other, behind(other)}) {
                open.push(changed);
                open.push(ahead(changed));
            }
        }
    }

    private boolean holdsBeyond(int half, int other) {
        return PlanePredicates.inCircle(
                        points.get(origin[half]),
                        points.get(origin[ahead(half)]),
                        points.get(origin[behind(half)]),
                        points.get(origin[behind(other)]))
                > 0;
    }

    /** Turns the side shared by two triangles to join the two corners off it. */
    private void turn(int half, int other) {
        int right = behind(half);
        int left = behind(other);
        origin[half] = origin[left];
        origin[other] = origin[right];
        reach(half, twin[left]);
        reach(other, twin[right]);
        join(right, left);
    }

    private void reach(int half, int beyond) {
        twin[half] = beyond;
        if (beyond != NONE) {
            twin[beyond] = half;
        }
    }
}
