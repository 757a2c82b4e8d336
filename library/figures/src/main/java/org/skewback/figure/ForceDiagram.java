package org.skewback.figure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import org.skewback.frame.Envelope;
import org.skewback.frame.ForceComponent;
import org.skewback.frame.FrameModel;
import org.skewback.frame.FrameSolution;
import org.skewback.frame.Vector;

/**
 * Draws a force along the members of a frame: axial force, shear, torque, or bending moment, the moment
 * on the side of the member that it puts in tension.
 *
 * <p>One solution is drawn as an area, hatched by sign; up to four over one another, or an envelope, as
 * lines. The side on which values stand is written on every diagram, extremes stand beside their
 * places, and a bar shows what length stands for what force. Lengths of ordinates are to one scale in
 * the whole figure; in an axonometric view they are foreshortened as the members are.
 */
public final class ForceDiagram extends FrameFigure<ForceDiagram> {

    /** More diagrams than this are a black page. */
    static final int MOST_MEMBERS = 5000;

    private static final double LONGEST = 17 * MM;
    private static final double FARTHEST_LABEL = 18;
    private static final int USUAL_LABELS = 16;

    /** Two extremes of one sign nearer than this on the page are one. */
    private static final double APART = 17 * MM;

    /** A diagram of which less is seen than this share lies in the line of sight. */
    private static final double EDGEWISE = 0.2;

    private final ForceComponent component;
    private final Function<FrameScene, List<ForceTrace>> source;
    private final boolean envelope;
    private final String of;
    private double newtonsPerMillimetre;
    private int labels = USUAL_LABELS;

    private ForceDiagram(
            String title,
            FrameModel model,
            ForceComponent component,
            Function<FrameScene, List<ForceTrace>> source,
            boolean envelope,
            String of) {
        super(title, model, FrameView.elevation());
        this.component = component;
        this.source = source;
        this.envelope = envelope;
        this.of = of;
    }

    /**
     * Starts the diagram of a force, in elevation.
     *
     * @param title the figure's title, one line
     * @param component the force
     * @param solutions one to four solutions of one model
     * @return a diagram whose scale follows from the largest value
     * @throws IllegalArgumentException if the title is blank, or there is no solution, more than four,
     *     or one of another model
     */
    public static ForceDiagram of(
            String title, ForceComponent component, FrameSolution... solutions) {
        DeflectedShape.requireCount("solutions", solutions.length);
        List<FrameSolution> all = List.of(solutions);
        FrameModel model = all.get(0).model();
        all.forEach(one -> MovedFrame.sameModel(model, one.model(), one.name()));
        return new ForceDiagram(
                title,
                model,
                component,
                scene -> all.stream().map(one -> ForceTrace.of(one, component, scene)).toList(),
                false,
                String.join(", ", all.stream().map(FrameSolution::name).toList()));
    }

    /**
     * Starts the diagram of an envelope, in elevation: one line through the largest values, one through
     * the smallest.
     *
     * @param title the figure's title, one line
     * @param model the model that the envelope is of
     * @param component the force
     * @param envelope the envelope; members that are not in it are drawn without values
     * @return a diagram whose scale follows from the largest value
     * @throws IllegalArgumentException if the title is blank
     */
    public static ForceDiagram of(
            String title, FrameModel model, ForceComponent component, Envelope envelope) {
        return new ForceDiagram(
                title,
                model,
                component,
                scene ->
                        List.of(
                                ForceTrace.of(envelope, component, scene, true),
                                ForceTrace.of(envelope, component, scene, false)),
                true,
                "an envelope");
    }

    @Override
    ForceDiagram self() {
        return this;
    }

    /**
     * Sets the scale of the ordinates.
     *
     * @param perMillimetre force for one millimetre of the printed page, N or N·m, positive; without it
     *     the largest value is 17 mm long
     * @return this diagram
     * @throws IllegalArgumentException if it is not positive and finite
     */
    public ForceDiagram ordinates(double perMillimetre) {
        newtonsPerMillimetre = Check.positive("force for a millimetre in N or N·m", perMillimetre);
        return this;
    }

    /**
     * Sets how many extremes are written at most.
     *
     * @param most 0 to 100; 16 unless set
     * @return this diagram
     * @throws IllegalArgumentException if the number is out of its range
     */
    public ForceDiagram extremes(int most) {
        labels = (int) Check.within("number of extremes written", most, 0, 100);
        return this;
    }

    /**
     * A value that may be written.
     *
     * @param line the member
     * @param position where, from the member's start, m
     * @param value the value, SI
     * @param trace number of its line
     */
    private record Extreme(MemberLine line, double position, double value, int trace) {}

    @Override
    Picture picture() {
        FrameScene scene = scene();
        if (scene.lines().size() > MOST_MEMBERS) {
            throw new IllegalArgumentException(
                    "members of diagram \""
                            + title()
                            + "\" are "
                            + scene.lines().size()
                            + "; allowed are at most "
                            + MOST_MEMBERS
                            + ", chosen by only");
        }
        List<ForceTrace> traces = source.apply(scene);
        List<MemberLine> seen = scene.lines().stream().filter(line -> isSeen(line)).toList();
        double most = traces.stream().mapToDouble(ForceTrace::most).max().orElse(0);
        if (seen.isEmpty()) {
            throw new IllegalArgumentException(
                    component.symbol()
                            + " of all members stands at right angles to the "
                            + view().name()
                            + "; choose a view in which the members bend");
        }
        if (!(most > 0)) {
            throw new IllegalArgumentException(
                    component.symbol()
                            + " of diagram \""
                            + title()
                            + "\" is 0 in all members drawn; it must differ from 0 somewhere");
        }
        ForceUnit unit = ForceUnit.of(component, most);
        double perPoint = newtonsPerMillimetre > 0 ? newtonsPerMillimetre / MM : most / LONGEST;
        List<Extreme> extremes = extremes(seen, traces);
        return Fit.picture(
                title(),
                described(
                        component.symbol() + " in " + view().name() + " under " + of + ".",
                        words(extremes, unit)),
                width(),
                mostHeight(),
                scene.extent(view()),
                scale -> drawn(scene, seen, traces, extremes, scale, perPoint, unit));
    }

    private boolean isSeen(MemberLine line) {
        if (line.isLink()) {
            return false;
        }
        Vector along = line.end().minus(line.start()).unit();
        return view().seen(along) > EDGEWISE && (side(line)[0] != 0 || side(line)[1] != 0);
    }

    /**
     * Direction on the page in which positive values stand off a member, of length 1 where the picture
     * is true. (0, 0) where it is not seen.
     */
    private double[] side(MemberLine line) {
        List<Vector> axes = model().localAxes(line.name());
        Vector direction =
                switch (component) {
                    case MOMENT_Y -> axes.get(2).times(-1);
                    case MOMENT_Z -> axes.get(1).times(-1);
                    case SHEAR_Y -> axes.get(1);
                    case SHEAR_Z, AXIAL, TORQUE -> axes.get(2);
                };
        if (component == ForceComponent.AXIAL || component == ForceComponent.TORQUE) {
            // No plane of its own: it takes the one that is seen better.
            if (view().seen(axes.get(1)) > view().seen(axes.get(2)) + 1e-6) {
                direction = axes.get(1);
            }
        }
        double[] page = {view().x(direction), -view().y(direction)};
        double length = Math.sqrt(page[0] * page[0] + page[1] * page[1]);
        if (length < EDGEWISE) {
            return new double[2];
        }
        return view().isTrue() ? new double[] {page[0] / length, page[1] / length} : page;
    }

    private List<Extreme> extremes(List<MemberLine> seen, List<ForceTrace> traces) {
        List<Extreme> all = new ArrayList<>();
        for (MemberLine line : seen) {
            for (int t = 0; t < traces.size(); t++) {
                ForceTrace.Course course = traces.get(t).course(line.name());
                if (course == null) {
                    continue;
                }
                int high = 0;
                int low = 0;
                for (int i = 1; i < course.size(); i++) {
                    high = course.value(i) > course.value(high) ? i : high;
                    low = course.value(i) < course.value(low) ? i : low;
                }
                for (int i : new int[] {high, low}) {
                    if (course.value(i) != 0) {
                        all.add(new Extreme(line, course.position(i), course.value(i), t));
                    }
                }
            }
        }
        // Of equal ones, as symmetry makes them, the first in the model, whatever the last digit
        // says.
        double most = all.stream().mapToDouble(e -> Math.abs(e.value)).max().orElse(0);
        all.sort(
                Comparator.comparingLong(
                        (Extreme e) -> -Math.round(Math.abs(e.value) / most * 1e7)));
        return all;
    }

    private String words(List<Extreme> extremes, ForceUnit unit) {
        StringBuilder text = new StringBuilder();
        for (int sign = 1; sign >= -1; sign -= 2) {
            int wanted = sign;
            extremes.stream()
                    .filter(e -> e.value * wanted > 0)
                    .findFirst()
                    .ifPresent(
                            e ->
                                    text.append(wanted > 0 ? "Largest value " : "Smallest value ")
                                            .append(unit.written(e.value))
                                            .append(" in member ")
                                            .append(e.line.name())
                                            .append(", ")
                                            .append(Numbers.shortest(e.position, 2))
                                            .append(" m from its start. "));
        }
        return text.append(convention()).append('.').toString();
    }

    private String convention() {
        return switch (component) {
            case MOMENT_Y, MOMENT_Z ->
                    component.symbol()
                            + " is drawn on the side in tension; it is positive with tension on the"
                            + " side of local −"
                            + (component == ForceComponent.MOMENT_Y ? "z" : "y");
            case AXIAL ->
                    "Tension is positive, drawn on the side of local z, or of y where that is seen"
                            + " better; compression on the other side";
            case TORQUE ->
                    "Torque is positive where its vector points out of the section, drawn on the"
                            + " side of local z, or of y where that is seen better";
            case SHEAR_Y, SHEAR_Z ->
                    component.symbol()
                            + " is positive where the part before pushes the part beyond along"
                            + " local "
                            + (component == ForceComponent.SHEAR_Y ? "y" : "z")
                            + ", drawn on that side";
        };
    }

    private Board drawn(
            FrameScene scene,
            List<MemberLine> seen,
            List<ForceTrace> traces,
            List<Extreme> extremes,
            double scale,
            double perPoint,
            ForceUnit unit) {
        Board board = new Board(scale);
        FramePage page = new FramePage(board, view());
        boolean[] signs = new boolean[2];
        List<LineBundle> outlines = new ArrayList<>();
        traces.forEach(trace -> outlines.add(new LineBundle()));
        for (MemberLine line : seen) {
            MemberDiagram diagram = new MemberDiagram(page, line, side(line), perPoint);
            if (envelope) {
                diagram.fillBetween(traces.get(0), traces.get(1));
            } else if (traces.size() == 1) {
                diagram.fill(traces.get(0), signs);
            }
            for (int t = 0; t < traces.size(); t++) {
                diagram.outline(traces.get(t), outlines.get(t));
            }
        }
        for (int t = 0; t < outlines.size(); t++) {
            outlines.get(t).draw(board, pen(t, traces.size()));
        }
        scene.drawAxes(page, MemberKind.BEAM.pen());
        Set<FrameSign> used = EnumSet.noneOf(FrameSign.class);
        scene.drawSupports(page, 1, used);
        int written = write(page, extremes, traces.size(), perPoint, unit);
        footer(page, traces, signs, perPoint, unit, scene.lines().size() - seen.size(), written);
        return board;
    }

    private Pen pen(int trace, int count) {
        return count == 1 ? Pen.full(0.9, Ink.BLUE) : DeflectedShape.IN_TURN[trace].pen();
    }

    /** Writes extremes, the largest first, each away from others of its sign. */
    private int write(
            FramePage page, List<Extreme> extremes, int count, double perPoint, ForceUnit unit) {
        List<double[]> taken = new ArrayList<>();
        int written = 0;
        double least = extremes.isEmpty() ? 0 : 0.04 * Math.abs(extremes.get(0).value);
        for (Extreme extreme : extremes) {
            if (written >= labels || Math.abs(extreme.value) < least) {
                break;
            }
            MemberDiagram diagram =
                    new MemberDiagram(page, extreme.line, side(extreme.line), perPoint);
            double[] at = diagram.ordinate(extreme.position, extreme.value);
            double sign = Math.signum(extreme.value);
            boolean near =
                    taken.stream()
                            .anyMatch(
                                    other ->
                                            other[2] == sign
                                                    && StrictMath.hypot(
                                                                    at[0] - other[0],
                                                                    at[1] - other[1])
                                                            < APART);
            if (near) {
                continue;
            }
            double[] side = side(extreme.line);
            double[] way = {side[0] * sign, side[1] * sign};
            Ink ink = count == 1 ? Ink.BLUE : DeflectedShape.IN_TURN[extreme.trace].words();
            if (NearText.write(
                    page.board(),
                    at[0],
                    at[1],
                    unit.written(extreme.value),
                    ink,
                    way,
                    FARTHEST_LABEL,
                    written < 2 ? Double.POSITIVE_INFINITY : 24)) {
                taken.add(new double[] {at[0], at[1], sign});
                written++;
            }
        }
        return written;
    }

    private void footer(
            FramePage page,
            List<ForceTrace> traces,
            boolean[] signs,
            double perPoint,
            ForceUnit unit,
            int unseen,
            int written) {
        FrameFooter footer = new FrameFooter(page.board(), room());
        footer.axes(view(), 8 * MM, "");
        if (view().isTrue()) {
            footer.scaleBar();
        }
        double bar = Numbers.niceBelow(LONGEST * perPoint);
        footer.measure(bar / perPoint, component.symbol() + " " + unit.written(bar));
        if (envelope) {
            footer.key(SignArea.BETWEEN, "between the extremes");
        }
        if (signs[0]) {
            footer.key(SignArea.POSITIVE, component.symbol() + " above 0");
        }
        if (signs[1]) {
            footer.key(SignArea.NEGATIVE, component.symbol() + " below 0");
        }
        for (int t = 0; t < traces.size() && traces.size() > 1; t++) {
            footer.key(pen(t, traces.size()), Check.printable("name", traces.get(t).name()));
        }
        List<String> all = new ArrayList<>();
        all.add(convention());
        if (written > 0) {
            all.add("extremes in " + unit.symbol());
        }
        if (unseen > 0) {
            all.add(
                    count(unseen, "member")
                            + " whose diagram is not seen in this view "
                            + (unseen == 1 ? "has" : "have")
                            + " none");
        }
        all.addAll(notes());
        footer.notes(all);
    }
}
