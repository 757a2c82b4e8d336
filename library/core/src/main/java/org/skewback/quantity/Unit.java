package org.skewback.quantity;

/**
 * A unit of measurement: what one of it is in SI base units, and how it is written.
 *
 * @param symbol as the author wrote it, such as {@code kN·m/m}; empty for plain numbers
 * @param factor how many SI base units one of this unit is; positive
 * @param offset what a reading of zero is in SI base units; not zero for °C alone
 * @param dimension the dimension
 */
public record Unit(String symbol, double factor, double offset, Dimension dimension) {

    /** The unit of plain numbers. */
    public static final Unit ONE = new Unit("", 1, 0, Dimension.NONE);

    /**
     * Reads a unit, whatever the locale.
     *
     * <p>A unit is a product of symbols joined by {@code ·}, {@code *} or a space, with {@code /}
     * for division, brackets, and exponents written {@code ²}, {@code ^2} or {@code ^(1/2)}. Known
     * are the SI units of mechanics with their prefixes, and the trade's: t, min, h, d, ha, bar, l,
     * Wh, °, ′, ″, gon, %, ‰, ppm, °C. Lengths, forces and masses in other systems are not known. A
     * symbol that misses by its capitals ({@code kn}) or by the dot of a product ({@code Nm}) is
     * refused with the symbol that may have been meant.
     *
     * @param text such as {@code kN/m}, {@code N/mm²}, {@code t}; empty or {@code 1} for plain
     *     numbers
     * @return the unit
     * @throws IllegalArgumentException when a symbol is not known or the text is no unit
     */
    public static Unit of(String text) {
        return UnitParser.parse(text);
    }

    /**
     * Gives the unit in which the trade usually states this dimension: kN, MPa, kN·m, kN/m, m.
     *
     * @param dimension a dimension
     * @return the usual unit, or the product of SI base units where there is no habit
     */
    public static Unit usual(Dimension dimension) {
        return UnitTable.usual(dimension);
    }

    /**
     * Converts a value in this unit to SI base units.
     *
     * @param value value in this unit
     * @return value · factor + offset
     */
    public double toSi(double value) {
        return value * factor + offset;
    }

    /**
     * Converts a value in SI base units to this unit.
     *
     * @param value value in SI base units
     * @return (value − offset) / factor
     */
    public double fromSi(double value) {
        return (value - offset) / factor;
    }

    /**
     * Tells whether a value in this unit is a reading on a scale whose zero is a convention.
     *
     * @return true for °C
     */
    public boolean isReading() {
        return offset != 0;
    }

    @Override
    public String toString() {
        return symbol;
    }
}
