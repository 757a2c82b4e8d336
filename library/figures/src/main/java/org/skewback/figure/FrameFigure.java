package org.skewback.figure;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.skewback.frame.FrameModel;
import org.skewback.frame.Member;
import org.skewback.sheet.Figure;

/**
 * What all figures of frames have in common: the view, the members shown, the size, and words.
 *
 * <p>A figure in the making belongs to one thread.
 *
 * @param <T> the kind of figure
 */
public abstract class FrameFigure<T extends FrameFigure<T>> {

    static final double MM = Board.MILLIMETRE;

    private final String title;
    private final FrameModel model;
    private final List<String> notes = new ArrayList<>();
    private FrameView view;
    private @Nullable Set<String> only;
    private String description = "";
    private double width = Elevation.A4_TEXT_WIDTH;
    private double mostHeight = Elevation.A4_MOST_HEIGHT;

    FrameFigure(String title, FrameModel model, FrameView view) {
        this.title = Check.words("title", title);
        this.model = model;
        this.view = view;
    }

    abstract T self();

    abstract Picture picture();

    /**
     * Sets from where the frame is seen.
     *
     * @param from the view
     * @return this figure
     */
    public T seen(FrameView from) {
        view = from;
        return self();
    }

    /**
     * Shows some members only, and of the nodes and supports those that belong to them.
     *
     * @param members names of the members, at least one
     * @return this figure
     * @throws IllegalArgumentException if there is none, or one is not in the model
     */
    public T only(Collection<String> members) {
        members.forEach(model::member);
        if (members.isEmpty()) {
            throw new IllegalArgumentException(
                    "figure \"" + title + "\" is to show no members; there must be at least 1");
        }
        only = new HashSet<>(members);
        return self();
    }

    /**
     * Says what the figure shows, for whoever cannot see it.
     *
     * @param text one or more sentences; without them the figure says what it can
     * @return this figure
     * @throws IllegalArgumentException if the text is blank
     */
    public T describedBy(String text) {
        description = Check.words("description", text);
        return self();
    }

    /**
     * Sets the printed width and the greatest printed height.
     *
     * @param widthMillimetres printed width in mm, 60 to 400; 165 unless set
     * @param mostHeightMillimetres greatest printed height in mm, 30 to 560; 200 unless set
     * @return this figure
     * @throws IllegalArgumentException if a size is out of its range
     */
    public T size(double widthMillimetres, double mostHeightMillimetres) {
        width = Check.within("width in mm", widthMillimetres, 60, 400);
        mostHeight = Check.within("height in mm", mostHeightMillimetres, 30, 560);
        return self();
    }

    /**
     * Adds a note below the drawing.
     *
     * @param text the note, without a full stop
     * @return this figure
     * @throws IllegalArgumentException if the text is blank or the font lacks a character of it
     */
    public T note(String text) {
        notes.add(Check.printable("note", text));
        return self();
    }

    /**
     * Draws.
     *
     * @return the figure; later changes of this do not reach it
     * @throws IllegalArgumentException if there is nothing to see in this view, too much to draw, or no
     *     room for the text
     */
    public final Figure figure() {
        return new DrawnFigure(picture());
    }

    String title() {
        return title;
    }

    FrameModel model() {
        return model;
    }

    FrameView view() {
        return view;
    }

    double width() {
        return width;
    }

    double mostHeight() {
        return mostHeight;
    }

    /** Width of the page within its border, in points. */
    double room() {
        return width * MM - 2;
    }

    List<String> notes() {
        return notes;
    }

    /** The words given, with those that the figure adds; or those that it has of itself. */
    String described(String ofItself, String always) {
        return (description.isEmpty() ? ofItself : description)
                + (always.isEmpty() ? "" : " " + always);
    }

    FrameScene scene() {
        FrameScene scene = new FrameScene(model, this::isShown);
        double reach = scene.lines().isEmpty() ? 0 : scene.reach(view);
        if (!(reach > 0)) {
            throw new IllegalArgumentException(
                    "figure \""
                            + title
                            + "\" has "
                            + scene.lines().size()
                            + " members, "
                            + reach
                            + " m from end to end in the "
                            + view.name()
                            + "; there must be at least 1, seen longer than 0 m");
        }
        return scene;
    }

    private boolean isShown(Member member) {
        return only == null || only.contains(member.name());
    }

    /** Whether all nodes lie in one plane y = const. */
    static boolean isFlat(FrameModel model) {
        return model.nodes().stream()
                .allMatch(node -> node.place().y() == model.nodes().get(0).place().y());
    }

    static String count(int number, String one) {
        return number + " " + one + (number == 1 ? "" : "s");
    }
}
