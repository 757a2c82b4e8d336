package org.skewback.quantity;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Goes back from one output over a block that was worked out and gathers the derivatives, the reverse
 * accumulation of A. Griewank and A. Walther, Evaluating Derivatives, 2nd ed. 2008, section 3.2
 * (section number from memory).
 *
 * <p>A branch that a sample did not take has the derivative zero there, and may hold anything at all,
 * so zero is never multiplied into it.
 */
final class TapeBackward {

    /** Relative step of the central difference by an input of a routine, a power of two. */
    static final double STEP = 0x1p-16;

    private static final double LN_10 = StrictMath.log(10);

    private final TapeProgram program;
    private final TapeForward forward;
    private final double[][] memory;
    private final boolean[] touched;

    /** Whether the derivative by a value can be zero only by chance, not by a branch not taken. */
    private final boolean[] sure;

    private final double[] scratch;

    private final Map<Integer, CallSlopes> callSlopes = new HashMap<>();

    /** Derivatives of a call's results in one block, worked out where they are wanted. */
    private static final class CallSlopes {
        /** Derivatives [result][operand][sample]. */
        final double[][][] values;

        final boolean[] known;

        CallSlopes(int results, int operands, int length) {
            values = new double[results][operands][length];
            known = new boolean[length];
        }
    }

    TapeBackward(TapeProgram program, TapeForward forward, int length) {
        this.program = program;
        this.forward = forward;
        int count = program.instructions.length;
        memory = new double[program.adjointSlotCount][length];
        touched = new boolean[count];
        sure = new boolean[count];
        scratch = new double[length];
    }

    /** Forgets what it knows of the block before. */
    void start() {
        callSlopes.values().forEach(slopes -> Arrays.fill(slopes.known, false));
    }

    /** Gathers the derivatives of one output; they are then given by {@link #into}. */
    void run(int output, int n) {
        Arrays.fill(touched, false);
        Arrays.fill(sure, false);
        if (program.isConstant(output)) {
            return;
        }
        touched[output] = true;
        sure[output] = true;
        Arrays.fill(memory[program.adjointSlots[output]], 0, n, 1);
        for (int v = output; v >= program.inputCount; v--) {
            Instruction instruction = program.instructions[v];
            if (instruction.operation == Operation.ROUTINE) {
                call(instruction, v, n);
            } else if (touched[v] && instruction.isWork()) {
                pass(instruction, v, memory[program.adjointSlots[v]], n);
            }
        }
    }

    /** Writes the derivative by an input. */
    void into(int input, double[] target, int from, int n) {
        if (touched[input]) {
            System.arraycopy(memory[program.adjointSlots[input]], 0, target, from, n);
        } else {
            Arrays.fill(target, from, from + n, 0);
        }
    }

    private double @Nullable [] adjoint(int value, boolean surely, int n) {
        int slot = program.adjointSlots[value];
        if (slot < 0) {
            return null;
        }
        if (!touched[value]) {
            touched[value] = true;
            Arrays.fill(memory[slot], 0, n, 0);
        }
        sure[value] |= surely;
        return memory[slot];
    }

    private void pass(Instruction instruction, int v, double[] g, int n) {
        int[] operands = instruction.operands;
        switch (instruction.operation) {
            case ADD -> {
                add(adjoint(operands[0], sure[v], n), g, n);
                add(adjoint(operands[1], sure[v], n), g, n);
            }
            case SUBTRACT -> {
                add(adjoint(operands[0], sure[v], n), g, n);
                subtract(adjoint(operands[1], sure[v], n), g, n);
            }
            case NEGATE -> subtract(adjoint(operands[0], sure[v], n), g, n);
            case CHOOSE -> choose(instruction, g, n);
            case MIN, MAX -> extreme(instruction, g, n);
            case ABS, INTERPOLATED -> carefully(instruction, v, 0, false, g, n);
            default -> {
                if (sure[v] && isPlain(instruction)) {
                    plainly(instruction, v, g, n);
                } else {
                    for (int k = 0; k < operands.length; k++) {
                        carefully(instruction, v, k, sure[v], g, n);
                    }
                }
            }
        }
    }

    private static boolean isPlain(Instruction instruction) {
        return switch (instruction.operation) {
            case MULTIPLY, DIVIDE -> true;
            case POWER -> instruction.exponent().equals(Rational.HALF);
            default -> false;
        };
    }

    private void plainly(Instruction instruction, int v, double[] g, int n) {
        int[] operands = instruction.operands;
        double @Nullable [] first = adjoint(operands[0], true, n);
        double[] r = forward.values(v);
        if (instruction.operation == Operation.POWER) {
            halve(first, g, r, n);
            return;
        }
        double[] a = forward.values(operands[0]);
        double[] b = forward.values(operands[1]);
        double @Nullable [] second = adjoint(operands[1], true, n);
        if (instruction.operation == Operation.MULTIPLY) {
            addProduct(first, g, b, n);
            addProduct(second, g, a, n);
        } else {
            divide(scratch, g, b, n);
            add(first, scratch, n);
            subtractProduct(second, scratch, r, n);
        }
    }

    private static void add(double @Nullable [] into, double[] g, int n) {
        if (into == null) {
            return;
        }
        for (int i = 0; i < n; i++) {
            into[i] += g[i];
        }
    }

    private static void subtract(double @Nullable [] into, double[] g, int n) {
        if (into == null) {
            return;
        }
        for (int i = 0; i < n; i++) {
            into[i] -= g[i];
        }
    }

    private static void addProduct(double @Nullable [] into, double[] g, double[] x, int n) {
        if (into == null) {
            return;
        }
        for (int i = 0; i < n; i++) {
            into[i] += g[i] * x[i];
        }
    }

    private static void subtractProduct(double @Nullable [] into, double[] g, double[] x, int n) {
        if (into == null) {
            return;
        }
        for (int i = 0; i < n; i++) {
            into[i] -= g[i] * x[i];
        }
    }

    private static void divide(double[] into, double[] g, double[] x, int n) {
        for (int i = 0; i < n; i++) {
            into[i] = g[i] / x[i];
        }
    }

    /** The derivative of a root r is 1/(2 r). */
    private static void halve(double @Nullable [] into, double[] g, double[] r, int n) {
        if (into == null) {
            return;
        }
        for (int i = 0; i < n; i++) {
            into[i] += g[i] * (0.5 / r[i]);
        }
    }

    private void choose(Instruction instruction, double[] g, int n) {
        int[] operands = instruction.operands;
        double[] left = forward.values(operands[0]);
        double[] right = forward.values(operands[1]);
        for (int k = 2; k < 4; k++) {
            double @Nullable [] into =
                    operands[k] == Instruction.ABSENT ? null : adjoint(operands[k], false, n);
            if (into != null) {
                for (int i = 0; i < n; i++) {
                    if (instruction.relation().holds(left[i], right[i]) == (k == 2)) {
                        into[i] += g[i];
                    }
                }
            }
        }
    }

    /** At a tie each of the two has half: the mean of both sides, as for |x| at zero. */
    private void extreme(Instruction instruction, double[] g, int n) {
        int[] operands = instruction.operands;
        double sign = instruction.operation == Operation.MAX ? 1 : -1;
        for (int k = 0; k < 2; k++) {
            double @Nullable [] into = adjoint(operands[k], false, n);
            if (into != null) {
                double[] mine = forward.values(operands[k]);
                double[] theirs = forward.values(operands[1 - k]);
                for (int i = 0; i < n; i++) {
                    if (mine[i] == theirs[i]) {
                        into[i] += 0.5 * g[i];
                    } else if (sign * mine[i] > sign * theirs[i]) {
                        into[i] += g[i];
                    }
                }
            }
        }
    }

    private void carefully(
            Instruction instruction, int v, int which, boolean surely, double[] g, int n) {
        double @Nullable [] into = adjoint(instruction.operands[which], surely, n);
        if (into == null) {
            return;
        }
        double[] a = forward.values(instruction.operands[0]);
        double[] b = instruction.operands.length == 2 ? forward.values(instruction.operands[1]) : a;
        double[] r = forward.values(v);
        int partner = program.partners[v];
        double[] co = partner < 0 ? r : forward.values(partner);
        for (int i = 0; i < n; i++) {
            if (g[i] != 0) {
                double slope =
                        partner < 0
                                ? slope(instruction, which, a[i], b[i], r[i])
                                : instruction.operation == Operation.COS ? -co[i] : co[i];
                into[i] += g[i] * slope;
            }
        }
    }

    private static double slope(Instruction instruction, int which, double a, double b, double r) {
        return switch (instruction.operation) {
            case MULTIPLY -> which == 0 ? b : a;
            case DIVIDE -> which == 0 ? 1 / b : -r / b;
            case ABS -> Math.signum(a);
            case INTERPOLATED -> instruction.table().slope(a);
            case POWER -> power(a, r, instruction.exponent());
            case EXP -> r;
            case LN -> 1 / a;
            case LOG10 -> 1 / (a * LN_10);
            case SIN -> StrictMath.cos(a);
            case COS -> -StrictMath.sin(a);
            case TAN -> 1 + r * r;
            case ASIN -> 1 / Math.sqrt((1 - a) * (1 + a));
            case ACOS -> -1 / Math.sqrt((1 - a) * (1 + a));
            case ATAN -> 1 / (1 + a * a);
            case SINH -> StrictMath.cosh(a);
            case COSH -> StrictMath.sinh(a);
            case TANH -> (1 - r) * (1 + r);
            case ASINH -> 1 / StrictMath.hypot(1, a);
            case ACOSH -> 1 / (Math.sqrt(a - 1) * Math.sqrt(a + 1));
            default -> throw new IllegalStateException(instruction.operation + " has no slope");
        };
    }

    private static double power(double a, double r, Rational exponent) {
        if (exponent.numerator() == 0) {
            return 0;
        }
        if (exponent.equals(Rational.HALF)) {
            return 0.5 / r;
        }
        double e = (double) exponent.numerator() / exponent.denominator();
        return e
                * (exponent.isWhole()
                        ? Powers.whole(a, exponent.numerator() - 1)
                        : exponent.numerator() == 1 && exponent.denominator() == 3
                                ? 1 / (r * r)
                                : StrictMath.pow(a, e - 1));
    }

    private void call(Instruction instruction, int v, int n) {
        CallSite site = instruction.call();
        int results = site.results().size();
        boolean any = false;
        for (int k = 1; k <= results; k++) {
            any |= touched[v + k];
        }
        if (!any) {
            return;
        }
        int[] operands = instruction.operands;
        CallSlopes slopes =
                callSlopes.computeIfAbsent(
                        v, fresh -> new CallSlopes(results, operands.length, scratch.length));
        double[][] into = new double[operands.length][];
        for (int j = 0; j < operands.length; j++) {
            double @Nullable [] adjoint = adjoint(operands[j], false, n);
            into[j] = adjoint == null ? new double[0] : adjoint;
        }
        for (int i = 0; i < n; i++) {
            for (int k = 0; k < results; k++) {
                double g = touched[v + 1 + k] ? memory[program.adjointSlots[v + 1 + k]][i] : 0;
                if (g != 0) {
                    if (!slopes.known[i]) {
                        differences(instruction, i, slopes.values);
                        slopes.known[i] = true;
                    }
                    for (int j = 0; j < operands.length; j++) {
                        if (into[j].length > 0) {
                            into[j][i] += g * slopes.values[k][j][i];
                        }
                    }
                }
            }
        }
    }

    /** Central differences, second order in the step. */
    private void differences(Instruction instruction, int sample, double[][][] slopes) {
        CallSite site = instruction.call();
        int[] operands = instruction.operands;
        double[] in = new double[operands.length];
        for (int j = 0; j < in.length; j++) {
            in[j] = forward.values(operands[j])[sample];
        }
        double[] above = new double[slopes.length];
        double[] below = new double[slopes.length];
        for (int j = 0; j < in.length; j++) {
            if (program.adjointSlots[operands[j]] >= 0) {
                double at = in[j];
                double scale = at == 0 ? site.call().inputs().get(j).unit().factor() : Math.abs(at);
                double high = at + scale * STEP;
                double low = at - scale * STEP;
                in[j] = high;
                run(site, in, above);
                in[j] = low;
                run(site, in, below);
                in[j] = at;
                for (int k = 0; k < slopes.length; k++) {
                    slopes[k][j][sample] = (above[k] - below[k]) / (high - low);
                }
            }
        }
    }

    private static void run(CallSite site, double[] in, double[] out) {
        try {
            site.run(in, out);
        } catch (IllegalArgumentException e) {
            throw new ArithmeticException(
                    "the derivative of routine "
                            + site.call().name()
                            + " cannot be had by a central difference, which asks for values that"
                            + " it refuses: "
                            + e.getMessage());
        }
    }
}
