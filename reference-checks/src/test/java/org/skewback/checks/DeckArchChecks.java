package org.skewback.checks;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.skewback.action.FactorRange;
import org.skewback.action.Situation;
import org.skewback.arch.BucklingCurve;
import org.skewback.arch.ColumnStrength;
import org.skewback.arch.DeckArch;
import org.skewback.arch.DeckArchActionsRoutine;
import org.skewback.arch.DeckArchForm;
import org.skewback.arch.DeckArchFrame;
import org.skewback.arch.DeckArchMembersRoutine;
import org.skewback.arch.DeckArchRoutine;
import org.skewback.arch.DeckArchSecondOrderRoutine;
import org.skewback.arch.DeckArchStabilityRoutine;
import org.skewback.arch.DeckOnColumns;
import org.skewback.arch.RibMakeup;
import org.skewback.arch.RibPlanes;
import org.skewback.arch.Springings;
import org.skewback.arch.SurveyedAxis;
import org.skewback.form.Parabola;
import org.skewback.frame.FrameSolution;
import org.skewback.frame.LinearAnalysis;
import org.skewback.frame.Load;
import org.skewback.frame.LoadCase;
import org.skewback.frame.Material;
import org.skewback.frame.Member;
import org.skewback.frame.SectionForces;
import org.skewback.frame.SelfWeight;
import org.skewback.frame.StageAnalysis;
import org.skewback.frame.StageResult;
import org.skewback.frame.Vector;
import org.skewback.quantity.Quantity;
import org.skewback.quantity.Routines;
import org.skewback.steel.Box;
import org.skewback.steel.Section;
import org.skewback.steel.Tube;

/** Checks of the frame of a deck arch, of its form and its actions, and of column curves. */
public final class DeckArchChecks implements Subject {

    private static final List<Quantity> COLUMNS =
            IntStream.rangeClosed(1, 13).mapToObj(i -> of(24.0 * i, "m")).toList();

    /** Makes the subject. */
    public DeckArchChecks() {}

    @Override
    public String topic() {
        return "arch";
    }

    @Override
    public String table() {
        return "deck-arch";
    }

    @Override
    public Map<String, Checked> routines() {
        Map<String, Checked> routines = new TreeMap<>();
        routines.put("DeckArchActionsRoutine", DeckArchChecks::actions);
        routines.put("DeckArchMembersRoutine", DeckArchChecks::members);
        routines.put("DeckArchRoutine", DeckArchChecks::forces);
        routines.put("DeckArchStabilityRoutine", DeckArchChecks::stability);
        routines.put("DeckArchSecondOrderRoutine", DeckArchChecks::secondOrder);
        routines.put("DeckArchForm", DeckArchChecks::form);
        routines.put("DeckArchFrame: single ribs", DeckArchChecks::singleRibs);
        routines.put("DeckArchFrame: pinned, then fixed", DeckArchChecks::stages);
        routines.put("SurveyedAxis", DeckArchChecks::surveyed);
        routines.put("ColumnStrength", DeckArchChecks::reduction);
        routines.put("ColumnStrength: bow", DeckArchChecks::bow);
        routines.put("ColumnStrength: interaction", DeckArchChecks::interaction);
        routines.put("ColumnStrength: arch bow", DeckArchChecks::archBow);
        return routines;
    }

    private static Quantity of(double value, String unit) {
        return Quantity.of(value, unit);
    }

    private static Map<String, Quantity> actions(Inputs in) {
        String train =
                """
                train,part,from [m],to [m],force [kN],line [kN/m]
                t,axle,0,0,%1$s,0
                t,axle,1.6,1.6,%1$s,0
                t,elsewhere,-0.8,2.4,0,%2$s
                """;
        DeckArchActionsRoutine.Output found =
                Routines.call(
                        new DeckArchActionsRoutine(),
                        new DeckArchActionsRoutine.Input(
                                "parabola",
                                of(336, "m"),
                                of(72, "m"),
                                springings(in),
                                of(12, "m"),
                                of(20, "m"),
                                of(1.2, "m"),
                                of(38, "mm"),
                                of(6, "m"),
                                of(9, "m"),
                                of(0.5, "m"),
                                of(14, "mm"),
                                of(0.4, "m"),
                                of(10, "mm"),
                                of(1.6, "m"),
                                of(24, "mm"),
                                of(1.2, "m"),
                                of(2, "m"),
                                of(24, "mm"),
                                of(0.62, "m²"),
                                of(0.55, "m⁴"),
                                of(4, "m⁴"),
                                of(0.4, "m⁴"),
                                of(77, "m"),
                                COLUMNS,
                                6,
                                of(12, "m"),
                                of(1.06, ""),
                                in.quantity("on deck"),
                                in.quantity("warming"),
                                in.quantity("cooling"),
                                in.quantity("heating"),
                                in.quantity("chilling"),
                                of(3.8, "m"),
                                in.quantity("wind on ribs"),
                                in.quantity("wind on deck"),
                                in.quantity("arm"),
                                in.quantity("train wind on ribs"),
                                in.quantity("train wind on deck"),
                                in.quantity("train arm"),
                                train.formatted(
                                        in.quantity("axle").in("kN"),
                                        in.quantity("line load").in("kN/m")),
                                of(1, ""),
                                of(0.5, "m")));
        Map<String, Quantity> results = new LinkedHashMap<>();
        for (int i = 0; i < found.positions().size(); i++) {
            results.put("permanent " + i, found.permanent().get(i));
            results.put("warm " + i, found.warm().get(i));
            results.put("cold " + i, found.cold().get(i));
            results.put("deck warm " + i, found.deckWarm().get(i));
            results.put("deck cold " + i, found.deckCold().get(i));
            results.put("wind " + i, found.wind().get(i));
            results.put("wind with train " + i, found.windWithTrain().get(i));
            results.put("train largest " + i, found.trainLargest().get(i));
            results.put("train smallest " + i, found.trainSmallest().get(i));
        }
        results.put("permanent thrust", found.permanentThrust());
        results.put("warm thrust", found.warmThrust());
        results.put("train sinking", found.trainSinking());
        results.put("train rising", found.trainRising());
        results.put("wind sway", found.windSway());
        return results;
    }

    private static Map<String, Quantity> members(Inputs in) {
        List<String> actions =
                List.of("permanent load", "rail traffic", "wind", "wind with train", "temperature");
        List<Situation> situations = new ArrayList<>();
        for (int i = 0; i < in.quantities("permanent load").size(); i++) {
            Map<String, FactorRange> factors = new LinkedHashMap<>();
            for (String action : actions) {
                boolean permanent = action.equals("permanent load");
                factors.put(
                        action,
                        new FactorRange(
                                permanent, permanent ? 1 : 0, in.quantities(action).get(i).in("")));
            }
            situations.add(new Situation("all have one name", factors));
        }
        DeckArchMembersRoutine.Output found =
                Routines.call(
                        new DeckArchMembersRoutine(),
                        new DeckArchMembersRoutine.Input(
                                "parabola",
                                of(336, "m"),
                                of(72, "m"),
                                "fixed",
                                of(12, "m"),
                                of(20, "m"),
                                of(1.2, "m"),
                                of(38, "mm"),
                                of(6, "m"),
                                of(9, "m"),
                                of(0.5, "m"),
                                of(14, "mm"),
                                of(0.4, "m"),
                                of(10, "mm"),
                                of(1.6, "m"),
                                of(24, "mm"),
                                of(1.2, "m"),
                                of(2, "m"),
                                of(24, "mm"),
                                of(0.62, "m²"),
                                of(0.55, "m⁴"),
                                of(4, "m⁴"),
                                of(0.4, "m⁴"),
                                of(77, "m"),
                                COLUMNS,
                                6,
                                of(12, "m"),
                                of(1.06, ""),
                                of(88, "kN/m"),
                                of(30, "K"),
                                of(15, "K"),
                                of(15, "K"),
                                of(18, "K"),
                                of(3.8, "m"),
                                of(10, "kN/m"),
                                of(12, "kN/m"),
                                of(3, "m"),
                                of(7, "kN/m"),
                                of(15, "kN/m"),
                                of(2.3, "m"),
                                of(80, "kN/m"),
                                of(488, "kN"),
                                of(6.4, "m"),
                                of(0.35, ""),
                                of(0.75, ""),
                                in.quantity("yield strength"),
                                in.quantity("partial factor"),
                                in.quantity("imperfection factor"),
                                in.quantity("moment factor"),
                                Situation.table(situations)));
        int members = found.positions().size();
        Map<String, Quantity> results = new LinkedHashMap<>();
        for (int eighth = 0; eighth < 4; eighth += 2) {
            int nearest = eighth * members / 16;
            results.put("compression " + eighth, found.compression().get(nearest));
            results.put(
                    "compression " + (5 + eighth), found.compression().get(members / 2 + nearest));
        }
        double most = 0;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < members; i++) {
            double share = found.utilisation().get(i).in("") / byHand(in, found, i);
            most = Math.max(most, share);
            least = Math.min(least, share);
        }
        results.put("most use over that by hand", of(most, ""));
        results.put("least use over that by hand", of(least, ""));
        return results;
    }

    /** Use of a chord by EN 1993-1-1, 6.3.3, written out in doubles for a square box, from the forces printed beside it. */
    private static double byHand(Inputs in, DeckArchMembersRoutine.Output found, int member) {
        double inner = 1.2 - 2 * 0.038;
        double area = 1.2 * 1.2 - inner * inner;
        double second = (Math.pow(1.2, 4) - Math.pow(inner, 4)) / 12;
        double yield =
                in.quantity("yield strength").in("Pa") / in.quantity("partial factor").in("");
        double length = found.length().get(member).in("m");
        double slenderness =
                length
                        / (Math.PI * Math.sqrt(second / area))
                        * Math.sqrt(in.quantity("yield strength").in("Pa") / 210e9);
        double phi =
                0.5
                        * (1
                                + in.quantity("imperfection factor").in("") * (slenderness - 0.2)
                                + slenderness * slenderness);
        double reduction =
                Math.min(1, 1 / (phi + Math.sqrt(phi * phi - slenderness * slenderness)));
        double axial = found.governingCompression().get(member).in("N");
        double moments =
                (found.momentInPlane().get(member).in("N·m")
                                + found.momentAcross().get(member).in("N·m"))
                        / (second / 0.6 * yield);
        double share = Math.max(0, axial) / (reduction * area * yield);
        double factor =
                in.quantity("moment factor").in("") * (1 + 0.6 * Math.min(1, slenderness) * share);
        return Math.max(share + factor * moments, Math.abs(axial) / (area * yield) + moments);
    }

    private static String springings(Inputs in) {
        return in.has("springings") ? in.text("springings") : "fixed";
    }

    private static DeckArchRoutine.Input arch(Inputs in) {
        return new DeckArchRoutine.Input(
                "parabola",
                of(336, "m"),
                of(72, "m"),
                springings(in),
                of(12, "m"),
                of(20, "m"),
                of(1.2, "m"),
                of(38, "mm"),
                of(6, "m"),
                of(9, "m"),
                of(0.5, "m"),
                of(14, "mm"),
                of(0.4, "m"),
                of(10, "mm"),
                of(1.6, "m"),
                of(24, "mm"),
                of(1.2, "m"),
                of(2, "m"),
                of(24, "mm"),
                of(0.62, "m²"),
                of(0.55, "m⁴"),
                of(4, "m⁴"),
                of(0.4, "m⁴"),
                of(77, "m"),
                COLUMNS,
                6,
                of(12, "m"),
                in.quantity("weight"),
                in.quantity("load"),
                in.quantity("from"),
                in.quantity("to"));
    }

    private static Map<String, Quantity> forces(Inputs in) {
        DeckArchRoutine.Output found = Routines.call(new DeckArchRoutine(), arch(in));
        return Map.of(
                "thrust", found.thrust(),
                "left vertical", found.leftVertical(),
                "right vertical", found.rightVertical(),
                "compression", found.compression(),
                "tension", found.tension(),
                "crown sinking", found.crownSinking(),
                "quarter sinking", found.quarterSinking());
    }

    private static Map<String, Quantity> stability(Inputs in) {
        DeckArchStabilityRoutine.Output found =
                Routines.call(new DeckArchStabilityRoutine(), arch(in));
        return Map.of(
                "factor", found.factor(),
                "second factor", found.factors().get(1),
                "first frequency", found.frequencies().get(0),
                "fifth frequency", found.frequencies().get(4),
                "ribs across", found.ribsAcross());
    }

    private static Map<String, Quantity> secondOrder(Inputs in) {
        DeckArchSecondOrderRoutine.Output found =
                Routines.call(
                        new DeckArchSecondOrderRoutine(),
                        new DeckArchSecondOrderRoutine.Input(
                                "parabola",
                                of(336, "m"),
                                of(72, "m"),
                                "fixed",
                                of(12, "m"),
                                of(20, "m"),
                                of(1.2, "m"),
                                of(38, "mm"),
                                of(6, "m"),
                                of(9, "m"),
                                of(0.5, "m"),
                                of(14, "mm"),
                                of(0.4, "m"),
                                of(10, "mm"),
                                of(1.6, "m"),
                                of(24, "mm"),
                                of(1.2, "m"),
                                of(2, "m"),
                                of(24, "mm"),
                                of(0.62, "m²"),
                                of(0.55, "m⁴"),
                                of(4, "m⁴"),
                                of(0.4, "m⁴"),
                                of(77, "m"),
                                COLUMNS,
                                6,
                                of(12, "m"),
                                in.quantity("weight"),
                                in.quantity("on deck"),
                                in.quantity("train"),
                                in.quantity("from"),
                                in.quantity("to"),
                                in.quantity("bow in plane"),
                                in.quantity("bow across")));
        Map<String, Quantity> results = new LinkedHashMap<>();
        results.put("first sinking", found.firstSinking());
        results.put("second sinking", found.secondSinking());
        results.put("first order", found.firstOrder());
        results.put("second order", found.secondOrder());
        results.put("across factor", found.acrossFactor());
        results.put("in-plane factor", found.inPlaneFactor());
        results.put("across force", found.acrossForce());
        results.put("in-plane force", found.inPlaneForce());
        results.put("bowed in plane", found.bentInPlane());
        results.put("bowed across", found.bentAcross());
        results.put("added by the bow in plane", found.bentInPlane().minus(found.secondOrder()));
        return results;
    }

    private static Map<String, Quantity> form(Inputs in) {
        DeckArchForm form =
                DeckArchForm.of(
                        deckArch(Springings.FIXED, chords()), in.si("on deck"), in.si("weight"));
        return Map.of(
                "thrust", of(form.line().thrust(), "N"),
                "level at 24 m", of(form.arch().axis().y(24), "m"),
                "level at 84 m", of(form.arch().axis().y(84), "m"),
                "level at 132 m", of(form.arch().axis().y(132), "m"));
    }

    private static RibMakeup chords() {
        Box post = new Box(0.5, 0.5, 0.014, 0.014);
        return new RibMakeup.Chords(new Box(1.2, 1.2, 0.038, 0.038), 6, 9, post, post);
    }

    private static DeckArch deckArch(Springings springings, RibMakeup makeup) {
        return new DeckArch(
                new Parabola(336, 72),
                springings,
                new RibPlanes(12, 20),
                makeup,
                new Tube(0.4, 0.01),
                12,
                new DeckOnColumns(
                        77,
                        COLUMNS.stream().map(x -> x.in("m")).toList(),
                        new Box(1.6, 1.6, 0.024, 0.024),
                        new Box(1.2, 2, 0.024, 0.024),
                        Section.slender("deck", 0.62, 0.4, 0.55, 4),
                        List.of(6)),
                Material.steel());
    }

    /** Ribs of one tapered box each under a load on the left half of the deck. */
    private static Map<String, Quantity> singleRibs(Inputs in) {
        DeckArchFrame frame =
                DeckArchFrame.of(
                        deckArch(
                                Springings.FIXED,
                                new RibMakeup.Single(
                                        new Box(1.6, in.si("crown height"), 0.04, 0.05),
                                        new Box(1.6, in.si("springing height"), 0.04, 0.05))));
        FrameSolution solution =
                LinearAnalysis.of(frame.model()).solve(frame.onDeck("half", in.si("load"), 0, 168));
        SectionForces springing = solution.member("rib L 0–1").at(0);
        return Map.of(
                "left vertical",
                of(
                        solution.reaction("rib L 0").force().z()
                                + solution.reaction("rib R 0").force().z(),
                        "N"),
                "axial at the springing",
                of(springing.axial(), "N"),
                "moment at the springing",
                of(springing.momentY(), "N·m"),
                "crown sinking",
                of(-solution.movement("deck 7").translation().z(), "m"),
                "quarter sinking",
                of(-solution.movement("deck 3").translation().z(), "m"));
    }

    /** Permanent load on the hinged arch, then a load on the left half of the deck of the fixed one. */
    private static Map<String, Quantity> stages(Inputs in) {
        DeckArchFrame frame = DeckArchFrame.of(deckArch(Springings.PINNED, chords()));
        List<Load> permanent =
                new ArrayList<>(frame.onDeck("deck", in.si("on deck"), 0, 336).loads());
        permanent.add(
                new SelfWeight(
                        new Vector(0, 0, -in.si("weight") * 9.80665),
                        frame.model().members().stream()
                                .map(Member::name)
                                .filter(name -> !name.startsWith("deck "))
                                .toList()));
        List<StageResult> results =
                StageAnalysis.of(frame.model())
                        .run(
                                frame.pinnedThenFixed(
                                        new LoadCase("permanent", permanent),
                                        frame.onDeck("half", in.si("half"), 0, 168)));
        Map<String, Quantity> found = new LinkedHashMap<>();
        FrameSolution last = results.get(results.size() - 1).solution();
        for (String member : List.of("upper L 0–1", "lower L 0–1", "upper L 7–8", "lower L 7–8")) {
            found.put(member, of(last.member(member).at(0).axial(), "N"));
        }
        found.put("quarter sinking", of(-last.movement("deck 3").translation().z(), "m"));
        return found;
    }

    private static Map<String, Quantity> surveyed(Inputs in) {
        SurveyedAxis axis =
                SurveyedAxis.through(
                        in.quantities("positions").stream().mapToDouble(Quantity::si).toArray(),
                        in.quantities("levels").stream().mapToDouble(Quantity::si).toArray());
        double at = in.si("at");
        return Map.of(
                "level", of(axis.y(at), "m"),
                "slope", of(axis.slope(at), ""),
                "curvature", of(axis.curvature(at).orElseThrow(), "1/m"),
                "length", of(axis.arcLength(), "m"),
                "right level", of(axis.rightLevel(), "m"),
                "second break", of(axis.breaks().get(1), "m"),
                "breaks", of(axis.breaks().size(), ""));
    }

    private static Map<String, Quantity> reduction(Inputs in) {
        return Map.of(
                "reduction",
                ColumnStrength.reduction(
                        in.quantity("slenderness"),
                        BucklingCurve.valueOf(in.text("curve")).imperfectionFactor()));
    }

    private static Map<String, Quantity> bow(Inputs in) {
        Quantity imperfection = BucklingCurve.valueOf(in.text("curve")).imperfectionFactor();
        Quantity plastic = in.quantity("plastic");
        Quantity modulus = in.quantity("modulus");
        Quantity second = in.quantity("second moment");
        Quantity critical = ColumnStrength.critical(modulus, second, in.quantity("length"));
        Quantity slenderness = ColumnStrength.slenderness(plastic, critical);
        Quantity reduction = ColumnStrength.reduction(slenderness, imperfection);
        Quantity bow =
                ColumnStrength.bow(
                        imperfection,
                        slenderness,
                        reduction,
                        in.quantity("moment"),
                        plastic,
                        in.quantity("partial factor"));
        return Map.of(
                "critical", critical,
                "slenderness", slenderness,
                "reduction", reduction,
                "bow", bow,
                "amplitude",
                        ColumnStrength.amplitude(
                                bow, critical, modulus, second, in.quantity("curvature")),
                "length back", ColumnStrength.bucklingLength(modulus, second, critical));
    }

    private static Map<String, Quantity> interaction(Inputs in) {
        Quantity momentFactor = in.quantity("moment factor");
        Quantity slenderness = in.quantity("slenderness");
        Quantity axialY = in.quantity("axial y");
        Quantity axialZ = in.quantity("axial z");
        Quantity factor = ColumnStrength.interaction(momentFactor, slenderness, axialY);
        return Map.of(
                "factor",
                factor,
                "utilisation",
                ColumnStrength.utilisation(
                        axialY,
                        axialZ,
                        factor.times(in.quantity("share y")),
                        ColumnStrength.interaction(momentFactor, slenderness, axialZ)
                                .times(in.quantity("share z"))));
    }

    private static Map<String, Quantity> archBow(Inputs in) {
        Quantity divisor = BucklingCurve.valueOf(in.text("curve")).lengthOverBow();
        return Map.of(
                "in plane", ColumnStrength.bowInPlane(in.quantity("half axis"), divisor),
                "across", ColumnStrength.bowAcross(in.quantity("span"), divisor));
    }
}
