package org.skewback.desk.compare;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.skewback.quantity.Numerals;
import org.skewback.quantity.Quantity;
import org.skewback.quantity.Source;

/** Says in one sentence what the changed givens moved. */
final class Sentence {

    private static final List<String> NUMBERS =
            List.of(
                    "no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine",
                    "ten", "eleven", "twelve");

    private static final int FEW = 3;

    private final double mark;

    /** What brought the change, and which givens with it. */
    private final Map<String, Set<String>> causes = new LinkedHashMap<>();

    Sentence(double mark) {
        this.mark = mark;
    }

    /** Takes down a given that changed; one that was taken from another sheet is no cause. */
    void given(String name, @Nullable Quantity before, @Nullable Quantity now) {
        @Nullable Source source = now == null ? null : now.source();
        if (source != null && source.kind() == Source.Kind.SHEET) {
            return;
        }
        @Nullable Source old = before == null ? null : before.source();
        boolean revised =
                source != null
                        && old != null
                        && source.kind() == old.kind()
                        && source.reference().equals(old.reference())
                        && !source.place().equals(old.place());
        String cause;
        if (source != null && revised) {
            cause = source.place() + " of " + source.reference();
        } else if (before == null) {
            cause = "the new given " + name;
        } else if (now == null) {
            cause = "the loss of the given " + name;
        } else {
            cause =
                    "a change of "
                            + name
                            + " from "
                            + Numerals.withUnit(before)
                            + " to "
                            + Numerals.withUnit(now);
        }
        causes.computeIfAbsent(cause, fresh -> new LinkedHashSet<>()).add(name);
    }

    String of(List<Moved> givens, List<Moved> results, List<Turned> checks, List<String> software) {
        boolean nothing = givens.isEmpty() && results.isEmpty() && checks.isEmpty();
        if (nothing) {
            return software.isEmpty()
                    ? "No given, result or check changed."
                    : "No given, result or check changed, though the software did.";
        }
        StringBuilder said = new StringBuilder();
        if (causes.isEmpty()) {
            said.append(
                    software.isEmpty()
                            ? "Without any change of a given, the formulas moved "
                            : "Without any change of a given, formulas or software moved ");
        } else {
            said.append(causes()).append(" moved ");
        }
        said.append(counted(moved(checks), "check"));
        long past = checks.stream().filter(check -> check.wentPast(mark)).count();
        if (past > 0) {
            said.append(", ").append(inWords(past)).append(" past ").append(mark);
        }
        for (String verdict : List.of("failed", "stale", "passed")) {
            long turned =
                    checks.stream()
                            .filter(
                                    check ->
                                            check.isTurned()
                                                    && !check.verdictBefore().isEmpty()
                                                    && check.verdictNow().equals(verdict))
                            .count();
            if (turned > 0) {
                said.append(", ").append(inWords(turned)).append(" to ").append(verdict);
            }
        }
        said.append(" (").append(counted(results.size(), "result")).append(").");
        return Character.toUpperCase(said.charAt(0)) + said.substring(1);
    }

    private String causes() {
        List<String> named = new ArrayList<>(causes.keySet());
        if (named.size() > FEW) {
            int rest = named.size() - FEW + 1;
            named.subList(FEW - 1, named.size()).clear();
            named.add(counted(rest, "more change"));
        }
        String last = named.remove(named.size() - 1);
        return named.isEmpty() ? last : String.join(", ", named) + " and " + last;
    }

    private static long moved(List<Turned> checks) {
        return checks.stream()
                .filter(check -> !check.verdictBefore().isEmpty() && !check.verdictNow().isEmpty())
                .count();
    }

    private static String counted(long number, String thing) {
        return inWords(number) + " " + thing + (number == 1 ? "" : "s");
    }

    private static String inWords(long number) {
        return number < NUMBERS.size() ? NUMBERS.get((int) number) : String.valueOf(number);
    }
}
