package org.skewback.frame;

import java.util.List;
import org.skewback.numeric.Monitor;
import org.skewback.quantity.Quantity;
import org.skewback.quantity.Routine;
import org.skewback.quantity.Stop;

/**
 * Free vibration of a frame as a routine; see {@link ModalAnalysis} for what is left out.
 *
 * <p>Effective masses of a mode that occurs twice depend on which of its shapes are found; their
 * sum does not.
 */
public final class ModesRoutine implements Routine<ModesRoutine.Input, ModesRoutine.Output> {

    /** Makes the routine. */
    public ModesRoutine() {}

    /**
     * A frame and its masses.
     *
     * @param nodes table of nodes, CSV; for this and the next four see {@link FrameTables}
     * @param materials table of materials, CSV
     * @param sections table of sections, CSV
     * @param members table of members, CSV
     * @param supports table of supports, CSV
     * @param masses table of masses besides those of members, CSV, see {@link MotionTables}; blank
     *     for none
     * @param loads table of loads, CSV; a header alone where there is no preload
     * @param preload cases with factors, such as {@code G + 0.3 Q}, whose forces stiffen or soften
     *     the structure; blank for none
     * @param pieces equal pieces in each beam-column, 1 or more; 4 as a rule
     * @param count how many modes, lowest first, 1 or more
     * @param names names of the quantities in {@code given}, separated by {@code ;}
     * @param given quantities that fields such as {@code =g} stand for
     */
    public record Input(
            String nodes,
            String materials,
            String sections,
            String members,
            String supports,
            String masses,
            String loads,
            String preload,
            int pieces,
            int count,
            String names,
            List<Quantity> given)
            implements MovingInput {

        /**
         * Copies the list.
         *
         * @param nodes table of nodes, CSV; for this and the next four see {@link FrameTables}
         * @param materials table of materials, CSV
         * @param sections table of sections, CSV
         * @param members table of members, CSV
         * @param supports table of supports, CSV
         * @param masses table of masses besides those of members, CSV, see {@link MotionTables};
         *     blank for none
         * @param loads table of loads, CSV; a header alone where there is no preload
         * @param preload cases with factors, such as {@code G + 0.3 Q}, whose forces stiffen or
         *     soften the structure; blank for none
         * @param pieces equal pieces in each beam-column, 1 or more; 4 as a rule
         * @param count how many modes, lowest first, 1 or more
         * @param names names of the quantities in {@code given}, separated by {@code ;}
         * @param given quantities that fields such as {@code =g} stand for
         */
        public Input {
            given = List.copyOf(given);
        }
    }

    /**
     * The modes; fewer where there are fewer.
     *
     * @param frequencies frequency of each mode, Hz, lowest first
     * @param massesX effective mass of each mode along x, kg
     * @param massesY effective mass of each mode along y, kg
     * @param massesZ effective mass of each mode along z, kg
     * @param totalMass mass of the whole structure, kg
     * @param residual largest bound of the relative error of ω² from the iteration
     */
    public record Output(
            List<Quantity> frequencies,
            List<Quantity> massesX,
            List<Quantity> massesY,
            List<Quantity> massesZ,
            Quantity totalMass,
            Quantity residual) {

        /**
         * Copies the lists.
         *
         * @param frequencies frequency of each mode, Hz, lowest first
         * @param massesX effective mass of each mode along x, kg
         * @param massesY effective mass of each mode along y, kg
         * @param massesZ effective mass of each mode along z, kg
         * @param totalMass mass of the whole structure, kg
         * @param residual largest bound of the relative error of ω² from the iteration
         */
        public Output {
            frequencies = List.copyOf(frequencies);
            massesX = List.copyOf(massesX);
            massesY = List.copyOf(massesY);
            massesZ = List.copyOf(massesZ);
        }
    }

    @Override
    public String name() {
        return "frame.modes";
    }

    @Override
    public int edition() {
        return 1;
    }

    @Override
    public Output run(Input input, Stop stop) {
        Modes modes = input.moving().modes(input.count(), Monitor.of(stop));
        double residual = 0;
        for (Mode mode : modes.list()) {
            residual = Math.max(residual, mode.residual());
        }
        return new Output(
                modes.list().stream().map(mode -> Quantity.of(mode.frequency(), "Hz")).toList(),
                masses(modes, Motion.ALONG_X),
                masses(modes, Motion.ALONG_Y),
                masses(modes, Motion.ALONG_Z),
                Quantity.of(modes.totalMass(), "kg"),
                Quantity.of(residual));
    }

    private static List<Quantity> masses(Modes modes, Motion axis) {
        return modes.list().stream()
                .map(mode -> Quantity.of(mode.effectiveMass(axis), "kg"))
                .toList();
    }
}
