package org.skewback.checks;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.skewback.frame.BeamColumn;
import org.skewback.frame.EndConnection;
import org.skewback.frame.ForceComponent;
import org.skewback.frame.FrameHistory;
import org.skewback.frame.FrameModel;
import org.skewback.frame.GroundMotion;
import org.skewback.frame.Material;
import org.skewback.frame.ModalAnalysis;
import org.skewback.frame.Motion;
import org.skewback.frame.NodalMass;
import org.skewback.frame.NonlinearLink;
import org.skewback.frame.RayleighDamping;
import org.skewback.frame.SpringLink;
import org.skewback.frame.SupportMotion;
import org.skewback.frame.TimeHistoryAnalysis;
import org.skewback.frame.Vector;
import org.skewback.numeric.Gap;
import org.skewback.numeric.Monitor;
import org.skewback.numeric.SlidingBearing;
import org.skewback.numeric.TimeScheme;
import org.skewback.quantity.Quantity;
import org.skewback.steel.Section;

/** Checks of frames under records of ground acceleration. */
public final class FrameHistoryChecks implements Subject {

    private static final double GRAVITY = 9.81;

    /** Makes the subject. */
    public FrameHistoryChecks() {}

    @Override
    public String topic() {
        return "frame";
    }

    @Override
    public String table() {
        return "frame-history";
    }

    @Override
    public Map<String, Checked> routines() {
        Map<String, Checked> routines = new TreeMap<>();
        routines.put("TimeHistoryAnalysis: mast", FrameHistoryChecks::mast);
        routines.put("TimeHistoryAnalysis: mass on a post", FrameHistoryChecks::post);
        routines.put("TimeHistoryAnalysis: block on friction", FrameHistoryChecks::friction);
        routines.put("TimeHistoryAnalysis: block at a stop", FrameHistoryChecks::stop);
        routines.put("RayleighDamping", FrameHistoryChecks::rayleigh);
        return routines;
    }

    private static Quantity of(double value, String unit) {
        return Quantity.of(value, unit);
    }

    private static double[] record(String words, int size, double step) {
        double[] record = new double[size];
        if (words.equals("ramp of 3 m/s³")) {
            Arrays.setAll(record, n -> 3 * n * step);
        } else if (words.equals("step of 2 m/s²")) {
            Arrays.fill(record, 2);
        } else {
            throw new IllegalArgumentException("record is \"" + words + "\".");
        }
        return record;
    }

    /** 1000 kg at the head of a mast of 10 m without mass, or between two springs on two supports. */
    private static Map<String, Quantity> mast(Inputs in) {
        double mass = 1000;
        double omega = in.si("circular frequency");
        double stiffness = mass * omega * omega;
        double height = 10;
        double e = 2e11;
        double step = in.si("step");
        int size = (int) Math.round(in.si("time") / step) + 1;
        double[] record = record(in.text("record"), size, step);
        if (in.has("supports")) {
            in.text("supports");
            EndConnection half = new EndConnection(stiffness / 2, 0, 0, 0, 0, 0);
            FrameModel model =
                    FrameModel.builder()
                            .node("L", -1, 0, 0)
                            .node("R", 1, 0, 0)
                            .node("M", 0, 0, 0)
                            .fix("L")
                            .fix("R")
                            .hold("M", Motion.ALONG_Y, Motion.ALONG_Z)
                            .hold("M", Motion.ABOUT_X, Motion.ABOUT_Y, Motion.ABOUT_Z)
                            .add(SpringLink.of("l", "L", "M", half))
                            .add(SpringLink.of("r", "M", "R", half))
                            .build();
            FrameHistory history =
                    TimeHistoryAnalysis.of(ModalAnalysis.of(model).with(NodalMass.of("M", mass)))
                            .damped(in.si("damping"))
                            .modal(
                                    1,
                                    step,
                                    List.of(
                                            new SupportMotion(
                                                    List.of("R"), Motion.ALONG_X, record)),
                                    Monitor.quiet());
            return Map.of("displacement", of(history.movement("M", Motion.ALONG_X)[size - 1], "m"));
        }
        Section section =
                Section.slender("s", 1e4, 1, stiffness * height * height * height / (3 * e), 1);
        FrameModel model =
                FrameModel.builder()
                        .inPlane()
                        .node("F", 0, 0, 0)
                        .node("H", 0, 0, height)
                        .add(
                                BeamColumn.of(
                                        "mast", "F", "H", new Material("m", e, e, 0, 0), section))
                        .fix("F")
                        .build();
        TimeHistoryAnalysis analysis =
                TimeHistoryAnalysis.of(
                                ModalAnalysis.of(model).divided(1).with(NodalMass.of("H", mass)))
                        .damped(in.si("damping"));
        // Bending in the x–z plane of a mast: the moment about y at its foot balances k u h.
        GroundMotion motion = GroundMotion.along(step, Motion.ALONG_X, record);
        FrameHistory history;
        if (in.has("stepping")) {
            in.text("stepping");
            // Proportional to mass alone: one frequency at infinity.
            history =
                    analysis.direct(
                            motion,
                            TimeScheme.averageAcceleration(),
                            new RayleighDamping(in.si("damping"), omega, 1e12 * omega),
                            Monitor.quiet());
        } else {
            history = analysis.modal(1, motion);
        }
        return Map.of(
                "displacement",
                of(history.movement("H", Motion.ALONG_X)[size - 1], "m"),
                "moment at the foot",
                of(-history.reaction("F", Motion.ABOUT_Y)[size - 1], "N·m"));
    }

    /** A stiff block of the mass on a node that only moves along x and y. */
    private static TimeHistoryAnalysis block(double mass) {
        FrameModel model =
                FrameModel.builder()
                        .node("G", 0, 0, 0)
                        .node("B", 0, 0, 1)
                        .fix("G")
                        .hold("B", Motion.ALONG_Z, Motion.ABOUT_X, Motion.ABOUT_Y, Motion.ABOUT_Z)
                        // A spring that is nothing beside the mass: a period of hours.
                        .spring("B", Motion.ALONG_X, mass * 1e-8)
                        .spring("B", Motion.ALONG_Y, mass * 1e-8)
                        .build();
        return TimeHistoryAnalysis.of(ModalAnalysis.of(model).with(NodalMass.of("B", mass)))
                .damped(0);
    }

    private static GroundMotion constant(Inputs in) {
        double step = in.si("step");
        double[] record = new double[(int) Math.round(in.si("time") / step) + 1];
        Arrays.fill(record, in.si("acceleration"));
        return GroundMotion.along(step, Motion.ALONG_X, record);
    }

    /** Half a vibration after the ground has begun to accelerate, all at once and for good. */
    private static Map<String, Quantity> post(Inputs in) {
        Material material = new Material("m", in.si("young modulus"), 8e10, 0, 0);
        Section section = Section.slender("s", 0.1, 1e-4, in.si("second moment"), 1e-4);
        FrameModel model =
                FrameModel.builder()
                        .inPlane()
                        .node("A", 0, 0, 0)
                        .node("B", 0, 0, in.si("height"))
                        .add(BeamColumn.of("post", "A", "B", material, section))
                        .fix("A")
                        .build();
        ModalAnalysis analysis =
                ModalAnalysis.of(model).divided(4).with(NodalMass.of("B", in.si("mass")));
        double height = in.si("height");
        double omega =
                Math.sqrt(
                        3
                                * in.si("young modulus")
                                * in.si("second moment")
                                / (height * height * height * in.si("mass")));
        int steps = 64;
        double[] record = new double[steps + 1];
        Arrays.fill(record, in.si("acceleration"));
        FrameHistory history =
                TimeHistoryAnalysis.of(analysis)
                        .damped(0)
                        .with(NonlinearLink.stop("stop", "A", "B", Vector.X, new Gap(1e3, 1)))
                        .modal(
                                1,
                                GroundMotion.along(Math.PI / omega / steps, Motion.ALONG_X, record),
                                Monitor.quiet());
        double tip = history.movement("B", Motion.ALONG_X)[steps];
        return Map.of(
                "ω² movement over acceleration",
                        Quantity.of(tip * omega * omega / in.si("acceleration")),
                "movement of the middle over that of the end",
                        Quantity.of(
                                history.movement("post", height / 2, Motion.ALONG_X)[steps] / tip),
                "reaction", Quantity.of(history.reaction("A", Motion.ALONG_X)[steps], "N"),
                "size of the moment in the middle",
                        Quantity.of(
                                Math.abs(
                                        history.force("post", height / 2, ForceComponent.MOMENT_Y)[
                                                steps]),
                                "N·m"),
                "movement at the stop over that of the end",
                        Quantity.of(history.linkMovement("stop", 0)[steps] / tip));
    }

    private static Map<String, Quantity> friction(Inputs in) {
        double mass = in.si("mass");
        SlidingBearing bearing =
                new SlidingBearing(
                        in.si("friction coefficient") * mass * GRAVITY,
                        in.si("stick stiffness"),
                        0);
        GroundMotion motion = constant(in);
        FrameHistory history =
                block(mass).with(NonlinearLink.sliding("b", "G", "B", bearing)).modal(2, motion);
        return Map.of("movement", of(history.linkMovement("b", 0)[motion.size() - 1], "m"));
    }

    private static Map<String, Quantity> stop(Inputs in) {
        Gap gap = new Gap(in.si("opening"), in.si("stop stiffness"));
        FrameHistory history =
                block(in.si("mass"))
                        .with(NonlinearLink.stop("s", "G", "B", Vector.X.times(-1), gap))
                        .modal(2, constant(in));
        return Map.of(
                "largest movement",
                of(FrameHistory.largest(history.linkMovement("s", 0)), "m"),
                "largest force",
                of(FrameHistory.largest(history.linkForce("s", 0)), "N"));
    }

    private static Map<String, Quantity> rayleigh(Inputs in) {
        RayleighDamping damping =
                new RayleighDamping(in.si("ratio"), in.si("first"), in.si("second"));
        return Map.of("ζ", of(damping.at(in.si("at")), ""));
    }
}
