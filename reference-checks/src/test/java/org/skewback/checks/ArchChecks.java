package org.skewback.checks;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.skewback.arch.ArchForces;
import org.skewback.arch.ArchHinges;
import org.skewback.arch.CircularArchBuckling;
import org.skewback.arch.ElasticArch;
import org.skewback.arch.ElasticArchRoutine;
import org.skewback.arch.FixedArch;
import org.skewback.arch.InPlaneBuckling;
import org.skewback.arch.InPlaneBucklingRoutine;
import org.skewback.arch.LateralBuckling;
import org.skewback.arch.RibStiffness;
import org.skewback.arch.ShallowArch;
import org.skewback.arch.SpringingMovement;
import org.skewback.arch.Springings;
import org.skewback.arch.SurveyedAxis;
import org.skewback.arch.ThreeHingedArch;
import org.skewback.arch.TwoHingedArch;
import org.skewback.form.Axis;
import org.skewback.form.Catenary;
import org.skewback.form.Parabola;
import org.skewback.form.VerticalLoad;
import org.skewback.quantity.Quantity;
import org.skewback.quantity.Routines;

/** Checks of {@code org.skewback.arch}. */
public final class ArchChecks implements Subject {

    /** Makes the subject. */
    public ArchChecks() {}

    @Override
    public String topic() {
        return "arch";
    }

    @Override
    public Map<String, Checked> routines() {
        Map<String, Checked> routines = new TreeMap<>();
        routines.put("ThreeHingedArch", ArchChecks::threeHinged);
        routines.put("ThreeHingedArch: half span", ArchChecks::threeHingedHalf);
        routines.put("TwoHingedArch", ArchChecks::twoHinged);
        routines.put("TwoHingedArch: half span", ArchChecks::twoHingedHalf);
        routines.put("TwoHingedArch: movement", ArchChecks::twoHingedMovement);
        routines.put("FixedArch", ArchChecks::fixed);
        routines.put("FixedArch: half span", ArchChecks::fixedHalf);
        routines.put("FixedArch: movement", ArchChecks::fixedMovement);
        routines.put("ElasticArchRoutine", ArchChecks::elastic);
        routines.put("ElasticArch.influence", ArchChecks::influence);
        routines.put("ElasticArch: movement", ArchChecks::moved);
        routines.put("InPlaneBuckling", ArchChecks::shapes);
        routines.put("ArchForces", ArchChecks::along);
        routines.put("InPlaneBucklingRoutine", ArchChecks::inPlane);
        routines.put("CircularArchBuckling", ArchChecks::circular);
        routines.put("ShallowArch", ArchChecks::shallow);
        routines.put("LateralBuckling", ArchChecks::lateral);
        routines.put(
                "LateralBuckling.circularPressure",
                in ->
                        Map.of(
                                "pressure",
                                LateralBuckling.circularPressure(
                                        in.quantity("opening"),
                                        in.quantity("radius"),
                                        in.quantity("bending"),
                                        in.quantity("torsion"))));
        return routines;
    }

    private static Map<String, Quantity> threeHinged(Inputs in) {
        Quantity load = in.quantity("load");
        Quantity at = in.quantity("position");
        Quantity span = in.quantity("span");
        Quantity rise = in.quantity("rise");
        return Map.of(
                "thrust",
                ThreeHingedArch.pointThrust(load, at, span, rise),
                "moment under the load",
                ThreeHingedArch.pointMoment(load, at, at, span, rise));
    }

    private static Map<String, Quantity> threeHingedHalf(Inputs in) {
        Quantity load = in.quantity("load");
        Quantity span = in.quantity("span");
        return Map.of(
                "thrust",
                ThreeHingedArch.halfSpanThrust(load, span, in.quantity("rise")),
                "moment at the quarter point",
                ThreeHingedArch.halfSpanQuarterMoment(load, span));
    }

    private static Map<String, Quantity> twoHinged(Inputs in) {
        Quantity load = in.quantity("load");
        Quantity at = in.quantity("position");
        Quantity span = in.quantity("span");
        Quantity rise = in.quantity("rise");
        return Map.of(
                "thrust",
                TwoHingedArch.pointThrust(load, at, span, rise),
                "moment under the load",
                TwoHingedArch.pointMoment(load, at, at, span, rise),
                "moment at the crown",
                TwoHingedArch.pointMoment(load, at, span.over(2), span, rise));
    }

    private static Map<String, Quantity> twoHingedHalf(Inputs in) {
        Quantity load = in.quantity("load");
        Quantity span = in.quantity("span");
        return Map.of(
                "thrust",
                TwoHingedArch.halfSpanThrust(load, span, in.quantity("rise")),
                "moment at the quarter point",
                TwoHingedArch.halfSpanQuarterMoment(load, span));
    }

    private static Map<String, Quantity> twoHingedMovement(Inputs in) {
        Quantity modulus = in.quantity("modulus");
        Quantity second = in.quantity("second moment");
        Quantity area = in.quantity("area");
        Quantity expansion = in.quantity("expansion");
        Quantity warming = in.quantity("warming");
        Quantity span = in.quantity("span");
        Quantity rise = in.quantity("rise");
        return Map.of(
                "thrust from warming",
                TwoHingedArch.warmingThrust(modulus, second, expansion, warming, rise),
                "thrust from spread",
                TwoHingedArch.spreadThrust(modulus, second, in.quantity("spread"), span, rise),
                "thrust from warming with shortening",
                TwoHingedArch.warmingThrustWithShortening(
                        modulus, second, area, expansion, warming, span, rise),
                "thrust with shortening",
                TwoHingedArch.shortenedThrust(in.quantity("load"), second, area, span, rise),
                "share of shortening",
                TwoHingedArch.shorteningShare(second, area, rise));
    }

    private static Map<String, Quantity> fixed(Inputs in) {
        Quantity load = in.quantity("load");
        Quantity at = in.quantity("position");
        Quantity span = in.quantity("span");
        Quantity rise = in.quantity("rise");
        return Map.of(
                "thrust",
                FixedArch.pointThrust(load, at, span, rise),
                "left vertical",
                FixedArch.pointLeftVertical(load, at, span),
                "left moment",
                FixedArch.pointLeftMoment(load, at, span),
                "right moment",
                FixedArch.pointRightMoment(load, at, span),
                "moment under the load",
                FixedArch.pointMoment(load, at, at, span, rise),
                "moment at the crown",
                FixedArch.pointMoment(load, at, span.over(2), span, rise));
    }

    private static Map<String, Quantity> fixedHalf(Inputs in) {
        Quantity load = in.quantity("load");
        Quantity span = in.quantity("span");
        return Map.of(
                "thrust",
                FixedArch.halfSpanThrust(load, span, in.quantity("rise")),
                "vertical on the side of the load",
                FixedArch.halfSpanLoadedVertical(load, span),
                "moment on the side of the load",
                FixedArch.halfSpanLoadedMoment(load, span));
    }

    private static Map<String, Quantity> fixedMovement(Inputs in) {
        Quantity modulus = in.quantity("modulus");
        Quantity second = in.quantity("second moment");
        Quantity area = in.quantity("area");
        Quantity expansion = in.quantity("expansion");
        Quantity warming = in.quantity("warming");
        Quantity span = in.quantity("span");
        Quantity rise = in.quantity("rise");
        return Map.of(
                "thrust from warming",
                FixedArch.warmingThrust(modulus, second, expansion, warming, rise),
                "thrust from spread",
                FixedArch.spreadThrust(modulus, second, in.quantity("spread"), span, rise),
                "thrust from warming with shortening",
                FixedArch.warmingThrustWithShortening(
                        modulus, second, area, expansion, warming, span, rise),
                "thrust with shortening",
                FixedArch.shortenedThrust(in.quantity("load"), second, area, span, rise),
                "share of shortening",
                FixedArch.shorteningShare(second, area, rise));
    }

    private static Map<String, Quantity> elastic(Inputs in) {
        boolean point = in.has("load");
        ElasticArchRoutine.Output found =
                Routines.call(
                        new ElasticArchRoutine(),
                        new ElasticArchRoutine.Input(
                                in.text("axis"),
                                in.quantity("span"),
                                in.quantity("rise"),
                                in.text("hinges"),
                                in.quantity("modulus"),
                                in.quantity("second moment"),
                                in.text("growth"),
                                optional(in, "area", "m²"),
                                point ? List.of(in.quantity("position")) : List.of(),
                                point ? List.of(in.quantity("load")) : List.of(),
                                optional(in, "on plan", "N/m"),
                                optional(in, "on axis", "N/m"),
                                optional(in, "strain", ""),
                                optional(in, "spread", "m")));
        Map<String, Quantity> results = new LinkedHashMap<>();
        results.put("thrust", found.thrust());
        results.put("left moment", found.leftMoment());
        results.put("right moment", found.rightMoment());
        results.put("crown moment", found.crownMoment());
        results.put("crown deflection", found.crownDeflection());
        results.put("left vertical", found.leftVertical());
        results.put("right vertical", found.rightVertical());
        results.put("crown force", found.crownForce());
        if (point) {
            results.put("moment under the load", found.momentsAtLoads().get(0));
        }
        return results;
    }

    private static Quantity optional(Inputs in, String name, String unit) {
        return in.has(name) ? in.quantity(name) : Quantity.of(0, unit);
    }

    private static Map<String, Quantity> inPlane(Inputs in) {
        String axis = in.text("axis");
        Quantity span = in.quantity("span");
        Quantity rise = in.quantity("rise");
        InPlaneBucklingRoutine.Output found =
                Routines.call(
                        new InPlaneBucklingRoutine(),
                        new InPlaneBucklingRoutine.Input(
                                axis,
                                span,
                                rise,
                                in.text("hinges"),
                                in.quantity("modulus"),
                                in.quantity("second moment"),
                                in.text("growth")));
        Quantity load =
                axis.equals("parabola")
                        ? found.thrust().times(rise).times(8).over(span.squared())
                        : found.thrust()
                                .over(
                                        Quantity.of(
                                                Catenary.ofRise(span.si(), rise.si()).parameter(),
                                                "m"));
        return Map.of(
                "load",
                load,
                "thrust",
                found.thrust(),
                "length factor",
                found.lengthFactor(),
                "length factor at the quarter point",
                found.quarterLengthFactor(),
                "springing force",
                found.springingForce());
    }

    /** Thrusts of the first shapes of a parabola of one section, E I of 1 N·m². */
    private static Map<String, Quantity> shapes(Inputs in) {
        double span = in.si("span");
        Map<String, Quantity> results = new LinkedHashMap<>();
        new InPlaneBuckling(
                        new Parabola(span, in.si("rise")),
                        x -> 1,
                        ArchHinges.valueOf(in.text("hinges")),
                        span / 2)
                .modes(3)
                .forEach(
                        mode ->
                                results.put(
                                        "thrust " + (results.size() + 1),
                                        Quantity.of(mode.thrust(), "N")));
        return results;
    }

    private static ElasticArch elastic(Inputs in, Axis axis) {
        return new ElasticArch(
                axis,
                RibStiffness.growing(axis, in.si("bending"), Double.POSITIVE_INFINITY),
                Springings.valueOf(in.text("springings")));
    }

    /** Ordinates of influence lines at a position. */
    private static Map<String, Quantity> influence(Inputs in) {
        List<Double> positions = in.quantities("positions").stream().map(Quantity::si).toList();
        List<ArchForces> lines =
                elastic(in, new Parabola(in.si("span"), in.si("rise"))).influence(positions);
        Map<String, Quantity> results = new LinkedHashMap<>();
        for (int i = 0; i < lines.size(); i++) {
            results.put("thrust " + (i + 1), Quantity.of(lines.get(i).thrust()));
            results.put("left moment " + (i + 1), Quantity.of(lines.get(i).leftMoment(), "m"));
        }
        return results;
    }

    /** A movement of the springings without any load. */
    private static Map<String, Quantity> moved(Inputs in) {
        boolean level = !in.has("right level");
        Axis axis =
                level
                        ? new Parabola(in.si("span"), in.si("rise"))
                        : SurveyedAxis.through(
                                new double[] {0, in.si("span") / 2, in.si("span")},
                                new double[] {0, in.si("rise"), in.si("right level")});
        ArchForces forces =
                elastic(in, axis)
                        .under(
                                VerticalLoad.together(List.of()),
                                new SpringingMovement(
                                        0,
                                        optional(in, "spread", "m").si(),
                                        optional(in, "right rise", "m").si(),
                                        optional(in, "left turn", "").si(),
                                        optional(in, "right turn", "").si()));
        Map<String, Quantity> results = new LinkedHashMap<>();
        results.put("thrust", Quantity.of(forces.thrust(), "N"));
        results.put("left vertical", Quantity.of(forces.leftVertical(), "N"));
        results.put("left moment", Quantity.of(forces.leftMoment(), "N·m"));
        results.put("right moment", Quantity.of(forces.rightMoment(), "N·m"));
        if (!level) {
            double spread =
                    elastic(in, axis)
                            .under(
                                    VerticalLoad.together(List.of()),
                                    SpringingMovement.spread(
                                            in.si("right rise")
                                                    * in.si("right level")
                                                    / in.si("span")))
                            .thrust();
            results.put("thrust over that of the spread", Quantity.of(forces.thrust() / spread));
        }
        return results;
    }

    private static Map<String, Quantity> circular(Inputs in) {
        CircularArchBuckling.Output found =
                Routines.call(
                        new CircularArchBuckling(),
                        new CircularArchBuckling.Input(
                                in.text("hinges"),
                                in.quantity("half angle"),
                                in.quantity("radius"),
                                in.quantity("modulus"),
                                in.quantity("second moment")));
        return Map.of(
                "pressure", found.pressure(),
                "force", found.axialForce(),
                "number of waves", found.k());
    }

    private static Map<String, Quantity> along(Inputs in) {
        double span = in.si("span");
        Parabola axis = new Parabola(span, in.si("rise"));
        ArchForces forces =
                new ElasticArch(
                                axis,
                                RibStiffness.growing(axis, 1, Double.POSITIVE_INFINITY),
                                Springings.FIXED)
                        .under(VerticalLoad.point(in.si("load"), in.si("position")));
        double at = in.si("at");
        return Map.of(
                "axial", Quantity.of(forces.axial(at), "N"),
                "shear", Quantity.of(forces.shear(at), "N"));
    }

    private static Map<String, Quantity> shallow(Inputs in) {
        Quantity modulus = in.quantity("modulus");
        Quantity second = in.quantity("second moment");
        Quantity area = in.quantity("area");
        Quantity span = in.quantity("span");
        Quantity rise = in.quantity("rise");
        Quantity unit =
                modulus.times(second)
                        .times(rise)
                        .over(span.power(4))
                        .times(StrictMath.pow(StrictMath.PI, 4));
        Map<String, Quantity> results = new LinkedHashMap<>();
        results.put(
                "limit load over π⁴EIf/L⁴",
                ShallowArch.limitLoad(modulus, second, area, span, rise).over(unit));
        if (ShallowArch.shallowness(second, area, rise).si() < 2.0 / 11) {
            results.put(
                    "bifurcation load over π⁴EIf/L⁴",
                    ShallowArch.bifurcationLoad(modulus, second, area, span, rise).over(unit));
        }
        return results;
    }

    private static Map<String, Quantity> lateral(Inputs in) {
        Quantity ratio = in.quantity("rise to span");
        Quantity share = in.quantity("column share");
        Quantity factor = LateralBuckling.lengthFactorUniform(ratio);
        return Map.of(
                "length factor",
                factor,
                "length factor, growing",
                LateralBuckling.lengthFactorGrowing(ratio),
                "hanger factor",
                LateralBuckling.hangerFactor(share, Quantity.of(1)),
                "critical force",
                LateralBuckling.criticalForce(
                        in.quantity("bending").over(Quantity.of(1, "m⁴")),
                        Quantity.of(1, "m⁴"),
                        in.quantity("span"),
                        factor,
                        LateralBuckling.columnFactor(share, Quantity.of(1))));
    }
}
