package org.skewback.quantity;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

/**
 * Turns a graph into instructions: constants folded, equal expressions numbered once.
 *
 * <p>Every rewriting keeps the value to the last bit: a product and a sum commute, a factor of one
 * changes nothing, and the reciprocal of a power of two is exact.
 */
final class TapeCompiler {

    private static final int LONGEST_PRODUCT = 8;

    private final Branches branches;
    private final IdentityHashMap<Quantity, Integer> values = new IdentityHashMap<>();
    private final IdentityHashMap<RoutineCall, List<RoutineOutput>> results =
            new IdentityHashMap<>();
    private final IdentityHashMap<RoutineCall, Integer> calls = new IdentityHashMap<>();
    private final Map<Instruction, Integer> numbered = new HashMap<>();
    private final List<Instruction> instructions = new ArrayList<>();
    private final List<Quantity> origins = new ArrayList<>();

    private TapeCompiler(Branches branches) {
        this.branches = branches;
    }

    static TapeProgram compile(List<Quantity> outputs, List<Quantity> inputs) {
        IdentityHashMap<Quantity, Integer> cut = new IdentityHashMap<>();
        for (Quantity input : inputs) {
            cut.put(input, cut.size());
        }
        Branches branches = Branches.of(outputs, node -> !cut.containsKey(node));
        TapeCompiler compiler = new TapeCompiler(branches);
        for (Quantity input : inputs) {
            int position = compiler.instructions.size();
            compiler.values.put(
                    input, compiler.number(new Instruction(Operation.GIVEN, position), input));
        }
        compiler.emitAll();
        int[] places = outputs.stream().mapToInt(compiler::value).toArray();
        return TapeProgram.pruned(compiler.instructions, compiler.origins, places, inputs.size());
    }

    private void emitAll() {
        for (Quantity node : branches.ordered()) {
            if (node.detail() instanceof RoutineOutput output) {
                results.computeIfAbsent(output.call(), fresh -> new ArrayList<>()).add(output);
            }
        }
        for (Quantity node : branches.ordered()) {
            if (!values.containsKey(node)
                    && branches.operands(node).stream().anyMatch(values::containsKey)) {
                values.put(node, emit(node));
            }
        }
    }

    private int value(Quantity node) {
        Integer known = values.get(node);
        return known != null ? known : constant(node.si(), node);
    }

    private int constant(double value, Quantity origin) {
        return number(Instruction.constant(value), origin);
    }

    private int number(Instruction instruction, Quantity origin) {
        Integer known = numbered.get(instruction);
        if (known != null) {
            return known;
        }
        numbered.put(instruction, instructions.size());
        instructions.add(instruction);
        origins.add(origin);
        return instructions.size() - 1;
    }

    private int emit(Quantity node) {
        List<Quantity> operands = node.operands();
        Operation operation = node.operation();
        return switch (operation) {
            case NAMED -> value(operands.get(0));
            case ADD, MIN, MAX ->
                    commuting(operation, value(operands.get(0)), value(operands.get(1)), node);
            case MULTIPLY -> product(value(operands.get(0)), value(operands.get(1)), node);
            case SUBTRACT ->
                    number(
                            new Instruction(
                                    operation,
                                    null,
                                    value(operands.get(0)),
                                    value(operands.get(1))),
                            node);
            case DIVIDE -> quotient(value(operands.get(0)), value(operands.get(1)), node);
            case SUM -> sum(operands, node);
            case POWER -> power(value(operands.get(0)), (Rational) detail(node), node);
            case INTERPOLATED ->
                    number(new Instruction(operation, node.detail(), value(operands.get(0))), node);
            case CHOOSE -> choice((Guard) detail(node), operands.get(0), node);
            case ROUTINE -> result((RoutineOutput) detail(node), node);
            default -> number(new Instruction(operation, null, value(operands.get(0))), node);
        };
    }

    private static Object detail(Quantity node) {
        Object detail = node.detail();
        if (detail == null) {
            throw new IllegalStateException(node.operation() + " without its detail");
        }
        return detail;
    }

    private int commuting(Operation operation, int a, int b, Quantity node) {
        return number(new Instruction(operation, null, Math.min(a, b), Math.max(a, b)), node);
    }

    private int product(int a, int b, Quantity node) {
        if (instructions.get(a).isConstant(1)) {
            return b;
        }
        return instructions.get(b).isConstant(1) ? a : commuting(Operation.MULTIPLY, a, b, node);
    }

    private int quotient(int a, int b, Quantity node) {
        Instruction divisor = instructions.get(b);
        if (divisor.isConstant() && isPowerOfTwo(divisor.constant())) {
            return product(a, constant(1 / divisor.constant(), node), node);
        }
        return number(new Instruction(Operation.DIVIDE, null, a, b), node);
    }

    private static boolean isPowerOfTwo(double value) {
        int exponent = Math.getExponent(value);
        boolean bare = (Double.doubleToRawLongBits(value) & 0xF_FFFF_FFFF_FFFFL) == 0;
        return bare && exponent > -1000 && exponent < 1000;
    }

    /** From zero and in order, as {@link Quantity#sum} adds. */
    private int sum(List<Quantity> terms, Quantity node) {
        int total = constant(0, node);
        for (Quantity term : terms) {
            int next = value(term);
            Instruction a = instructions.get(total);
            Instruction b = instructions.get(next);
            total =
                    a.isConstant() && b.isConstant()
                            ? constant(a.constant() + b.constant(), node)
                            : commuting(Operation.ADD, total, next, node);
        }
        return total;
    }

    /** As {@link Powers} multiplies. */
    private int power(int base, Rational exponent, Quantity node) {
        if (exponent.isWhole()) {
            int whole = exponent.numerator();
            if (whole >= 1 && whole <= LONGEST_PRODUCT) {
                int product = base;
                for (int i = 1; i < whole; i++) {
                    product = commuting(Operation.MULTIPLY, product, base, node);
                }
                return product;
            } else if (whole == -1) {
                return quotient(constant(1, node), base, node);
            }
        }
        return number(new Instruction(Operation.POWER, exponent, base), node);
    }

    private int choice(Guard guard, Quantity chosen, Quantity node) {
        Condition condition = guard.condition();
        int left = value(condition.left());
        int right = value(condition.right());
        if (instructions.get(left).isConstant() && instructions.get(right).isConstant()) {
            return value(chosen);
        }
        Quantity other = branches.other(node);
        int taken = value(chosen);
        int untaken = other == null ? Instruction.ABSENT : value(other);
        return number(
                new Instruction(
                        Operation.CHOOSE,
                        condition.relation(),
                        left,
                        right,
                        guard.held() ? taken : untaken,
                        guard.held() ? untaken : taken),
                node);
    }

    private int result(RoutineOutput output, Quantity node) {
        RoutineCall call = output.call();
        List<RoutineOutput> wanted = results.getOrDefault(call, List.of());
        Integer place = calls.get(call);
        if (place == null) {
            CallSite site = new CallSite(call, LiveRoutine.of(call), wanted);
            int[] inputs = call.inputs().stream().mapToInt(this::value).toArray();
            place = append(new Instruction(Operation.ROUTINE, site, inputs), node);
            for (int k = 0; k < wanted.size(); k++) {
                append(new Instruction(Operation.NAMED, k, place), node);
            }
            calls.put(call, place);
        }
        return place + 1 + wanted.indexOf(output);
    }

    private int append(Instruction instruction, Quantity origin) {
        instructions.add(instruction);
        origins.add(origin);
        return instructions.size() - 1;
    }
}
