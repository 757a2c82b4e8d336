package org.skewback.frame;

/** A bar: axial stiffness only; loads across go to its nodes as from a simple beam. */
final class BarElement extends Element {

    private static final Gauss GAUSS = Gauss.ofOrder(4);

    private final Bar bar;
    private final double[] flexibility;
    private final double axial;

    /** Force along it that resists turning of its chord: N/ℓ across. */
    private final double across;

    private final boolean deformed;

    BarElement(Bar bar, int start, int end, Geometry geometry) {
        this(bar, start, end, geometry, 0, false);
    }

    private BarElement(
            Bar bar, int start, int end, Geometry geometry, double tension, boolean deformed) {
        super(bar, start, end, geometry, local(bar, geometry.length(), tension));
        this.bar = bar;
        this.across = tension / geometry.length();
        this.deformed = deformed;
        double product = bar.material().youngModulus() * bar.section().area();
        flexibility = new double[] {1 / product, 0, 0, 0, 0, 0};
        axial = product / geometry.length();
    }

    /** This bar in equilibrium on its turned chord, where it has a given axial force. */
    BarElement under(double tension) {
        return new BarElement(bar, start(), end(), geometry(), tension, true);
    }

    @Override
    boolean isDeformed() {
        return deformed;
    }

    private static double[][] local(Bar bar, double length, double tension) {
        double k = bar.material().youngModulus() * bar.section().area() / length;
        double[][] local = new double[12][12];
        local[0][0] = k;
        local[0][6] = -k;
        local[6][0] = -k;
        local[6][6] = k;
        for (int i = 1; i < 3; i++) {
            local[i][i] = tension / length;
            local[i][i + 6] = -tension / length;
            local[i + 6][i] = -tension / length;
            local[i + 6][i + 6] = tension / length;
        }
        return local;
    }

    @Override
    double[] flexibility(double x) {
        return flexibility;
    }

    @Override
    Gauss gauss() {
        return GAUSS;
    }

    @Override
    double massPerLength(double x) {
        return bar.material().density() * bar.section().area();
    }

    @Override
    double expansion() {
        return bar.material().expansion();
    }

    @Override
    void requireCarries(ElementLoad load) {
        if (resultant(load)[3] != 0) {
            throw new IllegalArgumentException(
                    "torque on bar "
                            + bar.name()
                            + " is "
                            + resultant(load)[3]
                            + " N·m; allowed is 0 N·m, as a bar carries none.");
        }
        if (load.hasCables()) {
            throw new IllegalArgumentException(
                    "bar " + bar.name() + " has a tendon; allowed are tendons in beam-columns.");
        }
        for (ElementLoad.Gap gap : load.gaps()) {
            if (gap.component() != ForceComponent.AXIAL.index()) {
                throw new IllegalArgumentException(
                        "dislocation in bar "
                                + bar.name()
                                + " is conjugate to "
                                + ForceComponent.at(gap.component()).symbol()
                                + "; allowed is N.");
            }
        }
    }

    private double elongation(ElementLoad load) {
        double sum = 0;
        double[] breaks = load.breaks(length());
        for (int b = 1; b < breaks.length; b++) {
            double width = breaks[b] - breaks[b - 1];
            for (int i = 0; i < GAUSS.size(); i++) {
                double[] e = new double[6];
                load.addForcesBeyond(breaks[b - 1] + GAUSS.point(i) * width, false, e);
                e[0] *= flexibility[0];
                load.addStrains(flexibility, e);
                sum += GAUSS.weight(i) * width * e[0];
            }
        }
        for (ElementLoad.Gap gap : load.gaps()) {
            sum += gap.amount();
        }
        return sum;
    }

    private double[] ends(double stretch, ElementLoad load) {
        double[] resultant = resultant(load);
        double[] p = {
            axial * (stretch - elongation(load)),
            -resultant[5] / length(),
            resultant[4] / length(),
            0,
            0,
            0
        };
        double[] both = bothEnds(length(), p, resultant);
        // The joints are free: what is left of moments is round-off.
        both[3] = 0;
        both[4] = 0;
        both[5] = 0;
        return both;
    }

    @Override
    double[] clamped(ElementLoad load) {
        return ends(0, load);
    }

    @Override
    ElementState state(double[] movements, ElementLoad load) {
        double[] ends = ends(movements[6] - movements[0], load);
        if (!deformed) {
            return new ElementState(this, load, ends, movements, false);
        }
        // Seen from the turned chord the bar is a bar; its nodes see the turned chord as well.
        double[] seen = ends.clone();
        for (int i = 1; i < 3; i++) {
            double turned = across * (movements[6 + i] - movements[i]);
            seen[i] -= turned;
            seen[6 + i] += turned;
        }
        return new ElementState(this, load, ends, movements, false) {
            @Override
            double[] endForces() {
                return seen;
            }

            @Override
            double strainEnergy() {
                double sum = super.strainEnergy();
                for (int i = 1; i < 3; i++) {
                    double moved = movements[6 + i] - movements[i];
                    sum += across * moved * moved / 2;
                }
                return sum;
            }
        };
    }

    @Override
    double fit(double[] v, ElementLoad load) {
        double longer = v[6] - v[0];
        load.addStrain(0, longer / length());
        return longer;
    }
}
