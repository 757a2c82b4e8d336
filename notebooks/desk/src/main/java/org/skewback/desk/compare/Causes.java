package org.skewback.desk.compare;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.skewback.quantity.Quantity;
import org.skewback.quantity.Source;
import org.skewback.sheet.SheetRecord;

/** Follows a number back to the givens that changed, from sheet to sheet. */
final class Causes {

    private static final String ARROW = " → ";
    private static final int MOST_CHAINS = 12;
    private static final int DEEPEST = 40;

    private final Map<String, SheetRecord> sheets;
    private final Map<String, IdentityHashMap<Quantity, String>> changed = new HashMap<>();

    Causes(Map<String, SheetRecord> sheets) {
        this.sheets = sheets;
    }

    /** Takes down that a given of a sheet is another than before. */
    void changed(String sheet, String name, Quantity given) {
        changed.computeIfAbsent(sheet, fresh -> new IdentityHashMap<>()).put(given, name);
    }

    /**
     * Gives the ways from changed givens to a number.
     *
     * @param sheet key of its sheet
     * @param quantity the number
     * @param last name to end each way with; empty where the number's own symbol does
     * @return such as {@code L → H → (sheet 08) H → M}
     */
    List<String> chains(String sheet, Quantity quantity, String last) {
        return chains(sheet, quantity, 0).stream()
                .map(chain -> last.isEmpty() ? chain : chain + ARROW + last)
                .toList();
    }

    private List<String> chains(String sheet, Quantity quantity, int depth) {
        IdentityHashMap<Quantity, String> givens =
                changed.getOrDefault(sheet, new IdentityHashMap<>());
        Set<String> chains = new LinkedHashSet<>();
        IdentityHashMap<Quantity, List<Quantity>> above = new IdentityHashMap<>();
        above.put(quantity, List.of());
        Deque<Quantity> waiting = new ArrayDeque<>(List.of(quantity));
        while (!waiting.isEmpty() && chains.size() < MOST_CHAINS) {
            Quantity node = waiting.remove();
            String given = givens.get(node);
            if (given != null) {
                String way = way(node, quantity, given, above);
                for (String start : starts(node, depth)) {
                    chains.add(
                            start.isEmpty() ? way : start + ARROW + "(sheet " + sheet + ") " + way);
                }
                continue;
            }
            for (Quantity operand : node.operands()) {
                if (!above.containsKey(operand)) {
                    above.put(operand, List.of(node));
                    waiting.add(operand);
                }
            }
        }
        return List.copyOf(chains);
    }

    /** The ways to a given in the sheet from which it was taken; one empty way where it begins here. */
    private List<String> starts(Quantity given, int depth) {
        Source source = given.source();
        SheetRecord other =
                source != null && source.kind() == Source.Kind.SHEET
                        ? sheets.get(source.reference())
                        : null;
        if (source == null || other == null || depth == DEEPEST) {
            return List.of("");
        }
        String symbol = String.valueOf(given.symbol());
        Quantity there = ShownQuantities.results(other).get(symbol);
        if (there == null) {
            there = ShownQuantities.givens(other).get(symbol);
        }
        List<String> chains =
                there == null ? List.of() : chains(source.reference(), there, depth + 1);
        return chains.isEmpty() ? List.of("") : chains;
    }

    private static String way(
            Quantity given,
            Quantity end,
            String name,
            IdentityHashMap<Quantity, List<Quantity>> above) {
        List<String> names = new ArrayList<>(List.of(name));
        Quantity node = given;
        while (!node.isSameNode(end)) {
            List<Quantity> next = above.getOrDefault(node, List.of());
            if (next.isEmpty()) {
                break;
            }
            node = next.get(0);
            String symbol = node.symbol();
            if (symbol != null && !names.get(names.size() - 1).equals(symbol)) {
                names.add(symbol);
            }
        }
        return String.join(ARROW, names);
    }
}
