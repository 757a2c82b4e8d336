package org.skewback.benchmarks;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.List;
import java.util.Locale;
import org.skewback.frame.BeamColumn;
import org.skewback.frame.Equilibrium;
import org.skewback.frame.ForceComponent;
import org.skewback.frame.FrameModel;
import org.skewback.frame.FrameModelBuilder;
import org.skewback.frame.FrameSolution;
import org.skewback.frame.LinearAnalysis;
import org.skewback.frame.LoadCase;
import org.skewback.frame.Material;
import org.skewback.frame.ModalAnalysis;
import org.skewback.frame.Modes;
import org.skewback.frame.Motion;
import org.skewback.frame.NodalLoad;
import org.skewback.frame.Orientation;
import org.skewback.frame.SelfWeight;
import org.skewback.frame.Vector;
import org.skewback.steel.Box;
import org.skewback.steel.Section;

/**
 * A frame of about 10⁵ unknowns run from end to end, with time and memory: model, stiffness, two load
 * cases, forces and equilibrium of the whole, and the lowest modes.
 *
 * <p>Run it with {@code java -Xmx2g -cp <classes and libraries> org.skewback.benchmarks.LargeModel}; two
 * numbers after it change the panels along and the modes.
 */
public final class LargeModel {

    private static final int WIDE = 6;
    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

    private long wall = System.nanoTime();
    private long processor = THREADS.getCurrentThreadCpuTime();

    private LargeModel() {}

    /**
     * Runs it.
     *
     * @param args panels along (466 unless given), number of modes (5 unless given)
     */
    public static void main(String[] args) {
        int panels = args.length > 0 ? Integer.parseInt(args[0]) : 466;
        int modes = args.length > 1 ? Integer.parseInt(args[1]) : 5;
        new LargeModel().run(panels, modes);
    }

    /** A truss girder in space, six by six chords, held at every fortieth frame. */
    private static FrameModel girder(int panels) {
        Material steel = Material.steel();
        Section chord = new Box(0.4, 0.4, 0.02, 0.02).section("chord");
        Section brace = new Box(0.2, 0.2, 0.01, 0.01).section("brace");
        Orientation across = new Orientation(Vector.Y, 0);
        FrameModelBuilder builder = FrameModel.builder();
        for (int i = 0; i <= panels; i++) {
            for (int j = 0; j < WIDE; j++) {
                for (int k = 0; k < WIDE; k++) {
                    String here = name(i, j, k);
                    builder.node(here, 3.0 * i, 2.0 * j, 2.0 * k);
                    if (i > 0) {
                        builder.add(member("x", name(i - 1, j, k), here, steel, chord, across));
                    }
                    if (j > 0) {
                        builder.add(
                                BeamColumn.of("y" + here, name(i, j - 1, k), here, steel, brace));
                    }
                    if (k > 0) {
                        builder.add(member("z", name(i, j, k - 1), here, steel, brace, across));
                    }
                    if (i > 0 && k > 0) {
                        builder.add(member("d", name(i - 1, j, k - 1), here, steel, brace, across));
                    }
                    if (k == 0 && i % 40 == 0) {
                        builder.pin(here);
                    }
                }
            }
        }
        return builder.build();
    }

    private static BeamColumn member(
            String kind, String from, String to, Material steel, Section section, Orientation up) {
        return BeamColumn.of(kind + to, from, to, steel, section).oriented(up);
    }

    private static String name(int i, int j, int k) {
        return i + "." + j + "." + k;
    }

    private void run(int panels, int count) {
        FrameModel model = girder(panels);
        String middle = name(panels / 2, 0, WIDE - 1);
        told("model", model.nodes().size() + " nodes, " + model.members().size() + " members");
        LinearAnalysis analysis = LinearAnalysis.of(model);
        told("stiffness and factor", analysis.unknowns() + " unknowns");
        List<FrameSolution> solutions =
                analysis.solve(
                        List.of(
                                LoadCase.of("G", SelfWeight.standard()),
                                LoadCase.of("P", NodalLoad.force(middle, 0, 1e5, -1e5))));
        told("two load cases", "");
        FrameSolution weight = solutions.get(0);
        double moment = weight.largest(ForceComponent.MOMENT_Y).forces().momentY();
        told("largest moment of all members", String.format(Locale.ROOT, "%.4g N·m", moment));
        Equilibrium equilibrium = weight.equilibrium();
        told(
                "equilibrium of all nodes",
                String.format(Locale.ROOT, "residual %.1e", equilibrium.residual()));
        Modes modes = ModalAnalysis.of(model).divided(1).modes(count);
        told(
                "lowest modes",
                String.format(
                        Locale.ROOT,
                        "%d, first %.4g Hz, %d counted below %.4g Hz, along y %.1f %% of the mass",
                        count,
                        modes.get(0).frequency(),
                        modes.countBelow(),
                        modes.checkedTo(),
                        100 * modes.massShare(Motion.ALONG_Y)));
    }

    private void told(String what, String result) {
        long now = System.nanoTime();
        long worked = THREADS.getCurrentThreadCpuTime();
        Runtime runtime = Runtime.getRuntime();
        System.out.printf(
                Locale.ROOT,
                "%-32s %8.2f s wall %8.2f s processor %6d MiB in use; %s%n",
                what,
                (now - wall) / 1e9,
                (worked - processor) / 1e9,
                (runtime.totalMemory() - runtime.freeMemory()) >> 20,
                result);
        wall = System.nanoTime();
        processor = THREADS.getCurrentThreadCpuTime();
    }
}
