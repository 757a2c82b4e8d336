package org.skewback.rock;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.skewback.data.CsvTable;
import org.skewback.data.TableException;

/** Surveyed cross-sections and boreholes from tables, refused by row where they cannot be. */
public final class SurveyTable {

    /** Points closer together than this count as one, m. */
    private static final double SAME = 1e-3;

    /** Steepest piece of a ground line taken for real, as rise over run. */
    private static final double STEEPEST = 1000;

    private SurveyTable() {}

    /**
     * A cross-section.
     *
     * @param station distance along the line of the work, m
     * @param ground its ground line
     */
    public record CrossSection(double station, SectionLine ground) {}

    /**
     * What a borehole met.
     *
     * @param from depth from which, m
     * @param to depth to which, m
     * @param rock what it is called
     * @param quality rock quality designation as a part of 1
     */
    public record Run(double from, double to, String rock, double quality) {}

    /**
     * Reads cross-sections from a table with columns {@code station}, {@code offset} and {@code
     * level}, one point a row, the rows of a section together and from left to right.
     *
     * @param table the table
     * @return the sections by ascending station
     * @throws TableException if a column is missing or of the wrong dimension; if a section has fewer
     *     than two points, comes twice, turns back on itself so that its line would cross, has a
     *     point twice, or a step steeper than 1000 to 1
     */
    public static List<CrossSection> crossSections(CsvTable table) {
        double[] stations = table.numbers("station", "m");
        double[] offsets = table.numbers("offset", "m");
        double[] levels = table.numbers("level", "m");
        Map<Double, List<Integer>> rows = new LinkedHashMap<>();
        double current = Double.NaN;
        for (int i = 0; i < stations.length; i++) {
            if (stations[i] != current) {
                current = stations[i];
                if (rows.put(current, new ArrayList<>()) != null) {
                    throw table.refused(
                            i,
                            "station",
                            table.texts("station").get(i),
                            "one not met before: the rows of a section stand together");
                }
            }
            List<Integer> section = rows.get(current);
            if (section != null) {
                if (!section.isEmpty()) {
                    checkPoint(table, offsets, levels, section.get(section.size() - 1), i);
                }
                section.add(i);
            }
        }
        List<CrossSection> sections = new ArrayList<>();
        new TreeMap<>(rows)
                .forEach(
                        (station, points) -> {
                            if (points.size() < 2) {
                                throw table.refused(
                                        points.get(0),
                                        "station",
                                        table.texts("station").get(points.get(0)),
                                        "a section of at least two points");
                            }
                            sections.add(
                                    new CrossSection(
                                            station,
                                            SectionLine.of(
                                                    points.stream().map(i -> offsets[i]).toList(),
                                                    points.stream().map(i -> levels[i]).toList())));
                        });
        if (sections.isEmpty()) {
            throw new TableException(table.name() + " holds no cross-section.");
        }
        return List.copyOf(sections);
    }

    private static void checkPoint(
            CsvTable table, double[] offsets, double[] levels, int before, int i) {
        double run = offsets[i] - offsets[before];
        double rise = levels[i] - levels[before];
        String text = table.texts("offset").get(i);
        if (Math.abs(run) < SAME && Math.abs(rise) < SAME) {
            throw table.refused(
                    i, "offset", text, "another point than the one in line " + table.line(before));
        }
        if (run <= 0) {
            throw table.refused(
                    i,
                    "offset",
                    text,
                    "more than the one before, "
                            + table.texts("offset").get(before)
                            + ": the ground line would cross itself");
        }
        if (Math.abs(rise) > STEEPEST * run) {
            throw table.refused(
                    i,
                    "level",
                    table.texts("level").get(i),
                    "a step of less than 1000 to 1 from the point before");
        }
    }

    /**
     * Reads points of a surface from a table with columns {@code x}, {@code y} and {@code level}, one
     * point a row, in any order.
     *
     * @param table the table
     * @return the surface through them
     * @throws TableException if a column is missing or of the wrong dimension, there are fewer than
     *     three points, a row stands at the place in plan of an earlier one, or all stand on one line
     */
    public static GroundSurface surface(CsvTable table) {
        double[] x = table.numbers("x", "m");
        double[] y = table.numbers("y", "m");
        double[] levels = table.numbers("level", "m");
        List<SurveyPoint> points = new ArrayList<>();
        // Points closer than a millimetre stand in one cell of that size or in two beside each
        // other.
        Map<List<Long>, List<Integer>> cells = new HashMap<>();
        for (int i = 0; i < x.length; i++) {
            long across = (long) Math.floor(x[i] / SAME);
            long along = (long) Math.floor(y[i] / SAME);
            for (long a = across - 1; a <= across + 1; a++) {
                for (long b = along - 1; b <= along + 1; b++) {
                    for (int before : cells.getOrDefault(List.of(a, b), List.of())) {
                        if (Math.abs(x[i] - x[before]) < SAME
                                && Math.abs(y[i] - y[before]) < SAME) {
                            throw table.refused(
                                    i,
                                    "x",
                                    table.texts("x").get(i),
                                    "another place in plan than that in line "
                                            + table.line(before));
                        }
                    }
                }
            }
            cells.computeIfAbsent(List.of(across, along), cell -> new ArrayList<>()).add(i);
            points.add(new SurveyPoint(x[i], y[i], levels[i]));
        }
        try {
            return GroundSurface.through(points);
        } catch (IllegalArgumentException e) {
            throw new TableException(table.name() + ": " + e.getMessage(), e);
        }
    }

    /**
     * Reads boreholes from a table with columns {@code hole}, {@code from}, {@code to}, {@code rock}
     * and {@code RQD}, one run a row, downward.
     *
     * @param table the table; RQD as a plain part of 1 or with the unit %
     * @return the runs of each hole, by the hole's name in the order of the table
     * @throws TableException if a column is missing or of the wrong dimension, or there is no row; if
     *     a run has no name of a hole or of rock, no thickness, an RQD outside 0 to 100 %, or does not
     *     begin where the one before ended: a gap or an overlap
     */
    public static Map<String, List<Run>> boreholes(CsvTable table) {
        List<String> names = table.texts("hole");
        List<String> rocks = table.texts("rock");
        double[] from = table.numbers("from", "m");
        double[] to = table.numbers("to", "m");
        double[] quality = table.numbers("RQD", "");
        Map<String, List<Run>> holes = new LinkedHashMap<>();
        for (int i = 0; i < from.length; i++) {
            if (names.get(i).isBlank()) {
                throw table.refused(i, "hole", names.get(i), "the name of a borehole");
            }
            if (rocks.get(i).isBlank()) {
                throw table.refused(i, "rock", rocks.get(i), "what the rock is called");
            }
            if (!(to[i] > from[i])) {
                throw table.refused(
                        i,
                        "to",
                        table.texts("to").get(i),
                        "more than where the run begins, " + table.texts("from").get(i));
            }
            if (!(quality[i] >= 0 && quality[i] <= 1)) {
                throw table.refused(i, "RQD", table.texts("RQD").get(i), "from 0 to 100 %");
            }
            List<Run> runs = holes.computeIfAbsent(names.get(i), name -> new ArrayList<>());
            double expected = runs.isEmpty() ? 0 : runs.get(runs.size() - 1).to();
            if (Math.abs(from[i] - expected) > SAME) {
                String where =
                        runs.isEmpty() ? "the top of the hole" : "where the run before ended";
                throw table.refused(
                        i,
                        "from",
                        table.texts("from").get(i),
                        expected
                                + " m, "
                                + where
                                + ": "
                                + (from[i] > expected ? "there is a gap" : "runs overlap"));
            }
            runs.add(new Run(from[i], to[i], rocks.get(i), quality[i]));
        }
        if (holes.isEmpty()) {
            throw new TableException(table.name() + " holds no run of a borehole.");
        }
        holes.replaceAll((name, runs) -> List.copyOf(runs));
        return holes;
    }
}
