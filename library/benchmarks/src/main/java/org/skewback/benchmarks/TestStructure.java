package org.skewback.benchmarks;

import java.util.ArrayList;
import java.util.List;
import org.skewback.numeric.SymmetricAssembler;
import org.skewback.numeric.SymmetricMatrix;
import org.skewback.numeric.SymmetricPattern;

/**
 * Stiffness, lumped mass and geometric stiffness of an invented structure of prismatic bars in space,
 * six unknowns at a node, to measure solvers with.
 */
final class TestStructure {

    private static final double YOUNG = 210e9;
    private static final double SHEAR = 81e9;
    private static final double DENSITY = 7850;
    private static final double AREA = 0.04;
    private static final double INERTIA_STRONG = 8e-4;
    private static final double INERTIA_WEAK = 4e-4;
    private static final double TORSION = 9e-4;

    private final List<double[]> nodes = new ArrayList<>();
    private final List<int[]> bars = new ArrayList<>();
    private final List<boolean[]> held = new ArrayList<>();

    private TestStructure() {}

    private int node(double x, double y, double z) {
        nodes.add(new double[] {x, y, z});
        held.add(new boolean[6]);
        return nodes.size() - 1;
    }

    private void bar(int from, int to) {
        bars.add(new int[] {from, to});
    }

    private void hold(int node, int... directions) {
        for (int direction : directions) {
            held.get(node)[direction] = true;
        }
    }

    /**
     * A lattice arch: two ribs of four chords with bracing in every face, columns and a deck.
     *
     * @param unknowns about how many unknowns
     * @return the structure
     */
    static TestStructure latticeArch(int unknowns) {
        int panels = Math.max(4, unknowns / 66);
        TestStructure arch = new TestStructure();
        double span = 400;
        double rise = 80;
        int[][] chords = new int[panels + 1][8];
        int[][] deck = new int[panels + 1][3];
        for (int p = 0; p <= panels; p++) {
            double t = 2.0 * p / panels - 1;
            double x = span / 2 * t;
            double z = rise * (1 - t * t);
            for (int rib = 0; rib < 2; rib++) {
                double y = rib == 0 ? -8 : 8;
                for (int chord = 0; chord < 4; chord++) {
                    chords[p][4 * rib + chord] =
                            arch.node(x, y + (chord % 2 == 0 ? -1 : 1), z + (chord < 2 ? 0 : 4));
                }
            }
            for (int line = 0; line < 3; line++) {
                deck[p][line] = arch.node(x, 6.0 * (line - 1), rise + 8);
            }
        }
        for (int p = 0; p <= panels; p++) {
            for (int rib = 0; rib < 2; rib++) {
                int o = 4 * rib;
                int[] c = chords[p];
                arch.bar(c[o], c[o + 1]);
                arch.bar(c[o + 2], c[o + 3]);
                arch.bar(c[o], c[o + 2]);
                arch.bar(c[o + 1], c[o + 3]);
                if (p < panels) {
                    int[] n = chords[p + 1];
                    for (int k = 0; k < 4; k++) {
                        arch.bar(c[o + k], n[o + k]);
                    }
                    arch.bar(c[o], n[o + 2]);
                    arch.bar(c[o + 1], n[o + 3]);
                    arch.bar(c[o], n[o + 1]);
                    arch.bar(c[o + 2], n[o + 3]);
                }
            }
            if (p % 4 == 0) {
                arch.bar(chords[p][1], chords[p][4]);
                arch.bar(chords[p][3], chords[p][6]);
            }
            arch.bar(deck[p][0], deck[p][1]);
            arch.bar(deck[p][1], deck[p][2]);
            if (p < panels) {
                for (int line = 0; line < 3; line++) {
                    arch.bar(deck[p][line], deck[p + 1][line]);
                }
            }
            if (p % 8 == 0) {
                arch.bar(chords[p][3], deck[p][0]);
                arch.bar(chords[p][6], deck[p][2]);
            }
        }
        for (int end : new int[] {0, panels}) {
            for (int chord : chords[end]) {
                arch.hold(chord, 0, 1, 2, 3, 4, 5);
            }
            for (int line : deck[end]) {
                arch.hold(line, 0, 1, 2);
            }
        }
        return arch;
    }

    /**
     * A grillage curved in plan, as wide as it is long, on bearings at its four edges' corners and
     * along both ends.
     *
     * @param unknowns about how many unknowns
     * @return the structure
     */
    static TestStructure curvedGrillage(int unknowns) {
        int lines = Math.max(3, (int) Math.round(Math.sqrt(unknowns / 6.0)));
        TestStructure grillage = new TestStructure();
        int[][] at = new int[lines][lines];
        for (int i = 0; i < lines; i++) {
            double angle = 1.0 * i / (lines - 1);
            for (int j = 0; j < lines; j++) {
                double radius = 80 + 40.0 * j / (lines - 1);
                at[i][j] =
                        grillage.node(
                                radius * StrictMath.cos(angle),
                                radius * StrictMath.sin(angle),
                                0.5 * StrictMath.sin(3 * angle));
            }
        }
        for (int i = 0; i < lines; i++) {
            for (int j = 0; j < lines; j++) {
                if (i + 1 < lines) {
                    grillage.bar(at[i][j], at[i + 1][j]);
                }
                if (j + 1 < lines) {
                    grillage.bar(at[i][j], at[i][j + 1]);
                }
            }
        }
        for (int j = 0; j < lines; j++) {
            grillage.hold(at[0][j], 0, 1, 2);
            grillage.hold(at[lines - 1][j], 2);
        }
        return grillage;
    }

    /** The three matrices. */
    record Matrices(SymmetricMatrix stiffness, SymmetricMatrix mass, SymmetricMatrix geometric) {}

    Matrices assemble() {
        int[][] unknownOf = new int[nodes.size()][6];
        int order = 0;
        for (int v = 0; v < nodes.size(); v++) {
            for (int d = 0; d < 6; d++) {
                unknownOf[v][d] = held.get(v)[d] ? -1 : order++;
            }
        }
        List<int[]> elements = new ArrayList<>();
        for (int[] bar : bars) {
            int[] unknowns = new int[12];
            System.arraycopy(unknownOf[bar[0]], 0, unknowns, 0, 6);
            System.arraycopy(unknownOf[bar[1]], 0, unknowns, 6, 6);
            elements.add(unknowns);
        }
        SymmetricPattern pattern = SymmetricPattern.ofElements(order, elements);
        SymmetricAssembler stiffness = new SymmetricAssembler(pattern);
        SymmetricAssembler geometric = new SymmetricAssembler(pattern);
        double[] mass = new double[order];
        for (int e = 0; e < bars.size(); e++) {
            double[] a = nodes.get(bars.get(e)[0]);
            double[] b = nodes.get(bars.get(e)[1]);
            double length =
                    Math.sqrt(
                            (b[0] - a[0]) * (b[0] - a[0])
                                    + (b[1] - a[1]) * (b[1] - a[1])
                                    + (b[2] - a[2]) * (b[2] - a[2]));
            double[][] turn = axes(a, b, length);
            stiffness.add(elements.get(e), turned(barStiffness(length), turn));
            geometric.add(elements.get(e), turned(barGeometric(length, -1e6), turn));
            for (int end = 0; end < 2; end++) {
                for (int d = 0; d < 3; d++) {
                    int unknown = elements.get(e)[6 * end + d];
                    if (unknown >= 0) {
                        mass[unknown] += DENSITY * AREA * length / 2;
                    }
                }
            }
        }
        return new Matrices(
                stiffness.matrix(), SymmetricMatrix.ofDiagonal(mass), geometric.matrix());
    }

    private static double[][] axes(double[] a, double[] b, double length) {
        double[] x = {(b[0] - a[0]) / length, (b[1] - a[1]) / length, (b[2] - a[2]) / length};
        double[] up = Math.abs(x[2]) > 0.99 ? new double[] {1, 0, 0} : new double[] {0, 0, 1};
        double[] y = cross(up, x);
        double size = Math.sqrt(y[0] * y[0] + y[1] * y[1] + y[2] * y[2]);
        for (int i = 0; i < 3; i++) {
            y[i] /= size;
        }
        return new double[][] {x, y, cross(x, y)};
    }

    private static double[] cross(double[] a, double[] b) {
        return new double[] {
            a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]
        };
    }

    private static double[][] barStiffness(double length) {
        double[][] k = new double[12][12];
        pair(k, 0, 6, YOUNG * AREA / length);
        pair(k, 3, 9, SHEAR * TORSION / length);
        bending(k, 1, 5, 1, YOUNG * INERTIA_STRONG, length);
        bending(k, 2, 4, -1, YOUNG * INERTIA_WEAK, length);
        return k;
    }

    private static void pair(double[][] k, int a, int b, double value) {
        k[a][a] += value;
        k[b][b] += value;
        k[a][b] -= value;
        k[b][a] -= value;
    }

    private static void bending(double[][] k, int v, int r, int sign, double rigidity, double l) {
        double[][] block = {
            {12 / (l * l * l), sign * 6 / (l * l), -12 / (l * l * l), sign * 6 / (l * l)},
            {sign * 6 / (l * l), 4 / l, -sign * 6 / (l * l), 2 / l},
            {-12 / (l * l * l), -sign * 6 / (l * l), 12 / (l * l * l), -sign * 6 / (l * l)},
            {sign * 6 / (l * l), 2 / l, -sign * 6 / (l * l), 4 / l}
        };
        scatter(k, new int[] {v, r, v + 6, r + 6}, block, rigidity);
    }

    private static double[][] barGeometric(double length, double force) {
        double[][] k = new double[12][12];
        for (int plane = 0; plane < 2; plane++) {
            int sign = plane == 0 ? 1 : -1;
            double l = length;
            double[][] block = {
                {1.2 / l, sign * 0.1, -1.2 / l, sign * 0.1},
                {sign * 0.1, 2 * l / 15, -sign * 0.1, -l / 30},
                {-1.2 / l, -sign * 0.1, 1.2 / l, -sign * 0.1},
                {sign * 0.1, -l / 30, -sign * 0.1, 2 * l / 15}
            };
            int v = 1 + plane;
            int r = 5 - plane;
            scatter(k, new int[] {v, r, v + 6, r + 6}, block, force);
        }
        return k;
    }

    private static void scatter(double[][] k, int[] to, double[][] block, double factor) {
        for (int i = 0; i < 4; i++) {
            for (int j = 0; j < 4; j++) {
                k[to[i]][to[j]] += factor * block[i][j];
            }
        }
    }

    private static double[][] turned(double[][] k, double[][] turn) {
        double[][] half = new double[12][12];
        double[][] whole = new double[12][12];
        for (int i = 0; i < 12; i++) {
            for (int j = 0; j < 12; j++) {
                for (int d = 0; d < 3; d++) {
                    half[i][j] += k[i][j / 3 * 3 + d] * turn[d][j % 3];
                }
            }
        }
        for (int i = 0; i < 12; i++) {
            for (int j = 0; j < 12; j++) {
                for (int d = 0; d < 3; d++) {
                    whole[i][j] += turn[d][i % 3] * half[i / 3 * 3 + d][j];
                }
            }
        }
        return whole;
    }
}
