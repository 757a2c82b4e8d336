package org.skewback.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.skewback.quantity.Graph;
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
     * Gives every quantity that the sheet shows.
     *
     * @return givens, steps, demands, limits and values of tables, in order
     */
    public List<Quantity> quantities() {
        return entries.stream().flatMap(entry -> quantities(entry.block())).toList();
    }

    /**
     * Gives the numbers with a unit that an author wrote into a formula without naming a source.
     *
     * @return each once, in order of use; plain numbers such as the 8 of a formula are not counted,
     *     nor is a zero, which says that there is none
     */
    public List<Quantity> withoutSource() {
        List<Quantity> found = new ArrayList<>();
        for (Quantity node : Graph.ordered(quantities())) {
            boolean bare = node.isLeaf() && node.source() == null;
            boolean plain = node.unit().symbol().isEmpty();
            if (bare && !plain && node.si() != 0) {
                found.add(node);
            }
        }
        return found;
    }

    /**
     * Gives the register of sources.
     *
     * @return each source that a number behind this sheet names, once, in order of use, with the
     *     symbols of the numbers that name it
     */
    public Map<Source, List<String>> sources() {
        Map<Source, List<String>> found = new LinkedHashMap<>();
        for (Quantity node : Graph.ordered(quantities())) {
            Source source = node.source();
            String symbol = node.symbol();
            if (source != null && symbol != null) {
                found.computeIfAbsent(source, fresh -> new ArrayList<>()).add(symbol);
            }
        }
        return found;
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
            return tabulated.table().columns().stream().flatMap(c -> c.values().stream());
        } else if (block instanceof Block.Checked checked) {
            Check check = checked.check();
            return Stream.concat(Stream.of(check.demand()), check.limits().stream());
        }
        return Stream.empty();
    }
}
