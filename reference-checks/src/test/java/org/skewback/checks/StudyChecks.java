package org.skewback.checks;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.skewback.quantity.Quantity;
import org.skewback.quantity.Source;
import org.skewback.sheet.Check;
import org.skewback.study.DesignPoint;
import org.skewback.study.Distribution;
import org.skewback.study.FirstOrderSecondMoment;
import org.skewback.study.Reliability;
import org.skewback.study.ReliabilityIndex;
import org.skewback.study.Sampling;
import org.skewback.study.Sensitivity;
import org.skewback.study.Simulation;
import org.skewback.study.SolveFor;
import org.skewback.study.Uncertainty;
import org.skewback.study.WhatIf;

/** Checks of {@code org.skewback.study}. */
public final class StudyChecks implements Subject {

    /** Makes the subject. */
    public StudyChecks() {}

    @Override
    public String topic() {
        return "study";
    }

    @Override
    public Map<String, Checked> routines() {
        Map<String, Checked> routines = new TreeMap<>();
        routines.put("ReliabilityIndex.lognormal", StudyChecks::lognormalFactor);
        routines.put("ReliabilityIndex.normal", StudyChecks::normalFactor);
        routines.put("ReliabilityIndex.normalMargin", StudyChecks::normalMargin);
        routines.put("ReliabilityIndex.lognormalMargin", StudyChecks::lognormalMargin);
        routines.put("Distribution", StudyChecks::distribution);
        routines.put("Reliability.firstOrderSecondMoment", StudyChecks::moments);
        routines.put("Reliability.designPoint", StudyChecks::designPoint);
        routines.put("Reliability.simulate", StudyChecks::simulate);
        routines.put("Sensitivity", StudyChecks::sensitivity);
        routines.put("SolveFor", StudyChecks::solveFor);
        routines.put("WhatIf", StudyChecks::whatIf);
        return routines;
    }

    private static Map<String, Quantity> indexed(Quantity index) {
        return Map.of(
                "index",
                index,
                "probability",
                Quantity.of(ReliabilityIndex.probability(index.si())));
    }

    private static Map<String, Quantity> lognormalFactor(Inputs in) {
        return indexed(ReliabilityIndex.lognormal(in.quantity("factor"), in.quantity("variation")));
    }

    private static Map<String, Quantity> normalFactor(Inputs in) {
        return indexed(ReliabilityIndex.normal(in.quantity("factor"), in.quantity("variation")));
    }

    private static Map<String, Quantity> normalMargin(Inputs in) {
        return indexed(
                ReliabilityIndex.normalMargin(
                        in.quantity("resistance"),
                        in.quantity("its deviation"),
                        in.quantity("effect"),
                        in.quantity("effect deviation")));
    }

    private static Map<String, Quantity> lognormalMargin(Inputs in) {
        return indexed(
                ReliabilityIndex.lognormalMargin(
                        in.quantity("resistance"),
                        in.quantity("its variation"),
                        in.quantity("effect"),
                        in.quantity("effect variation")));
    }

    /** The first word names the distribution, the numbers after it are its parameters in order. */
    private static Distribution spread(Inputs in, String name) {
        List<Quantity> p = in.quantities(name);
        return switch (in.text(name + " is")) {
            case "normal" -> Distribution.normal(p.get(0), p.get(1));
            case "lognormal" ->
                    Distribution.lognormal(p.get(0), Quantity.of(in.quantity(name + " V").si()));
            case "truncated normal" ->
                    Distribution.truncatedNormal(p.get(0), p.get(1), p.get(2), p.get(3));
            case "truncated exponential" ->
                    Distribution.truncatedExponential(p.get(0), p.get(1), p.get(2));
            case "triangular" -> Distribution.triangular(p.get(0), p.get(1), p.get(2));
            case "Gumbel" -> Distribution.gumbel(p.get(0), p.get(1));
            default -> throw new IllegalArgumentException("there is no such distribution");
        };
    }

    private static Map<String, Quantity> distribution(Inputs in) {
        Distribution x = spread(in, "x");
        Map<String, Quantity> results = new LinkedHashMap<>();
        results.put("mean", x.mean());
        results.put("standard deviation", x.standardDeviation());
        if (in.has("p")) {
            results.put("inverse", x.inverse(in.si("p")));
        }
        return results;
    }

    private static Quantity given(String symbol, Quantity value) {
        String unit = value.unit().symbol();
        return Quantity.given(
                symbol, value.in(unit), unit, "", Source.assumption("a reference check"));
    }

    /**
     * A block on a plane behind a vertical crack: formulas of E. Hoek and J. W. Bray, Rock Slope
     * Engineering (1981).
     */
    private static Quantity factor(
            Inputs in,
            Quantity crack,
            Quantity cohesion,
            Quantity slope,
            Quantity depth,
            Quantity shaking) {
        Quantity height = in.quantity("height");
        Quantity plane = in.quantity("plane");
        Quantity face = in.quantity("face");
        Quantity waterWeight = in.quantity("water weight");
        Quantity one = Quantity.of(1);
        Quantity area = height.minus(crack).over(plane.sin());
        Quantity uplift = waterWeight.times(depth).times(area).over(2);
        Quantity push = waterWeight.times(depth.squared()).over(2);
        Quantity shape =
                one.minus(crack.over(height).squared())
                        .over(plane.tan())
                        .minus(one.over(face.tan()));
        Quantity block = in.quantity("weight").times(height.squared()).over(2).times(shape);
        Quantity normal =
                block.times(plane.cos().minus(shaking.times(plane.sin())))
                        .minus(uplift)
                        .minus(push.times(plane.sin()));
        Quantity driving =
                block.times(plane.sin().plus(shaking.times(plane.cos())))
                        .plus(push.times(plane.cos()));
        return cohesion.times(area).plus(normal.times(slope)).over(driving);
    }

    /** Depth of a vertical crack that stands a distance behind the crest of the face. */
    private static Quantity crackDepth(Inputs in) {
        Quantity height = in.quantity("height");
        Quantity across =
                in.quantity("crack behind crest").plus(height.over(in.quantity("face").tan()));
        return height.minus(across.times(in.quantity("plane").tan()));
    }

    private static Check stable(Quantity factor) {
        return new Check("sliding", factor, Quantity.of(1), null);
    }

    /** Cohesion and tangent of the friction angle normal and the crack dry: a linear factor. */
    private static Reliability linear(Inputs in) {
        Quantity cohesion = given("c", in.quantities("cohesion").get(0));
        Quantity mean = in.quantity("friction").tan();
        Quantity tangent = given("t", Quantity.of(mean.si()));
        Quantity factor =
                factor(in, crackDepth(in), cohesion, tangent, Quantity.of(0, "m"), Quantity.of(0));
        Uncertainty ground =
                Uncertainty.none()
                        .with(cohesion, spread(in, "cohesion"))
                        .with(tangent, Distribution.normal(mean, in.quantity("tangent deviation")));
        return Reliability.of(
                stable(factor),
                in.has("correlation")
                        ? ground.correlated(cohesion, tangent, in.si("correlation"))
                        : ground);
    }

    private static Map<String, Quantity> moments(Inputs in) {
        FirstOrderSecondMoment found = linear(in).firstOrderSecondMoment();
        return Map.of(
                "mean",
                found.mean(),
                "standard deviation",
                found.standardDeviation(),
                "index",
                found.index(),
                "probability",
                found.probability());
    }

    private static Map<String, Quantity> designPoint(Inputs in) {
        DesignPoint found = in.has("water") ? wet(in).designPoint() : linear(in).designPoint();
        Map<String, Quantity> results = new LinkedHashMap<>();
        results.put("index", found.index());
        results.put("probability", found.probability());
        results.put("cohesion there", found.values().get(0));
        if (in.has("water")) {
            results.put("depth of water there", found.values().get(2));
        }
        return results;
    }

    /** Cohesion, friction angle and depth of water uncertain. */
    private static Reliability wet(Inputs in) {
        Quantity cohesion = given("c", in.quantities("cohesion").get(0));
        Quantity friction = given("φ", in.quantities("friction").get(0));
        Quantity water = given("z_w", in.quantities("water").get(0));
        Quantity factor =
                factor(in, crackDepth(in), cohesion, friction.tan(), water, Quantity.of(0));
        return Reliability.of(
                stable(factor),
                Uncertainty.none()
                        .with(cohesion, spread(in, "cohesion"))
                        .with(friction, spread(in, "friction"))
                        .with(water, spread(in, "water"))
                        .correlated(cohesion, friction, in.si("correlation")));
    }

    /** All five of the 60 m slope uncertain. */
    private static Reliability shaken(Inputs in) {
        Quantity cohesion = given("c", in.quantities("cohesion").get(0));
        Quantity friction = given("φ", in.quantities("friction").get(0));
        Quantity crack = given("z", in.quantities("crack").get(0));
        Quantity filling = given("i", in.quantities("filling").get(0));
        Quantity shaking = given("k", in.quantities("shaking").get(0));
        Quantity factor =
                factor(in, crack, cohesion, friction.tan(), filling.times(crack), shaking);
        return Reliability.of(
                stable(factor),
                Uncertainty.none()
                        .with(cohesion, spread(in, "cohesion"))
                        .with(friction, spread(in, "friction"))
                        .with(crack, spread(in, "crack"))
                        .with(filling, spread(in, "filling"))
                        .with(shaking, spread(in, "shaking")));
    }

    private static Map<String, Quantity> simulate(Inputs in) {
        Reliability study = in.has("shaking") ? shaken(in) : wet(in);
        Simulation found = study.simulate(Sampling.of((long) in.si("samples")));
        return Map.of(
                "mean",
                found.mean(),
                "standard deviation",
                found.standardDeviation(),
                "probability",
                found.probability());
    }

    private static Map<String, Quantity> sensitivity(Inputs in) {
        Quantity load = given("q", in.quantity("load"));
        Quantity span = given("L", in.quantity("span"));
        Quantity moment = load.times(span.squared()).over(8);
        Map<String, Quantity> results = new LinkedHashMap<>();
        for (Sensitivity.Effect effect : Sensitivity.of(moment, List.of(load, span)).effects()) {
            results.put("dM/d" + effect.given().symbol(), effect.derivative());
            results.put("change for 1 % of " + effect.given().symbol(), effect.perPercent());
        }
        return results;
    }

    private static Map<String, Quantity> solveFor(Inputs in) {
        Quantity load = given("q", in.quantity("load"));
        Quantity span = given("L", in.quantity("span"));
        Check check =
                new Check(
                        "bending",
                        load.times(span.squared()).over(8),
                        null,
                        in.quantity("resistance"));
        return Map.of(
                "span",
                SolveFor.utilisation(
                                check, in.si("utilisation"), span, span.over(100), span.times(100))
                        .value());
    }

    private static Map<String, Quantity> whatIf(Inputs in) {
        Quantity water = given("z_w", in.quantity("water"));
        Quantity factor =
                factor(
                        in,
                        crackDepth(in),
                        in.quantity("cohesion"),
                        in.quantity("friction").tan(),
                        water,
                        Quantity.of(0));
        WhatIf.Outcome outcome =
                WhatIf.of(List.of(factor), List.of())
                        .change(water, in.quantity("water then"))
                        .results()
                        .get(0);
        return Map.of("before", factor, "after", outcome.after(), "change", outcome.change());
    }
}
