package org.skewback.arch;

import org.skewback.form.Axis;
import org.skewback.form.Catenary;
import org.skewback.form.CircularArc;
import org.skewback.form.Parabola;

/** The axes that a routine can name. */
final class AxisKind {

    private AxisKind() {}

    static Axis of(String kind, double span, double rise) {
        return switch (kind) {
            case "parabola" -> new Parabola(span, rise);
            case "catenary" -> Catenary.ofRise(span, rise);
            case "circular arc" -> new CircularArc(span, rise);
            default ->
                    throw new IllegalArgumentException(
                            "kind of axis is \""
                                    + kind
                                    + "\"; allowed are parabola, catenary and circular arc.");
        };
    }

    static RibStiffness stiffness(String growth, Axis axis, double bending, double axial) {
        return switch (growth) {
            case "uniform" -> RibStiffness.uniform(bending, axial);
            case "growing" -> RibStiffness.growing(axis, bending, axial);
            default ->
                    throw new IllegalArgumentException(
                            "growth of the second moment of area is \""
                                    + growth
                                    + "\"; allowed are uniform, and growing for I = I_c sec θ.");
        };
    }
}
