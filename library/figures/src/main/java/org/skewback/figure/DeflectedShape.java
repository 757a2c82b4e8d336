package org.skewback.figure;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.skewback.frame.FrameModel;
import org.skewback.frame.FrameSolution;
import org.skewback.frame.LargeState;
import org.skewback.frame.Vector;

/**
 * Draws how a frame moves under load: the curve of each member from the movements along it, enlarged by
 * a factor that the title states, against the undeformed axes in thin dashes.
 *
 * <p>Up to four solutions are drawn over one another, told apart by weight and dash.
 */
public final class DeflectedShape extends FrameFigure<DeflectedShape> {

    static final Pen UNDEFORMED = new Pen(0.5, Ink.GREY, List.of(2.6, 1.6));

    static final LineStyle[] IN_TURN = {
        LineStyle.FIRST, LineStyle.SECOND, LineStyle.FOURTH, LineStyle.THIRD
    };

    /** Share of the frame's reach that the largest movement takes in the picture. */
    private static final double SHARE = 0.07;

    private final List<Shown> shown;
    private double factor;

    /**
     * A moved frame and what it is called.
     *
     * @param name the load case or the state
     * @param moved where all has gone
     */
    private record Shown(String name, MovedFrame moved) {}

    private DeflectedShape(String title, FrameModel model, List<Shown> shown, double factor) {
        super(title, model, FrameView.elevation());
        this.shown = shown;
        this.factor = factor;
    }

    /**
     * Starts the deflected shape of solutions, in elevation.
     *
     * @param title the figure's title, one line; the factor is added to it
     * @param solutions one to four solutions of one model
     * @return a drawing whose factor follows from the largest movement
     * @throws IllegalArgumentException if the title is blank, or there is no solution, more than four,
     *     or one of another model
     */
    public static DeflectedShape of(String title, FrameSolution... solutions) {
        requireCount("solutions", solutions.length);
        List<Shown> shown = new ArrayList<>();
        for (FrameSolution solution : solutions) {
            MovedFrame.sameModel(solutions[0].model(), solution.model(), solution.name());
            shown.add(new Shown(solution.name(), MovedFrame.of(solution)));
        }
        return new DeflectedShape(title, solutions[0].model(), shown, 0);
    }

    /**
     * Starts the shape of states with large displacements, in elevation and true to scale.
     *
     * @param title the figure's title, one line; the factor is added to it
     * @param states one to four states of one model
     * @return a drawing with factor 1
     * @throws IllegalArgumentException if the title is blank, or there is no state, more than four, or
     *     one of another model
     */
    public static DeflectedShape of(String title, LargeState... states) {
        requireCount("states", states.length);
        List<Shown> shown = new ArrayList<>();
        for (LargeState state : states) {
            MovedFrame.sameModel(states[0].model(), state.model(), "state " + state.factor());
            String name = "load factor " + Numbers.significant(state.factor(), 4);
            shown.add(new Shown(name, MovedFrame.of(state)));
        }
        return new DeflectedShape(title, states[0].model(), shown, 1);
    }

    static void requireCount(String what, int count) {
        if (count < 1 || count > IN_TURN.length) {
            throw new IllegalArgumentException(
                    what
                            + " to draw are "
                            + count
                            + "; allowed are 1 to "
                            + IN_TURN.length
                            + " over one another");
        }
    }

    @Override
    DeflectedShape self() {
        return this;
    }

    /**
     * Sets how many times movements are enlarged.
     *
     * @param times the factor, positive; without it a round number that shows the largest movement well
     * @return this drawing
     * @throws IllegalArgumentException if it is not positive and finite
     */
    public DeflectedShape enlarged(double times) {
        factor = Check.positive("factor of displacements", times);
        return this;
    }

    @Override
    Picture picture() {
        FrameScene scene = scene();
        List<List<MovedFrame.Course>> courses = new ArrayList<>();
        List<Peak> peaks = new ArrayList<>();
        double most = 0;
        for (Shown one : shown) {
            List<MovedFrame.Course> moved = one.moved.courses(scene);
            courses.add(moved);
            peaks.add(peak(moved));
            most = Math.max(most, peaks.get(peaks.size() - 1).distance());
        }
        if (!(most > 0)) {
            throw new IllegalArgumentException(
                    "largest displacement of figure \""
                            + title()
                            + "\" is "
                            + most
                            + " m; it must be more than 0 m to be drawn");
        }
        double times = factor > 0 ? factor : Numbers.niceBelow(SHARE * scene.reach(view()) / most);
        String scaled = times == 1 ? "to scale" : "× " + Numbers.significant(times, 4);
        StringBuilder text = new StringBuilder("Displacements are drawn " + scaled + ". ");
        for (int i = 0; i < shown.size(); i++) {
            Peak peak = peaks.get(i);
            text.append("Under ")
                    .append(shown.get(i).name)
                    .append(" the largest displacement is ")
                    .append(amount(peak.distance()))
                    .append(", ")
                    .append(peak.words())
                    .append(i + 1 < shown.size() ? ". " : ".");
        }
        return Fit.picture(
                title() + ", displacements " + scaled,
                described("Deflected shape in " + view().name() + ".", text.toString()),
                width(),
                mostHeight(),
                scene.extent(view()),
                scale -> drawn(scene, scale, courses, peaks, times, "displacements " + scaled));
    }

    /**
     * The point that has gone farthest.
     *
     * @param from where it was
     * @param by how far it has gone
     * @param words what it is called
     */
    private record Peak(Vector from, Vector by, String words) {

        double distance() {
            return by.length();
        }
    }

    private static Peak peak(List<MovedFrame.Course> courses) {
        Peak peak = new Peak(Vector.ZERO, Vector.ZERO, "nowhere");
        for (MovedFrame.Course course : courses) {
            int at = course.farthest();
            // Of equal ones the first, whatever the last digit says.
            if (course.by().get(at).length() > peak.distance() * (1 + 1e-9)) {
                peak = new Peak(course.from().get(at), course.by().get(at), course.words(at));
            }
        }
        return peak;
    }

    private static String amount(double metres) {
        return metres < 10
                ? Numbers.significant(1000 * metres, 3) + " mm"
                : Numbers.significant(metres, 4) + " m";
    }

    private Board drawn(
            FrameScene scene,
            double scale,
            List<List<MovedFrame.Course>> courses,
            List<Peak> peaks,
            double times,
            String scaled) {
        Board board = new Board(scale);
        FramePage page = new FramePage(board, view());
        scene.drawAxes(page, UNDEFORMED);
        for (int i = 0; i < courses.size(); i++) {
            LineBundle bundle = new LineBundle();
            courses.get(i).forEach(course -> bundle.add(page.line(course.enlarged(times))));
            bundle.draw(board, IN_TURN[i].pen());
        }
        Set<FrameSign> used = EnumSet.noneOf(FrameSign.class);
        scene.drawSupports(page, 1, used);
        for (int i = 0; i < shown.size(); i++) {
            Peak peak = peaks.get(i);
            if (peak.distance() == 0) {
                continue;
            }
            Vector to = peak.from().plus(peak.by().times(times));
            board.fill(Annotations.disc(page.x(to), page.y(to), 0.55 * MM), Ink.BLACK);
            NearText.write(
                    board,
                    page.x(to),
                    page.y(to),
                    amount(peak.distance()) + ", " + Check.printable("place", peak.words()),
                    IN_TURN[i].words(),
                    page.direction(peak.by().unit()),
                    24);
        }
        FrameFooter footer = new FrameFooter(board, room());
        footer.axes(view(), 8 * MM, "");
        if (view().isTrue()) {
            footer.scaleBar();
        }
        footer.key(UNDEFORMED, "undeformed");
        for (int i = 0; i < shown.size(); i++) {
            footer.key(IN_TURN[i].pen(), Check.printable("name", shown.get(i).name));
        }
        List<String> all = new ArrayList<>();
        all.add(scaled + "; the largest displacement is written beside its place");
        all.addAll(notes());
        footer.notes(all);
        return board;
    }
}
