package org.skewback.checks;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.skewback.frame.Bar;
import org.skewback.frame.BeamColumn;
import org.skewback.frame.EndConnection;
import org.skewback.frame.Envelope;
import org.skewback.frame.ForceComponent;
import org.skewback.frame.FrameModel;
import org.skewback.frame.FrameModelBuilder;
import org.skewback.frame.FrameSolution;
import org.skewback.frame.GroundMovement;
import org.skewback.frame.InfluenceLine;
import org.skewback.frame.InitialForce;
import org.skewback.frame.LackOfFit;
import org.skewback.frame.Lane;
import org.skewback.frame.LineLoad;
import org.skewback.frame.LineMoment;
import org.skewback.frame.LinearAnalysis;
import org.skewback.frame.Load;
import org.skewback.frame.LoadAxes;
import org.skewback.frame.LoadCase;
import org.skewback.frame.LoadTrain;
import org.skewback.frame.Material;
import org.skewback.frame.MemberForces;
import org.skewback.frame.Motion;
import org.skewback.frame.Movement;
import org.skewback.frame.MovingLoad;
import org.skewback.frame.NodalLoad;
import org.skewback.frame.OneWayAnalysis;
import org.skewback.frame.Passage;
import org.skewback.frame.PointLoad;
import org.skewback.frame.Response;
import org.skewback.frame.SectionForces;
import org.skewback.frame.SectionProfile;
import org.skewback.frame.SelfWeight;
import org.skewback.frame.Stage;
import org.skewback.frame.StageAction;
import org.skewback.frame.StageAnalysis;
import org.skewback.frame.StageResult;
import org.skewback.frame.Support;
import org.skewback.frame.Tendon;
import org.skewback.frame.Vector;
import org.skewback.frame.Warming;
import org.skewback.quantity.Quantity;
import org.skewback.steel.Fibre;
import org.skewback.steel.Rectangle;
import org.skewback.steel.Section;

/** Checks of {@code org.skewback.frame}. */
public final class FrameChecks implements Subject {

    /** Makes the subject. */
    public FrameChecks() {}

    @Override
    public String topic() {
        return "frame";
    }

    @Override
    public Map<String, Checked> routines() {
        Map<String, Checked> routines = new TreeMap<>();
        routines.put("LinearAnalysis: single span", FrameChecks::singleSpan);
        routines.put("LinearAnalysis: Timoshenko", FrameChecks::timoshenko);
        routines.put("LinearAnalysis: portal", FrameChecks::portal);
        routines.put("LinearAnalysis: continuous beam", FrameChecks::continuous);
        routines.put("LinearAnalysis: three bars", FrameChecks::threeBars);
        routines.put("LinearAnalysis: bracket", FrameChecks::bracket);
        routines.put("LinearAnalysis: arch", FrameChecks::arch);
        routines.put("LinearAnalysis: circle", FrameChecks::circle);
        routines.put("LinearAnalysis: beam on springs", FrameChecks::onSprings);
        routines.put("LinearAnalysis: tapered cantilever", FrameChecks::tapered);
        routines.put("LinearAnalysis: rigid arms", FrameChecks::rigidArms);
        routines.put("LinearAnalysis: tendon", FrameChecks::tendon);
        routines.put("LinearAnalysis: space frame", FrameChecks::spaceFrame);
        routines.put("LinearAnalysis: clamped beam in space", FrameChecks::clamped);
        routines.put("InfluenceLine: two spans", FrameChecks::influence);
        routines.put("InfluenceLine: areas by sign", FrameChecks::areas);
        routines.put("Passage: simple beam", FrameChecks::passage);
        routines.put("LinearAnalysis: bar drawn", FrameChecks::barDrawn);
        routines.put("LinearAnalysis: stress and energy", FrameChecks::stressAndEnergy);
        routines.put("MovingLoad: simple beam", FrameChecks::movingLoad);
        routines.put("StageAnalysis: prop placed late", FrameChecks::prop);
        routines.put("StageAnalysis: closed in the middle", FrameChecks::closing);
        routines.put("LinearAnalysis: eccentric cantilever", FrameChecks::eccentric);
        routines.put("OneWayAnalysis: braced panel", FrameChecks::bracedPanel);
        routines.put("StageAnalysis: stay tensioned", FrameChecks::stay);
        return routines;
    }

    private static Quantity of(double value, String unit) {
        return Quantity.of(value, unit);
    }

    private static Section slender(double inertia) {
        return Section.slender("s", 0.02, 2 * inertia, inertia, inertia);
    }

    private static Material material(Inputs in, double expansion) {
        double e = in.si("young modulus");
        return new Material("m", e, e / 2.6, 0, expansion);
    }

    /** Loads that beams of one member know. */
    private static List<Load> loads(Inputs in) {
        List<Load> loads = new ArrayList<>();
        if (in.has("end load")) {
            loads.add(NodalLoad.force("B", 0, 0, -in.si("end load")));
        }
        if (in.has("uniform load")) {
            loads.add(
                    LineLoad.uniform(
                            "m", new Vector(0, 0, -in.si("uniform load")), LoadAxes.GLOBAL));
        }
        if (in.has("triangular load")) {
            loads.add(
                    LineLoad.linear(
                            "m",
                            Vector.ZERO,
                            new Vector(0, 0, -in.si("triangular load")),
                            LoadAxes.GLOBAL));
        }
        if (in.has("partial load")) {
            Vector down = new Vector(0, 0, -in.si("partial load"));
            loads.add(new LineLoad("m", in.si("from"), in.si("to"), down, down, LoadAxes.GLOBAL));
        }
        if (in.has("load")) {
            loads.add(PointLoad.of("m", in.si("at"), new Vector(0, 0, -in.si("load"))));
        }
        if (in.has("couple")) {
            loads.add(
                    new PointLoad(
                            "m",
                            in.si("at"),
                            Vector.ZERO,
                            new Vector(0, in.si("couple"), 0),
                            LoadAxes.GLOBAL));
        }
        if (in.has("settlement")) {
            loads.add(new GroundMovement("B", new Vector(0, 0, -in.si("settlement")), Vector.ZERO));
        }
        if (in.has("warming")) {
            loads.add(new Warming("m", 0, 0, in.si("warming")));
        }
        return loads;
    }

    private static void ends(FrameModelBuilder builder, String ends) {
        String[] both = ends.split(" ");
        String[] nodes = {"A", "B"};
        for (int i = 0; i < 2; i++) {
            switch (both[i]) {
                case "fixed" ->
                        builder.hold(nodes[i], Motion.ALONG_X, Motion.ALONG_Z, Motion.ABOUT_Y);
                case "pinned" -> builder.hold(nodes[i], Motion.ALONG_Z);
                case "free" -> {
                    // Nothing holds it.
                }
                default -> throw new IllegalArgumentException("ends are \"" + ends + "\".");
            }
        }
        if (both[0].equals("pinned")) {
            builder.hold("A", Motion.ALONG_X);
        }
    }

    private static Map<String, Quantity> results(FrameSolution solution) {
        MemberForces forces = solution.member("m");
        double middle = forces.length() / 2;
        Map<String, Quantity> results = new LinkedHashMap<>();
        results.put("start moment", of(forces.start().momentY(), "N·m"));
        results.put("end moment", of(forces.end().momentY(), "N·m"));
        results.put("middle moment", of(forces.at(middle).momentY(), "N·m"));
        results.put(
                "largest moment",
                of(forces.largest(ForceComponent.MOMENT_Y).forces().momentY(), "N·m"));
        results.put("start reaction", of(forces.start().shearZ(), "N"));
        results.put("end reaction", of(-forces.end().shearZ(), "N"));
        results.put("middle deflection", of(forces.movement(middle).translation().z(), "m"));
        Movement end = solution.movement("B");
        results.put("end deflection", of(end.translation().z(), "m"));
        results.put("end rotation", of(end.rotation().y(), "rad"));
        results.put("start rotation", of(solution.movement("A").rotation().y(), "rad"));
        return results;
    }

    private static Map<String, Quantity> singleSpan(Inputs in) {
        double length = in.si("length");
        BeamColumn beam =
                BeamColumn.of(
                        "m",
                        "A",
                        "B",
                        material(in, in.has("expansion") ? in.si("expansion") : 0),
                        slender(in.si("second moment")));
        String ends = in.has("end springs") ? "fixed fixed" : in.text("ends");
        if (in.has("end springs")) {
            in.text("ends");
            EndConnection spring = EndConnection.RIGID.with(Motion.ABOUT_Y, in.si("end springs"));
            beam = beam.connected(spring, spring);
        }
        FrameModelBuilder builder =
                FrameModel.builder().node("A", 0, 0, 0).node("B", length, 0, 0).add(beam).inPlane();
        ends(builder, ends);
        return results(LinearAnalysis.of(builder.build()).solve(new LoadCase("q", loads(in))));
    }

    private static Map<String, Quantity> timoshenko(Inputs in) {
        double length = in.si("length");
        FrameModelBuilder builder =
                FrameModel.builder()
                        .node("A", 0, 0, 0)
                        .node("B", length, 0, 0)
                        .add(
                                BeamColumn.of(
                                        "m",
                                        "A",
                                        "B",
                                        Material.of(
                                                "m",
                                                in.si("young modulus"),
                                                in.si("poisson ratio"),
                                                0,
                                                0),
                                        new Rectangle(in.si("width"), in.si("height"))
                                                .section("s")))
                        .inPlane();
        ends(builder, in.text("ends"));
        return results(LinearAnalysis.of(builder.build()).solve(new LoadCase("q", loads(in))));
    }

    private static Map<String, Quantity> portal(Inputs in) {
        double height = in.si("height");
        double width = in.si("width");
        Material material = material(in, 0);
        double column = in.si("column second moment");
        double beam = in.si("beam second moment");
        double area = 1e9 * Math.max(column, beam) / (width * width);
        FrameModelBuilder builder =
                FrameModel.builder()
                        .node("A", 0, 0, 0)
                        .node("B", 0, 0, height)
                        .node("C", width, 0, height)
                        .node("D", width, 0, 0)
                        .add(
                                BeamColumn.of(
                                        "ab",
                                        "A",
                                        "B",
                                        material,
                                        Section.slender("c", area, column, column, column)))
                        .add(
                                BeamColumn.of(
                                        "bc",
                                        "B",
                                        "C",
                                        material,
                                        Section.slender("b", area, beam, beam, beam)))
                        .add(
                                BeamColumn.of(
                                        "dc",
                                        "D",
                                        "C",
                                        material,
                                        Section.slender("c", area, column, column, column)))
                        .inPlane();
        for (String foot : List.of("A", "D")) {
            builder.hold(foot, Motion.ALONG_X, Motion.ALONG_Z);
            if (in.text("feet").equals("fixed")) {
                builder.hold(foot, Motion.ABOUT_Y);
            }
        }
        List<Load> loads = new ArrayList<>();
        if (in.has("beam load")) {
            loads.add(
                    LineLoad.uniform("bc", new Vector(0, 0, -in.si("beam load")), LoadAxes.GLOBAL));
        }
        if (in.has("sway load")) {
            loads.add(NodalLoad.force("B", in.si("sway load"), 0, 0));
        }
        FrameSolution solution = LinearAnalysis.of(builder.build()).solve(new LoadCase("q", loads));
        // The column's local z points to −x: a moment with tension inside is positive on its −z
        // side.
        return Map.of(
                "knee moment",
                of(solution.member("bc").start().momentY(), "N·m"),
                "foot moment",
                of(solution.member("ab").start().momentY(), "N·m"),
                "thrust",
                of(solution.reaction("A").force().x(), "N"),
                "sway",
                of(solution.movement("B").translation().x(), "m"));
    }

    private static FrameModel spans(int count, double span) {
        Material material = new Material("m", 210e9, 80e9, 0, 0);
        FrameModelBuilder builder =
                FrameModel.builder().node("0", 0, 0, 0).hold("0", Motion.ALONG_X).inPlane();
        for (int i = 1; i <= count; i++) {
            builder.node("" + i, i * span, 0, 0)
                    .add(BeamColumn.of("s" + i, "" + (i - 1), "" + i, material, slender(2e-4)));
        }
        for (int i = 0; i <= count; i++) {
            builder.hold("" + i, Motion.ALONG_Z);
        }
        return builder.build();
    }

    private static Map<String, Quantity> continuous(Inputs in) {
        int count = (int) in.si("spans");
        List<Load> loads = new ArrayList<>();
        for (int i = 1; i <= count; i++) {
            loads.add(LineLoad.uniform("s" + i, new Vector(0, 0, -in.si("load")), LoadAxes.GLOBAL));
        }
        FrameSolution solution =
                LinearAnalysis.of(spans(count, in.si("span"))).solve(new LoadCase("q", loads));
        Map<String, Quantity> results = new LinkedHashMap<>();
        for (int i = 1; i < count; i++) {
            results.put(
                    "moment over support " + i,
                    of(solution.member("s" + i).end().momentY(), "N·m"));
        }
        return results;
    }

    private static Map<String, Quantity> threeBars(Inputs in) {
        double height = in.si("height");
        double reach = height * Math.tan(in.si("angle"));
        Material material = new Material("m", 210e9, 80e9, 0, 0);
        FrameModel model =
                FrameModel.builder()
                        .node("L", -reach, 0, height)
                        .node("M", 0, 0, height)
                        .node("R", reach, 0, height)
                        .node("J", 0, 0, 0)
                        .add(Bar.of("l", "L", "J", material, slender(1e-4)))
                        .add(Bar.of("m", "M", "J", material, slender(1e-4)))
                        .add(Bar.of("r", "R", "J", material, slender(1e-4)))
                        .pin("L")
                        .pin("M")
                        .pin("R")
                        .inPlane()
                        .build();
        FrameSolution solution =
                LinearAnalysis.of(model)
                        .solve(LoadCase.of("P", NodalLoad.force("J", 0, 0, -in.si("load"))));
        return Map.of(
                "middle bar", of(solution.member("m").start().axial(), "N"),
                "outer bar", of(solution.member("l").start().axial(), "N"));
    }

    private static Map<String, Quantity> bracket(Inputs in) {
        double length = in.si("length");
        Section section = Section.slender("s", in.si("area"), 1e-6, 1e-6, 1e-6);
        FrameModel model =
                FrameModel.builder()
                        .node("A", 0, 0, 0)
                        .node("B", 0, 0, -in.si("height"))
                        .node("C", length, 0, 0)
                        .add(Bar.of("ac", "A", "C", material(in, 0), section))
                        .add(Bar.of("bc", "B", "C", material(in, 0), section))
                        .pin("A")
                        .pin("B")
                        .inPlane()
                        .build();
        Vector moved =
                LinearAnalysis.of(model)
                        .solve(LoadCase.of("P", NodalLoad.force("C", 0, 0, -in.si("load"))))
                        .movement("C")
                        .translation();
        return Map.of(
                "vertical displacement", of(moved.z(), "m"),
                "horizontal displacement", of(moved.x(), "m"));
    }

    private static Map<String, Quantity> arch(Inputs in) {
        int parts = 400;
        double span = in.si("span");
        double rise = in.si("rise");
        double crown = in.si("second moment at crown");
        Material material = material(in, 1.2e-5);
        boolean fixed = in.text("springings").equals("fixed");
        FrameModelBuilder builder = FrameModel.builder().inPlane();
        List<Load> loads = new ArrayList<>();
        for (int i = 0; i <= parts; i++) {
            double x = span * i / parts;
            builder.node("" + i, x, 0, 4 * rise * x * (span - x) / (span * span));
            if (i > 0) {
                double width = span / parts;
                double middle = x - width / 2;
                double slope = 4 * rise * (span - 2 * middle) / (span * span);
                double inertia = crown * Math.sqrt(1 + slope * slope);
                // An area so large that the rib does not shorten.
                Section section =
                        Section.slender(
                                "r" + i, crown * 1e6 / (rise * rise), crown, inertia, crown);
                builder.add(BeamColumn.of("m" + i, "" + (i - 1), "" + i, material, section));
                if (in.has("warming")) {
                    loads.add(new Warming("m" + i, in.si("warming"), 0, 0));
                }
                if (in.has("load on plan")) {
                    loads.add(
                            LineLoad.uniform(
                                    "m" + i,
                                    new Vector(0, 0, -in.si("load on plan")),
                                    LoadAxes.PROJECTED));
                }
            }
        }
        for (String end : List.of("0", "" + parts)) {
            builder.hold(end, Motion.ALONG_X, Motion.ALONG_Z);
            if (fixed) {
                builder.hold(end, Motion.ABOUT_Y);
            }
        }
        if (in.has("load")) {
            int at = (int) Math.round(in.si("at") * parts);
            loads.add(NodalLoad.force("" + at, 0, 0, -in.si("load")));
        }
        if (in.has("spread")) {
            loads.add(
                    new GroundMovement("" + parts, new Vector(in.si("spread"), 0, 0), Vector.ZERO));
        }
        FrameSolution solution = LinearAnalysis.of(builder.build()).solve(new LoadCase("q", loads));
        return Map.of(
                "thrust",
                of(solution.reaction("0").force().x(), "N"),
                "left springing moment",
                of(solution.member("m1").start().momentY(), "N·m"),
                "crown moment",
                of(solution.member("m" + parts / 2).end().momentY(), "N·m"));
    }

    private static Map<String, Quantity> circle(Inputs in) {
        int parts = 400;
        double radius = in.si("radius");
        double load = in.si("load");
        double e = 210e9;
        double g = 80e9;
        double inertia = in.si("flexural stiffness") / e;
        Section section =
                Section.slender(
                        "s",
                        inertia * 1e6 / (radius * radius),
                        in.si("torsional stiffness") / g,
                        inertia,
                        inertia);
        Material material = new Material("m", e, g, 0, 0);
        boolean level = in.text("case").equals("out of plane");
        FrameModelBuilder builder = FrameModel.builder();
        for (int i = 0; i <= parts; i++) {
            double angle = Math.PI / 2 * i / parts;
            double x = radius * Math.sin(angle);
            double across = radius * Math.cos(angle);
            builder.node("" + i, x, level ? across : 0, level ? 0 : across);
            if (i > 0) {
                builder.add(BeamColumn.of("m" + i, "" + (i - 1), "" + i, material, section));
            }
        }
        String end = "" + parts;
        if (in.text("case").equals("ring")) {
            // A quarter: top free to move along z, side free to move along x, neither turns.
            FrameSolution solution =
                    LinearAnalysis.of(
                                    builder.inPlane()
                                            .hold("0", Motion.ALONG_X, Motion.ABOUT_Y)
                                            .hold(end, Motion.ALONG_Z, Motion.ABOUT_Y)
                                            .build())
                            .solve(LoadCase.of("P", NodalLoad.force("0", 0, 0, load / 2)));
            return Map.of(
                    "displacement along the load",
                    of(2 * solution.movement("0").translation().z(), "m"),
                    "moment under the load in magnitude",
                    of(Math.abs(solution.member("m1").start().momentY()), "N·m"));
        }
        if (level) {
            FrameSolution solution =
                    LinearAnalysis.of(builder.fix("0").build())
                            .solve(LoadCase.of("P", NodalLoad.force(end, 0, 0, load)));
            return Map.of(
                    "displacement along the load",
                    of(solution.movement(end).translation().z(), "m"));
        }
        FrameSolution solution =
                LinearAnalysis.of(builder.inPlane().fix("0").build())
                        .solve(LoadCase.of("P", NodalLoad.force(end, 0, 0, load)));
        Vector moved = solution.movement(end).translation();
        return Map.of(
                "displacement along the load", of(moved.z(), "m"),
                "displacement across the load", of(Math.abs(moved.x()), "m"));
    }

    private static Map<String, Quantity> onSprings(Inputs in) {
        int parts = 1000;
        double spacing = 0.1;
        Section section = slender(in.si("flexural stiffness") / 210e9);
        Material material = new Material("m", 210e9, 80e9, 0, 0);
        FrameModelBuilder builder = FrameModel.builder().inPlane().hold("0", Motion.ALONG_X);
        for (int i = 0; i <= parts; i++) {
            builder.node("" + i, i * spacing, 0, 0)
                    .spring("" + i, Motion.ALONG_Z, in.si("foundation modulus") * spacing);
            if (i > 0) {
                builder.add(BeamColumn.of("m" + i, "" + (i - 1), "" + i, material, section));
            }
        }
        FrameSolution solution =
                LinearAnalysis.of(builder.build())
                        .solve(
                                LoadCase.of(
                                        "P",
                                        NodalLoad.force("" + parts / 2, 0, 0, -in.si("load"))));
        return Map.of(
                "deflection under the load",
                of(-solution.movement("" + parts / 2).translation().z(), "m"),
                "moment under the load",
                of(solution.member("m" + parts / 2).end().momentY(), "N·m"));
    }

    private static Map<String, Quantity> tapered(Inputs in) {
        double e = in.si("young modulus");
        double width = in.si("width");
        FrameModel model =
                FrameModel.builder()
                        .node("A", 0, 0, 0)
                        .node("B", in.si("length"), 0, 0)
                        .add(
                                BeamColumn.of(
                                        "m",
                                        "A",
                                        "B",
                                        new Material(
                                                "m",
                                                e,
                                                e / 2,
                                                in.has("density") ? in.si("density") : 0,
                                                0),
                                        SectionProfile.tapered(
                                                new Rectangle(width, in.si("root height"))
                                                        .section("root"),
                                                new Rectangle(width, in.si("tip height"))
                                                        .section("tip"))))
                        .fix("A")
                        .build();
        LoadCase loads =
                in.has("load")
                        ? LoadCase.of("P", NodalLoad.force("B", 0, 0, -in.si("load")))
                        : LoadCase.of("g", SelfWeight.standard());
        FrameSolution solution = LinearAnalysis.of(model).solve(loads);
        return Map.of(
                "end deflection", of(solution.movement("B").translation().z(), "m"),
                "root moment", of(solution.member("m").start().momentY(), "N·m"));
    }

    private static Map<String, Quantity> rigidArms(Inputs in) {
        double arm = in.si("arm");
        FrameModel model =
                FrameModel.builder()
                        .node("A", 0, 0, 0)
                        .node("B", in.si("length"), 0, 0)
                        .add(
                                BeamColumn.of(
                                                "m",
                                                "A",
                                                "B",
                                                material(in, 0),
                                                slender(in.si("second moment")))
                                        .offset(new Vector(arm, 0, 0), new Vector(-arm, 0, 0)))
                        .fix("A")
                        .fix("B")
                        .build();
        FrameSolution solution =
                LinearAnalysis.of(model)
                        .solve(
                                LoadCase.of(
                                        "s",
                                        new GroundMovement(
                                                "B",
                                                new Vector(0, 0, -in.si("settlement")),
                                                Vector.ZERO)));
        return Map.of(
                "start reaction", of(solution.reaction("A").force().z(), "N"),
                "start moment", of(solution.reaction("A").moment().y(), "N·m"));
    }

    private static Map<String, Quantity> tendon(Inputs in) {
        double length = in.si("length");
        double force = in.si("force");
        double eccentricity = in.si("eccentricity");
        String[] kind = in.text("case").split(", ");
        FrameModelBuilder builder =
                FrameModel.builder()
                        .node("A", 0, 0, 0)
                        .node("B", length, 0, 0)
                        .add(
                                BeamColumn.of(
                                        "m",
                                        "A",
                                        "B",
                                        material(in, 0),
                                        slender(in.si("second moment"))))
                        .inPlane();
        builder.hold("A", Motion.ALONG_X, Motion.ALONG_Z).hold("B", Motion.ALONG_Z);
        if (!kind[1].equals("simple")) {
            builder.hold("A", Motion.ABOUT_Y);
        }
        if (kind[1].equals("clamped")) {
            builder.hold("B", Motion.ABOUT_Y);
        }
        double atEnds = kind[0].equals("straight") ? eccentricity : 0;
        return results(
                LinearAnalysis.of(builder.build())
                        .solve(
                                LoadCase.of(
                                        "P",
                                        new Tendon(
                                                "m",
                                                force,
                                                0,
                                                atEnds,
                                                0,
                                                eccentricity,
                                                0,
                                                atEnds))));
    }

    private static Map<String, Quantity> spaceFrame(Inputs in) {
        List<Quantity> places = in.quantities("nodes");
        FrameModelBuilder builder = FrameModel.builder();
        for (int n = 0; n < places.size() / 3; n++) {
            builder.node(
                    "" + n,
                    places.get(3 * n).si(),
                    places.get(3 * n + 1).si(),
                    places.get(3 * n + 2).si());
        }
        Material material = new Material("m", 2.1e11, 8.1e10, 0, 0);
        Section section = Section.of("s", 0.02, 0.008, 0.01, 3e-4, 2e-4, 1e-4);
        for (int n = 0; n < 3; n++) {
            builder.add(BeamColumn.of("m" + n, "" + n, "3", material, section)).fix("" + n);
        }
        builder.add(BeamColumn.of("m3", "3", "4", material, section));
        List<Quantity> force = in.quantities("force");
        List<Quantity> moment = in.quantities("moment");
        FrameSolution solution =
                LinearAnalysis.of(builder.build())
                        .solve(
                                LoadCase.of(
                                        "P",
                                        new NodalLoad(
                                                "4",
                                                new Vector(
                                                        force.get(0).si(),
                                                        force.get(1).si(),
                                                        force.get(2).si()),
                                                new Vector(
                                                        moment.get(0).si(),
                                                        moment.get(1).si(),
                                                        moment.get(2).si()))));
        Map<String, Quantity> results = new LinkedHashMap<>();
        Movement tip = solution.movement("4");
        for (Motion motion : Motion.values()) {
            results.put(
                    motion.toString().substring(motion.toString().length() - 1)
                            + (motion.isRotation() ? " rotation" : " displacement")
                            + " of the tip",
                    of(tip.get(motion), motion.isRotation() ? "rad" : "m"));
        }
        SectionForces foot = solution.member("m0").start();
        results.put("axial force at the first foot", of(foot.axial(), "N"));
        results.put("moment y at the first foot", of(foot.momentY(), "N·m"));
        results.put("moment z at the first foot", of(foot.momentZ(), "N·m"));
        results.put("torque at the first foot", of(foot.torque(), "N·m"));
        return results;
    }

    /** A beam along x held at both ends, under what its ends hinder and under a load along y. */
    private static Map<String, Quantity> clamped(Inputs in) {
        Material material = new Material("m", in.si("young modulus"), 8e10, 0, in.si("expansion"));
        Section section =
                Section.slender(
                        "s",
                        in.si("area"),
                        1e-4,
                        in.si("second moment y"),
                        in.si("second moment z"));
        FrameModel model =
                FrameModel.builder()
                        .node("A", 0, 0, 0)
                        .node("B", in.si("length"), 0, 0)
                        .add(BeamColumn.of("m", "A", "B", material, section))
                        .fix("A")
                        .fix("B")
                        .build();
        LoadCase loads =
                LoadCase.of(
                        "Q",
                        new Warming("m", in.si("rise"), in.si("gradient y"), in.si("gradient z")),
                        new LackOfFit("m", in.si("excess")),
                        new GroundMovement(
                                "A", Vector.ZERO, new Vector(0, 0, in.si("turn at the start"))),
                        new LineMoment(
                                "m",
                                0,
                                in.si("length"),
                                new Vector(in.si("torque at the start"), 0, 0),
                                new Vector(in.si("torque at the end"), 0, 0),
                                LoadAxes.GLOBAL),
                        LineLoad.uniform(
                                "m", new Vector(0, in.si("load along y"), 0), LoadAxes.GLOBAL));
        SectionForces start = LinearAnalysis.of(model).solve(loads).member("m").start();
        return Map.of(
                "axial force", of(start.axial(), "N"),
                "shear force y", of(start.shearY(), "N"),
                "moment y", of(start.momentY(), "N·m"),
                "moment z", of(start.momentZ(), "N·m"),
                "size of the torque", of(Math.abs(start.torque()), "N·m"));
    }

    private static Map<String, Quantity> areas(Inputs in) {
        FrameModel model = spans(2, in.si("span"));
        InfluenceLine line =
                InfluenceLine.of(
                        LinearAnalysis.of(model),
                        Response.force("s1", in.si("span") / 2, ForceComponent.MOMENT_Y),
                        Lane.along("lane", model, List.of("s1", "s2"), Vector.ZERO));
        return Map.of(
                "positive area", of(line.positiveArea(), "m²"),
                "negative area", of(line.negativeArea(), "m²"));
    }

    private static Map<String, Quantity> influence(Inputs in) {
        FrameModel model = spans(2, in.si("span"));
        LinearAnalysis analysis = LinearAnalysis.of(model);
        Lane lane = Lane.along("lane", model, List.of("s1", "s2"), Vector.ZERO);
        InfluenceLine moment =
                InfluenceLine.of(
                        analysis,
                        Response.force("s1", in.si("span"), ForceComponent.MOMENT_Y),
                        lane);
        InfluenceLine reaction = InfluenceLine.of(analysis, Response.reaction("1", Vector.Z), lane);
        Map<String, Quantity> results = new LinkedHashMap<>();
        if (in.has("station")) {
            double station = in.si("station");
            results.put("moment over the middle support", of(moment.value(station), "m"));
            results.put("middle reaction", of(reaction.value(station), ""));
        }
        results.put(
                "area of the moment over the middle support",
                of(moment.area(0, lane.length()), "m²"));
        results.put(
                "largest moment over the middle support in magnitude",
                of(-moment.smallest().value(), "m"));
        return results;
    }

    private static Map<String, Quantity> passage(Inputs in) {
        double span = in.si("span");
        double distance = in.si("distance");
        FrameModel model = spans(1, span);
        InfluenceLine line =
                InfluenceLine.of(
                        LinearAnalysis.of(model),
                        Response.force("s1", span / 2 - distance / 4, ForceComponent.MOMENT_Y),
                        Lane.along("lane", model, List.of("s1"), Vector.ZERO));
        return Map.of(
                "largest moment at the critical section",
                of(
                        Passage.of(line, LoadTrain.of("T", in.si("axle"), 0, distance), 0.3)
                                .largest(),
                        "N·m"));
    }

    private static Map<String, Quantity> movingLoad(Inputs in) {
        double span = in.si("span");
        FrameModel model = spans(1, span);
        MovingLoad moving =
                new MovingLoad(
                        LinearAnalysis.of(model),
                        LoadTrain.of("T", in.si("axle"), 0, in.si("distance")),
                        Lane.along("lane", model, List.of("s1"), Vector.ZERO),
                        in.si("distance") / 4);
        Envelope.Governing governing = moving.envelope(2).largest("s1", 0, ForceComponent.SHEAR_Z);
        return Map.of("largest shear at the start", of(governing.value(), "N"));
    }

    private static FrameModel halves(Inputs in, boolean fixed) {
        double length = in.si("length");
        Material material = material(in, 0);
        Section section = slender(in.si("second moment"));
        FrameModelBuilder builder =
                FrameModel.builder()
                        .node("A", 0, 0, 0)
                        .node("B", length / 2, 0, 0)
                        .node("C", length, 0, 0)
                        .add(BeamColumn.of("ab", "A", "B", material, section))
                        .add(BeamColumn.of("bc", "B", "C", material, section))
                        .hold("A", Motion.ALONG_X, Motion.ALONG_Z)
                        .hold("C", Motion.ALONG_Z)
                        .inPlane();
        if (fixed) {
            builder.hold("A", Motion.ABOUT_Y).hold("C", Motion.ALONG_X, Motion.ABOUT_Y);
        }
        return builder.build();
    }

    private static StageAction load(String name, double intensity) {
        Vector down = new Vector(0, 0, -intensity);
        return new StageAction.Apply(
                LoadCase.of(
                        name,
                        LineLoad.uniform("ab", down, LoadAxes.GLOBAL),
                        LineLoad.uniform("bc", down, LoadAxes.GLOBAL)));
    }

    private static Map<String, Quantity> prop(Inputs in) {
        List<StageResult> results =
                StageAnalysis.of(halves(in, false))
                        .run(
                                List.of(
                                        Stage.of(
                                                "beam",
                                                new StageAction.Install(
                                                        List.of("ab", "bc"),
                                                        StageAction.Fit.DESIGNED),
                                                load("first", in.si("first load"))),
                                        Stage.of(
                                                "prop",
                                                new StageAction.Hold(
                                                        Support.of("B", Motion.ALONG_Z))),
                                        Stage.of("more", load("second", in.si("second load")))));
        FrameSolution last = results.get(2).solution();
        return Map.of(
                "prop", of(last.reaction("B").force().z(), "N"),
                "moment over the prop", of(last.member("ab").end().momentY(), "N·m"));
    }

    private static Map<String, Quantity> closing(Inputs in) {
        // The right half must follow the left one's tip, which it meets by symmetry.
        List<StageResult> results =
                StageAnalysis.of(closingModel(in))
                        .run(
                                List.of(
                                        Stage.of(
                                                "halves",
                                                new StageAction.Install(
                                                        List.of("ab", "bc"),
                                                        StageAction.Fit.DESIGNED),
                                                load("first", in.si("first load"))),
                                        Stage.of(
                                                "close",
                                                new StageAction.Lock("ab", true, Motion.ABOUT_Y)),
                                        Stage.of("more", load("second", in.si("second load")))));
        FrameSolution last = results.get(2).solution();
        return Map.of(
                "moment in the middle", of(last.member("ab").end().momentY(), "N·m"),
                "start moment", of(last.member("ab").start().momentY(), "N·m"));
    }

    /** Two cantilevers that touch in a hinge: symmetric load leaves it without force. */
    private static FrameModel closingModel(Inputs in) {
        FrameModel model = halves(in, true);
        FrameModelBuilder builder = FrameModel.builder().inPlane();
        model.nodes().forEach(builder::node);
        model.supports().forEach(builder::support);
        builder.add(
                ((BeamColumn) model.member("ab"))
                        .connected(
                                EndConnection.RIGID, EndConnection.RIGID.released(Motion.ABOUT_Y)));
        return builder.add(model.member("bc")).build();
    }

    private static Map<String, Quantity> eccentric(Inputs in) {
        Material material = new Material("m", 200e9, 80e9, 0, 0);
        double inertia = in.si("flexural stiffness") / 200e9;
        Section section =
                Section.slender("s", 0.01, in.si("torsional stiffness") / 80e9, inertia, inertia);
        Vector arm = new Vector(0, in.si("arm"), 0);
        FrameModel model =
                FrameModel.builder()
                        .node("A", 0, 0, 0)
                        .node("B", in.si("length"), 0, 0)
                        .add(BeamColumn.of("m", "A", "B", material, section).offset(arm, arm))
                        .fix("A")
                        .build();
        FrameSolution solution =
                LinearAnalysis.of(model)
                        .solve(LoadCase.of("P", NodalLoad.force("B", 0, 0, -in.si("load"))));
        return Map.of(
                "displacement of the loaded node",
                of(solution.movement("B").translation().z(), "m"),
                "torque in magnitude",
                of(Math.abs(solution.member("m").start().torque()), "N·m"));
    }

    private static Map<String, Quantity> bracedPanel(Inputs in) {
        Material material = new Material("m", 210e9, 80e9, 0, 0);
        FrameModelBuilder builder =
                FrameModel.builder()
                        .node("A", 0, 0, 0)
                        .node("B", in.si("width"), 0, 0)
                        .node("C", 0, 0, in.si("height"))
                        .node("D", in.si("width"), 0, in.si("height"))
                        .pin("A")
                        .pin("B")
                        .inPlane();
        for (String bar : List.of("AC", "BD", "CD", "AD", "BC")) {
            Bar.Carries carries =
                    bar.equals("AD") || bar.equals("BC") ? Bar.Carries.TENSION : Bar.Carries.BOTH;
            builder.add(
                    Bar.of(bar, bar.substring(0, 1), bar.substring(1), material, slender(1e-4))
                            .carrying(carries));
        }
        FrameSolution solution =
                OneWayAnalysis.of(builder.build())
                        .solve(LoadCase.of("H", NodalLoad.force("C", in.si("load"), 0, 0)));
        return Map.of("diagonal in tension", of(solution.member("AD").start().axial(), "N"));
    }

    private static Map<String, Quantity> stay(Inputs in) {
        FrameModel model =
                halves(in, false).toBuilder()
                        .node("T", in.si("length") / 2, 0, in.si("height"))
                        .pin("T")
                        .add(
                                Bar.of(
                                        "stay",
                                        "T",
                                        "B",
                                        material(in, 0),
                                        Section.slender("t", in.si("area"), 1e-6, 1e-6, 1e-6)))
                        .build();
        List<StageResult> results =
                StageAnalysis.of(model)
                        .run(
                                List.of(
                                        Stage.of(
                                                "beam",
                                                new StageAction.Install(
                                                        List.of("ab", "bc"),
                                                        StageAction.Fit.DESIGNED),
                                                load("q", in.si("load"))),
                                        Stage.of(
                                                "stay",
                                                new StageAction.Install(
                                                        List.of("stay"), StageAction.Fit.FITTED)),
                                        Stage.of(
                                                "pull",
                                                new StageAction.Tension("stay", in.si("force")))));
        StageResult last = results.get(2);
        return Map.of(
                "deflection of the middle",
                of(last.solution().movement("B").translation().z(), "m"),
                "unstressed length of the stay",
                of(last.unstressedLengths().getOrDefault("stay", Double.NaN), "m"));
    }

    /** Two bars in a row between supports, one drawn while its ends are held, then let go. */
    private static Map<String, Quantity> barDrawn(Inputs in) {
        Material material = new Material("m", 1, 1, 0, 0);
        Section drawn = Section.slender("d", in.si("first stiffness"), 1, 1, 1);
        Section plain = Section.slender("p", in.si("second stiffness"), 1, 1, 1);
        FrameModel model =
                FrameModel.builder()
                        .node("A", 0, 0, 0)
                        .node("B", in.si("first length"), 0, 0)
                        .node("C", in.si("first length") + in.si("second length"), 0, 0)
                        .add(Bar.of("ab", "A", "B", material, drawn))
                        .add(Bar.of("bc", "B", "C", material, plain))
                        .pin("A")
                        .pin("C")
                        .hold("B", Motion.ALONG_Y, Motion.ALONG_Z)
                        .build();
        FrameSolution solution =
                LinearAnalysis.of(model)
                        .solve(LoadCase.of("T", new InitialForce("ab", in.si("force"))));
        return Map.of(
                "force left", Quantity.of(solution.member("ab").at(0).axial(), "N"),
                "movement", Quantity.of(solution.movement("B").translation().x(), "m"));
    }

    /** A cantilever along x, pulled and bent by a force at its end. */
    private static Map<String, Quantity> stressAndEnergy(Inputs in) {
        double e = 2e11;
        Section section = Section.slender("s", in.si("area"), 1, in.si("second moment"), 1);
        FrameModel model =
                FrameModel.builder()
                        .inPlane()
                        .node("A", 0, 0, 0)
                        .node("B", in.si("length"), 0, 0)
                        .add(BeamColumn.of("m", "A", "B", new Material("m", e, e, 0, 0), section))
                        .fix("A")
                        .build();
        FrameSolution solution =
                LinearAnalysis.of(model)
                        .solve(
                                LoadCase.of(
                                        "P",
                                        NodalLoad.force("B", in.si("pull"), 0, -in.si("force"))));
        if (in.has("arm upward")) {
            // The force along the member acts on top of a rigid arm.
            BeamColumn member = (BeamColumn) model.member("m");
            Vector arm = new Vector(0, 0, -in.si("arm upward"));
            FrameModel armed =
                    FrameModel.builder()
                            .inPlane()
                            .node("A", 0, 0, 0)
                            .node("B", in.si("length"), 0, in.si("arm upward"))
                            .add(member.offset(Vector.ZERO, arm))
                            .fix("A")
                            .build();
            solution =
                    LinearAnalysis.of(armed)
                            .solve(
                                    LoadCase.of(
                                            "P",
                                            NodalLoad.force(
                                                    "B", in.si("pull"), 0, -in.si("force"))));
        }
        return Map.of(
                "stress on top of the clamp",
                Quantity.of(
                        solution.member("m").stress(0, new Fibre("top", 0, in.si("depth") / 2)),
                        "Pa"),
                "strain energy",
                Quantity.of(solution.energy().strain(), "J"),
                "work",
                Quantity.of(solution.energy().work(), "J"));
    }
}
