package org.skewback.frame;

import org.skewback.steel.Section;

/** A beam-column: stiffness from its flexibility, integrated along it; joints condensed. */
final class BeamElement extends Element {

    /** Exact for polynomials to degree 7: forces under loads to degree 2, times an arm. */
    private static final Gauss UNIFORM = Gauss.ofOrder(4);

    private static final double STANDS_STILL = 1e-12;
    private static final int MOST_POINTS = 128;

    private final BeamColumn beam;
    private final Gauss gauss;
    private final double[] uniform;
    private final EndStiffness flexible;
    private final Joints joints;

    BeamElement(BeamColumn beam, int start, int end, Geometry geometry) {
        this(beam, start, end, geometry, order(beam, geometry.length()));
    }

    private BeamElement(BeamColumn beam, int start, int end, Geometry geometry, Gauss gauss) {
        this(
                beam,
                start,
                end,
                geometry,
                gauss,
                EndStiffness.ofFlexibility(integrate(beam, geometry.length(), gauss)));
    }

    private BeamElement(
            BeamColumn beam,
            int start,
            int end,
            Geometry geometry,
            Gauss gauss,
            EndStiffness flexible) {
        this(
                beam,
                start,
                end,
                geometry,
                gauss,
                flexible,
                new Joints(
                        beam.name(),
                        flexible.ofBothEnds(geometry.length()),
                        beam.startConnection(),
                        beam.endConnection()));
    }

    private BeamElement(
            BeamColumn beam,
            int start,
            int end,
            Geometry geometry,
            Gauss gauss,
            EndStiffness flexible,
            Joints joints) {
        super(beam, start, end, geometry, joints.stiffness());
        this.beam = beam;
        this.gauss = gauss;
        this.flexible = flexible;
        this.joints = joints;
        this.uniform =
                beam.profile() instanceof SectionProfile.Uniform
                        ? flexibility(beam, 0)
                        : new double[0];
    }

    private static Gauss order(BeamColumn beam, double length) {
        if (beam.profile() instanceof SectionProfile.Uniform) {
            return UNIFORM;
        }
        double[] before = integrate(beam, length, Gauss.ofOrder(8));
        for (int points = 16; points <= MOST_POINTS; points *= 2) {
            Gauss gauss = Gauss.ofOrder(points);
            double[] now = integrate(beam, length, gauss);
            if (close(before, now)) {
                return gauss;
            }
            before = now;
        }
        throw new IllegalArgumentException(
                "profile of member "
                        + beam.name()
                        + " changes so sharply that "
                        + MOST_POINTS
                        + " sections along it do not settle its stiffness; allowed are smooth"
                        + " profiles. Divide the member where its section jumps.");
    }

    private static boolean close(double[] before, double[] now) {
        for (int i = 0; i < now.length; i++) {
            if (Math.abs(now[i] - before[i]) > STANDS_STILL * Math.abs(now[i])) {
                return false;
            }
        }
        return true;
    }

    private static double[] flexibility(BeamColumn beam, double fraction) {
        Section section = beam.profile().at(fraction);
        double e = beam.material().youngModulus();
        double g = beam.material().shearModulus();
        return new double[] {
            1 / (e * section.area()),
            1 / (g * section.shearAreaY()),
            1 / (g * section.shearAreaZ()),
            1 / (g * section.torsionConstant()),
            1 / (e * section.inertiaY()),
            1 / (e * section.inertiaZ())
        };
    }

    /** Flexibility of the end: along x, about x, then (z, about y) and (y, about z) as 11, 12, 22. */
    private static double[] integrate(BeamColumn beam, double length, Gauss gauss) {
        double[] sum = new double[8];
        for (int i = 0; i < gauss.size(); i++) {
            double[] f = flexibility(beam, gauss.point(i));
            double w = gauss.weight(i) * length;
            double arm = (1 - gauss.point(i)) * length;
            sum[0] += w * f[0];
            sum[1] += w * f[3];
            sum[2] += w * (f[2] + arm * arm * f[4]);
            sum[3] -= w * arm * f[4];
            sum[4] += w * f[4];
            sum[5] += w * (f[1] + arm * arm * f[5]);
            sum[6] += w * arm * f[5];
            sum[7] += w * f[5];
        }
        return sum;
    }

    @Override
    double[] flexibility(double x) {
        return uniform.length > 0 ? uniform : flexibility(beam, x / length());
    }

    @Override
    Gauss gauss() {
        return gauss;
    }

    @Override
    double massPerLength(double x) {
        return beam.material().density() * beam.profile().at(x / length()).area();
    }

    @Override
    double expansion() {
        return beam.material().expansion();
    }

    @Override
    void requireCarries(ElementLoad load) {
        // A beam-column carries everything.
    }

    BeamColumn beam() {
        return beam;
    }

    /** Whether its section changes along it. */
    boolean isTapered() {
        return uniform.length == 0;
    }

    /** Movement of the free end under the loads on the member and the deformations imposed on it. */
    private double[] endMovement(ElementLoad load) {
        double[] d = new double[6];
        double[] breaks = load.breaks(length());
        for (int b = 1; b < breaks.length; b++) {
            double width = breaks[b] - breaks[b - 1];
            for (int i = 0; i < gauss.size(); i++) {
                double at = breaks[b - 1] + gauss.point(i) * width;
                double[] f = flexibility(at);
                double[] e = new double[6];
                load.addForcesBeyond(at, false, e);
                load.addCableForces(at, e);
                for (int k = 0; k < 6; k++) {
                    e[k] *= f[k];
                }
                load.addStrains(f, e);
                addMovement(length() - at, gauss.weight(i) * width, e, d);
            }
        }
        for (ElementLoad.Gap gap : load.gaps()) {
            double[] e = new double[6];
            e[gap.component()] = gap.amount();
            addMovement(length() - gap.at(), 1, e, d);
        }
        return d;
    }

    private double[] rigidClamped(ElementLoad load) {
        double[] p = flexible.times(endMovement(load));
        for (int i = 0; i < 6; i++) {
            p[i] = -p[i];
        }
        return bothEnds(length(), p, resultant(load));
    }

    @Override
    double[] clamped(ElementLoad load) {
        return joints.clamped(rigidClamped(load));
    }

    @Override
    ElementState state(double[] movements, ElementLoad load) {
        double[] inside = joints.inside(movements, rigidClamped(load));
        double[] against = new double[6];
        for (int i = 0; i < 6; i++) {
            against[i] = inside[6 + i] - inside[i];
        }
        against[1] -= length() * inside[5];
        against[2] += length() * inside[4];
        double[] d = endMovement(load);
        for (int i = 0; i < 6; i++) {
            against[i] -= d[i];
        }
        double[] p = flexible.times(against);
        return new ElementState(this, load, bothEnds(length(), p, resultant(load)), inside, true);
    }
}
