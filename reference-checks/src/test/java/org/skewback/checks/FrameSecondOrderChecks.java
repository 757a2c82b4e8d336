package org.skewback.checks;

import java.util.Map;
import java.util.TreeMap;
import java.util.function.DoubleFunction;
import org.skewback.frame.BeamColumn;
import org.skewback.frame.ForceComponent;
import org.skewback.frame.FrameModel;
import org.skewback.frame.FrameModelBuilder;
import org.skewback.frame.FrameSolution;
import org.skewback.frame.LineLoad;
import org.skewback.frame.LoadAxes;
import org.skewback.frame.LoadCase;
import org.skewback.frame.Material;
import org.skewback.frame.MemberForces;
import org.skewback.frame.Motion;
import org.skewback.frame.NodalLoad;
import org.skewback.frame.PointLoad;
import org.skewback.frame.SecondOrderAnalysis;
import org.skewback.frame.StabilityFunctions;
import org.skewback.frame.UnstableException;
import org.skewback.frame.Vector;
import org.skewback.quantity.Quantity;
import org.skewback.steel.Section;

/** Checks of second-order statics: one member a bar, of length 1 and EI = 1. */
public final class FrameSecondOrderChecks implements Subject {

    private static final double EULER = Math.PI * Math.PI;
    private static final Material MATERIAL = new Material("m", 1e6, 1e6, 0, 0);
    private static final Section SLENDER = Section.slender("s", 1, 1e-6, 1e-6, 1e-6);

    /** Makes the subject. */
    public FrameSecondOrderChecks() {}

    @Override
    public String topic() {
        return "frame";
    }

    @Override
    public String table() {
        return "frame-second-order";
    }

    @Override
    public Map<String, Checked> routines() {
        Map<String, Checked> routines = new TreeMap<>();
        routines.put("StabilityFunctions", FrameSecondOrderChecks::functions);
        routines.put("SecondOrderAnalysis: beam", FrameSecondOrderChecks::beam);
        routines.put("SecondOrderAnalysis: cantilever", FrameSecondOrderChecks::cantilever);
        routines.put("SecondOrderAnalysis: guided column", FrameSecondOrderChecks::guided);
        routines.put("SecondOrderAnalysis: critical load", FrameSecondOrderChecks::critical);
        routines.put("SecondOrderAnalysis: column under its weight", FrameSecondOrderChecks::heavy);
        return routines;
    }

    private static Quantity of(double value, String unit) {
        return Quantity.of(value, unit);
    }

    private static Map<String, Quantity> functions(Inputs in) {
        StabilityFunctions functions = StabilityFunctions.of(in.si("P/P_E"));
        return Map.of("s", of(functions.stiffness(), ""), "c", of(functions.carryOver(), ""));
    }

    private static FrameModelBuilder unit(Section section) {
        return FrameModel.builder()
                .inPlane()
                .node("A", 0, 0, 0)
                .node("B", 1, 0, 0)
                .add(BeamColumn.of("m", "A", "B", MATERIAL, section));
    }

    private static Map<String, Quantity> beam(Inputs in) {
        Section section = SLENDER;
        if (in.has("P_E/GA")) {
            section = Section.of("s", 1, 1, EULER / in.si("P_E/GA") * 1e-6, 1e-6, 1e-6, 1e-6);
        }
        boolean clamped = in.has("ends") && in.text("ends").equals("clamped");
        FrameModelBuilder builder = unit(section).pin("A").hold("B", Motion.ALONG_Z);
        if (clamped) {
            builder.hold("A", Motion.ABOUT_Y).hold("B", Motion.ABOUT_Y);
        }
        NodalLoad push = NodalLoad.force("B", -in.si("P/P_E") * EULER, 0, 0);
        LoadCase loads;
        double at = 0.5;
        double moment;
        double deflection;
        switch (in.text("load")) {
            case "uniform" -> {
                loads =
                        LoadCase.of(
                                "q",
                                push,
                                LineLoad.uniform("m", new Vector(0, 0, -1), LoadAxes.LOCAL));
                moment = clamped ? -1.0 / 12 : 1.0 / 8;
                at = clamped ? 0 : at;
                deflection = 5.0 / 384;
            }
            case "force in the middle" -> {
                loads = LoadCase.of("P", push, PointLoad.of("m", 0.5, new Vector(0, 0, -1)));
                moment = 1.0 / 4;
                deflection = 1.0 / 48;
            }
            case "force at 0.3" -> {
                loads = LoadCase.of("P", push, PointLoad.of("m", 0.3, new Vector(0, 0, -1)));
                moment = 0.3 * 0.7;
                at = 0.3;
                deflection = 1;
            }
            case "equal end moments" -> {
                loads =
                        LoadCase.of(
                                "M",
                                push,
                                NodalLoad.moment("A", 0, 1, 0),
                                NodalLoad.moment("B", 0, -1, 0));
                moment = 1;
                deflection = 1.0 / 8;
            }
            case "end moments 1 and 0.5" -> {
                loads =
                        LoadCase.of(
                                "M",
                                push,
                                NodalLoad.moment("A", 0, 1, 0),
                                NodalLoad.moment("B", 0, -0.5, 0));
                moment = 1;
                at = -1;
                deflection = 1;
            }
            default -> throw new IllegalArgumentException("load is \"" + in.text("load") + "\".");
        }
        FrameSolution solution = SecondOrderAnalysis.of(builder.build()).solve(loads);
        MemberForces member = solution.member("m");
        double found =
                at < 0
                        ? member.largest(ForceComponent.MOMENT_Y).forces().momentY()
                        : member.at(at).momentY();
        return Map.of(
                "amplification of moment",
                of(found / moment, ""),
                "amplification of deflection",
                of(-member.movement(0.5).translation().z() / deflection, ""));
    }

    private static Map<String, Quantity> cantilever(Inputs in) {
        double push = in.si("N/N_cr") * EULER / 4;
        FrameSolution solution =
                SecondOrderAnalysis.of(unit(SLENDER).fix("A").build())
                        .solve(LoadCase.of("P", NodalLoad.force("B", -push, 0, -1)));
        return Map.of(
                "amplification of deflection",
                of(-solution.movement("B").translation().z() * 3, ""),
                "amplification of moment",
                of(-solution.member("m").at(0).momentY(), ""));
    }

    private static Map<String, Quantity> guided(Inputs in) {
        FrameModel model = unit(SLENDER).fix("A").hold("B", Motion.ABOUT_Y).build();
        FrameSolution solution =
                SecondOrderAnalysis.of(model)
                        .solve(
                                LoadCase.of(
                                        "P", NodalLoad.force("B", -in.si("P/P_E") * EULER, 0, -1)));
        return Map.of(
                "amplification of sway", of(-solution.movement("B").translation().z() * 12, ""));
    }

    /** The load at which the analysis first refuses, by halving. */
    private static double limit(
            FrameModel model, double high, DoubleFunction<LoadCase> load, int spans) {
        double low = 0;
        double top = high;
        SecondOrderAnalysis analysis = SecondOrderAnalysis.of(model).divided(spans);
        while (top - low > 1e-9 * top) {
            double middle = (low + top) / 2;
            try {
                analysis.solve(load.apply(middle));
                low = middle;
            } catch (UnstableException e) {
                top = middle;
            }
        }
        return (low + top) / 2;
    }

    private static Map<String, Quantity> critical(Inputs in) {
        String ends = in.text("ends");
        FrameModelBuilder builder;
        if (ends.equals("portal on pins")) {
            Section beam =
                    Section.slender("b", 30, 1e-6, 1e-6 * in.si("beam stiffness ratio"), 1e-6);
            // So stiff along their axes that only bending counts.
            Section leg = Section.slender("c", 30, 1e-6, 1e-6, 1e-6);
            builder =
                    FrameModel.builder()
                            .inPlane()
                            .node("A", 0, 0, 0)
                            .node("B", 0, 0, 1)
                            .node("C", 1, 0, 1)
                            .node("D", 1, 0, 0)
                            .add(BeamColumn.of("ab", "A", "B", MATERIAL, leg))
                            .add(BeamColumn.of("bc", "B", "C", MATERIAL, beam))
                            .add(BeamColumn.of("dc", "D", "C", MATERIAL, leg))
                            .pin("A")
                            .pin("D");
            double found =
                    limit(
                            builder.build(),
                            EULER,
                            p ->
                                    LoadCase.of(
                                            "P",
                                            NodalLoad.force("B", 0, 0, -p),
                                            NodalLoad.force("C", 0, 0, -p)),
                            1);
            return Map.of("N_cr L²/EI", of(found, ""));
        }
        builder = unit(SLENDER).hold("A", Motion.ALONG_X, Motion.ALONG_Z);
        if (ends.startsWith("fixed")) {
            builder.hold("A", Motion.ABOUT_Y);
        }
        if (!ends.endsWith("free") && !ends.endsWith("guided")) {
            builder.hold("B", Motion.ALONG_Z);
        }
        if (ends.endsWith("guided") || ends.equals("fixed fixed")) {
            builder.hold("B", Motion.ABOUT_Y);
        }
        double found =
                limit(
                        builder.build(),
                        5 * EULER,
                        p -> LoadCase.of("P", NodalLoad.force("B", -p, 0, 0)),
                        1);
        return Map.of("N_cr L²/EI", of(found, ""));
    }

    private static Map<String, Quantity> heavy(Inputs in) {
        FrameModel model = unit(SLENDER).fix("A").build();
        double found =
                limit(
                        model,
                        2 * EULER,
                        q ->
                                LoadCase.of(
                                        "q",
                                        LineLoad.uniform(
                                                "m", new Vector(-q, 0, 0), LoadAxes.LOCAL)),
                        (int) in.si("spans"));
        return Map.of("q_cr L³/EI", of(found, ""));
    }
}
