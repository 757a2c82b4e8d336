package org.skewback.numeric;

import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.SingularMatrixException;

/**
 * Motion of a reduced linear structure with local nonlinear elements, condensed to their
 * displacements.
 *
 * <p>Each coordinate is stepped exactly ({@link PiecewiseLinearStepping}) under loads that run straight
 * from step to step and under the mean of the elements' forces over the step, so that the unknowns of a
 * step are the elements' displacements alone: d₁ = d̄ + F r(d₀ → d₁). They are found by iteration and,
 * where that does not contract, by Newton's method with a line search. The work of the elements on the
 * structure is exact; the error is of second order in the step.
 *
 * <p>Immutable; motions may run on several threads at once.
 */
public final class LocalMotion {

    private static final int MOST_ITERATIONS = 40;
    private static final int MOST_NEWTON_STEPS = 60;
    private static final double TOLERANCE = 1e-10;

    /**
     * An element and the displacements it follows.
     *
     * @param element the element
     * @param directions for each of its directions a vector b of n values, so that its displacement is
     *     d = bᵀu; two entries 1 and −1 for a movement between two unknowns
     */
    public record Attachment(LocalElement element, List<double[]> directions) {

        /**
         * Checks the number of directions.
         *
         * @param element the element
         * @param directions vectors of its displacements
         * @throws IllegalArgumentException when there are more or fewer than the element has
         */
        public Attachment {
            directions = List.copyOf(directions);
            Require.length("directions", directions.size(), element.directions());
        }
    }

    private final int modes;
    private final int locals;
    private final double step;
    private final double[] frequencies;
    private final double[] ratios;
    private final LocalElement[] elements;
    private final int[] elementAt;
    private final int[] stateAt;
    private final int states;

    /** Displacement k of the elements is Σ shape[k·modes + i]·qᵢ. */
    private final double[] shape;

    /** Displacements of the elements for unit mean forces, row by row. */
    private final double[] flexibility;

    /** Coefficients of q, q̇, p₀, p₁ in q and in q̇ one step on, each an array over the coordinates. */
    private final double[][] toPosition = new double[4][];

    private final double[][] toVelocity = new double[4][];
    private final ReducedModel model;

    /**
     * Prepares motions.
     *
     * @param model shapes of the structure without the elements; they should hold the static shapes of
     *     the elements' forces
     * @param dampingRatios ζ of each shape, 0 or more
     * @param attachments the elements
     * @param step time step in s, above 0
     * @throws IllegalArgumentException when lengths differ or a value is out of range
     */
    public LocalMotion(
            ReducedModel model, double[] dampingRatios, List<Attachment> attachments, double step) {
        this.model = model;
        this.step = Require.positive("step", step);
        modes = model.size();
        frequencies = model.circularFrequencies();
        ratios = Require.vector("damping ratios", dampingRatios, modes).clone();
        for (int c = 0; c < 4; c++) {
            toPosition[c] = new double[modes];
            toVelocity[c] = new double[modes];
        }
        for (int i = 0; i < modes; i++) {
            PiecewiseLinearStepping exact =
                    PiecewiseLinearStepping.ofRatio(frequencies[i], ratios[i], step);
            for (int c = 0; c < 4; c++) {
                toPosition[c][i] = exact.displacementCoefficients()[c];
                toVelocity[c][i] = exact.velocityCoefficients()[c];
            }
        }
        elements = new LocalElement[attachments.size()];
        elementAt = new int[elements.length + 1];
        stateAt = new int[elements.length + 1];
        for (int e = 0; e < elements.length; e++) {
            elements[e] = attachments.get(e).element();
            elementAt[e + 1] = elementAt[e] + elements[e].directions();
            stateAt[e + 1] = stateAt[e] + elements[e].stateSize();
        }
        locals = elementAt[elements.length];
        states = stateAt[elements.length];
        shape = new double[locals * modes];
        int k = 0;
        for (Attachment attachment : attachments) {
            for (double[] direction : attachment.directions()) {
                System.arraycopy(model.reduce(direction), 0, shape, k++ * modes, modes);
            }
        }
        flexibility = new double[locals * locals];
        for (int a = 0; a < locals; a++) {
            for (int b = 0; b < locals; b++) {
                double sum = 0;
                for (int i = 0; i < modes; i++) {
                    sum +=
                            shape[a * modes + i]
                                    * (toPosition[2][i] + toPosition[3][i])
                                    * shape[b * modes + i];
                }
                flexibility[a * locals + b] = sum;
            }
        }
    }

    /**
     * Runs a motion from rest.
     *
     * @param loads load vectors of n values each, such as −M r for a ground acceleration along r
     * @param histories for each load vector its factor at 0, Δt, 2Δt …; straight between
     * @param monitor may stop the work
     * @return the motion
     * @throws IllegalArgumentException when lengths differ or a value is not finite
     * @throws NotConvergedException when the displacements of a step cannot be found
     */
    public LocalHistory run(List<double[]> loads, List<double[]> histories, Monitor monitor) {
        return run(loads, histories, new double[modes], new double[modes], monitor);
    }

    /**
     * Runs a motion.
     *
     * @param loads load vectors of n values each
     * @param histories for each load vector its factor at 0, Δt, 2Δt …; straight between
     * @param position coordinates q at time 0
     * @param velocity q̇ at time 0
     * @param monitor may stop the work
     * @return the motion
     * @throws IllegalArgumentException when lengths differ or a value is not finite
     * @throws NotConvergedException when the displacements of a step cannot be found
     */
    public LocalHistory run(
            List<double[]> loads,
            List<double[]> histories,
            double[] position,
            double[] velocity,
            Monitor monitor) {
        Require.length("histories", histories.size(), loads.size());
        Require.atLeast("number of load vectors", loads.size(), 1);
        double[][] reduced = new double[loads.size()][];
        int times = Require.atLeast("length of a history", histories.get(0).length, 1);
        for (int l = 0; l < reduced.length; l++) {
            reduced[l] = model.reduce(loads.get(l));
            Require.vector("history", histories.get(l), times);
        }
        Run run = new Run(times, position, velocity);
        run.loadAt(reduced, histories, 0);
        run.begin();
        for (int n = 1; n < times; n++) {
            if (n % 256 == 1) {
                monitor.at("time history", (double) n / times);
            }
            run.loadAt(reduced, histories, n);
            run.advance(n);
        }
        return run.history();
    }

    /** One motion in progress. */
    private final class Run {

        private final double[] q;
        private final double[] v;
        private double[] p0 = new double[modes];
        private double[] p1 = new double[modes];
        private final double[] qNext = new double[modes];
        private final double[] vNext = new double[modes];
        private double[] d = new double[locals];
        private double[] dNext = new double[locals];
        private final double[] free = new double[locals];
        private double[] trial = new double[locals];
        private final double[] mean = new double[locals];
        private final double[] meanBefore = new double[locals];
        private double[] state = new double[states];
        private double[] stateNext = new double[states];
        private final double[] pull = new double[modes];
        private final double[] instant = new double[locals];
        private final double[][] coordinates;
        private final double[][] displacements;
        private final double[][] forces;
        private double largest;
        private double input;
        private double damped;
        private double byElements;
        private final double startMechanical;
        private final double startHeld;

        Run(int times, double[] position, double[] velocity) {
            q = Require.vector("position", position, modes).clone();
            v = Require.vector("velocity", velocity, modes).clone();
            coordinates = new double[modes][times];
            displacements = new double[locals][times];
            forces = new double[locals][times];
            multiply(shape, q, d);
            startMechanical = mechanical();
            startHeld = stored();
        }

        void loadAt(double[][] reduced, List<double[]> histories, int n) {
            double[] swap = p0;
            p0 = p1;
            p1 = swap;
            Arrays.fill(p1, 0);
            for (int l = 0; l < reduced.length; l++) {
                Vectors.add(histories.get(l)[n], reduced[l], p1);
            }
        }

        void begin() {
            keep(0);
        }

        void advance(int n) {
            for (int i = 0; i < modes; i++) {
                qNext[i] =
                        toPosition[0][i] * q[i]
                                + toPosition[1][i] * v[i]
                                + toPosition[2][i] * p0[i]
                                + toPosition[3][i] * p1[i];
                vNext[i] =
                        toVelocity[0][i] * q[i]
                                + toVelocity[1][i] * v[i]
                                + toVelocity[2][i] * p0[i]
                                + toVelocity[3][i] * p1[i];
            }
            multiply(shape, qNext, free);
            solve(n);
            for (int k = 0; k < locals; k++) {
                byElements += mean[k] * (dNext[k] - d[k]);
            }
            Arrays.fill(pull, 0);
            for (int k = 0; k < locals; k += Panels.BLOCK) {
                int count = Math.min(Panels.BLOCK, locals - k);
                Panels.subtract(pull, 0, shape, k * modes, modes, modes, mean, k, count);
            }
            for (int i = 0; i < modes; i++) {
                qNext[i] -= (toPosition[2][i] + toPosition[3][i]) * pull[i];
                vNext[i] -= (toVelocity[2][i] + toVelocity[3][i]) * pull[i];
            }
            account();
            System.arraycopy(qNext, 0, q, 0, modes);
            System.arraycopy(vNext, 0, v, 0, modes);
            double[] swap = d;
            d = dNext;
            dNext = swap;
            swap = state;
            state = stateNext;
            stateNext = swap;
            keep(n);
        }

        /** Four rows at a time, whose sums do not wait for each other. */
        private void multiply(double[] rows, double[] x, double[] product) {
            int columns = x.length;
            int k = 0;
            for (; k + 4 <= product.length; k += 4) {
                int r0 = k * columns;
                int r1 = r0 + columns;
                int r2 = r1 + columns;
                int r3 = r2 + columns;
                double s0 = 0;
                double s1 = 0;
                double s2 = 0;
                double s3 = 0;
                for (int i = 0; i < columns; i++) {
                    double value = x[i];
                    s0 += rows[r0 + i] * value;
                    s1 += rows[r1 + i] * value;
                    s2 += rows[r2 + i] * value;
                    s3 += rows[r3 + i] * value;
                }
                product[k] = s0;
                product[k + 1] = s1;
                product[k + 2] = s2;
                product[k + 3] = s3;
            }
            for (; k < product.length; k++) {
                double sum = 0;
                for (int i = 0; i < columns; i++) {
                    sum += rows[k * columns + i] * x[i];
                }
                product[k] = sum;
            }
        }

        /** Follows the elements from d to a trial and gives where their forces would lead. */
        private void respond(double[] to, double[] led) {
            for (int e = 0; e < elements.length; e++) {
                elements[e].follow(state, stateAt[e], d, to, elementAt[e], stateNext, mean);
            }
            multiply(flexibility, mean, led);
            for (int k = 0; k < locals; k++) {
                led[k] += free[k];
            }
        }

        private void solve(int n) {
            // The forces of the two steps before, drawn on, lead near the answer.
            for (int k = 0; k < locals; k++) {
                double now = mean[k];
                mean[k] += now - meanBefore[k];
                meanBefore[k] = now;
            }
            multiply(flexibility, mean, dNext);
            for (int k = 0; k < locals; k++) {
                dNext[k] += free[k];
            }
            double error = Double.POSITIVE_INFINITY;
            for (int k = 0; k < MOST_ITERATIONS; k++) {
                respond(dNext, trial);
                double before = error;
                error = difference(trial, dNext);
                double[] swap = dNext;
                dNext = trial;
                trial = swap;
                if (error <= tolerance()) {
                    return;
                }
                if (k > 6 && !(error < 0.7 * before)) {
                    break;
                }
            }
            newton(n);
        }

        private double tolerance() {
            double movement = 0;
            for (int k = 0; k < locals; k++) {
                movement = Math.max(movement, Math.abs(dNext[k] - d[k]));
                largest = Math.max(largest, Math.abs(dNext[k]));
            }
            return TOLERANCE * movement + 4 * Math.ulp(largest);
        }

        private double difference(double[] a, double[] b) {
            double most = 0;
            for (int k = 0; k < locals; k++) {
                double size = Math.abs(a[k] - b[k]);
                // Written so that what is not a number stays the largest.
                most = size <= most ? most : size;
            }
            return most;
        }

        private void newton(int n) {
            System.arraycopy(free, 0, dNext, 0, locals);
            respond(dNext, trial);
            double error = difference(trial, dNext);
            for (int k = 0; k < MOST_NEWTON_STEPS; k++) {
                if (error <= tolerance()) {
                    return;
                }
                double[] way = direction();
                double[] base = dNext.clone();
                double length = 1;
                double best = error;
                for (int halving = 0; halving < 12; halving++) {
                    for (int i = 0; i < locals; i++) {
                        dNext[i] = base[i] + length * way[i];
                    }
                    respond(dNext, trial);
                    best = difference(trial, dNext);
                    if (best < error) {
                        break;
                    }
                    length /= 2;
                }
                error = best;
            }
            throw new NotConvergedException(
                    String.format(
                            "displacements of local elements at %s s: after %d steps of Newton's"
                                    + " method they are still %s m off.",
                            n * step, MOST_NEWTON_STEPS, error));
        }

        /** Newton's step from dNext, where trial holds what its forces lead to. */
        private double[] direction() {
            double[] right = new double[locals];
            for (int k = 0; k < locals; k++) {
                right[k] = trial[k] - dNext[k];
            }
            double[] base = mean.clone();
            double[] moved = mean.clone();
            double[][] jacobian = new double[locals][locals];
            for (int e = 0; e < elements.length; e++) {
                for (int c = elementAt[e]; c < elementAt[e + 1]; c++) {
                    double kept = dNext[c];
                    double small = 1e-7 * (Math.abs(kept - d[c]) + 1e-3 * largest) + 1e-12;
                    dNext[c] = kept + small;
                    elements[e].follow(state, stateAt[e], d, dNext, elementAt[e], stateNext, moved);
                    dNext[c] = kept;
                    for (int b = elementAt[e]; b < elementAt[e + 1]; b++) {
                        double slope = (moved[b] - base[b]) / small;
                        for (int a = 0; a < locals; a++) {
                            jacobian[a][c] -= flexibility[a * locals + b] * slope;
                        }
                    }
                    jacobian[c][c] += 1;
                }
            }
            try {
                return new LUDecomposition(new Array2DRowRealMatrix(jacobian, false), 1e-300)
                        .getSolver()
                        .solve(new ArrayRealVector(right, false))
                        .toArray();
            } catch (SingularMatrixException e) {
                throw new NotConvergedException(
                        "displacements of local elements: Newton's method met a singular slope", e);
            }
        }

        /** Work of the loads and of damping over the step, to fourth order. */
        private void account() {
            for (int i = 0; i < modes; i++) {
                double movement = qNext[i] - q[i];
                double area = step * (q[i] + qNext[i]) / 2 + step * step * (v[i] - vNext[i]) / 12;
                input += p0[i] * movement + (p1[i] - p0[i]) * (qNext[i] - area / step);
                double middle = (3 * movement / step - (v[i] + vNext[i]) / 2) / 2;
                damped +=
                        2
                                * ratios[i]
                                * frequencies[i]
                                * step
                                * (v[i] * v[i] + 4 * middle * middle + vNext[i] * vNext[i])
                                / 6;
            }
        }

        private void keep(int n) {
            for (int e = 0; e < elements.length; e++) {
                elements[e].force(state, stateAt[e], d, elementAt[e], instant);
            }
            for (int k = 0; k < locals; k++) {
                displacements[k][n] = d[k];
                forces[k][n] = instant[k];
            }
            for (int i = 0; i < modes; i++) {
                coordinates[i][n] = q[i];
            }
        }

        private double mechanical() {
            double sum = 0;
            for (int i = 0; i < modes; i++) {
                sum += (v[i] * v[i] + frequencies[i] * frequencies[i] * q[i] * q[i]) / 2;
            }
            return sum;
        }

        private double stored() {
            double sum = 0;
            for (int e = 0; e < elements.length; e++) {
                sum += elements[e].stored(state, stateAt[e], d, elementAt[e]);
            }
            return sum;
        }

        LocalHistory history() {
            double held = stored();

            double end = mechanical();
            return new LocalHistory(
                    step,
                    coordinates,
                    displacements,
                    forces,
                    elementAt,
                    new LocalHistory.Energy(
                            startMechanical,
                            input,
                            end,
                            damped,
                            -byElements - (held - startHeld),
                            held - startHeld));
        }
    }
}
