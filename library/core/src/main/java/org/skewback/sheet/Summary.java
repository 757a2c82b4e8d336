package org.skewback.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collector;
import java.util.stream.Collectors;
import org.skewback.quantity.Numerals;
import org.skewback.quantity.Quantity;

/** The few sentences that sum up a sheet, the same in every format. */
final class Summary {

    private static final int FEW = 6;

    private Summary() {}

    /** Demand, relation, limits, utilisation and margin in one line. */
    static String comparison(Check check) {
        return comparison(check, Quantity::toString);
    }

    /** How a check came out, each quantity written in a way of the caller's. */
    static String comparison(Check check, Function<Quantity, String> way) {
        Quantity utilisation = check.utilisation();
        return way.apply(check.demand())
                + " "
                + (check.limits().size() > 1 ? "is " : "")
                + (check.isMet() ? "" : "not ")
                + check.relation()
                + " "
                + check.limits().stream().map(way).collect(Collectors.joining(" and "))
                + (utilisation == null
                        ? ""
                        : ", utilisation " + Numerals.fixed(utilisation.si(), 2))
                + ", margin "
                + Numerals.withUnit(check.margin());
    }

    /** How many checks there are and how they came out. */
    static String ofChecks(SheetRecord record) {
        List<Entry> checks = record.checks();
        if (checks.isEmpty()) {
            return "This sheet has no checks.";
        }
        return "Checks: "
                + count(checks, Verdict.PASSED)
                + ", "
                + count(checks, Verdict.FAILED)
                + ", "
                + count(checks, Verdict.STALE)
                + ".";
    }

    private static String count(List<Entry> checks, Verdict verdict) {
        long count = checks.stream().filter(check -> check.verdict() == verdict).count();
        return count + " " + verdict.inWords();
    }

    /** Why an entry is stale and what to do, without a full stop. */
    static String ofStale(Entry entry) {
        return entry.because() + "; run its cell again";
    }

    /** What is stale in cells that are not shown, a sentence for each cell. */
    static List<String> ofStaleElsewhere(Part part) {
        Numbering numbering = part.sheet().numbering();
        Map<String, List<Entry>> cells = new LinkedHashMap<>();
        for (Entry entry : part.staleElsewhere()) {
            cells.computeIfAbsent(String.valueOf(entry.cell()), fresh -> new ArrayList<>())
                    .add(entry);
        }
        List<String> sentences = new ArrayList<>();
        for (List<Entry> stale : cells.values()) {
            Set<String> why = stale.stream().map(Entry::because).collect(toOrdered());
            sentences.add(
                    "Stale: "
                            + stale.stream()
                                    .map(numbering::called)
                                    .collect(Collectors.joining(", "))
                            + ": "
                            + String.join("; ", why)
                            + ". Run again the cell of "
                            + numbering.cited(stale.get(0))
                            + ".");
        }
        return sentences;
    }

    private static Collector<String, ?, Set<String>> toOrdered() {
        return Collectors.toCollection(LinkedHashSet::new);
    }

    /** The numbers that an author wrote into a formula without naming a source. */
    static String ofNumbersWithoutSource(SheetRecord record) {
        List<Quantity> bare = record.withoutSource();
        if (bare.isEmpty()) {
            return "Every number with a unit has a source.";
        }
        return "Numbers without a source: "
                + bare.stream().map(Quantity::toString).collect(Collectors.joining(", "))
                + ".";
    }

    /** What the sheet's numbers come from. */
    static String ofSources(SheetRecord record) {
        if (record.sources().isEmpty()) {
            return "This sheet names no source.";
        }
        return record.sources().entrySet().stream()
                .map(cited -> cited.getKey() + " (" + symbols(cited.getValue()) + ")")
                .collect(Collectors.joining("; ", "Sources: ", "."));
    }

    /** A long series is named by its first members and its last. */
    static String symbols(List<String> symbols) {
        return symbols.size() <= FEW
                ? String.join(", ", symbols)
                : String.join(", ", symbols.subList(0, FEW - 2))
                        + ", … "
                        + symbols.get(symbols.size() - 1);
    }
}
