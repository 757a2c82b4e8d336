package org.skewback.frame;

import org.skewback.cable.HangingCable;

/**
 * A cable in a certain position, and what it does near it: f = f₀ + K(v − v₀), with K the tangent of the
 * elastic catenary in its plane (Irvine 1981, section 1.3, by {@link HangingCable#stiffness}) and H/span
 * across it, which tends to the stiffness in its plane as it is turned upright.
 */
final class CableElement extends Element {

    private static final Gauss GAUSS = Gauss.ofOrder(2);
    private static final double GRAVITY = 9.80665;

    private final CableMember cable;
    private final HangingCable hanging;
    private final Vector level;
    private final double[][] tangent;

    /** Movements of the ends, local axes, at which it hangs like this, and its forces there. */
    private final double[] moved;

    private final double[] pull;

    /** Change of the force on the end, local axes, for a metre more of unstressed length. */
    private final double[] byLength;

    private CableElement(
            CableMember cable,
            int start,
            int end,
            Geometry geometry,
            HangingCable hanging,
            Vector level,
            double[][] tangent,
            double[] moved) {
        super(cable, start, end, geometry, tangent);
        this.cable = cable;
        this.hanging = hanging;
        this.level = level;
        this.tangent = tangent;
        this.moved = moved;
        Vector atEnd = force(hanging.horizontalForce(), hanging.endVertical());
        Vector atStart = force(-hanging.horizontalForce(), hanging.startVertical());
        pull = new double[12];
        System.arraycopy(localComponents(atStart), 0, pull, 0, 3);
        System.arraycopy(localComponents(atEnd), 0, pull, 6, 3);
        byLength = byLength();
    }

    /** A vector in the plane of the cable. */
    private Vector force(double along, double up) {
        return level.times(along).plus(Vector.Z.times(up));
    }

    /**
     * Hangs a cable between nodes that have moved.
     *
     * @param cable the cable
     * @param start number of its start
     * @param end number of its end
     * @param from place of the start in the model
     * @param to place of the end in the model
     * @param nodes movements of both nodes, global axes
     */
    static CableElement of(
            CableMember cable, int start, int end, Vector from, Vector to, double[] nodes) {
        Vector drawn = to.minus(from);
        Vector[] axes = Orientation.USUAL.axes(cable.name(), drawn);
        Vector reach = drawn.plus(Vector.of(nodes, 6)).minus(Vector.of(nodes, 0));
        double span = Math.hypot(reach.x(), reach.y());
        HangingCable hanging = hang(cable, span, reach.z());
        // Upright, it has no plane of its own, and all level directions are alike to it.
        Vector level =
                hanging.span() == 0
                        ? new Vector(1, 0, 0)
                        : new Vector(reach.x() / span, reach.y() / span, 0);
        double[][] k = stiffness(hanging, level);
        double[][] local = new double[12][12];
        double[] moved = new double[12];
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                double sum = 0;
                for (int a = 0; a < 3; a++) {
                    for (int b = 0; b < 3; b++) {
                        sum += axes[i].get(a) * k[a][b] * axes[j].get(b);
                    }
                }
                local[i][j] = sum;
                local[i + 6][j + 6] = sum;
                local[i][j + 6] = -sum;
                local[i + 6][j] = -sum;
            }
            moved[i] = axes[i].dot(Vector.of(nodes, 0));
            moved[6 + i] = axes[i].dot(Vector.of(nodes, 6));
        }
        return new CableElement(
                cable,
                start,
                end,
                new Geometry(cable.cable().unstressedLength(), axes, Vector.ZERO, Vector.ZERO),
                hanging,
                level,
                local,
                moved);
    }

    private static HangingCable hang(CableMember cable, double span, double rise) {
        try {
            return HangingCable.between(cable.cable(), span, rise);
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException("cable " + cable.name() + ": " + e.getMessage(), e);
        }
    }

    /** Force on the end for its movement against the start, global axes, 3 × 3. */
    private static double[][] stiffness(HangingCable hanging, Vector level) {
        double[][] inPlane = hanging.stiffness();
        double across = hanging.stiffnessAcross();
        Vector side = Vector.Z.cross(level);
        double[][] k = new double[3][3];
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                k[i][j] =
                        inPlane[0][0] * level.get(i) * level.get(j)
                                + inPlane[0][1]
                                        * (level.get(i) * Vector.Z.get(j)
                                                + Vector.Z.get(i) * level.get(j))
                                + inPlane[1][1] * Vector.Z.get(i) * Vector.Z.get(j)
                                + across * side.get(i) * side.get(j);
            }
        }
        return k;
    }

    /** This cable, between nodes that have moved, and of another unstressed length. */
    CableElement at(FrameModel model, double length, double[] nodes) {
        return of(
                cable.ofLength(length),
                start(),
                end(),
                model.nodes().get(start()).place(),
                model.nodes().get(end()).place(),
                nodes);
    }

    double unstressedLength() {
        return cable.cable().unstressedLength();
    }

    /** Forces on its ends, global axes, twelve of them. */
    double[] pull() {
        return toGlobal(pull);
    }

    /** The end of a longer cable would reach farther by this; held there, it pulls less. */
    private double[] byLength() {
        double vertical = hanging.endVertical();
        double tension = Math.hypot(hanging.horizontalForce(), vertical);
        // Without force at its end nothing tells which way more of it would lie.
        double per = tension == 0 ? 0 : 1 / cable.cable().axialStiffness() + 1 / tension;
        double[] reach = localComponents(force(hanging.horizontalForce() * per, vertical * per));
        double[] change = new double[3];
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                change[i] -= tangent[6 + i][6 + j] * reach[j];
            }
        }
        return change;
    }

    @Override
    double[] flexibility(double x) {
        return new double[6];
    }

    @Override
    Gauss gauss() {
        return GAUSS;
    }

    @Override
    double massPerLength(double x) {
        return cable.cable().weightPerLength() / GRAVITY;
    }

    @Override
    boolean hasOwnWeight() {
        return true;
    }

    @Override
    double expansion() {
        // Steel ropes and strands; other cables are given as LackOfFit.
        return 1.2e-5;
    }

    @Override
    void requireCarries(ElementLoad load) {
        boolean bent = false;
        for (int i = 1; i < 6; i++) {
            bent |= load.strain(i) != 0;
        }
        if (bent
                || !load.pieces().isEmpty()
                || !load.points().isEmpty()
                || !load.gaps().isEmpty()
                || load.hasCables()
                || load.heldTension() != 0) {
            throw new IllegalArgumentException(
                    "cable "
                            + name()
                            + " is loaded along its length; allowed are its weight, changes of its"
                            + " length and loads on its nodes.");
        }
    }

    /** Forces on its ends while its nodes are held. */
    @Override
    double[] clamped(ElementLoad load) {
        return ends(new double[12], load);
    }

    private double[] ends(double[] v, ElementLoad load) {
        double share = load.standing();
        double[] forces = new double[12];
        for (int i = 0; i < 12; i++) {
            forces[i] = share * pull[i];
            for (int j = 0; j < 12; j++) {
                forces[i] += tangent[i][j] * (v[j] - share * moved[j]);
            }
        }
        double longer = load.strain(0) * length();
        // What is added lies at the end and hangs there.
        double[] weight = localComponents(Vector.Z.times(longer * cable.cable().weightPerLength()));
        for (int i = 0; i < 3; i++) {
            forces[i] -= longer * byLength[i];
            forces[6 + i] += longer * byLength[i] + weight[i];
        }
        return forces;
    }

    @Override
    ElementState state(double[] movements, ElementLoad load) {
        double[] ends = ends(movements, load);
        double share = load.standing();
        double[] change = new double[3];
        for (int i = 0; i < 3; i++) {
            change[i] = ends[6 + i] - share * pull[6 + i];
        }
        return new ElementState(this, load, ends, movements, false) {
            @Override
            double[] resultant(double x, boolean after) {
                return along(x, share, change, load.strain(0) * length());
            }

            @Override
            double[] movement(double x) {
                double part = x / length();
                double[] u = new double[6];
                for (int i = 0; i < 3; i++) {
                    u[i] = movements[i] + part * (movements[6 + i] - movements[i]);
                }
                return u;
            }

            @Override
            double strainEnergy() {
                double sum = 0;
                for (int i = 0; i < 12; i++) {
                    for (int j = 0; j < 12; j++) {
                        sum += movements[i] * tangent[i][j] * movements[j] / 2;
                    }
                }
                return sum;
            }

            @Override
            double imposedWork() {
                double[] held = clamped(load);
                double sum = 0;
                for (int i = 0; i < 12; i++) {
                    sum += held[i] * movements[i];
                }
                return sum;
            }
        };
    }

    /** Tension at a place: as it hangs, and what a change of the force at its end adds along it. */
    private double[] along(double x, double share, double[] change, double longer) {
        double s = Math.min(x, unstressedLength());
        double below = cable.cable().weightPerLength() * (unstressedLength() - s);
        double up = hanging.endVertical() - below;
        double along = hanging.horizontalForce();
        double tension = Math.hypot(along, up);
        Vector tangentHere = tension == 0 ? Vector.ZERO : force(along / tension, up / tension);
        double[] direction = localComponents(tangentHere);
        double more = -longer * cable.cable().weightPerLength();
        double sum = share * tension + more * tangentHere.z();
        for (int i = 0; i < 3; i++) {
            sum += change[i] * direction[i];
        }
        return new double[] {sum, 0, 0, 0, 0, 0};
    }

    @Override
    double fit(double[] v, ElementLoad load) {
        // As much longer as its ends are farther apart along the chord.
        double longer = v[6] - v[0];
        load.addStrain(0, longer / length());
        return longer;
    }
}
