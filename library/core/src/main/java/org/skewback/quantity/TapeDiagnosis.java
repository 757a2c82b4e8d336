package org.skewback.quantity;

import java.util.List;

/** Finds out for one sample why an output has no finite value, and says so. */
final class TapeDiagnosis {

    private static final int INPUTS_SHOWN = 8;

    private final TapeProgram program;
    private final List<Quantity> inputs;
    private final double[][] sample;
    private final TapeForward forward;

    TapeDiagnosis(TapeProgram program, List<Quantity> inputs, double[][] sample) {
        this.program = program;
        this.inputs = inputs;
        this.sample = sample;
        forward = new TapeForward(program, false, 1);
        forward.run(sample, 0, 1);
    }

    /**
     * Gives what is to be thrown.
     *
     * @param output the instruction that gave no finite value
     * @param which the output and sample in words
     */
    RuntimeException of(int output, String which) {
        int v = output;
        int culprit = culprit(v);
        while (culprit >= 0) {
            v = culprit;
            culprit = culprit(v);
        }
        Instruction instruction = program.instructions[v];
        String start = which + " has no finite value: ";
        String end = " (" + inputsInWords() + ")";
        if (instruction.operation == Operation.CHOOSE) {
            return turned(instruction, v, which, end);
        } else if (instruction.operation == Operation.ROUTINE) {
            return refused(instruction, start, end);
        } else if (instruction.operation == Operation.INTERPOLATED) {
            int at = instruction.operands[0];
            return new ArithmeticException(
                    start + instruction.table().outside(operand(v, 0, at)) + end);
        }
        boolean byZero =
                instruction.operation == Operation.DIVIDE && value(instruction.operands[1]) == 0;
        StringBuilder operands = new StringBuilder();
        for (int k = 0; k < instruction.operands.length; k++) {
            operands.append(k == 0 ? "" : " and ").append(value(instruction.operands[k]));
        }
        return new ArithmeticException(
                start
                        + (byZero
                                ? "division by zero: "
                                : "no finite result of " + instruction.operation.published() + ": ")
                        + operands
                        + " in SI units"
                        + end);
    }

    /** The operand from which a value that is not finite came, or −1 where it arose itself. */
    private int culprit(int v) {
        Instruction instruction = program.instructions[v];
        int[] operands = instruction.operands;
        if (instruction.operation == Operation.NAMED) {
            return operands[0];
        }
        int wanted = instruction.operation == Operation.CHOOSE ? 2 : operands.length;
        for (int k = 0; k < wanted; k++) {
            if (!Double.isFinite(value(operands[k]))) {
                return operands[k];
            }
        }
        return instruction.operation == Operation.CHOOSE ? taken(instruction) : -1;
    }

    private int taken(Instruction choice) {
        int[] operands = choice.operands;
        return operands[choice.relation().holds(value(operands[0]), value(operands[1])) ? 2 : 3];
    }

    private double value(int v) {
        return forward.values(v)[0];
    }

    private GuardTurnedException turned(Instruction instruction, int v, String which, String end) {
        Guard guard = (Guard) program.origins[v].detail();
        if (guard == null) {
            throw new IllegalStateException("a choice without a condition");
        }
        Condition condition = guard.condition();
        Relation relation = condition.relation();
        return new GuardTurnedException(
                which
                        + " turns the condition "
                        + shown(condition.left(), condition.left().si())
                        + " "
                        + relation.sign()
                        + " "
                        + shown(condition.right(), condition.right().si())
                        + ", which "
                        + (guard.held() ? "held" : "did not hold")
                        + "; now it is "
                        + shown(condition.left(), value(instruction.operands[0]))
                        + " and "
                        + shown(condition.right(), value(instruction.operands[1]))
                        + ", and the other branch is not known: "
                        + absence(guard)
                        + end);
    }

    private static String absence(Guard guard) {
        String absence = guard.absence();
        return absence.isEmpty() ? "it lies too deep in other branches" : absence;
    }

    private RuntimeException refused(Instruction instruction, String start, String end) {
        CallSite site = instruction.call();
        double[] in = new double[instruction.operands.length];
        for (int j = 0; j < in.length; j++) {
            in[j] = value(instruction.operands[j]);
        }
        try {
            site.run(in, new double[site.results().size()]);
        } catch (RuntimeException e) {
            String message = start + e.getMessage() + end;
            return site.live() == null
                    ? new CannotTellException(message, e)
                    : (RuntimeException) new ArithmeticException(message).initCause(e);
        }
        return new ArithmeticException(
                start
                        + "routine "
                        + site.call().name()
                        + " gave a number that is not finite"
                        + end);
    }

    private String operand(int v, int which, int at) {
        List<Quantity> operands = program.origins[v].operands();
        return shown(operands.get(which), value(at));
    }

    private String inputsInWords() {
        StringBuilder words = new StringBuilder("with ");
        for (int i = 0; i < inputs.size(); i++) {
            if (i == INPUTS_SHOWN) {
                return words.append(" …").toString();
            }
            words.append(i == 0 ? "" : ", ").append(shown(inputs.get(i), sample[i][0]));
        }
        return inputs.isEmpty() ? "without inputs" : words.toString();
    }

    /** A quantity as it would print with another value. */
    static String shown(Quantity quantity, double si) {
        return quantity.withValue(si).brief();
    }
}
