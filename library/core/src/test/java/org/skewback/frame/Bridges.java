package org.skewback.frame;

import java.util.ArrayList;
import java.util.List;
import org.skewback.steel.Box;
import org.skewback.steel.Section;
import org.skewback.steel.Tube;

/** Structures to try things on: an arch bridge of two ribs with columns and a deck. */
final class Bridges {

    static final Material STEEL = Material.steel();
    static final Section RIB = new Box(1.2, 1.4, 0.04, 0.04).section("rib");
    static final Section COLUMN = new Tube(0.8, 0.02).section("column");
    static final Section DECK = new Box(1.0, 2.0, 0.02, 0.03).section("deck");

    private Bridges() {}

    static FrameModel arch(int panels) {
        return arch(panels, 1);
    }

    /** An arch bridge; the deck of each panel is divided further. */
    static FrameModel arch(int panels, int parts) {
        FrameModelBuilder b = FrameModel.builder();
        double span = 120;
        double rise = 30;
        for (int side = 0; side < 2; side++) {
            double y = side == 0 ? -4 : 4;
            for (int i = 0; i <= panels; i++) {
                double x = span * i / panels;
                double z = 4 * rise * x * (span - x) / (span * span);
                b.node("r" + side + "." + i, x, y, z);
                b.node("d" + side + "." + i, x, y, rise + 4);
                if (i > 0) {
                    b.add(
                            BeamColumn.of(
                                    "rib" + side + "." + i,
                                    "r" + side + "." + (i - 1),
                                    "r" + side + "." + i,
                                    STEEL,
                                    RIB));
                    String last = "d" + side + "." + (i - 1);
                    for (int k = 1; k <= parts; k++) {
                        String next = "d" + side + "." + i;
                        if (k < parts) {
                            next += "-" + k;
                            b.node(next, x - span / panels * (parts - k) / parts, y, rise + 4);
                        }
                        b.add(
                                BeamColumn.of(
                                        "deck" + side + "." + i + (parts > 1 ? "-" + k : ""),
                                        last,
                                        next,
                                        STEEL,
                                        DECK));
                        last = next;
                    }
                }
                b.add(
                        BeamColumn.of(
                                "column" + side + "." + i,
                                "r" + side + "." + i,
                                "d" + side + "." + i,
                                STEEL,
                                COLUMN));
            }
            b.fix("r" + side + ".0").fix("r" + side + "." + panels);
            b.hold("d" + side + ".0", Motion.ALONG_Y, Motion.ALONG_Z);
            b.hold("d" + side + "." + panels, Motion.ALONG_Y, Motion.ALONG_Z);
        }
        for (int i = 0; i <= panels; i++) {
            b.add(BeamColumn.of("tie" + i, "d0." + i, "d1." + i, STEEL, DECK));
            if (i > 0 && i < panels) {
                b.add(BeamColumn.of("brace" + i, "r0." + i, "r1." + i, STEEL, COLUMN));
            }
        }
        return b.build();
    }

    static List<String> deck(int panels) {
        List<String> names = new ArrayList<>();
        for (int i = 1; i <= panels; i++) {
            names.add("deck0." + i);
        }
        return names;
    }
}
