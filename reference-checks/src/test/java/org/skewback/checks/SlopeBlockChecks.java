package org.skewback.checks;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.skewback.quantity.Quantity;
import org.skewback.slope.AnchorConvention;
import org.skewback.slope.KinematicTest;
import org.skewback.slope.NewmarkSliding;
import org.skewback.slope.Orientation;
import org.skewback.slope.SpaceForce;
import org.skewback.slope.TopplingSlope;
import org.skewback.slope.WedgeJoint;
import org.skewback.slope.WedgeLoads;
import org.skewback.slope.WedgeShape;
import org.skewback.slope.WedgeSlide;
import org.skewback.slope.WedgeWater;

/** Checks of wedges with tension cracks and loads, and of toppling blocks with water. */
public final class SlopeBlockChecks implements Subject {

    /** Makes the subject. */
    public SlopeBlockChecks() {}

    @Override
    public String topic() {
        return "slope";
    }

    @Override
    public String table() {
        return "slope-block";
    }

    @Override
    public Map<String, Checked> routines() {
        Map<String, Checked> routines = new TreeMap<>();
        routines.put("WedgeShape", SlopeBlockChecks::shape);
        routines.put("WedgeSlide", SlopeBlockChecks::slide);
        routines.put("TopplingSlope with water", SlopeBlockChecks::toppling);
        routines.put("KinematicTest", SlopeBlockChecks::kinematic);
        routines.put("NewmarkSliding of a table", SlopeBlockChecks::newmark);
        return routines;
    }

    private static WedgeShape shapeOf(Inputs in) {
        List<Quantity> b = in.quantities("B");
        Orientation a = SlopeChecks.orientation(in, "A");
        Orientation jointB = Orientation.ofDegrees(b.get(0).in("°"), b.get(1).in("°"));
        Orientation face = SlopeChecks.orientation(in, "face");
        Orientation upper = SlopeChecks.orientation(in, "upper");
        WedgeShape shape =
                in.has("crest height")
                        ? WedgeShape.ofCrestHeight(a, jointB, face, upper, in.si("crest height"))
                        : WedgeShape.ofTotalHeight(a, jointB, face, upper, in.si("height"));
        return in.has("crack")
                ? shape.withTensionCrack(
                        SlopeChecks.orientation(in, "crack"), in.si("behind crest"))
                : shape;
    }

    private static Map<String, Quantity> shape(Inputs in) {
        WedgeShape shape = shapeOf(in);
        Map<String, Quantity> results = new LinkedHashMap<>();
        results.put("volume", Quantity.of(shape.volume(), "m³"));
        results.put("area A", Quantity.of(shape.areaA(), "m²"));
        results.put("area B", Quantity.of(shape.areaB(), "m²"));
        results.put("crack area", Quantity.of(shape.crackArea(), "m²"));
        results.put("crack depth", Quantity.of(shape.crackDepth(), "m"));
        results.put("total height", Quantity.of(shape.totalHeight(), "m"));
        results.put("plunge", Quantity.of(shape.plunge(), "rad"));
        results.put("trend", Quantity.of(shape.trend(), "rad"));
        // The upper slope's corners, whose greatest level is the top of the wedge.
        results.put(
                "top",
                Quantity.of(
                        shape.corners(3).stream().mapToDouble(corner -> corner[2]).max().orElse(0),
                        "m"));
        return results;
    }

    private static Map<String, Quantity> slide(Inputs in) {
        List<Quantity> b = in.quantities("B");
        List<Quantity> cohesion = in.quantities("cohesion");
        List<Quantity> friction = in.quantities("friction");
        WedgeShape shape = shapeOf(in);
        WedgeLoads loads =
                WedgeLoads.of(
                        shape,
                        new WedgeJoint(
                                SlopeChecks.orientation(in, "A"),
                                cohesion.get(0).si(),
                                friction.get(0).si()),
                        new WedgeJoint(
                                Orientation.ofDegrees(b.get(0).in("°"), b.get(1).in("°")),
                                cohesion.get(1).si(),
                                friction.get(1).si()),
                        in.si("weight"));
        Map<String, Quantity> results = new LinkedHashMap<>();
        if (in.has("water weight")) {
            WedgeWater water = WedgeWater.full(shape, in.si("water weight"));
            loads = loads.withWater(water);
            results.put("pressure on A", Quantity.of(water.onA(), "Pa"));
            results.put("pressure on B", Quantity.of(water.onB(), "Pa"));
            results.put("pressure in crack", Quantity.of(water.inCrack(), "Pa"));
        }
        if (in.has("level")) {
            loads = loads.withEarthquake(in.si("level"), in.si("toward"), in.si("upward"));
        }
        if (in.has("anchor")) {
            loads =
                    loads.withAnchor(
                            SpaceForce.of(
                                    in.si("anchor"), in.si("anchor trend"), in.si("anchor plunge")),
                            AnchorConvention.valueOf(in.text("convention")));
        }
        if (in.has("force")) {
            loads =
                    loads.withForce(
                            SpaceForce.of(
                                    in.si("force"), in.si("force trend"), in.si("force plunge")));
        }
        WedgeSlide slide = WedgeSlide.of(loads);
        if (in.has("contact")) {
            boolean found = slide.contact() == WedgeSlide.Contact.valueOf(in.text("contact"));
            results.put("contact as told", Quantity.of(found ? 1 : 0));
        }
        results.put("factor", Quantity.of(slide.factor()));
        results.put("normal A", Quantity.of(slide.normalA(), "N"));
        results.put("normal B", Quantity.of(slide.normalB(), "N"));
        results.put("driving", Quantity.of(slide.driving(), "N"));
        results.put("trend", Quantity.of(slide.trend(), "rad"));
        results.put("plunge", Quantity.of(slide.plunge(), "rad"));
        results.put("weight", Quantity.of(slide.weight(), "N"));
        return results;
    }

    private static Map<String, Quantity> toppling(Inputs in) {
        double friction = StrictMath.atan(in.si("tangent"));
        List<Quantity> water = in.quantities("water");
        TopplingSlope.Forces forces =
                TopplingSlope.regular(
                                in.si("width"),
                                in.si("base dip"),
                                in.si("weight"),
                                (int) in.si("crest"),
                                water.size(),
                                in.si("face step"),
                                in.si("upper step"),
                                in.si("base step"))
                        .withWater(water.stream().map(Quantity::si).toList())
                        .forces(friction, friction);
        Map<String, Quantity> results = new LinkedHashMap<>();
        for (TopplingSlope.Block block : forces.blocks()) {
            results.put("P " + (block.number() - 1), Quantity.of(block.passedOn(), "N/m"));
            results.put("R " + block.number(), Quantity.of(block.normal(), "N/m"));
            results.put("S " + block.number(), Quantity.of(block.shear(), "N/m"));
        }
        results.put("needed", Quantity.of(forces.needed(), "N/m"));
        return results;
    }

    private static Map<String, Quantity> kinematic(Inputs in) {
        Orientation face = SlopeChecks.orientation(in, "face");
        double friction = in.si("friction");
        KinematicTest test =
                switch (in.text("mode")) {
                    case "planar" ->
                            KinematicTest.planar(
                                    SlopeChecks.orientation(in, "joint"),
                                    face,
                                    friction,
                                    in.si("spread"));
                    case "toppling" ->
                            KinematicTest.toppling(
                                    SlopeChecks.orientation(in, "joint"),
                                    face,
                                    friction,
                                    in.si("spread"));
                    default ->
                            KinematicTest.wedge(
                                    SlopeChecks.orientation(in, "A"),
                                    SlopeChecks.orientation(in, "B"),
                                    face,
                                    friction);
                };
        return Map.of("possible", Quantity.of(test.possible() ? 1 : 0));
    }

    private static Map<String, Quantity> newmark(Inputs in) {
        NewmarkSliding sliding =
                NewmarkSliding.of(Tables.of(in, "time", "acceleration"), in.si("yield"));
        return Map.of(
                "displacement",
                Quantity.of(sliding.displacement(), "m"),
                "end of path",
                Quantity.of(sliding.path().get(sliding.path().size() - 1), "m"));
    }
}
