package org.skewback.quantity;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.skewback.display.Displayable;

/**
 * Where a number comes from: the named numbers of its formula, those behind them, back to what was
 * given and its source.
 *
 * <p>A number that several others rest on is unfolded once, where it stands nearest to the root, and
 * referred to by its symbol elsewhere. Plain numbers such as the 8 of a formula stand in the formula
 * alone. Depth and count are limited, nearest numbers first, and what is left out is said.
 *
 * <pre>{@code
 * H = 29 008 kN, thrust, from g · L² / (8 · f)
 * ├─ g = 148 kN/m, load of one rib (assumption, see the load plan)
 * ├─ L = 336 m, span (drawing OG-201, revision B)
 * └─ f = 72 m, rise (drawing OG-201, revision B)
 * }</pre>
 */
public final class Origin implements Displayable {

    private static final int DEEPEST = 8;
    private static final int MOST = 60;
    private static final int DEEPEST_ALLOWED = 50;
    private static final int MOST_ALLOWED = 10_000;

    private final Branch root;
    private final int deepest;
    private final int most;

    private Origin(Branch root, int deepest, int most) {
        this.root = root;
        this.deepest = deepest;
        this.most = most;
    }

    /** How much of what stands behind a number a branch shows. */
    public enum Extent {
        /** All of it, save what {@link Branch#leftOut} counts. */
        UNFOLDED,
        /** Nothing: the same number is unfolded at another place. */
        ELSEWHERE,
        /** Nothing: it would be deeper than allowed. */
        TOO_DEEP
    }

    /**
     * One number and what stands behind it.
     *
     * @param quantity the number
     * @param behind the nearest numbers behind it that have a name or a unit, in the order of the
     *     formula
     * @param tables cited tables from which its formula reads
     * @param extent how much is shown
     * @param leftOut how many of the nearest numbers are left out for their count
     */
    public record Branch(
            Quantity quantity,
            List<Branch> behind,
            List<InterpolationTable> tables,
            Extent extent,
            int leftOut) {

        /**
         * Keeps copies, so that nobody can change it from outside.
         *
         * @param quantity the number
         * @param behind the nearest numbers behind it that have a name or a unit, in the order of
         *     the formula
         * @param tables cited tables from which its formula reads
         * @param extent how much is shown
         * @param leftOut how many of the nearest numbers are left out for their count
         */
        public Branch {
            behind = List.copyOf(behind);
            tables = List.copyOf(tables);
        }

        /**
         * Tells whether nothing stands behind the number here.
         *
         * @return true for numbers that an author wrote, and where nothing is shown
         */
        public boolean isEnd() {
            return behind.isEmpty() && tables.isEmpty() && leftOut == 0;
        }
    }

    /**
     * Traces a number back through eight levels and sixty numbers at most.
     *
     * @param quantity any quantity
     * @return its origin
     */
    public static Origin of(Quantity quantity) {
        return of(quantity, DEEPEST, MOST);
    }

    /**
     * Traces a number back.
     *
     * @param quantity any quantity
     * @param deepest levels below the number, from 1 to 50
     * @param most numbers shown below it, from 1 to 10 000
     * @return its origin
     * @throws IllegalArgumentException when a limit is outside its range
     */
    public static Origin of(Quantity quantity, int deepest, int most) {
        requireWithin("levels of an origin", deepest, DEEPEST_ALLOWED);
        requireWithin("numbers of an origin", most, MOST_ALLOWED);
        Open root = new Open(quantity, 0);
        Deque<Open> waiting = new ArrayDeque<>(List.of(root));
        Set<Quantity> unfolded = Collections.newSetFromMap(new IdentityHashMap<>());
        int count = 0;
        // Level by level, so that the limits cut off what is far, and nothing is shown as cut off
        // in one place that would have been near enough in another.
        while (!waiting.isEmpty()) {
            Open open = waiting.remove();
            if (open.quantity.isAuthors()) {
                continue;
            }
            if (unfolded.contains(shownFirst(open.quantity))) {
                open.extent = Extent.ELSEWHERE;
                continue;
            }
            if (open.depth == deepest) {
                open.extent = Extent.TOO_DEEP;
                continue;
            }
            unfolded.add(shownFirst(open.quantity));
            for (Quantity behind : open.findBehind()) {
                if (count == most) {
                    open.leftOut++;
                    continue;
                }
                count++;
                Open next = new Open(behind, open.depth + 1);
                open.behind.add(next);
                waiting.add(next);
            }
        }
        return new Origin(root.closed(), deepest, most);
    }

    private static void requireWithin(String what, int value, int most) {
        if (value < 1 || value > most) {
            throw new IllegalArgumentException(
                    what + " are " + value + "; allowed are 1 to " + most);
        }
    }

    /** The number itself, where this is the number in another unit. */
    private static Quantity shownFirst(Quantity quantity) {
        Quantity node = quantity;
        while (node.isShownAgain()) {
            node = node.operands().get(0);
        }
        return node;
    }

    /** A branch while it grows. */
    private static final class Open {
        final Quantity quantity;
        final int depth;
        final List<Open> behind = new ArrayList<>();
        final List<InterpolationTable> tables = new ArrayList<>();
        Extent extent = Extent.UNFOLDED;
        int leftOut;

        Open(Quantity quantity, int depth) {
            this.quantity = quantity;
            this.depth = depth;
        }

        List<Quantity> findBehind() {
            Quantity start = shownFirst(quantity);
            List<Quantity> found = new ArrayList<>();
            for (Quantity node :
                    Graph.ordered(List.of(start), n -> n.isSameNode(start) || n.symbol() == null)) {
                boolean told = node.symbol() != null || !node.unit().symbol().isEmpty();
                boolean end = node.symbol() != null || node.isLeaf();
                boolean passed = node.isSameNode(start) || node.symbol() == null;
                if (!node.isSameNode(start) && end && told) {
                    found.add(node);
                }
                if (passed && node.detail() instanceof InterpolationTable table) {
                    tables.add(table);
                }
            }
            return found;
        }

        Branch closed() {
            return new Branch(
                    quantity, behind.stream().map(Open::closed).toList(), tables, extent, leftOut);
        }
    }

    /**
     * Gives the number itself with what stands behind it.
     *
     * @return the root of the tree
     */
    public Branch root() {
        return root;
    }

    /**
     * Writes the origin as plain text, a number a line, indented by rules.
     *
     * @return one line or more
     */
    public String text() {
        return new OriginText(deepest, most).write(root);
    }

    /**
     * Writes the origin as HTML that unfolds number by number, by pointer or keyboard.
     *
     * @return elements {@code details}, {@code summary}, {@code ul}, {@code li}, {@code i}, {@code
     *     sub} and {@code span}, without scripts, styles or identifiers; well-formed as XML, all text
     *     escaped. One paragraph where nothing stands behind the number
     */
    public String html() {
        return new OriginHtml(deepest, most).write(root);
    }

    @Override
    public Map<String, String> display() {
        Map<String, String> bundle = new LinkedHashMap<>();
        bundle.put("text/html", html());
        bundle.put("text/plain", text());
        return bundle;
    }

    @Override
    public String toString() {
        return text();
    }

    /** What both kinds of output say beside the numbers. */
    abstract static class Writer {

        private static final int LONGEST_FORMULA = 160;

        private final int deepest;
        private final int most;
        private final Set<Quantity> written = Collections.newSetFromMap(new IdentityHashMap<>());

        Writer(int deepest, int most) {
            this.deepest = deepest;
            this.most = most;
        }

        /** Takes note that a branch is being written, so that later ones can refer to it. */
        void start(Branch branch) {
            if (branch.extent() == Extent.UNFOLDED) {
                written.add(shownFirst(branch.quantity()));
            }
        }

        /** Says why nothing is shown behind a number, empty where there is no need. */
        String remark(Branch branch) {
            return switch (branch.extent()) {
                case UNFOLDED -> "";
                case ELSEWHERE ->
                        written.contains(shownFirst(branch.quantity()))
                                ? "unfolded above"
                                : "unfolded below";
                case TOO_DEEP ->
                        "goes on beyond "
                                + deepest
                                + (deepest == 1 ? " level" : " levels")
                                + "; see the origin of "
                                + Objects.requireNonNull(branch.quantity().symbol());
            };
        }

        String more(Branch branch) {
            return "… and "
                    + branch.leftOut()
                    + " more; "
                    + most
                    + (most == 1 ? " number is" : " numbers are")
                    + " shown at most";
        }

        /** Where the number stands: its source, or that there is none; empty for results. */
        static String source(Quantity quantity) {
            Source source = quantity.source();
            if (source != null) {
                return source.toString();
            }
            return quantity.isAuthors() ? "number without a source" : "";
        }

        static String table(InterpolationTable table) {
            return table.note().isBlank() ? "table" : "table, " + table.note();
        }

        /** The formula, where it is short enough to say something at a glance. */
        static List<Expression> formula(Branch branch) {
            if (branch.quantity().isAuthors()) {
                return List.of();
            }
            Expression formula = Formula.symbolic(shownFirst(branch.quantity()));
            boolean readable = TextWriter.write(formula).length() <= LONGEST_FORMULA;
            return readable ? List.of(formula) : List.of();
        }
    }
}
