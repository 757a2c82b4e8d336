package org.skewback.checks;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.skewback.quantity.Quantity;
import org.skewback.quantity.Routines;
import org.skewback.slope.AnchorConvention;
import org.skewback.slope.AnchorDemand;
import org.skewback.slope.AnchorDemandRoutine;
import org.skewback.slope.CriticalCircle;
import org.skewback.slope.CriticalCircleRoutine;
import org.skewback.slope.CriticalPolygon;
import org.skewback.slope.CriticalPolygonRoutine;
import org.skewback.slope.PartialFactors;
import org.skewback.slope.SearchWindow;
import org.skewback.slope.SectionAnchor;
import org.skewback.slope.SectionForce;
import org.skewback.slope.SectionInput;
import org.skewback.slope.SliceAnalysis;
import org.skewback.slope.SliceMethod;
import org.skewback.slope.SliceResult;
import org.skewback.slope.SlicesRoutine;
import org.skewback.slope.SlipCircle;
import org.skewback.slope.SlipPolygon;
import org.skewback.slope.SlipSurface;
import org.skewback.slope.SlopeSection;
import org.skewback.slope.Soil;
import org.skewback.slope.Surcharge;

/** Checks of what loads a section of a slope, and of what is searched for in it. */
public final class SlopeSectionChecks implements Subject {

    /** Makes the subject. */
    public SlopeSectionChecks() {}

    @Override
    public String topic() {
        return "slope";
    }

    @Override
    public String table() {
        return "slope-section";
    }

    @Override
    public Map<String, Checked> routines() {
        Map<String, Checked> routines = new TreeMap<>();
        routines.put("SlicesRoutine with loads", SlopeSectionChecks::loadedRoutine);
        routines.put("SliceAnalysis with loads", SlopeSectionChecks::loaded);
        routines.put("SliceResult", SlopeSectionChecks::table);
        routines.put("CriticalCircle.search", SlopeSectionChecks::circle);
        routines.put("CriticalCircleRoutine, place", SlopeSectionChecks::circleRoutine);
        routines.put("CriticalPolygon.search", SlopeSectionChecks::polygon);
        routines.put("CriticalPolygonRoutine", SlopeSectionChecks::polygonRoutine);
        routines.put("AnchorDemand", SlopeSectionChecks::demand);
        routines.put("AnchorDemandRoutine", SlopeSectionChecks::demandRoutine);
        return routines;
    }

    /** The section of a row with its crack, surcharge, force and anchor. */
    private static SectionInput input(Inputs in) {
        SectionInput section = SlopeChecks.section(in);
        if (in.has("crack")) {
            List<Quantity> crack = in.quantities("crack");
            section = section.crack(crack.get(0), crack.get(1));
        }
        if (in.has("surcharge")) {
            List<Quantity> ends = in.quantities("surcharge ends");
            section = section.surcharge(ends.get(0), ends.get(1), in.quantity("surcharge"));
        }
        if (in.has("force")) {
            List<Quantity> at = in.quantities("force at");
            List<Quantity> force = in.quantities("force");
            section = section.force(at.get(0), at.get(1), force.get(0), force.get(1));
        }
        if (in.has("anchor")) {
            List<Quantity> at = in.quantities("anchor at");
            List<Quantity> lengths = in.quantities("lengths");
            section =
                    section.anchor(
                            at.get(0),
                            at.get(1),
                            in.quantity("plunge"),
                            in.quantity("anchor"),
                            lengths.get(0),
                            lengths.get(1));
        }
        if (in.has("convention")) {
            section =
                    AnchorConvention.valueOf(in.text("convention")) == AnchorConvention.PASSIVE
                            ? section.passive()
                            : section;
        }
        return section;
    }

    private static SliceMethod method(Inputs in) {
        return SliceMethod.valueOf(in.text("method"));
    }

    private static Map<String, Quantity> loadedRoutine(Inputs in) {
        SlicesRoutine.Output found =
                Routines.call(
                        new SlicesRoutine(),
                        input(in).at(in.quantities("circle"), method(in), (int) in.si("slices")));
        return Map.of("factor", found.factor());
    }

    /** The same without the routine around it. */
    private static SlopeSection section(Inputs in) {
        Soil soil =
                Soil.of("ground", in.si("weight"), in.si("cohesion"), in.si("friction"))
                        .withPoreRatio(SlopeChecks.or(in, "pore ratio", 0, "").si());
        SlopeSection section =
                SlopeSection.of(SlopeChecks.line(in.quantities("ground")), soil)
                        .withEarthquake(
                                SlopeChecks.or(in, "level", 0, "").si(),
                                SlopeChecks.or(in, "upward", 0, "").si());
        if (in.has("crack")) {
            List<Quantity> crack = in.quantities("crack");
            section = section.withTensionCrack(crack.get(0).si(), crack.get(1).si());
        }
        if (in.has("surcharge")) {
            List<Quantity> ends = in.quantities("surcharge ends");
            section =
                    section.withSurcharge(
                            new Surcharge(ends.get(0).si(), ends.get(1).si(), in.si("surcharge")));
        }
        if (in.has("force")) {
            List<Quantity> at = in.quantities("force at");
            List<Quantity> force = in.quantities("force");
            section =
                    section.withForce(
                            new SectionForce(
                                    at.get(0).si(),
                                    at.get(1).si(),
                                    force.get(0).si(),
                                    force.get(1).si()));
        }
        if (in.has("anchor")) {
            List<Quantity> at = in.quantities("anchor at");
            List<Quantity> lengths = in.quantities("lengths");
            SectionAnchor anchor =
                    new SectionAnchor(
                            at.get(0).si(),
                            at.get(1).si(),
                            in.si("plunge"),
                            1,
                            lengths.get(0).si(),
                            lengths.get(1).si(),
                            AnchorConvention.valueOf(in.text("convention")));
            section = section.withAnchor(anchor.withForce(in.si("anchor")));
        }
        if (in.has("times")) {
            section = section.withAnchorForceTimes(in.si("times"));
        }
        if (in.has("factors")) {
            section =
                    section.with(
                            in.text("factors").equals("strength")
                                    ? PartialFactors.onStrength()
                                    : PartialFactors.none());
        }
        return section;
    }

    private static SlipSurface surface(Inputs in) {
        if (in.has("surface")) {
            return new SlipPolygon(SlopeChecks.line(in.quantities("surface")));
        }
        List<Quantity> circle = in.quantities("circle");
        return new SlipCircle(circle.get(0).si(), circle.get(1).si(), circle.get(2).si());
    }

    private static Map<String, Quantity> loaded(Inputs in) {
        SliceAnalysis analysis = SliceAnalysis.of(section(in), surface(in), (int) in.si("slices"));
        SliceResult result = analysis.factor(method(in));
        return Map.of(
                "factor", Quantity.of(result.factor()),
                "correction", Quantity.of(result.correction()),
                "crack depth", Quantity.of(analysis.crackDepth(), "m"));
    }

    /** Sums and greatest values of the slices, which do not depend on where they are cut. */
    private static Map<String, Quantity> table(Inputs in) {
        SliceResult result =
                SliceAnalysis.of(section(in), surface(in), (int) in.si("slices"))
                        .factor(method(in));
        double width = 0;
        double weight = 0;
        double moment = 0;
        double normal = 0;
        double mobilised = 0;
        double between = 0;
        double steepest = 0;
        for (SliceResult.Slice slice : result.slices()) {
            width += slice.width();
            weight += slice.weight();
            moment += slice.weight() * slice.x();
            normal += slice.effectiveNormal();
            mobilised += slice.mobilised();
            between = Math.max(between, slice.between());
            steepest = Math.max(steepest, slice.baseAngle());
        }
        Map<String, Quantity> results = new LinkedHashMap<>();
        results.put("factor", Quantity.of(result.factor()));
        results.put("lambda", Quantity.of(result.lambda()));
        results.put("width", Quantity.of(width, "m"));
        results.put("weight", Quantity.of(weight, "N/m"));
        results.put("centre of weight", Quantity.of(moment / weight, "m"));
        results.put("normal", Quantity.of(normal, "N/m"));
        results.put("mobilised", Quantity.of(mobilised, "N/m"));
        results.put("greatest between", Quantity.of(between, "N/m"));
        results.put("steepest base", Quantity.of(steepest, "rad"));
        return results;
    }

    private static SearchWindow window(Inputs in) {
        List<Quantity> ends = in.quantities("window");
        SearchWindow window =
                SearchWindow.of(
                                ends.get(0).si(),
                                ends.get(1).si(),
                                ends.get(2).si(),
                                ends.get(3).si())
                        .sliced((int) in.si("slices"));
        if (in.has("tried")) {
            List<Quantity> tried = in.quantities("tried");
            window =
                    window.tried(
                            (int) tried.get(0).si(),
                            (int) tried.get(1).si(),
                            (int) tried.get(2).si());
        }
        return window;
    }

    private static CriticalCircle search(Inputs in) {
        return CriticalCircle.search(section(in), window(in), method(in));
    }

    private static Map<String, Quantity> circle(Inputs in) {
        CriticalCircle found = search(in);
        Map<String, Quantity> results = new LinkedHashMap<>();
        results.put("factor", Quantity.of(found.factor()));
        results.put("x", Quantity.of(found.circle().x(), "m"));
        results.put("y", Quantity.of(found.circle().y(), "m"));
        results.put("radius", Quantity.of(found.circle().radius(), "m"));
        results.put("left", Quantity.of(found.left(), "m"));
        results.put("right", Quantity.of(found.right(), "m"));
        results.put(
                "factor again",
                Quantity.of(found.analysis(section(in)).factor(found.method()).factor()));
        return results;
    }

    private static Map<String, Quantity> circleRoutine(Inputs in) {
        CriticalCircleRoutine.Output found =
                Routines.call(
                        new CriticalCircleRoutine(),
                        input(in).at(in.quantities("window"), method(in), (int) in.si("slices")));
        Map<String, Quantity> results = new LinkedHashMap<>();
        results.put("factor", found.factor());
        results.put("x", found.x());
        results.put("y", found.y());
        results.put("radius", found.radius());
        results.put("left", found.left());
        results.put("right", found.right());
        return results;
    }

    private static Map<String, Quantity> polygon(Inputs in) {
        CriticalPolygon found =
                CriticalPolygon.search(
                        section(in),
                        search(in),
                        method(in),
                        (int) in.si("corners"),
                        (int) in.si("slices"));
        return Map.of("factor", Quantity.of(found.factor()));
    }

    private static Map<String, Quantity> polygonRoutine(Inputs in) {
        CriticalPolygonRoutine.Output found =
                Routines.call(
                        new CriticalPolygonRoutine(),
                        input(in).at(in.quantities("window"), method(in), (int) in.si("slices")));
        Map<String, Quantity> results = new LinkedHashMap<>();
        results.put("factor", found.factor());
        results.put("circle factor", found.circleFactor());
        results.put("left", found.x().get(0));
        results.put("right", found.x().get(found.x().size() - 1));
        results.put("lower end", found.y().get(0));
        results.put("upper end", found.y().get(found.y().size() - 1));
        return results;
    }

    private static Map<String, Quantity> demand(Inputs in) {
        AnchorDemand found = AnchorDemand.of(section(in), window(in), method(in), in.si("wanted"));
        AnchorDemand.Reach reach = found.reaches().get(0);
        Map<String, Quantity> results = new LinkedHashMap<>();
        results.put("multiplier", Quantity.of(found.multiplier()));
        results.put("factor", Quantity.of(found.critical().factor()));
        results.put("radius", Quantity.of(found.critical().circle().radius(), "m"));
        results.put("crossing", Quantity.of(reach.crossing(), "m"));
        results.put("bond behind", Quantity.of(reach.bondBehind() ? 1 : 0));
        return results;
    }

    private static Map<String, Quantity> demandRoutine(Inputs in) {
        AnchorDemandRoutine.Output found =
                Routines.call(
                        new AnchorDemandRoutine(),
                        input(in)
                                .at(in.quantities("window"), method(in), (int) in.si("slices"))
                                .wanted(in.quantity("wanted")));
        Map<String, Quantity> results = new LinkedHashMap<>();
        results.put("multiplier", found.multiplier());
        results.put("factor", found.factor());
        results.put("x", found.x());
        results.put("y", found.y());
        results.put("radius", found.radius());
        results.put("bonds behind", found.bondsBehind());
        return results;
    }
}
