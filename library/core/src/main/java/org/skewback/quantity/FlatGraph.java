package org.skewback.quantity;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A graph laid flat: nodes in an order in which operands come first, for writing and reading.
 *
 * @param nodes the nodes
 * @param calls the calls of routines, shared by the nodes that are their outputs
 * @param tables the tables in which nodes were looked up
 */
public record FlatGraph(
        List<FlatNode> nodes, List<FlatCall> calls, List<InterpolationTable> tables) {

    private static final Pattern OUTPUT = Pattern.compile("(\\w+)(?:\\[([0-9]{1,9})\\])?");

    /** Most nodes that a graph laid flat may have. */
    public static final int MOST_NODES = 5_000_000;

    /**
     * Keeps copies, so that nobody can change it from outside.
     *
     * @param nodes the nodes
     * @param calls the calls of routines, shared by the nodes that are their outputs
     * @param tables the tables in which nodes were looked up
     * @throws IllegalArgumentException when there are more than {@link #MOST_NODES}
     */
    public FlatGraph {
        if (nodes.size() > MOST_NODES) {
            throw new IllegalArgumentException(
                    "a graph of " + nodes.size() + " nodes; allowed: " + MOST_NODES);
        }
        nodes = List.copyOf(nodes);
        calls = List.copyOf(calls);
        tables = List.copyOf(tables);
    }

    /** Positions of quantities in a graph that was laid flat. */
    public static final class Positions {
        private final FlatGraph graph;
        private final IdentityHashMap<Quantity, Integer> positions;

        private final List<Quantity> ordered;

        private Positions(
                FlatGraph graph,
                IdentityHashMap<Quantity, Integer> positions,
                List<Quantity> ordered) {
            this.ordered = List.copyOf(ordered);
            this.graph = graph;
            this.positions = positions;
        }

        /**
         * Gives the graph.
         *
         * @return the flat graph
         */
        public FlatGraph graph() {
            return graph;
        }

        /**
         * Gives the quantities.
         *
         * @return the quantity of each node, in order
         */
        public List<Quantity> ordered() {
            return ordered;
        }

        /**
         * Gives the position of a quantity.
         *
         * @param quantity one that the roots reach
         * @return its position from 0
         * @throws IllegalArgumentException when the roots do not reach it
         */
        public int of(Quantity quantity) {
            Integer position = positions.get(quantity);
            if (position == null) {
                throw new IllegalArgumentException(quantity.brief() + " is not in this graph");
            }
            return position;
        }
    }

    /**
     * Lays flat everything that some quantities reach, with the branches that were not taken.
     *
     * @param roots the quantities
     * @return the flat graph and where each quantity stands in it
     */
    public static Positions lay(Collection<Quantity> roots) {
        return lay(roots, List.of());
    }

    /**
     * Lays flat what some quantities reach without going past others.
     *
     * @param roots the quantities
     * @param ends quantities to be laid as numbers that stand for themselves, whatever is behind
     *     them
     * @return the flat graph and where each quantity stands in it
     */
    public static Positions lay(Collection<Quantity> roots, Collection<Quantity> ends) {
        Set<Quantity> kept = Collections.newSetFromMap(new IdentityHashMap<>());
        kept.addAll(ends);
        IdentityHashMap<Quantity, Integer> positions = new IdentityHashMap<>();
        IdentityHashMap<RoutineCall, Integer> callPositions = new IdentityHashMap<>();
        List<FlatNode> nodes = new ArrayList<>();
        List<FlatCall> calls = new ArrayList<>();
        Map<InterpolationTable, Integer> tables = new LinkedHashMap<>();
        Branches branches = Branches.of(roots, node -> !kept.contains(node));
        for (Quantity node : branches.ordered()) {
            if (kept.contains(node)) {
                positions.put(node, nodes.size());
                nodes.add(end(node));
                continue;
            }
            List<Integer> arguments = positions(branches.operands(node), positions);
            int call = -1;
            if (node.detail() instanceof RoutineOutput output) {
                call =
                        callPositions.computeIfAbsent(
                                output.call(),
                                fresh -> {
                                    calls.add(flat(fresh, positions));
                                    return calls.size() - 1;
                                });
                arguments = List.of();
            }
            String detail =
                    node.detail() instanceof InterpolationTable table
                            ? "#" + tables.computeIfAbsent(table, fresh -> tables.size())
                            : detail(node.detail());
            positions.put(node, nodes.size());
            nodes.add(flat(node, arguments, detail, call));
        }
        return new Positions(
                new FlatGraph(nodes, calls, List.copyOf(tables.keySet())),
                positions,
                branches.ordered());
    }

    /**
     * Builds the graph again, with the values as they were.
     *
     * @return the quantity of each node, in order
     * @throws IllegalArgumentException when an argument does not come before its node, or a node
     *     says something that cannot be
     */
    public List<Quantity> restore() {
        List<Quantity> restored = new ArrayList<>();
        Map<Integer, RoutineCall> restoredCalls = new LinkedHashMap<>();
        for (FlatNode node : nodes) {
            List<Quantity> arguments = pick(node.arguments(), restored);
            RoutineCall call = null;
            if (node.call() >= 0) {
                if (node.call() >= calls.size()) {
                    throw new IllegalArgumentException(
                            "a node refers to call " + node.call() + " of " + calls.size());
                }
                call = restoredCalls.get(node.call());
                if (call == null) {
                    call = restore(calls.get(node.call()), restored);
                    restoredCalls.put(node.call(), call);
                }
            }
            restored.add(restore(node, arguments, call, tables));
        }
        return List.copyOf(restored);
    }

    /**
     * Works the graph out again with other numbers at its beginnings, by the operations it names.
     *
     * @param numbers finite values in SI base units, by the position of a node without arguments
     * @return the quantity of each node, with the graph behind it; where a condition comes out the
     *     other way, the other branch. Null where a node has no value now, as in a branch not taken
     * @throws IllegalArgumentException when it is no graph, see {@link #restore}, or a position is
     *     not that of a number
     */
    public List<@Nullable Quantity> recalculated(Map<Integer, Double> numbers) {
        List<FlatNode> changed = new ArrayList<>(nodes);
        numbers.forEach(
                (position, value) -> {
                    if (position < 0
                            || position >= changed.size()
                            || !isNumber(changed.get(position))) {
                        throw new IllegalArgumentException(
                                "node "
                                        + position
                                        + " of the graph is no number to be changed; allowed are"
                                        + " nodes without arguments");
                    }
                    changed.set(position, changed.get(position).with(value));
                });
        return new Recomputation(new FlatGraph(changed, calls, tables), Routines.installed())
                .again();
    }

    private static boolean isNumber(FlatNode node) {
        return node.arguments().isEmpty() && node.call() < 0;
    }

    private static FlatNode end(Quantity node) {
        Unit unit = node.chosenUnit();
        boolean named = node.symbol() != null;
        return new FlatNode(
                (named ? Operation.GIVEN : Operation.VALUE).published(),
                List.of(),
                node.si(),
                powers(node),
                unit == null ? null : unit.symbol(),
                node.symbol(),
                node.note(),
                node.source(),
                "",
                -1);
    }

    private static List<String> powers(Quantity node) {
        return node.dimension().powers().stream().map(Rational::toString).toList();
    }

    private static FlatNode flat(Quantity node, List<Integer> arguments, String detail, int call) {
        Unit unit = node.chosenUnit();
        return new FlatNode(
                node.operation().published(),
                arguments,
                node.si(),
                powers(node),
                unit == null ? null : unit.symbol(),
                node.symbol(),
                node.note(),
                node.source(),
                detail,
                call);
    }

    private static String detail(@Nullable Object detail) {
        if (detail instanceof Rational exponent) {
            return exponent.toString();
        } else if (detail instanceof Guard guard) {
            return guard.condition().relation().sign() + (guard.held() ? " held" : " did not hold");
        } else if (detail instanceof RoutineOutput output) {
            return output.index() < 0
                    ? output.component()
                    : output.component() + "[" + output.index() + "]";
        }
        return "";
    }

    private static FlatCall flat(RoutineCall call, IdentityHashMap<Quantity, Integer> positions) {
        Map<String, Object> components = new LinkedHashMap<>();
        call.components()
                .forEach(
                        (name, value) -> {
                            if (value instanceof List<?> list) {
                                components.put(name, list.stream().map(Object::toString).toList());
                            } else if (value instanceof Routines.Position) {
                                components.put(name, value.toString());
                            } else {
                                components.put(name, value);
                            }
                        });
        return new FlatCall(
                call.name(), call.edition(), positions(call.inputs(), positions), components);
    }

    private static List<Integer> positions(
            List<Quantity> quantities, IdentityHashMap<Quantity, Integer> positions) {
        List<Integer> found = new ArrayList<>();
        for (Quantity quantity : quantities) {
            Integer position = positions.get(quantity);
            if (position == null) {
                throw new IllegalStateException("an operand is laid before what it gave");
            }
            found.add(position);
        }
        return found;
    }

    private static List<Quantity> pick(List<Integer> positions, List<Quantity> restored) {
        List<Quantity> picked = new ArrayList<>();
        for (int position : positions) {
            if (position < 0 || position >= restored.size()) {
                throw new IllegalArgumentException(
                        "node "
                                + restored.size()
                                + " refers to node "
                                + position
                                + "; allowed are earlier nodes");
            }
            picked.add(restored.get(position));
        }
        return picked;
    }

    private static RoutineCall restore(FlatCall call, List<Quantity> restored) {
        return new RoutineCall(
                call.name(),
                call.edition(),
                pick(call.inputs(), restored),
                call.components(),
                null);
    }

    private static Quantity restore(
            FlatNode node,
            List<Quantity> arguments,
            @Nullable RoutineCall call,
            List<InterpolationTable> tables) {
        Operation operation = Operation.ofPublished(node.operation());
        String unitText = node.unit();
        Unit unit = unitText == null ? null : Unit.of(unitText);
        Dimension dimension = Dimension.ofPowers(node.dimension());
        if (unit != null && !unit.dimension().equals(dimension)) {
            throw new IllegalArgumentException(
                    "a node of " + dimension.inWords() + " cannot show the unit " + unitText);
        }
        int wanted =
                switch (operation) {
                    case VALUE, GIVEN, ROUTINE -> 0;
                    case ADD, SUBTRACT, MULTIPLY, DIVIDE, MIN, MAX -> 2;
                    case CHOOSE -> Math.max(3, Math.min(4, arguments.size()));
                    case SUM -> Math.max(1, arguments.size());
                    default -> 1;
                };
        if (arguments.size() != wanted) {
            throw new IllegalArgumentException(
                    "operation "
                            + node.operation()
                            + " has "
                            + arguments.size()
                            + " arguments; allowed: "
                            + wanted);
        }
        boolean listed = operation == Operation.SUM;
        return Quantity.node(
                node.value(),
                dimension.packed(),
                operation,
                arguments.isEmpty() || listed ? null : arguments.get(0),
                wanted == 2 && !listed ? arguments.get(1) : null,
                detail(operation, node, arguments, call, tables),
                unit);
    }

    private static @Nullable Object detail(
            Operation operation,
            FlatNode node,
            List<Quantity> arguments,
            @Nullable RoutineCall call,
            List<InterpolationTable> tables) {
        return switch (operation) {
            case GIVEN, NAMED ->
                    new Label(String.valueOf(node.symbol()), node.note(), node.source(), null);
            case POWER -> Rational.parse(node.detail());
            case SUM -> arguments;
            case CHOOSE -> guard(node.detail(), arguments);
            case INTERPOLATED -> table(node.detail(), tables);
            case ROUTINE -> output(node.detail(), call);
            default -> null;
        };
    }

    private static Guard guard(String detail, List<Quantity> arguments) {
        for (Relation relation : Relation.values()) {
            if (detail.startsWith(relation.sign() + " ")) {
                return Guard.recorded(
                        new Condition(arguments.get(1), relation, arguments.get(2)),
                        detail.endsWith(" held"),
                        arguments.size() > 3 ? arguments.get(3) : null);
            }
        }
        throw new IllegalArgumentException("\"" + detail + "\" is no outcome of a choice");
    }

    private static InterpolationTable table(String detail, List<InterpolationTable> tables) {
        for (int i = 0; i < tables.size(); i++) {
            if (detail.equals("#" + i)) {
                return tables.get(i);
            }
        }
        throw new IllegalArgumentException(
                "\"" + detail + "\" is none of the " + tables.size() + " tables of the record");
    }

    private static RoutineOutput output(String detail, @Nullable RoutineCall call) {
        if (call == null) {
            throw new IllegalArgumentException("a routine's result \"" + detail + "\" has no call");
        }
        Matcher parts = OUTPUT.matcher(detail);
        if (!parts.matches()) {
            throw new IllegalArgumentException("\"" + detail + "\" names no output of a routine");
        }
        String index = parts.group(2);
        return new RoutineOutput(
                call, parts.group(1), index == null ? -1 : Integer.parseInt(index));
    }
}
