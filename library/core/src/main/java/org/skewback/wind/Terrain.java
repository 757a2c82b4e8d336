package org.skewback.wind;

import org.skewback.quantity.Quantity;
import org.skewback.quantity.Source;

/** Terrain categories of EN 1991-1-4, table 4.1 (from memory). */
public enum Terrain {
    /** Sea or coast open to the sea. */
    SEA("0", 0.003, 1),
    /** Lakes, or flat land without obstacles. */
    FLAT("I", 0.01, 1),
    /** Low vegetation, single obstacles. */
    OPEN("II", 0.05, 2),
    /** Regular cover: villages, suburbs, forest. */
    COVERED("III", 0.3, 5),
    /** Towns. */
    TOWN("IV", 1.0, 10);

    private final String category;
    private final double roughness;
    private final double least;

    Terrain(String category, double roughness, double least) {
        this.category = category;
        this.roughness = roughness;
        this.least = least;
    }

    /**
     * Gives the number of the category in the standard.
     *
     * @return 0, I, II, III or IV
     */
    public String category() {
        return category;
    }

    /**
     * Gives the roughness length as a cited value.
     *
     * @return z₀
     */
    public Quantity roughnessLength() {
        return Quantity.given(
                "z_0", roughness, "m", "roughness length of terrain " + category, source());
    }

    /**
     * Gives the height below which the wind is taken as at that height.
     *
     * @return z_min
     */
    public Quantity leastHeight() {
        return Quantity.given("z_min", least, "m", "least height of terrain " + category, source());
    }

    private static Source source() {
        return Source.standard("EN 1991-1-4:2005", "table 4.1, from memory");
    }
}
