package org.skewback.figure;

import java.util.ArrayList;
import java.util.List;
import org.skewback.frame.FrameModel;
import org.skewback.frame.FrameSolution;
import org.skewback.frame.LargeState;
import org.skewback.frame.ModeShape;
import org.skewback.frame.Vector;

/** A frame that has moved: where nodes and points of members have gone. */
interface MovedFrame {

    /** Above this many members each gets fewer points, which are closer on the page than a line. */
    int MANY = 5000;

    /** How far a node has gone, m. */
    Vector node(String node);

    /** How far a point of a member has gone; position from its start, m. */
    Vector along(MemberLine line, double position);

    /** Whether a member is there and carries. */
    default boolean carries(MemberLine line) {
        return true;
    }

    static MovedFrame of(FrameSolution solution) {
        return new MovedFrame() {
            @Override
            public Vector node(String node) {
                return solution.movement(node).translation();
            }

            @Override
            public Vector along(MemberLine line, double position) {
                return solution.member(line.name()).movement(position).translation();
            }

            @Override
            public boolean carries(MemberLine line) {
                return solution.carries(line.name());
            }
        };
    }

    static MovedFrame of(LargeState state) {
        return new MovedFrame() {
            @Override
            public Vector node(String node) {
                return state.movement(node).translation();
            }

            @Override
            public Vector along(MemberLine line, double position) {
                Vector from = line.at(position / line.length());
                return state.place(line.name(), position).minus(from);
            }
        };
    }

    static MovedFrame of(ModeShape shape) {
        return new MovedFrame() {
            @Override
            public Vector node(String node) {
                return shape.movement(node).translation();
            }

            @Override
            public Vector along(MemberLine line, double position) {
                return shape.along(line.name(), position).translation();
            }
        };
    }

    /**
     * The axis of a member and how far its points have gone; arrays are never changed.
     *
     * @param line the member
     */
    record Course(MemberLine line, List<Vector> from, List<Vector> by) {

        private void add(Vector place, Vector movement) {
            from.add(place);
            by.add(movement);
        }

        /** Where all points are when movements are enlarged. */
        Vector[] enlarged(double factor) {
            Vector[] places = new Vector[from.size()];
            for (int i = 0; i < places.length; i++) {
                places[i] = from.get(i).plus(by.get(i).times(factor));
            }
            return places;
        }

        /** Number of the point that has gone farthest; of equal ones the first. */
        int farthest() {
            int best = 0;
            for (int i = 1; i < by.size(); i++) {
                if (by.get(i).length() > by.get(best).length() * (1 + 1e-9)) {
                    best = i;
                }
            }
            return best;
        }

        /** What the point is called. */
        String words(int point) {
            if (point == 0) {
                return "node " + line.member().start();
            }
            return point == from.size() - 1
                    ? "node " + line.member().end()
                    : "member " + line.name();
        }
    }

    private Course course(MemberLine line, int many) {
        Course course = new Course(line, new ArrayList<>(), new ArrayList<>());
        if (!line.start().equals(line.startNode())) {
            course.add(line.startNode(), node(line.member().start()));
        }
        int pieces = line.bends() ? many > MANY ? 4 : 24 : 1;
        for (int i = 0; i <= pieces; i++) {
            double share = (double) i / pieces;
            double position = i == pieces ? line.length() : share * line.length();
            course.add(line.at(share), along(line, position));
        }
        if (!line.end().equals(line.endNode())) {
            course.add(line.endNode(), node(line.member().end()));
        }
        return course;
    }

    /** All members of a scene that carry. */
    default List<Course> courses(FrameScene scene) {
        List<Course> courses = new ArrayList<>();
        for (MemberLine line : scene.lines()) {
            if (!line.isLink() && carries(line)) {
                courses.add(course(line, scene.lines().size()));
            }
        }
        return courses;
    }

    /** Refuses what is of another model. */
    static void sameModel(FrameModel model, FrameModel other, String name) {
        if (!model.equals(other)) {
            throw new IllegalArgumentException(
                    name + " is of another model; all must be of one model");
        }
    }
}
