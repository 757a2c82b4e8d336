package org.skewback.quantity;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * A table from a cited source, read between its rows by straight lines.
 *
 * <p>Each axis is linear or logarithmic. With u = x or ln x and v = y or ln y, between rows i and
 * i + 1: v = vᵢ + (u − uᵢ)/(uᵢ₊₁ − uᵢ) · (vᵢ₊₁ − vᵢ). At a row the result is the row's own value.
 * Outside the rows there is no result: a table is no licence to extrapolate.
 *
 * <pre>{@code
 * InterpolationTable k = new InterpolationTable("k_c", "side ratio factor",
 *         Axis.linear("", 1, 1.5, 2), Axis.linear("", 0.141, 0.196, 0.229), source);
 * Quantity factor = a.over(b).interpolated(k);       // prints k_c(a / b)
 * }</pre>
 */
public final class InterpolationTable {

    private final String symbol;
    private final String note;
    private final Axis x;
    private final Axis y;
    private final Source source;

    private final double[] xs;
    private final double[] ys;
    private final double[] us;
    private final double[] vs;

    /** How distances along an axis are measured. */
    public enum Scale {
        /** By differences. */
        LINEAR,
        /** By differences of logarithms, for values that are all positive. */
        LOGARITHMIC;

        /**
         * Gives the scale in words.
         *
         * @return {@code linear} or {@code logarithmic}
         */
        public String inWords() {
            return name().toLowerCase(Locale.ROOT);
        }

        /**
         * Reads what {@link #inWords} writes.
         *
         * @param words the scale in words
         * @return the scale
         * @throws IllegalArgumentException when there is no such scale
         */
        public static Scale ofWords(String words) {
            for (Scale scale : values()) {
                if (scale.inWords().equals(words)) {
                    return scale;
                }
            }
            throw new IllegalArgumentException(
                    "scale \"" + words + "\" is not known; allowed are linear and logarithmic");
        }

        private double along(double value) {
            return this == LINEAR ? value : StrictMath.log(value);
        }
    }

    /**
     * The values of one axis, a row each.
     *
     * @param unit unit of the values
     * @param scale how distances are measured
     * @param values at least two finite values; positive on a logarithmic scale
     */
    public record Axis(String unit, Scale scale, List<Double> values) {

        /**
         * Checks the values.
         *
         * @param unit unit of the values
         * @param scale how distances are measured
         * @param values at least two finite values; positive on a logarithmic scale
         * @throws IllegalArgumentException when the unit is not known, or a value is not allowed
         */
        public Axis {
            values = List.copyOf(values);
            Unit known = Unit.of(unit);
            if (values.size() < 2) {
                throw new IllegalArgumentException(
                        "an axis has " + values.size() + " values; allowed are two or more");
            }
            for (double value : values) {
                boolean positive = value > 0 && known.toSi(value) > 0;
                if (!Double.isFinite(value) || (scale == Scale.LOGARITHMIC && !positive)) {
                    throw new IllegalArgumentException(
                            "an axis has the value "
                                    + value
                                    + "; allowed are finite values, and positive ones on a"
                                    + " logarithmic scale");
                }
            }
        }

        /**
         * Makes an axis with a linear scale.
         *
         * @param unit unit of the values; empty for plain numbers
         * @param values at least two finite values
         * @return the axis
         */
        public static Axis linear(String unit, double... values) {
            return new Axis(unit, Scale.LINEAR, Arrays.stream(values).boxed().toList());
        }

        /**
         * Makes an axis with a logarithmic scale.
         *
         * @param unit unit of the values; empty for plain numbers
         * @param values at least two positive values
         * @return the axis
         */
        public static Axis logarithmic(String unit, double... values) {
            return new Axis(unit, Scale.LOGARITHMIC, Arrays.stream(values).boxed().toList());
        }

        private double[] si() {
            Unit known = Unit.of(unit);
            return values.stream().mapToDouble(known::toSi).toArray();
        }
    }

    /**
     * Makes a table.
     *
     * @param symbol how the table is called in print, such as {@code k_c}
     * @param note what it gives, in words
     * @param x where it is read; values rise from row to row
     * @param y what it gives, a value for each of x
     * @param source where the table stands
     * @throws IllegalArgumentException when x does not rise, the axes differ in length, or the
     *     symbol is not allowed
     */
    public InterpolationTable(String symbol, String note, Axis x, Axis y, Source source) {
        this.symbol = new Label(symbol, note, source, null).symbol();
        this.note = note;
        this.x = x;
        this.y = y;
        this.source = source;
        xs = x.si();
        ys = y.si();
        if (xs.length != ys.length) {
            throw new IllegalArgumentException(
                    "table "
                            + symbol
                            + " has "
                            + xs.length
                            + " values of x and "
                            + ys.length
                            + " of y; allowed: as many of both");
        }
        us = Arrays.stream(xs).map(x.scale()::along).toArray();
        vs = Arrays.stream(ys).map(y.scale()::along).toArray();
        for (int i = 1; i < xs.length; i++) {
            if (!(us[i] > us[i - 1])) {
                throw new IllegalArgumentException(
                        "table "
                                + symbol
                                + ": x goes from "
                                + x.values().get(i - 1)
                                + " to "
                                + x.values().get(i)
                                + "; it must rise from row to row");
            }
        }
    }

    /**
     * Gives the symbol.
     *
     * @return how the table is called in print
     */
    public String symbol() {
        return symbol;
    }

    /**
     * Gives the note.
     *
     * @return what the table gives, in words
     */
    public String note() {
        return note;
    }

    /**
     * Gives the axis along which the table is read.
     *
     * @return values that rise
     */
    public Axis x() {
        return x;
    }

    /**
     * Gives the values of the table.
     *
     * @return a value for each of x
     */
    public Axis y() {
        return y;
    }

    /**
     * Gives the source.
     *
     * @return where the table stands
     */
    public Source source() {
        return source;
    }

    /**
     * Reads the table.
     *
     * @param at where, in the dimension of x
     * @return the value, a node of the graph; the same as {@code at.interpolated(this)}
     * @throws DimensionException when {@code at} is not of the dimension of x
     * @throws IllegalArgumentException when {@code at} lies outside the table
     */
    public Quantity at(Quantity at) {
        return at.interpolated(this);
    }

    /** The value in SI base units. */
    double lookUp(Quantity at) {
        double value = value(at.si());
        if (Double.isNaN(value)) {
            throw new IllegalArgumentException(outside(at.brief()));
        }
        return value;
    }

    /** Says that a place is outside the table. */
    String outside(String place) {
        Unit unit = Unit.of(x.unit());
        return place
                + " is outside the table "
                + symbol
                + "; allowed are "
                + Numerals.withUnit(plain(xs[0], unit))
                + " to "
                + Numerals.withUnit(plain(xs[xs.length - 1], unit));
    }

    private static Quantity plain(double si, Unit unit) {
        return Quantity.node(
                si, unit.dimension().packed(), Operation.VALUE, null, null, null, unit);
    }

    /** The value at x, both in SI base units; NaN outside the table. */
    double value(double at) {
        int row = Arrays.binarySearch(xs, at);
        if (row >= 0) {
            return ys[row];
        }
        int left = -row - 2;
        if (!(left >= 0 && left < xs.length - 1)) {
            return Double.NaN;
        }
        double t = (x.scale().along(at) - us[left]) / (us[left + 1] - us[left]);
        double v = vs[left] + t * (vs[left + 1] - vs[left]);
        return y.scale() == Scale.LINEAR ? v : StrictMath.exp(v);
    }

    /**
     * The derivative at x; at a row between others, where there are two, their mean, as a central
     * difference would have it.
     */
    double slope(double at) {
        int row = Arrays.binarySearch(xs, at);
        if (row < 0) {
            return slope(-row - 2, at);
        } else if (row == 0) {
            return slope(0, at);
        } else if (row == xs.length - 1) {
            return slope(row - 1, at);
        }
        return 0.5 * (slope(row - 1, at) + slope(row, at));
    }

    private double slope(int left, double at) {
        if (!(left >= 0 && left < xs.length - 1)) {
            return Double.NaN;
        }
        double slope = (vs[left + 1] - vs[left]) / (us[left + 1] - us[left]);
        double stretched = x.scale() == Scale.LINEAR ? slope : slope / at;
        return y.scale() == Scale.LINEAR ? stretched : stretched * value(at);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof InterpolationTable that
                && symbol.equals(that.symbol)
                && note.equals(that.note)
                && x.equals(that.x)
                && y.equals(that.y)
                && source.equals(that.source);
    }

    @Override
    public int hashCode() {
        return Objects.hash(symbol, x, y);
    }

    @Override
    public String toString() {
        return symbol + " (" + source + ")";
    }
}
