package org.skewback.figure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Lines on a page, found by where they are, so that a hundred thousand are as quick as ten. */
final class Obstacles {

    /** Size of the cells of the page in points: about a line of text. */
    private static final double CELL = 12;

    private final List<double[]> segments = new ArrayList<>();
    private final Map<Long, int[]> cells = new HashMap<>();
    private int[] askedAt = new int[16];
    private int question;

    void add(double[] segment) {
        int number = segments.size();
        segments.add(segment);
        double left = Math.min(segment[0], segment[2]);
        double right = Math.max(segment[0], segment[2]);
        for (long column = cell(left); column <= cell(right); column++) {
            double from = Math.max(left, column * CELL);
            double to = Math.min(right, (column + 1) * CELL);
            double a = at(segment, from);
            double b = at(segment, to);
            if (segment[0] == segment[2]) {
                a = segment[1];
                b = segment[3];
            }
            // Rounding must not put the line into the wrong cell.
            for (long row = cell(Math.min(a, b) - 1e-6);
                    row <= cell(Math.max(a, b) + 1e-6);
                    row++) {
                put(key(column, row), number);
            }
        }
    }

    private static double at(double[] s, double x) {
        double share = s[2] == s[0] ? 0 : (x - s[0]) / (s[2] - s[0]);
        return s[1] + Math.max(0, Math.min(1, share)) * (s[3] - s[1]);
    }

    private static long cell(double place) {
        return (long) Math.floor(place / CELL);
    }

    private static long key(long column, long row) {
        return column * 0x1_0000_0000L + row;
    }

    /** The first number of a cell's array counts those that follow. */
    private void put(long key, int number) {
        int[] held = cells.computeIfAbsent(key, fresh -> new int[4]);
        if (held[0] + 1 == held.length) {
            held = Arrays.copyOf(held, 2 * held.length);
            cells.put(key, held);
        }
        held[++held[0]] = number;
    }

    /** How many lines a convex polygon, or a line, crosses. */
    int crossings(double[] polygon) {
        double left = Double.POSITIVE_INFINITY;
        double right = Double.NEGATIVE_INFINITY;
        double top = Double.POSITIVE_INFINITY;
        double foot = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < polygon.length; i += 2) {
            left = Math.min(left, polygon[i]);
            right = Math.max(right, polygon[i]);
            top = Math.min(top, polygon[i + 1]);
            foot = Math.max(foot, polygon[i + 1]);
        }
        question++;
        askedAt = askedAt.length < segments.size() ? new int[2 * segments.size()] : askedAt;
        int crossings = 0;
        for (long column = cell(left); column <= cell(right); column++) {
            for (long row = cell(top); row <= cell(foot); row++) {
                int[] held = cells.getOrDefault(key(column, row), NONE);
                for (int i = 1; i <= held[0]; i++) {
                    int number = held[i];
                    if (askedAt[number] != question) {
                        askedAt[number] = question;
                        if (Geometry.overlap(polygon, segments.get(number))) {
                            crossings++;
                        }
                    }
                }
            }
        }
        return crossings;
    }

    private static final int[] NONE = {0};
}
