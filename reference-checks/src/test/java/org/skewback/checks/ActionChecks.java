package org.skewback.checks;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.skewback.action.BridgeDeck;
import org.skewback.action.BridgeTemperature;
import org.skewback.action.CombinationTables;
import org.skewback.action.DeckSurface;
import org.skewback.action.FactorRange;
import org.skewback.action.Situation;
import org.skewback.data.CsvTable;
import org.skewback.frame.BeamColumn;
import org.skewback.frame.Combination;
import org.skewback.frame.Envelope;
import org.skewback.frame.ForceComponent;
import org.skewback.frame.FrameModel;
import org.skewback.frame.LineLoad;
import org.skewback.frame.LinearAnalysis;
import org.skewback.frame.LoadAxes;
import org.skewback.frame.LoadCase;
import org.skewback.frame.Material;
import org.skewback.frame.Motion;
import org.skewback.frame.PointLoad;
import org.skewback.frame.SectionProfile;
import org.skewback.frame.Vector;
import org.skewback.quantity.Quantity;
import org.skewback.steel.Section;

/** Checks of {@code org.skewback.action}. */
public final class ActionChecks implements Subject {

    private static final Path SHARED = Path.of("../shared/combinations");

    /** Makes the subject. */
    public ActionChecks() {}

    @Override
    public String topic() {
        return "action";
    }

    @Override
    public Map<String, Checked> routines() {
        Map<String, Checked> routines = new TreeMap<>();
        routines.put("BridgeTemperature", ActionChecks::uniform);
        routines.put("BridgeTemperature: difference", ActionChecks::difference);
        routines.put("BridgeTemperature: both", ActionChecks::both);
        routines.put("BridgeTemperature: probability", ActionChecks::probability);
        routines.put("CombinationTables", ActionChecks::combination);
        routines.put("Situation.envelope", ActionChecks::envelope);
        return routines;
    }

    private static Map<String, Quantity> uniform(Inputs in) {
        BridgeDeck deck = BridgeDeck.valueOf(in.text("deck"));
        Quantity warmest = BridgeTemperature.warmest(in.quantity("hottest air"), deck);
        Quantity coldest = BridgeTemperature.coldest(in.quantity("coldest air"), deck);
        Map<String, Quantity> results = new LinkedHashMap<>();
        results.put("warmest", warmest);
        results.put("coldest", coldest);
        if (in.has("initial")) {
            Quantity initial = in.quantity("initial");
            boolean known = in.has("setting") && in.text("setting").equals("laid down");
            Quantity expansion = BridgeTemperature.expansion(warmest, initial);
            Quantity contraction = BridgeTemperature.contraction(initial, coldest);
            results.put("expansion", expansion);
            results.put("contraction", contraction);
            results.put("bearing expansion", BridgeTemperature.bearingRange(expansion, known));
            results.put("bearing contraction", BridgeTemperature.bearingRange(contraction, known));
            if (in.has("length")) {
                Quantity strain = in.quantity("expansion coefficient").times(in.quantity("length"));
                results.put("lengthening", expansion.times(strain));
                results.put("shortening", contraction.times(strain));
            }
        }
        return results;
    }

    private static Map<String, Quantity> difference(Inputs in) {
        BridgeDeck deck = BridgeDeck.valueOf(in.text("deck"));
        Map<String, Quantity> results = new LinkedHashMap<>();
        for (boolean topWarmer : new boolean[] {true, false}) {
            Quantity factor =
                    in.has("surface")
                            ? deck.surfacingFactor(
                                    DeckSurface.valueOf(in.text("surface")), topWarmer)
                            : deck.surfacingFactor(in.quantity("surfacing"), topWarmer);
            String way = topWarmer ? "heating" : "cooling";
            results.put("factor, " + way, factor);
            results.put(way, BridgeTemperature.difference(deck, factor, topWarmer));
        }
        return results;
    }

    private static Map<String, Quantity> both(Inputs in) {
        Quantity difference = in.quantity("of difference");
        Quantity uniform = in.quantity("of uniform");
        return Map.of(
                "difference leading",
                        BridgeTemperature.differenceLeading(
                                difference, uniform, in.quantity("ω_N")),
                "uniform leading",
                        BridgeTemperature.uniformLeading(difference, uniform, in.quantity("ω_M")));
    }

    private static Map<String, Quantity> probability(Inputs in) {
        Quantity probability = in.quantity("probability");
        return Map.of(
                "hottest air",
                BridgeTemperature.hottestAir(in.quantity("hottest"), probability),
                "coldest air",
                BridgeTemperature.coldestAir(in.quantity("coldest"), probability));
    }

    private static Map<String, Quantity> combination(Inputs in) {
        CombinationTables tables =
                CombinationTables.of(
                        CsvTable.read(SHARED.resolve("railway-bridge-actions.csv")),
                        CsvTable.read(SHARED.resolve("rules.csv")));
        Map<String, List<Quantity>> effects = new LinkedHashMap<>();
        for (String action :
                List.of(
                        "permanent load",
                        "rail traffic",
                        "wind",
                        "wind with train",
                        "temperature")) {
            if (in.has(action)) {
                effects.put(action, in.quantities(action));
            }
        }
        List<String> present = List.copyOf(effects.keySet());
        boolean event = in.has("event");
        if (event) {
            effects.put("event", in.quantities("event"));
        }
        List<Situation> situations =
                tables.situations(in.text("rule"), present, event ? "event" : "");
        double sum =
                situations.stream()
                        .flatMap(situation -> situation.factors().values().stream())
                        .mapToDouble(FactorRange::high)
                        .sum();
        return Map.of(
                "largest", Situation.largest(situations, effects).value(),
                "smallest", Situation.smallest(situations, effects).value(),
                "situations", Quantity.of(situations.size()),
                "sum of all factors", Quantity.of(sum));
    }

    /** A simple beam under its weight, wind from below and a force that may stand at midspan. */
    private static Map<String, Quantity> envelope(Inputs in) {
        double length = in.si("length");
        FrameModel beam =
                FrameModel.builder()
                        .node("a", 0, 0, 0)
                        .node("b", length, 0, 0)
                        .pin("a")
                        .hold("a", Motion.ABOUT_X)
                        .hold("b", Motion.ALONG_Y, Motion.ALONG_Z)
                        .add(
                                BeamColumn.of(
                                        "m",
                                        "a",
                                        "b",
                                        Material.steel(),
                                        SectionProfile.uniform(
                                                Section.slender("s", 0.1, 0.1, 0.1, 0.1))))
                        .build();
        LinearAnalysis analysis = LinearAnalysis.of(beam);
        LoadCase train =
                LoadCase.of(
                        "force", PointLoad.of("m", length / 2, new Vector(0, 0, -in.si("force"))));
        Envelope moving =
                Envelope.of(
                        List.of(analysis.solve(train)),
                        List.of(
                                new Combination("there", Map.of("force", 1.0)),
                                new Combination("gone", Map.of("force", 0.0))),
                        3);
        Map<String, FactorRange> factors = new LinkedHashMap<>();
        factors.put("permanent load", new FactorRange(true, 1, 1.35));
        factors.put("wind", new FactorRange(false, 0, 1.5));
        factors.put("rail traffic", new FactorRange(false, 0, 1.45));
        Envelope envelope =
                new Situation("all", factors)
                        .envelope(
                                analysis.solve(
                                        List.of(
                                                uniform("weight", -in.si("weight")),
                                                uniform("uplift", in.si("uplift")))),
                                Map.of(
                                        "permanent load", List.of("weight"),
                                        "wind", List.of("uplift")),
                                Map.of("rail traffic", moving),
                                3);
        return Map.of(
                "largest",
                Quantity.of(envelope.largest("m", 1, ForceComponent.MOMENT_Y).value(), "N·m"),
                "smallest",
                Quantity.of(envelope.smallest("m", 1, ForceComponent.MOMENT_Y).value(), "N·m"));
    }

    private static LoadCase uniform(String name, double upward) {
        return LoadCase.of(name, LineLoad.uniform("m", new Vector(0, 0, upward), LoadAxes.GLOBAL));
    }
}
