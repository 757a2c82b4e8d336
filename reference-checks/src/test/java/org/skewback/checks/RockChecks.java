package org.skewback.checks;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.skewback.quantity.Quantity;
import org.skewback.rock.BenchedCut;
import org.skewback.rock.BlastVibration;
import org.skewback.rock.Earthwork;
import org.skewback.rock.GeologicalStrengthIndex;
import org.skewback.rock.GroundSurface;
import org.skewback.rock.Grout;
import org.skewback.rock.HoekBrown;
import org.skewback.rock.LugeonTest;
import org.skewback.rock.MohrCoulomb;
import org.skewback.rock.QualityIndex;
import org.skewback.rock.Rating;
import org.skewback.rock.RockMassRating;
import org.skewback.rock.SectionLine;
import org.skewback.rock.Shotcrete;
import org.skewback.rock.SlopeMassRating;
import org.skewback.rock.SurveyPoint;
import org.skewback.rock.VibrationLimit;

/** Checks of {@code org.skewback.rock}. */
public final class RockChecks implements Subject {

    /** Makes the subject. */
    public RockChecks() {}

    @Override
    public String topic() {
        return "rock";
    }

    @Override
    public Map<String, Checked> routines() {
        Map<String, Checked> routines = new TreeMap<>();
        routines.put("HoekBrown", RockChecks::hoekBrown);
        routines.put("RockMassRating", RockChecks::rating);
        routines.put("QualityIndex", RockChecks::quality);
        routines.put("GeologicalStrengthIndex", RockChecks::strengthIndex);
        routines.put("SlopeMassRating", RockChecks::slopeRating);
        routines.put("LugeonTest", RockChecks::lugeon);
        routines.put("LugeonTest.conductivity", RockChecks::conductivity);
        routines.put("Earthwork", RockChecks::earthwork);
        routines.put("Earthwork.cut", RockChecks::volume);
        routines.put("Earthwork.between", RockChecks::between);
        routines.put("GroundSurface", RockChecks::surfaces);
        routines.put("Earthwork.polygon", RockChecks::polygon);
        routines.put("BenchedCut", RockChecks::benches);
        routines.put("BlastVibration", RockChecks::vibration);
        routines.put("BlastVibration.fit", RockChecks::fit);
        routines.put("VibrationLimit", RockChecks::limit);
        routines.put("Grout", RockChecks::grout);
        routines.put("Grout mix", RockChecks::mix);
        routines.put("Shotcrete", RockChecks::shotcrete);
        return routines;
    }

    private static Map<String, Quantity> hoekBrown(Inputs in) {
        HoekBrown rock =
                HoekBrown.of(
                        in.quantity("intact"),
                        in.quantity("GSI"),
                        in.quantity("mi"),
                        in.quantity("D"));
        Map<String, Quantity> results = new LinkedHashMap<>();
        results.put("mb", rock.constant());
        results.put("s", rock.cohesive());
        results.put("a", rock.exponent());
        results.put("global strength", rock.globalStrength());
        results.put("compressive strength", rock.compressiveStrength());
        results.put("tensile strength", rock.tensileStrength());
        results.put("modulus 2002", rock.modulus2002());
        results.put("modulus", rock.modulus());
        if (in.has("intact modulus")) {
            results.put("modulus from intact", rock.modulus(in.quantity("intact modulus")));
        }
        Quantity upper =
                switch (in.text("range")) {
                    case "tunnel" ->
                            rock.tunnelStress(in.quantity("weight"), in.quantity("height"));
                    case "slope" -> rock.slopeStress(in.quantity("weight"), in.quantity("height"));
                    default -> rock.generalStress();
                };
        MohrCoulomb line = rock.equivalent(upper);
        results.put("upper stress", upper);
        results.put("range of the line", line.upperStress());
        results.put("cohesion", line.cohesion());
        results.put("friction", line.friction());
        if (in.has("least")) {
            results.put("greatest", rock.greatestStress(in.quantity("least")));
        }
        return results;
    }

    private static Map<String, Quantity> rating(Inputs in) {
        RockMassRating rating =
                RockMassRating.of(
                        in.has("point load")
                                ? RockMassRating.pointLoad(in.si("point load"))
                                : RockMassRating.strength(in.si("strength")),
                        RockMassRating.quality(in.si("RQD")),
                        RockMassRating.spacing(in.si("spacing")),
                        in.has("sub-ratings")
                                ? conditionOf(in.quantities("sub-ratings"))
                                : RockMassRating.condition(
                                        RockMassRating.Condition.valueOf(in.text("condition"))),
                        RockMassRating.water(RockMassRating.Water.valueOf(in.text("water"))),
                        RockMassRating.orientation(
                                RockMassRating.Favour.valueOf(in.text("favour")),
                                RockMassRating.Work.valueOf(in.text("work"))));
        Map<String, Quantity> results = new LinkedHashMap<>();
        for (int i = 0; i < 5; i++) {
            results.put("rating " + (i + 1), Quantity.of(rating.ratings().get(i).points()));
        }
        results.put("basic", Quantity.of(rating.basic()));
        results.put("total", Quantity.of(rating.total()));
        results.put("class", Quantity.of(rating.rockClass()));
        return results;
    }

    private static Rating conditionOf(List<Quantity> p) {
        return RockMassRating.condition(
                (int) p.get(0).si(),
                (int) p.get(1).si(),
                (int) p.get(2).si(),
                (int) p.get(3).si(),
                (int) p.get(4).si());
    }

    private static Map<String, Quantity> quality(Inputs in) {
        Map<String, Quantity> results = new LinkedHashMap<>();
        List<Quantity> j = in.quantities("joints");
        Quantity index =
                QualityIndex.of(
                        in.quantity("RQD"), j.get(0), j.get(1), j.get(2), j.get(3), j.get(4));
        results.put("Q", index);
        results.put("RMR by Bieniawski", QualityIndex.ratingByBieniawski(index));
        results.put("RMR by Barton", QualityIndex.ratingByBarton(index));
        if (in.has("ESR")) {
            Quantity support = in.quantity("ESR");
            Quantity span = in.quantity("span");
            results.put("equivalent", QualityIndex.equivalentDimension(span, support));
            results.put("unsupported", QualityIndex.unsupportedSpan(index, support));
            results.put("bolt", QualityIndex.boltLength(span, support));
        }
        return results;
    }

    private static Map<String, Quantity> strengthIndex(Inputs in) {
        if (in.has("condition points")) {
            return Map.of(
                    "GSI",
                    GeologicalStrengthIndex.ofCondition(
                            in.quantity("condition points"), in.quantity("RQD")));
        }
        RockMassRating rating =
                RockMassRating.of(
                        RockMassRating.strength(in.si("strength")),
                        RockMassRating.quality(in.si("RQD")),
                        RockMassRating.spacing(in.si("spacing")),
                        RockMassRating.condition(RockMassRating.Condition.SLIGHTLY_ROUGH),
                        RockMassRating.water(RockMassRating.Water.valueOf(in.text("water"))),
                        RockMassRating.orientation(
                                RockMassRating.Favour.FAIR, RockMassRating.Work.SLOPE));
        return Map.of("GSI", Quantity.of(GeologicalStrengthIndex.ofRating(rating)));
    }

    private static Map<String, Quantity> slopeRating(Inputs in) {
        List<Quantity> angles = in.quantities("angles");
        double a = angles.get(0).si();
        double b = angles.get(1).si();
        double face = angles.get(2).si();
        boolean topple = in.has("toppling");
        if (topple) {
            in.text("toppling");
        }
        SlopeMassRating.Factors classes =
                topple ? SlopeMassRating.toppling(a, b, face) : SlopeMassRating.planar(a, b, face);
        SlopeMassRating.Factors smooth =
                topple
                        ? SlopeMassRating.topplingContinuous(a, b, face)
                        : SlopeMassRating.planarContinuous(a, b, face);
        SlopeMassRating.Excavation made = SlopeMassRating.Excavation.valueOf(in.text("excavation"));
        Map<String, Quantity> results = new LinkedHashMap<>();
        results.put("F1", Quantity.of(classes.parallel()));
        results.put("F2", Quantity.of(classes.dip()));
        results.put("F3", Quantity.of(classes.relation()));
        results.put("SMR", SlopeMassRating.of(in.quantity("basic"), classes, made));
        results.put("F1 continuous", Quantity.of(smooth.parallel()));
        results.put("F2 continuous", Quantity.of(smooth.dip()));
        results.put("F3 continuous", Quantity.of(smooth.relation()));
        results.put("SMR continuous", SlopeMassRating.of(in.quantity("basic"), smooth, made));
        return results;
    }

    private static Map<String, Quantity> lugeon(Inputs in) {
        if (in.has("flow")) {
            return Map.of(
                    "value",
                    LugeonTest.value(
                            in.quantity("flow"), in.quantity("length"), in.quantity("pressure")));
        }
        List<Quantity> pressures = in.quantities("pressures");
        List<Quantity> flows = in.quantities("flows");
        List<LugeonTest.Stage> stages = new ArrayList<>();
        for (int i = 0; i < flows.size(); i++) {
            stages.add(new LugeonTest.Stage(pressures.get(i).si(), flows.get(i).si()));
        }
        LugeonTest test = new LugeonTest(in.si("length"), stages);
        Map<String, Quantity> results = new LinkedHashMap<>();
        results.put("representative", Quantity.of(test.representative()));
        if (in.has("pattern")) {
            boolean found = test.pattern() == LugeonTest.Pattern.valueOf(in.text("pattern"));
            results.put("is of this pattern", Quantity.of(found ? 1 : 0));
        }
        return results;
    }

    private static Map<String, Quantity> conductivity(Inputs in) {
        Quantity flow = in.quantity("flow");
        Quantity length = in.quantity("length");
        Quantity radius = in.quantity("radius");
        Quantity head = in.quantity("head");
        return Map.of(
                "radial", LugeonTest.conductivity(flow, length, radius, head),
                "Moye", LugeonTest.conductivityByMoye(flow, length, radius, head));
    }

    private static Map<String, Quantity> earthwork(Inputs in) {
        Map<String, Quantity> results = new LinkedHashMap<>();
        if (in.has("side")) {
            Quantity side = in.quantity("side");
            results.put("inclination", Earthwork.inclination(side));
            if (in.has("height")) {
                results.put(
                        "area",
                        Earthwork.trapezoid(in.quantity("base"), in.quantity("height"), side));
            }
            return results;
        }
        List<Quantity> areas = in.quantities("areas");
        Quantity length = in.quantity("length");
        Quantity ends = Earthwork.byEndAreas(areas.get(0), areas.get(2), length);
        Quantity prismoidal =
                Earthwork.prismoidal(areas.get(0), areas.get(1), areas.get(2), length);
        results.put("by end areas", ends);
        results.put("prismoidal", prismoidal);
        results.put("difference", ends.minus(prismoidal));
        return results;
    }

    /** A cut of a level base and even sides under level ground of two levels. */
    private static Map<String, Quantity> volume(Inputs in) {
        List<Quantity> heights = in.quantities("heights");
        double half = in.si("base") / 2;
        double side = in.si("side");
        List<Earthwork.Station> stations = new ArrayList<>();
        for (int i = 0; i < heights.size(); i++) {
            double high = heights.get(i).si();
            double wide = half + 100 * side;
            stations.add(
                    new Earthwork.Station(
                            i * in.si("length"),
                            SectionLine.of(List.of(-wide, wide), List.of(high, high)),
                            SectionLine.of(
                                    List.of(-wide, -half, half, wide),
                                    List.of(100.0, 0.0, 0.0, 100.0))));
        }
        Earthwork.Volume volume = Earthwork.cut(stations);
        return Map.of(
                "by end areas", Quantity.of(volume.byEndAreas(), "m³"),
                "prismoidal", Quantity.of(volume.prismoidal(), "m³"),
                "difference", Quantity.of(volume.difference(), "m³"),
                "first area", Quantity.of(volume.areas().get(0), "m²"));
    }

    /** A design line of one slope through level ground. */
    private static Map<String, Quantity> between(Inputs in) {
        List<Quantity> levels = in.quantities("design");
        double width = in.si("width");
        double ground = in.si("ground");
        Earthwork.Areas areas =
                Earthwork.between(
                        SectionLine.of(List.of(0.0, width), List.of(ground, ground)),
                        SectionLine.of(
                                List.of(0.0, width),
                                List.of(levels.get(0).si(), levels.get(1).si())));
        return Map.of(
                "cut", Quantity.of(areas.cut(), "m²"), "fill", Quantity.of(areas.fill(), "m²"));
    }

    /** Level ground over a pit whose rims are regular polygons, or over a trapezoidal cut. */
    private static Map<String, Quantity> surfaces(Inputs in) {
        double level = in.si("ground");
        double depth = in.si("depth");
        List<SurveyPoint> ground = new ArrayList<>();
        List<SurveyPoint> design = new ArrayList<>();
        if (in.has("radii")) {
            List<Quantity> radii = in.quantities("radii");
            int sides = (int) in.si("sides");
            for (int i = 0; i < sides; i++) {
                double angle = 2 * Math.PI * i / sides;
                double c = StrictMath.cos(angle);
                double s = StrictMath.sin(angle);
                double top = radii.get(0).si();
                double bottom = radii.get(1).si();
                design.add(new SurveyPoint(top * c, top * s, level));
                design.add(new SurveyPoint(bottom * c, bottom * s, level - depth));
            }
            double wide = 2 * radii.get(0).si();
            for (int i = 0; i < 4; i++) {
                ground.add(new SurveyPoint(i < 2 ? -wide : wide, i % 2 == 0 ? -wide : wide, level));
            }
        } else {
            double half = in.si("base") / 2;
            double wide = half + in.si("side") * depth;
            double origin = in.has("origin") ? in.si("origin") : 0;
            for (int i = 0; i <= 4; i++) {
                double along = origin + in.si("length") * i / 4;
                for (double across : new double[] {-wide, -half, half, wide}) {
                    ground.add(new SurveyPoint(along, origin + across, level));
                    design.add(
                            new SurveyPoint(
                                    along,
                                    origin + across,
                                    Math.abs(across) > half ? level : level - depth));
                }
            }
        }
        GroundSurface.Volumes volumes =
                GroundSurface.through(ground).volumesDownTo(GroundSurface.through(design));
        return Map.of(
                "cut", Quantity.of(volumes.cut(), "m³"),
                "fill", Quantity.of(volumes.fill(), "m³"),
                "plan area", Quantity.of(volumes.planArea(), "m²"));
    }

    private static Map<String, Quantity> polygon(Inputs in) {
        List<Quantity> c = in.quantities("corners");
        List<double[]> corners = new ArrayList<>();
        for (int i = 0; i + 1 < c.size(); i += 2) {
            corners.add(new double[] {c.get(i).si(), c.get(i + 1).si()});
        }
        return Map.of("area", Quantity.of(Earthwork.polygon(corners), "m²"));
    }

    /** A benched cut into ground of one inclination through the toe's place. */
    private static Map<String, Quantity> benches(Inputs in) {
        double side = in.has("rises") && in.text("rises").equals("left") ? -1 : 1;
        double rise = side * StrictMath.tan(in.si("ground"));
        double low = side > 0 ? -10.0 : -200.0;
        SectionLine ground =
                SectionLine.of(List.of(low, low + 210), List.of(low * rise, (low + 210) * rise));
        SectionLine cut =
                new BenchedCut(
                                in.si("bench height"),
                                in.si("bench width"),
                                in.si("face"),
                                in.has("fall") ? in.si("fall") : 0)
                        .into(ground, side * in.si("toe"), in.si("toe level"), side > 0);
        return Map.of(
                "meets", Quantity.of(side > 0 ? cut.right() : cut.left(), "m"),
                "area", Quantity.of(Earthwork.between(ground, cut).cut(), "m²"));
    }

    private static Map<String, Quantity> vibration(Inputs in) {
        Map<String, Quantity> results = new LinkedHashMap<>();
        if (in.has("constant")) {
            Quantity distance = in.quantity("distance");
            Quantity charge = in.quantity("charge");
            results.put("scaled distance", BlastVibration.scaledDistance(distance, charge));
            results.put(
                    "speed",
                    BlastVibration.speed(
                            in.quantity("constant"), in.quantity("exponent"), distance, charge));
        } else if (in.has("diameter")) {
            results.put(
                    "spacing",
                    BlastVibration.plausibleSpacing(
                            in.quantity("diameter"),
                            in.quantity("pressure"),
                            in.quantity("tensile strength")));
        } else {
            Quantity speed = in.quantity("speed");
            Quantity wave = in.quantity("wave");
            results.put("strain", BlastVibration.strain(speed, wave));
            results.put("stress", BlastVibration.stress(in.quantity("density"), wave, speed));
        }
        return results;
    }

    private static Map<String, Quantity> fit(Inputs in) {
        List<Quantity> distance = in.quantities("distances");
        List<Quantity> charge = in.quantities("charges");
        List<Quantity> speed = in.quantities("speeds");
        List<BlastVibration.Shot> shots = new ArrayList<>();
        for (int i = 0; i < distance.size(); i++) {
            shots.add(
                    new BlastVibration.Shot(
                            distance.get(i).si(), charge.get(i).si(), speed.get(i).si()));
        }
        BlastVibration line = BlastVibration.fit(shots);
        Map<String, Quantity> results = new LinkedHashMap<>();
        results.put("constant", Quantity.of(line.constant(), "m/s"));
        results.put("exponent", Quantity.of(line.exponent()));
        results.put("scatter", Quantity.of(line.scatter()));
        results.put("least scaled distance", Quantity.of(line.least()));
        results.put("greatest scaled distance", Quantity.of(line.greatest()));
        results.put("limit", Quantity.of(line.limit(in.si("at"), in.si("with"), 0.95), "m/s"));
        results.put(
                "distance",
                Quantity.of(
                        line.distance(line.mean(in.si("at"), in.si("with")), in.si("with")), "m"));
        return results;
    }

    private static Map<String, Quantity> limit(Inputs in) {
        Map<String, Quantity> results = new LinkedHashMap<>();
        if (in.has("frequency")) {
            results.put("house", Quantity.of(VibrationLimit.house(in.si("frequency")), "m/s"));
        } else if (in.has("age")) {
            results.put(
                    "concrete",
                    Quantity.of(
                            VibrationLimit.massConcrete(in.si("age"), in.si("distance")), "m/s"));
        } else {
            double distance = in.si("distance");
            results.put("by distance", Quantity.of(VibrationLimit.byDistance(distance), "m/s"));
            results.put(
                    "scaled distance", Quantity.of(VibrationLimit.leastScaledDistance(distance)));
        }
        return results;
    }

    private static Map<String, Quantity> grout(Inputs in) {
        Map<String, Quantity> results = new LinkedHashMap<>();
        if (in.has("cohesion")) {
            Quantity half =
                    in.has("aperture")
                            ? Grout.halfOf(in.quantity("aperture"))
                            : in.quantity("half");
            Quantity pressure = in.quantity("pressure");
            Quantity cohesion = in.quantity("cohesion");
            results.put("reach", Grout.reach(pressure, half, cohesion));
            results.put("take", Grout.take(pressure, half, cohesion));
            results.put("lift", Grout.lift(pressure, half, cohesion));
        } else if (in.has("intensity")) {
            results.put(
                    "end pressure",
                    Grout.endPressure(in.quantity("intensity"), in.quantity("take")));
        } else if (in.has("depth")) {
            results.put(
                    "lifting pressure",
                    Grout.liftingPressure(in.quantity("weight"), in.quantity("depth")));
        } else if (in.has("outer")) {
            results.put(
                    "flow",
                    Grout.radialFlow(
                            in.quantity("aperture"),
                            in.quantity("pressure"),
                            in.quantity("viscosity"),
                            in.quantity("outer"),
                            in.quantity("hole")));
        } else {
            results.put(
                    "conductivity",
                    Grout.jointConductivity(in.quantity("aperture"), in.quantity("viscosity")));
        }
        return results;
    }

    private static Map<String, Quantity> mix(Inputs in) {
        if (in.has("diameter")) {
            return Map.of("hole", Grout.holeVolume(in.quantity("diameter"), in.quantity("length")));
        }
        if (in.has("porosity")) {
            return Map.of(
                    "joints",
                    Grout.jointVolume(
                            in.quantity("porosity"), in.quantity("reach"), in.quantity("length")));
        }
        Quantity ratio = in.quantity("water ratio");
        Quantity gravity = in.quantity("gravity");
        return Map.of(
                "cement", Grout.cementContent(ratio, gravity),
                "density", Grout.density(ratio, gravity));
    }

    private static Map<String, Quantity> shotcrete(Inputs in) {
        Map<String, Quantity> results = new LinkedHashMap<>();
        if (in.has("apex")) {
            Quantity weight =
                    Shotcrete.blockWeight(
                            in.quantity("spacing"), in.quantity("apex"), in.quantity("weight"));
            results.put("weight", weight);
            results.put("moment", Shotcrete.bendingMoment(weight));
        } else if (in.has("adhesion")) {
            results.put(
                    "adhesion",
                    Shotcrete.adhesion(
                            in.quantity("adhesion"), in.quantity("spacing"), in.quantity("band")));
        } else if (in.has("plate")) {
            results.put(
                    "punching",
                    Shotcrete.punching(
                            in.quantity("shear"), in.quantity("plate"), in.quantity("thickness")));
        } else if (in.has("shear")) {
            results.put(
                    "shear",
                    Shotcrete.directShear(
                            in.quantity("shear"),
                            in.quantity("spacing"),
                            in.quantity("thickness")));
        } else {
            Quantity strength = in.quantity("flexure");
            Quantity moment = Shotcrete.bending(strength, in.quantity("thickness"));
            results.put("bending", moment);
            results.put("thickness again", Shotcrete.thickness(moment, strength));
        }
        return results;
    }
}
