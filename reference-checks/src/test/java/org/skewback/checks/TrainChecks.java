package org.skewback.checks;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.skewback.data.CsvTable;
import org.skewback.frame.BeamColumn;
import org.skewback.frame.ForceComponent;
import org.skewback.frame.FrameModel;
import org.skewback.frame.InfluenceLine;
import org.skewback.frame.Lane;
import org.skewback.frame.LinearAnalysis;
import org.skewback.frame.LoadTrain;
import org.skewback.frame.Material;
import org.skewback.frame.Motion;
import org.skewback.frame.Passage;
import org.skewback.frame.Response;
import org.skewback.frame.SectionProfile;
import org.skewback.frame.Vector;
import org.skewback.quantity.Quantity;
import org.skewback.steel.Section;
import org.skewback.train.TrainLoad;

/** Checks of {@code org.skewback.train}. */
public final class TrainChecks implements Subject {

    private static final Map<String, TrainLoad> MODELS =
            TrainLoad.read(CsvTable.read(Path.of("../shared/trains/load-models.csv")));

    /** Makes the subject. */
    public TrainChecks() {}

    @Override
    public String topic() {
        return "train";
    }

    @Override
    public Map<String, Checked> routines() {
        Map<String, Checked> routines = new TreeMap<>();
        routines.put("TrainLoad.over", TrainChecks::over);
        routines.put("TrainLoad.asForces", TrainChecks::forces);
        return routines;
    }

    private static Map<String, Quantity> over(Inputs in) {
        double span = in.si("span");
        double overhang = in.has("overhang") ? in.si("overhang") : 0;
        TrainLoad train = train(in);
        LinearAnalysis beam = beam(span, overhang);
        Passage moment =
                train.over(line(beam, overhang, "m", in.si("at"), ForceComponent.MOMENT_Y), 0.05);
        Map<String, Quantity> results = new LinkedHashMap<>();
        results.put("largest moment", Quantity.of(moment.largest(), "N·m"));
        results.put("smallest moment", Quantity.of(moment.smallest(), "N·m"));
        Passage support =
                train.over(
                        InfluenceLine.of(
                                beam, Response.reaction("a", Vector.Z), lane(beam, overhang)),
                        0.05);
        results.put("largest reaction", Quantity.of(support.largest(), "N"));
        return results;
    }

    private static Map<String, Quantity> forces(Inputs in) {
        double sum = 0;
        double moment = 0;
        for (var axle : train(in).asForces(in.si("piece"), in.si("length")).axles()) {
            sum += axle.force();
            moment += axle.force() * axle.behind();
        }
        return Map.of(
                "weight",
                Quantity.of(sum, "N"),
                "centre",
                Quantity.of(moment / sum, "m"),
                "length",
                Quantity.of(train(in).length(), "m"),
                "weight of its axles",
                Quantity.of(
                        train(in).axles().stream().mapToDouble(LoadTrain.Axle::force).sum(), "N"),
                "weight of its stretches",
                Quantity.of(
                        train(in).stretches().stream()
                                .mapToDouble(s -> (s.to() - s.from()) * s.intensity())
                                .sum(),
                        "N"));
    }

    private static TrainLoad train(Inputs in) {
        TrainLoad train = MODELS.get(in.text("train"));
        if (train == null) {
            throw new IllegalArgumentException("allowed are the trains " + MODELS.keySet());
        }
        return in.has("factor") ? train.times(in.si("factor")) : train;
    }

    private static LinearAnalysis beam(double span, double overhang) {
        var builder =
                FrameModel.builder()
                        .node("a", 0, 0, 0)
                        .node("b", span, 0, 0)
                        .hold("a", Motion.ALONG_X, Motion.ALONG_Y, Motion.ALONG_Z, Motion.ABOUT_X)
                        .hold("b", Motion.ALONG_Y, Motion.ALONG_Z)
                        .add(member("m", "a", "b"));
        if (overhang > 0) {
            builder.node("c", span + overhang, 0, 0).add(member("o", "b", "c"));
        }
        return LinearAnalysis.of(builder.build());
    }

    private static InfluenceLine line(
            LinearAnalysis beam,
            double overhang,
            String member,
            double at,
            ForceComponent component) {
        return InfluenceLine.of(beam, Response.force(member, at, component), lane(beam, overhang));
    }

    private static Lane lane(LinearAnalysis beam, double overhang) {
        return Lane.along(
                "track",
                beam.model(),
                overhang > 0 ? List.of("m", "o") : List.of("m"),
                Vector.ZERO);
    }

    private static BeamColumn member(String name, String start, String end) {
        return BeamColumn.of(
                name,
                start,
                end,
                Material.steel(),
                SectionProfile.uniform(Section.slender("s", 0.1, 0.1, 0.1, 0.1)));
    }
}
