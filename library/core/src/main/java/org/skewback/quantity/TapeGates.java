package org.skewback.quantity;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

/**
 * Which branches a sample must take for an instruction to matter.
 *
 * <p>The branches form a tree; an instruction belongs to the deepest branch that holds everything
 * that uses it.
 */
final class TapeGates {

    private static final int ROOT = 0;
    private static final int UNUSED = -1;

    private final Instruction[] instructions;

    /** The branch of each instruction: 0 outside all, else 1 + 2 · choice + (side − 2). */
    private final int[] branches;

    private final int[] depths;

    TapeGates(Instruction[] instructions, int[] outputs) {
        this.instructions = instructions;
        branches = new int[instructions.length];
        depths = new int[1 + 2 * instructions.length];
        Arrays.fill(branches, UNUSED);
        for (int output : outputs) {
            branches[output] = ROOT;
        }
        for (int v = instructions.length - 1; v >= 0; v--) {
            if (branches[v] != UNUSED) {
                spread(v);
            }
        }
    }

    private void spread(int v) {
        int[] operands = instructions[v].operands;
        boolean choice = instructions[v].operation == Operation.CHOOSE;
        for (int k = 0; k < operands.length; k++) {
            if (operands[k] != Instruction.ABSENT) {
                int branch = branches[v];
                if (choice && k >= 2) {
                    branch = 1 + 2 * v + (k - 2);
                    depths[branch] = depths[branches[v]] + 1;
                }
                int known = branches[operands[k]];
                branches[operands[k]] = known == UNUSED ? branch : common(known, branch);
            }
        }
    }

    private int common(int a, int b) {
        int one = a;
        int other = b;
        while (one != other) {
            if (depths[one] >= depths[other]) {
                one = branches[choice(one)];
            } else {
                other = branches[choice(other)];
            }
        }
        return one;
    }

    private static int choice(int branch) {
        return (branch - 1) / 2;
    }

    private static int side(int branch) {
        return 2 + (branch - 1) % 2;
    }

    /** For each call inside branches the choices and their sides, in pairs. */
    Map<Integer, int[]> ofCalls() {
        Map<Integer, int[]> gates = new HashMap<>();
        for (int v = 0; v < instructions.length; v++) {
            if (instructions[v].operation == Operation.ROUTINE && branches[v] > ROOT) {
                gates.put(v, gates(v));
            }
        }
        return gates;
    }

    private int[] gates(int call) {
        int[] pairs = new int[2 * depths[branches[call]]];
        int used = 0;
        for (int branch = branches[call]; branch != ROOT; branch = branches[choice(branch)]) {
            int[] operands = instructions[choice(branch)].operands;
            // A condition that is known only after the call cannot spare it.
            if (isKnown(operands[0], call) && isKnown(operands[1], call)) {
                pairs[used++] = choice(branch);
                pairs[used++] = side(branch);
            }
        }
        return Arrays.copyOf(pairs, used);
    }

    private boolean isKnown(int value, int call) {
        return value < call || instructions[value].isConstant();
    }
}
