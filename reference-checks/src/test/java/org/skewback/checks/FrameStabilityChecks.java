package org.skewback.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.EigenDecomposition;
import org.skewback.frame.BeamColumn;
import org.skewback.frame.Buckling;
import org.skewback.frame.BucklingAnalysis;
import org.skewback.frame.BucklingMode;
import org.skewback.frame.EndConnection;
import org.skewback.frame.FrameModel;
import org.skewback.frame.FrameModelBuilder;
import org.skewback.frame.LineLoad;
import org.skewback.frame.Load;
import org.skewback.frame.LoadAxes;
import org.skewback.frame.LoadCase;
import org.skewback.frame.Material;
import org.skewback.frame.ModeShape;
import org.skewback.frame.Motion;
import org.skewback.frame.NodalLoad;
import org.skewback.frame.Orientation;
import org.skewback.frame.Support;
import org.skewback.frame.Vector;
import org.skewback.quantity.Quantity;
import org.skewback.steel.Section;

/** Checks of the buckling of frames. */
public final class FrameStabilityChecks implements Subject {

    private static final double E = 210e9;

    /** Makes the subject. */
    public FrameStabilityChecks() {}

    @Override
    public String topic() {
        return "frame";
    }

    @Override
    public String table() {
        return "frame-stability";
    }

    @Override
    public Map<String, Checked> routines() {
        Map<String, Checked> routines = new TreeMap<>();
        routines.put("BucklingAnalysis: column", FrameStabilityChecks::column);
        routines.put("BucklingAnalysis: portal", FrameStabilityChecks::portal);
        routines.put("BucklingAnalysis: circular arch", FrameStabilityChecks::circularArch);
        routines.put("BucklingAnalysis: ring", FrameStabilityChecks::ring);
        routines.put("BucklingAnalysis: arch under dead load", FrameStabilityChecks::deadArch);
        routines.put(
                "BucklingAnalysis: arch under load even on the deformed plan",
                FrameStabilityChecks::deformedPlan);
        routines.put("BucklingAnalysis: cantilever of two members", FrameStabilityChecks::halves);
        routines.put("BucklingAnalysis: arch sideways", FrameStabilityChecks::sideways);
        routines.put("BucklingAnalysis: strip on edge", FrameStabilityChecks::strip);
        routines.put("BucklingAnalysis: twisted shaft", FrameStabilityChecks::shaft);
        routines.put("BucklingAnalysis: right angle", FrameStabilityChecks::rightAngle);
        return routines;
    }

    private static Quantity of(double value, String unit) {
        return Quantity.of(value, unit);
    }

    private static Material material() {
        return new Material("m", E, E / 2.6, 0, 0);
    }

    private static Map<String, Quantity> halves(Inputs in) {
        double length = in.si("length");
        Section section = slender(1, 1e-4);
        FrameModel model =
                FrameModel.builder()
                        .inPlane()
                        .node("A", 0, 0, 0)
                        .node("B", length / 2, 0, 0)
                        .node("C", length, 0, 0)
                        .add(BeamColumn.of("ab", "A", "B", material(), section))
                        .add(BeamColumn.of("bc", "B", "C", material(), section))
                        .fix("A")
                        .build();
        BucklingMode mode =
                BucklingAnalysis.of(model)
                        .divided(16)
                        .factors(LoadCase.of("N", NodalLoad.force("C", -1, 0, 0)), 1)
                        .governing();
        return Map.of(
                "first of the shares", of(mode.shares().get(0).share(), ""),
                "shape at three quarters over that at the end",
                        of(
                                mode.shape().along("bc", length / 4).translation().z()
                                        / mode.shape().movement("C").translation().z(),
                                ""),
                "compression over the critical force",
                        of(
                                -mode.axialForce("bc", length / 4)
                                        * length
                                        * length
                                        * 4
                                        / (Math.PI * Math.PI * E * 1e-4),
                                ""));
    }

    private static Map<String, Quantity> column(Inputs in) {
        double length = in.si("length");
        double inertia = in.si("second moment");
        double shear = in.has("shear area") ? in.si("shear area") : Double.POSITIVE_INFINITY;
        Section section = Section.of("s", 1, shear, shear, inertia, inertia, inertia);
        FrameModelBuilder builder =
                FrameModel.builder()
                        .inPlane()
                        .node("A", 0, 0, 0)
                        .node("B", length, 0, 0)
                        .add(BeamColumn.of("m", "A", "B", material(), section));
        String[] ends = in.text("ends").split(" ");
        builder.hold("A", Motion.ALONG_X, Motion.ALONG_Z);
        if (ends[0].equals("fixed")) {
            builder.hold("A", Motion.ABOUT_Y);
        }
        if (!ends[1].equals("free")) {
            builder.hold("B", Motion.ALONG_Z);
        }
        if (ends[1].equals("fixed")) {
            builder.hold("B", Motion.ABOUT_Y);
        }
        BucklingAnalysis analysis = BucklingAnalysis.of(builder.build()).divided(16);
        LoadCase unit = LoadCase.of("N", NodalLoad.force("B", -1, 0, 0));
        Buckling buckling =
                in.has("permanent force")
                        ? analysis.factors(
                                LoadCase.of(
                                        "G", NodalLoad.force("B", -in.si("permanent force"), 0, 0)),
                                unit,
                                2)
                        : analysis.factors(unit, 2);
        return Map.of(
                "critical force", of(buckling.governing().factor(), "N"),
                "second critical force", of(buckling.modes().get(1).factor(), "N"),
                "buckling length",
                        of(buckling.governing().bucklingLength("m", 0, Motion.ABOUT_Y), "m"));
    }

    private static Map<String, Quantity> portal(Inputs in) {
        double height = in.si("height");
        double width = in.si("width");
        double column = in.si("column second moment");
        double beam = in.si("beam second moment");
        FrameModelBuilder builder =
                FrameModel.builder()
                        .inPlane()
                        .node("A", 0, 0, 0)
                        .node("B", 0, 0, height)
                        .node("C", width, 0, height)
                        .node("D", width, 0, 0)
                        .add(BeamColumn.of("ab", "A", "B", material(), slender(1e4, column)))
                        .add(BeamColumn.of("bc", "B", "C", material(), slender(1e4, beam)))
                        .add(BeamColumn.of("dc", "D", "C", material(), slender(1e4, column)));
        for (String foot : List.of("A", "D")) {
            builder.hold(foot, Motion.ALONG_X, Motion.ALONG_Z);
            if (in.text("feet").equals("fixed")) {
                builder.hold(foot, Motion.ABOUT_Y);
            }
        }
        Buckling buckling =
                BucklingAnalysis.of(builder.build())
                        .divided(16)
                        .factors(
                                LoadCase.of(
                                        "P",
                                        NodalLoad.force("B", 0, 0, -1),
                                        NodalLoad.force("C", 0, 0, -1)),
                                1);
        return Map.of("critical force", of(buckling.governing().factor(), "N"));
    }

    /** A section so stiff along its axis that the rib does not shorten. */
    private static Section slender(double area, double inertia) {
        return Section.slender("s", area, inertia, inertia, inertia);
    }

    /** Angle from the crown, negative toward the start, to a place on a circle. */
    private static Vector onCircle(double radius, double angle) {
        return new Vector(radius * StrictMath.sin(angle), 0, radius * StrictMath.cos(angle));
    }

    private static FrameModelBuilder circle(
            double from, double to, int parts, Section section, List<Load> loads, double pressure) {
        FrameModelBuilder builder = FrameModel.builder();
        for (int i = 0; i <= parts; i++) {
            Vector place = onCircle(1, from + (to - from) * i / parts);
            builder.node("" + i, place.x(), place.y(), place.z());
            if (i > 0) {
                Vector outward = onCircle(1, from + (to - from) * (i - 0.5) / parts);
                builder.add(
                        BeamColumn.of("m" + i, "" + (i - 1), "" + i, material(), section)
                                .oriented(new Orientation(outward, 0)));
                loads.add(LineLoad.uniform("m" + i, new Vector(0, 0, -pressure), LoadAxes.LOCAL));
            }
        }
        return builder;
    }

    private static BucklingAnalysis analysis(FrameModel model, String load) {
        BucklingAnalysis analysis = BucklingAnalysis.of(model).divided(1);
        return switch (load) {
            case "following pressure" -> analysis.withFollowingPressure();
            case "load of constant direction" -> analysis;
            default -> throw new IllegalArgumentException("load is \"" + load + "\".");
        };
    }

    private static Map<String, Quantity> circularArch(Inputs in) {
        double half = in.si("half angle");
        int parts = 200;
        List<Load> loads = new ArrayList<>();
        FrameModelBuilder builder =
                circle(-half, half, parts, slender(1, 1e-8), loads, E * 1e-8).inPlane();
        for (String end : List.of("0", "" + parts)) {
            builder.hold(end, Motion.ALONG_X, Motion.ALONG_Z);
            if (in.text("springings").equals("fixed")) {
                builder.hold(end, Motion.ABOUT_Y);
            }
        }
        Buckling buckling =
                analysis(builder.build(), in.text("load")).factors(new LoadCase("q", loads), 1);
        return Map.of("q R³/EI", of(buckling.governing().factor(), ""));
    }

    private static Map<String, Quantity> ring(Inputs in) {
        String load = in.text("load");
        Buckling buckling = ring(load, 0);
        if (load.equals("pull to the centre")) {
            // The load that turns grows as the ring is found to bear more: by a ninth of it.
            for (int round = 0; round < 12; round++) {
                buckling = ring("load of constant direction", buckling.governing().factor());
            }
        }
        return Map.of(
                "q R³/EI", of(buckling.governing().factor(), ""),
                "second q R³/EI", of(buckling.modes().get(1).factor(), ""));
    }

    /**
     * A quarter of a ring, held by its symmetry.
     *
     * @param load how the load turns
     * @param turning share of a load qR³/EI that turns to the centre: where the ring has moved along itself
     *     by v it pulls back by qv/R, as a spring does
     */
    private static Buckling ring(String load, double turning) {
        int parts = 100;
        double angle = Math.PI / 2 / parts;
        List<Load> loads = new ArrayList<>();
        FrameModelBuilder builder =
                circle(0, Math.PI / 2, parts, slender(1e-2, 1e-8), loads, E * 1e-8)
                        .inPlane()
                        .hold("0", Motion.ALONG_X, Motion.ABOUT_Y)
                        .hold("" + parts, Motion.ALONG_Z, Motion.ABOUT_Y);
        for (int i = 1; i < parts && turning > 0; i++) {
            Vector along = onCircle(1, i * angle + Math.PI / 2);
            builder.support(new Support("" + i, false, along, turning * E * 1e-8 * angle));
        }
        String kept = load.equals("pull to the centre") ? "load of constant direction" : load;
        return analysis(builder.build(), kept).factors(new LoadCase("q", loads), 2);
    }

    /** An arch of span 1 and EI = 1e-8 E, in straight members, and its load. */
    private record Arch(FrameModel model, LoadCase load, double halfArc) {

        private static final int PARTS = 200;

        static Arch of(Inputs in) {
            double rise = in.si("rise to span");
            String axis = in.text("axis");
            double parameter = axis.equals("catenary") ? catenary(rise) : 0;
            DoubleUnaryOperator height =
                    x ->
                            parameter == 0
                                    ? rise * (1 - 4 * x * x)
                                    : rise + parameter - parameter * StrictMath.cosh(x / parameter);
            String hinges = in.text("hinges");
            boolean crown = hinges.equals("three") || hinges.equals("crown");
            Section section = slender(1, 1e-8);
            FrameModelBuilder builder = FrameModel.builder().inPlane();
            List<Load> loads = new ArrayList<>();
            double half = 0;
            for (int i = 0; i <= PARTS; i++) {
                double x = (double) i / PARTS - 0.5;
                builder.node("" + i, x, 0, height.applyAsDouble(x));
                if (i == 0) {
                    continue;
                }
                BeamColumn part = BeamColumn.of("m" + i, "" + (i - 1), "" + i, material(), section);
                builder.add(
                        crown && i == PARTS / 2
                                ? part.connected(
                                        EndConnection.RIGID,
                                        EndConnection.RIGID.released(Motion.ABOUT_Y))
                                : part);
                loads.add(
                        LineLoad.uniform(
                                "m" + i,
                                new Vector(0, 0, -E * 1e-8),
                                parameter == 0 ? LoadAxes.PROJECTED : LoadAxes.GLOBAL));
                double before = height.applyAsDouble(x - 1.0 / PARTS);
                half += Math.hypot(1.0 / PARTS, height.applyAsDouble(x) - before) / 2;
            }
            for (String end : List.of("0", "" + PARTS)) {
                builder.hold(end, Motion.ALONG_X, Motion.ALONG_Z);
                if (hinges.equals("none") || hinges.equals("crown")) {
                    builder.hold(end, Motion.ABOUT_Y);
                }
            }
            return new Arch(builder.build(), new LoadCase("q", loads), half);
        }

        Buckling factors(int count) {
            return BucklingAnalysis.of(model).divided(1).factors(load, count);
        }
    }

    private static Map<String, Quantity> deadArch(Inputs in) {
        Arch arch = Arch.of(in);
        Buckling buckling = arch.factors(1);
        double factor = buckling.governing().factor();
        Map<String, Quantity> results = new TreeMap<>();
        results.put("q L³/EI", of(factor, ""));
        results.put("H L²/EI", of(factor / (8 * in.si("rise to span")), ""));
        results.put(
                "buckling length over half the arc",
                of(
                        buckling.governing().bucklingLength("m1", 0, Motion.ABOUT_Y)
                                / arch.halfArc(),
                        ""));
        if (in.has("span")) {
            double span = in.si("span");
            results.put("q", of(factor * in.si("EI") / (span * span * span), "N/m"));
        }
        return results;
    }

    /**
     * The load follows the plan that lies under the deformed rib: q(1 + u′) for each metre of the undeformed
     * one. That has no potential, so its part is taken in the shapes of the load that keeps its size:
     * μ_i(λ_i − λ) a_i + λ Σ B_ij a_j = 0 with μ = ∫Nϑ² ds and B_ij = ∫u_j′ w_i dx.
     */
    private static Map<String, Quantity> deformedPlan(Inputs in) {
        int count = 24;
        int parts = Arch.PARTS;
        double rise = in.si("rise to span");
        Buckling buckling = Arch.of(in).factors(count);
        double[][] matrix = new double[count][count];
        for (int i = 0; i < count; i++) {
            ModeShape shape = buckling.modes().get(i).shape();
            double energy = 0;
            for (int m = 1; m <= parts; m++) {
                // ϑ = w′ where the axis does not stretch; N ds = H(1 + z′²)dx.
                double slope = 8 * rise * (0.5 - (m - 0.5) / parts);
                double turn = (at(shape, m).z() - at(shape, m - 1).z()) * parts;
                energy += (1 + slope * slope) * turn * turn / (8 * rise * parts);
            }
            for (int j = 0; j < count; j++) {
                ModeShape other = buckling.modes().get(j).shape();
                double work = 0;
                for (int m = 1; m <= parts; m++) {
                    double longer = at(other, m).x() - at(other, m - 1).x();
                    work += longer * (at(shape, m).z() + at(shape, m - 1).z()) / 2;
                }
                matrix[i][j] =
                        ((i == j ? 1 : 0) - work / energy) / buckling.modes().get(i).factor();
            }
        }
        double largest = 0;
        EigenDecomposition values = new EigenDecomposition(new Array2DRowRealMatrix(matrix));
        for (int i = 0; i < count; i++) {
            if (Math.abs(values.getImagEigenvalue(i)) < 1e-12) {
                largest = Math.max(largest, values.getRealEigenvalue(i));
            }
        }
        return Map.of("q L³/EI", of(1 / largest, ""));
    }

    private static Vector at(ModeShape shape, int node) {
        return shape.movement("" + node).translation();
    }

    /** a with a(cosh(1/2a) − 1) equal to the rise, for a span of 1. */
    private static double catenary(double rise) {
        double low = 0.05;
        double high = 1 / rise;
        for (int i = 0; i < 200; i++) {
            double a = (low + high) / 2;
            if (a * (StrictMath.cosh(0.5 / a) - 1) > rise) {
                low = a;
            } else {
                high = a;
            }
        }
        return low;
    }

    private static Map<String, Quantity> sideways(Inputs in) {
        double half = in.si("opening") / 2;
        double ratio = in.si("EI over GJ");
        int parts = 120;
        double inertia = 1e-8;
        // Stiff in its plane, so that it buckles out of it.
        Section section = Section.slender("s", 1, 2.6 * inertia / ratio, 1e3 * inertia, inertia);
        List<Load> loads = new ArrayList<>();
        FrameModelBuilder builder = circle(-half, half, parts, section, loads, E * inertia);
        for (int end = 0; end < 2; end++) {
            String node = end == 0 ? "0" : "" + parts;
            double angle = end == 0 ? -half : half;
            builder.pin(node);
            builder.support(
                    Support.about(
                            node, new Vector(StrictMath.cos(angle), 0, -StrictMath.sin(angle))));
        }
        Buckling buckling =
                BucklingAnalysis.of(builder.build())
                        .divided(1)
                        .factors(new LoadCase("q", loads), 1);
        return Map.of("q R³/EI", of(buckling.governing().factor(), ""));
    }

    private static Map<String, Quantity> strip(Inputs in) {
        double lateral = 1e-8;
        // The same strip, its section's axes named the other way round and turned back.
        boolean aside = in.has("strong axis") && in.text("strong axis").equals("z");
        Section section =
                aside
                        ? Section.slender("s", 1, 2.6 * lateral, lateral, 1e4 * lateral)
                        : Section.slender("s", 1, 2.6 * lateral, 1e4 * lateral, lateral);
        Orientation turned = new Orientation(Vector.Z, aside ? Math.PI / 2 : 0);
        String load = in.text("load");
        int parts = 40;
        FrameModelBuilder builder = FrameModel.builder();
        List<Load> loads = new ArrayList<>();
        for (int i = 0; i <= parts; i++) {
            builder.node("" + i, (double) i / parts, 0, 0);
            if (i > 0) {
                builder.add(
                        BeamColumn.of("m" + i, "" + (i - 1), "" + i, material(), section)
                                .oriented(turned));
            }
        }
        double unit = E * lateral;
        if (in.text("supports").equals("clamped at one end")) {
            builder.fix("0");
        } else {
            builder.pin("0").hold("0", Motion.ABOUT_X);
            builder.hold("" + parts, Motion.ALONG_Y, Motion.ALONG_Z, Motion.ABOUT_X);
        }
        switch (load) {
            case "end moments" -> {
                loads.add(NodalLoad.moment("0", 0, -unit, 0));
                loads.add(NodalLoad.moment("" + parts, 0, unit, 0));
            }
            case "force at the free end" -> loads.add(NodalLoad.force("" + parts, 0, 0, -unit));
            case "force in the middle" -> loads.add(NodalLoad.force("" + parts / 2, 0, 0, -unit));
            case "uniform" -> {
                for (int i = 1; i <= parts; i++) {
                    loads.add(LineLoad.uniform("m" + i, new Vector(0, 0, -unit), LoadAxes.GLOBAL));
                }
            }
            default -> throw new IllegalArgumentException("load is \"" + load + "\".");
        }
        Buckling buckling =
                BucklingAnalysis.of(builder.build())
                        .divided(1)
                        .factors(new LoadCase("q", loads), 1);
        return Map.of("factor", of(buckling.governing().factor(), ""));
    }

    private static Map<String, Quantity> shaft(Inputs in) {
        Section section = slender(1e-2, 1e-8);
        FrameModel model =
                FrameModel.builder()
                        .node("A", 0, 0, 0)
                        .node("B", in.si("length"), 0, 0)
                        .add(BeamColumn.of("m", "A", "B", material(), section))
                        .fix("A")
                        .hold("B", Motion.ALONG_Y, Motion.ALONG_Z)
                        .hold("B", Motion.ABOUT_Y, Motion.ABOUT_Z)
                        .build();
        Buckling buckling =
                BucklingAnalysis.of(model)
                        .divided(40)
                        .factors(LoadCase.of("T", NodalLoad.moment("B", E * 1e-8, 0, 0)), 1);
        return Map.of("T L/EI", of(buckling.governing().factor() * in.si("length"), ""));
    }

    private static Map<String, Quantity> rightAngle(Inputs in) {
        double length = in.si("leg");
        double height = in.si("height");
        double width = in.si("width");
        double e = in.si("young modulus");
        double g = in.si("shear modulus");
        double a = height * width;
        double torsion = height * width * width * width / 3;
        double strong = width * height * height * height / 12;
        double weak = height * width * width * width / 12;
        boolean aside = in.has("strong axis") && in.text("strong axis").equals("z");
        Section section =
                aside
                        ? Section.slender("s", a, torsion, weak, strong)
                        : Section.slender("s", a, torsion, strong, weak);
        // The height of the strip lies in the plane of the legs.
        Orientation turned = new Orientation(Vector.Y, aside ? 0 : Math.PI / 2);
        Material material = new Material("m", e, g, 0, 0);
        FrameModel model =
                FrameModel.builder()
                        .node("A", 0, 0, 0)
                        .node("B", 0, 0, length)
                        .node("C", length, 0, length)
                        .add(BeamColumn.of("ab", "A", "B", material, section).oriented(turned))
                        .add(BeamColumn.of("bc", "B", "C", material, section).oriented(turned))
                        .fix("A")
                        .build();
        Vector force =
                switch (in.text("load")) {
                    case "upward" -> Vector.Z;
                    case "downward" -> Vector.Z.times(-1);
                    default ->
                            throw new IllegalArgumentException(
                                    "load is \"" + in.text("load") + "\".");
                };
        Buckling buckling =
                BucklingAnalysis.of(model)
                        .divided(40)
                        .factors(
                                LoadCase.of("P", NodalLoad.force("C", force.x(), 0, force.z())), 1);
        return Map.of("critical force", of(buckling.governing().factor(), "N"));
    }
}
