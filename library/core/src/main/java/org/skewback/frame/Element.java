package org.skewback.frame;

/**
 * One member made ready for calculation: its axes, its stiffness, and what it does under load.
 *
 * <p>The member is seen as a cantilever, held at its start, with forces P on its end (six components
 * in local axes). Forces at a section are s = b P + s_p, with s_p from the loads beyond; the end
 * moves by d = F P + d_p against the start (Przemieniecki 1968, section 6.2). With B v the movement
 * of the end against the start, P = F⁻¹(B v − d_p).
 */
abstract class Element {

    private final Member member;
    private final int start;
    private final int end;
    private final double length;
    private final Vector[] axes;
    private final Vector startArm;
    private final Vector endArm;
    private final double[][] stiffness;

    /**
     * Makes the parts common to all members.
     *
     * @param member the member
     * @param start number of the start node
     * @param end number of the end node
     * @param geometry length, axes and rigid arms
     */
    Element(Member member, int start, int end, Geometry geometry, double[][] local) {
        this(member, start, end, geometry, local, new double[0][]);
    }

    /**
     * Makes the parts common to all members.
     *
     * @param member the member
     * @param start number of the start node
     * @param end number of the end node
     * @param geometry length, axes and rigid arms
     * @param local stiffness of its ends, local axes
     * @param atNodes stiffness at its nodes besides, global axes; may be empty
     */
    Element(
            Member member,
            int start,
            int end,
            Geometry geometry,
            double[][] local,
            double[][] atNodes) {
        this.member = member;
        this.start = start;
        this.end = end;
        this.length = geometry.length();
        this.axes = geometry.axes();
        this.startArm = geometry.startArm();
        this.endArm = geometry.endArm();
        this.stiffness = toGlobal(local);
        for (int i = 0; i < atNodes.length; i++) {
            for (int j = 0; j < 12; j++) {
                stiffness[i][j] += atNodes[i][j];
            }
        }
    }

    /**
     * Where a member lies.
     *
     * @param length length of the flexible part, m
     * @param axes unit vectors along local x, y, z
     * @param startArm rigid arm at the start
     * @param endArm rigid arm at the end
     */
    @SuppressWarnings("ArrayRecordComponent") // stays in this package, never changed
    record Geometry(double length, Vector[] axes, Vector startArm, Vector endArm) {}

    static Element of(FrameModel model, Member member) {
        int start = model.indexOfNode(member.start());
        int end = model.indexOfNode(member.end());
        Vector from = model.nodes().get(start).place();
        Vector to = model.nodes().get(end).place();
        if (member instanceof BeamColumn beam) {
            Vector along = to.plus(beam.endOffset()).minus(from.plus(beam.startOffset()));
            requireLength(member, along);
            return new BeamElement(
                    beam,
                    start,
                    end,
                    new Geometry(
                            along.length(),
                            beam.orientation().axes(member.name(), along),
                            beam.startOffset(),
                            beam.endOffset()));
        } else if (member instanceof Bar bar) {
            Vector along = to.minus(from);
            requireLength(member, along);
            return new BarElement(
                    bar,
                    start,
                    end,
                    new Geometry(
                            along.length(),
                            Orientation.USUAL.axes(member.name(), along),
                            Vector.ZERO,
                            Vector.ZERO));
        } else if (member instanceof CableMember cable) {
            requireLength(member, to.minus(from));
            return CableElement.of(cable, start, end, from, to, new double[12]);
        } else if (member instanceof SpringLink link) {
            return new LinkElement(
                    link,
                    start,
                    end,
                    new Geometry(
                            0,
                            new Orientation(link.upward(), 0).axes(member.name(), link.axis()),
                            Vector.ZERO,
                            from.minus(to)));
        }
        throw new IllegalArgumentException("member " + member.name() + " is of no known kind.");
    }

    private static void requireLength(Member member, Vector along) {
        if (!(along.length() > 0)) {
            throw Require.refused("length of member " + member.name(), 0, "m", "more than 0 m");
        }
    }

    Member member() {
        return member;
    }

    String name() {
        return member.name();
    }

    int start() {
        return start;
    }

    int end() {
        return end;
    }

    double length() {
        return length;
    }

    Vector axis(int local) {
        return axes[local];
    }

    /** Where the flexible part starts. */
    Vector startPlace(FrameModel model) {
        return model.nodes().get(start).place().plus(startArm);
    }

    /** Where a member lies and how it is joined to its nodes. */
    Geometry geometry() {
        return new Geometry(length, axes, startArm, endArm);
    }

    /** Stiffness against the movements of the nodes, global axes, 12 × 12. Not to be changed. */
    double[][] stiffness() {
        return stiffness;
    }

    /**
     * Forces that the nodes exert on the member in a state of it, global axes.
     *
     * @param state the state
     * @param nodes movements of the nodes, global axes
     */
    double[] nodeForces(ElementState state, double[] nodes) {
        return toGlobal(state.endForces());
    }

    /** Half the work of forces at rigid arms that have turned. */
    double armEnergy(double[] nodes) {
        return 0;
    }

    /** Whether equilibrium is that of the deformed member. */
    boolean isDeformed() {
        return false;
    }

    /** Deformation of a very short piece under unit forces, by component. */
    abstract double[] flexibility(double x);

    /** Quadrature that is exact, or near enough, between breaks of the load. */
    abstract Gauss gauss();

    /** Weight per length at a place divided by the acceleration, kg/m; negative where it has none. */
    abstract double massPerLength(double x);

    /** Whether its weight is in its own forces already. */
    boolean hasOwnWeight() {
        return false;
    }

    /** Coefficient of thermal expansion, 1/K. */
    abstract double expansion();

    /**
     * Forces on the member's two ends while its nodes are held, in local axes at its ends.
     *
     * @param load what acts
     * @return 12 forces
     */
    abstract double[] clamped(ElementLoad load);

    /**
     * Forces and movements of the member.
     *
     * @param movements movements of its ends, local axes
     * @param load what acts
     * @return its state
     */
    abstract ElementState state(double[] movements, ElementLoad load);

    /** Refuses loads that this kind of member cannot carry. */
    abstract void requireCarries(ElementLoad load);

    /**
     * Adds deformations that make the member free of stress when its ends have moved like this: it is
     * stretched and twisted evenly, with kinks at its ends, straight between.
     *
     * @param v movements of its ends, local axes
     * @param load added to
     * @return how much longer it is made
     */
    double fit(double[] v, ElementLoad load) {
        double longer = v[6] - v[0];
        load.addStrain(0, longer / length);
        load.addStrain(3, (v[9] - v[3]) / length);
        double slopeY = (v[7] - v[1]) / length;
        double slopeZ = (v[8] - v[2]) / length;
        // Kinks from the start's direction to the chord's, and from there to the end's.
        double[] kinks = {slopeZ + v[4], slopeY - v[5], -v[10] - slopeZ, v[11] - slopeY};
        for (int i = 0; i < 4; i++) {
            if (kinks[i] != 0) {
                load.add(new ElementLoad.Gap(i < 2 ? 0 : length, 4 + i % 2, kinks[i]));
            }
        }
        return longer;
    }

    /** Movements of the member's ends in local axes from those of its nodes in global axes. */
    double[] toLocal(double[] nodes) {
        double[] local = new double[12];
        endToLocal(nodes, 0, startArm, local);
        endToLocal(nodes, 6, endArm, local);
        return local;
    }

    private void endToLocal(double[] u, int at, Vector arm, double[] local) {
        double x = u[at] + u[at + 4] * arm.z() - u[at + 5] * arm.y();
        double y = u[at + 1] + u[at + 5] * arm.x() - u[at + 3] * arm.z();
        double z = u[at + 2] + u[at + 3] * arm.y() - u[at + 4] * arm.x();
        for (int i = 0; i < 3; i++) {
            Vector axis = axes[i];
            local[at + i] = axis.x() * x + axis.y() * y + axis.z() * z;
            local[at + 3 + i] = axis.x() * u[at + 3] + axis.y() * u[at + 4] + axis.z() * u[at + 5];
        }
    }

    /** Forces on the member's ends in local axes from forces on the nodes' side in global axes. */
    double[] toLocalForces(double[] global) {
        double[] local = new double[12];
        for (int half = 0; half < 12; half += 6) {
            Vector force = Vector.of(global, half);
            Vector moment =
                    Vector.of(global, half + 3).minus((half == 0 ? startArm : endArm).cross(force));
            System.arraycopy(localComponents(force), 0, local, half, 3);
            System.arraycopy(localComponents(moment), 0, local, half + 3, 3);
        }
        return local;
    }

    /** Forces on the nodes' side in global axes from forces on the member's ends in local axes. */
    double[] toGlobal(double[] local) {
        double[] global = new double[12];
        endToGlobal(local, 0, startArm, global);
        endToGlobal(local, 6, endArm, global);
        return global;
    }

    private void endToGlobal(double[] local, int at, Vector arm, double[] global) {
        double[] force = toGlobal(local[at], local[at + 1], local[at + 2]);
        double[] moment = toGlobal(local[at + 3], local[at + 4], local[at + 5]);
        global[at] = force[0];
        global[at + 1] = force[1];
        global[at + 2] = force[2];
        global[at + 3] = moment[0] + arm.y() * force[2] - arm.z() * force[1];
        global[at + 4] = moment[1] + arm.z() * force[0] - arm.x() * force[2];
        global[at + 5] = moment[2] + arm.x() * force[1] - arm.y() * force[0];
    }

    private double[] toGlobal(double x, double y, double z) {
        return new double[] {
            axes[0].x() * x + axes[1].x() * y + axes[2].x() * z,
            axes[0].y() * x + axes[1].y() * y + axes[2].y() * z,
            axes[0].z() * x + axes[1].z() * y + axes[2].z() * z
        };
    }

    /** A vector of local components in global axes. */
    Vector globalVector(double[] local, int from) {
        return Vector.of(toGlobal(local[from], local[from + 1], local[from + 2]), 0);
    }

    /** Rigid arm from a node to the member's end there, global axes. */
    Vector arm(boolean atEnd) {
        return atEnd ? endArm : startArm;
    }

    /** Local components of a global vector. */
    double[] localComponents(Vector global) {
        return new double[] {axes[0].dot(global), axes[1].dot(global), axes[2].dot(global)};
    }

    /** Forces on the end, local axes, from movements of the nodes without any load on the member. */
    void endForces(double[] nodes, double[] forces, int at) {
        double[] global = new double[6];
        for (int i = 0; i < 6; i++) {
            double sum = 0;
            double[] row = stiffness[6 + i];
            for (int j = 0; j < 12; j++) {
                sum += row[j] * nodes[j];
            }
            global[i] = sum;
        }
        global[3] -= endArm.y() * global[2] - endArm.z() * global[1];
        global[4] -= endArm.z() * global[0] - endArm.x() * global[2];
        global[5] -= endArm.x() * global[1] - endArm.y() * global[0];
        for (int i = 0; i < 3; i++) {
            Vector axis = axes[i];
            forces[at + i] = axis.x() * global[0] + axis.y() * global[1] + axis.z() * global[2];
            forces[at + 3 + i] = axis.x() * global[3] + axis.y() * global[4] + axis.z() * global[5];
        }
    }

    /** A symmetric matrix of the member's ends, local axes, as one of its nodes, global axes. */
    final double[][] toGlobal(double[][] local) {
        double[][] half = new double[12][];
        for (int row = 0; row < 12; row++) {
            // Row of K times the map of movements is that map's transpose on the row.
            half[row] = toGlobal(local[row]);
        }
        double[][] global = new double[12][12];
        double[] column = new double[12];
        for (int j = 0; j < 12; j++) {
            for (int i = 0; i < 12; i++) {
                column[i] = half[i][j];
            }
            double[] turned = toGlobal(column);
            for (int i = 0; i < 12; i++) {
                global[i][j] = turned[i];
            }
        }
        for (int i = 0; i < 12; i++) {
            for (int j = 0; j < i; j++) {
                double mean = (global[i][j] + global[j][i]) / 2;
                global[i][j] = mean;
                global[j][i] = mean;
            }
        }
        return global;
    }

    /** Section forces at x from the forces on the end: b P. */
    static void addFromEnd(double arm, double[] p, double[] s) {
        s[0] += p[0];
        s[1] -= p[1];
        s[2] -= p[2];
        s[3] += p[3];
        s[4] += arm * p[2] - p[4];
        s[5] += arm * p[1] + p[5];
    }

    /** Adds bᵀ e, the movement of a point at some arm beyond a deformation. */
    static void addMovement(double arm, double weight, double[] e, double[] d) {
        d[0] += weight * e[0];
        d[1] += weight * (arm * e[5] - e[1]);
        d[2] += weight * (arm * e[4] - e[2]);
        d[3] += weight * e[3];
        d[4] -= weight * e[4];
        d[5] += weight * e[5];
    }

    /** Sum of the loads and their moments about the start, local axes. */
    static double[] resultant(ElementLoad load) {
        double[] s = new double[6];
        load.addForcesBeyond(0, false, s);
        // Section forces at the start are those of the part beyond; turn back into a vector.
        return new double[] {s[0], -s[1], -s[2], s[3], -s[4], s[5]};
    }

    /** Forces on the start from those on the end and the loads. */
    static double[] bothEnds(double length, double[] p, double[] resultant) {
        return new double[] {
            -p[0] - resultant[0],
            -p[1] - resultant[1],
            -p[2] - resultant[2],
            -p[3] - resultant[3],
            -p[4] + length * p[2] - resultant[4],
            -p[5] - length * p[1] - resultant[5],
            p[0],
            p[1],
            p[2],
            p[3],
            p[4],
            p[5]
        };
    }
}
