package org.skewback.checks;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.skewback.choice.BeamEstimate;
import org.skewback.choice.DeckSupports;
import org.skewback.choice.Measure;
import org.skewback.choice.Ranking;
import org.skewback.choice.RibEstimate;
import org.skewback.quantity.Quantity;

/** Checks of {@code org.skewback.choice}. */
public final class ChoiceChecks implements Subject {

    /** Makes the subject. */
    public ChoiceChecks() {}

    @Override
    public String topic() {
        return "choice";
    }

    @Override
    public Map<String, Checked> routines() {
        Map<String, Checked> routines = new TreeMap<>();
        routines.put("RibEstimate", ChoiceChecks::rib);
        routines.put("RibEstimate.quarterDeflection", ChoiceChecks::quarter);
        routines.put("DeckSupports", ChoiceChecks::supports);
        routines.put("BeamEstimate.flangeArea", ChoiceChecks::flanges);
        routines.put("BeamEstimate.endSpanDeflection", ChoiceChecks::endSpan);
        routines.put("BeamEstimate.hollowPier", ChoiceChecks::pier);
        routines.put("Ranking", ChoiceChecks::ranking);
        return routines;
    }

    private static Map<String, Quantity> rib(Inputs in) {
        Quantity span = in.quantity("span");
        Quantity rise = in.quantity("rise");
        Quantity stress = in.quantity("stress");
        Quantity weight = in.quantity("weight");
        Quantity makeUp = in.quantity("make-up");
        Map<String, Quantity> results = new LinkedHashMap<>();
        results.put(
                "own weight share", RibEstimate.ownWeightShare(span, rise, stress, weight, makeUp));
        if (in.has("load")) {
            Quantity chords =
                    RibEstimate.chordVolume(
                            in.quantity("moment"),
                            in.quantity("length"),
                            in.quantity("depth"),
                            stress);
            results.put("chord volume", chords);
            results.put(
                    "volume",
                    RibEstimate.volume(
                            in.quantity("load"), chords, span, rise, stress, weight, makeUp));
        }
        return results;
    }

    private static Map<String, Quantity> quarter(Inputs in) {
        Quantity second = RibEstimate.twoChords(in.quantity("area"), in.quantity("depth"));
        return Map.of(
                "second moment",
                second,
                "deflection",
                RibEstimate.quarterDeflection(
                        in.quantity("load"), in.quantity("span"), in.quantity("modulus"), second));
    }

    private static Map<String, Quantity> supports(Inputs in) {
        Quantity span = in.quantity("span");
        Quantity rise = in.quantity("rise");
        Quantity height = in.quantity("deck height");
        return Map.of(
                "hung length", DeckSupports.hungLength(span, rise, height),
                "hung area", DeckSupports.hungArea(span, rise, height),
                "column area", DeckSupports.columnArea(span, rise, height));
    }

    private static Map<String, Quantity> flanges(Inputs in) {
        return Map.of(
                "area",
                BeamEstimate.flangeArea(
                        in.quantity("load"),
                        in.quantity("span"),
                        in.quantity("depth"),
                        in.quantity("divisor"),
                        in.quantity("stress"),
                        in.quantity("webs"),
                        in.quantity("weight"),
                        in.quantity("make-up")));
    }

    private static Map<String, Quantity> endSpan(Inputs in) {
        return Map.of(
                "deflection",
                BeamEstimate.endSpanDeflection(
                        in.quantity("load"),
                        in.quantity("span"),
                        in.quantity("modulus"),
                        in.quantity("second moment")));
    }

    private static Map<String, Quantity> pier(Inputs in) {
        return Map.of(
                "volume",
                BeamEstimate.hollowPier(
                        in.quantity("height"),
                        in.quantity("top width"),
                        in.quantity("batter"),
                        in.quantity("wall")));
    }

    private static Map<String, Quantity> ranking(Inputs in) {
        List<Quantity> weights = in.quantities("weights");
        List<Measure> measures = new ArrayList<>();
        for (int j = 0; j < weights.size(); j++) {
            String name = String.valueOf((char) ('a' + j));
            measures.add(new Measure(name, weights.get(j), in.quantities(name)));
        }
        List<String> options = new ArrayList<>();
        for (int i = 0; i < measures.get(0).values().size(); i++) {
            options.add("option " + (i + 1));
        }
        Ranking ranking = new Ranking(options, measures);
        Map<String, Quantity> results = new LinkedHashMap<>();
        List<Double> shares = ranking.firstShares((int) in.si("parts"));
        for (int i = 0; i < options.size(); i++) {
            results.put("score " + (i + 1), ranking.scores().get(i));
            results.put("first share " + (i + 1), Quantity.of(shares.get(i)));
        }
        results.put("first", Quantity.of(ranking.order().get(0) + 1));
        results.put("last", Quantity.of(ranking.order().get(options.size() - 1) + 1));
        for (Measure measure : measures) {
            for (int i = 0; i < options.size(); i++) {
                results.put(measure.name() + " of option " + (i + 1), measure.values().get(i));
                results.put(
                        "place of option " + (i + 1) + " in " + measure.name(),
                        measure.places().get(i));
            }
        }
        for (Ranking.Turn turn : ranking.turns()) {
            String side = turn.turning().si() < turn.weight().si() ? " below" : " above";
            results.put("turn of " + turn.measure() + side, turn.turning());
            results.put("weight of " + turn.measure(), turn.weight());
            results.put(
                    "option after the turn of " + turn.measure() + side,
                    Quantity.of(options.indexOf(turn.option()) + 1));
        }
        return results;
    }
}
