package org.skewback.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.skewback.frame.Bar;
import org.skewback.frame.BeamColumn;
import org.skewback.frame.FrameModel;
import org.skewback.frame.FrameModelBuilder;
import org.skewback.frame.LargeDisplacementAnalysis;
import org.skewback.frame.LargeState;
import org.skewback.frame.Load;
import org.skewback.frame.LoadCase;
import org.skewback.frame.Material;
import org.skewback.frame.Motion;
import org.skewback.frame.Movement;
import org.skewback.frame.NodalLoad;
import org.skewback.frame.Orientation;
import org.skewback.frame.Vector;
import org.skewback.quantity.Quantity;
import org.skewback.steel.Section;

/** Checks of frames that move far. */
public final class FrameLargeChecks implements Subject {

    /** Makes the subject. */
    public FrameLargeChecks() {}

    @Override
    public String topic() {
        return "frame";
    }

    @Override
    public String table() {
        return "frame-large";
    }

    @Override
    public Map<String, Checked> routines() {
        Map<String, Checked> routines = new TreeMap<>();
        routines.put("LargeDisplacementAnalysis: cantilever", FrameLargeChecks::cantilever);
        routines.put("LargeDisplacementAnalysis: cantilever sideways", FrameLargeChecks::sideways);
        routines.put("LargeDisplacementAnalysis: beam-column", FrameLargeChecks::beamColumn);
        routines.put("LargeDisplacementAnalysis: two bars", FrameLargeChecks::twoBars);
        routines.put("LargeDisplacementAnalysis: Lee's frame", FrameLargeChecks::leesFrame);
        routines.put("LargeDisplacementAnalysis: bend", FrameLargeChecks::bend);
        routines.put("LargeDisplacementAnalysis: toggle", FrameLargeChecks::toggle);
        routines.put("LargeDisplacementAnalysis: sinusoidal arch", FrameLargeChecks::sinusoidal);
        routines.put("LargeDisplacementAnalysis: arch that sways", FrameLargeChecks::swaying);
        return routines;
    }

    private static Quantity of(double value, String unit) {
        return Quantity.of(value, unit);
    }

    /** A cantilever of length 1 and EI = 1 that does not stretch. */
    private static FrameModel unitCantilever() {
        Material material = new Material("m", 1e6, 1e6, 0, 0);
        return FrameModel.builder()
                .inPlane()
                .node("A", 0, 0, 0)
                .node("B", 1, 0, 0)
                .add(
                        BeamColumn.of(
                                "m", "A", "B", material, Section.slender("s", 1, 1e-6, 1e-6, 1e-6)))
                .fix("A")
                .build();
    }

    /** The same in space, bent sideways. */
    private static Map<String, Quantity> sideways(Inputs in) {
        FrameModel flat = unitCantilever();
        FrameModel model =
                FrameModel.builder()
                        .node(flat.node("A"))
                        .node(flat.node("B"))
                        .add(flat.member("m"))
                        .fix("A")
                        .build();
        List<LargeState> path =
                LargeDisplacementAnalysis.of(model)
                        .divided(40)
                        .load(LoadCase.of("P", NodalLoad.force("B", 0, -in.si("P L²/EI"), 0)), 10);
        Movement tip = path.get(path.size() - 1).movement("B");
        return Map.of(
                "v/L", of(-tip.translation().y(), ""),
                "u/L", of(-tip.translation().x(), ""),
                "rotation", of(-tip.rotation().z(), "rad"));
    }

    private static Map<String, Quantity> cantilever(Inputs in) {
        double force = in.has("P L²/EI") ? in.si("P L²/EI") : 0;
        double moment = in.has("M L/EI") ? in.si("M L/EI") : 0;
        List<LargeState> path =
                LargeDisplacementAnalysis.of(unitCantilever())
                        .divided(40)
                        .load(
                                LoadCase.of(
                                        "P",
                                        NodalLoad.force("B", 0, 0, -force),
                                        NodalLoad.moment("B", 0, moment, 0)),
                                10);
        Movement tip = path.get(path.size() - 1).movement("B");
        return Map.of(
                "v/L", of(-tip.translation().z(), ""),
                "u/L", of(-tip.translation().x(), ""),
                "rotation", of(tip.rotation().y(), "rad"));
    }

    /** A slender cantilever under an axial load with a small force across: P-Δ and P-δ. */
    private static Map<String, Quantity> beamColumn(Inputs in) {
        double critical = Math.PI * Math.PI / 4;
        double across = 1e-4;
        List<LargeState> path =
                LargeDisplacementAnalysis.of(unitCantilever())
                        .divided(40)
                        .load(
                                LoadCase.of(
                                        "P",
                                        NodalLoad.force(
                                                "B", -in.si("N/N_cr") * critical, 0, -across)),
                                1);
        LargeState last = path.get(0);
        return Map.of(
                "amplification of deflection",
                of(-last.movement("B").translation().z() / (across / 3), ""),
                "amplification of moment",
                of(-last.at("m", 0).momentY() / across, ""));
    }

    private static Map<String, Quantity> twoBars(Inputs in) {
        double rise = in.si("rise");
        double half = in.si("half span");
        Material material = new Material("m", in.si("axial stiffness"), 1, 0, 0);
        Section section = Section.slender("s", 1, 1, 1, 1);
        FrameModel model =
                FrameModel.builder()
                        .inPlane()
                        .node("A", -half, 0, 0)
                        .node("B", half, 0, 0)
                        .node("C", 0, 0, rise)
                        .add(Bar.of("ac", "A", "C", material, section))
                        .add(Bar.of("bc", "B", "C", material, section))
                        .pin("A")
                        .pin("B")
                        .hold("C", Motion.ALONG_X)
                        .build();
        List<LargeState> path =
                LargeDisplacementAnalysis.of(model)
                        .follow(LoadCase.of("P", NodalLoad.force("C", 0, 0, -1)), rise / 400, 480);
        int peak = 0;
        while (path.get(peak + 1).factor() > path.get(peak).factor()) {
            peak++;
        }
        // Factors at three neighbours give the peak of the parabola through them.
        double[] f = new double[3];
        for (int k = 0; k < 3; k++) {
            f[k] = path.get(peak - 1 + k).factor();
        }
        double shift = (f[0] - f[2]) / (2 * (f[0] - 2 * f[1] + f[2]));
        double step = rise / 400;
        double largest = f[1] + shift * (f[2] - f[0]) / 4;
        double at = -path.get(peak).movement("C").translation().z() + shift * step;
        return Map.of("limit load", of(largest, "N"), "deflection at it", of(at, "m"));
    }

    private static Map<String, Quantity> leesFrame(Inputs in) {
        double leg = in.si("leg");
        Material material = new Material("m", in.si("young modulus"), 1e20, 0, 0);
        Section section = Section.slender("s", in.si("area"), 1, in.si("second moment"), 1);
        FrameModel model =
                FrameModel.builder()
                        .inPlane()
                        .node("A", 0, 0, 0)
                        .node("B", 0, 0, leg)
                        .node("P", in.si("load at"), 0, leg)
                        .node("C", leg, 0, leg)
                        .add(BeamColumn.of("ab", "A", "B", material, section))
                        .add(BeamColumn.of("bp", "B", "P", material, section))
                        .add(BeamColumn.of("pc", "P", "C", material, section))
                        .pin("A")
                        .pin("C")
                        .build();
        List<LargeState> path =
                LargeDisplacementAnalysis.of(model)
                        .divided(32)
                        .follow(LoadCase.of("P", NodalLoad.force("P", 0, 0, -1)), 0.02, 420);
        double limit = 0;
        double back = 0;
        double before = 0;
        boolean falling = false;
        double deepest = 0;
        for (LargeState state : path) {
            double down = -state.movement("P").translation().z();
            if (!falling && state.factor() < before) {
                falling = true;
                limit = before;
            }
            deepest = Math.max(deepest, down);
            back = Math.max(back, deepest - down);
            before = state.factor();
        }
        double wanted = in.has("deflection") ? in.si("deflection") : leg / 12;
        return Map.of(
                "limit load", of(limit, "N"),
                "snaps back", of(back > 0 ? 1 : 0, ""),
                "load", of(loadAt(path, wanted), "N"));
    }

    /** Load at which the loaded point first comes so deep, straight between states. */
    private static double loadAt(List<LargeState> path, double deflection) {
        double down = 0;
        double load = 0;
        for (LargeState state : path) {
            double next = -state.movement("P").translation().z();
            if (next >= deflection) {
                return load + (deflection - down) / (next - down) * (state.factor() - load);
            }
            down = next;
            load = state.factor();
        }
        throw new IllegalArgumentException("the path does not come so deep");
    }

    private static Map<String, Quantity> bend(Inputs in) {
        double radius = 100;
        double e = 1e7;
        Material material = new Material("m", e, e / 2, 0, 0);
        double shear = in.has("shear area") ? in.si("shear area") : 1;
        Section section =
                Section.of("s", 1, shear, shear, in.si("torsion constant"), 1.0 / 12, 1.0 / 12);
        int parts = 48;
        FrameModelBuilder builder = FrameModel.builder();
        for (int i = 0; i <= parts; i++) {
            double angle = Math.PI / 4 * i / parts;
            builder.node(
                    "" + i,
                    radius * (1 - StrictMath.cos(angle)),
                    radius * StrictMath.sin(angle),
                    0);
            if (i > 0) {
                builder.add(
                        BeamColumn.of("m" + i, "" + (i - 1), "" + i, material, section)
                                .oriented(new Orientation(Vector.Z, 0)));
            }
        }
        builder.fix("0");
        List<LargeState> path =
                LargeDisplacementAnalysis.of(builder.build())
                        .divided(1)
                        .load(
                                LoadCase.of("P", NodalLoad.force("" + parts, 0, 0, in.si("force"))),
                                6);
        Vector tip = path.get(path.size() - 1).movement("" + parts).translation();
        return Map.of(
                "tip x", of(tip.x() + radius * (1 - Math.sqrt(0.5)), ""),
                "tip y", of(tip.y() + radius * Math.sqrt(0.5), ""),
                "tip z", of(tip.z(), ""));
    }

    /** Two clamped legs that meet in a flat apex; the apex is held against moving and turning aside. */
    private static Map<String, Quantity> toggle(Inputs in) {
        double half = in.si("half span");
        Material material = new Material("m", 1, 1e20, 0, 0);
        Section section = Section.slender("s", in.si("EA"), 1, in.si("EI"), 1);
        FrameModel model =
                FrameModel.builder()
                        .inPlane()
                        .node("A", -half, 0, 0)
                        .node("C", 0, 0, in.si("rise"))
                        .add(BeamColumn.of("leg", "A", "C", material, section))
                        .fix("A")
                        .hold("C", Motion.ALONG_X, Motion.ABOUT_Y)
                        .build();
        List<LargeState> path =
                LargeDisplacementAnalysis.of(model)
                        .divided(48)
                        .follow(LoadCase.of("P", NodalLoad.force("C", 0, 0, -0.5)), 0.04, 110);
        return Map.of("force at the apex", of(at(path, "C", in.si("deflection")), ""));
    }

    /** The factor at a deflection, by the parabola through three states about it. */
    private static double at(List<LargeState> path, String node, double deflection) {
        int k = 1;
        while (k + 2 < path.size() && down(path.get(k), node) < deflection) {
            k++;
        }
        double sum = 0;
        for (int i = k - 1; i <= k + 1; i++) {
            double share = path.get(i).factor();
            for (int j = k - 1; j <= k + 1; j++) {
                if (j != i) {
                    double x = down(path.get(j), node);
                    share *= (deflection - x) / (down(path.get(i), node) - x);
                }
            }
            sum += share;
        }
        return sum;
    }

    private static double down(LargeState state, String node) {
        return -state.movement(node).translation().z();
    }

    /** Half of a shallow arch of span 200, rise 1, EI = 1, under a load that follows a sine. */
    private static Map<String, Quantity> sinusoidal(Inputs in) {
        double span = 1 / in.si("rise over span");
        int parts = 80;
        double area = 4 / in.si("4I/Af²");
        Material material = new Material("m", 1, 1e20, 0, 0);
        Section section = Section.slender("s", area, 1, 1, 1);
        FrameModelBuilder builder = FrameModel.builder().inPlane();
        NodalLoad[] loads = new NodalLoad[parts];
        double unit = StrictMath.pow(Math.PI / span, 4);
        for (int i = 0; i <= parts; i++) {
            double x = span / 2 * i / parts;
            double sine = StrictMath.sin(Math.PI * x / span);
            builder.node("" + i, x, 0, sine);
            if (i > 0) {
                builder.add(BeamColumn.of("m" + i, "" + (i - 1), "" + i, material, section));
                double share = i == parts ? 0.5 : 1;
                loads[i - 1] =
                        NodalLoad.force("" + i, 0, 0, -unit * sine * share * span / 2 / parts);
            }
        }
        String crown = "" + parts;
        builder.pin("0").hold(crown, Motion.ALONG_X, Motion.ABOUT_Y);
        List<LargeState> path =
                LargeDisplacementAnalysis.of(builder.build())
                        .divided(1)
                        .follow(LoadCase.of("q", loads), 0.25, 50);
        int peak = 1;
        while (path.get(peak + 1).factor() > path.get(peak).factor()) {
            peak++;
        }
        double[] f = new double[3];
        for (int k = 0; k < 3; k++) {
            f[k] = path.get(peak - 1 + k).factor();
        }
        double shift = (f[0] - f[2]) / (2 * (f[0] - 2 * f[1] + f[2]));
        return Map.of("limit load over π⁴EIf/l⁴", of(f[1] + shift * (f[2] - f[0]) / 4, ""));
    }

    /**
     * The whole arch, out of line by ε of its rise in two half-waves, which bounds its load where a perfect
     * one branches off; that load falls with ε^⅔, which two arches take away.
     */
    private static Map<String, Quantity> swaying(Inputs in) {
        double first = swayLimit(in, 8e-4);
        double second = swayLimit(in, 1e-4);
        return Map.of("load of branching over π⁴EIf/l⁴", of(second + (second - first) / 3, ""));
    }

    private static double swayLimit(Inputs in, double outOfLine) {
        double span = 1 / in.si("rise over span");
        int parts = 64;
        Material material = new Material("m", 1, 1e20, 0, 0);
        Section section = Section.slender("s", 4 / in.si("4I/Af²"), 1, 1, 1);
        FrameModelBuilder builder = FrameModel.builder().inPlane();
        List<Load> loads = new ArrayList<>();
        double unit = StrictMath.pow(Math.PI / span, 4);
        for (int i = 0; i <= parts; i++) {
            double angle = Math.PI * i / parts;
            double sine = StrictMath.sin(angle);
            double sway = outOfLine * StrictMath.sin(2 * angle);
            builder.node("" + i, span * i / parts, 0, sine + sway);
            if (i > 0) {
                builder.add(BeamColumn.of("m" + i, "" + (i - 1), "" + i, material, section));
                loads.add(NodalLoad.force("" + i, 0, 0, -unit * sine * span / parts));
            }
        }
        builder.pin("0").pin("" + parts);
        List<LargeState> path =
                LargeDisplacementAnalysis.of(builder.build())
                        .divided(1)
                        .follow(new LoadCase("q", loads), 0.05, 60);
        int peak = 1;
        while (path.get(peak + 1).factor() > path.get(peak).factor()) {
            peak++;
        }
        double[] f = new double[3];
        for (int k = 0; k < 3; k++) {
            f[k] = path.get(peak - 1 + k).factor();
        }
        double shift = (f[0] - f[2]) / (2 * (f[0] - 2 * f[1] + f[2]));
        return f[1] + shift * (f[2] - f[0]) / 4;
    }
}
