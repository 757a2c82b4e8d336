package org.skewback.checks;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.skewback.frame.Bar;
import org.skewback.frame.BeamColumn;
import org.skewback.frame.BucklingAnalysis;
import org.skewback.frame.BucklingMode;
import org.skewback.frame.ForceComponent;
import org.skewback.frame.FrameHistory;
import org.skewback.frame.FrameModel;
import org.skewback.frame.FrameModelBuilder;
import org.skewback.frame.FrameSolution;
import org.skewback.frame.GroundMotion;
import org.skewback.frame.InfluenceLine;
import org.skewback.frame.InitialForce;
import org.skewback.frame.Lane;
import org.skewback.frame.LineLoad;
import org.skewback.frame.LineMass;
import org.skewback.frame.LineMoment;
import org.skewback.frame.LinearAnalysis;
import org.skewback.frame.Load;
import org.skewback.frame.LoadAxes;
import org.skewback.frame.LoadCase;
import org.skewback.frame.LoadTrain;
import org.skewback.frame.Material;
import org.skewback.frame.MemberForces;
import org.skewback.frame.ModalAnalysis;
import org.skewback.frame.Modes;
import org.skewback.frame.Motion;
import org.skewback.frame.Movement;
import org.skewback.frame.NodalLoad;
import org.skewback.frame.NodalMass;
import org.skewback.frame.Orientation;
import org.skewback.frame.Passage;
import org.skewback.frame.RayleighDamping;
import org.skewback.frame.Reaction;
import org.skewback.frame.Response;
import org.skewback.frame.SecondOrderAnalysis;
import org.skewback.frame.SectionProfile;
import org.skewback.frame.SpectrumAnalysis;
import org.skewback.frame.SpectrumResponse;
import org.skewback.frame.Tendon;
import org.skewback.frame.TimeHistoryAnalysis;
import org.skewback.frame.Vector;
import org.skewback.numeric.Monitor;
import org.skewback.numeric.TimeScheme;
import org.skewback.quantity.Quantity;
import org.skewback.steel.Fibre;
import org.skewback.steel.Rectangle;
import org.skewback.steel.Section;

/** Checks of the directions, components and extremes that examples in one plane leave out. */
public final class FrameDirectionChecks implements Subject {

    private static final Material MATERIAL = new Material("m", 2e11, 8e10, 0, 0);
    private static final Section SECTION = Section.slender("s", 0.02, 3e-4, 2e-4, 1e-4);

    /** Makes the subject. */
    public FrameDirectionChecks() {}

    @Override
    public String topic() {
        return "frame";
    }

    @Override
    public String table() {
        return "frame-directions";
    }

    @Override
    public Map<String, Checked> routines() {
        Map<String, Checked> routines = new TreeMap<>();
        routines.put("SpectrumAnalysis: cantilever in space", FrameDirectionChecks::cantilever);
        routines.put("SpectrumAnalysis: bent arm", FrameDirectionChecks::bentArm);
        routines.put("TimeHistoryAnalysis: heavy foot", FrameDirectionChecks::heavyFoot);
        routines.put("Passage: overhang", FrameDirectionChecks::overhang);
        routines.put("LinearAnalysis: tendon aside", FrameDirectionChecks::tendon);
        routines.put("LinearAnalysis: arms in space", FrameDirectionChecks::arms);
        routines.put("LinearAnalysis: line loads in space", FrameDirectionChecks::lineLoads);
        routines.put("SecondOrderAnalysis: bars drawn", FrameDirectionChecks::barsDrawn);
        routines.put("SecondOrderAnalysis: rigid head", FrameDirectionChecks::rigidHead);
        routines.put("SecondOrderAnalysis: tendon under thrust", FrameDirectionChecks::thrust);
        routines.put("LinearAnalysis: rolled cantilever", FrameDirectionChecks::rolled);
        routines.put("InfluenceLine: areas of a part", FrameDirectionChecks::areas);
        routines.put("BucklingMode: heavy column", FrameDirectionChecks::heavyColumn);
        routines.put("BucklingMode: tapered column", FrameDirectionChecks::taperedColumn);
        routines.put("BucklingAnalysis: column that twists", FrameDirectionChecks::twisting);
        routines.put("BucklingAnalysis: rigid head", FrameDirectionChecks::headBuckles);
        routines.put("MemberForces: stress in a taper", FrameDirectionChecks::taperedStress);
        routines.put("TimeHistoryAnalysis: heavy mast", FrameDirectionChecks::heavyMast);
        return routines;
    }

    private static Quantity of(double value, String unit) {
        return Quantity.of(value, unit);
    }

    private static Motion axis(Inputs in) {
        return switch (in.text("axis")) {
            case "x" -> Motion.ALONG_X;
            case "y" -> Motion.ALONG_Y;
            case "z" -> Motion.ALONG_Z;
            default -> throw new IllegalArgumentException("axis is \"" + in.text("axis") + "\".");
        };
    }

    private static void putAll(
            Map<String, Quantity> results, String what, Vector vector, String unit) {
        results.put(what + "x", of(vector.x(), unit));
        results.put(what + "y", of(vector.y(), unit));
        results.put(what + "z", of(vector.z(), unit));
    }

    /** The mode that takes all the mass along an axis. */
    private static int along(Modes modes, Motion axis) {
        int best = 0;
        for (int k = 1; k < modes.list().size(); k++) {
            if (Math.abs(modes.get(k).participation(axis))
                    > Math.abs(modes.get(best).participation(axis))) {
                best = k;
            }
        }
        return best;
    }

    private static SpectrumResponse response(Modes modes, Motion axis, double acceleration) {
        return SpectrumAnalysis.of(modes).under(Map.of(axis, period -> acceleration));
    }

    private static Map<String, Quantity> cantilever(Inputs in) {
        Vector end = InSpace.vector(in, "end");
        FrameModel model = InSpace.cantilever(end, BeamColumn.of("m", "A", "B", MATERIAL, SECTION));
        Modes modes =
                ModalAnalysis.of(model).divided(4).with(NodalMass.of("B", in.si("mass"))).modes(3);
        Motion axis = axis(in);
        SpectrumResponse response = response(modes, axis, in.si("spectral acceleration"));
        double position = in.si("position");
        Map<String, Quantity> results = new TreeMap<>();
        InSpace.putAll(results, "", response.modalForces(along(modes, axis), axis, "m", position));
        Movement moved = response.movement("m", position);
        putAll(results, "displacement ", moved.translation(), "m");
        putAll(results, "rotation ", moved.rotation(), "rad");
        return results;
    }

    private static Map<String, Quantity> bentArm(Inputs in) {
        double first = in.si("first length");
        FrameModel model =
                FrameModel.builder()
                        .node("A", 0, 0, 0)
                        .node("B", first, 0, 0)
                        .node("C", first, in.si("second length"), 0)
                        .add(BeamColumn.of("ab", "A", "B", MATERIAL, SECTION))
                        .add(BeamColumn.of("bc", "B", "C", MATERIAL, SECTION))
                        .fix("A")
                        .build();
        Modes modes =
                ModalAnalysis.of(model).divided(4).with(NodalMass.of("C", in.si("mass"))).modes(3);
        Motion axis = Motion.ALONG_Z;
        SpectrumResponse response = response(modes, axis, in.si("spectral acceleration"));
        int mode = along(modes, axis);
        Map<String, Quantity> results = new TreeMap<>();
        double position = in.si("position");
        InSpace.putAll(results, "first, ", response.modalForces(mode, axis, "ab", position));
        InSpace.putAll(results, "second, ", response.modalForces(mode, axis, "bc", position));
        putAll(results, "turn of the first, ", response.movement("ab", position).rotation(), "rad");
        results.put(
                "largest moment y of the first",
                of(response.forces("ab", position).momentY(), "N·m"));
        results.put("reaction x", of(response.reaction("A").moment().x(), "N·m"));
        results.put("reaction y", of(response.reaction("A").moment().y(), "N·m"));
        results.put("reaction z", of(response.reaction("A").force().z(), "N"));
        return results;
    }

    /** A mast without mass, its head and its foot heavy, all unknowns stepped. */
    private static Map<String, Quantity> heavyFoot(Inputs in) {
        double mass = in.si("mass of the head");
        double omega = in.si("circular frequency");
        double height = 10;
        double e = 2e11;
        double stiffness = mass * omega * omega;
        double inertia = stiffness * height * height * height / (3 * e);
        FrameModel model =
                FrameModel.builder()
                        .inPlane()
                        .node("F", 0, 0, 0)
                        .node("H", 0, 0, height)
                        .add(
                                BeamColumn.of(
                                        "mast",
                                        "F",
                                        "H",
                                        new Material("m", e, e, 0, 0),
                                        Section.slender("s", 1e4, 1, inertia, 1)))
                        .fix("F")
                        .build();
        double step = in.si("step");
        int steps = (int) Math.round(in.si("time") / step);
        double[] record = new double[steps + 1];
        Arrays.fill(record, in.si("acceleration"));
        FrameHistory history =
                TimeHistoryAnalysis.of(
                                ModalAnalysis.of(model)
                                        .divided(1)
                                        .with(
                                                NodalMass.of("H", mass),
                                                NodalMass.of("F", in.si("mass of the foot"))))
                        .direct(
                                GroundMotion.along(step, Motion.ALONG_X, record),
                                TimeScheme.averageAcceleration(),
                                new RayleighDamping(in.si("damping"), omega, 1e12 * omega),
                                Monitor.quiet());
        return Map.of(
                "reaction", of(history.reaction("F", Motion.ALONG_X)[steps], "N"),
                "moment at half the height",
                        of(
                                history.force("mast", height / 2, ForceComponent.MOMENT_Y)[steps],
                                "N·m"));
    }

    /** Moment in the middle of a simple beam that goes on beyond its second bearing. */
    private static Map<String, Quantity> overhang(Inputs in) {
        double span = in.si("span");
        FrameModel model =
                FrameModel.builder()
                        .inPlane()
                        .node("0", 0, 0, 0)
                        .node("1", span, 0, 0)
                        .node("2", span + in.si("overhang"), 0, 0)
                        .add(BeamColumn.of("s1", "0", "1", MATERIAL, SECTION))
                        .add(BeamColumn.of("s2", "1", "2", MATERIAL, SECTION))
                        .hold("0", Motion.ALONG_X, Motion.ALONG_Z)
                        .hold("1", Motion.ALONG_Z)
                        .build();
        InfluenceLine line =
                InfluenceLine.of(
                        LinearAnalysis.of(model),
                        Response.force("s1", span / 2, ForceComponent.MOMENT_Y),
                        Lane.along("lane", model, List.of("s1", "s2"), Vector.ZERO));
        double behind = in.si("distance");
        LoadTrain train =
                new LoadTrain(
                        "T",
                        List.of(
                                new LoadTrain.Axle(0, in.si("first axle")),
                                new LoadTrain.Axle(behind, in.si("second axle"))));
        Passage passage = Passage.of(line, train, in.si("step"));
        return Map.of(
                "largest", of(passage.largest(), "N·m"),
                "place of the largest", of(passage.largestAt(), "m"),
                "smallest", of(passage.smallest(), "N·m"),
                "place of the smallest", of(passage.smallestAt(), "m"));
    }

    /** A tendon to the side of a beam, in the plane across its height. */
    private static Map<String, Quantity> tendon(Inputs in) {
        double length = in.si("length");
        List<Quantity> aside = in.quantities("eccentricities");
        List<Quantity> below = in.quantities("eccentricities across");
        String ends = in.text("ends");
        FrameModelBuilder builder =
                FrameModel.builder()
                        .node("A", 0, 0, 0)
                        .node("B", length, 0, 0)
                        .add(BeamColumn.of("m", "A", "B", MATERIAL, SECTION))
                        .hold("A", Motion.ALONG_X, Motion.ALONG_Y, Motion.ALONG_Z)
                        .hold("A", Motion.ABOUT_X)
                        .hold("B", Motion.ALONG_Y, Motion.ALONG_Z);
        if (!ends.equals("simple")) {
            builder.hold("A", Motion.ABOUT_Z);
        }
        if (ends.equals("clamped")) {
            builder.hold("B", Motion.ABOUT_Z);
        }
        Tendon tendon =
                new Tendon(
                        "m",
                        in.si("force"),
                        aside.get(0).si(),
                        below.get(0).si(),
                        aside.get(1).si(),
                        below.get(1).si(),
                        aside.get(2).si(),
                        below.get(2).si());
        MemberForces forces =
                LinearAnalysis.of(builder.build()).solve(LoadCase.of("P", tendon)).member("m");
        Map<String, Quantity> results = new TreeMap<>();
        InSpace.putAll(results, "start ", forces.start());
        InSpace.putAll(results, "middle ", forces.at(length / 2));
        InSpace.putAll(results, "end ", forces.end());
        putAll(results, "middle displacement ", forces.movement(length / 2).translation(), "m");
        return results;
    }

    /** A cantilever along x between rigid arms that lie along no axis, loaded at the node beyond. */
    private static Map<String, Quantity> arms(Inputs in) {
        Vector startArm = InSpace.vector(in, "start arm");
        Vector endArm = InSpace.vector(in, "end arm");
        Vector end = startArm.plus(Vector.X.times(in.si("length"))).minus(endArm);
        FrameModel model =
                FrameModel.builder()
                        .node("A", 0, 0, 0)
                        .node("B", end.x(), end.y(), end.z())
                        .add(
                                BeamColumn.of("m", "A", "B", MATERIAL, SECTION)
                                        .offset(startArm, endArm))
                        .fix("A")
                        .build();
        FrameSolution solution =
                LinearAnalysis.of(model)
                        .solve(
                                LoadCase.of(
                                        "P",
                                        new NodalLoad(
                                                "B",
                                                InSpace.vector(in, "force"),
                                                InSpace.vector(in, "moment"))));
        Map<String, Quantity> results = new TreeMap<>();
        InSpace.putAll(results, "start ", solution.member("m").start());
        Movement moved = solution.movement("B");
        Reaction reaction = solution.reaction("A");
        putAll(results, "displacement ", moved.translation(), "m");
        putAll(results, "rotation ", moved.rotation(), "rad");
        putAll(results, "reaction moment ", reaction.moment(), "N·m");
        return results;
    }

    /** A cantilever along no axis under a line load and a line moment on parts of it. */
    private static Map<String, Quantity> lineLoads(Inputs in) {
        Vector end = InSpace.vector(in, "end");
        FrameModel model = InSpace.cantilever(end, BeamColumn.of("m", "A", "B", MATERIAL, SECTION));
        LoadAxes axes =
                switch (in.text("axes")) {
                    case "global" -> LoadAxes.GLOBAL;
                    case "local" -> LoadAxes.LOCAL;
                    case "projected" -> LoadAxes.PROJECTED;
                    default ->
                            throw new IllegalArgumentException(
                                    "axes are \"" + in.text("axes") + "\".");
                };
        double from = in.si("from");
        double to = in.si("to");
        Vector first = InSpace.vector(in, "first");
        Vector last = InSpace.vector(in, "last");
        Load load =
                in.text("kind").equals("moment")
                        ? new LineMoment("m", from, to, first, last, axes)
                        : new LineLoad("m", from, to, first, last, axes);
        FrameSolution solution = LinearAnalysis.of(model).solve(LoadCase.of("q", load));
        Map<String, Quantity> results = new TreeMap<>();
        Reaction reaction = solution.reaction("A");
        putAll(results, "reaction ", reaction.force(), "N");
        putAll(results, "reaction moment ", reaction.moment(), "N·m");
        putAll(results, "displacement ", solution.movement("B").translation(), "m");
        putAll(results, "rotation ", solution.movement("B").rotation(), "rad");
        return results;
    }

    /** Three bars in line, drawn, held across their joints by springs besides. */
    private static Map<String, Quantity> barsDrawn(Inputs in) {
        double length = in.si("length");
        double spring = in.si("spring");
        Material material = new Material("m", in.si("young modulus"), 1, 0, 0);
        Section section = Section.slender("s", 1, 1, 1, 1);
        FrameModelBuilder builder =
                FrameModel.builder()
                        .node("A", 0, 0, 0)
                        .node("B", length, 0, 0)
                        .node("C", 2 * length, 0, 0)
                        .node("D", 3 * length, 0, 0)
                        .pin("A")
                        .pin("D");
        List<Load> loads = new ArrayList<>();
        for (String ends : List.of("AB", "BC", "CD")) {
            builder.add(Bar.of(ends, ends.substring(0, 1), ends.substring(1), material, section));
            loads.add(new InitialForce(ends, in.si("tension")));
        }
        for (String joint : List.of("B", "C")) {
            builder.spring(joint, Motion.ALONG_Y, spring).spring(joint, Motion.ALONG_Z, spring);
        }
        List<Quantity> load = in.quantities("load");
        loads.add(NodalLoad.force("B", 0, load.get(0).si(), load.get(1).si()));
        FrameSolution solution =
                SecondOrderAnalysis.of(builder.build()).solve(new LoadCase("P", loads));
        Map<String, Quantity> results = new TreeMap<>();
        putAll(results, "displacement ", solution.movement("B").translation(), "m");
        putAll(results, "displacement beyond ", solution.movement("C").translation(), "m");
        putAll(results, "reaction ", solution.reaction("A").force(), "N");
        putAll(results, "reaction beyond ", solution.reaction("D").force(), "N");
        results.put("strain energy", of(solution.energy().strain(), "J"));
        return results;
    }

    private static FrameModel headed(Inputs in) {
        double length = in.si("length");
        double head = in.si("head");
        return InSpace.cantilever(
                new Vector(0, 0, length + head),
                BeamColumn.of("m", "A", "B", MATERIAL, SECTION)
                        .offset(Vector.ZERO, new Vector(0, 0, -head)));
    }

    private static Map<String, Quantity> headBuckles(Inputs in) {
        List<BucklingMode> modes =
                BucklingAnalysis.of(headed(in))
                        .divided(16)
                        .factors(LoadCase.of("P", NodalLoad.force("B", 0, 0, -1)), 2)
                        .modes();
        return Map.of(
                "first", of(modes.get(0).factor(), "N"), "second", of(modes.get(1).factor(), "N"));
    }

    /** A column below a rigid head, thrust down and aside at its top. */
    private static Map<String, Quantity> rigidHead(Inputs in) {
        FrameSolution solution =
                SecondOrderAnalysis.of(headed(in))
                        .solve(
                                LoadCase.of(
                                        "P",
                                        new NodalLoad(
                                                "B", InSpace.vector(in, "force"), Vector.ZERO)));
        Map<String, Quantity> results = new TreeMap<>();
        putAll(results, "displacement ", solution.movement("B").translation(), "m");
        putAll(results, "rotation ", solution.movement("B").rotation(), "rad");
        putAll(results, "reaction moment ", solution.reaction("A").moment(), "N·m");
        results.put("strain energy", of(solution.energy().strain(), "J"));
        return results;
    }

    /** A simple beam with a tendon, and a thrust from outside. */
    private static Map<String, Quantity> thrust(Inputs in) {
        double length = in.si("length");
        FrameModel model =
                FrameModel.builder()
                        .node("A", 0, 0, 0)
                        .node("B", length, 0, 0)
                        .add(BeamColumn.of("m", "A", "B", MATERIAL, SECTION))
                        .hold("A", Motion.ALONG_X, Motion.ALONG_Y, Motion.ALONG_Z, Motion.ABOUT_X)
                        .hold("B", Motion.ALONG_Y, Motion.ALONG_Z)
                        .build();
        List<Quantity> y = in.quantities("eccentricities");
        List<Quantity> z = in.quantities("eccentricities across");
        FrameSolution solution =
                SecondOrderAnalysis.of(model)
                        .solve(
                                LoadCase.of(
                                        "P",
                                        new Tendon(
                                                "m",
                                                in.si("force"),
                                                y.get(0).si(),
                                                z.get(0).si(),
                                                y.get(1).si(),
                                                z.get(1).si(),
                                                y.get(2).si(),
                                                z.get(2).si()),
                                        NodalLoad.force("B", -in.si("thrust"), 0, 0)));
        Map<String, Quantity> results = new TreeMap<>();
        MemberForces forces = solution.member("m");
        InSpace.putAll(results, "middle ", forces.at(length / 2));
        putAll(results, "middle displacement ", forces.movement(length / 2).translation(), "m");
        return results;
    }

    private static Map<String, Quantity> rolled(Inputs in) {
        FrameModel model =
                InSpace.cantilever(
                        new Vector(in.si("length"), 0, 0),
                        BeamColumn.of("m", "A", "B", MATERIAL, SECTION)
                                .oriented(new Orientation(Vector.Z, in.si("roll"))));
        Vector moment = InSpace.vector(in, "moment");
        FrameSolution solution =
                LinearAnalysis.of(model)
                        .solve(
                                LoadCase.of(
                                        "P",
                                        new NodalLoad(
                                                "B", InSpace.vector(in, "force"), Vector.ZERO),
                                        NodalLoad.moment("B", moment.x(), moment.y(), moment.z())));
        Map<String, Quantity> results = new TreeMap<>();
        putAll(results, "displacement ", solution.movement("B").translation(), "m");
        putAll(results, "rotation ", solution.movement("B").rotation(), "rad");
        return results;
    }

    /** Moment in the middle of the first of two equal spans. */
    private static Map<String, Quantity> areas(Inputs in) {
        double span = in.si("span");
        FrameModel model =
                FrameModel.builder()
                        .inPlane()
                        .node("0", 0, 0, 0)
                        .node("1", span, 0, 0)
                        .node("2", 2 * span, 0, 0)
                        .add(BeamColumn.of("s1", "0", "1", MATERIAL, SECTION))
                        .add(BeamColumn.of("s2", "1", "2", MATERIAL, SECTION))
                        .hold("0", Motion.ALONG_X, Motion.ALONG_Z)
                        .hold("1", Motion.ALONG_Z)
                        .hold("2", Motion.ALONG_Z)
                        .build();
        InfluenceLine line =
                InfluenceLine.of(
                        LinearAnalysis.of(model),
                        Response.force("s1", span / 2, ForceComponent.MOMENT_Y),
                        Lane.along("lane", model, List.of("s1", "s2"), Vector.ZERO));
        double from = in.si("from");
        double to = in.si("to");
        return Map.of(
                "area", of(line.area(from, to), "m²"),
                "positive area", of(line.positiveArea(from, to), "m²"),
                "negative area", of(line.negativeArea(from, to), "m²"));
    }

    /** A column, fixed at its foot, that buckles under its own weight. */
    private static Map<String, Quantity> heavyColumn(Inputs in) {
        double length = in.si("length");
        FrameModel model =
                FrameModel.builder()
                        .inPlane()
                        .node("A", 0, 0, 0)
                        .node("B", 0, 0, length)
                        .add(BeamColumn.of("m", "A", "B", MATERIAL, SECTION))
                        .fix("A")
                        .build();
        LoadCase weight =
                LoadCase.of(
                        "q",
                        LineLoad.uniform("m", new Vector(0, 0, -in.si("weight")), LoadAxes.GLOBAL));
        BucklingAnalysis analysis = BucklingAnalysis.of(model).divided(16);
        BucklingMode mode =
                (in.text("permanent").equals("as much")
                                ? analysis.factors(weight, weight, 1)
                                : analysis.factors(weight, 1))
                        .governing();
        double position = in.si("position");
        return Map.of(
                "factor", of(mode.factor(), ""),
                "axial force", of(mode.axialForce("m", position), "N"),
                "buckling length", of(mode.bucklingLength("m", position, Motion.ABOUT_Y), "m"));
    }

    private static BeamColumn tapered(Inputs in, String start, String end) {
        double width = in.si("width");
        return BeamColumn.of(
                "m",
                start,
                end,
                MATERIAL,
                SectionProfile.tapered(
                        new Rectangle(width, in.si("root height")).section("root"),
                        new Rectangle(width, in.si("tip height")).section("tip")));
    }

    private static double heightAt(Inputs in, double position) {
        double share = position / in.si("length");
        return (1 - share) * in.si("root height") + share * in.si("tip height");
    }

    private static Map<String, Quantity> taperedColumn(Inputs in) {
        FrameModel model =
                FrameModel.builder()
                        .inPlane()
                        .node("A", 0, 0, 0)
                        .node("B", 0, 0, in.si("length"))
                        .add(tapered(in, "A", "B"))
                        .fix("A")
                        .build();
        BucklingMode mode =
                BucklingAnalysis.of(model)
                        .divided(4)
                        .factors(LoadCase.of("P", NodalLoad.force("B", 0, 0, -1)), 1)
                        .governing();
        double position = in.si("position");
        double height = heightAt(in, position);
        double there = MATERIAL.youngModulus() * in.si("width") * height * height * height / 12;
        double euler = Math.PI * Math.sqrt(there / -mode.axialForce("m", position));
        return Map.of(
                "buckling length over that of the section there",
                of(mode.bucklingLength("m", position, Motion.ABOUT_Y) / euler, ""));
    }

    private static Map<String, Quantity> taperedStress(Inputs in) {
        FrameModel model =
                FrameModel.builder()
                        .inPlane()
                        .node("A", 0, 0, 0)
                        .node("B", in.si("length"), 0, 0)
                        .add(tapered(in, "A", "B"))
                        .fix("A")
                        .build();
        double position = in.si("position");
        Fibre top = new Fibre("top", 0, heightAt(in, position) / 2);
        return Map.of(
                "stress at the top",
                of(
                        LinearAnalysis.of(model)
                                .solve(LoadCase.of("P", NodalLoad.force("B", 0, 0, -in.si("load"))))
                                .member("m")
                                .stress(position, top),
                        "Pa"));
    }

    /** One piece with mass along it, all unknowns stepped, damped by mass and stiffness. */
    private static Map<String, Quantity> heavyMast(Inputs in) {
        FrameModel model =
                FrameModel.builder()
                        .inPlane()
                        .node("F", 0, 0, 0)
                        .node("H", 0, 0, in.si("height"))
                        .add(BeamColumn.of("mast", "F", "H", MATERIAL, SECTION))
                        .fix("F")
                        .build();
        double step = in.si("step");
        int steps = (int) Math.round(in.si("time") / step);
        double[] record = new double[steps + 1];
        Arrays.fill(record, in.si("acceleration"));
        FrameHistory history =
                TimeHistoryAnalysis.of(
                                ModalAnalysis.of(model)
                                        .divided(1)
                                        .with(new LineMass("mast", in.si("line mass"))))
                        .direct(
                                GroundMotion.along(step, Motion.ALONG_X, record),
                                TimeScheme.averageAcceleration(),
                                new RayleighDamping(
                                        in.si("damping"), in.si("first"), in.si("second")),
                                Monitor.quiet());
        return Map.of(
                "displacement", of(history.movement("H", Motion.ALONG_X)[steps], "m"),
                "reaction", of(history.reaction("F", Motion.ALONG_X)[steps], "N"),
                "reaction moment", of(history.reaction("F", Motion.ABOUT_Y)[steps], "N·m"));
    }

    /** A column so soft in torsion that it twists before it bends. */
    private static Map<String, Quantity> twisting(Inputs in) {
        Section section =
                Section.slender(
                        "s",
                        in.si("area"),
                        in.si("torsion constant"),
                        in.si("second moment y"),
                        in.si("second moment z"));
        FrameModel model =
                InSpace.cantilever(
                        new Vector(0, 0, in.si("length")),
                        BeamColumn.of("m", "A", "B", MATERIAL, section));
        return Map.of(
                "force",
                of(
                        BucklingAnalysis.of(model)
                                .divided(1)
                                .factors(LoadCase.of("P", NodalLoad.force("B", 0, 0, -1)), 1)
                                .governing()
                                .factor(),
                        "N"));
    }
}
