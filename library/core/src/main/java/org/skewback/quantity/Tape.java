package org.skewback.quantity;

import java.util.Arrays;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A graph compiled so that its outputs can be worked out for many values of its inputs.
 *
 * <pre>{@code
 * Tape tape = Tape.of(List.of(F), List.of(c, φ, z_w));
 * tape.evaluate(samples, count, results);            // arrays [input][sample], [output][sample]
 * double[][] slopes = tape.gradient(new double[] {c.si(), φ.si(), z_w.si()});
 * }</pre>
 *
 * <p>An input is any node of the graph, compared by identity: a given, or a named result, which is
 * then cut off from what it was calculated from. Everything that no input reaches is constant.
 * Values in and out are in SI base units: a reading of 20 °C is 293.15 K, and a derivative by it is by
 * kelvin. For the values that the graph has, the tape gives what the
 * graph gives to the last bit.
 *
 * <p>Both branches of {@link Quantity#choose} are compiled, and each sample takes its own. Where the
 * branch that the graph did not take cannot be had, a sample that wants it is refused with a {@link
 * GuardTurnedException}.
 *
 * <p>A routine is run again once for each sample that takes the branch it is in. One read from a
 * record is found by name and edition among those installed, and refused where it is not there.
 *
 * <p>A tape never gives what is not a number. A sample for which an output, or anything that the
 * output took, has no finite value ends in an {@link ArithmeticException} that names the output, the
 * sample and why.
 *
 * <p>Immutable and safe for use by several threads at once, if the routines it runs are: each call
 * has its own memory. A call ends with a {@link java.util.concurrent.CancellationException} soon
 * after its thread is interrupted.
 */
public final class Tape {

    /** Samples worked at a time: a few values of each fit the processor's first cache. */
    private static final int BLOCK = 512;

    /** Numbers of memory a call may take; a tape too long for it works in shorter blocks. */
    private static final int MOST_NUMBERS = 1 << 23;

    private final List<Quantity> outputs;
    private final List<Quantity> inputs;
    private final TapeProgram program;
    private final int operations;
    private final boolean routines;

    private Tape(List<Quantity> outputs, List<Quantity> inputs, TapeProgram program) {
        this.outputs = outputs;
        this.inputs = inputs;
        this.program = program;
        operations = (int) Arrays.stream(program.instructions).filter(Instruction::isWork).count();
        routines =
                Arrays.stream(program.instructions).anyMatch(i -> i.operation == Operation.ROUTINE);
    }

    /**
     * Compiles.
     *
     * @param outputs at least one quantity
     * @param inputs nodes of the graph, each once; one that the outputs do not reach is allowed and
     *     has the derivative zero
     * @return the tape
     * @throws IllegalArgumentException when there is no output or an input is named twice
     */
    public static Tape of(List<Quantity> outputs, List<Quantity> inputs) {
        if (outputs.isEmpty()) {
            throw new IllegalArgumentException("a tape has no outputs; allowed are one or more");
        }
        Set<Quantity> seen = Collections.newSetFromMap(new IdentityHashMap<>());
        for (Quantity input : inputs) {
            if (!seen.add(input)) {
                throw new IllegalArgumentException(
                        "the input " + input.brief() + " is named twice");
            }
        }
        List<Quantity> to = List.copyOf(outputs);
        List<Quantity> from = List.copyOf(inputs);
        return new Tape(to, from, TapeCompiler.compile(to, from));
    }

    /**
     * Works out the outputs for one set of inputs.
     *
     * @param inputs a finite value for each input, in SI base units
     * @return the value of each output, in SI base units
     * @throws IllegalArgumentException when there are more or fewer values than inputs, or one is not
     *     finite
     * @throws ArithmeticException when an output has no finite value
     * @throws GuardTurnedException when a condition turns whose other branch is not known
     * @throws CannotTellException when a routine is not here to be run again
     */
    public double[] evaluate(double[] inputs) {
        double[][] columns = columns(inputs);
        double[][] results = new double[outputs.size()][1];
        run(columns, 1, results, null);
        return first(results);
    }

    /**
     * Works out the outputs for many samples.
     *
     * @param inputs finite values [input][sample] in SI base units; a row may be longer than count
     * @param count how many samples, from 0
     * @param outputs where the values go, [output][sample], in SI base units; after an exception some
     *     of them are written
     * @throws IllegalArgumentException when an array is too short, or a value is not finite
     * @throws ArithmeticException when an output has no finite value; names output and sample
     * @throws GuardTurnedException when a condition turns whose other branch is not known
     * @throws CannotTellException when a routine is not here to be run again
     */
    public void evaluate(double[][] inputs, int count, double[][] outputs) {
        run(inputs, count, outputs, null);
    }

    /**
     * Works out the derivative of each output by each input.
     *
     * <p>One backward pass for each output; exact to rounding, but for routines, whose derivatives
     * are central differences with a step of 2⁻¹⁶ of the input's value (of its unit, where it is
     * zero). Derivatives follow the branch that is taken. At a tie, min and max have the mean of both
     * sides, as |x| has at zero and a table at a row.
     *
     * @param inputs a finite value for each input, in SI base units
     * @return derivatives [output][input] in SI base units
     * @throws IllegalArgumentException when there are more or fewer values than inputs, or one is not
     *     finite
     * @throws ArithmeticException when an output or a derivative has no finite value
     * @throws GuardTurnedException when a condition turns whose other branch is not known
     * @throws CannotTellException when a routine is not here to be run again
     */
    public double[][] gradient(double[] inputs) {
        double[][][] gradients = new double[outputs.size()][inputs.length][1];
        run(columns(inputs), 1, new double[outputs.size()][1], gradients);
        return Arrays.stream(gradients).map(Tape::first).toArray(double[][]::new);
    }

    /**
     * Works out outputs and derivatives for many samples; see {@link #gradient}.
     *
     * @param inputs finite values [input][sample] in SI base units; a row may be longer than count
     * @param count how many samples, from 0
     * @param outputs where the values go, [output][sample]
     * @param gradients where the derivatives go, [output][input][sample]
     * @throws IllegalArgumentException when an array is too short, or a value is not finite
     * @throws ArithmeticException when an output or a derivative has no finite value; names them and
     *     the sample
     * @throws GuardTurnedException when a condition turns whose other branch is not known
     * @throws CannotTellException when a routine is not here to be run again
     */
    public void evaluateWithGradient(
            double[][] inputs, int count, double[][] outputs, double[][][] gradients) {
        requireRows("gradients", gradients.length, this.outputs.size());
        for (double[][] gradient : gradients) {
            requireColumns("gradients", gradient, this.inputs.size(), count);
        }
        run(inputs, count, outputs, gradients);
    }

    /**
     * Gives the inputs.
     *
     * @return the inputs in order
     */
    public List<Quantity> inputs() {
        return inputs;
    }

    /**
     * Gives the outputs.
     *
     * @return the outputs in order
     */
    public List<Quantity> outputs() {
        return outputs;
    }

    /**
     * Gives the length of the tape.
     *
     * @return how many operations are worked for a sample; a routine counts as one
     */
    public int operations() {
        return operations;
    }

    /**
     * Tells whether the tape runs routines.
     *
     * @return whether derivatives are partly differences
     */
    public boolean hasRoutines() {
        return routines;
    }

    private void run(double[][] from, int count, double[][] to, double @Nullable [][][] gradients) {
        if (count < 0) {
            throw new IllegalArgumentException(
                    "the number of samples is " + count + "; allowed are 0 and more");
        }
        requireColumns("inputs", from, inputs.size(), count);
        requireColumns("outputs", to, outputs.size(), count);
        requireFinite(from, count);
        int length = Math.min(count, blockLength(gradients != null));
        TapeForward forward = new TapeForward(program, gradients == null, length);
        TapeBackward backward =
                gradients == null ? null : new TapeBackward(program, forward, length);
        for (int start = 0; start < count; start += length) {
            Stop.onInterrupt().check();
            int n = Math.min(length, count - start);
            forward.run(from, start, n);
            for (int k = 0; k < to.length; k++) {
                System.arraycopy(forward.values(program.outputs[k]), 0, to[k], start, n);
            }
            requireFiniteOutputs(from, start, n, to, count);
            if (backward != null && gradients != null) {
                backward.start();
                for (int k = 0; k < to.length; k++) {
                    backward.run(program.outputs[k], n);
                    for (int i = 0; i < from.length; i++) {
                        backward.into(i, gradients[k][i], start, n);
                        requireFiniteGradient(gradients[k][i], start, n, k, i, count);
                    }
                }
            }
        }
    }

    private int blockLength(boolean withGradient) {
        long each = withGradient ? program.numbersBackward() : program.slotCount;
        return (int) Math.max(1, Math.min(BLOCK, MOST_NUMBERS / Math.max(1, each)));
    }

    private double[][] columns(double[] values) {
        if (values.length != inputs.size()) {
            throw new IllegalArgumentException(
                    values.length + " values are given for " + inputs.size() + " inputs");
        }
        double[][] columns = new double[values.length][];
        for (int i = 0; i < values.length; i++) {
            columns[i] = new double[] {values[i]};
        }
        return columns;
    }

    private static double[] first(double[][] rows) {
        return Arrays.stream(rows).mapToDouble(row -> row[0]).toArray();
    }

    private static void requireRows(String what, int rows, int wanted) {
        if (rows != wanted) {
            throw new IllegalArgumentException(
                    "the array of " + what + " has " + rows + " rows; allowed: " + wanted);
        }
    }

    private static void requireColumns(String what, double[][] rows, int wanted, int count) {
        requireRows(what, rows.length, wanted);
        for (int i = 0; i < rows.length; i++) {
            if (rows[i].length < count) {
                throw new IllegalArgumentException(
                        "row "
                                + i
                                + " of the array of "
                                + what
                                + " has "
                                + rows[i].length
                                + " values; allowed: "
                                + count
                                + " or more");
            }
        }
    }

    private void requireFinite(double[][] from, int count) {
        for (int i = 0; i < from.length; i++) {
            int bad = notFinite(from[i], 0, count);
            if (bad >= 0) {
                throw new IllegalArgumentException(
                        name(inputs, i, "input")
                                + ofSample(bad, count)
                                + " is "
                                + from[i][bad]
                                + "; allowed are finite numbers");
            }
        }
    }

    private void requireFiniteOutputs(double[][] from, int start, int n, double[][] to, int count) {
        int sample = -1;
        int output = -1;
        for (int k = 0; k < to.length; k++) {
            int bad = notFinite(to[k], start, n);
            if (bad >= 0 && (sample < 0 || bad < sample)) {
                sample = bad;
                output = k;
            }
        }
        if (sample >= 0) {
            double[][] one = new double[from.length][];
            for (int i = 0; i < one.length; i++) {
                one[i] = new double[] {from[i][sample]};
            }
            throw new TapeDiagnosis(program, inputs, one)
                    .of(
                            program.outputs[output],
                            name(outputs, output, "output") + ofSample(sample, count));
        }
    }

    private void requireFiniteGradient(
            double[] gradient, int start, int n, int output, int input, int count) {
        int bad = notFinite(gradient, start, n);
        if (bad >= 0) {
            throw new ArithmeticException(
                    "the derivative of "
                            + name(outputs, output, "output")
                            + " by "
                            + name(inputs, input, "input")
                            + ofSample(bad, count)
                            + " is not finite");
        }
    }

    private static int notFinite(double[] values, int from, int n) {
        for (int i = from; i < from + n; i++) {
            if (!(Math.abs(values[i]) <= Double.MAX_VALUE)) {
                return i;
            }
        }
        return -1;
    }

    private static String name(List<Quantity> quantities, int position, String kind) {
        String symbol = quantities.get(position).symbol();
        return symbol != null ? symbol : kind + " " + position;
    }

    private static String ofSample(int sample, int count) {
        return count == 1 ? "" : " of sample " + sample;
    }
}
