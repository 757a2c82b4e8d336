package org.skewback.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.skewback.cable.Cable;
import org.skewback.frame.BeamColumn;
import org.skewback.frame.CableMember;
import org.skewback.frame.CablePull;
import org.skewback.frame.FrameModel;
import org.skewback.frame.FrameSolution;
import org.skewback.frame.LackOfFit;
import org.skewback.frame.LargeDisplacementAnalysis;
import org.skewback.frame.LargeState;
import org.skewback.frame.LineLoad;
import org.skewback.frame.LinearAnalysis;
import org.skewback.frame.LoadAxes;
import org.skewback.frame.LoadCase;
import org.skewback.frame.Material;
import org.skewback.frame.Motion;
import org.skewback.frame.NodalLoad;
import org.skewback.frame.Node;
import org.skewback.frame.Stage;
import org.skewback.frame.StageAction;
import org.skewback.frame.StageAnalysis;
import org.skewback.frame.StageResult;
import org.skewback.frame.Vector;
import org.skewback.quantity.Quantity;
import org.skewback.steel.Section;

/** Checks of cables as members of frames. */
public final class FrameCableChecks implements Subject {

    /** Makes the subject. */
    public FrameCableChecks() {}

    @Override
    public String topic() {
        return "cable";
    }

    @Override
    public String table() {
        return "frame-cable";
    }

    @Override
    public Map<String, Checked> routines() {
        Map<String, Checked> routines = new TreeMap<>();
        routines.put("CableMember: hung between supports", FrameCableChecks::hung);
        routines.put("CableMember: hanger", FrameCableChecks::hanger);
        routines.put(
                "LargeDisplacementAnalysis: hanger pulled aside", FrameCableChecks::pulledAside);
        routines.put("CableMember: tangent stiffness", FrameCableChecks::tangent);
        routines.put("LargeDisplacementAnalysis: stayed mast", FrameCableChecks::largeMast);
        routines.put("LinearAnalysis: stayed mast", FrameCableChecks::linearMast);
        routines.put("StageAnalysis: cable tensioned", FrameCableChecks::tensioned);
        routines.put("LinearAnalysis: cable made longer", FrameCableChecks::longer);
        return routines;
    }

    private static Quantity of(double value, String unit) {
        return Quantity.of(value, unit);
    }

    private static Cable cable(Inputs in) {
        return new Cable(in.si("unstressed length"), in.si("weight"), in.si("EA"));
    }

    private static FrameModel between(Inputs in) {
        return FrameModel.builder()
                .node("A", 0, 0, 0)
                .node("B", 0, in.si("span"), in.si("rise"))
                .add(new CableMember("c", "A", "B", cable(in)))
                .fix("A")
                .fix("B")
                .build();
    }

    /** Between supports nothing is unknown; a beam beside gives the analysis something to solve. */
    private static FrameModel withBeam(FrameModel model) {
        return model.toBuilder()
                .node("C", 1, 0, 0)
                .add(
                        BeamColumn.of(
                                "beside",
                                "A",
                                "C",
                                Material.steel(),
                                Section.slender("s", 1, 1, 1, 1)))
                .build();
    }

    private static Map<String, Quantity> hung(Inputs in) {
        FrameSolution solution =
                LinearAnalysis.of(withBeam(between(in))).solve(LoadCase.of("G", CablePull.ofAll()));
        return Map.of(
                "horizontal reaction", of(-solution.reaction("A").force().y(), "N"),
                "vertical reaction at the start", of(solution.reaction("A").force().z(), "N"),
                "tension at the start", of(solution.member("c").start().axial(), "N"),
                "tension at the end", of(solution.member("c").end().axial(), "N"));
    }

    /** What a load adds to a hanger that is pulled already. */
    private static Map<String, Quantity> hanger(Inputs in) {
        Cable cable = cable(in);
        double tension = in.si("tension at the foot");
        double height =
                cable.unstressedLength()
                        * (1
                                + (tension + cable.weightPerLength() * cable.unstressedLength() / 2)
                                        / cable.axialStiffness());
        FrameModel model =
                FrameModel.builder()
                        .node("top", 0, 0, 0)
                        .node("foot", 0, 0, -height)
                        .add(new CableMember("c", "top", "foot", cable))
                        .pin("top")
                        .build();
        FrameSolution solution =
                LinearAnalysis.of(model)
                        .solve(
                                LoadCase.of(
                                        "P",
                                        CablePull.ofAll(),
                                        NodalLoad.force(
                                                "foot",
                                                in.si("sideways"),
                                                0,
                                                -in.si("load") - tension)));
        Vector moved = solution.movement("foot").translation();
        return Map.of(
                "movement of the foot downward", of(-moved.z(), "m"),
                "movement of the foot sideways", of(moved.x(), "m"),
                "tension at the top", of(solution.member("c").start().axial(), "N"));
    }

    private static Map<String, Quantity> pulledAside(Inputs in) {
        FrameModel model =
                FrameModel.builder()
                        .node("top", 0, 0, 0)
                        .node("foot", 0, 0, -1.001 * in.si("unstressed length"))
                        .add(new CableMember("c", "top", "foot", cable(in)))
                        .pin("top")
                        .build();
        LoadCase load =
                LoadCase.of(
                        "P",
                        NodalLoad.force(
                                "foot", in.si("horizontal force"), 0, -in.si("vertical force")));
        List<LargeState> path = LargeDisplacementAnalysis.of(model).load(load, 4);
        Vector moved = path.get(path.size() - 1).movement("foot").translation();
        return Map.of(
                "level movement of the foot",
                of(moved.x(), "m"),
                "depth of the foot",
                of(1.001 * in.si("unstressed length") - moved.z(), "m"));
    }

    private static Map<String, Quantity> longer(Inputs in) {
        FrameSolution solution =
                LinearAnalysis.of(withBeam(between(in)))
                        .solve(LoadCase.of("L", new LackOfFit("c", in.si("longer"))));
        return Map.of(
                "change of tension at the start",
                of(solution.member("c").start().axial(), "N"),
                "change of the vertical reaction at the end",
                of(solution.reaction("B").force().z(), "N"),
                "change of the horizontal reaction at the start",
                of(-solution.reaction("A").force().y(), "N"));
    }

    private static Map<String, Quantity> tangent(Inputs in) {
        double level = in.si("level length");
        double rise = in.si("rise");
        double area = in.si("area");
        double e = in.si("young modulus");
        double stress = in.si("stress");
        double chord = Math.hypot(level, rise);
        Node low = new Node("A", Vector.ZERO);
        Node high = new Node("B", new Vector(level, 0, rise));
        double horizontal = stress * area * level / chord;
        CableMember stay =
                CableMember.drawnTo(
                        "c", low, high, in.si("unit weight") * area, e * area, horizontal);
        double unstressed = stay.cable().unstressedLength();
        FrameModel model =
                FrameModel.builder()
                        .node(low)
                        .node(high)
                        .add(stay)
                        .pin("A")
                        .spring("B", Motion.ALONG_X, 1e3)
                        .spring("B", Motion.ALONG_Y, 1e3)
                        .spring("B", Motion.ALONG_Z, 1e3)
                        .build();
        double[][] flexibility = new double[3][3];
        LinearAnalysis analysis = LinearAnalysis.of(model);
        for (int j = 0; j < 3; j++) {
            Vector moved =
                    analysis.solve(
                                    LoadCase.of(
                                            "1",
                                            NodalLoad.force(
                                                    "B",
                                                    j == 0 ? 1 : 0,
                                                    j == 1 ? 1 : 0,
                                                    j == 2 ? 1 : 0)))
                            .movement("B")
                            .translation();
            flexibility[0][j] = moved.x();
            flexibility[1][j] = moved.y();
            flexibility[2][j] = moved.z();
        }
        // Stiffness in the plane by inversion, less the springs; along the chord with its normal
        // held.
        double determinant =
                flexibility[0][0] * flexibility[2][2] - flexibility[0][2] * flexibility[2][0];
        double xx = flexibility[2][2] / determinant - 1e3;
        double zz = flexibility[0][0] / determinant - 1e3;
        double xz = -flexibility[0][2] / determinant;
        double c = level / chord;
        double s = rise / chord;
        double along = c * c * xx + 2 * c * s * xz + s * s * zz;
        double across = 1 / flexibility[1][1] - 1e3;
        return Map.of(
                "equivalent modulus", of(along * unstressed / area, "Pa"),
                "stiffness across over H/L", of(across * level / horizontal, ""));
    }

    private static FrameModel mast(Inputs in) {
        double height = in.si("height");
        double anchor = in.si("anchors");
        Material rigid = new Material("rigid", 2e14, 1e14, 0, 0);
        return FrameModel.builder()
                .inPlane()
                .node("F", 0, 0, 0)
                .node("H", 0, 0, height)
                .node("L", -anchor, 0, 0)
                .node("R", anchor, 0, 0)
                .add(BeamColumn.of("mast", "F", "H", rigid, Section.slender("s", 1, 1, 1, 1)))
                .add(new CableMember("left", "L", "H", cable(in)))
                .add(new CableMember("right", "H", "R", cable(in)))
                .pin("F")
                .pin("L")
                .pin("R")
                .build();
    }

    private static Map<String, Quantity> largeMast(Inputs in) {
        LoadCase load =
                LoadCase.of(
                        "P",
                        NodalLoad.force(
                                "H", in.si("horizontal force"), 0, -in.si("vertical force")));
        List<LargeState> path = LargeDisplacementAnalysis.of(mast(in)).divided(1).load(load, 2);
        LargeState last = path.get(path.size() - 1);
        Cable cable = cable(in);
        return Map.of(
                "movement of the head",
                of(last.movement("H").translation().x(), "m"),
                "horizontal force of the windward stay",
                of(level(last, "left", cable), "N"),
                "horizontal force of the leeward stay",
                of(level(last, "right", cable), "N"));
    }

    /** From the tensions at both ends, whose vertical parts differ by the weight. */
    private static double level(LargeState state, String member, Cable cable) {
        double length = cable.unstressedLength();
        double first = state.at(member, 0).axial();
        double last = state.at(member, length).axial();
        double weight = cable.weightPerLength() * length;
        double vertical = (first * first - last * last + weight * weight) / (2 * weight);
        return Math.sqrt(first * first - vertical * vertical);
    }

    private static Map<String, Quantity> linearMast(Inputs in) {
        FrameSolution solution =
                LinearAnalysis.of(mast(in))
                        .solve(
                                LoadCase.of(
                                        "P",
                                        NodalLoad.force("H", in.si("horizontal force"), 0, 0)));
        return Map.of("movement of the head", of(solution.movement("H").translation().x(), "m"));
    }

    private static Map<String, Quantity> tensioned(Inputs in) {
        double length = in.si("length");
        double e = 2e11;
        Section section = Section.slender("s", 3e5, 1, in.si("EI") / e, 1);
        double high = length * StrictMath.tan(in.si("stay angle"));
        Node anchor = new Node("A", new Vector(0, 0, high));
        Node tip = new Node("B", new Vector(length, 0, 0));
        FrameModel model =
                FrameModel.builder()
                        .inPlane()
                        .node("O", 0, 0, 0)
                        .node(anchor)
                        .node(tip)
                        .add(
                                BeamColumn.of(
                                        "beam", "O", "B", new Material("m", e, e, 0, 0), section))
                        .add(
                                CableMember.drawnTo(
                                        "stay", anchor, tip, in.si("weight"), in.si("EA"), 3e6))
                        .fix("O")
                        .pin("A")
                        .build();
        List<Stage> stages = new ArrayList<>();
        stages.add(
                Stage.of(
                        "beam",
                        new StageAction.Install(List.of("beam"), StageAction.Fit.DESIGNED),
                        new StageAction.Apply(
                                LoadCase.of(
                                        "w",
                                        LineLoad.uniform(
                                                "beam",
                                                new Vector(0, 0, -in.si("load")),
                                                LoadAxes.GLOBAL)))));
        stages.add(
                Stage.of(
                        "stay",
                        new StageAction.Install(List.of("stay"), StageAction.Fit.FITTED),
                        new StageAction.Tension("stay", in.si("tension"))));
        if (in.has("slackened by")) {
            stages.add(Stage.of("slacken", new StageAction.Jack("stay", in.si("slackened by"))));
        }
        List<StageResult> results = StageAnalysis.of(model).run(stages);
        StageResult last = results.get(results.size() - 1);
        FrameSolution solution = last.solution();
        return Map.of(
                "movement of the tip",
                of(solution.movement("B").translation().z(), "m"),
                "unstressed length",
                of(last.unstressedLengths().get("stay"), "m"),
                "tension at the anchor",
                of(solution.member("stay").start().axial(), "N"),
                "vertical force on the tip",
                of(-solution.member("beam").end().shearZ(), "N"));
    }
}
