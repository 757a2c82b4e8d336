package org.skewback.arch;

import java.util.Arrays;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import org.skewback.frame.Buckling;
import org.skewback.frame.BucklingAnalysis;
import org.skewback.frame.BucklingMode;
import org.skewback.frame.LoadCase;
import org.skewback.frame.ModalAnalysis;
import org.skewback.frame.Mode;
import org.skewback.quantity.Quantity;
import org.skewback.quantity.Routine;
import org.skewback.quantity.Stop;

/**
 * Linearised buckling and natural frequencies of a deck arch, as a routine; see {@link DeckArchFrame} for
 * the frame, {@link BucklingAnalysis} and {@link ModalAnalysis} for the analyses.
 *
 * <p>The load of the input grows in proportion, dead and vertical. A shape counts as one of the ribs where
 * they move at least half as far as anything else does; what is left are shapes of columns or of the deck.
 * Frequencies are those of the members' own weight alone.
 */
public final class DeckArchStabilityRoutine
        implements Routine<DeckArchRoutine.Input, DeckArchStabilityRoutine.Output> {

    /** Makes the routine. */
    public DeckArchStabilityRoutine() {}

    /**
     * What was found.
     *
     * @param factor lowest factor on the load at which anything buckles
     * @param ribsInPlane lowest factor at which the ribs buckle along the bridge; where none of the shapes
     *     looked at is one of these, the factor of the last, which the ribs then exceed
     * @param ribsAcross lowest factor at which the ribs buckle sideways; likewise
     * @param factors factors of the shapes looked at, ascending
     * @param across share of motion across the bridge in each of these, 0 to 1
     * @param ribs motion of the ribs over the largest motion in each of these, 0 to 1
     * @param frequencies natural frequencies, ascending
     */
    public record Output(
            Quantity factor,
            Quantity ribsInPlane,
            Quantity ribsAcross,
            List<Quantity> factors,
            List<Quantity> across,
            List<Quantity> ribs,
            List<Quantity> frequencies) {

        /**
         * Copies the lists.
         *
         * @param factor lowest factor
         * @param ribsInPlane lowest factor at which the ribs buckle along the bridge
         * @param ribsAcross lowest factor at which the ribs buckle sideways
         * @param factors factors of the shapes looked at
         * @param across share of motion across the bridge
         * @param ribs motion of the ribs over the largest motion
         * @param frequencies natural frequencies
         */
        public Output {
            factors = List.copyOf(factors);
            across = List.copyOf(across);
            ribs = List.copyOf(ribs);
            frequencies = List.copyOf(frequencies);
        }
    }

    private static final int SHAPES = 12;
    private static final int FREQUENCIES = 6;
    private static final double HALF = 0.5;

    @Override
    public String name() {
        return "arch.deckarchstability";
    }

    @Override
    public int edition() {
        return 1;
    }

    @Override
    public Output run(DeckArchRoutine.Input input, Stop stop) {
        DeckArchFrame frame = DeckArchFrame.of(InputDeckArch.of(input));
        LoadCase load = InputDeckArch.load(input, frame);
        // Vibration shares nothing with buckling but the frame, and takes as long.
        CompletableFuture<List<Quantity>> frequencies =
                CompletableFuture.supplyAsync(() -> frequencies(frame));
        Buckling buckling = BucklingAnalysis.of(frame.model()).factors(load, SHAPES);
        List<BucklingMode> shapes =
                buckling.modes().stream().filter(mode -> mode.factor() > 0).toList();
        if (shapes.isEmpty()) {
            throw new IllegalArgumentException(
                    "number of buckling shapes under the load is 0; allowed is a load that presses"
                            + " the ribs.");
        }
        double[] ribs =
                shapes.stream()
                        .mapToDouble(mode -> RibMotion.ofRibs(frame.model(), mode.shape()))
                        .toArray();
        double[] across =
                shapes.stream()
                        .mapToDouble(mode -> RibMotion.across(frame.model(), mode.shape()))
                        .toArray();
        int inPlane = shapes.size() - 1;
        int sideways = shapes.size() - 1;
        for (int i = shapes.size() - 1; i >= 0; i--) {
            if (ribs[i] >= HALF) {
                if (across[i] < HALF) {
                    inPlane = i;
                } else {
                    sideways = i;
                }
            }
        }
        return new Output(
                Quantity.of(shapes.get(0).factor()),
                Quantity.of(shapes.get(inPlane).factor()),
                Quantity.of(shapes.get(sideways).factor()),
                shapes.stream().map(mode -> Quantity.of(mode.factor())).toList(),
                Arrays.stream(across).mapToObj(Quantity::of).toList(),
                Arrays.stream(ribs).mapToObj(Quantity::of).toList(),
                found(frequencies));
    }

    private static List<Quantity> frequencies(DeckArchFrame frame) {
        return ModalAnalysis.of(frame.model()).modes(FREQUENCIES).list().stream()
                .map(Mode::frequency)
                .map(frequency -> Quantity.of(frequency, "Hz"))
                .toList();
    }

    private static List<Quantity> found(CompletableFuture<List<Quantity>> frequencies) {
        try {
            return frequencies.join();
        } catch (CompletionException e) {
            if (e.getCause() instanceof RuntimeException cause) {
                throw cause;
            }
            throw e;
        }
    }
}
