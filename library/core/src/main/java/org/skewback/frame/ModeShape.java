package org.skewback.frame;

import java.util.Arrays;

/**
 * The shape of a vibration or of buckling. Its size means nothing: the largest displacement of a node
 * is 1 m, positive along the axis in which it is largest (where only nodes turn, the largest rotation
 * is 1 rad).
 */
public final class ModeShape {

    private final DividedSystem divided;
    private final double[] movements;

    /**
     * Scales a shape.
     *
     * @param divided the structure
     * @param movements of all nodes, six each, global axes
     */
    ModeShape(DividedSystem divided, double[] movements) {
        this.divided = divided;
        int peak = peak(movements, 0);
        double size = vector(movements, peak, 0).length();
        int turn = peak(movements, 3);
        int from = 0;
        if (size <= 1e-9 * reach(divided.model()) * vector(movements, turn, 3).length()) {
            peak = turn;
            from = 3;
            size = vector(movements, peak, 3).length();
        }
        double main = 0;
        for (int k = 0; k < 3; k++) {
            double value = movements[6 * peak + from + k];
            main = Math.abs(value) > Math.abs(main) * (1 + 1e-9) ? value : main;
        }
        double scale = size == 0 ? 1 : Math.copySign(1 / size, main);
        this.movements = Arrays.stream(movements).map(u -> u * scale).toArray();
    }

    private static Vector vector(double[] u, int node, int from) {
        return Vector.of(u, 6 * node + from);
    }

    private static int peak(double[] u, int from) {
        int peak = 0;
        for (int n = 1; n < u.length / 6; n++) {
            if (vector(u, n, from).length() > vector(u, peak, from).length() * (1 + 1e-9)) {
                peak = n;
            }
        }
        return peak;
    }

    private static double reach(FrameModel model) {
        Vector first = model.nodes().get(0).place();
        return model.nodes().stream()
                .mapToDouble(node -> node.place().minus(first).length())
                .max()
                .orElse(0);
    }

    /**
     * Gives the movement of a node.
     *
     * @param node the node
     * @return displacement and rotation, global axes
     * @throws IllegalArgumentException if there is no such node
     */
    public Movement movement(String node) {
        int at = divided.model().indexOfNode(node);
        return new Movement(vector(movements, at, 0), vector(movements, at, 3));
    }

    /**
     * Gives the movement of a point of a member's axis.
     *
     * @param member the member
     * @param position distance from its start, 0 to its length, m
     * @return displacement and rotation, global axes
     * @throws IllegalArgumentException if there is no such member, it is out of action or not so long
     */
    public Movement along(String member, double position) {
        int index = divided.model().indexOfMember(member);
        int last = divided.division().after(index) - 1;
        double length =
                divided.division().piece(last).from()
                        + divided.system().elements().get(last).length();
        // The pieces add up to the member but for rounding.
        Require.within("position on member " + member, position, 0, length * (1 + 1e-9), "m");
        int piece = divided.division().holding(index, position);
        if (!divided.isPresent(piece)) {
            throw new IllegalArgumentException(
                    "member " + member + " is out of action; allowed are members that carry.");
        }
        return divided.movement(piece, position, movements);
    }

    /**
     * Names the direction in which the structure moves most.
     *
     * @return along x, y or z: the one with the largest sum of squares over all nodes
     */
    public Motion mainDirection() {
        double[] sums = new double[3];
        for (int i = 0; i < movements.length; i++) {
            if (i % 6 < 3) {
                sums[i % 6] += movements[i] * movements[i];
            }
        }
        int main = 0;
        for (int k = 1; k < 3; k++) {
            main = sums[k] > sums[main] ? k : main;
        }
        return Motion.at(main);
    }

    double[] movements() {
        return movements;
    }
}
