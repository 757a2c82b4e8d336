package org.skewback.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.skewback.display.Displayable;
import org.skewback.quantity.Quantity;
import org.skewback.sheet.Column;
import org.skewback.sheet.Table;

/**
 * How much several results change with each of some givens, side by side.
 *
 * @param givens the givens
 * @param studies one study for each result, of those givens on which it rests
 */
public record Sensitivities(List<Quantity> givens, List<Sensitivity> studies)
        implements Displayable {

    /**
     * Keeps copies, so that nobody can change it from outside.
     *
     * @param givens the givens
     * @param studies one study for each result
     */
    public Sensitivities {
        givens = List.copyOf(givens);
        studies = List.copyOf(studies);
    }

    /**
     * Works out the effect of each given on each result: 1 % of the given, and one standard
     * deviation where it has a distribution.
     *
     * @param results at least one result, each resting on one or more of the givens
     * @param givens nodes, on each of which one or more of the results rest
     * @param uncertainty distributions of some of them
     * @return the studies side by side
     * @throws IllegalArgumentException when there is no result, a result rests on none of the
     *     givens, or no result rests on a given
     * @throws ArithmeticException when a formula has no value one step away
     */
    public static Sensitivities of(
            List<Quantity> results, List<Quantity> givens, Uncertainty uncertainty) {
        if (results.isEmpty()) {
            throw new IllegalArgumentException("the study has no results; allowed are one or more");
        }
        Margin.requireReached(results, givens, "the study");
        List<Sensitivity> studies = new ArrayList<>();
        for (Quantity result : results) {
            List<Quantity> its =
                    givens.stream().filter(given -> Margin.reaches(result, given)).toList();
            studies.add(Sensitivity.of(result, its, uncertainty));
        }
        return new Sensitivities(givens, studies);
    }

    /**
     * Works out the effect of 1 % of each given on each result.
     *
     * @param results at least one result, each resting on one or more of the givens
     * @param givens nodes, on each of which one or more of the results rest
     * @return the studies side by side
     * @throws IllegalArgumentException when there is no result, a result rests on none of the
     *     givens, or no result rests on a given
     * @throws ArithmeticException when a formula has no value one step away
     */
    public static Sensitivities of(List<Quantity> results, List<Quantity> givens) {
        return of(results, givens, Uncertainty.none());
    }

    /**
     * Gives the effects as a table.
     *
     * @return given, its value, and for each result its change per 1 % more and, where any given has
     *     a distribution, per standard deviation; – where the result does not rest on the given
     */
    public Table table() {
        List<Column> columns = new ArrayList<>();
        columns.add(Column.texts("given", givens.stream().map(Require::name).toList()));
        columns.add(Column.texts("value", givens.stream().map(Words::of).toList()));
        for (Sensitivity study : studies) {
            String name = Require.name(study.result()) + ", ";
            List<String> percents = new ArrayList<>();
            List<String> deviations = new ArrayList<>();
            boolean spreads = false;
            for (Quantity given : givens) {
                String percent = "–";
                String deviation = "–";
                for (Sensitivity.Effect effect : study.effects()) {
                    if (effect.given().isSameNode(given)) {
                        percent = Sensitivity.signed(effect.perPercent());
                        deviation = Sensitivity.signed(effect.perDeviation());
                        spreads |= effect.perDeviation() != null;
                    }
                }
                percents.add(percent);
                deviations.add(deviation);
            }
            columns.add(Column.texts(name + "change per 1 % more", percents));
            if (spreads) {
                columns.add(Column.texts(name + "change per standard deviation", deviations));
            }
        }
        return new Table("Sensitivity", columns);
    }

    private StudyView view() {
        return StudyView.titled("Sensitivity of several results").table(table(), givens);
    }

    @Override
    public Map<String, String> display() {
        StudyView view = view();
        studies.forEach(view::figures);
        return view.bundle();
    }

    /**
     * Writes the effects.
     *
     * @return a title and one line for each given
     */
    @Override
    public String toString() {
        return view().text();
    }
}
