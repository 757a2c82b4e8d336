package org.skewback.quantity;

import java.util.AbstractList;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.RandomAccess;
import java.util.function.BinaryOperator;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.skewback.display.Displayable;

/**
 * A row of quantities of one dimension, worked with element by element.
 *
 * <p>Immutable. Each element is a quantity like any other, with its own graph behind it, so a column
 * made of a vector keeps its origin. Elements are counted from 0 by {@link #get} and from 1 in
 * symbols and messages, as in a table.
 *
 * <pre>{@code
 * QuantityVector x = QuantityVector.range(Quantity.of(0, "m"), L, 13);   // 12 equal panels
 * QuantityVector y = x.map(at -> f.times(4).times(at).times(L.minus(at)).over(L.squared()));
 * sheet.table(Table.of("Rib axis", Column.of("x", "m", x), Column.of("y", "m", y)));
 * }</pre>
 *
 * <p>Where an element cannot be worked out, the exception is of the same kind as that of {@link
 * Quantity}, and its message names the element.
 */
public final class QuantityVector extends AbstractList<Quantity>
        implements RandomAccess, Displayable {

    private static final int MOST = 1_000_000;
    private static final double WHOLE = 1e-9;
    private static final int MOST_SHOWN = 12;

    private final Quantity[] elements;

    private QuantityVector(List<Quantity> elements) {
        this.elements = elements.toArray(Quantity[]::new);
    }

    /**
     * Makes a vector of quantities.
     *
     * @param elements at least one quantity, all of one dimension
     * @return the vector
     * @throws IllegalArgumentException when there is no element
     * @throws DimensionException when one has another dimension than the first
     */
    public static QuantityVector of(List<Quantity> elements) {
        if (elements.isEmpty()) {
            throw new IllegalArgumentException("a vector of no quantities has no dimension");
        }
        Quantity head = elements.get(0);
        for (int i = 1; i < elements.size(); i++) {
            Quantity element = elements.get(i);
            if (element.dimension().packed() != head.dimension().packed()) {
                throw new DimensionException(
                        "element "
                                + (i + 1)
                                + " of a vector is "
                                + element.brief()
                                + ", "
                                + element.dimension().inWords()
                                + ", where element 1 is "
                                + head.brief()
                                + ", "
                                + head.dimension().inWords());
            }
        }
        return new QuantityVector(elements);
    }

    /**
     * Makes a vector of quantities.
     *
     * @param elements at least one quantity, all of one dimension
     * @return the vector
     * @throws IllegalArgumentException when there is no element
     * @throws DimensionException when one has another dimension than the first
     */
    public static QuantityVector of(Quantity... elements) {
        return of(Arrays.asList(elements));
    }

    /**
     * Makes a vector of numbers without a source, such as the factors of a comparison.
     *
     * @param unit unit of every number; empty for plain numbers
     * @param values at least one finite value in that unit
     * @return the vector
     * @throws IllegalArgumentException when there is no value, the unit is not known or a value not
     *     finite
     */
    public static QuantityVector of(String unit, double... values) {
        List<Quantity> elements = new ArrayList<>(values.length);
        for (int i = 0; i < values.length; i++) {
            double value = values[i];
            elements.add(at(i, null, () -> Quantity.of(value, unit)));
        }
        return of(elements);
    }

    /**
     * Makes evenly spaced quantities, both ends included: element i of n is from + (to − from) · (i −
     * 1) / (n − 1).
     *
     * <p>The ends are the very quantities given, so nothing is rounded there. How many elements there
     * are is settled here; a tape that runs with other ends moves the elements between them.
     *
     * @param from the first element
     * @param to the last element, of the same dimension; may be less than the first
     * @param count elements, from 2 to 1 000 000
     * @return the vector, shown in the unit of {@code from}
     * @throws DimensionException when the ends have different dimensions
     * @throws IllegalArgumentException when the count is outside its range
     */
    public static QuantityVector range(Quantity from, Quantity to, int count) {
        requireRange(from, to);
        if (count < 2 || count > MOST) {
            throw new IllegalArgumentException(
                    ends(from, to) + " has " + count + " elements; allowed are 2 to " + MOST);
        }
        Quantity whole = isNothing(from) ? to : to.minus(from);
        return between(from, to, count, i -> whole.times(Quantity.of(i)).over(count - 1));
    }

    /**
     * Makes quantities a step apart, both ends included: element i is from + (i − 1) · step.
     *
     * <p>How many elements there are is settled here: a tape that runs with another step does not
     * change their count. The last element is the very quantity given, so nothing is rounded there.
     *
     * @param from the first element
     * @param to the last element, of the same dimension
     * @param step distance from one element to the next, of that dimension; negative where the
     *     elements fall. It divides the distance of the ends into at most 999 999 parts, to within
     *     10⁻⁹ of a part
     * @return the vector, shown in the unit of {@code from}
     * @throws DimensionException when the dimensions differ
     * @throws IllegalArgumentException when whole steps do not lead from one end to the other
     */
    public static QuantityVector range(Quantity from, Quantity to, Quantity step) {
        requireRange(from, to);
        from.requireSameDimension(step, "go on from", "in steps of");
        double parts = to.minus(from).si() / step.si();
        double whole = Math.rint(parts);
        if (!(whole >= 1 && whole < MOST && Math.abs(parts - whole) <= WHOLE)) {
            throw new IllegalArgumentException(
                    ends(from, to)
                            + " is "
                            + (Double.isFinite(parts) ? Numerals.result(parts) : "no number of")
                            + " steps of "
                            + step.brief()
                            + "; allowed are whole steps, 1 to "
                            + (MOST - 1));
        }
        return between(from, to, (int) whole + 1, i -> step.times(Quantity.of(i)));
    }

    private interface Between {
        Quantity beyond(int index);
    }

    private static QuantityVector between(Quantity from, Quantity to, int count, Between between) {
        List<Quantity> elements = new ArrayList<>(count);
        elements.add(from);
        for (int i = 1; i < count - 1; i++) {
            Quantity beyond = between.beyond(i);
            elements.add(isNothing(from) ? beyond : from.plus(beyond));
        }
        elements.add(to);
        return new QuantityVector(elements);
    }

    /** A zero that nobody named says that there is nothing before, and need not be printed. */
    private static boolean isNothing(Quantity from) {
        boolean bare = from.isLeaf() && from.symbol() == null;
        return bare && from.si() == 0;
    }

    private static void requireRange(Quantity from, Quantity to) {
        from.requireSameDimension(to, "go from", "to");
    }

    private static String ends(Quantity from, Quantity to) {
        return "a range from " + from.brief() + " to " + to.brief();
    }

    // ---------------------------------------------------------------- reading

    /**
     * Gives an element.
     *
     * @param index from 0
     * @return the quantity
     * @throws IndexOutOfBoundsException when there is no such element; says how many there are
     */
    @Override
    public Quantity get(int index) {
        if (index < 0 || index >= elements.length) {
            throw new IndexOutOfBoundsException(
                    "index "
                            + index
                            + " of a vector of "
                            + elements.length
                            + " quantities, "
                            + elements[0].brief()
                            + " the first; allowed are 0 to "
                            + (elements.length - 1));
        }
        return elements[index];
    }

    /**
     * Gives the first element.
     *
     * @return the quantity at index 0
     */
    public Quantity first() {
        return elements[0];
    }

    /**
     * Gives the last element.
     *
     * @return the quantity at the highest index
     */
    public Quantity last() {
        return elements[elements.length - 1];
    }

    @Override
    public int size() {
        return elements.length;
    }

    /**
     * Gives the values in a unit.
     *
     * @param unit unit of the dimension of the elements
     * @return a fresh array of plain numbers, which no longer know where they came from
     * @throws DimensionException when the unit has another dimension
     */
    public double[] in(String unit) {
        Unit known = Unit.of(unit);
        double[] values = new double[elements.length];
        for (int i = 0; i < values.length; i++) {
            values[i] = elements[i].in(known);
        }
        return values;
    }

    /**
     * Adds the elements, in their order.
     *
     * @return the sum, one node that keeps every element
     */
    public Quantity sum() {
        return Quantity.sum(this);
    }

    /**
     * Gives the least element.
     *
     * @return min(min(e₁, e₂), e₃) …, which keeps every element, so that a tape finds the least anew
     */
    public Quantity min() {
        return reduce(Quantity::min);
    }

    /**
     * Gives the greatest element.
     *
     * @return max(max(e₁, e₂), e₃) …, which keeps every element, so that a tape finds the greatest
     *     anew
     */
    public Quantity max() {
        return reduce(Quantity::max);
    }

    private Quantity reduce(BinaryOperator<Quantity> lesserOrGreater) {
        Quantity result = elements[0];
        for (int i = 1; i < elements.length; i++) {
            result = lesserOrGreater.apply(result, elements[i]);
        }
        return result;
    }

    // ------------------------------------------------------------- arithmetic

    /**
     * Puts every element into a formula.
     *
     * @param formula what to work out of an element; gives the same dimension for each
     * @return the results, in order
     * @throws DimensionException when the results differ in dimension
     */
    public QuantityVector map(UnaryOperator<Quantity> formula) {
        List<Quantity> results = new ArrayList<>(elements.length);
        for (int i = 0; i < elements.length; i++) {
            Quantity element = elements[i];
            results.add(at(i, element, () -> formula.apply(element)));
        }
        return of(results);
    }

    /**
     * Puts the elements of two vectors into a formula, pair by pair.
     *
     * @param other as many quantities
     * @param formula what to work out of a pair; gives the same dimension for each
     * @return the results, in order
     * @throws IllegalArgumentException when the counts differ
     * @throws DimensionException when the results differ in dimension
     */
    public QuantityVector with(List<Quantity> other, BinaryOperator<Quantity> formula) {
        if (other.size() != elements.length) {
            throw new IllegalArgumentException(
                    "a vector of "
                            + elements.length
                            + " quantities, "
                            + elements[0].brief()
                            + " the first, meets one of "
                            + other.size()
                            + (other.isEmpty() ? "" : ", " + other.get(0).brief() + " the first")
                            + "; allowed: as many in both");
        }
        List<Quantity> results = new ArrayList<>(elements.length);
        for (int i = 0; i < elements.length; i++) {
            Quantity element = elements[i];
            Quantity meets = other.get(i);
            results.add(at(i, element, () -> formula.apply(element, meets)));
        }
        return of(results);
    }

    /**
     * Adds element by element.
     *
     * @param other as many quantities of the same dimension
     * @return this + other
     */
    public QuantityVector plus(List<Quantity> other) {
        return with(other, Quantity::plus);
    }

    /**
     * Adds a quantity to every element.
     *
     * @param other quantity of the same dimension
     * @return this + other
     */
    public QuantityVector plus(Quantity other) {
        return map(element -> element.plus(other));
    }

    /**
     * Subtracts element by element.
     *
     * @param other as many quantities of the same dimension
     * @return this − other
     */
    public QuantityVector minus(List<Quantity> other) {
        return with(other, Quantity::minus);
    }

    /**
     * Subtracts a quantity from every element.
     *
     * @param other quantity of the same dimension
     * @return this − other
     */
    public QuantityVector minus(Quantity other) {
        return map(element -> element.minus(other));
    }

    /**
     * Multiplies element by element.
     *
     * @param other as many quantities, all of one dimension
     * @return this · other
     */
    public QuantityVector times(List<Quantity> other) {
        return with(other, Quantity::times);
    }

    /**
     * Multiplies every element by a quantity.
     *
     * @param other any quantity
     * @return this · other
     */
    public QuantityVector times(Quantity other) {
        return map(element -> element.times(other));
    }

    /**
     * Multiplies every element by a plain number.
     *
     * @param number finite number
     * @return this · number
     */
    public QuantityVector times(double number) {
        return times(Quantity.of(number));
    }

    /**
     * Divides element by element.
     *
     * @param other as many quantities, all of one dimension and none zero
     * @return this / other
     */
    public QuantityVector over(List<Quantity> other) {
        return with(other, Quantity::over);
    }

    /**
     * Divides every element by a quantity.
     *
     * @param other any quantity but zero
     * @return this / other
     */
    public QuantityVector over(Quantity other) {
        return map(element -> element.over(other));
    }

    /**
     * Divides every element by a plain number.
     *
     * @param number finite number, not zero
     * @return this / number
     */
    public QuantityVector over(double number) {
        return over(Quantity.of(number));
    }

    /**
     * Changes the sign of every element.
     *
     * @return −this
     */
    public QuantityVector negated() {
        return map(Quantity::negated);
    }

    /**
     * Puts names on the elements, so that formulas printed of them end there.
     *
     * @param symbol symbol without an index; the elements are called symbol_1, symbol_2, …
     * @param unit unit to show, of the dimension of the elements
     * @param note what they are, in words
     * @return the same values under their names
     * @throws DimensionException when the unit has another dimension
     * @throws IllegalArgumentException when the unit is not known or the symbol not allowed
     */
    public QuantityVector named(String symbol, String unit, String note) {
        return named(symbol, unit, note, null);
    }

    /**
     * Puts names on the elements on behalf of an owner.
     *
     * @param symbol symbol without an index; the elements are called symbol_1, symbol_2, …
     * @param unit unit to show, of the dimension of the elements
     * @param note what they are, in words
     * @param owner whoever keeps them, such as a sheet, or null; compared by identity
     * @return the same values under their names
     * @throws DimensionException when the unit has another dimension
     * @throws IllegalArgumentException when the unit is not known or the symbol not allowed
     */
    public QuantityVector named(String symbol, String unit, String note, @Nullable Object owner) {
        List<Quantity> named = new ArrayList<>(elements.length);
        for (int i = 0; i < elements.length; i++) {
            named.add(elements[i].named(indexed(symbol, i), unit, note, owner));
        }
        return new QuantityVector(named);
    }

    /**
     * Gives the symbol of one element of a row.
     *
     * @param symbol symbol of the row, such as {@code x} or {@code N_Ed}
     * @param index index of the element, from 0
     * @return such as {@code x_1} or {@code N_Ed,1}
     */
    public static String indexed(String symbol, int index) {
        return symbol + (symbol.contains("_") ? "," : "_") + (index + 1);
    }

    private interface Work {
        Quantity result();
    }

    /** Names the element in whatever goes wrong with it. */
    private static Quantity at(int index, @Nullable Quantity element, Work work) {
        try {
            return work.result();
        } catch (DimensionException e) {
            DimensionException told = new DimensionException(place(index, element, e));
            told.initCause(e);
            throw told;
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException(place(index, element, e), e);
        } catch (ArithmeticException e) {
            ArithmeticException told = new ArithmeticException(place(index, element, e));
            told.initCause(e);
            throw told;
        }
    }

    private static String place(int index, @Nullable Quantity element, RuntimeException e) {
        return "element "
                + (index + 1)
                + (element == null ? "" : ", " + element.brief())
                + ": "
                + e.getMessage();
    }

    /**
     * Writes the values with their unit.
     *
     * @return such as {@code (24, 48, 72) m}; of a long vector the first elements and the last
     */
    @Override
    public String toString() {
        Unit unit = elements[0].unit();
        boolean cut = elements.length > MOST_SHOWN;
        String values =
                subList(0, cut ? MOST_SHOWN - 2 : elements.length).stream()
                        .map(element -> value(element, unit))
                        .collect(Collectors.joining(", "));
        return Numerals.withUnit(
                "(" + values + (cut ? ", …, " + value(last(), unit) : "") + ")", unit.symbol());
    }

    private static String value(Quantity element, Unit unit) {
        return Numerals.of(element.inUnit(unit.symbol()));
    }

    @Override
    public Map<String, String> display() {
        Map<String, String> bundle = new LinkedHashMap<>();
        bundle.put("text/plain", toString());
        return bundle;
    }
}
