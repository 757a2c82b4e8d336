package org.skewback.benchmarks;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.skewback.frame.BeamColumn;
import org.skewback.frame.Envelope;
import org.skewback.frame.ForceComponent;
import org.skewback.frame.FrameModel;
import org.skewback.frame.FrameModelBuilder;
import org.skewback.frame.InfluenceLine;
import org.skewback.frame.Lane;
import org.skewback.frame.LinearAnalysis;
import org.skewback.frame.LoadCase;
import org.skewback.frame.LoadTrain;
import org.skewback.frame.Material;
import org.skewback.frame.Member;
import org.skewback.frame.Motion;
import org.skewback.frame.MovingLoad;
import org.skewback.frame.Passage;
import org.skewback.frame.Response;
import org.skewback.frame.SelfWeight;
import org.skewback.frame.Stage;
import org.skewback.frame.StageAction;
import org.skewback.frame.StageAnalysis;
import org.skewback.frame.StageResult;
import org.skewback.frame.Vector;
import org.skewback.steel.Box;
import org.skewback.steel.Section;
import org.skewback.steel.Tube;

/**
 * An arch bridge of about 3 000 unknowns: a train at 2 000 positions, and 40 stages of erection.
 *
 * <p>The goals are 0.5 s and 0.4 s, each from the model on, on one thread.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 8, time = 1)
@Fork(2)
public class FrameBenchmark {

    private static final int PANELS = 42;
    private static final int PARTS = 5;
    private static final int POSITIONS = 2000;
    private static final int STAGES = 40;

    private final LoadTrain train = LoadTrain.of("train", 250e3, 0, 1.6, 3.2, 4.8, 10, 12, 18, 20);
    private final FrameModel model = bridge();
    private final Lane lane = track();
    private final List<Stage> stages = stages();

    /** Makes the benchmark. */
    public FrameBenchmark() {}

    /**
     * Forces of all members at three stations, enveloped with what acts at the same time.
     *
     * @return the envelope
     */
    @Benchmark
    public Envelope trainOverAllMembers() {
        double step = (lane.length() + train.length()) / (POSITIONS - 1);
        return new MovingLoad(LinearAnalysis.of(model), train, lane, step).envelope(3);
    }

    /**
     * One response by its influence line.
     *
     * @return its extremes
     */
    @Benchmark
    public Passage trainOverOneInfluenceLine() {
        double step = (lane.length() + train.length()) / (POSITIONS - 1);
        InfluenceLine line =
                InfluenceLine.of(
                        LinearAnalysis.of(model),
                        Response.force("rib0.7", 1, ForceComponent.MOMENT_Y),
                        lane);
        return Passage.of(line, train, step);
    }

    /**
     * Ribs and columns, then the deck in 39 steps, each fitted to what stands.
     *
     * @return the stages
     */
    @Benchmark
    public List<StageResult> erection() {
        return StageAnalysis.of(model).run(stages);
    }

    private Lane track() {
        List<String> deck = new ArrayList<>();
        for (int i = 1; i <= PANELS; i++) {
            for (int k = 1; k <= PARTS; k++) {
                deck.add("deck0." + i + "." + k);
            }
        }
        return Lane.along("track", model, deck, new Vector(0, 0.7, 0));
    }

    private List<Stage> stages() {
        List<Stage> all = new ArrayList<>();
        List<String> first = new ArrayList<>();
        for (Member member : model.members()) {
            if (!member.name().startsWith("deck")) {
                first.add(member.name());
            }
        }
        all.add(
                Stage.of(
                        "ribs",
                        new StageAction.Install(first, StageAction.Fit.DESIGNED),
                        new StageAction.Apply(LoadCase.of("g", SelfWeight.standard()))));
        for (int s = 1; s < STAGES; s++) {
            List<String> next = new ArrayList<>();
            int from = 1 + (s - 1) * PANELS / (STAGES - 1);
            for (int i = from; i <= s * PANELS / (STAGES - 1); i++) {
                for (int k = 1; k <= PARTS; k++) {
                    next.add("deck0." + i + "." + k);
                    next.add("deck1." + i + "." + k);
                }
            }
            all.add(Stage.of("deck " + s, new StageAction.Install(next, StageAction.Fit.FITTED)));
        }
        return all;
    }

    private static FrameModel bridge() {
        Material steel = Material.steel();
        Section rib = new Box(1.2, 1.4, 0.04, 0.04).section("rib");
        Section column = new Tube(0.8, 0.02).section("column");
        Section deck = new Box(1, 2, 0.02, 0.03).section("deck");
        double span = 120;
        double rise = 30;
        FrameModelBuilder b = FrameModel.builder();
        for (int side = 0; side < 2; side++) {
            double y = 8 * side - 4;
            for (int i = 0; i <= PANELS; i++) {
                double x = span * i / PANELS;
                String foot = "r" + side + "." + i;
                String head = "d" + side + "." + i;
                b.node(foot, x, y, 4 * rise * x * (span - x) / (span * span));
                b.node(head, x, y, rise + 4);
                b.add(BeamColumn.of("column" + side + "." + i, foot, head, steel, column));
                if (i == 0) {
                    continue;
                }
                String lastFoot = "r" + side + "." + (i - 1);
                b.add(BeamColumn.of("rib" + side + "." + i, lastFoot, foot, steel, rib));
                String last = "d" + side + "." + (i - 1);
                for (int k = 1; k <= PARTS; k++) {
                    String next = head;
                    if (k < PARTS) {
                        next = head + "." + k;
                        b.node(next, x - span / PANELS * (PARTS - k) / PARTS, y, rise + 4);
                    }
                    b.add(
                            BeamColumn.of(
                                    "deck" + side + "." + i + "." + k, last, next, steel, deck));
                    last = next;
                }
            }
            b.fix("r" + side + ".0").fix("r" + side + "." + PANELS);
            for (int end = 0; end <= PANELS; end += PANELS) {
                b.hold("d" + side + "." + end, Motion.ALONG_Y, Motion.ALONG_Z);
            }
        }
        for (int i = 0; i <= PANELS; i++) {
            b.add(BeamColumn.of("tie" + i, "d0." + i, "d1." + i, steel, deck));
            if (i > 0 && i < PANELS) {
                b.add(BeamColumn.of("brace" + i, "r0." + i, "r1." + i, steel, column));
            }
        }
        return b.build();
    }
}
