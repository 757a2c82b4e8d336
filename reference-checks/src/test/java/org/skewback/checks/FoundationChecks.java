package org.skewback.checks;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.skewback.foundation.ContactPressure;
import org.skewback.foundation.ContactPressureRoutine;
import org.skewback.foundation.Footing;
import org.skewback.foundation.RockBearing;
import org.skewback.foundation.Settlement;
import org.skewback.foundation.SpringingBlock;
import org.skewback.foundation.StressBelow;
import org.skewback.quantity.Quantity;
import org.skewback.quantity.Routines;

/** Checks of {@code org.skewback.foundation}. */
public final class FoundationChecks implements Subject {

    /** Makes the subject. */
    public FoundationChecks() {}

    @Override
    public String topic() {
        return "foundation";
    }

    @Override
    public Map<String, Checked> routines() {
        Map<String, Checked> routines = new TreeMap<>();
        routines.put("RockBearing.strip", FoundationChecks::strip);
        routines.put("RockBearing of jointed rock", FoundationChecks::jointed);
        routines.put("RockBearing.allowableByQuality", FoundationChecks::allowable);
        routines.put("RockBearing at a slope", FoundationChecks::slope);
        routines.put("RockBearing of inclined load", FoundationChecks::inclined);
        routines.put("Footing", FoundationChecks::footing);
        routines.put("Footing.sliding", FoundationChecks::sliding);
        routines.put("ContactPressureRoutine", FoundationChecks::contact);
        routines.put("Settlement", FoundationChecks::settlement);
        routines.put("StressBelow", FoundationChecks::stress);
        routines.put("SpringingBlock", FoundationChecks::springing);
        return routines;
    }

    private static Map<String, Quantity> strip(Inputs in) {
        Quantity friction = in.quantity("friction");
        Quantity flow = RockBearing.flow(friction);
        Quantity one = Quantity.of(1, "m");
        Quantity light = Quantity.of(1e-9, "N/m³");
        Quantity unit = Quantity.of(1, "Pa");
        Map<String, Quantity> results = new LinkedHashMap<>();
        results.put("flow", flow);
        results.put(
                "Nc",
                RockBearing.strip(unit, friction, light, one, Quantity.of(0, "m")).over(unit));
        results.put(
                "Nγ",
                RockBearing.strip(
                                Quantity.of(0, "Pa"),
                                friction,
                                Quantity.of(2, "N/m³"),
                                one,
                                Quantity.of(0, "m"))
                        .over(unit));
        if (in.has("cohesion")) {
            results.put(
                    "pressure",
                    RockBearing.strip(
                            in.quantity("cohesion"),
                            friction,
                            in.quantity("weight"),
                            in.quantity("width"),
                            in.quantity("depth")));
        }
        return results;
    }

    private static Map<String, Quantity> jointed(Inputs in) {
        Quantity intact = in.quantity("intact");
        Quantity m = in.quantity("m");
        Quantity s = in.quantity("s");
        Quantity a = in.quantity("a");
        return in.has("beside")
                ? Map.of(
                        "pressure",
                        RockBearing.jointedBelowGround(intact, m, s, a, in.quantity("beside")))
                : Map.of("pressure", RockBearing.jointed(intact, m, s, a));
    }

    private static Map<String, Quantity> allowable(Inputs in) {
        return Map.of("pressure", RockBearing.allowableByQuality(in.quantity("RQD")));
    }

    private static Map<String, Quantity> slope(Inputs in) {
        Quantity friction = in.quantity("friction");
        Quantity slope = in.quantity("slope");
        Map<String, Quantity> results = new LinkedHashMap<>();
        results.put("Nc", RockBearing.cohesionFactor(friction, slope));
        if (friction.si() > 0) {
            results.put("Nq", RockBearing.surchargeFactor(friction, slope));
        }
        if (slope.in("°") < 45) {
            results.put("g", RockBearing.groundFactor(slope));
        }
        return results;
    }

    private static Map<String, Quantity> inclined(Inputs in) {
        Quantity friction = in.quantity("friction");
        Quantity factor =
                RockBearing.inclinationFactor(
                        in.quantity("along"),
                        in.quantity("normal"),
                        in.quantity("area"),
                        in.quantity("cohesion"),
                        friction,
                        in.quantity("ratio"));
        return Map.of(
                "iq",
                factor,
                "ic",
                RockBearing.cohesionInclination(
                        factor,
                        RockBearing.cohesionFactor(friction, Quantity.of(0, "°")),
                        friction));
    }

    private static Map<String, Quantity> footing(Inputs in) {
        if (in.has("radius")) {
            return Map.of("kern", Footing.kernOfCircle(in.quantity("radius")));
        }
        Footing footing = new Footing(in.quantity("width"), in.quantity("length"));
        Quantity normal = in.quantity("normal");
        Quantity moment = in.quantity("moment");
        Map<String, Quantity> results = new LinkedHashMap<>();
        results.put("eccentricity", Footing.eccentricity(normal, moment));
        results.put("kern", footing.kern());
        results.put("greatest", footing.greatestPressure(normal, moment));
        results.put("least", footing.leastPressure(normal, moment));
        results.put("contact", footing.contact(normal, moment));
        results.put("effective", footing.effectivePressure(normal, moment));
        return results;
    }

    private static Map<String, Quantity> sliding(Inputs in) {
        if (in.has("resisting")) {
            return Map.of(
                    "factor",
                    Footing.overturning(in.quantity("resisting"), in.quantity("overturning")));
        }
        return Map.of(
                "factor",
                Footing.sliding(
                        in.quantity("normal"),
                        in.quantity("friction"),
                        in.has("cohesion") ? in.quantity("cohesion") : Quantity.of(0, "kPa"),
                        in.has("area") ? in.quantity("area") : Quantity.of(0, "m²"),
                        in.has("passive") ? in.quantity("passive") : Quantity.of(0, "kN"),
                        in.quantity("along")));
    }

    private static Map<String, Quantity> contact(Inputs in) {
        ContactPressureRoutine.Output found =
                Routines.call(
                        new ContactPressureRoutine(),
                        new ContactPressureRoutine.Input(
                                in.quantity("width"),
                                in.quantity("length"),
                                in.quantity("normal"),
                                in.quantity("moment x"),
                                in.quantity("moment y")));
        Map<String, Quantity> results = new LinkedHashMap<>();
        results.put("greatest", found.greatest());
        results.put("part", found.contactPart());
        if (in.has("at")) {
            List<Quantity> at = in.quantities("at");
            double normal = in.si("normal");
            ContactPressure pressure =
                    ContactPressure.of(
                            in.si("width"),
                            in.si("length"),
                            normal,
                            in.si("moment x") / normal,
                            in.si("moment y") / normal);
            results.put(
                    "pressure there",
                    Quantity.of(
                            pressure.atMiddle()
                                    + pressure.alongWidth() * at.get(0).si()
                                    + pressure.alongLength() * at.get(1).si(),
                            "Pa"));
        }
        return results;
    }

    private static Map<String, Quantity> settlement(Inputs in) {
        Map<String, Quantity> results = new LinkedHashMap<>();
        if (in.has("sides")) {
            List<Quantity> sides = in.quantities("sides");
            results.put("corner shape", Settlement.cornerShape(sides.get(0), sides.get(1)));
            if (in.has("pressure")) {
                results.put(
                        "corner",
                        Settlement.cornerOfRectangle(
                                in.quantity("pressure"),
                                sides.get(0),
                                sides.get(1),
                                in.quantity("modulus"),
                                in.quantity("Poisson")));
            }
        } else if (in.has("force")) {
            results.put(
                    "stiff",
                    Settlement.stiffCircle(
                            in.quantity("force"),
                            in.quantity("radius"),
                            in.quantity("modulus"),
                            in.quantity("Poisson")));
        } else {
            Quantity pressure = in.quantity("pressure");
            Quantity diameter = in.quantity("diameter");
            Quantity modulus = in.quantity("modulus");
            Quantity poisson = in.quantity("Poisson");
            results.put("middle", Settlement.middleOfCircle(pressure, diameter, modulus, poisson));
            results.put("edge", Settlement.edgeOfCircle(pressure, diameter, modulus, poisson));
        }
        return results;
    }

    private static Map<String, Quantity> stress(Inputs in) {
        Map<String, Quantity> results = new LinkedHashMap<>();
        Quantity depth = in.quantity("depth");
        Quantity one = Quantity.of(1, "Pa");
        if (in.has("point")) {
            Quantity force = in.quantity("point");
            Quantity off = in.quantity("off");
            results.put("Boussinesq", StressBelow.point(force, depth, off));
            results.put("Westergaard", StressBelow.pointByWestergaard(force, depth, off));
        } else if (in.has("line")) {
            results.put(
                    "Boussinesq", StressBelow.line(in.quantity("line"), depth, in.quantity("off")));
        } else if (in.has("sides")) {
            List<Quantity> sides = in.quantities("sides");
            results.put(
                    "Boussinesq",
                    StressBelow.corner(one, sides.get(0), sides.get(1), depth).over(one));
            results.put(
                    "Westergaard",
                    StressBelow.cornerByWestergaard(one, sides.get(0), sides.get(1), depth)
                            .over(one));
        } else if (in.has("radius")) {
            results.put(
                    "Boussinesq", StressBelow.circle(one, in.quantity("radius"), depth).over(one));
        } else {
            results.put(
                    "Boussinesq", StressBelow.strip(one, in.quantity("width"), depth).over(one));
        }
        return results;
    }

    private static Map<String, Quantity> springing(Inputs in) {
        List<Quantity> thrust = in.quantities("thrust");
        List<Quantity> at = in.quantities("at");
        Quantity zero = Quantity.of(0, "kN");
        SpringingBlock block =
                SpringingBlock.on(in.quantity("incline"))
                        .with(thrust.get(0), thrust.get(1), at.get(0), at.get(1))
                        .with(
                                zero,
                                in.quantity("weight"),
                                in.quantity("weight at"),
                                Quantity.of(0, "m"));
        return Map.of(
                "normal", block.normal(),
                "along", block.along(),
                "moment", block.moment(),
                "obliquity", block.obliquity());
    }
}
