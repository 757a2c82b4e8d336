package org.skewback.checks;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.skewback.frame.BeamColumn;
import org.skewback.frame.Combination;
import org.skewback.frame.CombinationRule;
import org.skewback.frame.Envelope;
import org.skewback.frame.ForceComponent;
import org.skewback.frame.FrameModel;
import org.skewback.frame.FrameModelBuilder;
import org.skewback.frame.FrameSolution;
import org.skewback.frame.InfluenceSurface;
import org.skewback.frame.Lane;
import org.skewback.frame.LineLoad;
import org.skewback.frame.LinearAnalysis;
import org.skewback.frame.LoadAxes;
import org.skewback.frame.LoadCase;
import org.skewback.frame.Material;
import org.skewback.frame.Motion;
import org.skewback.frame.PointLoad;
import org.skewback.frame.Response;
import org.skewback.frame.Superposition;
import org.skewback.frame.Vector;
import org.skewback.quantity.Quantity;
import org.skewback.steel.Section;

/** Checks of sums of cases, envelopes and influence surfaces. */
public final class FrameCombinationChecks implements Subject {

    private static final Material MATERIAL = new Material("m", 2e11, 1e11, 0, 0);
    private static final Section SECTION = Section.slender("s", 1e-1, 1e-3, 1e-3, 1e-3);

    /** Makes the subject. */
    public FrameCombinationChecks() {}

    @Override
    public String topic() {
        return "frame";
    }

    @Override
    public String table() {
        return "frame-combination";
    }

    @Override
    public Map<String, Checked> routines() {
        Map<String, Checked> routines = new TreeMap<>();
        routines.put("Envelope: rule", FrameCombinationChecks::rule);
        routines.put("Envelope: combinations", FrameCombinationChecks::combinations);
        routines.put("Superposition", FrameCombinationChecks::superposition);
        routines.put("InfluenceSurface: two beams", FrameCombinationChecks::surface);
        return routines;
    }

    private static Quantity of(double value, String unit) {
        return Quantity.of(value, unit);
    }

    private static void beam(FrameModelBuilder builder, String name, double length, double y) {
        builder.node(name + "0", 0, y, 0)
                .node(name + "1", length, y, 0)
                .add(BeamColumn.of(name, name + "0", name + "1", MATERIAL, SECTION))
                .pin(name + "0")
                .hold(name + "0", Motion.ABOUT_X)
                .hold(name + "1", Motion.ALONG_Y, Motion.ALONG_Z);
    }

    private static List<FrameSolution> cases(Inputs in) {
        double length = in.si("length");
        FrameModelBuilder builder = FrameModel.builder();
        beam(builder, "b", length, 0);
        double q = in.si("Q");
        return LinearAnalysis.of(builder.build())
                .solve(
                        List.of(
                                LoadCase.of(
                                        "G",
                                        LineLoad.uniform(
                                                "b",
                                                new Vector(0, 0, -in.si("G")),
                                                LoadAxes.LOCAL)),
                                LoadCase.of(
                                        "Q1", PointLoad.of("b", length / 2, new Vector(0, 0, -q))),
                                LoadCase.of(
                                        "Q2", PointLoad.of("b", length / 4, new Vector(0, 0, -q))),
                                LoadCase.of(
                                        "W",
                                        LineLoad.uniform(
                                                "b",
                                                new Vector(0, 0, in.si("W")),
                                                LoadAxes.LOCAL))));
    }

    private static Map<String, Quantity> rule(Inputs in) {
        CombinationRule rule =
                new CombinationRule(
                        "R",
                        List.of(
                                CombinationRule.Term.of("G", 1, 1.35),
                                CombinationRule.Term.oneOf(1.5, "Q1", "Q2"),
                                CombinationRule.Term.of("W", 0, 0.9)));
        Envelope envelope = Envelope.of(cases(in), rule, 5);
        return Map.of(
                "largest moment at midspan",
                of(envelope.largest("b", 2, ForceComponent.MOMENT_Y).value(), "N·m"),
                "smallest moment at midspan",
                of(envelope.smallest("b", 2, ForceComponent.MOMENT_Y).value(), "N·m"),
                "largest moment at 2.5 m",
                of(envelope.largest("b", 1, ForceComponent.MOMENT_Y).value(), "N·m"),
                "shear with the smallest moment at 2.5 m",
                of(envelope.smallest("b", 1, ForceComponent.MOMENT_Y).concurrent().shearZ(), "N"));
    }

    private static Map<String, Quantity> combinations(Inputs in) {
        Envelope envelope =
                Envelope.of(
                        cases(in),
                        List.of(
                                new Combination("A", Map.of("G", 1.2, "Q1", 1.1)),
                                new Combination("B", Map.of("G", 0.9, "W", 1.3))),
                        5);
        return Map.of(
                "largest moment at midspan",
                of(envelope.largest("b", 2, ForceComponent.MOMENT_Y).value(), "N·m"),
                "smallest moment at midspan",
                of(envelope.smallest("b", 2, ForceComponent.MOMENT_Y).value(), "N·m"),
                "sum with twice itself",
                of(
                        envelope.plus(2, envelope).largest("b", 2, ForceComponent.MOMENT_Y).value(),
                        "N·m"));
    }

    private static Map<String, Quantity> superposition(Inputs in) {
        FrameSolution sum =
                Superposition.of(cases(in), new Combination("A", Map.of("G", 1.2, "Q1", 1.1)));
        return Map.of(
                "moment at 2.5 m", of(sum.member("b").at(2.5).momentY(), "N·m"),
                "rotation at the start", of(sum.movement("b0").rotation().y(), "rad"));
    }

    private static Map<String, Quantity> surface(Inputs in) {
        double length = in.si("length");
        double distance = in.si("distance");
        FrameModelBuilder builder = FrameModel.builder();
        beam(builder, "near", length, 0);
        beam(builder, "far", length, distance);
        FrameModel model = builder.build();
        InfluenceSurface surface =
                InfluenceSurface.of(
                        LinearAnalysis.of(model),
                        Response.force("near", 4, ForceComponent.MOMENT_Y),
                        List.of(
                                Lane.along("far", model, List.of("far"), Vector.ZERO),
                                Lane.along("near", model, List.of("near"), Vector.ZERO)),
                        distance,
                        0);
        return Map.of("moment at 4 m", of(surface.value(in.si("along"), in.si("across")), "m"));
    }
}
