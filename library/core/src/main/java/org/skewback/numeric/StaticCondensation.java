package org.skewback.numeric;

import java.util.Arrays;

/**
 * Unknowns kept (a) of a structure whose others (b) follow them statically: u_b = K_bb⁻¹(f_b − K_ba u_a).
 * Exact for static loads; for mass it is the reduction of R. J. Guyan (Reduction of stiffness and mass
 * matrices, AIAA Journal 3 (1965), 380), exact where the others have no mass and else an upper bound of
 * frequencies.
 */
public final class StaticCondensation {

    private final SymmetricMatrix stiffness;
    private final int[] kept;
    private final int[] others;
    private final Factorization inner;

    /** For each kept unknown the displacement of all unknowns when it alone is 1. */
    private final double[][] shapes;

    private final double[][] condensed;

    private StaticCondensation(SymmetricMatrix stiffness, int[] kept, Monitor monitor) {
        this.stiffness = stiffness;
        this.kept = kept.clone();
        int order = stiffness.order();
        boolean[] isKept = new boolean[order];
        for (int unknown : kept) {
            Require.index("kept unknown", unknown, order);
            if (isKept[unknown]) {
                throw new IllegalArgumentException(
                        "kept unknown " + unknown + " is given twice; allowed is once.");
            }
            isKept[unknown] = true;
        }
        int[] rest = new int[order];
        int count = 0;
        for (int i = 0; i < order; i++) {
            if (!isKept[i]) {
                rest[count++] = i;
            }
        }
        others = Arrays.copyOf(rest, count);
        SymmetricMatrix part = stiffness.submatrix(others);
        inner =
                SymbolicFactorization.of(part.pattern())
                        .factorize(part, PivotLimits.usual(), monitor);
        double[][] pulls = new double[kept.length][];
        for (int a = 0; a < kept.length; a++) {
            double[] unit = new double[order];
            unit[kept[a]] = 1;
            pulls[a] = negated(pick(stiffness.times(unit), others));
        }
        double[][] follow = inner.solve(pulls, monitor);
        shapes = new double[kept.length][order];
        condensed = new double[kept.length][kept.length];
        for (int a = 0; a < kept.length; a++) {
            shapes[a][kept[a]] = 1;
            for (int b = 0; b < others.length; b++) {
                shapes[a][others[b]] = follow[a][b];
            }
            double[] forces = stiffness.times(shapes[a]);
            condensed[a] = pick(forces, this.kept);
        }
        mirror(condensed);
    }

    /**
     * Condenses a structure to some of its unknowns.
     *
     * @param stiffness K, symmetric; regular where the kept unknowns are held
     * @param kept unknowns kept, each once, in the order wanted
     * @param monitor may stop the work
     * @return the condensation
     * @throws SingularMatrixException when the others can move with the kept ones held; its rows count
     *     the others only
     */
    public static StaticCondensation of(SymmetricMatrix stiffness, int[] kept, Monitor monitor) {
        return new StaticCondensation(stiffness, kept, monitor);
    }

    private static double[] pick(double[] x, int[] at) {
        double[] picked = new double[at.length];
        for (int k = 0; k < at.length; k++) {
            picked[k] = x[at[k]];
        }
        return picked;
    }

    private static double[] negated(double[] x) {
        Vectors.scale(-1, x);
        return x;
    }

    private static void mirror(double[][] square) {
        for (int a = 0; a < square.length; a++) {
            for (int b = 0; b < a; b++) {
                double mean = (square[a][b] + square[b][a]) / 2;
                square[a][b] = mean;
                square[b][a] = mean;
            }
        }
    }

    /**
     * Gives the stiffness of the kept unknowns, K_aa − K_ab K_bb⁻¹K_ba.
     *
     * @return symmetric matrix, a row for each kept unknown
     */
    public double[][] stiffness() {
        double[][] copy = new double[condensed.length][];
        Arrays.setAll(copy, a -> condensed[a].clone());
        return copy;
    }

    /**
     * Reduces a matrix of the structure, such as its mass, to SᵀA S with the static shapes S.
     *
     * @param matrix A, of the order of the structure
     * @return symmetric matrix, a row for each kept unknown
     */
    public double[][] reduce(SymmetricMatrix matrix) {
        Require.length("matrix", matrix.order(), stiffness.order());
        double[][] reduced = new double[kept.length][kept.length];
        for (int a = 0; a < kept.length; a++) {
            double[] product = matrix.times(shapes[a]);
            for (int b = 0; b < kept.length; b++) {
                reduced[a][b] = Vectors.dot(shapes[b], product);
            }
        }
        mirror(reduced);
        return reduced;
    }

    /**
     * Reduces a load to the kept unknowns, f_a − K_ab K_bb⁻¹f_b.
     *
     * @param load f, a value for each unknown of the structure
     * @return a value for each kept unknown
     */
    public double[] reduce(double[] load) {
        Require.vector("load", load, stiffness.order());
        double[] reduced = new double[kept.length];
        for (int a = 0; a < kept.length; a++) {
            reduced[a] = Vectors.dot(shapes[a], load);
        }
        return reduced;
    }

    /**
     * Gives the displacement of the whole structure.
     *
     * @param displacement u_a of the kept unknowns
     * @param load f, a value for each unknown of the structure; what it says of the kept ones is not used
     * @return u
     */
    public double[] expand(double[] displacement, double[] load) {
        Require.vector("displacement", displacement, kept.length);
        Require.vector("load", load, stiffness.order());
        double[] u = new double[stiffness.order()];
        for (int a = 0; a < kept.length; a++) {
            Vectors.add(displacement[a], shapes[a], u);
        }
        double[] own = inner.solve(pick(load, others));
        for (int b = 0; b < others.length; b++) {
            u[others[b]] += own[b];
        }
        return u;
    }
}
