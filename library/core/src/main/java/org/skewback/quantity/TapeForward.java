package org.skewback.quantity;

import java.util.Arrays;

/**
 * Works out a block of samples.
 *
 * <p>Nothing is thrown on the way. What is not finite spreads through every instruction up to the
 * outputs, where it is found: instructions that would swallow it, as x/∞ would, give NaN instead. A
 * choice passes on the branch that was taken and nothing of the other.
 */
final class TapeForward {

    private final TapeProgram program;
    private final int[] slots;
    private final double[][] memory;

    /**
     * Sets up memory.
     *
     * @param shared whether values share slots, so that only outputs are kept
     */
    TapeForward(TapeProgram program, boolean shared, int length) {
        this.program = program;
        slots = shared ? program.slots : program.ownSlots;
        memory = new double[shared ? program.slotCount : slots.length][length];
        for (int v = 0; v < slots.length; v++) {
            if (program.isConstant(v)) {
                Arrays.fill(memory[slots[v]], program.instructions[v].constant());
            }
        }
    }

    double[] values(int value) {
        return memory[slots[value]];
    }

    void run(double[][] inputs, int from, int n) {
        for (int i = 0; i < inputs.length; i++) {
            System.arraycopy(inputs[i], from, values(i), 0, n);
        }
        for (int v = inputs.length; v < slots.length; v++) {
            Instruction instruction = program.instructions[v];
            if (instruction.isWork()) {
                work(instruction, v, n);
            }
        }
    }

    private void work(Instruction instruction, int v, int n) {
        int[] operands = instruction.operands;
        double[] r = values(v);
        switch (instruction.operation) {
            case CHOOSE -> choose(instruction, r, n);
            case ROUTINE -> call(instruction, v, n);
            default -> {
                double[] a = values(operands[0]);
                if (operands.length == 2) {
                    binary(instruction, r, a, values(operands[1]), n);
                } else {
                    unary(instruction, r, a, n);
                }
            }
        }
    }

    private void binary(Instruction instruction, double[] r, double[] a, double[] b, int n) {
        switch (instruction.operation) {
            case ADD -> add(r, a, b, n);
            case SUBTRACT -> subtract(r, a, b, n);
            case MULTIPLY -> multiply(r, a, b, n);
            case DIVIDE -> {
                int divisor = instruction.operands[1];
                if (divisor < program.inputCount || program.isConstant(divisor)) {
                    divide(r, a, b, n);
                } else {
                    divideByAny(r, a, b, n);
                }
            }
            case MIN -> min(r, a, b, n);
            case MAX -> max(r, a, b, n);
            default -> throw new IllegalStateException(instruction.operation + " of two");
        }
    }

    private static void unary(Instruction instruction, double[] r, double[] a, int n) {
        switch (instruction.operation) {
            case NEGATE -> negate(r, a, n);
            case ABS -> abs(r, a, n);
            case POWER -> {
                if (instruction.exponent().equals(Rational.HALF)) {
                    root(r, a, n);
                } else {
                    power(r, a, instruction.exponent(), n);
                }
            }
            case INTERPOLATED -> {
                InterpolationTable table = instruction.table();
                for (int i = 0; i < n; i++) {
                    r[i] = table.value(a[i]);
                }
            }
            default -> function(instruction.operation, r, a, n);
        }
    }

    private static void add(double[] r, double[] a, double[] b, int n) {
        for (int i = 0; i < n; i++) {
            r[i] = a[i] + b[i];
        }
    }

    private static void subtract(double[] r, double[] a, double[] b, int n) {
        for (int i = 0; i < n; i++) {
            r[i] = a[i] - b[i];
        }
    }

    private static void multiply(double[] r, double[] a, double[] b, int n) {
        for (int i = 0; i < n; i++) {
            r[i] = a[i] * b[i];
        }
    }

    private static void divide(double[] r, double[] a, double[] b, int n) {
        for (int i = 0; i < n; i++) {
            r[i] = a[i] / b[i];
        }
    }

    /** The factor is exactly 1 for every finite divisor, and NaN for the others. */
    private static void divideByAny(double[] r, double[] a, double[] b, int n) {
        for (int i = 0; i < n; i++) {
            r[i] = a[i] / b[i] * (1 + b[i] * 0.0);
        }
    }

    private static void min(double[] r, double[] a, double[] b, int n) {
        for (int i = 0; i < n; i++) {
            r[i] = Math.min(a[i], b[i]) * (1 + a[i] * 0.0) * (1 + b[i] * 0.0);
        }
    }

    private static void max(double[] r, double[] a, double[] b, int n) {
        for (int i = 0; i < n; i++) {
            r[i] = Math.max(a[i], b[i]) * (1 + a[i] * 0.0) * (1 + b[i] * 0.0);
        }
    }

    private static void negate(double[] r, double[] a, int n) {
        for (int i = 0; i < n; i++) {
            r[i] = -a[i];
        }
    }

    private static void abs(double[] r, double[] a, int n) {
        for (int i = 0; i < n; i++) {
            r[i] = Math.abs(a[i]);
        }
    }

    private static void root(double[] r, double[] a, int n) {
        for (int i = 0; i < n; i++) {
            r[i] = Math.sqrt(a[i]);
        }
    }

    private static void power(double[] r, double[] a, Rational exponent, int n) {
        for (int i = 0; i < n; i++) {
            r[i] = Double.isFinite(a[i]) ? Powers.of(a[i], exponent) : Double.NaN;
        }
    }

    private static void function(Operation operation, double[] r, double[] a, int n) {
        for (int i = 0; i < n; i++) {
            r[i] = Double.isFinite(a[i]) ? operation.function(a[i]) : Double.NaN;
        }
    }

    private void choose(Instruction instruction, double[] r, int n) {
        int[] operands = instruction.operands;
        Relation relation = instruction.relation();
        double[] left = values(operands[0]);
        double[] right = values(operands[1]);
        for (int i = 0; i < n; i++) {
            double x = left[i];
            double y = right[i];
            int branch = operands[relation.holds(x, y) ? 2 : 3];
            boolean known =
                    branch != Instruction.ABSENT && Double.isFinite(x) && Double.isFinite(y);
            r[i] = known ? values(branch)[i] : Double.NaN;
        }
    }

    private void call(Instruction instruction, int v, int n) {
        CallSite site = instruction.call();
        double[] in = new double[instruction.operands.length];
        double[] out = new double[site.results().size()];
        int[] gates = program.gates.getOrDefault(v, new int[0]);
        for (int i = 0; i < n; i++) {
            if (!leadsTo(gates, i)) {
                for (int k = 0; k < out.length; k++) {
                    values(v + 1 + k)[i] = Double.NaN;
                }
                continue;
            }
            for (int j = 0; j < in.length; j++) {
                in[j] = values(instruction.operands[j])[i];
            }
            site.runOrSpoil(in, out);
            for (int k = 0; k < out.length; k++) {
                values(v + 1 + k)[i] = out[k];
            }
        }
    }

    private boolean leadsTo(int[] gates, int sample) {
        for (int g = 0; g < gates.length; g += 2) {
            Instruction choice = program.instructions[gates[g]];
            double left = values(choice.operands[0])[sample];
            double right = values(choice.operands[1])[sample];
            if (choice.relation().holds(left, right) != (gates[g + 1] == 2)) {
                return false;
            }
        }
        return true;
    }
}
