package org.skewback.arch;

import java.util.ArrayList;
import java.util.List;
import org.skewback.frame.FrameModel;
import org.skewback.frame.FrameModelBuilder;
import org.skewback.frame.FrameSolution;
import org.skewback.frame.Lane;
import org.skewback.frame.LineLoad;
import org.skewback.frame.LineMoment;
import org.skewback.frame.Load;
import org.skewback.frame.LoadAxes;
import org.skewback.frame.LoadCase;
import org.skewback.frame.Member;
import org.skewback.frame.ModeShape;
import org.skewback.frame.Node;
import org.skewback.frame.Reaction;
import org.skewback.frame.SelfWeight;
import org.skewback.frame.Stage;
import org.skewback.frame.StageAction;
import org.skewback.frame.Support;
import org.skewback.frame.Vector;
import org.skewback.frame.Warming;

/**
 * A deck arch as a frame, with what was assumed in making it.
 *
 * <p>Global axes as in {@link org.skewback.frame}: x along the bridge from the left springing, y across, z
 * up from the springings. Names: ribs {@code L} (y &lt; 0) and {@code R}; panel points {@code rib L 3}, or
 * {@code upper L 3} and {@code lower L 3} for two chords; column heads {@code head L 0}; deck {@code deck
 * 0}.
 *
 * @param arch what it was made from
 * @param model the frame
 * @param panelPoints positions of the panel points of the ribs, from springing to springing, m
 * @param leftRib members of the left rib, chord by chord, from springing to springing
 * @param deck members of the deck, from left to right
 * @param assumptions what was assumed, in sentences for a sheet
 */
public record DeckArchFrame(
        DeckArch arch,
        FrameModel model,
        List<Double> panelPoints,
        List<List<String>> leftRib,
        List<String> deck,
        List<String> assumptions) {

    /**
     * Copies the lists.
     *
     * @param arch what it was made from
     * @param model the frame
     * @param panelPoints positions of the panel points of the ribs, m
     * @param leftRib members of the left rib, chord by chord
     * @param deck members of the deck
     * @param assumptions what was assumed
     */
    public DeckArchFrame {
        panelPoints = List.copyOf(panelPoints);
        leftRib = List.copyOf(leftRib);
        deck = List.copyOf(deck);
        assumptions = List.copyOf(assumptions);
    }

    /**
     * Makes the frame.
     *
     * @param arch the arch
     * @return the frame
     * @throws IllegalArgumentException if members of it would have no length
     */
    public static DeckArchFrame of(DeckArch arch) {
        return new DeckArchBuilder(arch).build();
    }

    /**
     * Gives the path of trains over the deck.
     *
     * @return the lane along the deck's axis
     */
    public Lane lane() {
        return Lane.along("track", model, deck, Vector.ZERO);
    }

    /**
     * Gives the weight of all members as a load case.
     *
     * @return the case, named {@code weight of the members}
     */
    public LoadCase weight() {
        return LoadCase.of("weight of the members", SelfWeight.standard());
    }

    /**
     * Gives a load uniform along the deck, over all of it or a part.
     *
     * @param name name of the case
     * @param intensity load per length, N/m, positive downward
     * @param from where it begins, from the left springing, m
     * @param to where it ends, m
     * @return the case
     * @throws IllegalArgumentException if the range is empty or reaches off the deck
     */
    public LoadCase onDeck(String name, double intensity, double from, double to) {
        double span = arch.axis().span();
        Require.within("begin of the load on the deck", from, 0, span, "m");
        Require.within("end of the load on the deck", to, 0, span, "m");
        if (!(to > from)) {
            throw Require.refused(
                    "end of the load on the deck", to, "m", "more than " + from + " m");
        }
        Vector down = new Vector(0, 0, -intensity);
        List<Double> ends = DeckArchBuilder.deckPoints(arch);
        List<Load> loads = new ArrayList<>();
        for (int i = 0; i < deck.size(); i++) {
            double begin = Math.max(from, ends.get(i));
            double end = Math.min(to, ends.get(i + 1));
            if (end > begin) {
                loads.add(
                        new LineLoad(
                                deck.get(i),
                                begin - ends.get(i),
                                end - ends.get(i),
                                down,
                                down,
                                LoadAxes.GLOBAL));
            }
        }
        return new LoadCase(name, loads);
    }

    /**
     * Gives a warming of the steel of ribs, bracing and columns, and another of the deck.
     *
     * @param name name of the case
     * @param ofRibs rise of temperature of ribs, bracing and columns, K; negative for cooling
     * @param ofDeck rise of temperature of the deck, K
     * @return the case
     * @throws IllegalArgumentException if a number is not finite
     */
    public LoadCase warming(String name, double ofRibs, double ofDeck) {
        List<Load> loads = new ArrayList<>();
        for (Member member : model.members()) {
            double rise = member.name().startsWith("deck ") ? ofDeck : ofRibs;
            if (rise != 0) {
                loads.add(new Warming(member.name(), rise, 0, 0));
            }
        }
        return new LoadCase(name, loads);
    }

    /**
     * Gives a temperature difference over the depth of the deck, its axis keeping its temperature.
     *
     * @param name name of the case
     * @param topWarmer by how much the top is warmer than the bottom, K; negative where it is colder
     * @param depth depth of the deck, m, greater than 0
     * @return the case
     * @throws IllegalArgumentException if the depth is not greater than 0, or a number is not finite
     */
    public LoadCase deckDifference(String name, double topWarmer, double depth) {
        Require.positive("depth of the deck", depth, "m");
        return new LoadCase(
                name,
                deck.stream()
                        .map(member -> (Load) new Warming(member, 0, 0, topWarmer / depth))
                        .toList());
    }

    /**
     * Gives wind across the bridge, toward y &gt; 0.
     *
     * @param name name of the case
     * @param onRibs force per length of axis on both ribs together, N/m; each chord takes an equal share per
     *     length of its own
     * @param onDeck force per length of the deck, with what stands on it, N/m
     * @param arm height of that force above the deck's axis, m
     * @return the case
     * @throws IllegalArgumentException if a number is not finite
     */
    public LoadCase wind(String name, double onRibs, double onDeck, double arm) {
        List<Load> loads = new ArrayList<>();
        List<String> left = leftRib.stream().flatMap(List::stream).toList();
        Vector share = new Vector(0, onRibs / (2 * leftRib.size()), 0);
        if (onRibs != 0) {
            for (String member : left) {
                loads.add(LineLoad.uniform(member, share, LoadAxes.GLOBAL));
                loads.add(LineLoad.uniform(member.replace(" L ", " R "), share, LoadAxes.GLOBAL));
            }
        }
        if (onDeck != 0) {
            Vector force = new Vector(0, onDeck, 0);
            // A force across, above the axis, turns the deck about −x.
            Vector moment = new Vector(0, 0, arm).cross(force);
            for (String member : deck) {
                loads.add(LineLoad.uniform(member, force, LoadAxes.GLOBAL));
                loads.add(
                        new LineMoment(
                                member,
                                0,
                                Double.POSITIVE_INFINITY,
                                moment,
                                moment,
                                LoadAxes.GLOBAL));
            }
        }
        return new LoadCase(name, loads);
    }

    /**
     * Gives the supports that make a fixed arch of a hinged one: those that hold the springings against turning
     * about the axis across.
     *
     * @return the supports, each taking its node where it is when it is added
     * @throws IllegalArgumentException if the arch is not pinned at its springings
     */
    public List<Support> fixing() {
        if (arch.springings() != Springings.PINNED) {
            throw new IllegalArgumentException(
                    "springings are " + arch.springings() + "; allowed is PINNED.");
        }
        String hinge = arch.makeup() instanceof RibMakeup.Chords ? "hinge " : "rib ";
        List<Support> supports = new ArrayList<>();
        for (String side : List.of("L", "R")) {
            for (int index : new int[] {0, panelPoints.size() - 1}) {
                supports.add(Support.about(hinge + side + " " + index, Vector.Y));
            }
        }
        return List.copyOf(supports);
    }

    /**
     * Gives the stages of an arch that is pinned at its springings while it is raised and fixed afterwards.
     *
     * @param whilePinned what is put on before the springings are fixed
     * @param onceFixed what is put on afterwards
     * @return three stages: pinned, fixing and fixed, for {@link org.skewback.frame.StageAnalysis}
     * @throws IllegalArgumentException if the arch is not pinned at its springings
     */
    public List<Stage> pinnedThenFixed(LoadCase whilePinned, LoadCase onceFixed) {
        List<StageAction> fix = new ArrayList<>();
        fixing().forEach(support -> fix.add(new StageAction.Hold(support)));
        return List.of(
                Stage.of(
                        "pinned",
                        new StageAction.Install(
                                model.members().stream().map(Member::name).toList(),
                                StageAction.Fit.DESIGNED),
                        new StageAction.Apply(whilePinned)),
                new Stage("fixing", fix),
                Stage.of("fixed", new StageAction.Apply(onceFixed)));
    }

    /**
     * Gives the frame with its ribs moved, as by an imperfection. Column heads and deck stay where they are, as
     * they are set out when the ribs stand.
     *
     * @param shape a shape of buckling of this frame
     * @param size by how much the node of the ribs moves that moves most, m; negative the other way
     * @return the frame, with the same members on moved nodes
     * @throws IllegalArgumentException if the ribs do not move in the shape, or the size is not finite
     */
    public FrameModel moved(ModeShape shape, double size) {
        Require.finite("size of the imperfection", size, "m");
        double largest = RibMotion.largest(model, shape);
        if (!(largest > 0)) {
            throw Require.refused("largest motion of the ribs", largest, "m", "more than 0 m");
        }
        FrameModelBuilder moved = FrameModel.builder();
        for (Node node : model.nodes()) {
            double share = RibMotion.isOfRib(node) ? size / largest : 0;
            Vector place =
                    node.place().plus(shape.movement(node.name()).translation().times(share));
            moved.node(node.name(), place.x(), place.y(), place.z());
        }
        model.members().forEach(moved::add);
        model.supports().forEach(moved::support);
        return moved.build();
    }

    /** The node of the deck nearest to a position. */
    String deckNode(double x) {
        List<Double> points = DeckArchBuilder.deckPoints(arch);
        int nearest = 0;
        for (int i = 0; i < points.size(); i++) {
            if (Math.abs(points.get(i) - x) < Math.abs(points.get(nearest) - x)) {
                nearest = i;
            }
        }
        return "deck " + nearest;
    }

    /** Thrust of both ribs at the left springing, inward positive. */
    double thrust(FrameSolution solution) {
        double thrust = 0;
        for (Reaction reaction : solution.reactions()) {
            if (!reaction.node().startsWith("deck")
                    && model.node(reaction.node()).place().x() < arch.axis().span() / 2) {
                thrust += reaction.force().x();
            }
        }
        return thrust;
    }
}
