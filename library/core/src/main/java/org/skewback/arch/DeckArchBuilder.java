package org.skewback.arch;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.skewback.form.Axis;
import org.skewback.frame.Bar;
import org.skewback.frame.BeamColumn;
import org.skewback.frame.EndConnection;
import org.skewback.frame.FrameModel;
import org.skewback.frame.FrameModelBuilder;
import org.skewback.frame.Motion;
import org.skewback.frame.Orientation;
import org.skewback.frame.SectionProfile;
import org.skewback.frame.Vector;
import org.skewback.steel.Section;
import org.skewback.steel.Shape;

/** Makes the frame of a deck arch. */
final class DeckArchBuilder {

    private static final List<String> SIDES = List.of("L", "R");
    private static final double END_FRAME_AREA = 10;
    private static final double END_FRAME_STIFFNESS = 1000;

    private final DeckArch arch;
    private final Axis axis;
    private final DeckOnColumns deck;
    private final double rise;
    private final List<Double> points;
    private final FrameModelBuilder model = FrameModel.builder();
    private final List<String> assumptions = new ArrayList<>();
    private final Section bracing;

    DeckArchBuilder(DeckArch arch) {
        this.arch = arch;
        this.axis = arch.axis();
        this.deck = arch.deck();
        this.points = panelPoints(arch);
        this.rise = points.stream().mapToDouble(axis::y).max().orElseThrow();
        this.bracing = arch.bracing().section("bracing");
    }

    DeckArchFrame build() {
        List<List<String>> leftRib =
                arch.makeup() instanceof RibMakeup.Chords chords
                        ? chordRibs(chords)
                        : singleRibs((RibMakeup.Single) arch.makeup());
        List<String> deckMembers = deckAndColumns();
        assume("The ribs are straight between panel points, which lie on the axis.");
        assume(
                "The deck is one member on its axis; its bearings let it turn about the level axis"
                        + " across and the upright one, and hold it sideways, upright and against"
                        + " rolling.");
        assume(
                "The deck is held along the bridge by "
                        + (deck.held().size() == 1 ? "one column" : deck.held().size() + " columns")
                        + " and slides without friction on the others and at its ends.");
        assume("The piers at the ends of the deck and the rock under the springings do not move.");
        assume("Diagonals carry axial force alone, and compression as well as tension.");
        assume(
                "Joints are rigid and as large as a point; plates that stiffen the members are not"
                        + " in their stiffness.");
        return new DeckArchFrame(arch, model.build(), points, leftRib, deckMembers, assumptions);
    }

    /** Columns and springings, and between them as many points as keep panels short enough. */
    static List<Double> panelPoints(DeckArch arch) {
        TreeSet<Double> main = new TreeSet<>(arch.deck().columns());
        main.add(0.0);
        main.add(arch.axis().span());
        List<Double> points = new ArrayList<>();
        Double from = null;
        for (Double to : main) {
            if (from != null) {
                int parts = Math.max(1, (int) Math.ceil((to - from) / arch.longestPanel() - 1e-9));
                for (int i = 0; i < parts; i++) {
                    points.add(from + (to - from) * i / parts);
                }
            }
            from = to;
        }
        points.add(arch.axis().span());
        return points;
    }

    /** Ends of the deck's members. */
    static List<Double> deckPoints(DeckArch arch) {
        List<Double> points = new ArrayList<>();
        points.add(0.0);
        points.addAll(arch.deck().columns());
        points.add(arch.axis().span());
        return points;
    }

    private List<List<String>> singleRibs(RibMakeup.Single single) {
        List<String> left = new ArrayList<>();
        for (String side : SIDES) {
            for (int i = 0; i < points.size(); i++) {
                double x = points.get(i);
                node("rib " + side + " " + i, x, side, axis.y(x));
                if (i > 0) {
                    String name = "rib " + side + " " + (i - 1) + "–" + i;
                    beam(
                            name,
                            "rib " + side + " " + (i - 1),
                            "rib " + side + " " + i,
                            SectionProfile.tapered(
                                    section(single, points.get(i - 1)), section(single, x)));
                    if (side.equals("L")) {
                        left.add(name);
                    }
                }
            }
            hold("rib " + side + " 0");
            hold("rib " + side + " " + (points.size() - 1));
        }
        brace("rib");
        return List.of(left);
    }

    private Section section(RibMakeup.Single single, double x) {
        double fromCrown = Math.abs(2 * x / axis.span() - 1);
        return single.atCrown().towards(single.atSpringings(), fromCrown).section("rib");
    }

    private List<List<String>> chordRibs(RibMakeup.Chords chords) {
        Section chord = chords.chord().section("chord");
        Section post = chords.post().section("post");
        Section diagonal = chords.diagonal().section("diagonal");
        List<String> upper = new ArrayList<>();
        List<String> lower = new ArrayList<>();
        int last = points.size() - 1;
        for (String side : SIDES) {
            for (int i = 0; i <= last; i++) {
                double x = points.get(i);
                double half =
                        Shape.between(
                                        chords.depthAtCrown(),
                                        chords.depthAtSpringings(),
                                        Math.abs(2 * x / axis.span() - 1))
                                / 2;
                double up = half / StrictMath.cos(axis.angle(x));
                node("upper " + side + " " + i, x, side, axis.y(x) + up);
                node("lower " + side + " " + i, x, side, axis.y(x) - up);
                beam(
                        "post " + side + " " + i,
                        "lower " + side + " " + i,
                        "upper " + side + " " + i,
                        SectionProfile.uniform(post));
                if (i > 0) {
                    for (String row : List.of("upper", "lower")) {
                        String name = row + " " + side + " " + (i - 1) + "–" + i;
                        beam(
                                name,
                                row + " " + side + " " + (i - 1),
                                row + " " + side + " " + i,
                                SectionProfile.uniform(chord));
                        if (side.equals("L")) {
                            (row.equals("upper") ? upper : lower).add(name);
                        }
                    }
                    // Falling towards the crown on both sides, so that a uniform shear finds them
                    // alike.
                    boolean rising = points.get(i) <= axis.span() / 2 + 1e-9;
                    bar(
                            "diagonal " + side + " " + (i - 1) + "–" + i,
                            (rising ? "upper " : "lower ") + side + " " + (i - 1),
                            (rising ? "lower " : "upper ") + side + " " + i,
                            diagonal);
                }
            }
            springing(side, 0, post);
            springing(side, last, post);
        }
        brace("upper");
        brace("lower");
        assume(
                "The posts between the chords are upright; the chords' distance is square to the"
                        + " axis.");
        return List.of(upper, lower);
    }

    /** Holds both chords, or a hinge halfway between them. */
    private void springing(String side, int index, Section post) {
        if (arch.springings() == Springings.FIXED) {
            hold("upper " + side + " " + index);
            hold("lower " + side + " " + index);
            return;
        }
        double x = points.get(index);
        String hinge = "hinge " + side + " " + index;
        node(hinge, x, side, axis.y(x));
        hold(hinge);
        // The hinge takes the thrust of both chords, so its end frame is bent by the whole of it
        // over half their distance. What carries that is as deep as a panel is wide, and hardly
        // gives.
        Section stiff =
                Section.of(
                        "end frame",
                        END_FRAME_AREA * post.area(),
                        END_FRAME_STIFFNESS * post.shearAreaY(),
                        END_FRAME_STIFFNESS * post.shearAreaZ(),
                        END_FRAME_STIFFNESS * post.torsionConstant(),
                        END_FRAME_STIFFNESS * post.inertiaY(),
                        END_FRAME_STIFFNESS * post.inertiaZ());
        for (String row : List.of("upper", "lower")) {
            beam(
                    "end frame " + row + " " + side + " " + index,
                    hinge,
                    row + " " + side + " " + index,
                    SectionProfile.uniform(stiff));
        }
        if (index == 0 && side.equals("L")) {
            assume(
                    "The hinge of a rib sits halfway between its chords, in an end frame that"
                            + " hardly bends: a thousand times as stiff as a post, ten times as"
                            + " heavy.");
        }
    }

    private void hold(String node) {
        if (arch.springings() == Springings.FIXED) {
            model.fix(node);
        } else {
            model.pin(node).hold(node, Motion.ABOUT_X, Motion.ABOUT_Z);
        }
    }

    /** Struts at every panel point and crossed diagonals in every panel, between the ribs. */
    private void brace(String row) {
        for (int i = 0; i < points.size(); i++) {
            if (i > 0 && i < points.size() - 1) {
                beam(
                        "strut " + row + " " + i,
                        row + " L " + i,
                        row + " R " + i,
                        SectionProfile.uniform(bracing));
            }
            if (i > 0) {
                String panel = (i - 1) + "–" + i;
                bar(
                        "brace " + row + " L " + panel,
                        row + " L " + (i - 1),
                        row + " R " + i,
                        bracing);
                bar(
                        "brace " + row + " R " + panel,
                        row + " R " + (i - 1),
                        row + " L " + i,
                        bracing);
            }
        }
    }

    private List<String> deckAndColumns() {
        Section leg = deck.leg().section("leg");
        Section beam = deck.beam().section("beam");
        String foot = arch.makeup() instanceof RibMakeup.Chords ? "upper " : "rib ";
        EndConnection sliding =
                EndConnection.RIGID
                        .released(Motion.ABOUT_X)
                        .released(Motion.ABOUT_Y)
                        .released(Motion.ALONG_Z);
        EndConnection fixed = EndConnection.RIGID.released(Motion.ABOUT_X).released(Motion.ABOUT_Y);
        List<Double> ends = deckPoints(arch);
        double under = deck.level() - BEARING;
        for (int i = 0; i < deck.columns().size(); i++) {
            double x = deck.columns().get(i);
            int point = points.indexOf(x);
            for (String side : SIDES) {
                node("head " + side + " " + i, x, side, under);
                beam(
                        "leg " + side + " " + i,
                        foot + side + " " + point,
                        "head " + side + " " + i,
                        SectionProfile.uniform(leg));
            }
            model.node("seat " + i, x, 0, under);
            for (String side : SIDES) {
                beam(
                        "beam " + side + " " + i,
                        "head " + side + " " + i,
                        "seat " + i,
                        SectionProfile.uniform(beam));
            }
        }
        List<String> members = new ArrayList<>();
        for (int i = 0; i < ends.size(); i++) {
            model.node("deck " + i, ends.get(i), 0, deck.level());
            if (i > 0) {
                String name = "deck " + (i - 1) + "–" + i;
                beam(name, "deck " + (i - 1), "deck " + i, SectionProfile.uniform(deck.girder()));
                members.add(name);
            }
            if (i > 0 && i < ends.size() - 1) {
                int column = i - 1;
                model.add(
                        new BeamColumn(
                                "bearing " + column,
                                "seat " + column,
                                "deck " + i,
                                arch.material(),
                                SectionProfile.uniform(beam),
                                Orientation.USUAL,
                                Vector.ZERO,
                                Vector.ZERO,
                                EndConnection.RIGID,
                                deck.held().contains(column) ? fixed : sliding));
            }
        }
        for (int end : new int[] {0, ends.size() - 1}) {
            model.hold("deck " + end, Motion.ALONG_Y, Motion.ALONG_Z, Motion.ABOUT_X);
        }
        return members;
    }

    /** Height of a bearing with its pedestal, m; only its ends matter, as it is short and stiff. */
    private static final double BEARING = 0.4;

    private void node(String name, double x, String side, double z) {
        double offset = arch.planes().offset(Math.max(0, Math.min(rise, z)), rise);
        model.node(name, x, side.equals("L") ? -offset : offset, z);
    }

    private void beam(String name, String start, String end, SectionProfile profile) {
        model.add(BeamColumn.of(name, start, end, arch.material(), profile));
    }

    private void bar(String name, String start, String end, Section section) {
        model.add(Bar.of(name, start, end, arch.material(), section));
    }

    private void assume(String sentence) {
        assumptions.add(sentence);
    }
}
