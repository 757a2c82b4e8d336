package org.skewback.quantity;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The instructions of a tape, and where their values are kept.
 *
 * <p>In plain evaluation values share slots as soon as nothing needs them any more, so that a block
 * stays in the processor's cache; a backward pass needs every value, so there each has its own.
 */
final class TapeProgram {

    final Instruction[] instructions;
    final Quantity[] origins;
    final int[] outputs;
    final int inputCount;

    /** Slot of each value in plain evaluation. */
    final int[] slots;

    final int slotCount;

    /** Slot of each value when nothing is shared. */
    final int[] ownSlots;

    /** Slot of the derivative by each value in a backward pass; −1 where none is needed. */
    final int[] adjointSlots;

    final int adjointSlotCount;

    /** For a sine the cosine of the same operand and so on, or −1. */
    final int[] partners;

    /** For a call inside branches the choices and the sides of them that lead to it, in pairs. */
    final Map<Integer, int[]> gates;

    TapeProgram(List<Instruction> instructions, List<Quantity> origins, int[] outputs, int inputs) {
        this.instructions = instructions.toArray(new Instruction[0]);
        this.origins = origins.toArray(new Quantity[0]);
        this.outputs = outputs;
        this.inputCount = inputs;
        int count = this.instructions.length;
        ownSlots = new int[count];
        Arrays.setAll(ownSlots, v -> v);
        gates = new TapeGates(this.instructions, outputs).ofCalls();
        slots = new int[count];
        slotCount = shareSlots();
        adjointSlots = new int[count];
        adjointSlotCount = shareAdjointSlots();
        partners = partners();
    }

    boolean isConstant(int value) {
        return instructions[value].isConstant();
    }

    /** Numbers that a backward pass keeps for each sample. */
    long numbersBackward() {
        long numbers = (long) instructions.length + adjointSlotCount;
        for (Instruction instruction : instructions) {
            if (instruction.operation == Operation.ROUTINE) {
                numbers += (long) instruction.call().results().size() * instruction.operands.length;
            }
        }
        return numbers;
    }

    private boolean isCall(int value) {
        return instructions[value].operation == Operation.ROUTINE;
    }

    private boolean isResult(int value) {
        return instructions[value].operation == Operation.NAMED;
    }

    private int shareSlots() {
        int count = instructions.length;
        int[] lastUse = new int[count];
        Arrays.setAll(lastUse, v -> v);
        for (int v = 0; v < count; v++) {
            for (int operand : instructions[v].operands) {
                if (operand != Instruction.ABSENT) {
                    lastUse[operand] = v;
                }
            }
        }
        gates.forEach(
                (call, pairs) -> {
                    for (int i = 0; i < pairs.length; i += 2) {
                        for (int side : Arrays.copyOf(instructions[pairs[i]].operands, 2)) {
                            lastUse[side] = Math.max(lastUse[side], call);
                        }
                    }
                });
        for (int v = 0; v < count; v++) {
            if (isConstant(v)) {
                lastUse[v] = count;
            }
        }
        for (int output : outputs) {
            lastUse[output] = count;
        }
        Slots free = new Slots();
        Arrays.fill(slots, -1);
        for (int v = 0; v < count; v++) {
            if (isConstant(v) || v < inputCount) {
                slots[v] = free.take();
            }
        }
        for (int v = 0; v < count; v++) {
            if (isCall(v)) {
                // The results are written while the inputs are still wanted.
                slots[v] = free.take();
                for (int k = 1; k <= instructions[v].call().results().size(); k++) {
                    slots[v + k] = free.take();
                }
            }
            if (!isResult(v)) {
                release(instructions[v].operands, v, lastUse, free);
            }
            if (slots[v] < 0) {
                slots[v] = free.take();
            }
            if (lastUse[v] == v) {
                free.give(slots[v]);
            }
        }
        return free.count;
    }

    private void release(int[] operands, int at, int[] lastUse, Slots free) {
        for (int i = 0; i < operands.length; i++) {
            int operand = operands[i];
            boolean repeated = false;
            for (int j = 0; j < i; j++) {
                repeated |= operands[j] == operand;
            }
            if (operand != Instruction.ABSENT && !repeated && lastUse[operand] == at) {
                free.give(slots[operand]);
            }
        }
    }

    private int shareAdjointSlots() {
        Slots free = new Slots();
        Arrays.fill(adjointSlots, -1);
        for (int output : outputs) {
            takeAdjoint(output, free);
        }
        for (int v = instructions.length - 1; v >= 0; v--) {
            if (!isResult(v)) {
                for (int operand : instructions[v].operands) {
                    if (operand != Instruction.ABSENT) {
                        takeAdjoint(operand, free);
                    }
                }
            }
            if (isCall(v)) {
                for (int k = 1; k <= instructions[v].call().results().size(); k++) {
                    free.give(adjointSlots[v + k]);
                }
            } else if (!isResult(v) && v >= inputCount) {
                free.give(adjointSlots[v]);
            }
        }
        return free.count;
    }

    private void takeAdjoint(int value, Slots free) {
        if (adjointSlots[value] < 0 && !isConstant(value)) {
            adjointSlots[value] = free.take();
        }
    }

    private int[] partners() {
        Map<Instruction, Integer> byContent = new HashMap<>();
        for (int v = 0; v < instructions.length; v++) {
            byContent.put(instructions[v], v);
        }
        int[] found = new int[instructions.length];
        for (int v = 0; v < found.length; v++) {
            Operation partner =
                    switch (instructions[v].operation) {
                        case SIN -> Operation.COS;
                        case COS -> Operation.SIN;
                        case SINH -> Operation.COSH;
                        case COSH -> Operation.SINH;
                        default -> Operation.VALUE;
                    };
            found[v] =
                    partner == Operation.VALUE
                            ? -1
                            : byContent.getOrDefault(
                                    new Instruction(partner, null, instructions[v].operands), -1);
        }
        return found;
    }

    /** Numbers that are taken, given back and taken again. */
    private static final class Slots {
        private final Deque<Integer> given = new ArrayDeque<>();
        int count;

        int take() {
            Integer again = given.pollLast();
            return again != null ? again : count++;
        }

        void give(int slot) {
            if (slot >= 0) {
                given.addLast(slot);
            }
        }
    }

    /** Removes what no output needs; inputs stay. */
    static TapeProgram pruned(
            List<Instruction> all, List<Quantity> origins, int[] outputs, int inputCount) {
        boolean[] live = new boolean[all.size()];
        Arrays.fill(live, 0, inputCount, true);
        for (int output : outputs) {
            live[output] = true;
        }
        for (int v = all.size() - 1; v >= 0; v--) {
            if (live[v]) {
                for (int operand : all.get(v).operands) {
                    if (operand != Instruction.ABSENT) {
                        live[operand] = true;
                    }
                }
            }
        }
        int[] places = new int[all.size()];
        List<Instruction> kept = new ArrayList<>();
        List<Quantity> keptOrigins = new ArrayList<>();
        for (int v = 0; v < places.length; v++) {
            Instruction instruction = all.get(v);
            if (live[v]
                    || (instruction.operation == Operation.NAMED
                            && live[instruction.operands[0]])) {
                places[v] = kept.size();
                kept.add(instruction.moved(places));
                keptOrigins.add(origins.get(v));
            }
        }
        int[] moved = Arrays.stream(outputs).map(output -> places[output]).toArray();
        return new TapeProgram(kept, keptOrigins, moved, inputCount);
    }
}
