package org.skewback.checks;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.skewback.form.Axis;
import org.skewback.form.Catenary;
import org.skewback.form.CatenaryRoutine;
import org.skewback.form.Chain;
import org.skewback.form.CircularArc;
import org.skewback.form.Deviation;
import org.skewback.form.FunicularCurve;
import org.skewback.form.FunicularPolygon;
import org.skewback.form.FunicularRoutine;
import org.skewback.form.LimitLoad;
import org.skewback.form.LimitLoadRoutine;
import org.skewback.form.MasonrySemicircle;
import org.skewback.form.Parabola;
import org.skewback.form.SpringingForces;
import org.skewback.form.ThrustLine;
import org.skewback.form.VerticalLoad;
import org.skewback.form.WeightedCatenary;
import org.skewback.quantity.Quantity;
import org.skewback.quantity.Routines;

/** Checks of {@code org.skewback.form}. */
public final class FormChecks implements Subject {

    /** Makes the subject. */
    public FormChecks() {}

    @Override
    public String topic() {
        return "form";
    }

    @Override
    public Map<String, Checked> routines() {
        Map<String, Checked> routines = new TreeMap<>();
        routines.put("Parabola", FormChecks::parabola);
        routines.put("Parabola.ribVolume", FormChecks::ribVolume);
        routines.put("Parabola.leastVolumeRise", FormChecks::leastVolumeRise);
        routines.put("CatenaryRoutine", FormChecks::catenaryRoutine);
        routines.put("Catenary.ofLength", FormChecks::catenaryOfLength);
        routines.put("Chain", FormChecks::chain);
        routines.put("CircularArc", FormChecks::circularArc);
        routines.put("WeightedCatenary", FormChecks::weightedCatenary);
        routines.put("FunicularRoutine", FormChecks::funicularRoutine);
        routines.put("FunicularPolygon", FormChecks::funicularPolygon);
        routines.put("FunicularCurve", FormChecks::funicularCurve);
        routines.put("ThrustLine", FormChecks::thrustLine);
        routines.put("Deviation.between", FormChecks::gap);
        routines.put("MasonrySemicircle.exact", in -> semicircle(MasonrySemicircle.exact()));
        routines.put(
                "MasonrySemicircle.weightOnMiddle",
                in -> semicircle(MasonrySemicircle.weightOnMiddle()));
        routines.put("LimitLoad", FormChecks::limitLoad);
        routines.put("LimitLoadRoutine", FormChecks::limitLoadRoutine);
        return routines;
    }

    private static Map<String, Quantity> parabola(Inputs in) {
        Quantity span = in.quantity("span");
        Quantity rise = in.quantity("rise");
        Map<String, Quantity> results = new LinkedHashMap<>();
        results.put("length", Parabola.arcLength(span, rise));
        results.put("length over span", Parabola.arcLength(span, rise).over(span));
        results.put("springing angle", Parabola.springingAngle(span, rise));
        if (in.has("load")) {
            Quantity load = in.quantity("load");
            Quantity thrust = Parabola.thrust(load, span, rise);
            Quantity vertical = Parabola.springingVertical(load, span);
            results.put("thrust", thrust);
            results.put("springing vertical", vertical);
            results.put("springing force", Parabola.springingForce(thrust, vertical));
        }
        return results;
    }

    private static Map<String, Quantity> ribVolume(Inputs in) {
        Quantity load = in.quantity("load");
        Quantity span = in.quantity("span");
        Quantity stress = in.quantity("stress");
        Quantity volume = Parabola.ribVolume(load, span, in.quantity("rise"), stress);
        return Map.of(
                "volume · stress/(load · span²)",
                volume.times(stress).over(load.times(span.squared())));
    }

    private static Map<String, Quantity> leastVolumeRise(Inputs in) {
        Quantity span = in.quantity("span");
        return Map.of("rise over span", Parabola.leastVolumeRise(span).over(span));
    }

    private static Map<String, Quantity> catenaryRoutine(Inputs in) {
        Quantity span = in.quantity("span");
        Quantity rise = in.quantity("rise");
        Quantity parameter =
                Routines.call(new CatenaryRoutine(), new CatenaryRoutine.Input(span, rise))
                        .parameter();
        Quantity length = Catenary.arcLength(parameter, span);
        Map<String, Quantity> results = new LinkedHashMap<>();
        results.put("parameter", parameter);
        results.put("length", length);
        results.put("springing angle", Catenary.springingAngle(parameter, span));
        if (in.has("weight")) {
            Quantity weight = in.quantity("weight");
            results.put("thrust", Catenary.thrust(weight, parameter));
            results.put("springing force", Catenary.axialForce(weight, parameter, rise));
            results.put("springing vertical", weight.times(length).over(2));
        }
        return results;
    }

    private static Map<String, Quantity> catenaryOfLength(Inputs in) {
        Catenary catenary = Catenary.ofLength(in.si("span"), in.si("length"), in.si("level"));
        return Map.of(
                "parameter", Quantity.of(catenary.parameter(), "m"),
                "rise", Quantity.of(catenary.rise(), "m"));
    }

    private static Map<String, Quantity> chain(Inputs in) {
        Chain chain =
                in.has("length")
                        ? Chain.ofLength(
                                in.si("span"), in.si("length"), in.si("level"), in.si("weight"))
                        : Chain.ofSag(in.si("span"), in.si("sag"), in.si("level"), in.si("weight"));
        double span = chain.turnedOver().span();
        return Map.of(
                "horizontal tension", Quantity.of(chain.horizontalTension(), "N"),
                "left tension", Quantity.of(chain.tension(0), "N"),
                "right tension", Quantity.of(chain.tension(span), "N"),
                "lowest point", Quantity.of(chain.lowest(), "m"),
                "sag", Quantity.of(chain.turnedOver().rise(), "m"),
                "length", Quantity.of(chain.length(), "m"));
    }

    private static Map<String, Quantity> circularArc(Inputs in) {
        Quantity span = in.quantity("span");
        Quantity rise = in.quantity("rise");
        Quantity radius = CircularArc.radius(span, rise);
        Quantity angle = CircularArc.halfAngle(span, rise);
        return Map.of(
                "radius", radius,
                "half angle", angle,
                "length", CircularArc.arcLength(radius, angle));
    }

    private static Map<String, Quantity> weightedCatenary(Inputs in) {
        Quantity ratio = in.quantity("ratio");
        Map<String, Quantity> results = new LinkedHashMap<>();
        results.put("quarter drop over rise", WeightedCatenary.quarterDrop(ratio));
        if (in.has("span")) {
            Quantity span = in.quantity("span");
            Quantity rise = in.quantity("rise");
            Quantity load = in.quantity("crown load");
            Quantity exponent = WeightedCatenary.exponent(ratio);
            Quantity thrust = WeightedCatenary.thrust(load, ratio, exponent, span, rise);
            Quantity vertical = WeightedCatenary.springingVertical(load, exponent, span);
            results.put("thrust", thrust);
            results.put("springing vertical", vertical);
            results.put("springing force", Parabola.springingForce(thrust, vertical));
            Axis axis = new WeightedCatenary(span.si(), rise.si(), ratio.si());
            results.put("length", Quantity.of(axis.arcLength(), "m"));
        }
        return results;
    }

    private static Map<String, Quantity> funicularRoutine(Inputs in) {
        FunicularRoutine.Output line =
                Routines.call(
                        new FunicularRoutine(),
                        new FunicularRoutine.Input(
                                list(in, "positions"),
                                list(in, "loads"),
                                orNone(in, "on plan", "kN/m"),
                                orNone(in, "on axis", "kN/m"),
                                in.quantity("span"),
                                orNone(in, "level", "m"),
                                in.quantity("rise position"),
                                in.quantity("rise")));
        Map<String, Quantity> results = new LinkedHashMap<>();
        results.put("thrust", line.thrust());
        results.put("left vertical", line.leftVertical());
        results.put("right vertical", line.rightVertical());
        results.put("length", line.length());
        for (int i = 0; i < line.ordinates().size(); i++) {
            results.put("ordinate " + (i + 1), line.ordinates().get(i));
        }
        return results;
    }

    private static Map<String, Quantity> funicularPolygon(Inputs in) {
        FunicularCurve line = funicular(in);
        List<Double> forces = FunicularPolygon.of(line).segmentForces(line.thrust());
        Map<String, Quantity> results = new LinkedHashMap<>();
        for (int i = 0; i < forces.size(); i++) {
            results.put("force " + (i + 1), Quantity.of(forces.get(i), "N"));
        }
        return results;
    }

    private static Map<String, Quantity> funicularCurve(Inputs in) {
        FunicularCurve line = funicular(in);
        Map<String, Quantity> results = new LinkedHashMap<>();
        results.put("thrust", Quantity.of(line.thrust(), "N"));
        results.put("left slope", Quantity.of(line.slope(0)));
        if (in.has("at")) {
            results.put("ordinate", Quantity.of(line.y(in.si("at")), "m"));
        }
        return results;
    }

    private static FunicularCurve funicular(Inputs in) {
        return FunicularCurve.through(
                load(in),
                in.si("span"),
                orNone(in, "level", "m").si(),
                in.si("rise position"),
                in.si("rise"));
    }

    private static Map<String, Quantity> thrustLine(Inputs in) {
        ThrustLine line = ThrustLine.inThreeHinged(axis(in), load(in), in.si("hinge"));
        SpringingForces springings = line.springings();
        Deviation largest = line.largestEccentricity();
        Map<String, Quantity> results = new LinkedHashMap<>();
        results.put("thrust", Quantity.of(line.thrust(), "N"));
        results.put("left vertical", Quantity.of(springings.leftVertical(), "N"));
        results.put("right vertical", Quantity.of(springings.rightVertical(), "N"));
        results.put("largest eccentricity", Quantity.of(Math.abs(largest.value()), "m"));
        results.put("largest moment", Quantity.of(line.thrust() * largest.value(), "N·m"));
        // Of two equal extremes in a symmetric arch either may be the one found.
        results.put(
                "distance of the largest from mid-span",
                Quantity.of(Math.abs(largest.x() - line.axis().span() / 2), "m"));
        if (in.has("at")) {
            double at = in.si("at");
            results.put("moment", Quantity.of(line.moment(at), "N·m"));
            results.put("normal force", Quantity.of(line.normalForce(at), "N"));
            results.put("shear force", Quantity.of(line.shearForce(at), "N"));
        }
        return results;
    }

    private static Map<String, Quantity> gap(Inputs in) {
        double span = in.si("span");
        double rise = in.si("rise");
        Deviation gap = Deviation.between(Catenary.ofRise(span, rise), new Parabola(span, rise));
        return Map.of(
                "gap over rise", Quantity.of(gap.value() / rise),
                "distance from mid-span over span",
                        Quantity.of(Math.abs(gap.x() - span / 2) / span));
    }

    private static Map<String, Quantity> semicircle(MasonrySemicircle arch) {
        return Map.of(
                "thickness over radius", Quantity.of(arch.thickness()),
                "haunch angle", Quantity.of(arch.haunch(), "rad"),
                "thrust over γ·t·R", Quantity.of(arch.thrust()));
    }

    private static Map<String, Quantity> limitLoad(Inputs in) {
        double span = in.si("span");
        LimitLoad limit =
                LimitLoad.of(
                        axis(in),
                        in.si("depth"),
                        VerticalLoad.uniform(in.si("on plan"), 0, span),
                        VerticalLoad.point(in.si("force"), in.si("position")));
        return Map.of("factor", Quantity.of(limit.factor()));
    }

    private static Map<String, Quantity> limitLoadRoutine(Inputs in) {
        LimitLoadRoutine.Output limit =
                Routines.call(
                        new LimitLoadRoutine(),
                        new LimitLoadRoutine.Input(
                                in.text("axis"),
                                in.quantity("span"),
                                in.quantity("rise"),
                                in.quantity("depth"),
                                in.quantity("on axis"),
                                in.quantity("position")));
        return Map.of("load", limit.load(), "thrust", limit.thrust());
    }

    private static Axis axis(Inputs in) {
        double span = in.si("span");
        double rise = in.si("rise");
        return switch (in.text("axis")) {
            case "parabola" -> new Parabola(span, rise);
            case "circular arc" -> new CircularArc(span, rise);
            case "catenary" -> Catenary.ofRise(span, rise);
            default -> throw new IllegalArgumentException("axis " + in.text("axis"));
        };
    }

    /** Point loads, loads on plan over a range with values at its ends, and a weight on the axis. */
    private static VerticalLoad load(Inputs in) {
        List<VerticalLoad> loads = new ArrayList<>();
        List<Quantity> positions = list(in, "positions");
        List<Quantity> forces = list(in, "loads");
        for (int i = 0; i < forces.size(); i++) {
            loads.add(VerticalLoad.point(forces.get(i).si(), positions.get(i).si()));
        }
        if (in.has("on plan")) {
            List<Quantity> ends = in.quantities("on plan");
            List<Quantity> range =
                    in.has("range")
                            ? in.quantities("range")
                            : List.of(Quantity.of(0, "m"), in.quantity("span"));
            loads.add(
                    VerticalLoad.linear(
                            range.get(0).si(),
                            range.get(1).si(),
                            ends.get(0).si(),
                            ends.get(ends.size() - 1).si()));
        }
        if (in.has("on axis")) {
            loads.add(VerticalLoad.onAxis(in.si("on axis"), 0, in.si("span")));
        }
        return VerticalLoad.together(loads);
    }

    private static List<Quantity> list(Inputs in, String name) {
        return in.has(name) ? in.quantities(name) : List.of();
    }

    private static Quantity orNone(Inputs in, String name, String unit) {
        return in.has(name) ? in.quantity(name) : Quantity.of(0, unit);
    }
}
