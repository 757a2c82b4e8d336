package org.skewback.frame;

import java.util.Arrays;

/** A member under load in equilibrium on its deformed axis. */
final class StabilityState extends ElementState {

    /** Forces are smooth but no polynomials; lengths this short are near enough to one. */
    private static final int FINE = 8;

    private static final Gauss GAUSS = Gauss.ofOrder(8);

    private final StabilityElement element;
    private final BentMember.Loaded y;
    private final BentMember.Loaded z;

    StabilityState(
            StabilityElement element,
            ElementLoad load,
            double[] endForces,
            double[] movements,
            BentMember.Loaded y,
            BentMember.Loaded z) {
        super(element, load, endForces, movements, true);
        this.element = element;
        this.y = y;
        this.z = z;
    }

    @Override
    double[] resultant(double x, boolean after) {
        double[] s = super.resultant(x, after);
        double[] ends = endForces();
        BentSpan.Place inY = y.at(x, after);
        BentSpan.Place inZ = z.at(x, after);
        s[1] = inY.shear();
        s[2] = inZ.shear();
        s[4] = inZ.moment();
        s[5] = inY.moment();
        if (x == 0 && !after) {
            s[4] = ends[4];
            s[5] = -ends[5];
            s[1] += ends[1] - inY.force();
            s[2] += ends[2] - inZ.force();
        } else if (x == element.length() && after) {
            s[4] = -ends[10];
            s[5] = ends[11];
            s[1] += -ends[7] - inY.force();
            s[2] += -ends[8] - inZ.force();
        }
        return s;
    }

    @Override
    double[] movement(double x) {
        double[] ends = ends();
        double[] forces = endForces();
        double[] stretch = element.stretch(x, Arrays.copyOfRange(forces, 6, 12), load());
        BentSpan.Place inY = y.at(x, true);
        BentSpan.Place inZ = z.at(x, true);
        return new double[] {
            ends[0] + stretch[0],
            inY.across(),
            inZ.across(),
            ends[3] + stretch[1],
            -inZ.turn(),
            inY.turn()
        };
    }

    @Override
    double[] marks() {
        double[] marks = element.marks(load());
        double[] fine = new double[FINE * (marks.length - 1) + 1];
        for (int i = 0; i < fine.length; i++) {
            double from = marks[i / FINE];
            fine[i] =
                    i % FINE == 0 ? from : from + (marks[i / FINE + 1] - from) * (i % FINE) / FINE;
        }
        return fine;
    }

    @Override
    Gauss quadrature() {
        return GAUSS;
    }

    @Override
    double strainEnergy() {
        double sum = y.energy(load(), GAUSS) + z.energy(load(), GAUSS);
        double[] marks = element.marks(load());
        for (int b = 1; b < marks.length; b++) {
            double width = marks[b] - marks[b - 1];
            for (int i = 0; i < GAUSS.size(); i++) {
                double x = marks[b - 1] + GAUSS.point(i) * width;
                double[] f = element.flexibility(x);
                double[] s = forces(x, false);
                sum += GAUSS.weight(i) * width * (f[0] * s[0] * s[0] + f[3] * s[3] * s[3]) / 2;
            }
        }
        return sum;
    }

    /**
     * ∫ sᵀ e₀ dx as in the linear member, but that of a slip δ under an axial force is (Q − Nψ)δ: the
     * moment steps by −Nδ there, and ∫ M²/B + V²/G + N w′² dx by parts leaves this much.
     */
    @Override
    double imposedWork() {
        double sum = super.imposedWork();
        for (ElementLoad.Gap gap : load().gaps()) {
            if (gap.component() == 1 || gap.component() == 2) {
                BentSpan.Place place = (gap.component() == 1 ? y : z).at(gap.at(), false);
                double[] s = resultant(gap.at(), false);
                double slips = place.force() - s[0] * place.turn();
                sum += (slips - s[gap.component()]) * gap.amount();
            }
        }
        return sum;
    }
}
