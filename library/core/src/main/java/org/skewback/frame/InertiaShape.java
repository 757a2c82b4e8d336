package org.skewback.frame;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * A shape of a structure with the inertia forces that go with it: end forces of a piece are k u − m a, so
 * that they are in equilibrium at nodes with the masses there.
 */
final class InertiaShape {

    private final DynamicSystem system;
    private final double[] movements;
    private final double[] accelerations;
    private double @Nullable [] forces;

    /**
     * Makes a shape.
     *
     * @param system the structure
     * @param movements u of all nodes, six each, global axes
     * @param accelerations a of all nodes: inertia forces are m a
     */
    InertiaShape(DynamicSystem system, double[] movements, double[] accelerations) {
        this.system = system;
        this.movements = movements;
        this.accelerations = accelerations;
    }

    private FrameSystem pieces() {
        return system.divided().system();
    }

    double[] movements() {
        return movements;
    }

    private int piece(String member, double position) {
        DividedSystem divided = system.divided();
        int index = divided.model().indexOfMember(member);
        int last = divided.division().after(index) - 1;
        double length =
                divided.division().piece(last).from() + pieces().elements().get(last).length();
        Require.within("position on member " + member, position, 0, length * (1 + 1e-9), "m");
        int piece = divided.division().holding(index, position);
        if (!divided.isPresent(piece)) {
            throw new IllegalArgumentException(
                    "member " + member + " is out of action; allowed are members that carry.");
        }
        return piece;
    }

    /** The six forces at a section. */
    double[] section(String member, double position) {
        int piece = piece(member, position);
        Element element = pieces().elements().get(piece);
        double x =
                Math.min(
                        position - system.divided().division().piece(piece).from(),
                        element.length());
        double[] twelve = new double[12];
        FrameSystem.gather(element, movements, twelve);
        double[] s = element.state(element.toLocal(twelve), ElementLoad.NONE).forces(x, false);
        FrameSystem.gather(element, accelerations, twelve);
        double[] c = element.toLocalForces(FrameSystem.times(system.massOf(piece), twelve));
        double share = element.length() == 0 ? 1 : x / element.length();
        double[] atStart = {-c[0], c[1], c[2], -c[3], c[4], -c[5]};
        double[] atEnd = {c[6], -c[7], -c[8], c[9], -c[10], c[11]};
        for (int k = 0; k < 6; k++) {
            s[k] -= (1 - share) * atStart[k] + share * atEnd[k];
        }
        return s;
    }

    /** Movement of a point of a member, six components, global axes. */
    double[] along(String member, double position) {
        Movement moved = system.divided().movement(piece(member, position), position, movements);
        Vector place = moved.translation();
        Vector turn = moved.rotation();
        return new double[] {place.x(), place.y(), place.z(), turn.x(), turn.y(), turn.z()};
    }

    /** What supports exert on a node, six components. */
    double[] reaction(int node) {
        double[] all = forces;
        if (all == null) {
            all = new double[movements.length];
            double[] twelve = new double[12];
            for (int p = 0; p < pieces().elements().size(); p++) {
                if (system.divided().isPresent(p)) {
                    Element element = pieces().elements().get(p);
                    FrameSystem.gather(element, movements, twelve);
                    FrameSystem.add(
                            element, FrameSystem.times(element.stiffness(), twelve), 1, all);
                    FrameSystem.gather(element, accelerations, twelve);
                    FrameSystem.add(element, FrameSystem.times(system.massOf(p), twelve), -1, all);
                }
            }
            for (NodalMass mass : system.nodal()) {
                int at = 6 * system.divided().model().indexOfNode(mass.node());
                for (int i = 0; i < 6; i++) {
                    double m = i < 3 ? mass.mass() : mass.rotary().get(i - 3);
                    all[at + i] -= m * accelerations[at + i];
                }
            }
            forces = all;
        }
        return Arrays.copyOfRange(all, 6 * node, 6 * node + 6);
    }
}
