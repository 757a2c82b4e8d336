package org.skewback.frame;

import java.util.ArrayList;
import java.util.List;

/**
 * Forces at fixed distances that travel together, such as the axles of a train.
 *
 * @param name what it is called
 * @param axles the forces, from the first one on
 */
public record LoadTrain(String name, List<Axle> axles) {

    /**
     * One force of a train.
     *
     * @param behind distance behind the first axle, m, at least 0
     * @param force weight, N, positive downward
     */
    public record Axle(double behind, double force) {

        /**
         * Checks the numbers.
         *
         * @param behind distance behind the first axle, m
         * @param force weight, N
         * @throws IllegalArgumentException if the distance is negative or the force not finite
         */
        public Axle {
            Require.notNegative("distance of an axle behind the first", behind, "m");
            Require.finite("force of an axle", force, "N");
        }
    }

    /**
     * Checks that there is an axle.
     *
     * @param name what it is called
     * @param axles the forces, from the first one on
     * @throws IllegalArgumentException if there is none, or the name is blank
     */
    public LoadTrain {
        Require.name("train", name);
        axles = List.copyOf(axles);
        if (axles.isEmpty()) {
            throw new IllegalArgumentException(
                    "train " + name + " has no axles; allowed is at least one.");
        }
    }

    /**
     * Makes a train of equal axles.
     *
     * @param name what it is called
     * @param force weight of each, N
     * @param behind distances behind the first axle, m
     * @return the train
     */
    public static LoadTrain of(String name, double force, double... behind) {
        List<Axle> axles = new ArrayList<>();
        for (double distance : behind) {
            axles.add(new Axle(distance, force));
        }
        return new LoadTrain(name, axles);
    }

    /**
     * Gives the length.
     *
     * @return distance from the first axle to the last, m
     */
    public double length() {
        return axles.stream().mapToDouble(Axle::behind).max().orElse(0);
    }

    /**
     * Turns the train round.
     *
     * @return the train with its last axle first
     */
    public LoadTrain reversed() {
        double length = length();
        List<Axle> turned = new ArrayList<>();
        for (int i = axles.size() - 1; i >= 0; i--) {
            turned.add(new Axle(length - axles.get(i).behind(), axles.get(i).force()));
        }
        return new LoadTrain(name + " reversed", turned);
    }
}
