package org.skewback.sheet;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.skewback.quantity.Graph;
import org.skewback.quantity.InterpolationTable;
import org.skewback.quantity.Quantity;
import org.skewback.quantity.Source;

/**
 * A sheet as it stands at one moment: what an issue is rendered from and an audit reads.
 *
 * @param number the sheet's number in its package, such as {@code 06}; empty where it has none
 * @param title its title
 * @param library version of the library that made it
 * @param entries what it says, in order
 */
public record SheetRecord(String number, String title, String library, List<Entry> entries) {

    /**
     * Keeps copies, so that nobody can change it from outside.
     *
     * @param number the sheet's number in its package, such as {@code 06}; empty where it has none
     * @param title its title
     * @param library version of the library that made it
     * @param entries what it says, in order
     */
    public SheetRecord {
        entries = List.copyOf(entries);
    }

    /**
     * Gives the checks.
     *
     * @return the entries that are checks, in order
     */
    public List<Entry> checks() {
        return entries.stream().filter(e -> e.block() instanceof Block.Checked).toList();
    }

    /**
     * Gives what must be worked out again.
     *
     * @return the entries that are stale, in order
     */
    public List<Entry> stale() {
        return entries.stream().filter(Entry::stale).toList();
    }

    /**
     * Gives every quantity that the sheet shows or rests on.
     *
     * @return givens, steps, demands, limits, values of tables and what tables and figures rest on,
     *     in order
     */
    public List<Quantity> quantities() {
        return entries.stream().flatMap(entry -> quantities(entry.block())).toList();
    }

    /**
     * Gives the numbers with a unit that an author wrote into a formula without naming a source.
     *
     * @return each once, in order of use; plain numbers such as the 8 of a formula are not counted,
     *     nor is a zero, which says that there is none, nor the one unit by which {@link
     *     Quantity#per} divides
     */
    public List<Quantity> withoutSource() {
        List<Quantity> shown = quantities();
        List<Quantity> nodes = Graph.ordered(shown);
        Set<Quantity> used = Collections.newSetFromMap(new IdentityHashMap<>());
        used.addAll(shown);
        for (Quantity node : nodes) {
            node.operands().stream().filter(operand -> !node.countsIn(operand)).forEach(used::add);
        }
        List<Quantity> found = new ArrayList<>();
        for (Quantity node : nodes) {
            boolean bare = node.isLeaf() && node.source() == null;
            boolean plain = node.unit().symbol().isEmpty();
            if (bare && !plain && node.si() != 0 && used.contains(node)) {
                found.add(node);
            }
        }
        return found;
    }

    /**
     * Gives the register of sources.
     *
     * @return each source that a number or a table behind this sheet names, once, in order of use,
     *     with the symbols of the numbers and tables that name it
     */
    public Map<Source, List<String>> sources() {
        Map<Source, Set<String>> found = new LinkedHashMap<>();
        for (Quantity node : Graph.ordered(quantities())) {
            Source source = node.source();
            String symbol = node.symbol();
            if (source != null && symbol != null) {
                found.computeIfAbsent(source, fresh -> new LinkedHashSet<>()).add(symbol);
            }
            InterpolationTable table = node.table();
            if (table != null) {
                found.computeIfAbsent(table.source(), fresh -> new LinkedHashSet<>())
                        .add(table.symbol());
            }
        }
        Map<Source, List<String>> register = new LinkedHashMap<>();
        found.forEach((source, symbols) -> register.put(source, List.copyOf(symbols)));
        return register;
    }

    /**
     * Numbers the entries.
     *
     * @return the numbers of sections, steps, tables, figures and checks
     */
    public Numbering numbering() {
        return Numbering.of(number, entries);
    }

    static Stream<Quantity> quantities(Block block) {
        if (block instanceof Block.Given given) {
            return Stream.of(given.quantity());
        } else if (block instanceof Block.Series series) {
            return series.values().stream();
        } else if (block instanceof Block.Step step) {
            return Stream.of(step.quantity());
        } else if (block instanceof Block.Tabulated tabulated) {
            return Stream.concat(
                    tabulated.table().columns().stream().flatMap(c -> c.values().stream()),
                    tabulated.restsOn().stream());
        } else if (block instanceof Block.Drawn drawn) {
            return drawn.restsOn().stream();
        } else if (block instanceof Block.Checked checked) {
            Check check = checked.check();
            return Stream.concat(Stream.of(check.demand()), check.limits().stream());
        }
        return Stream.empty();
    }
}
