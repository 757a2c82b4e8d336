package org.skewback.figure;

import java.util.ArrayList;
import java.util.List;
import org.skewback.frame.Bar;
import org.skewback.frame.BeamColumn;
import org.skewback.frame.EndConnection;
import org.skewback.frame.FrameModel;
import org.skewback.frame.FrameModelBuilder;
import org.skewback.frame.LineLoad;
import org.skewback.frame.Load;
import org.skewback.frame.LoadAxes;
import org.skewback.frame.LoadCase;
import org.skewback.frame.Material;
import org.skewback.frame.Motion;
import org.skewback.frame.Orientation;
import org.skewback.frame.SelfWeight;
import org.skewback.frame.Stage;
import org.skewback.frame.StageAction;
import org.skewback.frame.Vector;
import org.skewback.steel.Box;
import org.skewback.steel.Rectangle;
import org.skewback.steel.Section;
import org.skewback.steel.Tube;

/** Frames that the tests draw: a two-hinged deck arch bridge, invented throughout, and a beam. */
final class FrameDemo {

    static final int PANELS = 14;
    static final double PANEL = 24;
    static final double RISE = 84;
    static final double DECK = 92;

    private static final Material STEEL = Material.steel();
    private static final Section RIB = new Box(1.8, 6.0, 0.04, 0.05).section("rib");
    private static final Section COLUMN = new Box(1.4, 1.8, 0.02, 0.025).section("column");
    static final Section GIRDER = new Box(1.2, 2.4, 0.02, 0.04).section("girder");
    private static final Section BRACE = new Tube(0.9, 0.02).section("brace");

    private static final Section STAY = new Rectangle(0.1, 0.12).section("stay");

    /** Columns lean across the bridge only; this keeps their local y across. */
    private static final Orientation ALONG = new Orientation(new Vector(-1, 0, 0), 0);

    private FrameDemo() {}

    /** Two ribs, braced, with columns hinged at the deck's two girders. */
    static FrameModel bridge() {
        FrameModelBuilder b = FrameModel.builder();
        for (int side = 0; side < 2; side++) {
            rib(b, side);
        }
        for (int i = 0; i <= PANELS; i++) {
            b.add(BeamColumn.of("cross " + i, "d0." + i, "d1." + i, STEEL, GIRDER));
            if (i > 0 && i < PANELS) {
                b.add(BeamColumn.of("brace " + i, "r0." + i, "r1." + i, STEEL, BRACE));
            }
            if (i > 0) {
                diagonals(b, "rib", "r", i);
                diagonals(b, "deck", "d", i);
            }
        }
        return b.build();
    }

    private static void rib(FrameModelBuilder b, int side) {
        EndConnection hinge = EndConnection.RIGID.released(Motion.ABOUT_Y);
        for (int i = 0; i <= PANELS; i++) {
            double x = PANEL * i;
            double share = 4.0 * i * (PANELS - i) / (PANELS * PANELS);
            double sign = side == 0 ? -1 : 1;
            b.node("r" + side + "." + i, x, sign * (10 - 4 * share), RISE * share);
            b.node("d" + side + "." + i, x, sign * 4, DECK);
            if (i > 0) {
                String before = "." + (i - 1);
                String here = side + "." + i;
                b.add(BeamColumn.of("rib " + here, "r" + side + before, "r" + here, STEEL, RIB));
                b.add(
                        BeamColumn.of(
                                "girder " + here, "d" + side + before, "d" + here, STEEL, GIRDER));
            }
            if (i > 0 && i < PANELS) {
                String here = side + "." + i;
                b.add(
                        BeamColumn.of("column " + here, "r" + here, "d" + here, STEEL, COLUMN)
                                .oriented(ALONG)
                                .connected(
                                        EndConnection.RIGID,
                                        i == PANELS / 2 ? EndConnection.RIGID : hinge));
            }
        }
        for (int i : new int[] {0, PANELS}) {
            b.pin("r" + side + "." + i)
                    .hold("r" + side + "." + i, Motion.ABOUT_X, Motion.ABOUT_Z)
                    .hold("d" + side + "." + i, Motion.ALONG_Y, Motion.ALONG_Z);
        }
    }

    private static void diagonals(FrameModelBuilder b, String name, String node, int i) {
        for (int side = 0; side < 2; side++) {
            b.add(
                    Bar.of(
                            name + " diagonal " + side + "." + i,
                            node + side + "." + (i - 1),
                            node + (1 - side) + "." + i,
                            STEEL,
                            BRACE));
        }
    }

    /** Weight of all, and a slab on the girders. */
    static LoadCase permanent() {
        List<Load> loads = new ArrayList<>();
        loads.add(SelfWeight.standard());
        for (int i = 1; i <= PANELS; i++) {
            loads.addAll(onGirders(i, 60e3));
        }
        return new LoadCase("permanent loads", loads);
    }

    /** A train on the left half. */
    static LoadCase halfTrain() {
        List<Load> loads = new ArrayList<>();
        for (int i = 1; i <= PANELS / 2; i++) {
            loads.addAll(onGirders(i, 40e3));
        }
        return new LoadCase("train on the left half", loads);
    }

    private static List<Load> onGirders(int panel, double newtonsPerMetre) {
        Vector down = new Vector(0, 0, -newtonsPerMetre);
        return List.of(
                LineLoad.uniform("girder 0." + panel, down, LoadAxes.GLOBAL),
                LineLoad.uniform("girder 1." + panel, down, LoadAxes.GLOBAL));
    }

    /** The members of one side's rib, columns and girder. */
    static List<String> side(int side) {
        List<String> names = new ArrayList<>();
        for (int i = 1; i <= PANELS; i++) {
            names.add("rib " + side + "." + i);
            names.add("girder " + side + "." + i);
            if (i < PANELS) {
                names.add("column " + side + "." + i);
            }
        }
        return names;
    }

    /** A simply supported beam of 12 m. */
    static FrameModel beam() {
        return FrameModel.builder()
                .node("a", 0, 0, 0)
                .node("b", 12, 0, 0)
                .add(BeamColumn.of("beam", "a", "b", STEEL, GIRDER))
                .pin("a")
                .hold("a", Motion.ABOUT_X)
                .hold("b", Motion.ALONG_Y, Motion.ALONG_Z)
                .build();
    }

    /** One rib in its plane with a tower and stays on either side, for raising it. */
    static FrameModel halves() {
        FrameModelBuilder b = FrameModel.builder().inPlane();
        for (int i = 0; i <= PANELS; i++) {
            double share = 4.0 * i * (PANELS - i) / (PANELS * PANELS);
            b.node("r" + i, PANEL * i, 0, RISE * share);
            if (i > 0) {
                b.add(BeamColumn.of("rib " + i, "r" + (i - 1), "r" + i, STEEL, RIB));
            }
        }
        for (int side = 0; side < 2; side++) {
            String which = side == 0 ? "west" : "east";
            double x = side == 0 ? 0 : PANEL * PANELS;
            double out = side == 0 ? -1 : 1;
            b.node("foot " + which, x + 6 * out, 0, 8)
                    .node("top " + which, x + 6 * out, 0, 128)
                    .node("rock " + which, x + 120 * out, 0, 30)
                    .fix("foot " + which)
                    .pin("rock " + which)
                    .pin(side == 0 ? "r0" : "r" + PANELS)
                    .add(
                            BeamColumn.of(
                                    "tower " + which, "foot " + which, "top " + which, STEEL, RIB));
            b.add(stay("backstay " + which, "top " + which, "rock " + which));
            for (int k = 2; k <= 6; k += 2) {
                int node = side == 0 ? k : PANELS - k;
                b.add(stay("stay " + which + " " + k, "top " + which, "r" + node));
            }
        }
        return b.build();
    }

    private static Bar stay(String name, String from, String to) {
        return Bar.of(name, from, to, STEEL, STAY).carrying(Bar.Carries.TENSION);
    }

    /** Two half arches that grow from both sides, are closed, and let go. */
    static List<Stage> raising() {
        List<Stage> stages = new ArrayList<>();
        stages.add(
                Stage.of(
                        "towers and backstays",
                        installed("tower west", "tower east", "backstay west", "backstay east"),
                        new StageAction.Apply(
                                new LoadCase("weight", List.of(SelfWeight.standard())))));
        for (int k = 2; k <= 6; k += 2) {
            int mirrored = PANELS - k;
            List<StageAction> actions = new ArrayList<>();
            actions.add(
                    installed(
                            "rib " + (k - 1),
                            "rib " + k,
                            "rib " + (mirrored + 1),
                            "rib " + (mirrored + 2),
                            "stay west " + k,
                            "stay east " + k));
            if (k > 2) {
                // The force of the first stay follows from equilibrium; nobody can choose it.
                actions.add(new StageAction.Tension("stay west " + k, 2e6));
                actions.add(new StageAction.Tension("stay east " + k, 2e6));
            }
            stages.add(new Stage("ribs to node " + k + ", stays " + k, actions));
        }
        stages.add(Stage.of("closing", installed("rib 7", "rib 8")));
        List<String> stays = new ArrayList<>();
        for (int k = 2; k <= 6; k += 2) {
            stays.add("stay west " + k);
            stays.add("stay east " + k);
        }
        stages.add(Stage.of("stays let go", new StageAction.Dismantle(stays)));
        return stages;
    }

    private static StageAction installed(String... members) {
        return new StageAction.Install(List.of(members), StageAction.Fit.FITTED);
    }
}
