package org.skewback.frame;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.skewback.data.CsvTable;
import org.skewback.numeric.Gap;
import org.skewback.numeric.SlidingBearing;
import org.skewback.quantity.Quantity;

/**
 * What a frame needs to move, as plain tables beside those of {@link FrameTables}, with units in the
 * headings and fields such as {@code =g} as there. Every error names the table, the line and the column.
 *
 * <ul>
 *   <li>masses: kind (node, line), on (node or member), mass and rotary x … z (node), mass per length
 *       (line)
 *   <li>links: name, kind (sliding, stop), start, end; friction, stick stiffness, restoring stiffness
 *       (sliding, along global x and y); opening, stiffness, direction x … z (stop)
 *   <li>ground: time (equal steps from 0), x, y, z (accelerations; columns left out stand still)
 *   <li>spectrum: period (from 0, growing), acceleration
 * </ul>
 */
public final class MotionTables {

    private static final List<String> MASSES =
            List.of("kind", "on", "mass", "rotary x", "rotary y", "rotary z", "mass per length");
    private static final List<String> LINKS =
            List.of(
                    "name",
                    "kind",
                    "start",
                    "end",
                    "friction",
                    "stick stiffness",
                    "restoring stiffness",
                    "opening",
                    "stiffness",
                    "direction x",
                    "direction y",
                    "direction z");
    private static final List<String> AXES = List.of("x", "y", "z");

    /** Difference of a time from its place in equal steps, over the step, that counts as rounding. */
    private static final double UNEVEN = 1e-6;

    private MotionTables() {}

    /**
     * Masses besides those of the members.
     *
     * @param nodal masses at nodes
     * @param lines masses along members
     */
    public record Masses(List<NodalMass> nodal, List<LineMass> lines) {

        /**
         * Copies the lists.
         *
         * @param nodal masses at nodes
         * @param lines masses along members
         */
        public Masses {
            nodal = List.copyOf(nodal);
            lines = List.copyOf(lines);
        }
    }

    /**
     * Reads masses.
     *
     * @param table the table
     * @param given quantities by name, for fields such as {@code =g}
     * @return the masses
     * @throws org.skewback.data.TableException if a field cannot be used; names table, line and column
     */
    public static Masses masses(CsvTable table, Map<String, Quantity> given) {
        FieldReader in = new FieldReader(table, given, MASSES);
        List<NodalMass> nodal = new ArrayList<>();
        List<LineMass> lines = new ArrayList<>();
        for (int i = 0; i < in.size(); i++) {
            int r = i;
            String on = in.required(r, "on");
            switch (in.text(r, "kind")) {
                case "node" ->
                        nodal.add(
                                in.make(
                                        r,
                                        () ->
                                                new NodalMass(
                                                        on,
                                                        in.number(r, "mass", "kg"),
                                                        in.vector(r, "rotary ", "kg·m²"))));
                case "line" ->
                        lines.add(
                                in.make(
                                        r,
                                        () ->
                                                new LineMass(
                                                        on,
                                                        in.number(r, "mass per length", "kg/m"))));
                default -> throw in.refused(r, "kind", "node or line");
            }
        }
        return new Masses(nodal, lines);
    }

    /**
     * Reads bearings and stops.
     *
     * @param table the table
     * @param given quantities by name, for fields such as {@code =g}
     * @return the links in the order of the table
     * @throws org.skewback.data.TableException if a field cannot be used; names table, line and column
     */
    public static List<NonlinearLink> links(CsvTable table, Map<String, Quantity> given) {
        FieldReader in = new FieldReader(table, given, LINKS);
        List<NonlinearLink> links = new ArrayList<>();
        for (int i = 0; i < in.size(); i++) {
            int r = i;
            links.add(in.make(r, () -> link(in, r)));
        }
        return List.copyOf(links);
    }

    private static NonlinearLink link(FieldReader in, int r) {
        String name = in.required(r, "name");
        String start = in.required(r, "start");
        String end = in.required(r, "end");
        return switch (in.text(r, "kind")) {
            case "sliding" ->
                    NonlinearLink.sliding(
                            name,
                            start,
                            end,
                            new SlidingBearing(
                                    in.number(r, "friction", "N"),
                                    in.number(r, "stick stiffness", "N/m"),
                                    in.number(r, "restoring stiffness", "N/m", 0)));
            case "stop" -> {
                Vector direction = in.vectorOrNone(r, "direction ", "");
                if (direction == null || direction.length() == 0) {
                    throw in.refused(r, "direction x", "a direction that is not 0, 0, 0");
                }
                yield NonlinearLink.stop(
                        name,
                        start,
                        end,
                        direction,
                        new Gap(in.number(r, "opening", "m"), in.number(r, "stiffness", "N/m")));
            }
            default -> throw in.refused(r, "kind", "sliding or stop");
        };
    }

    /**
     * Reads a record of the ground.
     *
     * @param table the table: time and accelerations
     * @return the motion
     * @throws org.skewback.data.TableException if a field cannot be used or the steps of time differ;
     *     names table, line and column
     * @throws IllegalArgumentException if there are fewer than two times or no acceleration
     */
    public static GroundMotion ground(CsvTable table) {
        new FieldReader(table, Map.of(), List.of("time", "x", "y", "z"));
        double[] times = table.ascending("time", "s");
        double step = times.length < 2 ? Double.NaN : times[times.length - 1] / (times.length - 1);
        for (int n = 0; n < times.length; n++) {
            if (Math.abs(times[n] - n * step) > UNEVEN * step) {
                throw table.refused(
                        n,
                        "time",
                        table.texts("time").get(n),
                        "equal steps, here " + n * step + " s");
            }
        }
        Map<Motion, double[]> records = new EnumMap<>(Motion.class);
        for (CsvTable.Heading heading : table.headings()) {
            int axis = AXES.indexOf(heading.name());
            if (axis >= 0) {
                records.put(Motion.at(axis), table.numbers(heading.name(), "m/s²"));
            }
        }
        return new GroundMotion(step, records);
    }

    /**
     * Reads a response spectrum, straight between its points.
     *
     * @param table the table: periods from 0 on and pseudo-accelerations
     * @return the spectrum
     * @throws org.skewback.data.TableException if a field cannot be used; names table, line and column
     * @throws IllegalArgumentException if there are fewer than two points, the first period is not 0, or
     *     an acceleration is negative
     */
    public static DesignSpectrum spectrum(CsvTable table) {
        new FieldReader(table, Map.of(), List.of("period", "acceleration"));
        return DesignSpectrum.ofPoints(
                table.ascending("period", "s"), table.numbers("acceleration", "m/s²"));
    }
}
