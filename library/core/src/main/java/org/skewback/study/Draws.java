package org.skewback.study;

import java.util.random.RandomGenerator;

/**
 * Random numbers of the two kinds from which all others are made. Belongs to one thread.
 *
 * <p>Normal numbers come by the ziggurat of G. Marsaglia and W. W. Tsang (Journal of Statistical
 * Software 5(8), 2000) with 256 layers, in the form of J. A. Doornik (2005), where the bits that
 * choose the layer are not those of the number. The JDK has a fast method too, but does not promise
 * the same numbers in each edition; a study must give the same result wherever it is run again.
 */
final class Draws {

    private static final int LAYERS = 256;
    private static final int LAYER_BITS = LAYERS - 1;

    /** Where the base layer ends, for which 256 layers of equal area close at the top. */
    static final double EDGE = 3.654152885361009;

    private static final double SIGNED = 0x1.0p-53;
    private static final double POSITIVE = 0x1.0p-52;

    /** Right edge of each layer, the base layer as wide as its area wants; the last is 0. */
    private static final double[] WIDTH = widths();

    private static final double[] SURE = sure();

    private final RandomGenerator bits;

    Draws(RandomGenerator bits) {
        this.bits = bits;
    }

    /** Right edges of the layers, from the base up. */
    static double[] widths() {
        double height = StrictMath.exp(-0.5 * EDGE * EDGE);
        double beyond = Math.sqrt(2 * Math.PI) * StandardNormal.below(-EDGE);
        double area = EDGE * height + beyond;
        double[] width = new double[LAYERS + 1];
        width[0] = area / height;
        width[1] = EDGE;
        for (int i = 2; i < LAYERS; i++) {
            double top = area / width[i - 1] + StrictMath.exp(-0.5 * width[i - 1] * width[i - 1]);
            width[i] = Math.sqrt(-2 * StrictMath.log(top));
        }
        return width;
    }

    private static double[] sure() {
        double[] sure = new double[LAYERS];
        for (int i = 0; i < LAYERS; i++) {
            sure[i] = WIDTH[i + 1] / WIDTH[i];
        }
        return sure;
    }

    /** A number evenly from 0 to 1, both left out. */
    double uniform() {
        return ((bits.nextLong() >>> 12) + 0.5) * POSITIVE;
    }

    /** A normal number with mean 0 and standard deviation 1. */
    double normal() {
        long drawn = bits.nextLong();
        int layer = (int) drawn & LAYER_BITS;
        double u = (drawn >> 10) * SIGNED;
        return Math.abs(u) < SURE[layer] ? u * WIDTH[layer] : outside(layer, u);
    }

    private double outside(int firstLayer, double firstU) {
        int layer = firstLayer;
        double u = firstU;
        while (Math.abs(u) >= SURE[layer]) {
            if (layer == 0) {
                return u < 0 ? -beyondEdge() : beyondEdge();
            }
            double x = u * WIDTH[layer];
            double low = StrictMath.exp(-0.5 * WIDTH[layer] * WIDTH[layer]);
            double high = StrictMath.exp(-0.5 * WIDTH[layer + 1] * WIDTH[layer + 1]);
            if (low + uniform() * (high - low) < StrictMath.exp(-0.5 * x * x)) {
                return x;
            }
            long drawn = bits.nextLong();
            layer = (int) drawn & LAYER_BITS;
            u = (drawn >> 10) * SIGNED;
        }
        return u * WIDTH[layer];
    }

    private double beyondEdge() {
        while (true) {
            double x = -StrictMath.log(uniform()) / EDGE;
            double y = -StrictMath.log(uniform());
            if (2 * y > x * x) {
                return EDGE + x;
            }
        }
    }
}
