package org.skewback.figure;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.skewback.frame.FrameModel;
import org.skewback.frame.Stage;
import org.skewback.frame.StageAction;
import org.skewback.frame.StageResult;
import org.skewback.frame.Support;
import org.skewback.quantity.Quantity;

/**
 * Draws how a frame is built: one small picture a stage, with what the stage adds, takes away or
 * tensions heavier than what was there, its name, and a number of the reader's choice.
 */
public final class StageStrip extends FrameFigure<StageStrip> {

    /** More than this on a page are too small to read. */
    static final int MOST_STAGES = 40;

    private static final Pen THERE = Pen.full(0.55, Ink.BLACK);
    private static final Pen ADDED = Pen.full(1.7, Ink.BLUE);
    private static final Pen TAKEN = new Pen(1.3, Ink.RUST, List.of(3.0, 1.8));
    private static final Pen TENSIONED = new Pen(1.7, Ink.BLACK, List.of(8.0, 1.8, 1.6, 1.8));

    private final List<Stage> stages;
    private final List<StageResult> results;
    private String numberName = "";
    private @Nullable Function<StageResult, @Nullable Quantity> number;

    private StageStrip(
            String title, FrameModel model, List<Stage> stages, List<StageResult> results) {
        super(title, model, FrameView.elevation());
        this.stages = List.copyOf(stages);
        this.results = List.copyOf(results);
        Check.within("number of stages", this.stages.size(), 1, MOST_STAGES);
        if (this.stages.size() != this.results.size()) {
            throw new IllegalArgumentException(
                    "results of "
                            + this.results.size()
                            + " stages stand beside "
                            + this.stages.size()
                            + " stages; there must be one for each");
        }
        for (int i = 0; i < this.stages.size(); i++) {
            if (!this.stages.get(i).name().equals(this.results.get(i).name())) {
                throw new IllegalArgumentException(
                        "result "
                                + (i + 1)
                                + " is of stage "
                                + this.results.get(i).name()
                                + "; it must be of stage "
                                + this.stages.get(i).name());
            }
            Check.printable("name of the stage", this.stages.get(i).name());
        }
    }

    /**
     * Starts a strip of stages, in elevation.
     *
     * @param title the figure's title, one line
     * @param model all nodes and members that ever are
     * @param stages the stages in order, 1 to 40
     * @param results what came of each
     * @return a strip with the name of each stage
     * @throws IllegalArgumentException if the title is blank, the numbers of stages and results differ,
     *     there are too many, or a result is of another stage
     */
    public static StageStrip of(
            String title, FrameModel model, List<Stage> stages, List<StageResult> results) {
        return new StageStrip(title, model, stages, results);
    }

    @Override
    StageStrip self() {
        return this;
    }

    /**
     * Writes a number below each stage, such as how far the crown has gone down.
     *
     * @param name what it is called
     * @param value takes it from the stage's result; null for a stage that has none yet
     * @return this strip
     * @throws IllegalArgumentException if the name is blank
     */
    public StageStrip number(String name, Function<StageResult, @Nullable Quantity> value) {
        numberName = Check.printable("name of the number", name);
        number = value;
        return this;
    }

    /** What a stage changes. */
    private record Change(
            Set<String> added,
            Set<String> taken,
            Set<String> tensioned,
            Map<String, List<Support>> held) {}

    @Override
    Picture picture() {
        FrameScene scene = scene();
        List<Support> supports = new ArrayList<>(model().supports());
        List<Panels.Panel> panels = new ArrayList<>();
        Set<Pen> used = new HashSet<>();
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < stages.size(); i++) {
            Change change = change(stages.get(i), supports);
            List<String> words = words(i, change);
            StageResult result = results.get(i);
            panels.add(new Panels.Panel(words, page -> draw(page, scene, result, change, used)));
            text.append(i == 0 ? "" : "; ").append(String.join(", ", words));
        }
        double[] extent = scene.extent(view());
        Board board = new Panels(view(), room(), mostHeight() * MM, extent, panels).drawn(title());
        FrameFooter footer = new FrameFooter(board, room());
        footer.axes(view(), 8 * MM, "");
        if (view().isTrue()) {
            footer.scaleBar();
        }
        footer.key(THERE, "there already");
        if (used.contains(ADDED)) {
            footer.key(ADDED, "installed in this stage");
        }
        if (used.contains(TAKEN)) {
            footer.key(TAKEN, "taken away in this stage");
        }
        if (used.contains(TENSIONED)) {
            footer.key(TENSIONED, "tensioned or jacked in this stage");
        }
        footer.notes(notes());
        return Fit.onPage(
                title(),
                described(count(stages.size(), "stage") + " of construction.", text + "."),
                width(),
                board.marks());
    }

    private static Change change(Stage stage, List<Support> supports) {
        Change change =
                new Change(
                        new HashSet<>(), new HashSet<>(), new HashSet<>(), new LinkedHashMap<>());
        for (StageAction action : stage.actions()) {
            if (action instanceof StageAction.Install install) {
                change.added.addAll(install.members());
            } else if (action instanceof StageAction.Dismantle dismantle) {
                change.taken.addAll(dismantle.members());
            } else if (action instanceof StageAction.Tension tension) {
                change.tensioned.add(tension.member());
            } else if (action instanceof StageAction.Jack jack) {
                change.tensioned.add(jack.member());
            } else if (action instanceof StageAction.Hold hold) {
                supports.add(hold.support());
            } else if (action instanceof StageAction.LetGo letGo) {
                supports.remove(letGo.support());
            }
        }
        for (Support support : supports) {
            change.held.computeIfAbsent(support.node(), fresh -> new ArrayList<>()).add(support);
        }
        return change;
    }

    private List<String> words(int i, Change change) {
        List<String> words = new ArrayList<>();
        words.add((i + 1) + ": " + stages.get(i).name());
        List<String> done = new ArrayList<>();
        if (!change.added.isEmpty()) {
            done.add(change.added.size() + " installed");
        }
        if (!change.taken.isEmpty()) {
            done.add(change.taken.size() + " taken away");
        }
        if (!change.tensioned.isEmpty()) {
            done.add(change.tensioned.size() + " tensioned");
        }
        if (!done.isEmpty()) {
            words.add(String.join(", ", done));
        }
        if (number != null) {
            @Nullable Quantity value = number.apply(results.get(i));
            words.add(
                    numberName
                            + " "
                            + (value == null ? "–" : Tornado.amount(value.si(), value.unit())));
        }
        return words;
    }

    private static void draw(
            FramePage page, FrameScene scene, StageResult result, Change change, Set<Pen> used) {
        Map<Pen, LineBundle> bundles = new LinkedHashMap<>();
        for (Pen pen : List.of(TAKEN, THERE, ADDED, TENSIONED)) {
            bundles.put(pen, new LineBundle());
        }
        Set<String> standing = new HashSet<>();
        for (MemberLine line : scene.lines()) {
            boolean there = result.solution().carries(line.name());
            boolean taken = change.taken.contains(line.name());
            if (!there && !taken) {
                continue;
            }
            Pen pen =
                    change.tensioned.contains(line.name())
                            ? TENSIONED
                            : change.added.contains(line.name()) ? ADDED : there ? THERE : TAKEN;
            bundles.getOrDefault(pen, new LineBundle())
                    .add(page.line(line.startNode(), line.start(), line.end(), line.endNode()));
            used.add(pen);
            standing.add(line.member().start());
            standing.add(line.member().end());
        }
        bundles.forEach((pen, bundle) -> bundle.draw(page.board(), pen));
        change.held.forEach(
                (node, held) -> {
                    if (standing.contains(node)) {
                        Set<FrameSign> signs = EnumSet.noneOf(FrameSign.class);
                        scene.drawSupport(page, 0.6, signs, node, held);
                    }
                });
    }
}
