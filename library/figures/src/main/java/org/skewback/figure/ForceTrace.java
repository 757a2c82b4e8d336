package org.skewback.figure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.skewback.frame.Envelope;
import org.skewback.frame.ForceComponent;
import org.skewback.frame.FrameSolution;
import org.skewback.frame.MemberForces;

/** The course of one force along members: what a line of a diagram shows. */
final class ForceTrace {

    /** Points between two loads; a force runs there as a polynomial of degree 4 at most. */
    private static final int BETWEEN = 12;

    private final String name;
    private final Map<String, Course> courses = new HashMap<>();

    /** Values along a member; at a jump two values have one position. Arrays are never changed. */
    static final class Course {
        private final double[] positions;
        private final double[] values;

        Course(double[] positions, double[] values) {
            this.positions = positions;
            this.values = values;
        }

        int size() {
            return positions.length;
        }

        double position(int i) {
            return positions[i];
        }

        double value(int i) {
            return values[i];
        }
    }

    private ForceTrace(String name) {
        this.name = name;
    }

    static ForceTrace of(FrameSolution solution, ForceComponent component, FrameScene scene) {
        ForceTrace trace = new ForceTrace(solution.name());
        for (MemberLine line : scene.lines()) {
            if (!line.isLink() && solution.carries(line.name())) {
                trace.courses.put(line.name(), course(solution.member(line.name()), component));
            }
        }
        return trace;
    }

    private static Course course(MemberForces forces, ForceComponent component) {
        double[] breaks = forces.breaks();
        Set<Double> inner =
                new TreeSet<>(
                        List.of(
                                forces.largest(component).position(),
                                forces.smallest(component).position()));
        List<double[]> points = new ArrayList<>();
        for (int b = 1; b < breaks.length; b++) {
            double from = breaks[b - 1];
            double to = breaks[b];
            Set<Double> places = new TreeSet<>();
            for (int i = 1; i < BETWEEN; i++) {
                places.add(from + (to - from) * i / BETWEEN);
            }
            inner.stream().filter(x -> x > from && x < to).forEach(places::add);
            points.add(new double[] {from, forces.after(from).get(component)});
            for (double x : places) {
                points.add(new double[] {x, forces.at(x).get(component)});
            }
            points.add(new double[] {to, forces.at(to).get(component)});
        }
        return new Course(
                points.stream().mapToDouble(p -> p[0]).toArray(),
                points.stream().mapToDouble(p -> p[1]).toArray());
    }

    static ForceTrace of(
            Envelope envelope, ForceComponent component, FrameScene scene, boolean largest) {
        ForceTrace trace = new ForceTrace(largest ? "largest" : "smallest");
        List<String> members = envelope.members();
        for (MemberLine line : scene.lines()) {
            if (members.contains(line.name())) {
                double[] stations = envelope.stations(line.name());
                double[] values = new double[stations.length];
                for (int i = 0; i < values.length; i++) {
                    values[i] =
                            (largest
                                            ? envelope.largest(line.name(), i, component)
                                            : envelope.smallest(line.name(), i, component))
                                    .value();
                }
                trace.courses.put(line.name(), new Course(stations, values));
            }
        }
        return trace;
    }

    String name() {
        return name;
    }

    /** The course along a member, or null where it is out of action. */
    @Nullable Course course(String member) {
        return courses.get(member);
    }

    double most() {
        return courses.values().stream()
                .flatMapToDouble(course -> Arrays.stream(course.values))
                .map(Math::abs)
                .max()
                .orElse(0);
    }
}
