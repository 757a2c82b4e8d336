package org.skewback.frame;

import java.util.Arrays;
import org.skewback.steel.Section;

/**
 * A beam-column in equilibrium on its deformed axis under axial forces that are given: bending in both
 * planes by {@link BentMember}, twist with the part N(I_y + I_z)/A of the axial force in its stiffness.
 * Where axial force or section change along the member it is made of uniform spans.
 */
final class StabilityElement extends Element {

    /** Longest span in tension, as k²ℓ²: beyond, the growth of hyperbolic functions costs digits. */
    private static final double LONGEST = 16;

    private final BeamElement first;
    private final double[] places;
    private final double[] axial;
    private final BentMember y;
    private final BentMember z;
    private final double alongX;
    private final double aboutX;
    private final Joints joints;
    private final double[][] arms;

    /** What is found before the member itself can be made. */
    @SuppressWarnings("ArrayRecordComponent") // stays in this file, never changed
    private record Parts(
            double[] places,
            double[] axial,
            BentMember y,
            BentMember z,
            double alongX,
            double aboutX,
            Joints joints,
            double[][] arms) {}

    private StabilityElement(BeamElement first, Parts parts) {
        super(
                first.member(),
                first.start(),
                first.end(),
                first.geometry(),
                parts.joints.stiffness(),
                parts.arms);
        this.first = first;
        places = parts.places;
        axial = parts.axial;
        y = parts.y;
        z = parts.z;
        alongX = parts.alongX;
        aboutX = parts.aboutX;
        joints = parts.joints;
        arms = parts.arms;
    }

    /**
     * Makes a member ready.
     *
     * @param first the member as it is to first order
     * @param before its forces, of which those along it and those at its rigid arms count
     * @param parts spans where axial force or section change along it
     * @throws UnstableException if it is unstable while its nodes are held
     */
    static StabilityElement of(BeamElement first, ElementState before, int parts) {
        double length = first.length();
        double[] breaks = before.load().breaks(length);
        double[] places = {0, length};
        double force = before.resultant(length / 2, false)[0];
        if (!isEven(before, breaks, force) || first.isTapered()) {
            places = divided(breaks, length, parts);
        }
        double[] axial = new double[places.length - 1];
        for (int i = 0; i < axial.length; i++) {
            double from = before.resultant(places[i], true)[0];
            double to = before.resultant(places[i + 1], false)[0];
            axial[i] =
                    (from + 4 * before.resultant((places[i] + places[i + 1]) / 2, false)[0] + to)
                            / 6;
        }
        try {
            return new StabilityElement(first, parts(first, before, places, axial));
        } catch (BentMember.UnstableMember e) {
            throw UnstableException.of(first, axial);
        }
    }

    private static boolean isEven(ElementState before, double[] breaks, double force) {
        for (int b = 1; b < breaks.length; b++) {
            double third = (breaks[b] - breaks[b - 1]) / 3;
            for (double x : new double[] {breaks[b - 1] + third, breaks[b] - third}) {
                if (Math.abs(before.resultant(x, false)[0] - force) > 1e-12 * Math.abs(force)) {
                    return false;
                }
            }
        }
        return true;
    }

    private static double[] divided(double[] breaks, double length, int parts) {
        double[] all = Arrays.copyOf(breaks, breaks.length + parts + 1);
        for (int i = 0; i <= parts; i++) {
            all[breaks.length + i] = i == parts ? length : length * i / parts;
        }
        Arrays.sort(all);
        double[] kept = new double[all.length];
        int count = 0;
        for (double x : all) {
            // Short spans beside long ones would cost digits.
            if (count == 0 || x - kept[count - 1] > 1e-3 * length / parts) {
                kept[count++] = x;
            }
        }
        kept[count - 1] = length;
        return Arrays.copyOf(kept, count);
    }

    private static Parts parts(
            BeamElement first, ElementState before, double[] places, double[] axial) {
        BentMember y = bent(first, places, axial, 1);
        BentMember z = bent(first, places, axial, 2);
        double along = 0;
        double about = 0;
        for (int i = 0; i < axial.length; i++) {
            Gauss gauss = first.gauss();
            for (int p = 0; p < gauss.size(); p++) {
                double x = places[i] + gauss.point(p) * (places[i + 1] - places[i]);
                double weight = gauss.weight(p) * (places[i + 1] - places[i]);
                along += weight * first.flexibility(x)[0];
                double twist = twist(first, x, axial[i]);
                if (!(twist > 0)) {
                    throw new BentMember.UnstableMember();
                }
                about += weight * twist;
            }
        }
        double[][] local = new double[12][12];
        for (int sign = 0; sign < 4; sign++) {
            int row = 6 * (sign / 2);
            int column = 6 * (sign % 2);
            double factor = row == column ? 1 : -1;
            local[row][column] = factor / along;
            local[row + 3][column + 3] = factor / about;
        }
        addPlane(y.stiffness(), 1, local);
        addPlane(z.stiffness(), 2, local);
        BeamColumn beam = first.beam();
        Joints joints;
        try {
            joints = new Joints(beam.name(), local, beam.startConnection(), beam.endConnection());
        } catch (IllegalArgumentException e) {
            // At first order it was held: now it buckles between its joints.
            throw new BentMember.UnstableMember();
        }
        double[][] arms = new double[12][12];
        for (int half = 0; half < 2; half++) {
            Vector f = first.globalVector(before.endForces(), 6 * half);
            SecondOrder.addArm(first.arm(half == 1), f, half, arms);
        }
        return new Parts(places, axial, y, z, 1 / along, 1 / about, joints, arms);
    }

    /** Twist per length and torque, with what the axial force takes or gives. */
    private static double twist(BeamElement first, double x, double axial) {
        Section section = first.beam().profile().at(x / first.length());
        double radius = (section.inertiaY() + section.inertiaZ()) / section.area();
        return 1 / (1 / first.flexibility(x)[3] + axial * radius);
    }

    private static BentMember bent(BeamElement first, double[] places, double[] axial, int axis) {
        double[] at = new double[1];
        BentSpan[] spans = new BentSpan[0];
        for (int i = 0; i < axial.length; i++) {
            double length = places[i + 1] - places[i];
            double bends = 0;
            double shears = 0;
            Gauss gauss = first.gauss();
            for (int p = 0; p < gauss.size(); p++) {
                double[] f = first.flexibility(places[i] + gauss.point(p) * length);
                bends += gauss.weight(p) * f[6 - axis];
                shears += gauss.weight(p) * f[axis];
            }
            if (!first.isTapered()) {
                bends = first.flexibility(0)[6 - axis];
                shears = first.flexibility(0)[axis];
            }
            BentSpan span = new BentSpan(length, 1 / bends, shears, axial[i]);
            int count =
                    span.stretch() > 0 && span.argument() > LONGEST
                            ? (int) Math.ceil(Math.sqrt(span.argument() / LONGEST))
                            : 1;
            int from = spans.length;
            spans = Arrays.copyOf(spans, from + count);
            at = Arrays.copyOf(at, from + count + 1);
            for (int k = 0; k < count; k++) {
                at[from + k + 1] =
                        k == count - 1 ? places[i + 1] : places[i] + length * (k + 1) / count;
                spans[from + k] =
                        new BentSpan(
                                at[from + k + 1] - at[from + k],
                                span.bending(),
                                span.shear(),
                                span.axial());
            }
        }
        return new BentMember(at, spans, axis);
    }

    /** Adds the 4 × 4 stiffness of a plane; ψ is against the turn about y in the plane of z. */
    private static void addPlane(double[][] plane, int axis, double[][] local) {
        for (int i = 0; i < 4; i++) {
            for (int j = 0; j < 4; j++) {
                local[motion(axis, i)][motion(axis, j)] +=
                        sign(axis, i) * sign(axis, j) * plane[i][j];
            }
        }
    }

    private static int motion(int axis, int i) {
        return 6 * (i / 2) + (i % 2 == 0 ? axis : 6 - axis);
    }

    private static double sign(int axis, int i) {
        return axis == 2 && i % 2 == 1 ? -1 : 1;
    }

    @Override
    boolean isDeformed() {
        return true;
    }

    @Override
    double[] nodeForces(ElementState state, double[] nodes) {
        double[] forces = super.nodeForces(state, nodes);
        double[] turned = FrameSystem.times(arms, nodes);
        for (int i = 0; i < 12; i++) {
            forces[i] += turned[i];
        }
        return forces;
    }

    @Override
    double armEnergy(double[] nodes) {
        double[] turned = FrameSystem.times(arms, nodes);
        double sum = 0;
        for (int i = 0; i < 12; i++) {
            sum += turned[i] * nodes[i] / 2;
        }
        return sum;
    }

    @Override
    double[] flexibility(double x) {
        double[] f = first.flexibility(x).clone();
        f[3] = twist(first, x, axialAt(x));
        return f;
    }

    private double axialAt(double x) {
        int i = 0;
        while (i + 1 < axial.length && places[i + 1] <= x) {
            i++;
        }
        return axial[i];
    }

    @Override
    Gauss gauss() {
        return first.gauss();
    }

    @Override
    double massPerLength(double x) {
        return first.massPerLength(x);
    }

    @Override
    double expansion() {
        return first.expansion();
    }

    @Override
    void requireCarries(ElementLoad load) {
        first.requireCarries(load);
    }

    /** Places between which loads, section and axial force are smooth. */
    double[] marks(ElementLoad load) {
        double[] breaks = load.breaks(length());
        double[] all = Arrays.copyOf(places, places.length + breaks.length);
        System.arraycopy(breaks, 0, all, places.length, breaks.length);
        return Arrays.stream(all).sorted().distinct().toArray();
    }

    /** Stretch and twist of the member from its start to x under its loads and forces at its end. */
    double[] stretch(double x, double[] p, ElementLoad load) {
        double[] d = new double[2];
        double[] marks = marks(load);
        for (int b = 1; b < marks.length && marks[b - 1] < x; b++) {
            double width = Math.min(marks[b], x) - marks[b - 1];
            for (int i = 0; i < gauss().size(); i++) {
                double at = marks[b - 1] + gauss().point(i) * width;
                double[] f = flexibility(at);
                double[] s = new double[6];
                load.addForcesBeyond(at, false, s);
                load.addCableForces(at, s);
                double[] e = new double[6];
                e[0] = f[0] * (p[0] + s[0]);
                e[3] = f[3] * (p[3] + s[3]);
                load.addStrains(f, e);
                d[0] += gauss().weight(i) * width * e[0];
                d[1] += gauss().weight(i) * width * e[3];
            }
        }
        for (ElementLoad.Gap gap : load.gaps()) {
            if (gap.at() <= x && gap.component() % 3 == 0) {
                d[gap.component() / 3] += gap.amount();
            }
        }
        return d;
    }

    private double[] rigidClamped(ElementLoad load) {
        double[] free = stretch(length(), new double[6], load);
        double[] sum = resultant(load);
        double[] forces = new double[12];
        forces[6] = -alongX * free[0];
        forces[0] = -forces[6] - sum[0];
        forces[9] = -aboutX * free[1];
        forces[3] = -forces[9] - sum[3];
        addPlane(y.clamped(load), 1, forces);
        addPlane(z.clamped(load), 2, forces);
        return forces;
    }

    private static void addPlane(double[] plane, int axis, double[] forces) {
        for (int i = 0; i < 4; i++) {
            forces[motion(axis, i)] += sign(axis, i) * plane[i];
        }
    }

    @Override
    double[] clamped(ElementLoad load) {
        return joints.clamped(rigidClamped(load));
    }

    @Override
    ElementState state(double[] movements, ElementLoad load) {
        double[] clamped = rigidClamped(load);
        double[] inside = joints.inside(movements, clamped);
        double[] forces = joints.rigid(inside);
        for (int i = 0; i < 12; i++) {
            forces[i] += clamped[i];
        }
        return new StabilityState(
                this,
                load,
                forces,
                inside,
                y.bent(plane(1, inside), load),
                z.bent(plane(2, inside), load));
    }

    private static double[] plane(int axis, double[] twelve) {
        double[] four = new double[4];
        for (int i = 0; i < 4; i++) {
            four[i] = sign(axis, i) * twelve[motion(axis, i)];
        }
        return four;
    }
}
