package org.skewback.checks;

import java.util.List;
import java.util.Map;
import org.skewback.frame.BeamColumn;
import org.skewback.frame.FrameModel;
import org.skewback.frame.SectionForces;
import org.skewback.frame.Vector;
import org.skewback.quantity.Quantity;

/** What checks of frames in three dimensions share. */
final class InSpace {

    private InSpace() {}

    /** Three inputs as a vector in SI base units. */
    static Vector vector(Inputs in, String name) {
        List<Quantity> three = in.quantities(name);
        return new Vector(three.get(0).si(), three.get(1).si(), three.get(2).si());
    }

    /** A member from A, where it is fixed, to B. */
    static FrameModel cantilever(Vector end, BeamColumn member) {
        return FrameModel.builder()
                .node("A", 0, 0, 0)
                .node("B", end.x(), end.y(), end.z())
                .add(member)
                .fix("A")
                .build();
    }

    /** Puts all six forces of a section among results, each named with what stands before. */
    static void putAll(Map<String, Quantity> results, String where, SectionForces forces) {
        results.put(where + "axial", Quantity.of(forces.axial(), "N"));
        results.put(where + "shear y", Quantity.of(forces.shearY(), "N"));
        results.put(where + "shear z", Quantity.of(forces.shearZ(), "N"));
        results.put(where + "torque", Quantity.of(forces.torque(), "N·m"));
        results.put(where + "moment y", Quantity.of(forces.momentY(), "N·m"));
        results.put(where + "moment z", Quantity.of(forces.momentZ(), "N·m"));
    }
}
