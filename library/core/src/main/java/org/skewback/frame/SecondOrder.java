package org.skewback.frame;

import org.skewback.steel.Section;

/**
 * Geometric stiffness and mass of members, both consistent with their {@link Shapes}.
 *
 * <p>The geometric stiffness is the second variation of the work of the forces N, M, T and V in the
 * member, with the squares of Green's strain and with rotations taken as rotation vectors to the
 * second order, so that moments are in equilibrium at joints of members that meet at angles: with v,
 * w displacements, φ rotations of the section, ϑ = φ_x and r² = (I_y + I_z)/A, 2Π is twice the
 * integral of ½N(v′² + w′² + r²ϑ′²) + M_y ϑ′v′ − M_z ϑ′w′ + V_z ϑv′ − V_y ϑw′ + u′(V_y φ_z − V_z φ_y) +
 * ½T(φ_y′φ_z − φ_z′φ_y), less at both ends ½ϑ(M_y φ_z + M_z φ_y) (Y.-B. Yang and S.-R. Kuo, Theory and
 * Analysis of Nonlinear Framed Structures, 1994, chapter 6, for the strains; J. H. Argyris, O. Hilpert,
 * G. A. Malejannakis and D. W. Scharpf, On the geometrical stiffness of a beam in space — a consistent
 * V.W. approach, Computer Methods in Applied Mechanics and Engineering 20 (1979), 105–131, for the
 * rotations).
 */
final class SecondOrder {

    /** Products of the shapes' slopes with forces of degree 3 have degree 7 or less. */
    private static final Gauss GAUSS = Gauss.ofOrder(4);

    private SecondOrder() {}

    /** Terms of a quadratic form ½ qᵀ C q of the twelve quantities of the shapes. */
    private static final class Form {

        private final double[][] coefficients = new double[12][12];

        void add(int a, int b, double value) {
            coefficients[a][b] += value;
            if (a != b) {
                coefficients[b][a] += value;
            }
        }

        void addTo(double[][] matrix, double[][] rows, double weight) {
            for (int a = 0; a < 12; a++) {
                for (int b = 0; b < 12; b++) {
                    double c = weight * coefficients[a][b];
                    if (c == 0) {
                        continue;
                    }
                    for (int i = 0; i < 12; i++) {
                        double factor = c * rows[a][i];
                        for (int j = 0; j < 12 && factor != 0; j++) {
                            matrix[i][j] += factor * rows[b][j];
                        }
                    }
                }
            }
        }
    }

    /**
     * Geometric stiffness of a piece of a member, movements of its nodes, global axes.
     *
     * @param piece the piece
     * @param whole forces along the member it is part of
     * @param from where in the member the piece starts
     */
    static double[][] geometric(Element piece, ElementState whole, double from) {
        // The tangent of a cable holds its geometric part.
        if (piece.length() == 0 || piece instanceof CableElement) {
            return new double[12][12];
        }
        Shapes shapes = new Shapes(piece);
        double[][] k = new double[12][12];
        Gauss gauss = piece.gauss().size() > GAUSS.size() ? piece.gauss() : GAUSS;
        double[] breaks = whole.load().breaks(whole.element().length());
        for (int b = 1; b < breaks.length; b++) {
            double low = Math.max(0, breaks[b - 1] - from);
            double high = Math.min(piece.length(), breaks[b] - from);
            for (int i = 0; i < gauss.size() && high > low; i++) {
                double x = low + gauss.point(i) * (high - low);
                form(piece, whole.forces(from + x, false), x)
                        .addTo(k, shapes.at(x), gauss.weight(i) * (high - low));
            }
        }
        double[][] arms = new double[12][12];
        if (piece.member() instanceof BeamColumn) {
            double[] start = whole.forces(from, true);
            double[] end =
                    whole.forces(Math.min(from + piece.length(), whole.element().length()), false);
            turning(start).addTo(k, shapes.at(0), 0.5);
            turning(end).addTo(k, shapes.at(piece.length()), -0.5);
            arms = arms(piece, start, end);
        }
        double[][] global = piece.toGlobal(k);
        for (int i = 0; i < 12; i++) {
            for (int j = 0; j < 12; j++) {
                global[i][j] += arms[i][j];
            }
        }
        return global;
    }

    private static Form form(Element piece, double[] s, double x) {
        Form form = new Form();
        form.add(Shapes.SLOPE + Shapes.V, Shapes.SLOPE + Shapes.V, s[0]);
        form.add(Shapes.SLOPE + Shapes.W, Shapes.SLOPE + Shapes.W, s[0]);
        if (piece.member() instanceof BeamColumn beam) {
            Section section = beam.profile().at(x / piece.length());
            double radius = (section.inertiaY() + section.inertiaZ()) / section.area();
            form.add(Shapes.SLOPE + Shapes.TWIST, Shapes.SLOPE + Shapes.TWIST, s[0] * radius);
            form.add(Shapes.SLOPE + Shapes.TWIST, Shapes.SLOPE + Shapes.V, s[4]);
            form.add(Shapes.SLOPE + Shapes.TWIST, Shapes.SLOPE + Shapes.W, -s[5]);
            form.add(Shapes.TWIST, Shapes.SLOPE + Shapes.V, s[2]);
            form.add(Shapes.TWIST, Shapes.SLOPE + Shapes.W, -s[1]);
            form.add(Shapes.SLOPE + Shapes.U, Shapes.TURN_Z, s[1]);
            form.add(Shapes.SLOPE + Shapes.U, Shapes.TURN_Y, -s[2]);
            form.add(Shapes.SLOPE + Shapes.TURN_Y, Shapes.TURN_Z, s[3] / 2);
            form.add(Shapes.SLOPE + Shapes.TURN_Z, Shapes.TURN_Y, -s[3] / 2);
        }
        return form;
    }

    private static Form turning(double[] s) {
        Form form = new Form();
        form.add(Shapes.TWIST, Shapes.TURN_Z, s[4]);
        form.add(Shapes.TWIST, Shapes.TURN_Y, s[5]);
        return form;
    }

    /** The forces at the ends of rigid arms, which turn with their nodes. */
    private static double[][] arms(Element piece, double[] start, double[] end) {
        double[][] k = new double[12][12];
        for (int half = 0; half < 2; half++) {
            Vector arm = piece.arm(half == 1);
            double[] s = half == 1 ? end : start;
            double sign = half == 1 ? 1 : -1;
            Vector f =
                    piece.globalVector(new double[] {sign * s[0], -sign * s[1], -sign * s[2]}, 0);
            addArm(arm, f, half, k);
        }
        return k;
    }

    /**
     * Adds how the moment of a force changes when the rigid arm at which it acts on a node turns with the
     * node, symmetric for moments that are semitangential.
     *
     * @param arm from the node to the force
     * @param f force of the node on the member
     * @param half 0 for the start, 1 for the end
     * @param k 12 × 12, added to
     */
    static void addArm(Vector arm, Vector f, int half, double[][] k) {
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                k[6 * half + 3 + i][6 * half + 3 + j] +=
                        (arm.get(i) * f.get(j) + f.get(i) * arm.get(j)) / 2
                                - (i == j ? f.dot(arm) : 0);
            }
        }
    }

    /**
     * Change of the forces on the nodes when loads across a member, given in its own axes, stay at
     * right angles to it and keep their intensity on its deformed length, as fluid pressure does in
     * the plane of the load: less the second variation of the load times the area swept, ½∫q(wu′ −
     * uw′)dx. What this leaves out is balanced where the loaded line is closed or its ends are held.
     */
    static double[][] pressure(Element piece, ElementLoad load, double from) {
        Shapes shapes = new Shapes(piece);
        double[][] k = new double[12][12];
        for (ElementLoad.Piece line : load.pieces()) {
            double low = Math.max(0, line.from() - from);
            double high = Math.min(piece.length(), line.to() - from);
            for (int i = 0; i < GAUSS.size() && high > low; i++) {
                double x = low + GAUSS.point(i) * (high - low);
                Form form = new Form();
                for (int axis = Shapes.V; axis <= Shapes.W; axis++) {
                    double q = line.intensity(line.force(), axis, from + x) / 2;
                    form.add(Shapes.U, Shapes.SLOPE + axis, q);
                    form.add(axis, Shapes.SLOPE, -q);
                }
                form.addTo(k, shapes.at(x), GAUSS.weight(i) * (high - low));
            }
        }
        return piece.toGlobal(k);
    }

    /**
     * Mass of a member, with the rotary inertia of its sections, motions of its nodes, global axes.
     *
     * @param piece the member
     * @param extra mass carried along it, kg/m
     */
    static double[][] mass(Element piece, double extra) {
        double[][] m = new double[12][12];
        if (piece.length() == 0) {
            return m;
        }
        Shapes shapes = new Shapes(piece);
        Gauss gauss = piece.gauss().size() > GAUSS.size() ? piece.gauss() : GAUSS;
        for (int i = 0; i < gauss.size(); i++) {
            double x = gauss.point(i) * piece.length();
            Form form = new Form();
            double mass = piece.massPerLength(x);
            for (int k = 0; k < 3; k++) {
                form.add(k, k, mass + extra);
            }
            if (piece.member() instanceof BeamColumn beam) {
                Section section = beam.profile().at(gauss.point(i));
                double density = beam.material().density();
                form.add(Shapes.TURN_Y, Shapes.TURN_Y, density * section.inertiaY());
                form.add(Shapes.TURN_Z, Shapes.TURN_Z, density * section.inertiaZ());
                form.add(
                        Shapes.TWIST,
                        Shapes.TWIST,
                        density * (section.inertiaY() + section.inertiaZ()));
            }
            form.addTo(m, shapes.at(x), gauss.weight(i) * piece.length());
        }
        return piece.toGlobal(m);
    }
}
