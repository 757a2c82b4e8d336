package org.skewback.action;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.skewback.action.BridgeTemperatureTest.assertRefused;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.skewback.data.CsvTable;
import org.skewback.frame.BeamColumn;
import org.skewback.frame.Envelope;
import org.skewback.frame.ForceComponent;
import org.skewback.frame.FrameModel;
import org.skewback.frame.FrameSolution;
import org.skewback.frame.LinearAnalysis;
import org.skewback.frame.LoadCase;
import org.skewback.frame.Material;
import org.skewback.frame.NodalLoad;
import org.skewback.frame.SectionProfile;
import org.skewback.frame.Vector;
import org.skewback.quantity.Quantity;
import org.skewback.steel.Section;

class CombinationTablesTest {

    private static final Path SHARED = Path.of("../../shared/combinations");
    private static final CombinationTables TABLES =
            CombinationTables.of(
                    CsvTable.read(SHARED.resolve("railway-bridge-actions.csv")),
                    CsvTable.read(SHARED.resolve("rules.csv")));
    private static final List<String> ALL =
            List.of("permanent load", "rail traffic", "wind", "wind with train", "temperature");

    /** Each variable action leads in turn, and what excludes each other is in no situation together. */
    @Test
    void everyVariableActionLeadsAndNoneMeetsWhatItExcludes() {
        List<Situation> situations = TABLES.situations("fundamental", ALL);

        assertEquals(
                List.of(
                        "6.10, rail traffic leading",
                        "6.10, wind with train leading",
                        "6.10, temperature leading",
                        "6.10, wind leading",
                        "6.10, temperature leading"),
                situations.stream().map(Situation::name).toList());
        for (Situation situation : situations) {
            assertTrue(
                    !situation.factors().containsKey("wind")
                            || !situation.factors().containsKey("rail traffic"));
        }
    }

    /** Where leading and accompanying actions have one factor, there is one situation. */
    @Test
    void whatWouldDifferInNameAloneIsThereOnce() {
        assertEquals(2, TABLES.situations("quasi-permanent", ALL).size());
    }

    /** A permanent action that helps counts with its smaller factor, a variable one not at all. */
    @Test
    void whatHelpsCountsLess() {
        Situation leading = TABLES.situations("fundamental", ALL).get(0);
        Map<String, List<Quantity>> effects =
                Map.of(
                        "permanent load", List.of(kilonewtons(-100)),
                        "rail traffic", List.of(kilonewtons(40), kilonewtons(-60)),
                        "wind with train", List.of(kilonewtons(10), kilonewtons(-10)),
                        "temperature", List.of(kilonewtons(-5)));

        assertEquals(-100 + 1.45 * 40 + 1.5 * 10, leading.largest(effects).value().in("kN"), 1e-9);
        assertEquals(
                -135 - 1.45 * 60 - 1.5 * 10 - 0.9 * 5,
                leading.smallest(effects).value().in("kN"),
                1e-9);
        assertEquals(
                "1.00 permanent load + 1.45 rail traffic + 1.50 wind with train",
                leading.largest(effects).words());
    }

    /** The governing value follows its inputs: where another situation takes over, the value knows. */
    @Test
    void theGoverningSituationIsNamed() {
        Map<String, List<Quantity>> windy =
                Map.of(
                        "permanent load", List.of(kilonewtons(10)),
                        "rail traffic", List.of(kilonewtons(1)),
                        "wind", List.of(kilonewtons(50)));
        Situation.Governing governing =
                Situation.largest(TABLES.situations("fundamental", ALL.subList(0, 3)), windy);

        assertEquals("6.10, wind leading", governing.situation());
        assertEquals(1.35 * 10 + 1.5 * 50, governing.value().in("kN"), 1e-9);
    }

    /** A frame's envelope by the situation's rule gives what the situation gives by hand. */
    @Test
    void theFrameTakesTheRule() {
        FrameModel model =
                FrameModel.builder()
                        .node("a", 0, 0, 0)
                        .node("b", 5, 0, 0)
                        .add(
                                BeamColumn.of(
                                        "m",
                                        "a",
                                        "b",
                                        Material.steel(),
                                        SectionProfile.uniform(
                                                Section.slender("s", 1e-2, 1e-4, 1e-4, 1e-4))))
                        .fix("a")
                        .build();
        List<FrameSolution> solutions =
                LinearAnalysis.of(model)
                        .solve(
                                List.of(
                                        pull("G", -100e3),
                                        pull("T+", 20e3),
                                        pull("T-", -30e3),
                                        pull("W", 7e3)));
        Map<String, List<String>> cases =
                Map.of(
                        "permanent load", List.of("G"),
                        "temperature", List.of("T+", "T-"),
                        "wind", List.of("W"));
        Situation wind =
                TABLES.situations("fundamental", List.of("permanent load", "wind", "temperature"))
                        .get(0);

        Envelope envelope = wind.envelope(solutions, cases, Map.of(), 2);

        assertEquals("6.10, wind leading", wind.name());
        assertEquals(
                -100e3 + 1.5 * 7e3 + 0.9 * 20e3,
                envelope.largest("m", 0, ForceComponent.AXIAL).value(),
                1e-6);
        assertEquals(
                -135e3 - 0.9 * 30e3, envelope.smallest("m", 0, ForceComponent.AXIAL).value(), 1e-6);
    }

    private static LoadCase pull(String name, double force) {
        return LoadCase.of(name, new NodalLoad("b", new Vector(force, 0, 0), Vector.ZERO));
    }

    /** An earthquake acts with the factor 1 beside quasi-permanent values. */
    @Test
    void anEventActsWithTheFactorOne() {
        List<Situation> seismic =
                TABLES.situations(
                        "seismic", List.of("permanent load", "temperature"), "earthquake");

        assertEquals(1, seismic.size());
        assertEquals(1, seismic.get(0).factors().get("earthquake").high());
        assertEquals(0.5, seismic.get(0).factors().get("temperature").high());
        assertEquals(new FactorRange(true, 1, 1), seismic.get(0).factors().get("permanent load"));
    }

    @Test
    void badInputIsNamed() {
        assertRefused(
                () -> TABLES.situations("6.10", ALL), "rule of combination is \"6.10\"", "seismic");
        assertRefused(
                () -> TABLES.situations("fundamental", List.of("snow")), "action is \"snow\"");
        assertRefused(() -> TABLES.situations("seismic", ALL), "event of rule seismic is \"\"");
        assertRefused(
                () -> TABLES.situations("fundamental", ALL, "quake"),
                "event of rule fundamental is \"quake\"");
        Situation situation = TABLES.situations("fundamental", ALL).get(0);
        assertRefused(() -> situation.largest(Map.of()), "number of effects");
        assertRefused(
                () ->
                        situation.largest(
                                Map.of("permanent load", List.of(kilonewtons(1), kilonewtons(2)))),
                "number of effects of permanent load is 2");
        CsvTable rules =
                CsvTable.parse(
                        "rules",
                        "rule,formula,permanent,leading,accompanying,event\nr,1,γ,γ ψ9,1,no\n");
        assertRefused(
                () ->
                        CombinationTables.of(
                                        CsvTable.read(SHARED.resolve("railway-bridge-actions.csv")),
                                        rules)
                                .situations("r", ALL),
                "factor in a rule of combination is \"ψ9\"");
    }

    private static Quantity kilonewtons(double value) {
        return Quantity.of(value, "kN");
    }
}
