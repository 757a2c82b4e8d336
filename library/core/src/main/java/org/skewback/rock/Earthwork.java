package org.skewback.rock;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import org.skewback.quantity.Quantity;

/** Areas of cross-sections and volumes between them. */
public final class Earthwork {

    private Earthwork() {}

    /**
     * Gives the volume between two sections by end areas, {@code V = L (A_1 + A_2)/2}.
     *
     * @param first area of the first section, at least 0
     * @param second area of the second section, at least 0
     * @param length distance between them, L, more than 0
     * @return the volume; too great where the sections taper
     * @throws IllegalArgumentException if a value is outside
     */
    public static Quantity byEndAreas(Quantity first, Quantity second, Quantity length) {
        checkAreas(first, second, length);
        return first.plus(second).times(length).over(2);
    }

    /**
     * Gives the volume between two sections by the prismoidal formula, {@code V = L (A_1 + 4 A_m +
     * A_2)/6}.
     *
     * @param first area of the first section, at least 0
     * @param middle area half-way, A_m, at least 0: from lines half-way, not the mean of the areas
     * @param second area of the second section, at least 0
     * @param length distance between the outer sections, L, more than 0
     * @return the volume
     * @throws IllegalArgumentException if a value is outside
     */
    public static Quantity prismoidal(
            Quantity first, Quantity middle, Quantity second, Quantity length) {
        checkAreas(first, second, length);
        Require.notNegative("area half-way", middle, "m²");
        return first.plus(middle.times(4)).plus(second).times(length).over(6);
    }

    /**
     * Gives the area of a trapezoidal cut, {@code A = (b + s h) h}.
     *
     * @param base width of the base, b, at least 0
     * @param height height, h, at least 0
     * @param side side slope as level over upright, s, at least 0
     * @return the area
     * @throws IllegalArgumentException if a value is negative
     */
    public static Quantity trapezoid(Quantity base, Quantity height, Quantity side) {
        Require.notNegative("width of the base", base, "m");
        Require.notNegative("height of the cut", height, "m");
        Require.notNegative("side slope", side, "");
        return base.plus(side.times(height)).times(height);
    }

    /**
     * Gives the inclination of a side slope, {@code arctan(1/s)}.
     *
     * @param side side slope as level over upright, s, more than 0
     * @return the angle to the level
     * @throws IllegalArgumentException if the slope is not positive
     */
    public static Quantity inclination(Quantity side) {
        Require.positive("side slope", side, "");
        return Quantity.of(1).over(side).atan();
    }

    private static void checkAreas(Quantity first, Quantity second, Quantity length) {
        Require.notNegative("area of the first section", first, "m²");
        Require.notNegative("area of the second section", second, "m²");
        Require.positive("distance between the sections", length, "m");
    }

    /**
     * Gives the area of a polygon by its corners, {@code ½ |Σ (x_i y_{i+1} − x_{i+1} y_i)|}.
     *
     * @param corners corners as {@code {x, y}}, m, in order around it, at least three
     * @return area, m²
     * @throws IllegalArgumentException if there are fewer than three corners, or one has not two
     *     numbers
     */
    public static double polygon(List<double[]> corners) {
        Require.atLeast("number of corners", corners.size(), 3);
        double sum = 0;
        for (int i = 0; i < corners.size(); i++) {
            double[] a = corners.get(i);
            double[] b = corners.get((i + 1) % corners.size());
            if (a.length != 2) {
                throw new IllegalArgumentException(
                        "corner " + (i + 1) + " has " + a.length + " numbers; allowed is x and y.");
            }
            sum += a[0] * b[1] - b[0] * a[1];
        }
        return Math.abs(sum) / 2;
    }

    /**
     * The area between a ground line and a design line.
     *
     * @param cut area where the ground is above, m²
     * @param fill area where the ground is below, m²
     */
    public record Areas(double cut, double fill) {}

    /**
     * Gives the areas of cut and fill between two lines, exact for straight pieces.
     *
     * @param ground ground line
     * @param design design line
     * @return the areas over what both lines have in common
     * @throws IllegalArgumentException if they have nothing in common
     */
    public static Areas between(SectionLine ground, SectionLine design) {
        double from = Math.max(ground.left(), design.left());
        double to = Math.min(ground.right(), design.right());
        if (!(from < to)) {
            throw new IllegalArgumentException(
                    "Ground and design line have no distances across in common: "
                            + ground.left()
                            + " to "
                            + ground.right()
                            + " m and "
                            + design.left()
                            + " to "
                            + design.right()
                            + " m.");
        }
        SortedSet<Double> places = new TreeSet<>(ground.offsets());
        places.addAll(design.offsets());
        places.add(from);
        places.add(to);
        double cut = 0;
        double fill = 0;
        double before = from;
        for (double at : places.subSet(from, Math.nextUp(to))) {
            double a = ground.level(before) - design.level(before);
            double b = ground.level(at) - design.level(at);
            double width = at - before;
            if (a * b < 0) {
                double part = a / (a - b);
                cut += width / 2 * (Math.max(a, 0) * part + Math.max(b, 0) * (1 - part));
                fill += width / 2 * (Math.max(-a, 0) * part + Math.max(-b, 0) * (1 - part));
            } else {
                cut += width / 2 * (Math.max(a, 0) + Math.max(b, 0));
                fill += width / 2 * (Math.max(-a, 0) + Math.max(-b, 0));
            }
            before = at;
        }
        return new Areas(cut, fill);
    }

    /**
     * A station with its ground and design line.
     *
     * @param station distance along the work, m
     * @param ground ground line
     * @param design design line
     */
    public record Station(double station, SectionLine ground, SectionLine design) {}

    /**
     * Volumes of cut over a row of stations, by both formulas.
     *
     * @param byEndAreas volume by end areas, m³
     * @param prismoidal volume by the prismoidal formula, the section half-way from lines half-way,
     *     m³
     * @param areas area of cut at each station, m²
     */
    public record Volume(double byEndAreas, double prismoidal, List<Double> areas) {

        /**
         * Copies the areas.
         *
         * @param byEndAreas volume by end areas, m³
         * @param prismoidal volume by the prismoidal formula, m³
         * @param areas area of cut at each station, m²
         */
        public Volume {
            areas = List.copyOf(areas);
        }

        /**
         * Gives how much greater the volume by end areas is.
         *
         * @return difference, m³
         */
        public double difference() {
            return byEndAreas - prismoidal;
        }
    }

    /**
     * Gives the volume of cut over a row of stations.
     *
     * <p>Between stations the ground is taken as the ruled surface from line to line at equal
     * distance across, the design line alike.
     *
     * @param stations stations, ascending, at least two
     * @return the volumes and the areas
     * @throws IllegalArgumentException if there are fewer than two stations or they do not ascend, or
     *     lines have nothing in common
     */
    public static Volume cut(List<Station> stations) {
        Require.atLeast("number of stations", stations.size(), 2);
        List<Double> areas = new ArrayList<>();
        double ends = 0;
        double prismoidal = 0;
        for (int i = 0; i < stations.size(); i++) {
            Station b = stations.get(i);
            double area = between(b.ground(), b.design()).cut();
            if (i > 0) {
                Station a = stations.get(i - 1);
                double length = b.station() - a.station();
                if (!(length > 0)) {
                    throw Require.refused(
                            "station " + (i + 1),
                            b.station(),
                            "m",
                            "more than the one before, " + a.station() + " m");
                }
                double middle =
                        between(a.ground().between(b.ground()), a.design().between(b.design()))
                                .cut();
                double first = areas.get(i - 1);
                ends += length * (first + area) / 2;
                prismoidal += length * (first + 4 * middle + area) / 6;
            }
            areas.add(area);
        }
        return new Volume(ends, prismoidal, areas);
    }
}
