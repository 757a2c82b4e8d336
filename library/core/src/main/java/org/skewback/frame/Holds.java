package org.skewback.frame;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What rigid supports hold, node by node: three directions of displacement and three of rotation, at
 * right angles, each held or free. Where all supports run along global axes these directions are the
 * global ones.
 */
final class Holds {

    /** Of a direction not yet held, at least this share must be new. */
    private static final double NEW = 1e-6;

    private final @Nullable Vector[][] turned;
    private final boolean[] held;
    private final boolean[] supported;
    private final List<Support> springs = new ArrayList<>();
    private final List<Support> rigid = new ArrayList<>();

    Holds(FrameModel model, List<Support> supports) {
        int nodes = model.nodes().size();
        turned = new Vector[2 * nodes][];
        held = new boolean[6 * nodes];
        supported = new boolean[nodes];
        List<List<Vector>> wanted = new ArrayList<>();
        for (int i = 0; i < 2 * nodes; i++) {
            List<Vector> directions = new ArrayList<>(3);
            if (model.isInPlane()) {
                directions.add(i % 2 == 0 ? Vector.Y : Vector.X);
                if (i % 2 == 1) {
                    directions.add(Vector.Z);
                }
            }
            wanted.add(directions);
        }
        for (Support support : supports) {
            int node = model.indexOfNode(support.node());
            supported[node] = true;
            if (!support.rigid()) {
                springs.add(support);
                continue;
            }
            rigid.add(support);
            List<Vector> directions = wanted.get(2 * node + (support.rotation() ? 1 : 0));
            Vector rest = rest(support.direction(), directions);
            if (rest.length() >= NEW) {
                directions.add(rest.unit());
            } else if (!model.isInPlane()) {
                throw new IllegalArgumentException(
                        "support of node "
                                + support.node()
                                + (support.rotation() ? " about " : " along ")
                                + support.direction()
                                + " holds what is held already; allowed are directions that"
                                + " differ.");
            }
        }
        for (int i = 0; i < wanted.size(); i++) {
            fill(i, wanted.get(i));
        }
    }

    private static Vector rest(Vector direction, List<Vector> held) {
        Vector rest = direction;
        for (int pass = 0; pass < 2; pass++) {
            for (Vector other : held) {
                rest = rest.minus(other.times(rest.dot(other)));
            }
        }
        return rest;
    }

    private void fill(int half, List<Vector> directions) {
        boolean along = true;
        for (Vector direction : directions) {
            int axis = axisOf(direction);
            along &= axis >= 0;
            if (axis >= 0) {
                held[3 * half + axis] = true;
            }
        }
        if (along || directions.size() == 3) {
            for (int axis = 0; axis < 3 && directions.size() == 3; axis++) {
                held[3 * half + axis] = true;
            }
            return;
        }
        List<Vector> basis = new ArrayList<>(directions);
        for (Vector axis : List.of(Vector.X, Vector.Y, Vector.Z)) {
            Vector rest = rest(axis, basis);
            // Of the axes at least one has √⅓ of itself outside any plane.
            if (basis.size() < 3 && rest.length() > 0.5) {
                basis.add(rest.unit());
            }
        }
        turned[half] = basis.toArray(new Vector[0]);
        for (int k = 0; k < 3; k++) {
            held[3 * half + k] = k < directions.size();
        }
    }

    private static int axisOf(Vector direction) {
        for (int axis = 0; axis < 3; axis++) {
            if (Math.abs(direction.get(axis)) == 1) {
                return axis;
            }
        }
        return -1;
    }

    /**
     * Adds the movements at which rigid supports took their nodes: of each node the one that lies in
     * the held directions and has the given component along each support.
     */
    void places(FrameModel model, Map<Support, Double> rests, double[] places) {
        for (Support support : rigid) {
            double rest = rests.getOrDefault(support, 0.0);
            int half = 2 * model.indexOfNode(support.node()) + (support.rotation() ? 1 : 0);
            double there = support.direction().dot(Vector.of(places, 3 * half));
            // What this support holds and those before it do not.
            Vector fresh = rest(support.direction(), directionsBefore(model, support, half));
            double share = fresh.dot(support.direction());
            if (share > NEW * NEW) {
                for (int k = 0; k < 3; k++) {
                    places[3 * half + k] += (rest - there) / share * fresh.get(k);
                }
            }
        }
    }

    private List<Vector> directionsBefore(FrameModel model, Support support, int half) {
        List<Vector> directions = new ArrayList<>();
        for (Support other : rigid) {
            if (other.equals(support)) {
                break;
            }
            if (2 * model.indexOfNode(other.node()) + (other.rotation() ? 1 : 0) == half) {
                Vector fresh = rest(other.direction(), directions);
                if (fresh.length() >= NEW) {
                    directions.add(fresh.unit());
                }
            }
        }
        return directions;
    }

    /** Whether a motion (six a node, in the node's own directions) is held. */
    boolean isHeld(int motion) {
        return held[motion];
    }

    /** Whether a node has any support. */
    boolean isSupported(int node) {
        return supported[node];
    }

    List<Support> springs() {
        return springs;
    }

    /** Turns the components of all nodes from global axes to the nodes' own directions, in place. */
    void allToOwn(double[] u) {
        for (int half = 0; half < turned.length; half++) {
            Vector[] basis = turned[half];
            if (basis != null) {
                Vector global = Vector.of(u, 3 * half);
                for (int k = 0; k < 3; k++) {
                    u[3 * half + k] = basis[k].dot(global);
                }
            }
        }
    }

    /** Turns the components of some nodes, six each, to the nodes' own directions, in place. */
    void toOwn(double[] u, int... nodes) {
        for (int n = 0; n < nodes.length; n++) {
            for (int part = 0; part < 2; part++) {
                Vector[] basis = turned[2 * nodes[n] + part];
                if (basis != null) {
                    int at = 6 * n + 3 * part;
                    Vector global = Vector.of(u, at);
                    for (int k = 0; k < 3; k++) {
                        u[at + k] = basis[k].dot(global);
                    }
                }
            }
        }
    }

    /** Turns the components of all nodes from the nodes' own directions to global axes, in place. */
    void toGlobal(double[] u) {
        for (int half = 0; half < turned.length; half++) {
            Vector[] basis = turned[half];
            if (basis != null) {
                Vector sum = Vector.ZERO;
                for (int k = 0; k < 3; k++) {
                    sum = sum.plus(basis[k].times(u[3 * half + k]));
                }
                u[3 * half] = sum.x();
                u[3 * half + 1] = sum.y();
                u[3 * half + 2] = sum.z();
            }
        }
    }

    /** Gives a matrix of nodes' motions, six a node, in the nodes' own directions. */
    double[][] toOwn(double[][] global, int... nodes) {
        double[][] own = global;
        for (int n = 0; n < nodes.length; n++) {
            for (int part = 0; part < 2; part++) {
                Vector[] basis = turned[2 * nodes[n] + part];
                if (basis != null) {
                    own = turned(own, basis, 6 * n + 3 * part);
                }
            }
        }
        return own;
    }

    private static double[][] turned(double[][] matrix, Vector[] basis, int at) {
        int size = matrix.length;
        double[][] result = new double[size][];
        for (int i = 0; i < size; i++) {
            result[i] = matrix[i].clone();
            Vector part = Vector.of(matrix[i], at);
            for (int k = 0; k < 3; k++) {
                result[i][at + k] = basis[k].dot(part);
            }
        }
        double[][] columns = new double[3][];
        for (int k = 0; k < 3; k++) {
            columns[k] = result[at + k].clone();
        }
        for (int j = 0; j < size; j++) {
            for (int k = 0; k < 3; k++) {
                result[at + k][j] =
                        basis[k].x() * columns[0][j]
                                + basis[k].y() * columns[1][j]
                                + basis[k].z() * columns[2][j];
            }
        }
        for (int i = 0; i < size; i++) {
            for (int j = 0; j < i; j++) {
                double mean = (result[i][j] + result[j][i]) / 2;
                result[i][j] = mean;
                result[j][i] = mean;
            }
        }
        return result;
    }
}
