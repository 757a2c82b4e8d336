package org.skewback.frame;

/**
 * A member in a structure that has moved far: its own axes follow the chord and the mean turn of its ends,
 * and within them it is linear (M. A. Crisfield, A consistent co-rotational formulation for non-linear,
 * three-dimensional beam-elements, Computer Methods in Applied Mechanics and Engineering 81 (1990)
 * 131–150).
 */
final class MovedElement {

    private final Element moved;
    private final ElementState state;
    private final double[] forces;

    private MovedElement(Element moved, ElementState state, double[] forces) {
        this.moved = moved;
        this.state = state;
        this.forces = forces;
    }

    private static MovedElement of(CableElement first, FrameModel model, double[] u) {
        double[] twelve = new double[12];
        FrameSystem.gather(first, u, twelve);
        CableElement now = first.at(model, first.unstressedLength(), twelve);
        ElementLoad hangs = new ElementLoad();
        hangs.addStanding(1);
        return new MovedElement(now, now.state(now.toLocal(twelve), hangs), now.pull());
    }

    static MovedElement of(Element first, FrameModel model, double[] u, Turn[] turns) {
        if (first instanceof CableElement cable) {
            return of(cable, model, u);
        }
        if (first.length() == 0) {
            double[] twelve = new double[12];
            FrameSystem.gather(first, u, twelve);
            ElementState state = first.state(first.toLocal(twelve), ElementLoad.NONE);
            return new MovedElement(first, state, first.toGlobal(state.endForces()));
        }
        Turn atStart = turns[first.start()];
        Turn atEnd = turns[first.end()];
        Vector startArm = atStart.apply(first.arm(false));
        Vector endArm = atEnd.apply(first.arm(true));
        Vector from = place(model, u, first.start()).plus(startArm);
        Vector chord = place(model, u, first.end()).plus(endArm).minus(from);
        double length = chord.length();
        Vector x = chord.unit();
        boolean bends = first instanceof BeamElement;
        Turn own = Turn.to(first.axis(0), first.axis(1), first.axis(2));
        Turn mean =
                bends
                        ? atStart.after(Turn.about(atStart.until(atEnd).vector().times(0.5)))
                                .after(own)
                        : own;
        Vector along = mean.column(0);
        double share = 1 / (1 + Math.max(-0.999, along.dot(x)));
        Vector[] axes = {
            x, onto(mean.column(1), along, x, share), onto(mean.column(2), along, x, share)
        };
        Turn now = Turn.to(axes[0], axes[1], axes[2]);
        double[] local = new double[12];
        local[6] = length - first.length();
        if (bends) {
            put(now.until(atStart.after(own)).vector(), local, 3);
            put(now.until(atEnd.after(own)).vector(), local, 9);
        }
        ElementState state = first.state(local, ElementLoad.NONE);
        double[] p = state.endForces().clone();
        // Equilibrium in the length that the member has now.
        if (bends) {
            p[7] = -(p[5] + p[11]) / length;
            p[8] = (p[4] + p[10]) / length;
            p[1] = -p[7];
            p[2] = -p[8];
        }
        Element.Geometry geometry = new Element.Geometry(length, axes, startArm, endArm);
        Element moved =
                first.member() instanceof BeamColumn beam
                        ? new BeamElement(beam, first.start(), first.end(), geometry)
                        : new BarElement(
                                (Bar) first.member(), first.start(), first.end(), geometry);
        return new MovedElement(moved, state, moved.toGlobal(p));
    }

    private static Vector place(FrameModel model, double[] u, int node) {
        return model.nodes().get(node).place().plus(Vector.of(u, 6 * node));
    }

    /** Takes a vector along by the smallest rotation that takes one direction to another. */
    private static Vector onto(Vector v, Vector from, Vector to, double share) {
        return v.minus(from.plus(to).times(v.dot(to) * share));
    }

    private static void put(Vector v, double[] to, int at) {
        to[at] = v.x();
        to[at + 1] = v.y();
        to[at + 2] = v.z();
    }

    /** Where a point of the axis is, at a distance from the start on the undeformed member. */
    Vector place(FrameModel model, double[] u, double x) {
        double[] off = state.movement(x);
        return place(model, u, moved.start())
                .plus(moved.arm(false))
                .plus(moved.axis(0).times(x + off[0]))
                .plus(moved.axis(1).times(off[1]))
                .plus(moved.axis(2).times(off[2]));
    }

    /** Forces that the nodes exert on the member, global axes. */
    double[] forces() {
        return forces;
    }

    /** The member in its own axes: small deformations against the chord. */
    ElementState state() {
        return state;
    }

    /** Stiffness against further movement, global axes, symmetric. */
    double[][] tangent() {
        double[][] k = moved.stiffness();
        if (moved.length() == 0 || moved instanceof CableElement) {
            return k;
        }
        double[][] geometric =
                SecondOrder.geometric(moved, moved.state(state.ends(), ElementLoad.NONE), 0);
        double[][] sum = new double[12][12];
        for (int i = 0; i < 12; i++) {
            for (int j = 0; j < 12; j++) {
                sum[i][j] = k[i][j] + geometric[i][j];
            }
        }
        return sum;
    }
}
