package org.skewback.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.skewback.frame.Bar;
import org.skewback.frame.BeamColumn;
import org.skewback.frame.Combination;
import org.skewback.frame.EndConnection;
import org.skewback.frame.Envelope;
import org.skewback.frame.Equilibrium;
import org.skewback.frame.ForceComponent;
import org.skewback.frame.FrameModel;
import org.skewback.frame.FrameModelBuilder;
import org.skewback.frame.FrameSolution;
import org.skewback.frame.GroundMovement;
import org.skewback.frame.Lane;
import org.skewback.frame.LargeDisplacementAnalysis;
import org.skewback.frame.LargeState;
import org.skewback.frame.LinearAnalysis;
import org.skewback.frame.Load;
import org.skewback.frame.LoadAxes;
import org.skewback.frame.LoadCase;
import org.skewback.frame.LoadTrain;
import org.skewback.frame.Material;
import org.skewback.frame.Motion;
import org.skewback.frame.Movement;
import org.skewback.frame.MovingLoad;
import org.skewback.frame.NodalLoad;
import org.skewback.frame.Orientation;
import org.skewback.frame.PointLoad;
import org.skewback.frame.Reaction;
import org.skewback.frame.SecondOrderAnalysis;
import org.skewback.frame.SectionForces;
import org.skewback.frame.SelfWeight;
import org.skewback.frame.SpringLink;
import org.skewback.frame.Superposition;
import org.skewback.frame.Vector;
import org.skewback.frame.Warming;
import org.skewback.quantity.Quantity;
import org.skewback.steel.Section;

/** Checks of all six forces in space and of the energy that members, springs and supports hold. */
public final class FrameEnergyChecks implements Subject {

    /** Makes the subject. */
    public FrameEnergyChecks() {}

    @Override
    public String topic() {
        return "frame";
    }

    @Override
    public String table() {
        return "frame-energy";
    }

    @Override
    public Map<String, Checked> routines() {
        Map<String, Checked> routines = new TreeMap<>();
        routines.put("LinearAnalysis: cantilever in space", FrameEnergyChecks::space);
        routines.put("LargeDisplacementAnalysis: cantilever in space", FrameEnergyChecks::far);
        routines.put("FrameSolution: energy", FrameEnergyChecks::energy);
        routines.put("MovingLoad: axle on a beam", FrameEnergyChecks::axle);
        routines.put("Superposition: support loaded and moved", FrameEnergyChecks::sum);
        routines.put("LinearAnalysis: heavy bar", FrameEnergyChecks::heavyBar);
        routines.put("SecondOrderAnalysis: taut bars", FrameEnergyChecks::taut);
        routines.put("SecondOrderAnalysis: rod between clamps", FrameEnergyChecks::rod);
        routines.put("SecondOrderAnalysis: cantilever in space", FrameEnergyChecks::bent);
        return routines;
    }

    /** A cantilever along x with EI_y = 80, EI_z = 40, GJ = 24 MN·m² and EA = 4 GN. */
    private static FrameModel cantilever(double length) {
        Material material = new Material("m", 2e11, 8e10, 0, 0);
        Section section = Section.slender("s", 2e-2, 3e-4, 4e-4, 2e-4);
        return FrameModel.builder()
                .node("A", 0, 0, 0)
                .node("B", length, 0, 0)
                .add(BeamColumn.of("m", "A", "B", material, section))
                .fix("A")
                .build();
    }

    private static Map<String, Quantity> space(Inputs in) {
        LoadCase loads =
                LoadCase.of(
                        "P",
                        new NodalLoad(
                                "B", InSpace.vector(in, "force"), InSpace.vector(in, "moment")),
                        new NodalLoad("A", InSpace.vector(in, "force on the support"), Vector.ZERO),
                        new PointLoad(
                                "m",
                                in.si("place"),
                                InSpace.vector(in, "force on the member"),
                                InSpace.vector(in, "moment on the member"),
                                LoadAxes.GLOBAL));
        FrameSolution solution = LinearAnalysis.of(cantilever(in.si("length"))).solve(loads);
        double section = in.si("section");
        Map<String, Quantity> results = new TreeMap<>();
        put(results, solution.member("m").at(section));
        Movement moved = solution.member("m").movement(section);
        put(results, "displacement", moved.translation(), "m");
        put(results, "rotation", moved.rotation(), "rad");
        Reaction reaction = solution.reaction("A");
        put(results, "reaction", reaction.force(), "N");
        put(results, "moment of the reaction", reaction.moment(), "N·m");
        Equilibrium equilibrium = solution.equilibrium();
        results.put(
                "sum of all forces over the reaction",
                Quantity.of(equilibrium.force().length() / reaction.force().length()));
        results.put(
                "sum of all moments over that of the reaction",
                Quantity.of(equilibrium.moment().length() / reaction.moment().length()));
        return results;
    }

    /** So little load that statics of the undeformed cantilever hold. */
    private static Map<String, Quantity> far(Inputs in) {
        LoadCase loads =
                LoadCase.of(
                        "P",
                        new NodalLoad(
                                "B", InSpace.vector(in, "force"), InSpace.vector(in, "moment")));
        List<LargeState> path =
                LargeDisplacementAnalysis.of(cantilever(in.si("length"))).divided(4).load(loads, 1);
        LargeState state = path.get(path.size() - 1);
        Map<String, Quantity> results = new TreeMap<>();
        put(results, state.at("m", in.si("section")));
        put(results, "displacement", state.movement("B").translation(), "m");
        put(results, "rotation", state.movement("B").rotation(), "rad");
        return results;
    }

    private static Map<String, Quantity> bent(Inputs in) {
        double length = in.si("length");
        FrameSolution solution =
                SecondOrderAnalysis.of(cantilever(length))
                        .solve(
                                LoadCase.of(
                                        "P",
                                        new NodalLoad(
                                                "B", InSpace.vector(in, "force"), Vector.ZERO)));
        Map<String, Quantity> results = new TreeMap<>();
        String place = in.text("place");
        put(
                results,
                switch (place) {
                    case "start" -> solution.member("m").start();
                    case "clamp" -> solution.member("m").at(0);
                    case "end" -> solution.member("m").after(length);
                    default -> solution.member("m").at(in.quantity("place").si());
                });
        return results;
    }

    private static void put(Map<String, Quantity> results, SectionForces forces) {
        results.put("N", Quantity.of(forces.axial(), "N"));
        results.put("V_y", Quantity.of(forces.shearY(), "N"));
        results.put("V_z", Quantity.of(forces.shearZ(), "N"));
        results.put("T", Quantity.of(forces.torque(), "N·m"));
        results.put("M_y", Quantity.of(forces.momentY(), "N·m"));
        results.put("M_z", Quantity.of(forces.momentZ(), "N·m"));
    }

    private static void put(
            Map<String, Quantity> results, String name, Vector vector, String unit) {
        String before = name + (name.equals("rotation") ? " about " : " along ");
        results.put(before + "x", Quantity.of(vector.x(), unit));
        results.put(before + "y", Quantity.of(vector.y(), unit));
        results.put(before + "z", Quantity.of(vector.z(), unit));
    }

    /** A member or a spring of length 5 m along x; EI = 60 MN·m², EA = 4 GN, α = 1.2e-5/K. */
    private static Map<String, Quantity> energy(Inputs in) {
        String held = in.text("held by");
        Material material = new Material("m", 2e11, 8e10, 0, 1.2e-5);
        Section section = Section.slender("s", 2e-2, 1, 3e-4, 1);
        BeamColumn beam = BeamColumn.of("m", "A", "B", material, section);
        FrameModelBuilder builder =
                FrameModel.builder().inPlane().node("A", 0, 0, 0).node("B", 5, 0, 0).fix("A");
        switch (held) {
            case "clamp" -> builder.add(beam);
            case "clamps" -> builder.add(beam).fix("B");
            case "clamp and spring" ->
                    builder.add(beam).spring("B", Motion.ALONG_Z, in.si("stiffness"));
            case "clamp that gives" ->
                    builder.add(
                            beam.connected(
                                    EndConnection.RIGID.with(Motion.ABOUT_Y, in.si("stiffness")),
                                    EndConnection.RIGID));
            case "bar" -> builder.add(Bar.of("m", "A", "B", material, section)).pin("B");
            case "spring" ->
                    builder.add(
                                    SpringLink.of(
                                            "m",
                                            "A",
                                            "B",
                                            new EndConnection(0, 0, in.si("stiffness"), 0, 0, 0)))
                            .hold("B", Motion.ALONG_X, Motion.ABOUT_Y);
            default -> throw new IllegalArgumentException("held by is \"" + held + "\".");
        }
        List<Load> loads = new ArrayList<>();
        if (in.has("force")) {
            loads.add(NodalLoad.force("B", 0, 0, -in.si("force")));
        }
        if (in.has("thrust")) {
            loads.add(NodalLoad.force("B", -in.si("thrust"), 0, 0));
        }
        if (in.has("settlement")) {
            loads.add(new GroundMovement("B", new Vector(0, 0, -in.si("settlement")), Vector.ZERO));
        }
        if (in.has("warming")) {
            loads.add(
                    new Warming("m", in.si("warming"), 0, in.has("warmer") ? in.si("warmer") : 0));
        }
        LoadCase all = new LoadCase("P", loads);
        FrameModel model = builder.build();
        FrameSolution solution =
                in.has("thrust")
                        ? SecondOrderAnalysis.of(model).solve(all)
                        : LinearAnalysis.of(model).solve(all);
        return Map.of(
                "strain energy", Quantity.of(solution.energy().strain(), "J"),
                "work", Quantity.of(solution.energy().work(), "J"));
    }

    /** A rod of 5 m between clamps, loaded along and about its axis; EA = 4 GN, GJ = 24 MN·m². */
    private static Map<String, Quantity> rod(Inputs in) {
        Material material = new Material("m", 2e11, 8e10, 0, 1.2e-5);
        Section section = Section.slender("s", 2e-2, 3e-4, 4e-4, 2e-4);
        FrameModelBuilder builder =
                FrameModel.builder().node("A", 0, 0, 0).node("B", 5, 0, 0).fix("A").fix("B");
        List<Load> loads = new ArrayList<>();
        Vector force = new Vector(in.si("force"), 0, 0);
        Vector torque = new Vector(in.si("torque"), 0, 0);
        boolean node = in.text("loaded").equals("at a node");
        double place = in.si("place");
        if (node) {
            builder.node("C", place, 0, 0)
                    .add(BeamColumn.of("m", "A", "C", material, section))
                    .add(BeamColumn.of("n", "C", "B", material, section));
            loads.add(new NodalLoad("C", force, torque));
        } else {
            builder.add(BeamColumn.of("m", "A", "B", material, section));
            loads.add(new PointLoad("m", place, force, torque, LoadAxes.GLOBAL));
        }
        if (in.has("warming")) {
            loads.add(new Warming("m", in.si("warming"), 0, 0));
        }
        FrameSolution solution =
                SecondOrderAnalysis.of(builder.build()).solve(new LoadCase("P", loads));
        SectionForces first = solution.member("m").at(0);
        SectionForces last = solution.member(node ? "n" : "m").end();
        Movement moved = solution.member("m").movement(place);
        return Map.of(
                "N at the start", Quantity.of(first.axial(), "N"),
                "N at the end", Quantity.of(last.axial(), "N"),
                "T at the start", Quantity.of(first.torque(), "N·m"),
                "T at the end", Quantity.of(last.torque(), "N·m"),
                "displacement under the load", Quantity.of(moved.translation().x(), "m"),
                "twist under the load", Quantity.of(moved.rotation().x(), "rad"));
    }

    /** An axle on a simple beam that may rise, be rolled about its axis, or bear it beside the axis. */
    private static Map<String, Quantity> axle(Inputs in) {
        double length = in.si("length");
        double slope = in.has("slope") ? in.si("slope") : 0;
        boolean level = slope == 0;
        Material material = new Material("m", 2e11, 8e10, 0, 0);
        Section section = Section.slender("s", 2e-2, 3e-4, 4e-4, 2e-4);
        Orientation rolled = new Orientation(Vector.Z, in.has("roll") ? in.si("roll") : 0);
        FrameModelBuilder builder =
                FrameModel.builder()
                        .node("A", 0, 0, 0)
                        .node(
                                "B",
                                length * StrictMath.cos(slope),
                                0,
                                length * StrictMath.sin(slope))
                        .add(BeamColumn.of("m", "A", "B", material, section).oriented(rolled))
                        .pin("A")
                        .hold("A", Motion.ABOUT_X)
                        .hold("B", Motion.ALONG_Y, Motion.ALONG_Z);
        FrameModel model = (level ? builder.hold("B", Motion.ABOUT_X) : builder).build();
        Vector beside = new Vector(0, in.has("beside") ? in.si("beside") : 0, 0);
        Envelope envelope =
                new MovingLoad(
                                LinearAnalysis.of(model),
                                LoadTrain.of("T", in.si("axle"), 0),
                                Lane.along("lane", model, List.of("m"), beside),
                                length / 40)
                        .envelope(3);
        Map<String, Quantity> results = new TreeMap<>();
        for (ForceComponent c : ForceComponent.values()) {
            String unit = c.isMoment() ? "N·m" : "N";
            for (int station = 0; station < 2; station++) {
                String where = c.symbol() + (station == 0 ? " at the start" : " in the middle");
                results.put(
                        "largest " + where,
                        Quantity.of(envelope.largest("m", station, c).value(), unit));
                results.put(
                        "smallest " + where,
                        Quantity.of(envelope.smallest("m", station, c).value(), unit));
            }
        }
        return results;
    }

    private static Map<String, Quantity> sum(Inputs in) {
        double length = in.si("length");
        List<FrameSolution> cases =
                LinearAnalysis.of(
                                FrameModel.builder()
                                        .inPlane()
                                        .node("A", 0, 0, 0)
                                        .node("B", length, 0, 0)
                                        .add(
                                                BeamColumn.of(
                                                        "m",
                                                        "A",
                                                        "B",
                                                        new Material("m", 2e11, 8e10, 0, 0),
                                                        Section.slender("s", 2e-2, 1, 4e-4, 1)))
                                        .fix("A")
                                        .spring("B", Motion.ALONG_Z, in.si("stiffness"))
                                        .build())
                        .solve(
                                List.of(
                                        LoadCase.of(
                                                "P", NodalLoad.force("A", 0, 0, -in.si("force"))),
                                        LoadCase.of(
                                                "S",
                                                new GroundMovement(
                                                        "B",
                                                        new Vector(0, 0, -in.si("settlement")),
                                                        Vector.ZERO))));
        FrameSolution both =
                Superposition.of(cases, new Combination("C", Map.of("P", 2.0, "S", 3.0)));
        return Map.of(
                "reaction of the clamp", Quantity.of(both.reaction("A").force().z(), "N"),
                "reaction of the spring", Quantity.of(both.reaction("B").force().z(), "N"),
                "strain energy", Quantity.of(both.energy().strain(), "J"),
                "work", Quantity.of(both.energy().work(), "J"));
    }

    /** A level bar between two posts that give lengthwise and upward. */
    private static Map<String, Quantity> heavyBar(Inputs in) {
        Material material = new Material("m", 2e11, 8e10, in.si("density"), 0);
        FrameModel model =
                FrameModel.builder()
                        .node("A", 0, 0, 0)
                        .node("B", in.si("length"), 0, 0)
                        .add(
                                Bar.of(
                                        "m",
                                        "A",
                                        "B",
                                        material,
                                        Section.slender("s", in.si("area"), 1, 1, 1)))
                        .pin("A")
                        .hold("B", Motion.ALONG_Y)
                        .spring("B", Motion.ALONG_Z, in.si("stiffness"))
                        .build();
        FrameSolution solution =
                LinearAnalysis.of(model)
                        .solve(
                                LoadCase.of(
                                        "G",
                                        SelfWeight.standard(),
                                        NodalLoad.force("B", in.si("pull"), 0, 0)));
        Movement middle = solution.member("m").movement(in.si("length") / 2);
        return Map.of(
                "reaction of the spring", Quantity.of(solution.reaction("B").force().z(), "N"),
                "turn", Quantity.of(middle.rotation().y(), "rad"),
                "sinking in the middle", Quantity.of(-middle.translation().z(), "m"),
                "lengthening to the middle", Quantity.of(middle.translation().x(), "m"));
    }

    /** Two bars in line, pulled taut by cooling, with a force across where they meet. */
    private static Map<String, Quantity> taut(Inputs in) {
        Material material = new Material("m", 2e11, 8e10, 0, 1e-5);
        Section section = Section.slender("s", 1e-3, 1, 1, 1);
        double length = in.si("length");
        FrameModel model =
                FrameModel.builder()
                        .node("A", 0, 0, 0)
                        .node("B", length / 2, 0, 0)
                        .node("C", length, 0, 0)
                        .add(Bar.of("ab", "A", "B", material, section))
                        .add(Bar.of("bc", "B", "C", material, section))
                        .pin("A")
                        .pin("C")
                        .spring("B", Motion.ALONG_Y, in.si("stiffness"))
                        .spring("B", Motion.ALONG_Z, in.si("stiffness"))
                        .build();
        FrameSolution solution =
                SecondOrderAnalysis.of(model)
                        .solve(
                                LoadCase.of(
                                        "P",
                                        new Warming("ab", -in.si("cooling"), 0, 0),
                                        new Warming("bc", -in.si("cooling"), 0, 0),
                                        NodalLoad.force("B", 0, in.si("force"), 0)));
        return Map.of(
                "N", Quantity.of(solution.member("ab").start().axial(), "N"),
                "displacement", Quantity.of(solution.movement("B").translation().y(), "m"));
    }
}
