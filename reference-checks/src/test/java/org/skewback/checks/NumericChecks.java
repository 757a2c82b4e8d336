package org.skewback.checks;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.EigenDecomposition;
import org.skewback.numeric.DirectIntegration;
import org.skewback.numeric.Eigenpairs;
import org.skewback.numeric.Eigenproblem;
import org.skewback.numeric.Factorization;
import org.skewback.numeric.Gap;
import org.skewback.numeric.LocalElement;
import org.skewback.numeric.LocalHistory;
import org.skewback.numeric.LocalMotion;
import org.skewback.numeric.Monitor;
import org.skewback.numeric.OscillatorResponse;
import org.skewback.numeric.PiecewiseLinearStepping;
import org.skewback.numeric.ReducedModel;
import org.skewback.numeric.SlidingBearing;
import org.skewback.numeric.StaticCondensation;
import org.skewback.numeric.SymmetricAssembler;
import org.skewback.numeric.SymmetricMatrix;
import org.skewback.numeric.SymmetricPattern;
import org.skewback.numeric.TimeScheme;
import org.skewback.quantity.Quantity;

/** Checks of {@code org.skewback.numeric}. */
public final class NumericChecks implements Subject {

    private static final double GRAVITY = 9.80665;
    private static final double TWO_PI = 2 * StrictMath.PI;

    /** Makes the subject. */
    public NumericChecks() {}

    @Override
    public String topic() {
        return "numeric";
    }

    @Override
    public Map<String, Checked> routines() {
        Map<String, Checked> routines = new TreeMap<>();
        routines.put("Factorization", NumericChecks::factorization);
        routines.put("Eigenproblem.vibration", NumericChecks::vibration);
        routines.put("Eigenproblem.countBelow", NumericChecks::countBelow);
        routines.put("Eigenproblem.buckling", NumericChecks::buckling);
        routines.put("PiecewiseLinearStepping", NumericChecks::oscillator);
        routines.put("DirectIntegration", NumericChecks::directIntegration);
        routines.put("TimeScheme", NumericChecks::scheme);
        routines.put("StaticCondensation", NumericChecks::condensation);
        routines.put("DirectIntegration: free", NumericChecks::freeVibration);
        routines.put("Factorization: refined", NumericChecks::refined);
        routines.put("LocalMotion", NumericChecks::localMotion);
        routines.put("LocalMotion: block pulled", NumericChecks::pulled);
        routines.put("LocalMotion: mass against a stop", NumericChecks::stopped);
        routines.put("LocalMotion: damped swing", NumericChecks::damped);
        routines.put("ReducedModel", NumericChecks::reducedModel);
        routines.put("SlidingBearing", NumericChecks::slidingBearing);
        return routines;
    }

    private static int whole(Inputs in, String name) {
        return (int) in.si(name);
    }

    private static SymmetricMatrix tridiagonal(int size, double onDiagonal, double beside) {
        double[][] dense = new double[size][size];
        for (int i = 0; i < size; i++) {
            dense[i][i] = onDiagonal;
            if (i > 0) {
                dense[i][i - 1] = beside;
                dense[i - 1][i] = beside;
            }
        }
        return SymmetricMatrix.ofDense(dense);
    }

    private static SymmetricMatrix matrix(Inputs in) {
        int size = whole(in, "size");
        switch (in.text("matrix")) {
            case "Hilbert" -> {
                double[][] dense = new double[size][size];
                for (int i = 0; i < size; i++) {
                    for (int j = 0; j < size; j++) {
                        dense[i][j] = 1.0 / (i + j + 1);
                    }
                }
                return SymmetricMatrix.ofDense(dense);
            }
            case "tridiagonal" -> {
                return tridiagonal(size, 2, -1);
            }
            case "Wilkinson" -> {
                double[][] dense = tridiagonal(size, 0, 1).toDense();
                for (int i = 0; i < size; i++) {
                    dense[i][i] = Math.abs(i - size / 2) - in.si("shift");
                }
                return SymmetricMatrix.ofDense(dense);
            }
            default -> throw new IllegalArgumentException("there is no such matrix");
        }
    }

    private static Map<String, Quantity> factorization(Inputs in) {
        Factorization found = Factorization.of(matrix(in));
        return Map.of(
                "logarithm of determinant", Quantity.of(found.logDeterminant()),
                "condition estimate", Quantity.of(found.conditionEstimate()),
                "negative", Quantity.of(found.inertia().negative()));
    }

    private static SymmetricMatrix ones(int size) {
        double[] ones = new double[size];
        Arrays.fill(ones, 1);
        return SymmetricMatrix.ofDiagonal(ones);
    }

    private static SymmetricMatrix structure(Inputs in) {
        int size = whole(in, "size");
        switch (in.text("structure")) {
            case "held chain" -> {
                return tridiagonal(size, 2, -1);
            }
            case "shear building" -> {
                double[][] dense = tridiagonal(size, 2, -1).toDense();
                dense[size - 1][size - 1] = 1;
                return SymmetricMatrix.ofDense(dense);
            }
            case "held grid" -> {
                List<int[]> pairs = new ArrayList<>();
                for (int v = 0; v < size * size; v++) {
                    if (v % size > 0) {
                        pairs.add(new int[] {v, v - 1});
                    }
                    if (v >= size) {
                        pairs.add(new int[] {v, v - size});
                    }
                }
                SymmetricAssembler sum =
                        new SymmetricAssembler(SymmetricPattern.ofElements(size * size, pairs));
                pairs.forEach(pair -> sum.add(pair[0], pair[1], -1));
                for (int v = 0; v < size * size; v++) {
                    sum.add(v, v, 4);
                }
                return sum.matrix();
            }
            default -> throw new IllegalArgumentException("there is no such structure");
        }
    }

    private static Map<String, Quantity> vibration(Inputs in) {
        SymmetricMatrix stiffness = structure(in);
        int number = whole(in, "number");
        Eigenpairs found =
                Eigenproblem.vibration(stiffness, ones(stiffness.order()), number, Monitor.quiet());
        double value = found.value(number - 1);
        return Map.of(
                "eigenvalue",
                Quantity.of(value),
                "circular frequency",
                Quantity.of(Math.sqrt(value)));
    }

    private static Map<String, Quantity> countBelow(Inputs in) {
        SymmetricMatrix stiffness = structure(in);
        int count =
                Eigenproblem.countBelow(
                        stiffness, ones(stiffness.order()), in.si("value"), Monitor.quiet());
        return Map.of("count", Quantity.of(count));
    }

    /** Cubic beam elements of unit length, stiffness and load in all: a deflection and a rotation a node. */
    private static SymmetricMatrix beam(int elements, boolean[] held, double[][] element) {
        int[] unknownOf = new int[held.length];
        int order = 0;
        for (int i = 0; i < held.length; i++) {
            unknownOf[i] = held[i] ? -1 : order++;
        }
        List<int[]> places = new ArrayList<>();
        for (int e = 0; e < elements; e++) {
            places.add(Arrays.copyOfRange(unknownOf, 2 * e, 2 * e + 4));
        }
        SymmetricAssembler sum = new SymmetricAssembler(SymmetricPattern.ofElements(order, places));
        places.forEach(place -> sum.add(place, element));
        return sum.matrix();
    }

    private static double[][] bending(double l) {
        double[][] k = {{12, 6, -12, 6}, {6, 4, -6, 2}, {-12, -6, 12, -6}, {6, 2, -6, 4}};
        return scaled(k, 1 / (l * l * l), l);
    }

    private static double[][] compression(double l) {
        double[][] k = {{36, 3, -36, 3}, {3, 4, -3, -1}, {-36, -3, 36, -3}, {3, -1, -3, 4}};
        return scaled(k, -1 / (30 * l), l);
    }

    private static double[][] inertia(double l) {
        double[][] m = {{156, 22, 54, -13}, {22, 4, 13, -3}, {54, 13, 156, -22}, {-13, -3, -22, 4}};
        return scaled(m, l / 420, l);
    }

    /** Rotations, odd rows and columns, carry a length each. */
    private static double[][] scaled(double[][] k, double factor, double l) {
        for (int i = 0; i < 4; i++) {
            for (int j = 0; j < 4; j++) {
                k[i][j] *= factor * (i % 2 == 1 ? l : 1) * (j % 2 == 1 ? l : 1);
            }
        }
        return k;
    }

    private static Map<String, Quantity> buckling(Inputs in) {
        int elements = whole(in, "elements");
        boolean[] held = new boolean[2 * elements + 2];
        String[] ends = in.text("column").split("-", -1);
        held[0] = true;
        held[1] = ends[0].equals("fixed");
        held[2 * elements] = !ends[1].equals("free");
        held[2 * elements + 1] = ends[1].equals("fixed");
        double l = 1.0 / elements;
        int number = in.has("number") ? whole(in, "number") : 1;
        Eigenpairs found =
                Eigenproblem.buckling(
                        beam(elements, held, bending(l)),
                        beam(elements, held, compression(l)),
                        number,
                        Monitor.quiet());
        return Map.of("load", Quantity.of(found.value(number - 1)));
    }

    private static Map<String, Quantity> oscillator(Inputs in) {
        double mass = in.si("mass");
        double step = in.si("step");
        double end = in.si("time");
        double stiffness =
                in.has("stiffness")
                        ? in.si("stiffness")
                        : mass * TWO_PI * TWO_PI / (in.si("period") * in.si("period"));
        double damping = 2 * in.si("damping") * Math.sqrt(stiffness * mass);
        double[] loads = new double[(int) Math.round(end / step) + 1];
        String load = in.text("load");
        Arrays.setAll(
                loads,
                n ->
                        switch (load) {
                            case "step" -> 1;
                            case "ramp" -> n * step;
                            case "half sine" -> halfSine(n);
                            default -> throw new IllegalArgumentException("no such load");
                        });
        OscillatorResponse found =
                PiecewiseLinearStepping.of(mass, damping, stiffness, step).respond(loads, 0, 0);
        int last = loads.length - 1;
        return Map.of(
                "displacement", Quantity.of(found.displacement()[last], "m"),
                "velocity", Quantity.of(found.velocity()[last], "m/s"),
                "acceleration", Quantity.of(found.acceleration()[last], "m/s²"),
                "peak", Quantity.of(found.peakDisplacement(), "m"));
    }

    /** 10 sin(πt/0.6) up to 0.6 s, in steps of 0.1 s. */
    private static double halfSine(int n) {
        return n < 6 ? 10 * StrictMath.sin(StrictMath.PI * n / 6) : 0;
    }

    private static Map<String, Quantity> directIntegration(Inputs in) {
        TimeScheme scheme =
                switch (in.text("scheme")) {
                    case "average acceleration" -> TimeScheme.averageAcceleration();
                    case "linear acceleration" -> TimeScheme.linearAcceleration();
                    case "with numerical damping" -> TimeScheme.hilberHughesTaylor(in.si("alpha"));
                    default ->
                            throw new IllegalArgumentException(
                                    "scheme is \"" + in.text("scheme") + "\".");
                };
        double mass = 0.2533;
        double stiffness = 10;
        DirectIntegration motion =
                new DirectIntegration(
                        SymmetricMatrix.ofDiagonal(new double[] {stiffness}),
                        SymmetricMatrix.ofDiagonal(new double[] {mass}),
                        SymmetricMatrix.ofDiagonal(
                                new double[] {2 * 0.05 * Math.sqrt(stiffness * mass)}),
                        scheme,
                        0.1,
                        new double[1],
                        new double[1],
                        new double[1],
                        Monitor.quiet());
        int steps = (int) Math.round(in.si("time") / 0.1);
        for (int n = 1; n <= steps; n++) {
            motion.advance(new double[] {halfSine(n)});
        }
        return Map.of("displacement", Quantity.of(motion.displacement()[0], "m"));
    }

    private static Map<String, Quantity> freeVibration(Inputs in) {
        DirectIntegration motion = free(TimeScheme.averageAcceleration(), in.si("step"));
        for (int n = 0; n < whole(in, "steps"); n++) {
            motion.advance(new double[1]);
        }
        return Map.of(
                "displacement", Quantity.of(motion.displacement()[0], "m"),
                "velocity", Quantity.of(motion.velocity()[0], "m/s"),
                "acceleration", Quantity.of(motion.acceleration()[0], "m/s²"),
                "energy", Quantity.of(motion.energy(), "J"));
    }

    private static Map<String, Quantity> refined(Inputs in) {
        SymmetricMatrix matrix = matrix(in);
        double[] ones = new double[matrix.order()];
        Arrays.fill(ones, 1);
        double[] x = Factorization.of(matrix).solveRefined(ones).x();
        return Map.of("unknown in the middle", Quantity.of(x[x.length / 2]));
    }

    /** All shapes of a structure: its own frequencies, and a load split over them and put together. */
    private static Map<String, Quantity> reducedModel(Inputs in) {
        SymmetricMatrix stiffness = structure(in);
        double[][] shapes = new double[stiffness.order()][stiffness.order()];
        for (int i = 0; i < shapes.length; i++) {
            shapes[i][i] = 1;
        }
        ReducedModel model = ReducedModel.of(stiffness, ones(stiffness.order()), shapes);
        double[] load = new double[stiffness.order()];
        load[0] = 1;
        double[] q = model.reduce(load);
        for (int i = 0; i < q.length; i++) {
            q[i] /= model.circularFrequencies()[i] * model.circularFrequencies()[i];
        }
        return Map.of(
                "circular frequency 2",
                Quantity.of(model.circularFrequencies()[1]),
                "displacement under a unit force at the first",
                Quantity.of(model.expand(q)[0]));
    }

    private static LocalHistory against(
            double mass,
            LocalElement element,
            List<double[]> b,
            double load,
            double v,
            double end) {
        ReducedModel model =
                ReducedModel.of(
                        SymmetricMatrix.ofDiagonal(new double[] {0, 0}),
                        SymmetricMatrix.ofDiagonal(new double[] {mass, mass}),
                        new double[][] {{1, 0}, {0, 1}});
        double step = 1e-3;
        double[] record = new double[(int) Math.round(end / step) + 1];
        Arrays.fill(record, load);
        return new LocalMotion(
                        model, new double[2], List.of(new LocalMotion.Attachment(element, b)), step)
                .run(
                        List.of(new double[] {1, 0}),
                        List.of(record),
                        new double[2],
                        model.reduce(new double[] {mass * v, 0}),
                        Monitor.quiet());
    }

    private static Map<String, Quantity> pulled(Inputs in) {
        LocalHistory history =
                against(
                        in.si("mass"),
                        new SlidingBearing(in.si("friction"), 1e9, 0),
                        List.of(new double[] {1, 0}, new double[] {0, 1}),
                        in.si("pull"),
                        0,
                        in.si("time"));
        double[] path = history.displacement(0, 0);
        double[] force = history.force(0, 0);
        return Map.of(
                "path", Quantity.of(path[path.length - 1], "m"),
                "force of the bearing", Quantity.of(force[force.length - 1], "N"),
                "work of the pull", Quantity.of(history.energy().input(), "J"),
                "work of friction", Quantity.of(history.energy().dissipated(), "J"));
    }

    private static Map<String, Quantity> stopped(Inputs in) {
        LocalHistory history =
                against(
                        in.si("mass"),
                        new Gap(in.si("opening"), in.si("stiffness")),
                        List.of(new double[] {1, 0}),
                        0,
                        in.si("velocity"),
                        in.si("time"));
        double[] path = history.displacement(0, 0);
        double[] force = history.force(0, 0);
        return Map.of(
                "farthest", Quantity.of(Arrays.stream(path).max().orElseThrow(), "m"),
                "force there", Quantity.of(Arrays.stream(force).min().orElseThrow(), "N"),
                "place at the end", Quantity.of(path[path.length - 1], "m"),
                "energy in the stop", Quantity.of(history.energy().held(), "J"));
    }

    /** An oscillator that swings freely, far from any stop. */
    private static Map<String, Quantity> damped(Inputs in) {
        double mass = in.si("mass");
        double step = 1e-3;
        ReducedModel model =
                ReducedModel.of(
                        SymmetricMatrix.ofDiagonal(new double[] {in.si("stiffness")}),
                        SymmetricMatrix.ofDiagonal(new double[] {mass}),
                        new double[][] {{1}});
        LocalHistory history =
                new LocalMotion(
                                model,
                                new double[] {in.si("damping")},
                                List.of(
                                        new LocalMotion.Attachment(
                                                new Gap(1e6, 1), List.of(new double[] {1}))),
                                step)
                        .run(
                                List.of(new double[] {1}),
                                List.of(new double[(int) Math.round(in.si("time") / step) + 1]),
                                new double[1],
                                model.reduce(new double[] {mass * in.si("velocity")}),
                                Monitor.quiet());
        LocalHistory.Energy energy = history.energy();
        double[] path = history.displacement(0, 0);
        return Map.of(
                "place at the end", Quantity.of(path[path.length - 1], "m"),
                "energy at the start", Quantity.of(energy.start(), "J"),
                "energy at the end", Quantity.of(energy.mechanical(), "J"),
                "energy taken by damping", Quantity.of(energy.damped(), "J"));
    }

    private static DirectIntegration free(TimeScheme scheme, double step) {
        return new DirectIntegration(
                ones(1),
                ones(1),
                SymmetricMatrix.ofDiagonal(new double[1]),
                scheme,
                step,
                new double[] {1},
                new double[1],
                new double[1],
                Monitor.quiet());
    }

    private static Map<String, Quantity> scheme(Inputs in) {
        TimeScheme scheme = TimeScheme.hilberHughesTaylor(in.si("alpha"));
        if (in.has("step")) {
            // u₁ = cos(ω*h) u₀ where there is no damping of its own.
            double step = in.si("step");
            DirectIntegration motion = free(scheme, step);
            motion.advance(new double[1]);
            double turned = StrictMath.acos(motion.displacement()[0]);
            return Map.of("period elongation", Quantity.of(step / turned - 1));
        }
        return Map.of("radius at infinity", Quantity.of(radius(scheme, 1e5)));
    }

    /** Spectral radius of one step of an oscillator of frequency 1. */
    private static double radius(TimeScheme scheme, double step) {
        double alpha = scheme.alpha();
        double[][] amplification = new double[3][3];
        for (int column = 0; column < 3; column++) {
            double u = column == 0 ? 1 : 0;
            double v = column == 1 ? 1 / step : 0;
            // A load that gives the acceleration wanted at the start, then one that undoes it.
            double load = u + (column == 2 ? 1 / (step * step) : 0);
            DirectIntegration motion =
                    new DirectIntegration(
                            ones(1),
                            ones(1),
                            SymmetricMatrix.ofDiagonal(new double[1]),
                            scheme,
                            step,
                            new double[] {u},
                            new double[] {v},
                            new double[] {load},
                            Monitor.quiet());
            motion.advance(new double[] {alpha * load / (1 + alpha)});
            amplification[0][column] = motion.displacement()[0];
            amplification[1][column] = motion.velocity()[0] * step;
            amplification[2][column] = motion.acceleration()[0] * step * step;
        }
        EigenDecomposition found = new EigenDecomposition(new Array2DRowRealMatrix(amplification));
        double most = 0;
        for (int i = 0; i < 3; i++) {
            double re = found.getRealEigenvalue(i);
            double im = found.getImagEigenvalue(i);
            most = Math.max(most, Math.sqrt(re * re + im * im));
        }
        return most;
    }

    private static Map<String, Quantity> condensation(Inputs in) {
        in.text("beam");
        int elements = whole(in, "elements");
        boolean[] held = new boolean[2 * elements + 2];
        held[0] = true;
        held[1] = true;
        double l = 1.0 / elements;
        StaticCondensation found =
                StaticCondensation.of(
                        beam(elements, held, bending(l)),
                        new int[] {2 * elements - 2},
                        Monitor.quiet());
        // A unit force in the middle, on an unknown that was condensed.
        double[] load = new double[2 * elements];
        load[elements - 2] = 1;
        double tip = found.reduce(load)[0] / found.stiffness()[0][0];
        return Map.of(
                "tip stiffness", Quantity.of(found.stiffness()[0][0]),
                "tip mass", Quantity.of(found.reduce(beam(elements, held, inertia(l)))[0][0]),
                "tip under a force in the middle", Quantity.of(tip),
                "middle under a force in the middle",
                        Quantity.of(found.expand(new double[] {tip}, load)[elements - 2]));
    }

    private static LocalHistory released(
            double mass, double stiffness, SlidingBearing bearing, double start, double step) {
        ReducedModel model =
                ReducedModel.of(
                        SymmetricMatrix.ofDiagonal(new double[] {stiffness, stiffness}),
                        SymmetricMatrix.ofDiagonal(new double[] {mass, mass}),
                        new double[][] {{1, 0}, {0, 1}});
        LocalMotion motion =
                new LocalMotion(
                        model,
                        new double[2],
                        List.of(
                                new LocalMotion.Attachment(
                                        bearing,
                                        List.of(new double[] {1, 0}, new double[] {0, 1}))),
                        step);
        double[] at = model.reduce(new double[] {mass * start, 0});
        return motion.run(
                List.of(new double[2]),
                List.of(new double[(int) Math.round(30 / step)]),
                at,
                new double[2],
                Monitor.quiet());
    }

    private static Map<String, Quantity> localMotion(Inputs in) {
        if (in.has("radius")) {
            double mass = 1000;
            double step = in.si("step");
            SlidingBearing bearing = new SlidingBearing(1e-12, 1, mass * GRAVITY / in.si("radius"));
            double[] d = released(mass, 0, bearing, 0.1, step).displacement(0, 0);
            List<Double> crossings = new ArrayList<>();
            for (int n = 1; n < d.length; n++) {
                if (d[n - 1] > 0 && d[n] <= 0) {
                    crossings.add((n - 1 + d[n - 1] / (d[n - 1] - d[n])) * step);
                }
            }
            int cycles = crossings.size() - 1;
            double period = (crossings.get(cycles) - crossings.get(0)) / cycles;
            return Map.of("period", Quantity.of(period, "s"));
        }
        SlidingBearing bearing = new SlidingBearing(in.si("friction"), 1e7, 0);
        double step = in.has("step") ? in.si("step") : 0.001;
        LocalHistory history =
                released(in.si("mass"), in.si("stiffness"), bearing, in.si("start"), step);
        if (!in.has("turn")) {
            return Map.of("imbalance", Quantity.of(history.energy().imbalance()));
        }
        double[] d = history.displacement(0, 0);
        int wanted = whole(in, "turn");
        for (int n = 1; n + 1 < d.length; n++) {
            if ((d[n] - d[n - 1]) * (d[n + 1] - d[n]) < 0 && --wanted == 0) {
                return Map.of("turning point", Quantity.of(d[n], "m"));
            }
        }
        throw new IllegalArgumentException("it does not turn so often");
    }

    private static Map<String, Quantity> slidingBearing(Inputs in) {
        double amplitude = in.si("amplitude");
        int steps = whole(in, "steps");
        boolean circle = in.text("path").equals("circle");
        SlidingBearing bearing = new SlidingBearing(in.si("friction"), in.si("stick stiffness"), 0);
        if (in.text("path").equals("corner")) {
            return Map.of(
                    "energy after the corner",
                    Quantity.of(afterCorner(bearing, amplitude, steps), "J"));
        }
        double[] state = new double[2];
        double[] next = new double[2];
        double[] mean = new double[2];
        double[] from = {0, circle ? -amplitude : 0};
        double work = 0;
        // Turns after which the start is forgotten, then one that is measured.
        for (int n = 1; n <= 4 * steps; n++) {
            double angle = TWO_PI * (n % steps) / steps;
            double[] to = {
                amplitude * StrictMath.sin(angle), circle ? -amplitude * StrictMath.cos(angle) : 0
            };
            bearing.follow(state, 0, from, to, 0, next, mean);
            if (n > 3 * steps) {
                work -= mean[0] * (to[0] - from[0]) + mean[1] * (to[1] - from[1]);
            }
            double[] swap = state;
            state = next;
            next = swap;
            from = to;
        }
        return Map.of("energy of a cycle", Quantity.of(work, "J"));
    }

    /** Slides along x, then as far along y, and gives the work of the second way. */
    private static double afterCorner(SlidingBearing bearing, double way, int steps) {
        double[] state = new double[2];
        double[] mean = new double[2];
        double[] from = new double[2];
        double work = 0;
        for (int n = 1; n <= 2 * steps; n++) {
            double[] to = {way * Math.min(n, steps) / steps, way * Math.max(0, n - steps) / steps};
            double[] next = new double[2];
            bearing.follow(state, 0, from, to, 0, next, mean);
            work -= mean[1] * (to[1] - from[1]);
            state = next;
            from = to;
        }
        return work;
    }
}
