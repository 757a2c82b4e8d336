package org.skewback.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.skewback.display.Displayable;
import org.skewback.quantity.Quantity;
import org.skewback.quantity.Tape;
import org.skewback.sheet.Block;
import org.skewback.sheet.Check;
import org.skewback.sheet.Column;
import org.skewback.sheet.SheetRecord;
import org.skewback.sheet.Table;
import org.skewback.sheet.Verdict;

/**
 * Results and checks with some givens changed, beside those that stand. Changes nothing.
 *
 * <pre>{@code
 * WhatIf wet = WhatIf.of(sheet.record()).change(z_w, Quantity.of(4, "m"));
 * wet.checks().get(0).after();                       // FAILED
 * sheet.table(wet.table());
 * }</pre>
 *
 * <p>Immutable; each change gives another.
 */
public final class WhatIf implements Displayable {

    private final List<Quantity> results;
    private final List<Check> checks;
    private final List<Change> changes;

    /**
     * A given with another value.
     *
     * @param given the given as it stands
     * @param value its value in this study
     */
    public record Change(Quantity given, Quantity value) {}

    /**
     * A result before and after.
     *
     * @param result the result as it stands
     * @param after its value with the changes
     * @param change after − before; in kelvin for readings in °C
     */
    public record Outcome(Quantity result, Quantity after, Quantity change) {}

    /**
     * A check before and after.
     *
     * @param check the check as it stands
     * @param before its verdict as it stands
     * @param after its verdict with the changes
     * @param utilisationBefore how much of the limit is used, or null where a ratio means nothing
     * @param utilisationAfter the same with the changes
     */
    public record Turn(
            Check check,
            Verdict before,
            Verdict after,
            @Nullable Quantity utilisationBefore,
            @Nullable Quantity utilisationAfter) {

        /**
         * Tells whether the verdict is another.
         *
         * @return whether it passed and fails, or failed and passes
         */
        public boolean turned() {
            return before != after;
        }
    }

    private WhatIf(List<Quantity> results, List<Check> checks, List<Change> changes) {
        this.results = List.copyOf(results);
        this.checks = List.copyOf(checks);
        this.changes = List.copyOf(changes);
    }

    /**
     * Looks at some results and checks.
     *
     * @param results results to show
     * @param checks checks to show
     * @return the study, without changes yet
     * @throws IllegalArgumentException when there is neither
     */
    public static WhatIf of(List<Quantity> results, List<Check> checks) {
        if (results.isEmpty() && checks.isEmpty()) {
            throw new IllegalArgumentException(
                    "the study has neither results nor checks; allowed are one or more");
        }
        return new WhatIf(results, checks, List.of());
    }

    /**
     * Looks at every step and check of a sheet as it stands.
     *
     * @param sheet record of the sheet
     * @return the study, without changes yet
     * @throws IllegalArgumentException when the sheet has neither steps nor checks
     */
    public static WhatIf of(SheetRecord sheet) {
        List<Quantity> steps = new ArrayList<>();
        List<Check> checks = new ArrayList<>();
        sheet.entries()
                .forEach(
                        entry -> {
                            if (entry.block() instanceof Block.Step step) {
                                steps.add(step.quantity());
                            } else if (entry.block() instanceof Block.Checked checked) {
                                checks.add(checked.check());
                            }
                        });
        return of(steps, checks);
    }

    /**
     * Gives a given another value.
     *
     * @param given a node on which a result or a check rests; a named result is then cut off from
     *     what it was calculated from
     * @param value its value in this study, of the same dimension; in °C where the given is a
     *     reading in °C
     * @return this with the change, in place of an earlier one of the same given
     * @throws IllegalArgumentException when nothing rests on the given, or one of the two is a reading in
     *     °C and the other is not
     * @throws org.skewback.quantity.DimensionException when the dimensions differ
     */
    public WhatIf change(Quantity given, Quantity value) {
        Require.sameDimension("value of " + Require.name(given), value, "the given,", given);
        Require.sameKind("value of " + Require.name(given), value, given);
        Margin.requireReached(roots(), List.of(given), "this study");
        List<Change> more = new ArrayList<>();
        for (Change change : changes) {
            if (!change.given().isSameNode(given)) {
                more.add(change);
            }
        }
        more.add(new Change(given, value));
        return new WhatIf(results, checks, more);
    }

    /**
     * Gives the changes.
     *
     * @return the changes in order
     */
    public List<Change> changes() {
        return changes;
    }

    /**
     * Works out the results with the changes.
     *
     * @return one outcome for each result, in order
     * @throws ArithmeticException when a formula has no value with the changes
     * @throws org.skewback.quantity.GuardTurnedException when the changes want a branch that is not
     *     known
     */
    public List<Outcome> results() {
        List<Quantity> after = changed(results);
        List<Outcome> outcomes = new ArrayList<>();
        for (int i = 0; i < results.size(); i++) {
            Quantity before = results.get(i);
            outcomes.add(new Outcome(before, after.get(i), difference(before, after.get(i))));
        }
        return outcomes;
    }

    /**
     * Works out the checks with the changes.
     *
     * @return one turn for each check, in order
     * @throws ArithmeticException when a formula has no value with the changes
     * @throws org.skewback.quantity.GuardTurnedException when the changes want a branch that is not
     *     known
     */
    public List<Turn> checks() {
        List<Turn> turns = new ArrayList<>();
        for (Check check : checks) {
            List<Quantity> after =
                    changed(
                            Stream.concat(Stream.of(check.demand()), check.limits().stream())
                                    .toList());
            Quantity last = after.get(after.size() - 1);
            Check now =
                    new Check(
                            check.title(),
                            after.get(0),
                            check.least() == null ? null : after.get(1),
                            check.most() == null ? null : last);
            turns.add(
                    new Turn(
                            check,
                            verdict(check),
                            verdict(now),
                            check.utilisation(),
                            now.utilisation()));
        }
        return turns;
    }

    /**
     * Gives results and checks side by side.
     *
     * @return what, before, after, change; a check shows its verdict and utilisation
     */
    public Table table() {
        List<String> what = new ArrayList<>();
        List<String> before = new ArrayList<>();
        List<String> after = new ArrayList<>();
        List<String> change = new ArrayList<>();
        for (Change one : changes) {
            what.add(Require.name(one.given()) + " (changed)");
            before.add(Words.of(one.given()));
            after.add(Words.of(one.value().si(), one.given().unit()));
            change.add(Words.signed(difference(one.given(), one.value())));
        }
        for (Outcome outcome : results()) {
            what.add(Require.name(outcome.result()));
            before.add(Words.of(outcome.result()));
            after.add(Words.of(outcome.after()));
            change.add(Words.signed(outcome.change()));
        }
        for (Turn turn : checks()) {
            what.add(turn.check().title());
            before.add(stands(turn.before(), turn.utilisationBefore()));
            after.add(stands(turn.after(), turn.utilisationAfter()));
            change.add(turn.turned() ? "now " + turn.after().inWords() : "same verdict");
        }
        return Table.of(
                "What if",
                Column.texts("quantity or check", what),
                Column.texts("before", before),
                Column.texts("after", after),
                Column.texts("change", change));
    }

    private StudyView view() {
        List<Quantity> named = new ArrayList<>(results);
        changes.forEach(change -> named.add(change.given()));
        return StudyView.titled("What if").table(table(), named);
    }

    @Override
    public Map<String, String> display() {
        return view().bundle();
    }

    /**
     * Writes results and checks side by side.
     *
     * @return a title and one line for each
     */
    @Override
    public String toString() {
        return view().text();
    }

    private static String stands(Verdict verdict, @Nullable Quantity utilisation) {
        return utilisation == null
                ? verdict.inWords()
                : verdict.inWords() + ", utilisation " + Words.of(utilisation);
    }

    private static Verdict verdict(Check check) {
        return check.isMet() ? Verdict.PASSED : Verdict.FAILED;
    }

    private static Quantity difference(Quantity before, Quantity after) {
        return Require.quantity(after.si() - before.si(), Require.ofDifferences(before.unit()));
    }

    private List<Quantity> roots() {
        List<Quantity> roots = new ArrayList<>(results);
        for (Check check : checks) {
            roots.add(check.demand());
            roots.addAll(check.limits());
        }
        return roots;
    }

    private List<Quantity> changed(List<Quantity> of) {
        if (of.isEmpty()) {
            return List.of();
        }
        double[] values =
                Tape.of(of, changes.stream().map(Change::given).toList())
                        .evaluate(changes.stream().mapToDouble(c -> c.value().si()).toArray());
        List<Quantity> after = new ArrayList<>();
        for (int i = 0; i < values.length; i++) {
            after.add(Require.quantity(values[i], of.get(i).unit()));
        }
        return after;
    }
}
