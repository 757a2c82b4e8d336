package org.skewback.arch;

import org.skewback.steel.Shape;

/** What a rib is made of. */
public sealed interface RibMakeup {

    /**
     * One member, its section changing linearly with the distance from the crown on plan.
     *
     * @param atCrown section at the crown
     * @param atSpringings section at the springings, of the same kind
     */
    record Single(Shape atCrown, Shape atSpringings) implements RibMakeup {}

    /**
     * Two chords, joined by an upright post at every panel point and a diagonal in every panel.
     *
     * @param chord section of both chords
     * @param depthAtCrown distance of the chords at the crown, centre to centre and square to the axis, m,
     *     greater than 0
     * @param depthAtSpringings distance of the chords at the springings, m, greater than 0; between, it
     *     changes linearly with the distance from the crown on plan
     * @param post section of the posts
     * @param diagonal section of the diagonals, which carry axial force alone
     */
    record Chords(
            Shape chord, double depthAtCrown, double depthAtSpringings, Shape post, Shape diagonal)
            implements RibMakeup {

        /**
         * Checks the depths.
         *
         * @param chord section of both chords
         * @param depthAtCrown distance of the chords at the crown, m
         * @param depthAtSpringings distance of the chords at the springings, m
         * @param post section of the posts
         * @param diagonal section of the diagonals
         * @throws IllegalArgumentException if a depth is not greater than 0
         */
        public Chords {
            Require.positive("distance of the chords at the crown", depthAtCrown, "m");
            Require.positive("distance of the chords at the springings", depthAtSpringings, "m");
        }
    }
}
