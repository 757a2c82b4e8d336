package org.skewback.frame;

import java.util.Arrays;

/** A member under load: the forces and movements along it. */
class ElementState {

    private final Element element;
    private final ElementLoad load;
    private final double[] endForces;
    private final double[] startMovement;
    private final double[] endMovement;
    private final boolean bends;

    /**
     * Makes the state.
     *
     * @param element the member
     * @param load what acts on it
     * @param endForces 12 forces on its ends, local axes
     * @param movements 12 movements of its ends (inside their joints), local axes
     * @param bends whether the line between the ends follows from bending, or is the chord
     */
    ElementState(
            Element element,
            ElementLoad load,
            double[] endForces,
            double[] movements,
            boolean bends) {
        this.element = element;
        this.load = load;
        this.endForces = endForces;
        this.startMovement = Arrays.copyOf(movements, 6);
        this.endMovement = Arrays.copyOfRange(movements, 6, 12);
        this.bends = bends;
    }

    /** The 12 forces on the ends of the member, local axes. */
    double[] endForces() {
        return endForces;
    }

    /** The 12 movements of the ends inside their joints, local axes. */
    double[] ends() {
        double[] ends = Arrays.copyOf(startMovement, 12);
        System.arraycopy(endMovement, 0, ends, 6, 6);
        return ends;
    }

    ElementLoad load() {
        return load;
    }

    Element element() {
        return element;
    }

    /** Forces at a section, without those of tendons by themselves. */
    double[] resultant(double x, boolean after) {
        double[] s = new double[6];
        double[] p = Arrays.copyOfRange(endForces, 6, 12);
        Element.addFromEnd(element.length() - x, p, s);
        load.addForcesBeyond(x, after, s);
        return s;
    }

    /** Forces at a section of the member. */
    double[] forces(double x, boolean after) {
        double[] s = resultant(x, after);
        load.addCableForces(x, s);
        return s;
    }

    /** Deformation per length at a place. */
    private double[] deformation(double x) {
        double[] f = element.flexibility(x);
        double[] e = forces(x, false);
        for (int i = 0; i < e.length; i++) {
            e[i] *= f[i];
        }
        load.addStrains(f, e);
        return e;
    }

    /** Movement of a point of the axis, local axes. */
    double[] movement(double x) {
        double length = element.length();
        if (length == 0) {
            return startMovement.clone();
        }
        double[] u = startMovement.clone();
        if (bends) {
            u[1] += x * startMovement[5];
            u[2] -= x * startMovement[4];
        }
        double[] along = new double[6];
        Gauss gauss = element.gauss();
        double[] breaks = load.breaks(x);
        for (int b = 1; b < breaks.length; b++) {
            double width = breaks[b] - breaks[b - 1];
            for (int i = 0; i < gauss.size(); i++) {
                double at = breaks[b - 1] + gauss.point(i) * width;
                Element.addMovement(x - at, gauss.weight(i) * width, deformation(at), along);
            }
        }
        for (ElementLoad.Gap gap : load.gaps()) {
            if (gap.at() <= x) {
                double[] e = new double[6];
                e[gap.component()] = gap.amount();
                Element.addMovement(x - gap.at(), 1, e, along);
            }
        }
        if (bends) {
            for (int i = 0; i < 6; i++) {
                u[i] += along[i];
            }
            return u;
        }
        double share = x / length;
        u[0] += along[0];
        u[1] += share * (endMovement[1] - startMovement[1]);
        u[2] += share * (endMovement[2] - startMovement[2]);
        u[4] = -(endMovement[2] - startMovement[2]) / length;
        u[5] = (endMovement[1] - startMovement[1]) / length;
        return u;
    }

    /** Places between which forces are polynomials of degree 4 or close to one, ascending. */
    double[] marks() {
        return load.breaks(element.length());
    }

    /** ½ ∫ sᵀ f s dx. */
    double strainEnergy() {
        double sum = 0;
        Gauss gauss = element.gauss();
        double[] breaks = load.breaks(element.length());
        for (int b = 1; b < breaks.length; b++) {
            double width = breaks[b] - breaks[b - 1];
            for (int i = 0; i < gauss.size(); i++) {
                double at = breaks[b - 1] + gauss.point(i) * width;
                double[] f = element.flexibility(at);
                double[] s = forces(at, false);
                for (int k = 0; k < 6; k++) {
                    sum += gauss.weight(i) * width * f[k] * s[k] * s[k] / 2;
                }
            }
        }
        return sum;
    }

    /** ½ of the forces of the ends' springs times their stretch, from the movements of the nodes. */
    double jointEnergy(double[] nodes) {
        double sum = 0;
        for (int i = 0; i < 6 && bends; i++) {
            sum += endForces[i] * (nodes[i] - startMovement[i]) / 2;
            sum += endForces[6 + i] * (nodes[6 + i] - endMovement[i]) / 2;
        }
        return sum;
    }

    /** ∫ sᵀ e₀ dx with e₀ the deformations imposed, those of tendons included as their loads. */
    double imposedWork() {
        double sum = 0;
        Gauss gauss = quadrature();
        double[] breaks = marks();
        for (int b = 1; b < breaks.length; b++) {
            double width = breaks[b] - breaks[b - 1];
            for (int i = 0; i < gauss.size(); i++) {
                double at = breaks[b - 1] + gauss.point(i) * width;
                double[] f = element.flexibility(at);
                double[] e = new double[6];
                load.addStrains(f, e);
                double[] s = forces(at, false);
                double[] own = new double[6];
                load.addCableForces(at, own);
                for (int k = 0; k < 6; k++) {
                    double total = f[k] * s[k] + e[k];
                    sum += gauss.weight(i) * width * (s[k] * e[k] - own[k] * total);
                }
            }
        }
        for (ElementLoad.Gap gap : load.gaps()) {
            sum += resultant(gap.at(), false)[gap.component()] * gap.amount();
        }
        return sum;
    }

    /** Moment of the loads on the member about where they would act had it not moved, local axes. */
    double[] momentOfMovement() {
        double[] sum = new double[3];
        Gauss gauss = quadrature();
        double[] breaks = marks();
        for (ElementLoad.Piece piece : load.pieces()) {
            for (int b = 1; b < breaks.length; b++) {
                double from = Math.max(breaks[b - 1], piece.from());
                double to = Math.min(breaks[b], piece.to());
                for (int i = 0; i < gauss.size() && to > from; i++) {
                    double at = from + gauss.point(i) * (to - from);
                    double[] force = new double[3];
                    for (int k = 0; k < 3; k++) {
                        force[k] =
                                gauss.weight(i)
                                        * (to - from)
                                        * piece.intensity(piece.force(), k, at);
                    }
                    addCross(movement(at), force, sum);
                }
            }
        }
        for (ElementLoad.Point point : load.points()) {
            addCross(movement(point.at()), point.force(), sum);
        }
        return sum;
    }

    private static void addCross(double[] u, double[] force, double[] sum) {
        for (int k = 0; k < 3; k++) {
            int next = (k + 1) % 3;
            int last = (k + 2) % 3;
            sum[k] += u[next] * force[last] - u[last] * force[next];
        }
    }

    /** Quadrature that is exact, or near enough, between marks. */
    Gauss quadrature() {
        return element.gauss();
    }

    /** Work of the loads on the member, at full value, on its movement. */
    double loadWork() {
        double sum = 0;
        Gauss gauss = quadrature();
        double[] breaks = marks();
        for (ElementLoad.Piece piece : load.pieces()) {
            for (int b = 1; b < breaks.length; b++) {
                double from = Math.max(breaks[b - 1], piece.from());
                double to = Math.min(breaks[b], piece.to());
                for (int i = 0; i < gauss.size() && to > from; i++) {
                    double at = from + gauss.point(i) * (to - from);
                    double[] u = movement(at);
                    for (int k = 0; k < 3; k++) {
                        sum +=
                                gauss.weight(i)
                                        * (to - from)
                                        * (u[k] * piece.intensity(piece.force(), k, at)
                                                + u[k + 3]
                                                        * piece.intensity(piece.moment(), k, at));
                    }
                }
            }
        }
        for (ElementLoad.Point point : load.points()) {
            double[] u = movement(point.at());
            for (int k = 0; k < 3; k++) {
                sum += u[k] * point.force()[k] + u[k + 3] * point.moment()[k];
            }
        }
        return sum;
    }
}
