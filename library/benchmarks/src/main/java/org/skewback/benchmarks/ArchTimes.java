package org.skewback.benchmarks;

import com.sun.management.OperatingSystemMXBean;
import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.CompletableFuture;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import org.skewback.arch.DeckArch;
import org.skewback.arch.DeckArchFrame;
import org.skewback.arch.DeckOnColumns;
import org.skewback.arch.RibMakeup;
import org.skewback.arch.RibPlanes;
import org.skewback.arch.Springings;
import org.skewback.data.CsvTable;
import org.skewback.form.Catenary;
import org.skewback.frame.BucklingAnalysis;
import org.skewback.frame.Combination;
import org.skewback.frame.Envelope;
import org.skewback.frame.LinearAnalysis;
import org.skewback.frame.Load;
import org.skewback.frame.LoadCase;
import org.skewback.frame.LoadTrain;
import org.skewback.frame.Material;
import org.skewback.frame.ModalAnalysis;
import org.skewback.frame.Modes;
import org.skewback.frame.MovingLoad;
import org.skewback.steel.Box;
import org.skewback.steel.Section;
import org.skewback.steel.Shape;
import org.skewback.steel.Tube;
import org.skewback.train.TrainLoad;

/**
 * What the demo's arch costs from a cold start, as a sheet pays for it: static analysis, four shapes of
 * buckling, 20 modes, and envelopes of all members under a half-span train and under a train that moves by
 * 0.5 m. The goal is 3 s after the start on two cores.
 */
public final class ArchTimes {

    private static final double SPAN = 336;
    private static final double STEP = 0.5;

    private ArchTimes() {}

    /**
     * Prints the time that each part takes by the clock and on the processor, and the load of the machine.
     *
     * @param args file of load models; how often all is done in one process
     */
    public static void main(String[] args) {
        TrainLoad model =
                Objects.requireNonNull(
                        TrainLoad.read(CsvTable.read(Path.of(args[0]))).get("load model 71"),
                        "load model 71 is not in the file");
        LoadTrain train = model.times(1.21).asForces(STEP, SPAN / 2);
        for (int round = 0; round < Integer.parseInt(args[1]); round++) {
            round(train);
        }
    }

    private static void round(LoadTrain train) {
        double clock = System.nanoTime();
        double processor = processorTime();
        DeckArchFrame frame = timed("frame", () -> DeckArchFrame.of(arch()));
        LinearAnalysis analysis = timed("factorization", () -> LinearAnalysis.of(frame.model()));
        LoadCase permanent = permanent(frame);
        timed("static", () -> analysis.solve(permanent));
        // At once, as the routine of stability does it; each line then has the processor of both.
        CompletableFuture<Modes> modes =
                CompletableFuture.supplyAsync(
                        () -> timed("20 modes", () -> ModalAnalysis.of(frame.model()).modes(20)));
        timed("4 shapes", () -> BucklingAnalysis.of(frame.model()).factors(permanent, 4));
        modes.join();
        timed(
                "half span",
                () ->
                        Envelope.of(
                                analysis.solve(
                                        List.of(
                                                frame.onDeck("west", 97e3, 0, SPAN / 2),
                                                frame.onDeck("east", 97e3, SPAN / 2, SPAN))),
                                List.of(
                                        new Combination("w", Map.of("west", 1.0)),
                                        new Combination("e", Map.of("east", 1.0))),
                                3));
        timed(
                "moving train",
                () -> new MovingLoad(analysis, train, frame.lane(), STEP).envelope(3));
        System.out.printf(
                Locale.ROOT,
                "all of %d unknowns, %d members: %.2f s, processor %.2f s, load of the machine"
                        + " %.1f%n",
                analysis.unknowns(),
                frame.model().members().size(),
                (System.nanoTime() - clock) / 1e9,
                processorTime() - processor,
                ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage());
    }

    private static LoadCase permanent(DeckArchFrame frame) {
        List<Load> loads = new ArrayList<>(frame.weight().loads());
        loads.addAll(frame.onDeck("deck", 88e3, 0, SPAN).loads());
        return new LoadCase("permanent", loads);
    }

    private static DeckArch arch() {
        Shape post = new Box(0.5, 0.5, 0.014, 0.014);
        return new DeckArch(
                Catenary.ofRise(SPAN, 72),
                Springings.FIXED,
                new RibPlanes(12, 20),
                new RibMakeup.Chords(new Box(1.2, 1.2, 0.038, 0.038), 6, 9, post, post),
                new Tube(0.4, 0.01),
                3,
                new DeckOnColumns(
                        77,
                        IntStream.rangeClosed(1, 13).mapToObj(i -> 24.0 * i).toList(),
                        new Box(1.6, 1.6, 0.024, 0.024),
                        new Box(1.2, 2, 0.024, 0.024),
                        Section.slender("deck", 0.62, 0.4, 0.55, 4),
                        List.of(6)),
                Material.steel());
    }

    private static <T> T timed(String name, Supplier<T> work) {
        double clock = System.nanoTime();
        double processor = processorTime();
        T result = work.get();
        System.out.printf(
                Locale.ROOT,
                "%-14s %6.3f s, processor %6.3f s%n",
                name,
                (System.nanoTime() - clock) / 1e9,
                processorTime() - processor);
        return result;
    }

    /** All threads of the process, compiler and collector among them, s. */
    private static double processorTime() {
        return ((OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean())
                        .getProcessCpuTime()
                / 1e9;
    }
}
