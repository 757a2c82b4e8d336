package org.skewback.quantity;

import java.util.Arrays;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * One instruction of a tape. It gives one value, which has the instruction's own position.
 *
 * <ul>
 *   <li>GIVEN: an input; the detail is its position among the inputs.
 *   <li>VALUE: a constant; the detail is its value.
 *   <li>CHOOSE: operands are both sides of the condition, the value where it holds and the value
 *       where it does not, or {@link #ABSENT}; the detail is the relation.
 *   <li>ROUTINE: a call; the detail is the {@link CallSite}. It gives no value of its own: the
 *       results follow it.
 *   <li>NAMED: the next result of the call that is its operand; the detail is the result's position.
 *   <li>All others: as in the graph, with one operand or two.
 * </ul>
 */
final class Instruction {

    static final int ABSENT = -1;

    final Operation operation;
    final int[] operands;
    final @Nullable Object detail;

    Instruction(Operation operation, @Nullable Object detail, int... operands) {
        this.operation = operation;
        this.detail = detail;
        this.operands = operands;
    }

    static Instruction constant(double value) {
        return new Instruction(Operation.VALUE, value);
    }

    boolean isConstant() {
        return operation == Operation.VALUE;
    }

    boolean isConstant(double value) {
        return isConstant() && constant() == value;
    }

    double constant() {
        return (Double) detail();
    }

    Rational exponent() {
        return (Rational) detail();
    }

    Relation relation() {
        return (Relation) detail();
    }

    InterpolationTable table() {
        return (InterpolationTable) detail();
    }

    CallSite call() {
        return (CallSite) detail();
    }

    private Object detail() {
        return Objects.requireNonNull(detail);
    }

    /** Whether it is worked out for each sample, rather than given. */
    boolean isWork() {
        return switch (operation) {
            case GIVEN, VALUE, NAMED -> false;
            default -> true;
        };
    }

    /** The same instruction when what it refers to has moved. */
    Instruction moved(int[] places) {
        int[] moved = new int[operands.length];
        for (int i = 0; i < moved.length; i++) {
            moved[i] = operands[i] == ABSENT ? ABSENT : places[operands[i]];
        }
        return new Instruction(operation, detail, moved);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Instruction that
                && operation == that.operation
                && Arrays.equals(operands, that.operands)
                && Objects.equals(detail, that.detail);
    }

    @Override
    public int hashCode() {
        return (operation.hashCode() * 31 + Arrays.hashCode(operands)) * 31
                + Objects.hashCode(detail);
    }
}
