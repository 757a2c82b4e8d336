package org.skewback.figure;

import java.util.ArrayList;
import java.util.List;
import org.skewback.sheet.Figure;

/**
 * Draws the force polygon of an arch under vertical loads: the loads end to end on a vertical load
 * line, the pole at the distance of the horizontal thrust, and a ray to each joint of the loads.
 *
 * <p>A ray is the axial force between two loads: its length is the force, its slope the arch's. The
 * pole lies on the level where the shear is zero. Graphic statics as every textbook of structures
 * has it (common practice, no source).
 */
public final class ForcePolygon {

    private ForcePolygon() {}

    /**
     * Draws a force polygon.
     *
     * @param title the figure's title, one line
     * @param loads vertical loads from left to right in kN, positive downwards, not all zero; at
     *     least one
     * @param leftReaction vertical reaction at the left springing in kN, finite
     * @param thrust horizontal thrust in kN, positive
     * @return the figure
     * @throws IllegalArgumentException if a value is not finite or the thrust is not positive
     */
    public static Figure of(String title, double[] loads, double leftReaction, double thrust) {
        return drawing(title, loads, leftReaction, thrust).figure();
    }

    static Elevation drawing(String title, double[] loads, double leftReaction, double thrust) {
        double[] values = Check.finite("loads in kN", loads);
        Check.atLeast("loads", values.length, 1);
        Check.finite("left reaction in kN", leftReaction);
        Check.positive("thrust in kN", thrust);
        List<Point> joints = new ArrayList<>();
        double sum = leftReaction;
        joints.add(Point.at(0, sum));
        for (double value : values) {
            sum -= value;
            joints.add(Point.at(0, sum));
        }
        Point pole = Point.at(-thrust, 0);
        double most = joints.stream().mapToDouble(pole::distanceTo).max().orElseThrow();
        double high = joints.stream().mapToDouble(Point::y).max().orElseThrow();
        double low = joints.stream().mapToDouble(Point::y).min().orElseThrow();
        if (high == low) {
            throw new IllegalArgumentException(
                    "loads are all 0 kN; at least one must be different from 0");
        }
        Elevation drawing =
                Elevation.inUnit(title, "kN")
                        .size(165, 120)
                        .decimals(0)
                        .describedBy(
                                "Force polygon of "
                                        + values.length
                                        + " loads, "
                                        + Numbers.shortest(leftReaction - sum, 0)
                                        + " kN together, with a horizontal thrust of "
                                        + Numbers.shortest(thrust, 0)
                                        + " kN; the longest ray is "
                                        + Numbers.shortest(most, 0)
                                        + " kN.");
        for (Point joint : joints.subList(1, joints.size())) {
            drawing.line(LineStyle.MEMBER, pole, joint);
        }
        drawing.line(LineStyle.RESULT, pole, joints.get(0));
        drawing.line(LineStyle.CUT, joints.toArray(new Point[0]));
        double tick = 0.008 * (high - low);
        for (Point joint : joints) {
            drawing.line(LineStyle.CUT, Point.at(-tick, joint.y()), Point.at(tick, joint.y()));
        }
        drawing.centreLine(pole, Point.at(0, 0));
        for (int i = 0; i < values.length; i++) {
            double middle = (joints.get(i).y() + joints.get(i + 1).y()) / 2;
            drawing.value(Point.at(0, middle), Numbers.shortest(values[i], 0));
        }
        double off = 0.07 * (high - low);
        return drawing.horizontalDimension("thrust", pole, Point.at(0, low), low - off)
                .verticalDimension("loads", Point.at(0, high), Point.at(0, low), 3.2 * off)
                .alignedDimension("ray at the left springing", pole, joints.get(0), off)
                .label(pole, "pole", -4, -4)
                .scaleBar();
    }
}
