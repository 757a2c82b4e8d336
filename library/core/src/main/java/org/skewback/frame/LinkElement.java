package org.skewback.frame;

/** Springs between two nodes, at the first of them. */
final class LinkElement extends Element {

    private static final Gauss GAUSS = Gauss.ofOrder(1);

    private final double[] springs;

    LinkElement(SpringLink link, int start, int end, Geometry geometry) {
        super(link, start, end, geometry, local(link));
        springs = springs(link);
    }

    private static double[] springs(SpringLink link) {
        double[] k = new double[6];
        for (Motion motion : Motion.values()) {
            k[motion.index()] = link.stiffness().stiffness(motion);
        }
        return k;
    }

    private static double[][] local(SpringLink link) {
        double[] k = springs(link);
        double[][] local = new double[12][12];
        for (int i = 0; i < 6; i++) {
            local[i][i] = k[i];
            local[i + 6][i + 6] = k[i];
            local[i][i + 6] = -k[i];
            local[i + 6][i] = -k[i];
        }
        return local;
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
        return 0;
    }

    @Override
    double expansion() {
        return 0;
    }

    @Override
    void requireCarries(ElementLoad load) {
        if (load.pieces().isEmpty()
                && load.points().isEmpty()
                && load.gaps().isEmpty()
                && !load.hasCables()) {
            return;
        }
        throw new IllegalArgumentException(
                "link " + name() + " is loaded; allowed are loads on its nodes.");
    }

    @Override
    double[] clamped(ElementLoad load) {
        return new double[12];
    }

    @Override
    ElementState state(double[] movements, ElementLoad load) {
        double[] p = new double[6];
        for (int i = 0; i < 6; i++) {
            p[i] = springs[i] * (movements[6 + i] - movements[i]);
        }
        return new ElementState(this, load, bothEnds(0, p, new double[6]), movements, false);
    }

    /** ½ Σ k d². */
    double springEnergy(double[] movements) {
        double sum = 0;
        for (int i = 0; i < 6; i++) {
            double d = movements[6 + i] - movements[i];
            sum += springs[i] * d * d / 2;
        }
        return sum;
    }
}
