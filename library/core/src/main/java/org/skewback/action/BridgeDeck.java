package org.skewback.action;

import java.util.List;
import org.skewback.quantity.InterpolationTable;
import org.skewback.quantity.InterpolationTable.Axis;
import org.skewback.quantity.Quantity;
import org.skewback.quantity.Source;

/**
 * Bridge decks as EN 1991-1-5, 6.1.1, groups them, with the recommended values that belong to each: how far
 * the bridge's temperature is from that of the air (figure 6.1, read as the straight lines it is drawn of),
 * temperature differences over the depth (table 6.1) and factors for the surfacing (table 6.2).
 */
public enum BridgeDeck {
    /** Type 1: steel box girder. */
    STEEL_BOX(1, 16, -3, 18, 13),
    /** Type 1: steel truss or plate girders. */
    STEEL_TRUSS(1, 13, -3, 18, 13),
    /** Type 2: concrete slab on steel girders. */
    COMPOSITE(2, 4, 4, 15, 18),
    /** Type 3: concrete box girder. */
    CONCRETE_BOX(3, 2, 8, 10, 5),
    /** Type 3: concrete beams. */
    CONCRETE_BEAM(3, 2, 8, 15, 8),
    /** Type 3: concrete slab. */
    CONCRETE_SLAB(3, 2, 8, 15, 8);

    private static final String STANDARD = "EN 1991-1-5:2003";

    /** Table 6.2 by type of deck: unsurfaced, waterproofed, 50 mm, 100 mm, 150 mm, ballast. */
    private static final List<List<Double>> TOP_WARMER =
            List.of(
                    List.of(0.7, 1.6, 1.0, 0.7, 0.7, 0.6),
                    List.of(0.9, 1.1, 1.0, 1.0, 1.0, 0.8),
                    List.of(0.8, 1.5, 1.0, 0.7, 0.5, 0.6));

    private static final List<List<Double>> BOTTOM_WARMER =
            List.of(
                    List.of(0.9, 0.6, 1.0, 1.2, 1.2, 1.4),
                    List.of(1.0, 0.9, 1.0, 1.0, 1.0, 1.2),
                    List.of(1.1, 1.0, 1.0, 1.0, 1.0, 1.0));

    private final int type;
    private final double aboveAir;
    private final double belowAir;
    private final double heating;
    private final double cooling;

    BridgeDeck(int type, double aboveAir, double belowAir, double heating, double cooling) {
        this.type = type;
        this.aboveAir = aboveAir;
        this.belowAir = belowAir;
        this.heating = heating;
        this.cooling = cooling;
    }

    /**
     * Gives the type of the standard.
     *
     * @return 1 steel, 2 composite, 3 concrete
     */
    public int type() {
        return type;
    }

    /**
     * Gives how much warmer than the hottest air the bridge gets, T_e,max − T_max (figure 6.1).
     *
     * <p>Figure 6.1 is drawn for box girders; for steel trusses and plate girders its highest temperatures may
     * be 3 K lower.
     *
     * @return the difference, K
     */
    public Quantity aboveHottestAir() {
        return cited("ΔT_e,max", aboveAir, "warmest bridge less hottest air", "figure 6.1");
    }

    /**
     * Gives how much warmer than the coldest air the bridge stays, T_e,min − T_min (figure 6.1); negative where
     * it gets colder than the air.
     *
     * @return the difference, K
     */
    public Quantity aboveColdestAir() {
        return cited("ΔT_e,min", belowAir, "coldest bridge less coldest air", "figure 6.1");
    }

    /**
     * Gives the temperature difference over the depth with the top warmer, for 50 mm of surfacing (table 6.1,
     * recommended).
     *
     * @return ΔT_M,heat, K
     */
    public Quantity heating() {
        return cited("ΔT_M,heat", heating, "top warmer, 50 mm of surfacing", "table 6.1");
    }

    /**
     * Gives the temperature difference over the depth with the bottom warmer, for 50 mm of surfacing (table 6.1,
     * recommended).
     *
     * @return ΔT_M,cool, K
     */
    public Quantity cooling() {
        return cited("ΔT_M,cool", cooling, "bottom warmer, 50 mm of surfacing", "table 6.1");
    }

    private static Quantity cited(String symbol, double kelvin, String note, String place) {
        return Quantity.given(
                symbol, kelvin, "K", note, Source.standard(STANDARD, place + ", from memory"));
    }

    /**
     * Gives the factor of a surface that is no thickness of asphalt (table 6.2).
     *
     * @param surface what lies on the deck
     * @param topWarmer whether for heating, else for cooling
     * @return k_sur
     */
    public Quantity surfacingFactor(DeckSurface surface, boolean topWarmer) {
        return Quantity.given(
                "k_sur",
                row(topWarmer).get(surface.column()),
                "",
                "factor for the surface of the deck",
                Source.standard(STANDARD, "table 6.2, from memory"));
    }

    /**
     * Gives the factor of a surfacing of some thickness, straight between the rows of table 6.2.
     *
     * @param thickness thickness of the surfacing, 50 mm to 150 mm
     * @param topWarmer whether for heating, else for cooling
     * @return k_sur
     * @throws IllegalArgumentException if the thickness is out of range
     */
    public Quantity surfacingFactor(Quantity thickness, boolean topWarmer) {
        Require.within("thickness of the surfacing", thickness.in("mm"), 50, 150, "mm");
        List<Double> row = row(topWarmer);
        return thickness.interpolated(
                new InterpolationTable(
                        "k_sur",
                        "factor for the surfacing of a deck of type " + type,
                        Axis.linear("mm", 50, 100, 150),
                        Axis.linear("", row.get(2), row.get(3), row.get(4)),
                        Source.standard(STANDARD, "table 6.2, from memory")));
    }

    private List<Double> row(boolean topWarmer) {
        return (topWarmer ? TOP_WARMER : BOTTOM_WARMER).get(type - 1);
    }
}
