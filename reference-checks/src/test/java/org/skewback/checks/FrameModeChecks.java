package org.skewback.checks;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.skewback.frame.Bar;
import org.skewback.frame.BeamColumn;
import org.skewback.frame.FrameModel;
import org.skewback.frame.FrameModelBuilder;
import org.skewback.frame.LineMass;
import org.skewback.frame.LinearAnalysis;
import org.skewback.frame.LoadCase;
import org.skewback.frame.Material;
import org.skewback.frame.ModalAnalysis;
import org.skewback.frame.Mode;
import org.skewback.frame.Modes;
import org.skewback.frame.Motion;
import org.skewback.frame.Movement;
import org.skewback.frame.NodalLoad;
import org.skewback.frame.NodalMass;
import org.skewback.frame.Vector;
import org.skewback.quantity.Quantity;
import org.skewback.steel.Rectangle;
import org.skewback.steel.Section;

/** Checks of the natural vibrations of frames. */
public final class FrameModeChecks implements Subject {

    /** Makes the subject. */
    public FrameModeChecks() {}

    @Override
    public String topic() {
        return "frame";
    }

    @Override
    public String table() {
        return "frame-modes";
    }

    @Override
    public Map<String, Checked> routines() {
        Map<String, Checked> routines = new TreeMap<>();
        routines.put("ModalAnalysis: beam", FrameModeChecks::beam);
        routines.put("ModalAnalysis: deep beam", FrameModeChecks::deepBeam);
        routines.put("ModalAnalysis: circular arch", FrameModeChecks::circularArch);
        routines.put("ModalAnalysis: shear frame", FrameModeChecks::shearFrame);
        routines.put("ModalAnalysis: twisting rod", FrameModeChecks::twistingRod);
        return routines;
    }

    private static Quantity of(double value, String unit) {
        return Quantity.of(value, unit);
    }

    /** A beam of unit mass and bending stiffness, so slender that rotary inertia vanishes. */
    private static Map<String, Quantity> beam(Inputs in) {
        double length = in.si("length");
        Material material = new Material("m", 1e12, 1e12, 1, 0);
        Section section = Section.slender("s", 1, 1e-12, 1e-12, 1e-12);
        FrameModelBuilder builder =
                FrameModel.builder()
                        .inPlane()
                        .node("A", 0, 0, 0)
                        .node("B", length, 0, 0)
                        .add(BeamColumn.of("m", "A", "B", material, section))
                        .hold("A", Motion.ALONG_X, Motion.ALONG_Z);
        String[] ends = in.text("ends").split(" ");
        if (ends[0].equals("fixed")) {
            builder.hold("A", Motion.ABOUT_Y);
        }
        if (!ends[1].equals("free")) {
            builder.hold("B", Motion.ALONG_Z);
        }
        if (ends[1].equals("fixed")) {
            builder.hold("B", Motion.ABOUT_Y);
        }
        FrameModel model = builder.build();
        ModalAnalysis analysis = ModalAnalysis.of(model).divided(48);
        if (in.has("mass at the end")) {
            analysis = analysis.with(NodalMass.of("B", in.si("mass at the end")));
        }
        if (in.has("inertia at the end")) {
            analysis =
                    analysis.with(
                            new NodalMass("B", 0, new Vector(0, in.si("inertia at the end"), 0)));
        }
        if (in.has("axial force")) {
            analysis =
                    analysis.under(
                            LinearAnalysis.of(model)
                                    .solve(
                                            LoadCase.of(
                                                    "N",
                                                    NodalLoad.force(
                                                            "B", in.si("axial force"), 0, 0))));
        }
        Modes modes = analysis.modes(3);
        Map<String, Quantity> results = new TreeMap<>();
        for (int k = 0; k < 3; k++) {
            Mode mode = modes.get(k);
            results.put("circular frequency " + (k + 1), of(mode.circularFrequency(), "rad/s"));
            results.put("effective mass " + (k + 1), of(mode.effectiveMass(Motion.ALONG_Z), "kg"));
            Movement end = mode.shape().movement("B");
            results.put("shape at the end " + (k + 1), of(end.translation().z(), ""));
            results.put("turn at the end " + (k + 1), of(-end.rotation().y() * length, ""));
            Movement middle = mode.shape().along("m", length / 2);
            results.put("shape in the middle " + (k + 1), of(middle.translation().z(), ""));
            results.put("turn in the middle " + (k + 1), of(-middle.rotation().y() * length, ""));
        }
        return results;
    }

    private static Map<String, Quantity> deepBeam(Inputs in) {
        double e = in.si("young modulus");
        boolean slender = in.has("theory") && in.text("theory").equals("Euler and Bernoulli");
        double density = in.si("density");
        Material material = Material.of("m", e, in.si("poisson ratio"), slender ? 0 : density, 0);
        double width = in.si("width");
        double height = in.si("height");
        Section section =
                in.has("shear factor")
                        ? Section.of(
                                "s",
                                width * height,
                                in.si("shear factor") * width * height,
                                in.si("shear factor") * width * height,
                                1,
                                width * height * height * height / 12,
                                1)
                        : new Rectangle(width, height).section("s");
        if (slender) {
            // No shear flexibility, and mass on the axis alone.
            section =
                    Section.slender("s", section.area(), 1, section.inertiaY(), section.inertiaZ());
        }
        double line = slender ? density * section.area() : 0;
        FrameModel model =
                FrameModel.builder()
                        .inPlane()
                        .node("A", 0, 0, 0)
                        .node("B", in.si("length"), 0, 0)
                        .add(BeamColumn.of("m", "A", "B", material, section))
                        .hold("A", Motion.ALONG_X, Motion.ALONG_Z)
                        .hold("B", Motion.ALONG_Z)
                        .build();
        Modes modes = ModalAnalysis.of(model).divided(120).with(new LineMass("m", line)).modes(5);
        Map<String, Quantity> results = new TreeMap<>();
        int bending = 0;
        for (Mode mode : modes.list()) {
            if (mode.shape().mainDirection() == Motion.ALONG_Z) {
                results.put("bending " + ++bending, of(mode.frequency(), "Hz"));
            } else if (!results.containsKey("axial")) {
                results.put("axial", of(mode.frequency(), "Hz"));
            }
        }
        return results;
    }

    private static Map<String, Quantity> circularArch(Inputs in) {
        double half = in.si("half angle");
        int parts = 200;
        // Unit mass and bending stiffness; no shortening.
        Material material = new Material("m", 1e8, 1e8, 1, 0);
        Section section = Section.slender("s", 1, 1e-8, 1e-8, 1e-8);
        FrameModelBuilder builder = FrameModel.builder().inPlane();
        for (int i = 0; i <= parts; i++) {
            double angle = half * (2.0 * i / parts - 1);
            builder.node("" + i, StrictMath.sin(angle), 0, StrictMath.cos(angle));
            if (i > 0) {
                builder.add(BeamColumn.of("m" + i, "" + (i - 1), "" + i, material, section));
            }
        }
        for (String end : List.of("0", "" + parts)) {
            builder.hold(end, Motion.ALONG_X, Motion.ALONG_Z);
            if (in.text("springings").equals("fixed")) {
                builder.hold(end, Motion.ABOUT_Y);
            }
        }
        Modes modes = ModalAnalysis.of(builder.build()).divided(1).modes(2);
        return Map.of(
                "ω R² √(m/EI)", of(modes.get(0).circularFrequency(), ""),
                "second ω R² √(m/EI)", of(modes.get(1).circularFrequency(), ""));
    }

    /** Storeys that only shear, as a chain of bars. */
    private static Map<String, Quantity> shearFrame(Inputs in) {
        int storeys = 5;
        Material material = new Material("m", 1, 1, 0, 0);
        Section section = Section.slender("s", in.si("storey stiffness"), 1, 1, 1);
        FrameModelBuilder builder = FrameModel.builder().node("0", 0, 0, 0).pin("0");
        NodalMass[] masses = new NodalMass[storeys];
        for (int i = 1; i <= storeys; i++) {
            builder.node("" + i, i, 0, 0)
                    .hold("" + i, Motion.ALONG_Y, Motion.ALONG_Z)
                    .add(Bar.of("m" + i, "" + (i - 1), "" + i, material, section));
            masses[i - 1] = NodalMass.of("" + i, in.si("floor mass"));
        }
        Modes modes = ModalAnalysis.of(builder.build()).with(masses).modes(storeys);
        Map<String, Quantity> results = new TreeMap<>();
        for (int k = 0; k < storeys; k++) {
            results.put("period " + (k + 1), of(modes.get(k).period(), "s"));
            results.put(
                    "effective mass " + (k + 1),
                    of(modes.get(k).effectiveMass(Motion.ALONG_X), "kg"));
        }
        results.put("total of effective masses", of(modes.massShare(Motion.ALONG_X), ""));
        return results;
    }

    private static Map<String, Quantity> twistingRod(Inputs in) {
        double density = in.si("density");
        double g = in.si("shear modulus");
        // A round rod: J is I_y + I_z. Bending is held down by its supports.
        Section section = Section.slender("s", 1, 2e-4, 1e-4, 1e-4);
        FrameModelBuilder builder = FrameModel.builder();
        int parts = 40;
        for (int i = 0; i <= parts; i++) {
            builder.node("" + i, in.si("length") * i / parts, 0, 0)
                    .pin("" + i)
                    .hold("" + i, Motion.ABOUT_Y, Motion.ABOUT_Z);
            if (i > 0) {
                builder.add(
                        BeamColumn.of(
                                "m" + i,
                                "" + (i - 1),
                                "" + i,
                                new Material("m", 2.6 * g, g, density, 0),
                                section));
            }
        }
        builder.hold("0", Motion.ABOUT_X);
        Modes modes = ModalAnalysis.of(builder.build()).divided(1).modes(2);
        return Map.of(
                "first frequency", of(modes.get(0).frequency(), "Hz"),
                "second frequency", of(modes.get(1).frequency(), "Hz"));
    }
}
