package org.skewback.checks;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.skewback.cable.Cable;
import org.skewback.frame.BeamColumn;
import org.skewback.frame.BucklingAnalysis;
import org.skewback.frame.CableMember;
import org.skewback.frame.Combination;
import org.skewback.frame.Dislocation;
import org.skewback.frame.EndConnection;
import org.skewback.frame.Energy;
import org.skewback.frame.ForceComponent;
import org.skewback.frame.FrameModel;
import org.skewback.frame.FrameModelBuilder;
import org.skewback.frame.FrameSolution;
import org.skewback.frame.InitialForce;
import org.skewback.frame.LineLoad;
import org.skewback.frame.LineMass;
import org.skewback.frame.LineMoment;
import org.skewback.frame.LinearAnalysis;
import org.skewback.frame.LoadAxes;
import org.skewback.frame.LoadCase;
import org.skewback.frame.Material;
import org.skewback.frame.MemberForces;
import org.skewback.frame.ModalAnalysis;
import org.skewback.frame.Motion;
import org.skewback.frame.Movement;
import org.skewback.frame.NodalLoad;
import org.skewback.frame.NodalMass;
import org.skewback.frame.Orientation;
import org.skewback.frame.PointLoad;
import org.skewback.frame.SecondOrderAnalysis;
import org.skewback.frame.SectionForces;
import org.skewback.frame.SectionProfile;
import org.skewback.frame.SelfWeight;
import org.skewback.frame.SpringLink;
import org.skewback.frame.Stage;
import org.skewback.frame.StageAction;
import org.skewback.frame.StageAnalysis;
import org.skewback.frame.StageResult;
import org.skewback.frame.Superposition;
import org.skewback.frame.Tendon;
import org.skewback.frame.Vector;
import org.skewback.quantity.Quantity;
import org.skewback.steel.Rectangle;
import org.skewback.steel.Section;

/** Checks of sums of loads, of what is fitted between moved nodes, and of parts of members. */
public final class FrameDetailChecks implements Subject {

    private static final Material MATERIAL = new Material("m", 2e11, 8e10, 0, 0);
    private static final Section SECTION = Section.slender("s", 0.02, 3e-4, 2e-4, 1e-4);

    /** Makes the subject. */
    public FrameDetailChecks() {}

    @Override
    public String topic() {
        return "frame";
    }

    @Override
    public String table() {
        return "frame-details";
    }

    @Override
    public Map<String, Checked> routines() {
        Map<String, Checked> routines = new TreeMap<>();
        routines.put("Material: structural steel", FrameDetailChecks::steel);
        routines.put("Superposition: cantilever under all loads", FrameDetailChecks::allLoads);
        routines.put("Modes: effective height", FrameDetailChecks::effectiveHeight);
        routines.put("StageAnalysis: cable fitted", FrameDetailChecks::fittedCable);
        routines.put("StageAnalysis: springs fitted", FrameDetailChecks::fittedSprings);
        routines.put("BucklingAnalysis: pressure on a part", FrameDetailChecks::pressure);
        routines.put("BucklingAnalysis: force above a strip", FrameDetailChecks::above);
        routines.put("SecondOrderAnalysis: soft beam with gaps", FrameDetailChecks::soft);
        routines.put("SelfWeight: heavy taper", FrameDetailChecks::heavyTaper);
        return routines;
    }

    private static Quantity of(double value, String unit) {
        return Quantity.of(value, unit);
    }

    private static Map<String, Quantity> steel(Inputs in) {
        Material steel = Material.steel();
        return Map.of(
                "Young's modulus", of(steel.youngModulus(), "Pa"),
                "shear modulus", of(steel.shearModulus(), "Pa"),
                "thermal expansion", of(steel.expansion(), "1/K"));
    }

    /** A cantilever under loads of every kind on parts of it, times a factor, and another case. */
    private static Map<String, Quantity> allLoads(Inputs in) {
        FrameModel model =
                InSpace.cantilever(
                        new Vector(in.si("length"), 0, 0),
                        BeamColumn.of("m", "A", "B", MATERIAL, SECTION));
        double from = in.si("from");
        double to = in.si("to");
        List<Quantity> y = in.quantities("eccentricities");
        List<Quantity> z = in.quantities("eccentricities across");
        LoadCase first =
                LoadCase.of(
                        "a",
                        new LineLoad(
                                "m",
                                from,
                                to,
                                InSpace.vector(in, "load first"),
                                InSpace.vector(in, "load last"),
                                LoadAxes.GLOBAL),
                        new LineMoment(
                                "m",
                                from,
                                to,
                                InSpace.vector(in, "moment first"),
                                InSpace.vector(in, "moment last"),
                                LoadAxes.GLOBAL),
                        new PointLoad(
                                "m",
                                in.si("place"),
                                InSpace.vector(in, "force"),
                                InSpace.vector(in, "moment"),
                                LoadAxes.GLOBAL),
                        new Tendon(
                                "m",
                                in.si("tendon"),
                                y.get(0).si(),
                                z.get(0).si(),
                                y.get(1).si(),
                                z.get(1).si(),
                                y.get(2).si(),
                                z.get(2).si()),
                        new InitialForce("m", in.si("initial force")));
        LoadCase second =
                LoadCase.of("b", new NodalLoad("B", InSpace.vector(in, "end force"), Vector.ZERO));
        SectionForces forces =
                Superposition.of(
                                LinearAnalysis.of(model).solve(List.of(first, second)),
                                new Combination(
                                        "c",
                                        Map.of("a", in.si("factor"), "b", in.si("other factor"))))
                        .member("m")
                        .at(in.si("position"));
        Map<String, Quantity> results = new TreeMap<>();
        InSpace.putAll(results, "", forces);
        return results;
    }

    /** A mast that carries mass along it, or at its head only. */
    private static Map<String, Quantity> effectiveHeight(Inputs in) {
        double height = in.si("height");
        FrameModel model =
                FrameModel.builder()
                        .node("A", 0, 0, 0)
                        .node("B", 0, 0, height)
                        .add(BeamColumn.of("m", "A", "B", MATERIAL, SECTION))
                        .fix("A")
                        .build();
        ModalAnalysis analysis = ModalAnalysis.of(model);
        if (in.has("line mass")) {
            analysis = analysis.divided(16).with(new LineMass("m", in.si("line mass")));
        } else {
            double rotary = in.si("rotary inertia");
            analysis =
                    analysis.divided(1)
                            .with(
                                    new NodalMass(
                                            "B",
                                            in.si("mass"),
                                            new Vector(rotary, rotary, rotary)));
        }
        Motion axis = in.text("axis").equals("x") ? Motion.ALONG_X : Motion.ALONG_Y;
        var modes = analysis.modes(2);
        int mode = modes.get(0).effectiveMass(axis) > modes.get(1).effectiveMass(axis) ? 0 : 1;
        return Map.of(
                "effective height",
                of(modes.effectiveHeight(mode, axis, new Vector(0, 0, -in.si("base"))), "m"));
    }

    /** A taut cable, cut to length after the node at its end has been drawn aside. */
    private static Map<String, Quantity> fittedCable(Inputs in) {
        double length = in.si("span");
        double drawn = in.si("drawn by");
        double spring = in.si("spring");
        EndConnection along = new EndConnection(spring, 0, 0, 0, 0, 0);
        Cable cable =
                new Cable(in.si("unstressed length"), in.si("weight"), in.si("axial stiffness"));
        FrameModel model =
                FrameModel.builder()
                        .node("A", 0, 0, 0)
                        .node("B", length, 0, 0)
                        .node("G", length + 1, 0, 0)
                        .add(SpringLink.of("spring", "B", "G", along))
                        .add(new CableMember("cable", "A", "B", cable))
                        .fix("A")
                        .fix("G")
                        .hold("B", Motion.ALONG_Y, Motion.ALONG_Z)
                        .hold("B", Motion.ABOUT_X, Motion.ABOUT_Y, Motion.ABOUT_Z)
                        .build();
        List<StageResult> results =
                StageAnalysis.of(model)
                        .run(
                                List.of(
                                        Stage.of(
                                                "draw",
                                                new StageAction.Install(
                                                        List.of("spring"),
                                                        StageAction.Fit.DESIGNED),
                                                new StageAction.Apply(
                                                        LoadCase.of(
                                                                "F",
                                                                NodalLoad.force(
                                                                        "B",
                                                                        spring * drawn,
                                                                        0,
                                                                        0)))),
                                        Stage.of(
                                                "fit",
                                                new StageAction.Install(
                                                        List.of("cable"),
                                                        StageAction.Fit.FITTED))));
        StageResult last = results.get(results.size() - 1);
        return Map.of(
                "tension", of(last.solution().member("cable").at(length / 2).axial(), "N"),
                "unstressed length more than in the model",
                        of(
                                last.unstressedLengths().get("cable") - in.si("unstressed length"),
                                "m"));
    }

    /** Springs put between two nodes that springs to the ground hold, after one has moved. */
    private static Map<String, Quantity> fittedSprings(Inputs in) {
        EndConnection left = new EndConnection(in.si("left"), 0, 0, in.si("left in torsion"), 0, 0);
        EndConnection right =
                new EndConnection(in.si("right"), 0, 0, in.si("right in torsion"), 0, 0);
        EndConnection between =
                new EndConnection(in.si("between"), 0, 0, in.si("between in torsion"), 0, 0);
        FrameModel model =
                FrameModel.builder()
                        .node("G", 0, 0, 0)
                        .node("A", 1, 0, 0)
                        .node("B", 2, 0, 0)
                        .node("H", 3, 0, 0)
                        .add(SpringLink.of("left", "G", "A", left))
                        .add(SpringLink.of("between", "A", "B", between))
                        .add(SpringLink.of("right", "B", "H", right))
                        .fix("G")
                        .fix("H")
                        .hold("A", Motion.ALONG_Y, Motion.ALONG_Z, Motion.ABOUT_Y, Motion.ABOUT_Z)
                        .hold("B", Motion.ALONG_Y, Motion.ALONG_Z, Motion.ABOUT_Y, Motion.ABOUT_Z)
                        .build();
        StageAction first =
                new StageAction.Install(List.of("left", "right"), StageAction.Fit.DESIGNED);
        List<StageResult> results =
                StageAnalysis.of(model)
                        .run(
                                List.of(
                                        Stage.of(
                                                "before",
                                                first,
                                                new StageAction.Apply(push(in, "first", "B"))),
                                        Stage.of(
                                                "after",
                                                new StageAction.Install(
                                                        List.of("between"), StageAction.Fit.FITTED),
                                                new StageAction.Apply(push(in, "second", "A")))));
        FrameSolution solution = results.get(1).solution();
        Energy energy = solution.energy();
        return Map.of(
                "movement of the first", of(solution.movement("A").translation().x(), "m"),
                "strain energy", of(energy.strain(), "J"),
                "work", of(energy.work(), "J"));
    }

    private static LoadCase push(Inputs in, String name, String node) {
        return LoadCase.of(
                name,
                new NodalLoad(
                        node,
                        new Vector(in.si(name + " force"), 0, 0),
                        new Vector(in.si(name + " moment"), 0, 0)));
    }

    /** A member soft along its axis, its ends on springs and kept from turning, pressed on a part. */
    private static Map<String, Quantity> pressure(Inputs in) {
        double length = in.si("length");
        double inertia = in.si("second moment");
        boolean sideways = in.text("axis").equals("y");
        double other = sideways ? 1 : inertia;
        Motion across = sideways ? Motion.ALONG_Y : Motion.ALONG_Z;
        Material material = new Material("m", 2e8, 1e8, 0, 0);
        FrameModelBuilder builder =
                FrameModel.builder()
                        .node("A", 0, 0, 0)
                        .node("B", length, 0, 0)
                        .add(
                                BeamColumn.of(
                                        "m",
                                        "A",
                                        "B",
                                        material,
                                        Section.slender("s", in.si("area"), 1e3, other, inertia)))
                        .hold("A", Motion.ALONG_X)
                        .spring("A", across, in.si("spring at the start"))
                        .spring("B", across, in.si("spring at the end"));
        for (String end : List.of("A", "B")) {
            builder.hold(end, Motion.ABOUT_Y);
            if (sideways) {
                builder.hold(end, Motion.ALONG_Z, Motion.ABOUT_X, Motion.ABOUT_Z);
            }
        }
        FrameModel model = sideways ? builder.build() : builder.inPlane().build();
        Vector direction = sideways ? Vector.Y : Vector.Z;
        LoadCase loads =
                LoadCase.of(
                        "q",
                        new LineLoad(
                                "m",
                                in.si("from"),
                                in.si("to"),
                                direction.times(in.si("first")),
                                direction.times(in.si("last")),
                                LoadAxes.LOCAL),
                        NodalLoad.force("B", -in.si("thrust"), 0, 0));
        double factor =
                BucklingAnalysis.of(model)
                        .divided((int) in.si("pieces"))
                        .withFollowingPressure()
                        .factors(loads, 1)
                        .governing()
                        .factor();
        return Map.of("factor", of(factor, ""));
    }

    /** A narrow strip clamped at one end, a rigid arm at its other end, and a force on that. */
    private static Map<String, Quantity> above(Inputs in) {
        double weak = in.si("weak second moment");
        double strong = 1e4 * weak;
        boolean aside = in.text("strong axis").equals("z");
        double length = in.si("length");
        double arm = in.si("arm");
        Section section =
                Section.slender(
                        "s",
                        1,
                        in.si("torsion constant"),
                        aside ? weak : strong,
                        aside ? strong : weak);
        FrameModel model =
                FrameModel.builder()
                        .node("A", 0, 0, 0)
                        .node("B", length, 0, arm)
                        .add(
                                BeamColumn.of("m", "A", "B", MATERIAL, section)
                                        .oriented(new Orientation(aside ? Vector.Y : Vector.Z, 0))
                                        .offset(Vector.ZERO, new Vector(0, 0, -arm)))
                        .fix("A")
                        .build();
        double factor =
                BucklingAnalysis.of(model)
                        .divided(40)
                        .factors(LoadCase.of("P", NodalLoad.force("B", 0, 0, -1)), 1)
                        .governing()
                        .factor();
        return Map.of("force", of(factor, "N"));
    }

    /** A simple beam soft in shear: loads on parts of it, gaps, a tendon and a thrust, in one plane. */
    private static Map<String, Quantity> soft(Inputs in) {
        double length = in.si("length");
        boolean aside = in.text("axis").equals("y");
        Vector across = aside ? Vector.Y : Vector.Z;
        Vector about = aside ? Vector.Z : Vector.Y;
        double shearArea = in.si("shear area");
        Section section =
                Section.of(
                        "s",
                        in.si("area"),
                        shearArea,
                        shearArea,
                        1e-3,
                        aside ? 1 : in.si("second moment"),
                        aside ? in.si("second moment") : 1);
        FrameModel model =
                FrameModel.builder()
                        .node("A", 0, 0, 0)
                        .node("B", length, 0, 0)
                        .add(BeamColumn.of("m", "A", "B", MATERIAL, section))
                        .hold("A", Motion.ALONG_X, Motion.ALONG_Y, Motion.ALONG_Z, Motion.ABOUT_X)
                        .hold("B", Motion.ALONG_Y, Motion.ALONG_Z)
                        .build();
        List<Quantity> load = in.quantities("load");
        List<Quantity> moment = in.quantities("line moment");
        List<Quantity> e = in.quantities("eccentricities");
        double from = in.si("from");
        double to = in.si("to");
        LoadCase loads =
                LoadCase.of(
                        "q",
                        new LineLoad(
                                "m",
                                from,
                                to,
                                across.times(load.get(0).si()),
                                across.times(load.get(1).si()),
                                LoadAxes.LOCAL),
                        new LineMoment(
                                "m",
                                from,
                                to,
                                about.times(moment.get(0).si()),
                                about.times(moment.get(1).si()),
                                LoadAxes.LOCAL),
                        new PointLoad(
                                "m",
                                in.si("place"),
                                across.times(in.si("force")),
                                about.times(in.si("moment")),
                                LoadAxes.LOCAL),
                        new Dislocation(
                                "m",
                                in.si("place of the slip"),
                                aside ? ForceComponent.SHEAR_Y : ForceComponent.SHEAR_Z,
                                in.si("slip")),
                        new Dislocation(
                                "m",
                                in.si("place of the kink"),
                                aside ? ForceComponent.MOMENT_Z : ForceComponent.MOMENT_Y,
                                in.si("kink")),
                        new Tendon(
                                "m",
                                in.si("tendon"),
                                aside ? e.get(0).si() : 0,
                                aside ? 0 : e.get(0).si(),
                                aside ? e.get(1).si() : 0,
                                aside ? 0 : e.get(1).si(),
                                aside ? e.get(2).si() : 0,
                                aside ? 0 : e.get(2).si()),
                        NodalLoad.force("B", -in.si("thrust"), 0, 0));
        FrameSolution solution = SecondOrderAnalysis.of(model).solve(loads);
        MemberForces member = solution.member("m");
        double position = in.si("position");
        SectionForces forces = member.at(position);
        Movement moved = member.movement(position);
        return Map.of(
                "displacement", of(moved.translation().dot(across), "m"),
                "rotation", of(moved.rotation().dot(about), "rad"),
                "moment", of(aside ? forces.momentZ() : forces.momentY(), "N·m"),
                "shear", of(aside ? forces.shearY() : forces.shearZ(), "N"),
                "strain energy", of(solution.energy().strain(), "J"),
                "work", of(solution.energy().work(), "J"),
                "moment left open over force times length",
                        of(
                                solution.equilibrium().moment().length()
                                        / (Math.abs(in.si("force")) * length),
                                ""));
    }

    /** A simple beam that tapers in width and height, under its own weight. */
    private static Map<String, Quantity> heavyTaper(Inputs in) {
        double length = in.si("length");
        List<Quantity> start = in.quantities("start");
        List<Quantity> end = in.quantities("end");
        Material material = new Material("m", 3e10, 1.2e10, in.si("density"), 0);
        FrameModel model =
                FrameModel.builder()
                        .inPlane()
                        .node("A", 0, 0, 0)
                        .node("B", length, 0, 0)
                        .add(
                                BeamColumn.of(
                                        "m",
                                        "A",
                                        "B",
                                        material,
                                        SectionProfile.tapered(
                                                new Rectangle(start.get(0).si(), start.get(1).si())
                                                        .section("start"),
                                                new Rectangle(end.get(0).si(), end.get(1).si())
                                                        .section("end"))))
                        .hold("A", Motion.ALONG_X, Motion.ALONG_Z)
                        .hold("B", Motion.ALONG_Z)
                        .build();
        LoadCase weight =
                LoadCase.of("G", new SelfWeight(new Vector(0, 0, -in.si("gravity")), List.of()));
        FrameSolution solution =
                in.text("analysis").equals("linear")
                        ? LinearAnalysis.of(model).solve(weight)
                        : SecondOrderAnalysis.of(model).divided(400).solve(weight);
        SectionForces forces = solution.member("m").at(in.si("position"));
        return Map.of(
                "moment", of(forces.momentY(), "N·m"),
                "shear", of(forces.shearZ(), "N"),
                "displacement",
                        of(
                                solution.member("m").movement(in.si("position")).translation().z(),
                                "m"));
    }
}
