package org.skewback.figure;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import org.skewback.frame.Buckling;
import org.skewback.frame.BucklingMode;
import org.skewback.frame.FrameModel;
import org.skewback.frame.Mode;
import org.skewback.frame.ModeShape;
import org.skewback.frame.Modes;
import org.skewback.frame.Motion;
import org.skewback.frame.Vector;

/**
 * Draws shapes of vibration or of buckling side by side, with frequency and period, or load factor,
 * below each. The size of a shape means nothing; all are drawn equally large.
 */
public final class ShapeStrip extends FrameFigure<ShapeStrip> {

    /** More than this on a page are too small to read. */
    static final int MOST_SHAPES = 24;

    private static final double SHARE = 0.08;

    /** A smaller share of the mass, in per cent, is not written. */
    private static final double LEAST_SHARE = 0.1;

    private final List<Shown> all;
    private final String what;
    private final List<String> remarks;
    private int first;

    /** A shape with the words below it. */
    private record Shown(List<String> words, String inText, ModeShape shape) {}

    private ShapeStrip(
            String title, FrameModel model, List<Shown> all, String what, List<String> remarks) {
        super(title, model, isFlat(model) ? FrameView.elevation() : FrameView.axonometric());
        this.all = all;
        this.what = what;
        this.remarks = remarks;
        this.first = Math.min(all.size(), MOST_SHAPES);
        if (all.isEmpty()) {
            throw new IllegalArgumentException(
                    "figure \"" + title + "\" has 0 " + what + "; there must be at least 1");
        }
    }

    /**
     * Starts a strip of natural vibrations, axonometric where the model is no plane frame.
     *
     * @param title the figure's title, one line
     * @param model the model that the modes are of
     * @param modes the modes
     * @return a strip of all of them, up to 24
     * @throws IllegalArgumentException if the title is blank or there is no mode
     */
    public static ShapeStrip of(String title, FrameModel model, Modes modes) {
        List<Shown> shown = new ArrayList<>();
        for (int k = 0; k < modes.list().size(); k++) {
            Mode mode = modes.get(k);
            String numbers =
                    Numbers.significant(mode.frequency(), 4)
                            + " Hz, "
                            + Numbers.significant(mode.period(), 4)
                            + " s";
            String way = "mostly " + mode.shape().mainDirection() + massTaken(modes, mode);
            shown.add(
                    new Shown(
                            List.of("mode " + (k + 1) + ": " + numbers, way),
                            numbers + ", " + way,
                            mode.shape()));
        }
        return new ShapeStrip(title, model, shown, "modes", List.of());
    }

    /** The global axis along which a mode takes most of the mass, where it takes any to speak of. */
    private static String massTaken(Modes modes, Mode mode) {
        Motion best = Motion.ALONG_X;
        for (Motion axis : List.of(Motion.ALONG_Y, Motion.ALONG_Z)) {
            best = mode.effectiveMass(axis) > mode.effectiveMass(best) ? axis : best;
        }
        double share = 100 * mode.effectiveMass(best) / modes.totalMass();
        return share < LEAST_SHARE
                ? ""
                : "; " + Numbers.shortest(share, 1) + " % of the mass " + best;
    }

    /**
     * Starts a strip of buckling shapes, axonometric where the model is no plane frame.
     *
     * @param title the figure's title, one line
     * @param model the model that the modes are of
     * @param buckling the modes
     * @return a strip of all of them, up to 24
     * @throws IllegalArgumentException if the title is blank or there is no mode
     */
    public static ShapeStrip of(String title, FrameModel model, Buckling buckling) {
        List<Shown> shown = new ArrayList<>();
        for (int k = 0; k < buckling.modes().size(); k++) {
            BucklingMode mode = buckling.modes().get(k);
            String factor = "load factor " + Numbers.significant(mode.factor(), 4);
            String way = "mostly " + mode.shape().mainDirection();
            shown.add(
                    new Shown(
                            List.of("shape " + (k + 1) + ": " + factor, way),
                            factor + ", " + way,
                            mode.shape()));
        }
        return new ShapeStrip(
                title, model, shown, "buckling shapes", List.of(buckling.loadDefinition()));
    }

    @Override
    ShapeStrip self() {
        return this;
    }

    /**
     * Draws the first shapes only.
     *
     * @param count how many, 1 to the number of shapes there are, at most 24
     * @return this strip
     * @throws IllegalArgumentException if the count is out of its range
     */
    public ShapeStrip first(int count) {
        first =
                (int)
                        Check.within(
                                "number of " + what, count, 1, Math.min(all.size(), MOST_SHAPES));
        return this;
    }

    @Override
    Picture picture() {
        FrameScene scene = scene();
        double factor = SHARE * scene.reach(view());
        List<Panels.Panel> panels = new ArrayList<>();
        double[] extent = scene.extent(view());
        StringBuilder text = new StringBuilder();
        for (int k = 0; k < first; k++) {
            Shown one = all.get(k);
            List<Vector[]> axes =
                    MovedFrame.of(one.shape).courses(scene).stream()
                            .map(course -> course.enlarged(factor))
                            .toList();
            grow(extent, axes);
            panels.add(new Panels.Panel(one.words, page -> draw(page, scene, axes)));
            text.append(k == 0 ? "" : "; ").append(k + 1).append(": ").append(one.inText);
        }
        Board board = new Panels(view(), room(), mostHeight() * MM, extent, panels).drawn(title());
        FrameFooter footer = new FrameFooter(board, room());
        footer.axes(view(), 8 * MM, "");
        footer.key(DeflectedShape.UNDEFORMED, "at rest");
        footer.key(LineStyle.FIRST.pen(), what.equals("modes") ? "mode" : "buckled");
        List<String> notes = new ArrayList<>();
        notes.add("the size of a shape means nothing");
        notes.addAll(remarks);
        notes.addAll(notes());
        footer.notes(notes);
        return Fit.onPage(
                title(),
                described("The first " + first + " " + what + ".", text + "."),
                width(),
                board.marks());
    }

    private void grow(double[] extent, List<Vector[]> axes) {
        for (Vector[] axis : axes) {
            for (Vector place : axis) {
                extent[0] = Math.min(extent[0], view().x(place));
                extent[1] = Math.min(extent[1], -view().y(place));
                extent[2] = Math.max(extent[2], view().x(place));
                extent[3] = Math.max(extent[3], -view().y(place));
            }
        }
    }

    private static void draw(FramePage page, FrameScene scene, List<Vector[]> axes) {
        scene.drawAxes(page, DeflectedShape.UNDEFORMED);
        LineBundle bundle = new LineBundle();
        axes.forEach(axis -> bundle.add(page.line(axis)));
        bundle.draw(page.board(), Pen.full(1, Ink.BLUE));
        scene.drawSupports(page, 0.6, EnumSet.noneOf(FrameSign.class));
    }
}
