package org.skewback.figure;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.skewback.frame.Vector;

/** The diagram of a force along one member on the page. */
final class MemberDiagram {

    private final FramePage page;
    private final MemberLine line;
    private final double[] side;
    private final double perPoint;

    /**
     * Makes ready to draw.
     *
     * @param page the page
     * @param line the member
     * @param side direction of positive values on the page
     * @param perPoint force for a point of the page, N or N·m
     */
    MemberDiagram(FramePage page, MemberLine line, double[] side, double perPoint) {
        this.page = page;
        this.line = line;
        this.side = side;
        this.perPoint = perPoint;
    }

    /** Where a value stands on the page. */
    double[] ordinate(double position, double value) {
        Vector place = line.at(position / line.length());
        return new double[] {
            page.x(place) + side[0] * value / perPoint, page.y(place) + side[1] * value / perPoint
        };
    }

    /** Fills what is above 0 and what is below, and notes which there was. */
    void fill(ForceTrace trace, boolean[] signs) {
        ForceTrace.@Nullable Course course = trace.course(line.name());
        if (course == null) {
            return;
        }
        List<double[]> run = new ArrayList<>();
        double sign = 0;
        for (int i = 0; i < course.size(); i++) {
            double x = course.position(i);
            double v = course.value(i);
            if (v * sign < 0) {
                double before = course.value(i - 1);
                double from = course.position(i - 1);
                double zero = from + (x - from) * before / (before - v);
                run.add(new double[] {zero, 0});
                area(run, sign, signs);
                run.clear();
                run.add(new double[] {zero, 0});
                sign = 0;
            }
            run.add(new double[] {x, v});
            sign = sign == 0 ? Math.signum(v) : sign;
        }
        area(run, sign, signs);
    }

    private void area(List<double[]> run, double sign, boolean[] signs) {
        if (sign == 0 || run.size() < 2) {
            return;
        }
        List<double[]> corners = new ArrayList<>();
        corners.add(ordinate(run.get(0)[0], 0));
        run.forEach(point -> corners.add(ordinate(point[0], point[1])));
        corners.add(ordinate(run.get(run.size() - 1)[0], 0));
        double[] polygon = Geometry.simplified(flat(corners), 0.05);
        if (polygon.length >= 6) {
            (sign > 0 ? SignArea.POSITIVE : SignArea.NEGATIVE).draw(page.board(), polygon, side);
            signs[sign > 0 ? 0 : 1] = true;
        }
    }

    /** Fills the room between two courses with the same positions. */
    void fillBetween(ForceTrace upper, ForceTrace lower) {
        ForceTrace.@Nullable Course above = upper.course(line.name());
        ForceTrace.@Nullable Course below = lower.course(line.name());
        if (above == null || below == null) {
            return;
        }
        List<double[]> corners = new ArrayList<>();
        for (int i = 0; i < above.size(); i++) {
            corners.add(ordinate(above.position(i), above.value(i)));
        }
        for (int i = below.size() - 1; i >= 0; i--) {
            corners.add(ordinate(below.position(i), below.value(i)));
        }
        SignArea.BETWEEN.draw(page.board(), flat(corners), side);
    }

    /** Adds the line through the values, closed to the member at both ends. */
    void outline(ForceTrace trace, LineBundle bundle) {
        ForceTrace.@Nullable Course course = trace.course(line.name());
        if (course == null) {
            return;
        }
        List<double[]> points = new ArrayList<>();
        points.add(ordinate(0, 0));
        for (int i = 0; i < course.size(); i++) {
            points.add(ordinate(course.position(i), course.value(i)));
        }
        points.add(ordinate(line.length(), 0));
        bundle.add(flat(points));
    }

    private static double[] flat(List<double[]> points) {
        double[] xy = new double[2 * points.size()];
        for (int i = 0; i < points.size(); i++) {
            xy[2 * i] = points.get(i)[0];
            xy[2 * i + 1] = points.get(i)[1];
        }
        return xy;
    }
}
