package org.skewback.rock;

import java.util.List;

/**
 * Rock mass rating of 1989, as the sum of its ratings.
 *
 * <p>Source: Z. T. Bieniawski, Engineering Rock Mass Classifications, Wiley (1989), table of RMR (as
 * in E. Hoek, Practical Rock Engineering, ch. 3; from memory).
 *
 * @param ratings strength, RQD, spacing, condition of the joints, water
 * @param orientation rating of the joints' orientation, 0 or less
 */
public record RockMassRating(List<Rating> ratings, Rating orientation) {

    /**
     * Copies the ratings.
     *
     * @param ratings strength, RQD, spacing, condition of the joints, water
     * @param orientation rating of the joints' orientation
     */
    public RockMassRating {
        ratings = List.copyOf(ratings);
    }

    /** Condition of the joints in five words; {@link #condition} takes five sub-ratings instead. */
    public enum Condition {
        /** Very rough, not continuous, no separation, unweathered. */
        VERY_ROUGH(30),
        /** Slightly rough, separation below 1 mm, slightly weathered walls. */
        SLIGHTLY_ROUGH(25),
        /** Slightly rough, separation below 1 mm, highly weathered walls. */
        WEATHERED(20),
        /** Slickensided, or gouge below 5 mm, or separation of 1 to 5 mm, continuous. */
        SLICKENSIDED(10),
        /** Soft gouge above 5 mm, or separation above 5 mm, continuous. */
        SOFT_GOUGE(0);

        private final int points;

        Condition(int points) {
            this.points = points;
        }
    }

    /** Water in the joints. */
    public enum Water {
        /** Completely dry. */
        DRY(15),
        /** Damp. */
        DAMP(10),
        /** Wet. */
        WET(7),
        /** Dripping. */
        DRIPPING(4),
        /** Flowing. */
        FLOWING(0);

        private final int points;

        Water(int points) {
            this.points = points;
        }
    }

    /** Orientation of the joints to the work. */
    public enum Favour {
        /** Very favourable. */
        VERY_FAVOURABLE(0, 0, 0),
        /** Favourable. */
        FAVOURABLE(-2, -2, -5),
        /** Fair. */
        FAIR(-5, -7, -25),
        /** Unfavourable. */
        UNFAVOURABLE(-10, -15, -50),
        /** Very unfavourable. */
        VERY_UNFAVOURABLE(-12, -25, -60);

        private final int tunnel;
        private final int foundation;
        private final int slope;

        Favour(int tunnel, int foundation, int slope) {
            this.tunnel = tunnel;
            this.foundation = foundation;
            this.slope = slope;
        }
    }

    /** What is built in the rock. */
    public enum Work {
        /** A tunnel or mine. */
        TUNNEL,
        /** A foundation. */
        FOUNDATION,
        /** A slope. */
        SLOPE
    }

    /**
     * Rates the strength by uniaxial compression.
     *
     * <p>Above 250 MPa 15, to 100 MPa 12, to 50 MPa 7, to 25 MPa 4, to 5 MPa 2, to 1 MPa 1, below 0.
     *
     * @param strength uniaxial compressive strength, Pa, at least 0
     * @return the rating
     * @throws IllegalArgumentException if the strength is negative
     */
    public static Rating strength(double strength) {
        Require.notNegative("uniaxial compressive strength", strength, "Pa");
        return Rating.of(
                "strength by uniaxial compression",
                strength / 1e6,
                "MPa",
                new Rating.Band(Math.nextUp(250.0), 15, "above 250 MPa"),
                new Rating.Band(100, 12, "100 to 250 MPa"),
                new Rating.Band(50, 7, "50 to 100 MPa"),
                new Rating.Band(25, 4, "25 to 50 MPa"),
                new Rating.Band(5, 2, "5 to 25 MPa"),
                new Rating.Band(1, 1, "1 to 5 MPa"),
                new Rating.Band(0, 0, "below 1 MPa"));
    }

    /**
     * Rates the strength by point load.
     *
     * <p>Above 10 MPa 15, to 4 MPa 12, to 2 MPa 7, to 1 MPa 4; below 1 MPa uniaxial tests are wanted.
     *
     * @param index point load strength index, Pa, at least 1 MPa
     * @return the rating
     * @throws IllegalArgumentException if the index is below 1 MPa
     */
    public static Rating pointLoad(double index) {
        if (!(index >= 1e6)) {
            throw Require.refused(
                    "point load index",
                    index,
                    "Pa",
                    "at least 1 MPa; weaker rock is rated by uniaxial compression");
        }
        return Rating.of(
                "strength by point load",
                index / 1e6,
                "MPa",
                new Rating.Band(Math.nextUp(10.0), 15, "above 10 MPa"),
                new Rating.Band(4, 12, "4 to 10 MPa"),
                new Rating.Band(2, 7, "2 to 4 MPa"),
                new Rating.Band(1, 4, "1 to 2 MPa"));
    }

    /**
     * Rates the rock quality designation.
     *
     * <p>90 to 100 % 20, to 75 % 17, to 50 % 13, to 25 % 8, below 3.
     *
     * @param designation RQD as a part of 1, from 0 to 1
     * @return the rating
     * @throws IllegalArgumentException if the designation is outside
     */
    public static Rating quality(double designation) {
        Require.within("rock quality designation", designation, 0, 1, "");
        return Rating.of(
                "rock quality designation",
                percent(designation),
                "%",
                new Rating.Band(90, 20, "90 to 100 %"),
                new Rating.Band(75, 17, "75 to 90 %"),
                new Rating.Band(50, 13, "50 to 75 %"),
                new Rating.Band(25, 8, "25 to 50 %"),
                new Rating.Band(0, 3, "below 25 %"));
    }

    /** Percent, rounded to a millionth so that 0.57 · 100 is 57. */
    private static double percent(double part) {
        return Math.rint(part * 1e8) / 1e6;
    }

    /**
     * Rates the spacing of the joints.
     *
     * <p>Above 2 m 20, to 0.6 m 15, to 0.2 m 10, to 0.06 m 8, below 5.
     *
     * @param spacing spacing, m, greater than 0
     * @return the rating
     * @throws IllegalArgumentException if the spacing is not positive
     */
    public static Rating spacing(double spacing) {
        Require.positive("spacing of the joints", spacing, "m");
        return Rating.of(
                "spacing of the joints",
                spacing,
                "m",
                new Rating.Band(Math.nextUp(2.0), 20, "above 2 m"),
                new Rating.Band(0.6, 15, "0.6 to 2 m"),
                new Rating.Band(0.2, 10, "0.2 to 0.6 m"),
                new Rating.Band(0.06, 8, "0.06 to 0.2 m"),
                new Rating.Band(0, 5, "below 0.06 m"));
    }

    /**
     * Rates the condition of the joints in words.
     *
     * @param condition the condition
     * @return the rating: 30, 25, 20, 10 or 0
     */
    public static Rating condition(Condition condition) {
        return new Rating("condition of the joints", condition.points, "logged as " + condition);
    }

    /**
     * Rates the condition of the joints by five sub-ratings of up to 6 points each.
     *
     * @param persistence points for persistence, 0 to 6
     * @param aperture points for aperture, 0 to 6
     * @param roughness points for roughness, 0 to 6
     * @param infilling points for infilling, 0 to 6
     * @param weathering points for weathering, 0 to 6
     * @return the rating, 0 to 30
     * @throws IllegalArgumentException if a sub-rating is outside
     */
    public static Rating condition(
            int persistence, int aperture, int roughness, int infilling, int weathering) {
        int sum = 0;
        for (int points : new int[] {persistence, aperture, roughness, infilling, weathering}) {
            Require.within("sub-rating of the joints' condition", points, 0, 6, "");
            sum += points;
        }
        return new Rating(
                "condition of the joints",
                sum,
                "persistence "
                        + persistence
                        + ", aperture "
                        + aperture
                        + ", roughness "
                        + roughness
                        + ", infilling "
                        + infilling
                        + ", weathering "
                        + weathering);
    }

    /**
     * Rates the water in the joints.
     *
     * @param water the water
     * @return the rating: 15, 10, 7, 4 or 0
     */
    public static Rating water(Water water) {
        return new Rating("water in the joints", water.points, "logged as " + water);
    }

    /**
     * Rates the orientation of the joints.
     *
     * @param favour orientation in words
     * @param work what is built
     * @return the rating, 0 or less; for slopes the slope mass rating says more
     */
    public static Rating orientation(Favour favour, Work work) {
        int points =
                switch (work) {
                    case TUNNEL -> favour.tunnel;
                    case FOUNDATION -> favour.foundation;
                    case SLOPE -> favour.slope;
                };
        return new Rating("orientation of the joints", points, favour + " for a " + work);
    }

    /**
     * Puts the ratings together.
     *
     * @param strength rating of the strength
     * @param quality rating of the RQD
     * @param spacing rating of the spacing
     * @param condition rating of the joints' condition
     * @param water rating of the water
     * @param orientation rating of the orientation
     * @return the rock mass rating
     */
    public static RockMassRating of(
            Rating strength,
            Rating quality,
            Rating spacing,
            Rating condition,
            Rating water,
            Rating orientation) {
        return new RockMassRating(
                List.of(strength, quality, spacing, condition, water), orientation);
    }

    /**
     * Gives the sum without the orientation.
     *
     * @return basic RMR, 8 to 100
     */
    public int basic() {
        return ratings.stream().mapToInt(Rating::points).sum();
    }

    /**
     * Gives the sum with the orientation.
     *
     * @return RMR
     */
    public int total() {
        return basic() + orientation.points();
    }

    /**
     * Gives the class of the rock mass.
     *
     * @return 1 very good (above 80) to 5 very poor (below 21)
     */
    public int rockClass() {
        int total = total();
        if (total > 80) {
            return 1;
        }
        if (total > 60) {
            return 2;
        }
        if (total > 40) {
            return 3;
        }
        return total > 20 ? 4 : 5;
    }
}
