package org.skewback.frame;

import java.util.Locale;
import org.skewback.steel.Box;
import org.skewback.steel.Section;
import org.skewback.steel.Tube;

/**
 * An arch bridge of two lattice ribs of four chords each, with columns and a deck, of more than 60 000
 * unknowns: model, factor and the solution of a load, in whatever heap this process has.
 */
final class LargeBridge {

    private static final Section CHORD = new Tube(0.8, 0.03).section("chord");
    private static final Section BRACE = new Tube(0.3, 0.01).section("brace");
    private static final Section DECK = new Box(1.0, 1.6, 0.02, 0.03).section("deck");
    private static final double[][] CORNERS = {{0, 0}, {0, 6}, {4, 0}, {4, 6}};

    private LargeBridge() {}

    private static String chord(int panel, int rib, int corner) {
        return "r" + panel + "." + rib + "." + corner;
    }

    private static String deck(int panel, int girder) {
        return "d" + panel + "." + girder;
    }

    static FrameModel model(int panels) {
        FrameModelBuilder builder = FrameModel.builder();
        for (int i = 0; i <= panels; i++) {
            double x = 400.0 * i / panels;
            double axis = 80 * (1 - (x / 200 - 1) * (x / 200 - 1));
            for (int rib = 0; rib < 2; rib++) {
                for (int c = 0; c < 4; c++) {
                    String here = chord(i, rib, c);
                    builder.node(here, x, 16 * rib + CORNERS[c][0], axis + CORNERS[c][1]);
                    if (i == 0 || i == panels) {
                        builder.fix(here);
                    }
                    if (i > 0) {
                        beam(builder, chord(i - 1, rib, c), here, CHORD);
                        beam(builder, chord(i - 1, rib, 3 - c), here, BRACE);
                    }
                }
                beam(builder, chord(i, rib, 0), chord(i, rib, 1), BRACE);
                beam(builder, chord(i, rib, 0), chord(i, rib, 2), BRACE);
                beam(builder, chord(i, rib, 1), chord(i, rib, 3), BRACE);
                beam(builder, chord(i, rib, 2), chord(i, rib, 3), BRACE);
            }
            beam(builder, chord(i, 0, 3), chord(i, 1, 1), BRACE);
            for (int girder = 0; girder < 4; girder++) {
                builder.node(deck(i, girder), x, girder * 6.5, 92);
                if (i > 0) {
                    beam(builder, deck(i - 1, girder), deck(i, girder), DECK);
                }
                if (girder > 0) {
                    beam(builder, deck(i, girder - 1), deck(i, girder), BRACE);
                }
            }
            beam(builder, chord(i, 0, 1), deck(i, 0), BRACE);
            beam(builder, chord(i, 1, 3), deck(i, 3), BRACE);
        }
        return builder.build();
    }

    private static void beam(FrameModelBuilder builder, String from, String to, Section section) {
        builder.add(BeamColumn.of(from + "-" + to, from, to, Material.steel(), section));
    }

    /**
     * Solves and says how many unknowns, the residual, and the heap in use with model and factor alive.
     *
     * @param args number of panels
     */
    public static void main(String[] args) {
        FrameModel model = model(Integer.parseInt(args[0]));
        LinearAnalysis analysis = LinearAnalysis.of(model);
        FrameSolution solution = analysis.solve(LoadCase.of("G", SelfWeight.standard()));
        double residual = solution.equilibrium().residual();
        System.gc();
        Runtime runtime = Runtime.getRuntime();
        System.out.printf(
                Locale.ROOT,
                "%d %.3e %d%n",
                analysis.unknowns(),
                residual,
                (runtime.totalMemory() - runtime.freeMemory()) >> 20);
        if (analysis.model() != model) {
            throw new IllegalStateException();
        }
    }
}
