package org.skewback.sheet;

import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.skewback.quantity.DimensionException;
import org.skewback.quantity.Quantity;

/**
 * One column of a table: quantities in one unit, or texts.
 *
 * @param heading heading in words, perhaps with the symbol; without the unit
 * @param unit unit of every value; empty for texts and plain numbers
 * @param values the quantities; empty in a column of texts
 * @param precision how many digits every quantity has; no decimals for texts
 * @param texts what stands in each row; a column of quantities writes its own
 */
public record Column(
        String heading,
        String unit,
        List<Quantity> values,
        Precision precision,
        List<String> texts) {

    private static final int SIGNIFICANT = 4;
    private static final int MOST_DECIMALS = 6;

    /**
     * Writes the quantities, so that what stands in the table follows from them.
     *
     * @param heading heading in words, perhaps with the symbol; without the unit
     * @param unit unit of every value; empty for texts and plain numbers
     * @param values the quantities; empty in a column of texts
     * @param precision how many digits every quantity has; no decimals for texts
     * @param texts what stands in each row; not looked at where there are quantities
     * @throws DimensionException when the unit is not of a value's dimension; names the row
     * @throws IllegalArgumentException when the unit is not known
     */
    public Column {
        values = List.copyOf(values);
        texts =
                values.isEmpty()
                        ? List.copyOf(texts)
                        : Arrays.stream(inUnit(heading, unit, values))
                                .mapToObj(value -> precision.write(value))
                                .toList();
    }

    private static double[] inUnit(String heading, String unit, List<Quantity> values) {
        double[] numbers = new double[values.size()];
        for (int row = 0; row < numbers.length; row++) {
            try {
                numbers[row] = values.get(row).in(unit);
            } catch (DimensionException e) {
                DimensionException told =
                        new DimensionException(
                                "column \""
                                        + heading
                                        + "\", row "
                                        + (row + 1)
                                        + ": "
                                        + e.getMessage());
                told.initCause(e);
                throw told;
            }
        }
        return numbers;
    }

    /**
     * Makes a column of quantities, all with the same count of decimals: four significant digits
     * for the largest.
     *
     * @param heading heading in words, without the unit
     * @param unit unit to show, of the dimension of every value
     * @param values the quantities
     * @return the column
     */
    public static Column of(String heading, String unit, List<Quantity> values) {
        double[] numbers = inUnit(heading, unit, values);
        double largest = Arrays.stream(numbers).map(Math::abs).max().orElse(0);
        int before = largest < 1 ? 1 : (int) StrictMath.floor(StrictMath.log10(largest)) + 1;
        int decimals = Math.max(0, Math.min(MOST_DECIMALS, SIGNIFICANT - before));
        boolean whole = Arrays.stream(numbers).allMatch(number -> number == Math.rint(number));
        return of(heading, unit, values, whole ? 0 : decimals);
    }

    /**
     * Makes a column of quantities with a count of decimals.
     *
     * @param heading heading in words, without the unit
     * @param unit unit to show, of the dimension of every value
     * @param values the quantities
     * @param decimals digits after the point, from 0 to 15
     * @return the column
     * @throws IllegalArgumentException when the decimals are outside their range
     */
    public static Column of(String heading, String unit, List<Quantity> values, int decimals) {
        return of(heading, unit, values, Precision.decimals(decimals));
    }

    /**
     * Makes a column of quantities with the digits that its author chose.
     *
     * @param heading heading in words, without the unit
     * @param unit unit to show, of the dimension of every value
     * @param values the quantities
     * @param precision how many digits every quantity has, such as {@code Precision.significant(3)}
     * @return the column
     */
    public static Column of(
            String heading, String unit, List<Quantity> values, Precision precision) {
        return new Column(heading, unit, values, precision, List.of());
    }

    /**
     * Makes a column of texts.
     *
     * @param heading heading in words
     * @param texts what stands in each row
     * @return the column
     */
    public static Column texts(String heading, List<String> texts) {
        return new Column(heading, "", List.of(), Precision.decimals(0), texts);
    }

    /**
     * Tells whether the column holds numbers, which stand to the right.
     *
     * @return whether it has quantities
     */
    public boolean isNumeric() {
        return !values.isEmpty();
    }

    /**
     * Gives the heading with its unit.
     *
     * @return such as {@code thrust [kN]}
     */
    public String fullHeading() {
        return unit.isEmpty() ? heading : heading + " [" + unit + "]";
    }

    /**
     * Gives the quantity of a row.
     *
     * @param row row from 0
     * @return the quantity, or null in a column of texts
     */
    public @Nullable Quantity value(int row) {
        return values.isEmpty() ? null : values.get(row);
    }
}
