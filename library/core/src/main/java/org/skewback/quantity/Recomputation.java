package org.skewback.quantity;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CancellationException;
import org.jspecify.annotations.Nullable;
import org.skewback.quantity.Reevaluation.Finding;
import org.skewback.quantity.Reevaluation.Outcome;

/** Works out the nodes of a recorded graph one after another. */
final class Recomputation {

    /** Where the branch not taken stands among the operands of a choice. */
    private static final int NOT_TAKEN = 3;

    private final FlatGraph graph;
    private final List<Quantity> recorded;
    private final Collection<? extends Routine<?, ?>> routines;
    private final @Nullable CallsAhead ahead;
    private final Map<Integer, RecordedCall> calls = new HashMap<>();

    /** The value of each node so far; null where a node has none now. */
    private final List<@Nullable Quantity> again = new ArrayList<>();

    /** The nodes that are as recorded to the last bit, with everything behind them. */
    private final BitSet asRecorded = new BitSet();

    Recomputation(FlatGraph graph, Collection<? extends Routine<?, ?>> routines) {
        this.graph = graph;
        this.recorded = graph.restore();
        this.routines = routines;
        this.ahead = null;
    }

    Recomputation(CallsAhead ahead) {
        this.graph = ahead.graph();
        this.recorded = ahead.recorded();
        this.routines = ahead.routines();
        this.ahead = ahead;
    }

    List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        for (int i = 0; i < recorded.size(); i++) {
            Result result = result(i);
            again.add(result.value());
            findings.add(finding(i, result));
            asRecorded.set(i, isAsRecorded(i, result));
        }
        return findings;
    }

    /** The value of each node now, with the graph behind it; null where it has none. */
    List<@Nullable Quantity> again() {
        for (int i = 0; i < recorded.size(); i++) {
            again.add(result(i).value());
        }
        return again;
    }

    private boolean isAsRecorded(int position, Result result) {
        Quantity before = recorded.get(position);
        Quantity now = result.value();
        FlatNode flat = graph.nodes().get(position);
        List<Integer> behind =
                before.detail() instanceof RoutineOutput
                        ? graph.calls().get(flat.call()).inputs()
                        : flat.arguments();
        return now != null
                && (result.outcome() == Outcome.TAKEN || result.outcome() == Outcome.REPRODUCED)
                && Double.doubleToLongBits(now.si()) == Double.doubleToLongBits(before.si())
                && now.dimension().equals(before.dimension())
                && behind.stream().allMatch(asRecorded::get);
    }

    private Finding finding(int position, Result result) {
        Quantity before = recorded.get(position);
        Quantity now = result.value();
        Outcome outcome = result.outcome();
        String reason = result.reason();
        if (outcome == Outcome.REPRODUCED && now != null) {
            if (!now.dimension().equals(before.dimension())) {
                outcome = Outcome.DIFFERS;
                reason =
                        "recorded as "
                                + before.dimension().inWords()
                                + ", worked out as "
                                + now.dimension().inWords();
            } else if (now.si() != before.si()) {
                outcome = Outcome.DIFFERS;
                reason = "another value";
            }
        }
        return new Finding(
                position, outcome, before.si(), now == null ? Double.NaN : now.si(), reason);
    }

    private Result result(int position) {
        Quantity node = recorded.get(position);
        if (node.isLeaf()) {
            return new Result(node, Outcome.TAKEN, "");
        }
        FlatNode flat = graph.nodes().get(position);
        if (node.detail() instanceof RoutineOutput output) {
            return ofRoutine(node, flat.call(), output);
        }
        List<Quantity> operands = new ArrayList<>();
        for (int argument : flat.arguments()) {
            Quantity operand = again.get(argument);
            if (operand == null && node.detail() instanceof Guard && operands.size() == NOT_TAKEN) {
                break; // The choice stands without the branch it does not take.
            }
            if (operand == null) {
                return lost(argument);
            }
            operands.add(operand);
        }
        try {
            return node.detail() instanceof Guard guard
                    ? ofChoice(guard, operands)
                    : new Result(operation(node, operands), Outcome.REPRODUCED, "");
        } catch (IllegalArgumentException | ArithmeticException e) {
            return new Result(null, Outcome.DIFFERS, String.valueOf(e.getMessage()));
        }
    }

    private static Result lost(int argument) {
        return new Result(
                null,
                Outcome.CANNOT_TELL,
                "rests on node " + argument + ", which has no value now");
    }

    /** Goes through the public operations, so that there is one place where each is defined. */
    private static Quantity operation(Quantity node, List<Quantity> operands) {
        Quantity a = operands.get(0);
        Quantity b = operands.get(operands.size() - 1);
        return switch (node.operation()) {
            case NAMED -> a.named(String.valueOf(node.symbol()), node.unit().symbol(), node.note());
            case ADD -> a.plus(b);
            case SUBTRACT -> a.minus(b);
            case MULTIPLY -> a.times(b);
            case DIVIDE -> a.over(b);
            case NEGATE -> a.negated();
            case POWER -> power(a, node);
            case EXP -> a.exp();
            case LN -> a.ln();
            case LOG10 -> a.log10();
            case SIN -> a.sin();
            case COS -> a.cos();
            case TAN -> a.tan();
            case ASIN -> a.asin();
            case ACOS -> a.acos();
            case ATAN -> a.atan();
            case SINH -> a.sinh();
            case COSH -> a.cosh();
            case TANH -> a.tanh();
            case ASINH -> a.asinh();
            case ACOSH -> a.acosh();
            case ABS -> a.abs();
            case MIN -> Quantity.min(a, b);
            case MAX -> Quantity.max(a, b);
            case SUM -> Quantity.sum(operands);
            case INTERPOLATED -> interpolated(a, node);
            case VALUE, GIVEN, CHOOSE, ROUTINE ->
                    throw new IllegalStateException(node.operation() + " is worked out elsewhere");
        };
    }

    private static Quantity power(Quantity base, Quantity node) {
        if (!(node.detail() instanceof Rational exponent)) {
            throw new IllegalArgumentException("a power without an exponent");
        }
        return base.power(exponent.numerator(), exponent.denominator());
    }

    private static Quantity interpolated(Quantity at, Quantity node) {
        if (!(node.detail() instanceof InterpolationTable table)) {
            throw new IllegalArgumentException("a value read from no table");
        }
        return at.interpolated(table);
    }

    /** Operands are the value chosen, the two sides compared and, where recorded, the other value. */
    private static Result ofChoice(Guard guard, List<Quantity> operands) {
        Condition condition =
                new Condition(operands.get(1), guard.condition().relation(), operands.get(2));
        Quantity chosen = operands.get(0);
        Quantity other = operands.size() > NOT_TAKEN ? operands.get(NOT_TAKEN) : null;
        if (condition.holds() == guard.held()) {
            return new Result(
                    choice(chosen, condition, guard.held(), other), Outcome.REPRODUCED, "");
        }
        return new Result(
                other == null ? null : choice(other, condition, !guard.held(), chosen),
                Outcome.DIFFERS,
                "the condition "
                        + condition
                        + (guard.held()
                                ? " held and holds no more"
                                : " did not hold and holds now"));
    }

    private static Quantity choice(
            Quantity chosen, Condition condition, boolean held, @Nullable Quantity other) {
        return Quantity.node(
                chosen.si(),
                chosen.dimension().packed(),
                Operation.CHOOSE,
                chosen,
                null,
                Guard.recorded(condition, held, other),
                chosen.chosenUnit());
    }

    private Result ofRoutine(Quantity node, int position, RoutineOutput output) {
        RecordedCall call = calls.computeIfAbsent(position, this::call);
        if (call.lost() >= 0) {
            return lost(call.lost());
        } else if (!call.why().isEmpty()) {
            return new Result(call.asRecorded(node, output), Outcome.CANNOT_TELL, call.why());
        }
        try {
            return new Result(call.output(output), Outcome.REPRODUCED, "");
        } catch (CancellationException e) {
            throw e;
        } catch (CannotTellException e) {
            return new Result(
                    call.asRecorded(node, output),
                    Outcome.CANNOT_TELL,
                    String.valueOf(e.getMessage()));
        } catch (RuntimeException e) {
            // A routine may come from anyone; whatever it throws, it has not given this value.
            return new Result(
                    null, Outcome.DIFFERS, "the routine gives no result: " + e.getMessage());
        }
    }

    private RecordedCall call(int position) {
        FlatCall flat = graph.calls().get(position);
        RecordedCall call = RecordedCall.of(flat, again, routines);
        RecordedCall made = ahead == null ? null : ahead.made(position);
        if (made != null && flat.inputs().stream().allMatch(asRecorded::get)) {
            call.takeOver(made);
        }
        return call;
    }

    /**
     * What a node is worked out to be.
     *
     * @param value to go on with, or null
     * @param outcome as far as it does not depend on the value
     * @param reason why it is not reproduced; empty where it may be
     */
    private record Result(@Nullable Quantity value, Outcome outcome, String reason) {}
}
