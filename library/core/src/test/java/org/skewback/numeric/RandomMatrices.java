package org.skewback.numeric;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Random sparse symmetric matrices, summed from small elements as a structure's are. */
final class RandomMatrices {

    private RandomMatrices() {}

    /** Sum of random elements BᵀB, plus a little on the diagonal: positive definite. */
    static SymmetricMatrix definite(long seed, int order) {
        Random random = new Random(seed);
        SymmetricAssembler sum = new SymmetricAssembler(pattern(random, order));
        for (int i = 0; i < order; i++) {
            sum.add(i, i, 0.1 + random.nextDouble());
        }
        random = new Random(seed);
        for (int[] element : elements(random, order)) {
            int size = element.length;
            double[][] root = new double[size][size];
            double[][] block = new double[size][size];
            for (double[] row : root) {
                for (int j = 0; j < size; j++) {
                    row[j] = random.nextGaussian();
                }
            }
            for (int i = 0; i < size; i++) {
                for (int j = 0; j < size; j++) {
                    for (int k = 0; k < size; k++) {
                        block[i][j] += root[k][i] * root[k][j];
                    }
                }
            }
            sum.add(element, block);
        }
        return sum.matrix();
    }

    /** The same pattern with a diagonal of both signs that dominates: regular and indefinite. */
    static SymmetricMatrix indefinite(long seed, int order) {
        SymmetricMatrix definite = definite(seed, order);
        Random random = new Random(~seed);
        double[][] dense = definite.toDense();
        for (int i = 0; i < order; i++) {
            double others = 0;
            for (int j = 0; j < order; j++) {
                others += j == i ? 0 : Math.abs(dense[i][j]);
            }
            dense[i][i] = (random.nextBoolean() ? 1 : -1) * (others + 0.1 + random.nextDouble());
        }
        return SymmetricMatrix.ofDense(dense);
    }

    static double[] vector(long seed, int order) {
        Random random = new Random(seed);
        double[] x = new double[order];
        for (int i = 0; i < order; i++) {
            x[i] = random.nextGaussian();
        }
        return x;
    }

    private static SymmetricPattern pattern(Random random, int order) {
        return SymmetricPattern.ofElements(order, elements(random, order));
    }

    /** Elements that join near unknowns, a few far ones, and blocks of two or three directions. */
    private static List<int[]> elements(Random random, int order) {
        List<int[]> elements = new ArrayList<>();
        int count = order == 0 ? 0 : order + random.nextInt(order + 1);
        for (int e = 0; e < count; e++) {
            int first = random.nextInt(order);
            int size = 1 + random.nextInt(Math.min(4, order));
            int[] element = new int[2 * size];
            for (int a = 0; a < size; a++) {
                element[a] = (first + a) % order;
                int reach = random.nextInt(20) == 0 ? order : 6;
                element[size + a] = (first + random.nextInt(reach)) % order;
            }
            elements.add(java.util.Arrays.stream(element).distinct().toArray());
        }
        return elements;
    }

    /** The matrix of a pinned grid of squares, 4 on the diagonal and −1 to each neighbour. */
    static SymmetricMatrix grid(int width, int height) {
        List<int[]> pairs = new ArrayList<>();
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                int v = y * width + x;
                if (x + 1 < width) {
                    pairs.add(new int[] {v, v + 1});
                }
                if (y + 1 < height) {
                    pairs.add(new int[] {v, v + width});
                }
            }
        }
        SymmetricAssembler sum =
                new SymmetricAssembler(SymmetricPattern.ofElements(width * height, pairs));
        for (int[] pair : pairs) {
            sum.add(pair[0], pair[1], -1);
        }
        for (int v = 0; v < width * height; v++) {
            sum.add(v, v, 4);
        }
        return sum.matrix();
    }
}
