package org.skewback.numeric;

/** What a motion with local nonlinear elements did, step by step. */
public final class LocalHistory {

    private final double step;
    private final double[][] coordinates;
    private final double[][] displacements;
    private final double[][] forces;
    private final int[] elementAt;
    private final Energy energy;

    LocalHistory(
            double step,
            double[][] coordinates,
            double[][] displacements,
            double[][] forces,
            int[] elementAt,
            Energy energy) {
        this.step = step;
        this.coordinates = coordinates;
        this.displacements = displacements;
        this.forces = forces;
        this.elementAt = elementAt;
        this.energy = energy;
    }

    /**
     * Where the energy put in has gone at the end of the motion, all in J.
     *
     * @param start kinetic and strain energy of the structure at the start
     * @param input work of the loads
     * @param mechanical kinetic and strain energy of the structure at the end
     * @param damped energy taken by damping of the structure, by Simpson's rule over the steps
     * @param dissipated energy taken by friction in the elements
     * @param held energy that elements hold at the end above that at the start
     */
    public record Energy(
            double start,
            double input,
            double mechanical,
            double damped,
            double dissipated,
            double held) {

        /**
         * Gives the energy that does not balance, start + input − mechanical − damped − dissipated −
         * held, against the largest of them. Damping of coordinates too fast for the step shows here.
         *
         * @return relative error; 0 when nothing moved
         */
        public double imbalance() {
            double largest = 0;
            for (double part : new double[] {start, input, mechanical, damped, dissipated, held}) {
                largest = Math.max(largest, Math.abs(part));
            }
            double left = start + input - mechanical - damped - dissipated - held;
            return largest == 0 ? 0 : Math.abs(left) / largest;
        }
    }

    /**
     * Gives the time step.
     *
     * @return Δt in s
     */
    public double step() {
        return step;
    }

    /**
     * Gives the history of a coordinate of the reduced model.
     *
     * @param index 0 for the coordinate of the lowest frequency
     * @return q at 0, Δt, 2Δt …, a copy
     */
    public double[] coordinate(int index) {
        return coordinates[Require.index("index", index, coordinates.length)].clone();
    }

    /**
     * Gives the history of a displacement of an element.
     *
     * @param element number of the element
     * @param direction which of its directions
     * @return d at 0, Δt, 2Δt … in m, a copy
     */
    public double[] displacement(int element, int direction) {
        return displacements[at(element, direction)].clone();
    }

    /**
     * Gives the history of a force of an element.
     *
     * @param element number of the element
     * @param direction which of its directions
     * @return force on the structure at 0, Δt, 2Δt … in N, a copy
     */
    public double[] force(int element, int direction) {
        return forces[at(element, direction)].clone();
    }

    private int at(int element, int direction) {
        Require.index("element", element, elementAt.length - 1);
        int count = elementAt[element + 1] - elementAt[element];
        return elementAt[element] + Require.index("direction", direction, count);
    }

    /**
     * Gives the account of energy.
     *
     * @return where the energy went
     */
    public Energy energy() {
        return energy;
    }
}
