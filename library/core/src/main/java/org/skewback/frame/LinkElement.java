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
        return ends(new double[12], load);
    }

    /** The springs' forces; a strain of the load is where a spring is free of force. */
    private double[] ends(double[] movements, ElementLoad load) {
        double[] p = new double[6];
        for (int i = 0; i < 6; i++) {
            p[i] = springs[i] * (movements[6 + i] - movements[i] - load.strain(i));
        }
        return bothEnds(0, p, new double[6]);
    }

    @Override
    double fit(double[] v, ElementLoad load) {
        for (int i = 0; i < 6; i++) {
            load.addStrain(i, v[6 + i] - v[i]);
        }
        return 0;
    }

    @Override
    ElementState state(double[] movements, ElementLoad load) {
        return new ElementState(this, load, ends(movements, load), movements, false);
    }

    /** ½ Σ k d² with d from where each spring is free of force. */
    double springEnergy(double[] movements, ElementLoad load) {
        double sum = 0;
        for (int i = 0; i < 6; i++) {
            double d = movements[6 + i] - movements[i] - load.strain(i);
            sum += springs[i] * d * d / 2;
        }
        return sum;
    }

    /** Forces of the springs times where they are free of force. */
    double restWork(double[] movements, ElementLoad load) {
        double sum = 0;
        for (int i = 0; i < 6; i++) {
            double rest = load.strain(i);
            sum += springs[i] * (movements[6 + i] - movements[i] - rest) * rest;
        }
        return sum;
    }
}
