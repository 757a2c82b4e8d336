package org.skewback.checks;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.skewback.quantity.Quantity;
import org.skewback.quantity.Routines;
import org.skewback.quantity.Source;
import org.skewback.sheet.Check;
import org.skewback.slope.AnchorConvention;
import org.skewback.slope.CriticalCircleRoutine;
import org.skewback.slope.InfiniteSlope;
import org.skewback.slope.NewmarkRoutine;
import org.skewback.slope.NewmarkSliding;
import org.skewback.slope.Orientation;
import org.skewback.slope.PartialFactors;
import org.skewback.slope.PlaneBlock;
import org.skewback.slope.PlaneSlide;
import org.skewback.slope.PlaneWater;
import org.skewback.slope.ProfileLine;
import org.skewback.slope.SectionAnchor;
import org.skewback.slope.SectionInput;
import org.skewback.slope.SeismicCoefficient;
import org.skewback.slope.ShortWedge;
import org.skewback.slope.SliceAnalysis;
import org.skewback.slope.SliceMethod;
import org.skewback.slope.SlicesRoutine;
import org.skewback.slope.SlidingEstimate;
import org.skewback.slope.SlipCircle;
import org.skewback.slope.SlipPolygon;
import org.skewback.slope.SlopeSection;
import org.skewback.slope.Soil;
import org.skewback.slope.TopplingRoutine;
import org.skewback.slope.WedgeAngles;
import org.skewback.slope.WedgeRoutine;
import org.skewback.slope.WedgeShape;
import org.skewback.slope.WedgeWater;
import org.skewback.slope.YieldCoefficient;
import org.skewback.study.Distribution;
import org.skewback.study.FirstOrderSecondMoment;
import org.skewback.study.Reliability;
import org.skewback.study.Sampling;
import org.skewback.study.Simulation;
import org.skewback.study.Uncertainty;

/** Checks of {@code org.skewback.slope}. */
public final class SlopeChecks implements Subject {

    /** Makes the subject. */
    public SlopeChecks() {}

    @Override
    public String topic() {
        return "slope";
    }

    @Override
    public Map<String, Checked> routines() {
        Map<String, Checked> routines = new TreeMap<>();
        routines.put("PlaneBlock", SlopeChecks::block);
        routines.put("PlaneSlide", SlopeChecks::plane);
        routines.put("PlaneSlide.anchorForce", SlopeChecks::planeAnchor);
        routines.put("Reliability of PlaneSlide", SlopeChecks::planeReliability);
        routines.put("InfiniteSlope", SlopeChecks::infinite);
        routines.put("InfiniteSlope.planarCriticalHeight", SlopeChecks::culmann);
        routines.put("InfiniteSlope.yieldCoefficient", SlopeChecks::yieldOfPlane);
        routines.put("Orientation.apparentDip", SlopeChecks::apparentDip);
        routines.put("WedgeWater.full", SlopeChecks::fullJoints);
        routines.put("WedgeAngles", SlopeChecks::wedgeAngles);
        routines.put("ShortWedge", SlopeChecks::shortWedge);
        routines.put("ShortWedge.symmetric", SlopeChecks::symmetricWedge);
        routines.put("WedgeRoutine", SlopeChecks::wedge);
        routines.put("TopplingRoutine", SlopeChecks::toppling);
        routines.put("SlicesRoutine", SlopeChecks::slices);
        routines.put("SliceAnalysis of a polygon", SlopeChecks::polygon);
        routines.put("CriticalCircleRoutine", SlopeChecks::critical);
        routines.put("YieldCoefficient", SlopeChecks::yieldOfCircle);
        routines.put("NewmarkRoutine", SlopeChecks::newmark);
        routines.put("NewmarkSliding.rectangularPulse", SlopeChecks::pulse);
        routines.put("SlidingEstimate", SlopeChecks::estimate);
        routines.put("PartialFactors", SlopeChecks::partial);
        routines.put("SeismicCoefficient", SlopeChecks::seismic);
        return routines;
    }

    static Quantity or(Inputs in, String name, double value, String unit) {
        return in.has(name) ? in.quantity(name) : Quantity.of(value, unit);
    }

    private static PlaneBlock blockOf(Inputs in) {
        Quantity height = in.quantity("height");
        Quantity face = in.quantity("face");
        Quantity plane = in.quantity("plane");
        Quantity weight = in.quantity("weight");
        if (in.has("in face")) {
            return PlaneBlock.crackInFace(height, face, plane, in.quantity("in face"), weight);
        }
        if (in.has("crack depth")) {
            return PlaneBlock.ofCrackDepth(height, face, plane, in.quantity("crack depth"), weight);
        }
        return PlaneBlock.crackBehindCrest(
                height, face, plane, or(in, "upper", 0, "°"), in.quantity("behind crest"), weight);
    }

    private static Map<String, Quantity> block(Inputs in) {
        if (!in.has("weight")) {
            Quantity height = in.quantity("height");
            Quantity face = in.quantity("face");
            Quantity plane = in.quantity("plane");
            return Map.of(
                    "critical depth",
                    PlaneBlock.criticalCrackDepth(height, face, plane),
                    "critical distance",
                    PlaneBlock.criticalCrackDistance(height, face, plane));
        }
        PlaneBlock block = blockOf(in);
        return Map.of("depth", block.crackDepth(), "area", block.area(), "weight", block.weight());
    }

    private static PlaneSlide slideOf(Inputs in) {
        PlaneBlock block = blockOf(in);
        PlaneSlide slide = PlaneSlide.of(block, in.quantity("cohesion"), in.quantity("friction"));
        if (in.has("water")) {
            slide =
                    slide.withWater(
                            PlaneWater.inCrack(
                                    block, in.quantity("water"), in.quantity("water weight")));
        }
        if (in.has("pressure")) {
            slide = slide.withWater(PlaneWater.onPlane(block, in.quantity("pressure")));
        }
        if (in.has("upward")) {
            slide = slide.withEarthquake(in.quantity("level"), in.quantity("upward"));
        } else if (in.has("level")) {
            slide = slide.withEarthquake(in.quantity("level"));
        }
        if (in.has("outward")) {
            slide = slide.withForce(in.quantity("outward"), in.quantity("downward"));
        }
        if (in.has("anchor")) {
            slide =
                    slide.withAnchor(
                            in.quantity("anchor"),
                            in.quantity("plunge"),
                            AnchorConvention.valueOf(in.text("convention")));
        }
        return slide;
    }

    private static Map<String, Quantity> plane(Inputs in) {
        PlaneSlide slide = slideOf(in);
        return Map.of(
                "factor", slide.factor(),
                "normal force", slide.normalForce(),
                "driving force", slide.drivingForce(),
                "yield coefficient", slide.yieldCoefficient());
    }

    private static Map<String, Quantity> planeAnchor(Inputs in) {
        Quantity wanted = in.quantity("wanted");
        Quantity plunge = or(in, "plunge", 0, "°");
        PlaneSlide slide = slideOf(in);
        return Map.of(
                "active",
                slide.anchorForce(wanted, plunge, AnchorConvention.ACTIVE),
                "passive",
                slide.anchorForce(wanted, plunge, AnchorConvention.PASSIVE),
                "best plunge",
                slide.bestPlunge(wanted));
    }

    private static Quantity given(String symbol, Quantity value) {
        return Quantity.given(
                symbol,
                value.in(value.unit().symbol()),
                value.unit().symbol(),
                "",
                Source.assumption("a reference check"));
    }

    /** The slide sampled: cohesion and tangent normal where a deviation is given, else all five. */
    private static Map<String, Quantity> planeReliability(Inputs in) {
        if (in.has("tangent deviation")) {
            Quantity cohesion = given("c", in.quantities("cohesion").get(0));
            Quantity mean = Quantity.of(in.quantity("friction").tan().si());
            Quantity tangent = given("t_φ", mean);
            PlaneSlide slide = PlaneSlide.of(blockOf(in), cohesion, tangent.atan());
            FirstOrderSecondMoment found =
                    Reliability.of(
                                    stable(slide.factor()),
                                    Uncertainty.none()
                                            .with(
                                                    cohesion,
                                                    Distribution.normal(
                                                            in.quantities("cohesion").get(0),
                                                            in.quantities("cohesion").get(1)))
                                            .with(
                                                    tangent,
                                                    Distribution.normal(
                                                            mean,
                                                            in.quantity("tangent deviation"))))
                            .firstOrderSecondMoment();
            return Map.of(
                    "mean", found.mean(),
                    "standard deviation", found.standardDeviation(),
                    "index", found.index());
        }
        List<Quantity> c = in.quantities("cohesion");
        List<Quantity> f = in.quantities("friction");
        List<Quantity> z = in.quantities("crack");
        List<Quantity> i = in.quantities("filling");
        List<Quantity> k = in.quantities("shaking");
        Quantity cohesion = given("c", c.get(0));
        Quantity friction = given("φ", f.get(0));
        Quantity crack = given("z", z.get(0));
        Quantity filling = given("i", Quantity.of(0.5));
        Quantity shaking = given("k", Quantity.of(0.08));
        PlaneBlock block =
                PlaneBlock.ofCrackDepth(
                        in.quantity("height"),
                        in.quantity("face"),
                        in.quantity("plane"),
                        crack,
                        in.quantity("weight"));
        PlaneSlide slide =
                PlaneSlide.of(block, cohesion, friction)
                        .withWater(
                                PlaneWater.inCrack(
                                        block, filling.times(crack), in.quantity("water weight")))
                        .withEarthquake(shaking);
        Simulation found =
                Reliability.of(
                                stable(slide.factor()),
                                Uncertainty.none()
                                        .with(cohesion, truncated(c))
                                        .with(friction, truncated(f))
                                        .with(crack, truncated(z))
                                        .with(filling, exponential(i))
                                        .with(shaking, exponential(k)))
                        .simulate(Sampling.of((long) in.si("samples")));
        return Map.of(
                "mean", found.mean(),
                "standard deviation", found.standardDeviation(),
                "probability", found.probability());
    }

    private static Distribution truncated(List<Quantity> p) {
        return Distribution.truncatedNormal(p.get(0), p.get(1), p.get(2), p.get(3));
    }

    private static Distribution exponential(List<Quantity> p) {
        return Distribution.truncatedExponential(p.get(0), p.get(1), p.get(2));
    }

    private static Check stable(Quantity factor) {
        return new Check("sliding", factor, Quantity.of(1), null);
    }

    private static Map<String, Quantity> infinite(Inputs in) {
        return Map.of(
                "factor",
                InfiniteSlope.factor(
                        in.quantity("cohesion"),
                        in.quantity("friction"),
                        in.quantity("weight"),
                        in.quantity("thickness"),
                        in.quantity("slope"),
                        or(in, "water", 0, "m"),
                        Quantity.of(9.81, "kN/m³"),
                        or(in, "level", 0, "")));
    }

    private static Map<String, Quantity> culmann(Inputs in) {
        Quantity height =
                InfiniteSlope.planarCriticalHeight(
                        in.quantity("cohesion"),
                        in.quantity("friction"),
                        in.quantity("weight"),
                        in.quantity("face"));
        return Map.of(
                "stability number",
                height.times(in.quantity("weight")).over(in.quantity("cohesion")));
    }

    private static Map<String, Quantity> yieldOfPlane(Inputs in) {
        return Map.of(
                "yield coefficient",
                InfiniteSlope.yieldCoefficient(in.quantity("friction"), in.quantity("plane")));
    }

    static Orientation orientation(Inputs in, String name) {
        List<Quantity> angles = in.quantities(name);
        return new Orientation(angles.get(0).si(), angles.get(1).si());
    }

    private static Map<String, Quantity> wedgeAngles(Inputs in) {
        WedgeAngles angles =
                WedgeAngles.of(
                        orientation(in, "A"),
                        orientation(in, "B"),
                        orientation(in, "face"),
                        orientation(in, "upper"));
        Map<String, Quantity> results = new LinkedHashMap<>();
        results.put("plunge 5", Quantity.of(angles.plunge5(), "rad"));
        results.put("trend 5", Quantity.of(angles.trend5(), "rad"));
        results.put("na nb", Quantity.of(angles.between(), "rad"));
        results.put("24", Quantity.of(angles.angle24(), "rad"));
        results.put("45", Quantity.of(angles.angle45(), "rad"));
        results.put("2 na", Quantity.of(angles.angle2a(), "rad"));
        results.put("13", Quantity.of(angles.angle13(), "rad"));
        results.put("35", Quantity.of(angles.angle35(), "rad"));
        results.put("1 nb", Quantity.of(angles.angle1b(), "rad"));
        return results;
    }

    /** Angles in the order 24, 45, 2 na, 13, 35, 1 nb, na nb, plunge 5; dips of A and B. */
    private static Map<String, Quantity> shortWedge(Inputs in) {
        List<Quantity> angles = in.quantities("angles");
        List<Quantity> dips = in.quantities("dips");
        Quantity x = ShortWedge.x(angles.get(0), angles.get(1), angles.get(2));
        Quantity y = ShortWedge.y(angles.get(3), angles.get(4), angles.get(5));
        Quantity a =
                ShortWedge.normalNumber(dips.get(0), dips.get(1), angles.get(7), angles.get(6));
        Quantity b =
                ShortWedge.normalNumber(dips.get(1), dips.get(0), angles.get(7), angles.get(6));
        Map<String, Quantity> results = new LinkedHashMap<>();
        results.put("X", x);
        results.put("Y", y);
        results.put("A", a);
        results.put("B", b);
        if (in.has("friction")) {
            List<Quantity> friction = in.quantities("friction");
            List<Quantity> cohesion = in.quantities("cohesion");
            results.put(
                    "factor",
                    ShortWedge.factor(
                            new ShortWedge.Terms(
                                    cohesion.get(0),
                                    cohesion.get(1),
                                    x,
                                    y,
                                    in.quantity("weight"),
                                    in.quantity("water weight"),
                                    in.quantity("height")),
                            a,
                            friction.get(0),
                            b,
                            friction.get(1)));
        }
        return results;
    }

    private static Map<String, Quantity> symmetricWedge(Inputs in) {
        return Map.of(
                "factor",
                ShortWedge.symmetric(
                        in.quantity("tilt"),
                        in.quantity("opening"),
                        in.quantity("friction"),
                        in.quantity("plunge")));
    }

    private static Map<String, Quantity> wedge(Inputs in) {
        List<Quantity> a = in.quantities("A");
        List<Quantity> b = in.quantities("B");
        List<Quantity> face = in.quantities("face");
        List<Quantity> upper = in.quantities("upper");
        List<Quantity> cohesion = in.quantities("cohesion");
        List<Quantity> friction = in.quantities("friction");
        Quantity pressure = or(in, "pressure", 0, "kPa");
        WedgeRoutine.Output found =
                Routines.call(
                        new WedgeRoutine(),
                        new WedgeRoutine.Input(
                                a.get(0),
                                a.get(1),
                                b.get(0),
                                b.get(1),
                                face.get(0),
                                face.get(1),
                                upper.get(0),
                                upper.get(1),
                                in.quantity("height"),
                                in.quantity("weight"),
                                cohesion.get(0),
                                friction.get(0),
                                cohesion.get(1),
                                friction.get(1),
                                pressure,
                                pressure,
                                or(in, "level", 0, ""),
                                or(in, "anchor", 0, "kN"),
                                or(in, "anchor trend", 0, "°"),
                                or(in, "anchor plunge", 0, "°"),
                                false));
        Map<String, Quantity> results = new LinkedHashMap<>();
        results.put("factor", found.factor());
        results.put("weight", found.weight());
        results.put("area A", found.areaA());
        results.put("area B", found.areaB());
        results.put("normal A", found.normalA());
        results.put("normal B", found.normalB());
        results.put("driving", found.driving());
        results.put("trend", found.trend());
        results.put("plunge", found.plunge());
        return results;
    }

    private static Map<String, Quantity> apparentDip(Inputs in) {
        List<Quantity> plane = in.quantities("plane");
        double dip =
                Orientation.ofDegrees(plane.get(0).in("°"), plane.get(1).in("°"))
                        .apparentDip(in.si("section"));
        return Map.of("apparent dip", Quantity.of(dip, "rad"));
    }

    private static Map<String, Quantity> fullJoints(Inputs in) {
        List<Quantity> a = in.quantities("A");
        List<Quantity> b = in.quantities("B");
        List<Quantity> face = in.quantities("face");
        List<Quantity> upper = in.quantities("upper");
        WedgeWater water =
                WedgeWater.full(
                        WedgeShape.ofTotalHeight(
                                new Orientation(a.get(0).si(), a.get(1).si()),
                                new Orientation(b.get(0).si(), b.get(1).si()),
                                new Orientation(face.get(0).si(), face.get(1).si()),
                                new Orientation(upper.get(0).si(), upper.get(1).si()),
                                in.si("height")),
                        in.si("water weight"));
        return Map.of(
                "on A", Quantity.of(water.onA(), "Pa"), "on B", Quantity.of(water.onB(), "Pa"));
    }

    private static Map<String, Quantity> toppling(Inputs in) {
        TopplingRoutine.Output found =
                Routines.call(
                        new TopplingRoutine(),
                        new TopplingRoutine.Input(
                                in.quantity("width"),
                                in.quantity("base dip"),
                                in.quantity("weight"),
                                (int) in.si("crest"),
                                (int) in.si("count"),
                                in.quantity("face step"),
                                in.quantity("upper step"),
                                in.quantity("base step"),
                                in.quantity("tangent").atan(),
                                or(in, "level", 0, ""),
                                or(in, "plunge", 0, "°")));
        Map<String, Quantity> results = new LinkedHashMap<>();
        for (int n = 1; n <= found.passedOn().size(); n++) {
            results.put("P " + (n - 1), found.passedOn().get(n - 1));
            results.put("R " + n, found.normal().get(n - 1));
            results.put("S " + n, found.shear().get(n - 1));
        }
        results.put("tangent needed", found.tangentNeeded());
        results.put("factor", found.factor());
        results.put("anchor", found.anchorForce());
        return results;
    }

    /**
     * Layers from top to bottom in lists of unit weights, cohesions and frictions; bottoms of all but
     * the last as "bottom 1" and so on.
     */
    static SectionInput section(Inputs in) {
        SectionInput section = SectionInput.ground(in.quantities("ground"));
        List<Quantity> weights = in.quantities("weight");
        List<Quantity> cohesions = in.quantities("cohesion");
        List<Quantity> frictions = in.quantities("friction");
        Quantity ratio = or(in, "pore ratio", 0, "");
        for (int i = 0; i < weights.size(); i++) {
            Quantity weight = weights.get(i);
            Quantity cohesion = cohesions.get(i);
            Quantity friction = frictions.get(i);
            section =
                    i + 1 < weights.size()
                            ? section.layer(
                                    weight,
                                    weight,
                                    cohesion,
                                    friction,
                                    ratio,
                                    in.quantities("bottom " + (i + 1)))
                            : section.layer(weight, cohesion, friction, ratio);
        }
        if (in.has("water")) {
            section = section.water(in.quantities("water"));
        }
        return section.earthquake(or(in, "level", 0, ""), or(in, "upward", 0, ""));
    }

    private static Map<String, Quantity> slices(Inputs in) {
        SliceMethod method = SliceMethod.valueOf(in.text("method"));
        SlicesRoutine.Output found =
                Routines.call(
                        new SlicesRoutine(),
                        section(in).at(in.quantities("circle"), method, (int) in.si("slices")));
        return Map.of("factor", found.factor(), "lambda", found.lambda(), "pulled", found.pulled());
    }

    private static Map<String, Quantity> critical(Inputs in) {
        SliceMethod method = SliceMethod.valueOf(in.text("method"));
        CriticalCircleRoutine.Output found =
                Routines.call(
                        new CriticalCircleRoutine(),
                        section(in).at(in.quantities("window"), method, (int) in.si("slices")));
        Map<String, Quantity> results = new LinkedHashMap<>();
        results.put("factor", found.factor());
        results.put(
                "stability number",
                in.quantities("weight")
                        .get(0)
                        .times(Quantity.of(10, "m"))
                        .over(in.quantities("cohesion").get(0).plus(Quantity.of(1e-9, "Pa")))
                        .times(found.factor()));
        return results;
    }

    static ProfileLine line(List<Quantity> coordinates) {
        List<Double> x = new ArrayList<>();
        List<Double> y = new ArrayList<>();
        for (int i = 0; i < coordinates.size(); i++) {
            (i % 2 == 0 ? x : y).add(coordinates.get(i).si());
        }
        return ProfileLine.of(x, y);
    }

    private static Map<String, Quantity> polygon(Inputs in) {
        SlopeSection section =
                SlopeSection.of(
                                line(in.quantities("ground")),
                                Soil.of(
                                        "ground",
                                        in.si("weight"),
                                        in.si("cohesion"),
                                        in.si("friction")))
                        .withEarthquake(or(in, "level", 0, "").si(), 0);
        if (in.has("anchor")) {
            List<Quantity> at = in.quantities("anchor at");
            section =
                    section.withAnchor(
                            new SectionAnchor(
                                    at.get(0).si(),
                                    at.get(1).si(),
                                    in.si("plunge"),
                                    in.si("anchor"),
                                    1000,
                                    1,
                                    AnchorConvention.valueOf(in.text("convention"))));
        }
        if (in.has("crack water")) {
            section = section.withTensionCrack(in.si("crack"), in.si("crack water"));
        }
        return Map.of(
                "factor",
                Quantity.of(
                        SliceAnalysis.of(
                                        section,
                                        new SlipPolygon(line(in.quantities("surface"))),
                                        40)
                                .factor(SliceMethod.valueOf(in.text("method")))
                                .factor()));
    }

    private static Map<String, Quantity> yieldOfCircle(Inputs in) {
        List<Quantity> circle = in.quantities("circle");
        return Map.of(
                "yield coefficient",
                Quantity.of(
                        YieldCoefficient.of(
                                SlopeSection.of(
                                        line(in.quantities("ground")),
                                        Soil.of(
                                                "ground",
                                                in.si("weight"),
                                                in.si("cohesion"),
                                                in.si("friction"))),
                                new SlipCircle(
                                        circle.get(0).si(), circle.get(1).si(), circle.get(2).si()),
                                SliceMethod.valueOf(in.text("method")),
                                (int) in.si("slices"))));
    }

    /** Waves of a sine, half a one where "cycles" is 0.5, or a rectangle, then rest. */
    private static Map<String, Quantity> newmark(Inputs in) {
        Quantity g = Quantity.of(9.81, "m/s²");
        double peak = in.si("peak");
        double period = in.si("period");
        double end = in.si("cycles") * period;
        int steps = 20_000;
        List<Quantity> times = new ArrayList<>();
        List<Quantity> accelerations = new ArrayList<>();
        for (int i = 0; i <= steps; i++) {
            double t = end * i / steps;
            times.add(Quantity.of(t, "s"));
            accelerations.add(
                    g.times(
                            Quantity.of(
                                    in.text("wave").equals("rectangle")
                                            ? peak
                                            : peak * StrictMath.sin(2 * Math.PI * t / period))));
        }
        for (double later : new double[] {1e-9, 20}) {
            times.add(Quantity.of(end + later, "s"));
            accelerations.add(g.times(0));
        }
        NewmarkRoutine.Output found =
                Routines.call(
                        new NewmarkRoutine(),
                        new NewmarkRoutine.Input(
                                times, accelerations, g.times(in.quantity("yield"))));
        return Map.of(
                "displacement",
                found.displacement(),
                "sliding time",
                found.slidingTime(),
                "end",
                found.end());
    }

    private static Map<String, Quantity> pulse(Inputs in) {
        Quantity g = Quantity.of(9.81, "m/s²");
        return Map.of(
                "displacement",
                NewmarkSliding.rectangularPulse(
                        g.times(in.quantity("peak")),
                        in.quantity("duration"),
                        g.times(in.quantity("yield"))));
    }

    private static Map<String, Quantity> estimate(Inputs in) {
        Map<String, Quantity> results = new LinkedHashMap<>();
        if (in.has("ratio")) {
            Quantity ratio = in.quantity("ratio");
            results.put("Jibson", SlidingEstimate.jibson(ratio));
            results.put("Ambraseys and Menu", SlidingEstimate.ambraseysMenu(ratio));
            if (in.has("magnitude")) {
                results.put(
                        "Jibson by magnitude",
                        SlidingEstimate.jibsonWithMagnitude(ratio, in.quantity("magnitude")));
            }
        } else {
            results.put(
                    "Jibson by Arias intensity",
                    SlidingEstimate.jibsonWithArias(in.quantity("Arias"), in.quantity("yield")));
        }
        return results;
    }

    private static Map<String, Quantity> partial(Inputs in) {
        if (in.has("set")) {
            PartialFactors set =
                    switch (in.text("set")) {
                        case "strength" -> PartialFactors.onStrength();
                        case "resistance" -> PartialFactors.onResistance2();
                        default -> PartialFactors.none();
                    };
            return Map.of(
                    "on friction", Quantity.of(set.onFriction()),
                    "on cohesion", Quantity.of(set.onCohesion()),
                    "permanent", Quantity.of(set.onPermanent()),
                    "variable", Quantity.of(set.onVariable()),
                    "resistance", Quantity.of(set.onResistance()));
        }
        PartialFactors factors = PartialFactors.onStrength();
        return Map.of(
                "friction", factors.friction(in.quantity("friction")),
                "cohesion", factors.cohesion(in.quantity("cohesion")));
    }

    private static Map<String, Quantity> seismic(Inputs in) {
        if (in.has("height")) {
            Quantity factor =
                    SeismicCoefficient.heightFactor(
                            in.quantity("height"), in.quantity("long period"), in.quantity("peak"));
            return Map.of("height factor", factor, "mean", factor.times(in.quantity("peak")));
        }
        Quantity ground = in.quantity("ground");
        Quantity level =
                SeismicCoefficient.level(ground, in.quantity("soil"), or(in, "topography", 1, ""));
        return Map.of(
                "level", level,
                "upright", SeismicCoefficient.upright(level, in.quantity("ratio")),
                "half of peak", SeismicCoefficient.halfOfPeak(ground));
    }
}
