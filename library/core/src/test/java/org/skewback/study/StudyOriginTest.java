package org.skewback.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.skewback.quantity.FlatCall;
import org.skewback.quantity.FlatGraph;
import org.skewback.quantity.InterpolationTable;
import org.skewback.quantity.Origin;
import org.skewback.quantity.Quantity;
import org.skewback.quantity.Reevaluation;
import org.skewback.quantity.Reevaluation.Outcome;
import org.skewback.quantity.Routine;
import org.skewback.quantity.Routines;
import org.skewback.quantity.Source;
import org.skewback.quantity.Stop;
import org.skewback.quantity.Tape;
import org.skewback.sheet.Check;
import org.skewback.sheet.RecordReevaluation;
import org.skewback.sheet.RecordWriter;
import org.skewback.sheet.Sheet;

/** What a study found knows where it comes from, and a record can find it again. */
class StudyOriginTest {

    private static final Source TESTS = Source.testReport("shear tests", "block 4");
    private static final int SAMPLES = 20_000;

    private final PlaneSlide slide = new PlaneSlide();
    private final Quantity deviation = Quantity.given("s_c", 5, "kPa", "spread", TESTS);
    private final Quantity together = Quantity.given("ρ", -0.5, "", "c with φ", TESTS);
    private final Quantity factor = slide.factor().named("F", "", "factor of safety");
    private final Check check = PlaneSlide.stable(factor);
    private final Reliability study =
            Reliability.of(
                    check,
                    Uncertainty.none()
                            .with(
                                    slide.cohesion,
                                    Distribution.normal(Quantity.of(25, "kPa"), deviation))
                            .with(
                                    slide.friction,
                                    Distribution.triangular(
                                            Quantity.of(28, "°"),
                                            Quantity.of(37, "°"),
                                            Quantity.of(45, "°")))
                            .with(
                                    slide.water,
                                    Distribution.truncatedExponential(
                                            Quantity.of(2, "m"),
                                            Quantity.of(0, "m"),
                                            Quantity.of(4, "m")))
                            .correlated(slide.cohesion, slide.friction, together));

    private List<Quantity> everything(int threads) {
        FirstOrderSecondMoment moments = study.firstOrderSecondMoment();
        DesignPoint point = study.designPoint();
        Simulation drawn = study.simulate(Sampling.of(SAMPLES).from(7).on(threads));
        SolveFor.Solution full =
                SolveFor.utilisation(
                        check, 0.9, slide.water, Quantity.of(0, "m"), Quantity.of(4.3, "m"));
        List<Quantity> all = new ArrayList<>();
        all.addAll(List.of(moments.mean(), moments.standardDeviation()));
        all.addAll(List.of(moments.index(), moments.probability()));
        all.addAll(moments.shares());
        all.addAll(List.of(point.index(), point.probability()));
        all.addAll(point.values());
        all.addAll(point.influences());
        all.addAll(List.of(drawn.mean(), drawn.standardDeviation(), drawn.probability()));
        all.addAll(List.of(drawn.standardError(), drawn.upperLimit()));
        all.addAll(drawn.index());
        all.addAll(List.of(full.value(), full.utilisation()));
        return all;
    }

    @Test
    void aRecordFindsAllOfThemAgainToTheLastBit() {
        List<Quantity> all = everything(3);
        Reevaluation again = Reevaluation.of(FlatGraph.lay(all).graph());
        assertEquals(List.of(), again.all(Outcome.DIFFERS));
        assertEquals(List.of(), again.all(Outcome.CANNOT_TELL));
        assertTrue(again.count(Outcome.REPRODUCED) > all.size());
        assertEquals(
                everything(1).stream().map(Quantity::si).toList(),
                all.stream().map(Quantity::si).toList());
    }

    @Test
    void aSheetWithThemIsWorkedOutAgainWithoutItsNotebook() {
        Sheet sheet = Sheet.titled("Sliding");
        Simulation drawn = study.simulate(Sampling.of(SAMPLES));
        sheet.step("β", study.designPoint().index(), "", "reliability index");
        sheet.step("p_f", drawn.probability(), "", "probability of failure");
        sheet.step("c_d", study.designPoint().values().get(0), "kPa", "cohesion there");
        String json = RecordWriter.write(sheet.record());
        RecordReevaluation again = RecordReevaluation.of(json);
        assertTrue(again.isConsistent(), again::toString);
        assertEquals(0, again.nodes().count(Outcome.CANNOT_TELL));

        String tampered = json.replace("\"value\" : 5000", "\"value\" : 6000");
        assertTrue(!tampered.equals(json), "the record holds the spread of the cohesion");
        assertTrue(!RecordReevaluation.of(tampered).isConsistent(), "another spread shows");
    }

    @Test
    void theOriginListsGivensDistributionsAndSources() {
        String text =
                Origin.of(study.designPoint().index().named("β", "", "index"))
                        .text()
                        .replace('\u00A0', ' ')
                        .replace('\u202F', ' ');
        for (String part :
                List.of("study.designpoint", "F =", "c = 25 kPa", "s_c = 5 kPa", "ρ = ")) {
            assertTrue(text.contains(part), () -> part + " in\n" + text);
        }
        assertTrue(text.contains("shear tests"), text);
    }

    /** A given that is not uncertain moves the index as it moves the formula. */
    @Test
    void theIndexFollowsEveryNumberItRestsOn() {
        Quantity index = study.designPoint().index();
        Tape tape = Tape.of(List.of(index), List.of(slide.weight, deviation));
        assertEquals(index.si(), tape.evaluate(new double[] {26_000, 5_000})[0]);

        PlaneSlide same = new PlaneSlide();
        Quantity heavier = PlaneSlide.given("γ", 28, "kN/m³");
        WhatIf changed = WhatIf.of(List.of(index, factor), List.of()).change(slide.weight, heavier);
        double byTape = tape.evaluate(new double[] {28_000, 5_000})[0];
        assertEquals(byTape, changed.results().get(0).after().si(), 1e-12);
        assertTrue(byTape != index.si(), "the weight matters");
        assertTrue(tape.gradient(new double[] {26_000, 5_000})[0][1] < 0, "spread is bad");
        assertEquals(same.factor().si(), factor.si());
    }

    @Test
    void aFormulaThatDoesNotGiveTheDemandIsRefused() {
        FlatGraph graph = FlatGraph.lay(List.of(study.designPoint().index())).graph();
        FlatCall call = graph.calls().get(0);
        Map<String, Object> components = new HashMap<>(call.components());
        String formula = String.valueOf(components.get("formula"));
        components.put("formula", formula.replaceFirst("multiply", "divide"));
        FlatGraph another =
                new FlatGraph(
                        graph.nodes(),
                        List.of(new FlatCall(call.name(), 1, call.inputs(), components)),
                        graph.tables());
        List<Reevaluation.Finding> differ = Reevaluation.of(another).all(Outcome.DIFFERS);
        assertEquals(1, differ.size());
        assertTrue(differ.get(0).reason().contains("formula"), differ.get(0).reason());
    }

    @Test
    void aNamedResultMayBeTheUncertainOne() {
        Quantity load = PlaneSlide.given("q", 4, "kN/m");
        Quantity moment = load.times(Quantity.of(6, "m").squared()).over(8).named("M", "kN·m", "");
        Check bends = new Check("bending", moment, null, Quantity.of(40, "kN·m"));
        Quantity index =
                Reliability.of(
                                bends,
                                Uncertainty.none()
                                        .with(
                                                moment,
                                                Distribution.normal(
                                                        Quantity.of(20, "kN·m"),
                                                        Quantity.of(5, "kN·m"))))
                        .designPoint()
                        .index();
        assertEquals(4, index.si(), 1e-12);
        Reevaluation again = Reevaluation.of(FlatGraph.lay(List.of(index)).graph());
        assertTrue(again.isConsistent());
    }

    /** Choices, tables and routines in the formula come back with the record. */
    @Property(tries = 20)
    void branchesTablesAndRoutinesAreRunAgain(@ForAll @IntRange(min = 1, max = 400) int tenths) {
        Quantity height = PlaneSlide.given("h", tenths / 10.0, "m");
        InterpolationTable table =
                new InterpolationTable(
                        "k_h",
                        "factor by height",
                        InterpolationTable.Axis.linear("m", -100, 10, 200),
                        InterpolationTable.Axis.linear("kN/m²", 0.5, 0.75, 1.3),
                        Source.book("A book", "table 3"));
        Quantity read =
                Quantity.choose(
                        height.moreThan(Quantity.of(12, "m")),
                        () -> height.interpolated(table),
                        () -> height.times(Quantity.of(0.06, "kN/m³")));
        Check check = new Check("pressure", read, null, Quantity.of(2, "kN/m²"));
        Reliability study =
                Reliability.of(
                        check,
                        Uncertainty.none()
                                .with(height, Distribution.normal(height, Quantity.of(3, "m"))));
        Simulation drawn = study.simulate(Sampling.of(3000).on(2));
        Reevaluation again = Reevaluation.of(FlatGraph.lay(List.of(drawn.mean())).graph());
        assertEquals(List.of(), again.all(Outcome.DIFFERS));
        assertEquals(0, again.count(Outcome.CANNOT_TELL));
    }

    /** Doubles a number; of the author's own, so no reader of a record has it. */
    static final class Own implements Routine<Own.Input, Own.Output> {

        record Input(Quantity number) {}

        record Output(Quantity twice) {}

        @Override
        public String name() {
            return "own.double";
        }

        @Override
        public int edition() {
            return 1;
        }

        @Override
        public Output run(Input input, Stop stop) {
            return new Output(Quantity.of(2 * input.number().si()));
        }
    }

    @Test
    void aRoutineOfTheAuthorsOwnInTheFormulaLeavesItOpen() {
        Quantity number = PlaneSlide.given("x", 1, "");
        Quantity twice = Routines.call(new Own(), new Own.Input(number)).twice();
        Check check = new Check("not too much", twice, null, Quantity.of(4));
        Quantity index =
                Reliability.of(
                                check,
                                Uncertainty.none()
                                        .with(
                                                number,
                                                Distribution.normal(
                                                        Quantity.of(1), Quantity.of(0.25))))
                        .designPoint()
                        .index();
        assertEquals(4, index.si(), 1e-6);
        Reevaluation again = Reevaluation.of(FlatGraph.lay(List.of(index)).graph());
        assertEquals(List.of(), again.all(Outcome.DIFFERS));
        assertEquals(2, again.count(Outcome.CANNOT_TELL));
    }

    @Test
    void aFormulaTooLargeToBeKeptIsRefused() {
        Quantity x = PlaneSlide.given("x", 1, "");
        Quantity sum = x;
        for (int i = 0; i < StudyFormula.MOST_NODES; i++) {
            sum = sum.plus(x);
        }
        Check check = new Check("sum", sum, null, Quantity.of(1e6));
        Uncertainty one =
                Uncertainty.none().with(x, Distribution.normal(Quantity.of(1), Quantity.of(1)));
        IllegalArgumentException refused =
                assertThrows(IllegalArgumentException.class, () -> Reliability.of(check, one));
        assertTrue(
                refused.getMessage().contains("at most " + StudyFormula.MOST_NODES),
                refused::getMessage);
    }
}
