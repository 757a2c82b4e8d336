package org.skewback.arch;

import java.util.ArrayList;
import java.util.List;
import org.skewback.form.FunicularCurve;
import org.skewback.form.VerticalLoad;
import org.skewback.frame.Bar;
import org.skewback.frame.BeamColumn;
import org.skewback.frame.FrameModel;
import org.skewback.frame.Member;
import org.skewback.frame.Vector;
import org.skewback.numeric.NotConvergedException;
import org.skewback.quantity.Gravity;
import org.skewback.steel.Section;

/**
 * A deck arch whose axis is the funicular of its own permanent load: the deck on its columns, the columns,
 * and the ribs with their bracing, whose weight follows from the axis that it makes.
 *
 * <p>Loads stand where the frame has them: the deck's and the columns' at the columns, that of each member
 * of the ribs half at each of its ends. Between the panel points the ribs are straight, so that a three-hinged
 * rib on this axis has no moment in any panel point. The axis is sought by turns, weighing the arch on one axis
 * and drawing the next, until no panel point moves by more than 1e-9 of the rise.
 *
 * @param arch the arch on its funicular
 * @param line the funicular, with its thrust: both ribs together
 * @param rounds how often the arch was weighed
 */
public record DeckArchForm(DeckArch arch, FunicularCurve line, int rounds) {

    private static final double SETTLED = 1e-9;
    private static final int MOST_ROUNDS = 100;

    /**
     * Finds the axis.
     *
     * @param start the arch on an axis to start from, whose span and height at midspan are kept
     * @param onDeck permanent load along the deck, N/m, at least 0; each column carries half a bay on either
     *     side, as a slab cast bay by bay leaves it
     * @param weightFactor weight of the members over that of their bare sections, greater than 0
     * @return the arch on its funicular
     * @throws IllegalArgumentException if a number is out of range, or the axis comes too near to the deck
     * @throws NotConvergedException if the axis does not settle
     */
    public static DeckArchForm of(DeckArch start, double onDeck, double weightFactor) {
        Require.within("permanent load of the deck", onDeck, 0, 1e9, "N/m");
        Require.positive("weight of the members over that of their sections", weightFactor, "");
        double span = start.axis().span();
        double rise = start.axis().y(span / 2);
        DeckArch arch = start;
        double change = Double.POSITIVE_INFINITY;
        for (int round = 1; round <= MOST_ROUNDS; round++) {
            FunicularCurve line =
                    FunicularCurve.through(
                            load(DeckArchFrame.of(arch), onDeck, weightFactor),
                            span,
                            0,
                            span / 2,
                            rise);
            DeckArch next = on(arch, line);
            change = 0;
            for (double x : DeckArchBuilder.panelPoints(arch)) {
                change = Math.max(change, Math.abs(line.y(x) - arch.axis().y(x)));
            }
            if (change <= SETTLED * rise) {
                return new DeckArchForm(next, line, round);
            }
            arch = next;
        }
        throw new NotConvergedException(
                "the axis of the arch did not settle in "
                        + MOST_ROUNDS
                        + " rounds; panel points still moved by "
                        + change
                        + " m, allowed is "
                        + SETTLED * rise
                        + " m.");
    }

    private static DeckArch on(DeckArch arch, FunicularCurve line) {
        return new DeckArch(
                line,
                arch.springings(),
                arch.planes(),
                arch.makeup(),
                arch.bracing(),
                arch.longestPanel(),
                arch.deck(),
                arch.material());
    }

    /**
     * Gives the permanent load that the frame of an arch brings on both ribs, as point loads on plan.
     *
     * @param frame the arch
     * @param onDeck permanent load along the deck, N/m, at least 0
     * @param weightFactor weight of the members over that of their bare sections, greater than 0
     * @return the load; what stands on the springings themselves is left out
     * @throws IllegalArgumentException if a number is out of range
     */
    public static VerticalLoad load(DeckArchFrame frame, double onDeck, double weightFactor) {
        double span = frame.arch().axis().span();
        List<Double> points = frame.panelPoints();
        double[] forces = new double[points.size()];
        FrameModel model = frame.model();
        for (Member member : model.members()) {
            if (member.name().startsWith("deck ")) {
                continue;
            }
            double weight = weightFactor * weight(model, member);
            forces[nearest(points, model.node(member.start()).place().x())] += weight / 2;
            forces[nearest(points, model.node(member.end()).place().x())] += weight / 2;
        }
        List<Double> ends = DeckArchBuilder.deckPoints(frame.arch());
        for (int i = 1; i + 1 < ends.size(); i++) {
            forces[nearest(points, ends.get(i))] +=
                    onDeck * (ends.get(i + 1) - ends.get(i - 1)) / 2;
        }
        List<VerticalLoad> loads = new ArrayList<>();
        for (int i = 1; i + 1 < forces.length; i++) {
            loads.add(VerticalLoad.point(forces[i], Math.min(span, points.get(i))));
        }
        return VerticalLoad.together(loads);
    }

    private static int nearest(List<Double> points, double x) {
        int nearest = 0;
        for (int i = 1; i < points.size(); i++) {
            if (Math.abs(points.get(i) - x) < Math.abs(points.get(nearest) - x)) {
                nearest = i;
            }
        }
        return nearest;
    }

    private static double weight(FrameModel model, Member member) {
        Vector along = model.node(member.end()).place().minus(model.node(member.start()).place());
        double gravity = Gravity.STANDARD.in("m/s²");
        if (member instanceof BeamColumn beam) {
            Section start = beam.profile().at(0);
            Section end = beam.profile().at(1);
            Section middle = beam.profile().at(0.5);
            return gravity
                    * beam.material().density()
                    * along.length()
                    * (start.area() + 4 * middle.area() + end.area())
                    / 6;
        }
        return member instanceof Bar bar
                ? gravity * bar.material().density() * along.length() * bar.section().area()
                : 0;
    }
}
