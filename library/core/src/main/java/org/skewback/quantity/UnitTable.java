package org.skewback.quantity;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * The units by symbol.
 *
 * <p>Factors are exact by definition: SI Brochure, 9th ed. (2019), tables 4, 7 and 8; parts per
 * million from its §5.4.7; the gon from ISO 80000-3; the watt hour is 3600 J by its name.
 */
final class UnitTable {

    private static final int LONGEST_PREFIX = 2;

    private static final Map<String, Double> PREFIXES =
            Map.ofEntries(
                    Map.entry("p", 1e-12),
                    Map.entry("n", 1e-9),
                    Map.entry("µ", 1e-6),
                    Map.entry("μ", 1e-6),
                    Map.entry("m", 1e-3),
                    Map.entry("c", 1e-2),
                    Map.entry("d", 1e-1),
                    Map.entry("da", 1e1),
                    Map.entry("h", 1e2),
                    Map.entry("k", 1e3),
                    Map.entry("M", 1e6),
                    Map.entry("G", 1e9),
                    Map.entry("T", 1e12));

    private static final Map<String, Unit> PREFIXED = new HashMap<>();
    private static final Map<String, Unit> PLAIN = new HashMap<>();
    private static final Map<Dimension, Unit> USUAL = new HashMap<>();

    static {
        prefixed("m", 1, Dimension.LENGTH);
        prefixed("g", 1e-3, Dimension.MASS);
        prefixed("s", 1, Dimension.TIME);
        prefixed("K", 1, Dimension.TEMPERATURE);
        prefixed("N", 1, Dimension.of(1, 1, -2));
        prefixed("Pa", 1, Dimension.of(-1, 1, -2));
        prefixed("J", 1, Dimension.of(2, 1, -2));
        prefixed("W", 1, Dimension.of(2, 1, -3));
        prefixed("Hz", 1, Dimension.of(0, 0, -1));
        prefixed("rad", 1, Dimension.NONE);
        prefixed("t", 1e3, Dimension.MASS);
        prefixed("bar", 1e5, Dimension.of(-1, 1, -2));
        prefixed("Wh", 3600, Dimension.of(2, 1, -2));
        prefixed("l", 1e-3, Dimension.of(3, 0, 0));
        prefixed("L", 1e-3, Dimension.of(3, 0, 0));
        plain("min", 60, Dimension.TIME);
        plain("h", 3600, Dimension.TIME);
        plain("d", 86_400, Dimension.TIME);
        plain("ha", 1e4, Dimension.of(2, 0, 0));
        plain("°", StrictMath.PI / 180, Dimension.NONE);
        plain("′", StrictMath.PI / 10_800, Dimension.NONE);
        plain("″", StrictMath.PI / 648_000, Dimension.NONE);
        plain("gon", StrictMath.PI / 200, Dimension.NONE);
        plain("mgon", StrictMath.PI / 200_000, Dimension.NONE);
        // Water taken by a borehole: a litre a minute and metre at a pressure of 1 MPa.
        plain("Lu", 1e-3 / 60 / 1e6, Dimension.of(3, 0, -1).over(Dimension.of(0, 1, -2)));
        plain("%", 1e-2, Dimension.NONE);
        plain("‰", 1e-3, Dimension.NONE);
        plain("ppm", 1e-6, Dimension.NONE);
        plain("1", 1, Dimension.NONE);
        PLAIN.put("°C", new Unit("°C", 1, 273.15, Dimension.TEMPERATURE));
        for (String habit :
                new String[] {
                    "m", "m²", "m³", "m⁴", "1/m", "kg", "s", "K", "m/s", "m/s²", "Hz", "kN", "kN/m",
                    "MPa", "kN/m³", "kN·m", "kN·m²", "kW", "kg/m³", "kg/m", "kg/m²", "1/K"
                }) {
            Unit unit = UnitParser.parse(habit);
            USUAL.put(unit.dimension(), unit);
        }
        USUAL.put(Dimension.NONE, Unit.ONE);
    }

    private UnitTable() {}

    /** Gives the unit of a symbol, with or without a prefix; null where it is not known. */
    static @Nullable Unit find(String symbol) {
        Unit whole = PLAIN.get(symbol);
        if (whole == null) {
            whole = PREFIXED.get(symbol);
        }
        if (whole != null || symbol.length() < 2) {
            return whole;
        }
        for (int length = 1; length <= LONGEST_PREFIX && length < symbol.length(); length++) {
            Double prefix = PREFIXES.get(symbol.substring(0, length));
            Unit stem = PREFIXED.get(symbol.substring(length));
            if (prefix != null && stem != null) {
                return new Unit(symbol, prefix * stem.factor(), 0, stem.dimension());
            }
        }
        return null;
    }

    /** Lists every symbol that can be found, with and without prefixes, in the order of letters. */
    static List<String> symbols() {
        Set<String> symbols = new TreeSet<>(PLAIN.keySet());
        symbols.remove("1");
        for (String stem : PREFIXED.keySet()) {
            symbols.add(stem);
            PREFIXES.keySet().forEach(prefix -> symbols.add(prefix + stem));
        }
        return List.copyOf(symbols);
    }

    static Unit usual(Dimension dimension) {
        Unit unit = USUAL.get(dimension);
        return unit != null ? unit : new Unit(dimension.toString(), 1, 0, dimension);
    }

    private static void prefixed(String symbol, double factor, Dimension dimension) {
        PREFIXED.put(symbol, new Unit(symbol, factor, 0, dimension));
    }

    private static void plain(String symbol, double factor, Dimension dimension) {
        PLAIN.put(symbol, new Unit(symbol, factor, 0, dimension));
    }
}
