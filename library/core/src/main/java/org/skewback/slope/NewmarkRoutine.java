package org.skewback.slope;

import java.util.List;
import org.skewback.quantity.Quantity;
import org.skewback.quantity.Routine;
import org.skewback.quantity.Stop;

/** Sliding of a block under a record, as a routine; see {@link NewmarkSliding}. */
public final class NewmarkRoutine implements Routine<NewmarkRoutine.Input, NewmarkRoutine.Output> {

    /** Makes the routine. */
    public NewmarkRoutine() {}

    /**
     * The record and the block.
     *
     * @param times times, ascending
     * @param accelerations accelerations of the ground along the slide, one for each time
     * @param yield yield acceleration
     */
    public record Input(List<Quantity> times, List<Quantity> accelerations, Quantity yield) {

        /**
         * Copies the lists.
         *
         * @param times times, ascending
         * @param accelerations accelerations of the ground along the slide
         * @param yield yield acceleration
         */
        public Input {
            times = List.copyOf(times);
            accelerations = List.copyOf(accelerations);
        }
    }

    /**
     * What is found.
     *
     * @param displacement displacement at the end
     * @param slidingTime time during which the block slides
     * @param end time at which it comes to rest
     */
    public record Output(Quantity displacement, Quantity slidingTime, Quantity end) {}

    @Override
    public String name() {
        return "slope.newmark";
    }

    @Override
    public int edition() {
        return 1;
    }

    @Override
    public Output run(Input in, Stop stop) {
        NewmarkSliding sliding =
                NewmarkSliding.of(
                        in.times().stream().map(t -> t.in("s")).toList(),
                        in.accelerations().stream().map(a -> a.in("m/s²")).toList(),
                        in.yield().in("m/s²"));
        if (sliding.moving()) {
            throw new IllegalArgumentException(
                    "The block still slides when the record ends; allowed is a record that goes on"
                            + " until it rests.");
        }
        return new Output(
                Quantity.of(sliding.displacement(), "m"),
                Quantity.of(sliding.slidingTime(), "s"),
                Quantity.of(sliding.end(), "s"));
    }
}
