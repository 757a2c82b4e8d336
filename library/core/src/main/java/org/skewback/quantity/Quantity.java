package org.skewback.quantity;

import static java.util.stream.Collectors.joining;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.skewback.display.Displayable;

/**
 * A value with its dimension, the unit to show, and where it came from.
 *
 * <p>Immutable. Each operation gives a new node that keeps its operands, so the graph behind a
 * quantity reaches back to the givens; what a sheet prints is drawn from it. The value is in SI base
 * units throughout; {@link #in} converts at the boundary.
 *
 * <pre>{@code
 * Quantity g = Quantity.of(148, "kN/m");
 * Quantity L = Quantity.of(336, "m"), f = Quantity.of(72, "m");
 * Quantity H = g.times(L.squared()).over(f.times(8));
 * H.in("kN");                                        // 29 008
 * }</pre>
 *
 * <p>Every operation refuses operands of the wrong dimension with a {@link DimensionException} that
 * names both, and a result that is not finite (division by zero, overflow, the root of a negative
 * number) with an {@link ArithmeticException} that names the operands.
 *
 * <p>{@link #equals} is exact: same value, same dimension. Tests compare with a tolerance.
 */
public final class Quantity implements Displayable {

    private final double value;
    private final long dimension;
    private final Operation operation;
    private final @Nullable Quantity first;
    private final @Nullable Quantity second;
    private final @Nullable Object detail;
    private final @Nullable Unit unit;

    private Quantity(
            double value,
            long dimension,
            Operation operation,
            @Nullable Quantity first,
            @Nullable Quantity second,
            @Nullable Object detail,
            @Nullable Unit unit) {
        this.value = value;
        this.dimension = dimension;
        this.operation = operation;
        this.first = first;
        this.second = second;
        this.detail = detail;
        this.unit = unit;
    }

    // ---------------------------------------------------------------- making

    /**
     * Makes a quantity from a number and a unit.
     *
     * @param value finite value in that unit
     * @param unit such as {@code kN/m}; see {@link Unit#of}
     * @return the quantity, without a symbol and without a source
     * @throws IllegalArgumentException when the value is not finite or the unit not known
     */
    public static Quantity of(double value, String unit) {
        return leaf(Operation.VALUE, value, Unit.of(unit), null, unit);
    }

    /**
     * Makes a plain number.
     *
     * @param value finite value
     * @return the number as a quantity
     * @throws IllegalArgumentException when the value is not finite
     */
    public static Quantity of(double value) {
        return leaf(Operation.VALUE, value, Unit.ONE, null, "");
    }

    /**
     * Reads a quantity as it is printed, strictly and whatever the locale.
     *
     * <p>The number is read by {@link Numerals#parse}, the unit by {@link Unit#of}; a space stands
     * between them, of whatever width, save before °, ′, ″, % and ‰.
     *
     * @param text such as {@code 29 008 kN}, {@code 1.2e-5 1/K} or {@code 38.66°}
     * @return the quantity, without a symbol and without a source
     * @throws IllegalArgumentException when the text is no quantity or the unit not known
     */
    public static Quantity parse(String text) {
        return QuantityParser.quantity(text);
    }

    /**
     * Makes a named input with its source.
     *
     * @param symbol such as {@code L} or {@code N_Ed}
     * @param value finite value in that unit
     * @param unit such as {@code m}
     * @param note what it is, in words
     * @param source where it came from
     * @return the named quantity
     * @throws IllegalArgumentException when the value is not finite, the unit not known or the
     *     symbol not allowed
     */
    public static Quantity given(
            String symbol, double value, String unit, String note, Source source) {
        return given(symbol, value, unit, note, source, null);
    }

    /**
     * Makes a named input that belongs to an owner, so that the owner can tell its own from others.
     *
     * @param symbol such as {@code L} or {@code N_Ed}
     * @param value finite value in that unit
     * @param unit such as {@code m}
     * @param note what it is, in words
     * @param source where it came from
     * @param owner whoever keeps it, such as a sheet, or null; compared by identity
     * @return the named quantity
     * @throws IllegalArgumentException when the value is not finite, the unit not known or the
     *     symbol not allowed
     */
    public static Quantity given(
            String symbol,
            double value,
            String unit,
            String note,
            Source source,
            @Nullable Object owner) {
        Label label = new Label(symbol, note, source, owner);
        return leaf(Operation.GIVEN, value, Unit.of(unit), label, symbol);
    }

    /**
     * Puts a name, a note and a unit on this quantity; printed formulas end at the name.
     *
     * @param symbol such as {@code H}
     * @param unit unit to show, of this dimension
     * @param note what it is, in words
     * @return a new node with the same value
     * @throws DimensionException when the unit has another dimension
     * @throws IllegalArgumentException when the unit is not known or the symbol not allowed
     */
    public Quantity named(String symbol, String unit, String note) {
        return named(symbol, unit, note, null);
    }

    /**
     * Puts a name on this quantity on behalf of an owner.
     *
     * @param symbol such as {@code H}
     * @param unit unit to show, of this dimension
     * @param note what it is, in words
     * @param owner whoever keeps it, such as a sheet, or null; compared by identity
     * @return a new node with the same value
     * @throws DimensionException when the unit has another dimension
     * @throws IllegalArgumentException when the unit is not known or the symbol not allowed
     */
    public Quantity named(String symbol, String unit, String note, @Nullable Object owner) {
        Label label = new Label(symbol, note, null, owner);
        Unit shown = Unit.of(unit);
        if (shown.dimension().packed() != dimension) {
            throw new DimensionException(
                    "cannot state "
                            + symbol
                            + " in "
                            + unitInWords(shown)
                            + ": "
                            + brief()
                            + " is "
                            + dimension().inWords());
        }
        return new Quantity(value, dimension, Operation.NAMED, this, null, label, shown);
    }

    /**
     * Shows this quantity in another unit, under the same symbol and with the same origin.
     *
     * @param wanted unit to show, of this dimension
     * @return a node with the same value; where this one has a symbol, it stands behind the new one
     * @throws DimensionException when the unit has another dimension, or would turn a reading in °C
     *     into a difference in kelvin or back
     * @throws IllegalArgumentException when the unit is not known
     */
    public Quantity inUnit(String wanted) {
        Unit shown = Unit.of(wanted);
        boolean convertible = shown.dimension().packed() == dimension;
        if (!convertible || shown.isReading() != isReading()) {
            throw new DimensionException(
                    "cannot show "
                            + brief()
                            + " in "
                            + unitInWords(shown)
                            + (convertible ? ": a reading is no difference" : ""));
        }
        if (detail instanceof Label label) {
            // No owner: the sheet's own node is the one behind, and only one node can be that.
            Label same = new Label(label.symbol(), label.note(), label.source(), null);
            return new Quantity(value, dimension, Operation.NAMED, this, null, same, shown);
        }
        return new Quantity(value, dimension, operation, first, second, detail, shown);
    }

    private static Quantity leaf(
            Operation operation, double value, Unit unit, @Nullable Label label, String what) {
        double si = unit.toSi(value);
        if (!Double.isFinite(si)) {
            throw new IllegalArgumentException(
                    "value of "
                            + (what.isEmpty() ? "a plain number" : what)
                            + " is "
                            + value
                            + "; allowed are finite numbers");
        }
        return new Quantity(si, unit.dimension().packed(), operation, null, null, label, unit);
    }

    // ------------------------------------------------------------ arithmetic

    /**
     * Adds.
     *
     * @param other quantity of the same dimension
     * @return this + other
     */
    public Quantity plus(Quantity other) {
        requireSameDimension(other, "add", "and");
        if (isReading() && other.isReading()) {
            throw new DimensionException(
                    "cannot add two readings in °C: " + brief() + " and " + other.brief());
        }
        Unit shown = other.isReading() ? other.unit : unit;
        return node(value + other.value, dimension, Operation.ADD, this, other, null, shown);
    }

    /**
     * Adds a plain number.
     *
     * @param number finite number; this must be a plain number too
     * @return this + number
     */
    public Quantity plus(double number) {
        return plus(of(number));
    }

    /**
     * Subtracts.
     *
     * @param other quantity of the same dimension
     * @return this − other
     */
    public Quantity minus(Quantity other) {
        requireSameDimension(other, "subtract", "and");
        if (other.isReading() && !isReading()) {
            throw new DimensionException(
                    "cannot subtract a reading in °C from a difference in kelvin: "
                            + brief()
                            + " and "
                            + other.brief());
        }
        Unit shown = isReading() && other.isReading() ? null : unit;
        return node(value - other.value, dimension, Operation.SUBTRACT, this, other, null, shown);
    }

    /**
     * Subtracts a plain number.
     *
     * @param number finite number; this must be a plain number too
     * @return this − number
     */
    public Quantity minus(double number) {
        return minus(of(number));
    }

    /**
     * Multiplies.
     *
     * @param other any quantity
     * @return this · other
     */
    public Quantity times(Quantity other) {
        refuseReading(other, "multiply");
        long product = Dimension.product(dimension, other.dimension);
        return node(
                value * other.value,
                product,
                Operation.MULTIPLY,
                this,
                other,
                null,
                unitFor(product, other));
    }

    /**
     * Multiplies by a plain number.
     *
     * @param number finite number
     * @return this · number
     */
    public Quantity times(double number) {
        return times(of(number));
    }

    /**
     * Divides.
     *
     * @param other any quantity but zero
     * @return this / other
     */
    public Quantity over(Quantity other) {
        refuseReading(other, "divide");
        long quotient = Dimension.quotient(dimension, other.dimension);
        return node(
                value / other.value,
                quotient,
                Operation.DIVIDE,
                this,
                other,
                null,
                quotient == dimension ? unit : null);
    }

    /**
     * Divides by a plain number.
     *
     * @param number finite number, not zero
     * @return this / number
     */
    public Quantity over(double number) {
        return over(of(number));
    }

    /**
     * Gives the plain number of units in this quantity, for fitted formulas that want one.
     *
     * @param unit unit of this dimension, such as {@code m}
     * @return this / (1 unit), a plain number that still remembers this quantity
     * @throws DimensionException when the unit has another dimension
     */
    public Quantity per(String unit) {
        Quantity one = of(1, unit);
        requireSameDimension(one, "count", "in");
        return over(one);
    }

    /**
     * Changes the sign.
     *
     * @return −this
     */
    public Quantity negated() {
        refuseReading(this, "change the sign of");
        return node(-value, dimension, Operation.NEGATE, this, null, null, unit);
    }

    /**
     * Squares.
     *
     * @return this²
     */
    public Quantity squared() {
        return power(2);
    }

    /**
     * Cubes.
     *
     * @return this³
     */
    public Quantity cubed() {
        return power(3);
    }

    /**
     * Raises to a whole power.
     *
     * @param exponent whole number, any sign
     * @return this to that power
     */
    public Quantity power(int exponent) {
        return power(Rational.of(exponent));
    }

    /**
     * Raises to a fractional power.
     *
     * @param numerator numerator of the exponent
     * @param denominator denominator of the exponent, from 1 to 60
     * @return this to that power; this must not be negative
     */
    public Quantity power(int numerator, int denominator) {
        return power(new Rational(numerator, denominator));
    }

    /**
     * Takes the square root.
     *
     * @return √this
     */
    public Quantity root() {
        return power(Rational.HALF);
    }

    /**
     * Takes the cube root.
     *
     * @return ∛this
     */
    public Quantity cubeRoot() {
        return power(new Rational(1, 3));
    }

    private Quantity power(Rational exponent) {
        refuseReading(this, "raise to a power");
        long raised = Dimension.power(dimension, exponent.numerator(), exponent.denominator());
        return node(
                Powers.of(value, exponent),
                raised,
                Operation.POWER,
                this,
                null,
                exponent,
                raised == dimension ? unit : null);
    }

    // ------------------------------------------------------------- functions

    /**
     * Gives the exponential of a plain number.
     *
     * @return e to the power of this
     */
    public Quantity exp() {
        return function(Operation.EXP);
    }

    /**
     * Gives the natural logarithm of a positive plain number.
     *
     * @return ln this
     */
    public Quantity ln() {
        return function(Operation.LN);
    }

    /**
     * Gives the common logarithm of a positive plain number.
     *
     * @return lg this
     */
    public Quantity log10() {
        return function(Operation.LOG10);
    }

    /**
     * Gives the sine of an angle.
     *
     * @return sin this
     */
    public Quantity sin() {
        return function(Operation.SIN);
    }

    /**
     * Gives the cosine of an angle.
     *
     * @return cos this
     */
    public Quantity cos() {
        return function(Operation.COS);
    }

    /**
     * Gives the tangent of an angle.
     *
     * @return tan this
     */
    public Quantity tan() {
        return function(Operation.TAN);
    }

    /**
     * Gives the angle of a sine from −1 to 1.
     *
     * @return arcsin this, shown in degrees
     */
    public Quantity asin() {
        return function(Operation.ASIN);
    }

    /**
     * Gives the angle of a cosine from −1 to 1.
     *
     * @return arccos this, shown in degrees
     */
    public Quantity acos() {
        return function(Operation.ACOS);
    }

    /**
     * Gives the angle of a tangent.
     *
     * @return arctan this, shown in degrees
     */
    public Quantity atan() {
        return function(Operation.ATAN);
    }

    /**
     * Gives the hyperbolic sine of a plain number.
     *
     * @return sinh this
     */
    public Quantity sinh() {
        return function(Operation.SINH);
    }

    /**
     * Gives the hyperbolic cosine of a plain number.
     *
     * @return cosh this
     */
    public Quantity cosh() {
        return function(Operation.COSH);
    }

    /**
     * Gives the hyperbolic tangent of a plain number.
     *
     * @return tanh this
     */
    public Quantity tanh() {
        return function(Operation.TANH);
    }

    /**
     * Gives the inverse hyperbolic sine of a plain number.
     *
     * @return arsinh this
     */
    public Quantity asinh() {
        return function(Operation.ASINH);
    }

    /**
     * Gives the inverse hyperbolic cosine of a plain number from 1.
     *
     * @return arcosh this
     */
    public Quantity acosh() {
        return function(Operation.ACOSH);
    }

    private Quantity function(Operation operation) {
        if (dimension != 0) {
            throw new DimensionException(
                    "cannot take "
                            + operation.published()
                            + " of "
                            + brief()
                            + ": it wants a plain number or an angle, not "
                            + dimension().inWords());
        }
        boolean angle =
                operation == Operation.ASIN
                        || operation == Operation.ACOS
                        || operation == Operation.ATAN;
        return node(
                operation.function(value),
                0,
                operation,
                this,
                null,
                null,
                angle ? Unit.of("°") : null);
    }

    /**
     * Gives the absolute value.
     *
     * @return |this|
     */
    public Quantity abs() {
        refuseReading(this, "take the absolute value of");
        return node(Math.abs(value), dimension, Operation.ABS, this, null, null, unit);
    }

    /**
     * Gives the lesser of two.
     *
     * @param a a quantity
     * @param b another of the same dimension
     * @return min(a, b)
     */
    public static Quantity min(Quantity a, Quantity b) {
        a.requireSameDimension(b, "take the lesser of", "and");
        return node(Math.min(a.value, b.value), a.dimension, Operation.MIN, a, b, null, a.unit);
    }

    /**
     * Gives the greater of two.
     *
     * @param a a quantity
     * @param b another of the same dimension
     * @return max(a, b)
     */
    public static Quantity max(Quantity a, Quantity b) {
        a.requireSameDimension(b, "take the greater of", "and");
        return node(Math.max(a.value, b.value), a.dimension, Operation.MAX, a, b, null, a.unit);
    }

    /**
     * Adds a list, in its order.
     *
     * @param terms at least one quantity, all of one dimension
     * @return the sum
     * @throws IllegalArgumentException when the list is empty
     */
    public static Quantity sum(List<Quantity> terms) {
        if (terms.isEmpty()) {
            throw new IllegalArgumentException("a sum of no quantities has no dimension");
        }
        Quantity head = terms.get(0);
        double total = 0;
        for (Quantity term : terms) {
            head.requireSameDimension(term, "add", "and");
            head.refuseReading(term, "sum");
            total += term.value;
        }
        return node(
                total, head.dimension, Operation.SUM, null, null, List.copyOf(terms), head.unit);
    }

    // ------------------------------------------------------------ comparison

    /**
     * Compares: this ≥ other.
     *
     * @param other quantity of the same dimension
     * @return the condition
     */
    public Condition atLeast(Quantity other) {
        return new Condition(this, Relation.AT_LEAST, other);
    }

    /**
     * Compares: this ≤ other.
     *
     * @param other quantity of the same dimension
     * @return the condition
     */
    public Condition atMost(Quantity other) {
        return new Condition(this, Relation.AT_MOST, other);
    }

    /**
     * Compares: this &gt; other.
     *
     * @param other quantity of the same dimension
     * @return the condition
     */
    public Condition moreThan(Quantity other) {
        return new Condition(this, Relation.MORE, other);
    }

    /**
     * Compares: this &lt; other.
     *
     * @param other quantity of the same dimension
     * @return the condition
     */
    public Condition lessThan(Quantity other) {
        return new Condition(this, Relation.LESS, other);
    }

    /**
     * Takes one of two by a condition, and keeps the condition in the graph as a guard.
     *
     * <p>The other value is not computed now. It is tried once, when a tape or a record needs both;
     * if it throws, the tape refuses values that turn the condition. Neither supplier may have any
     * effect but its result.
     *
     * @param condition what decides
     * @param then gives the value where it holds
     * @param otherwise gives the value where it does not, of the same dimension
     * @return the chosen value
     */
    public static Quantity choose(
            Condition condition, Supplier<Quantity> then, Supplier<Quantity> otherwise) {
        boolean held = condition.holds();
        Quantity chosen = held ? then.get() : otherwise.get();
        return node(
                chosen.value,
                chosen.dimension,
                Operation.CHOOSE,
                chosen,
                null,
                Guard.untried(condition, held, held ? otherwise : then),
                chosen.unit);
    }

    /**
     * Looks this quantity up in a cited table.
     *
     * @param table the table
     * @return the interpolated value, in the unit of the table
     * @throws DimensionException when this is not of the dimension of the table's first axis
     * @throws IllegalArgumentException when this lies outside the table
     */
    public Quantity interpolated(InterpolationTable table) {
        requireSameDimension(of(1, table.x().unit()), "look up", "in a table stated in");
        Unit shown = Unit.of(table.y().unit());
        return node(
                table.lookUp(this),
                shown.dimension().packed(),
                Operation.INTERPOLATED,
                this,
                null,
                table,
                shown);
    }

    // --------------------------------------------------------------- reading

    /**
     * Gives the value in SI base units.
     *
     * @return the value
     */
    public double si() {
        return value;
    }

    /**
     * Gives the value in a unit.
     *
     * @param unit unit of this dimension
     * @return the value, a plain {@code double}; it no longer knows where it came from
     * @throws DimensionException when the unit has another dimension
     */
    public double in(String unit) {
        return in(Unit.of(unit));
    }

    double in(Unit wanted) {
        if (wanted.dimension().packed() != dimension) {
            throw new DimensionException(
                    "cannot convert "
                            + brief()
                            + ", "
                            + dimension().inWords()
                            + ", to "
                            + unitInWords(wanted));
        }
        return wanted.fromSi(value);
    }

    /**
     * Gives the dimension.
     *
     * @return the dimension
     */
    public Dimension dimension() {
        return new Dimension(dimension);
    }

    /**
     * Gives the unit to show: the author's choice, else the habit of the trade.
     *
     * @return a unit of this dimension
     */
    public Unit unit() {
        return unit != null ? unit : Unit.usual(dimension());
    }

    /**
     * Gives the symbol.
     *
     * @return the symbol, or null where the quantity has no name
     */
    public @Nullable String symbol() {
        return detail instanceof Label label ? label.symbol() : null;
    }

    /**
     * Gives the note.
     *
     * @return what the quantity is, in words; empty where nobody said
     */
    public String note() {
        return detail instanceof Label label ? label.note() : "";
    }

    /**
     * Gives the source.
     *
     * @return where the number came from, or null where it was calculated or nobody said
     */
    public @Nullable Source source() {
        return detail instanceof Label label ? label.source() : null;
    }

    /**
     * Gives the cited table that this quantity was read from.
     *
     * @return the table, or null where this is no value of a table
     */
    public @Nullable InterpolationTable table() {
        return detail instanceof InterpolationTable table ? table : null;
    }

    /**
     * Gives the owner who named this quantity.
     *
     * @return a sheet or whoever else keeps it, or null
     */
    public @Nullable Object owner() {
        return detail instanceof Label label ? label.owner() : null;
    }

    /**
     * Tells whether this is a number that an author wrote down, rather than one calculated.
     *
     * @return true for givens and for numbers without a name
     */
    public boolean isLeaf() {
        return operation == Operation.VALUE || operation == Operation.GIVEN;
    }

    /**
     * Tells whether an operand is the one unit by which {@link #per} divides to get a plain number.
     *
     * @param operand one of {@link #operands}
     * @return true where this is a quotient, and the operand its divisor: exactly one of a unit,
     *     without a name
     */
    public boolean countsIn(Quantity operand) {
        return operation == Operation.DIVIDE
                && second != null
                && second.isSameNode(operand)
                && second.operation == Operation.VALUE
                && second.unit != null
                && second.value == second.unit.toSi(1);
    }

    /** Whether this is another quantity in another unit, under the same symbol. */
    boolean isShownAgain() {
        return operation == Operation.NAMED
                && owner() == null
                && first != null
                && Objects.equals(first.symbol(), symbol());
    }

    /** Whether an author wrote this number down, in this unit or another. */
    boolean isAuthors() {
        return shownAgain().isLeaf();
    }

    /** What this shows again in another unit or under another name; itself where it does not. */
    Quantity shownAgain() {
        Quantity node = this;
        while (node.isShownAgain()) {
            node = Objects.requireNonNull(node.first);
        }
        return node;
    }

    /**
     * Tells whether another is this very node of the graph, rather than one of equal value.
     *
     * @param other any quantity
     * @return whether the two are one object
     */
    @SuppressWarnings("ReferenceEquality") // identity is the question here
    public boolean isSameNode(Quantity other) {
        return this == other;
    }

    /**
     * Gives the quantities from which this one was calculated.
     *
     * @return the operands in order; empty for a leaf
     */
    public List<Quantity> operands() {
        if (detail instanceof RoutineOutput output) {
            return output.call().inputs();
        }
        if (detail instanceof Guard guard && first != null) {
            return List.of(first, guard.condition().left(), guard.condition().right());
        }
        if (operation == Operation.SUM) {
            return terms();
        }
        if (first == null) {
            return List.of();
        }
        return second == null ? List.of(first) : List.of(first, second);
    }

    @SuppressWarnings("unchecked") // the one operation whose detail is a list of quantities
    private List<Quantity> terms() {
        return (List<Quantity>) Objects.requireNonNull(detail);
    }

    /**
     * Gives the formula behind this quantity and what came of it, ready to be written.
     *
     * @return symbol = formula = numbers put in = result, as far as each says something new
     */
    public WorkedStep worked() {
        return WorkedStep.of(this);
    }

    /**
     * Gives the formula behind this quantity, with its result in a stated count of digits.
     *
     * @param digits significant digits of the result, from 1 to 17
     * @return symbol = formula = numbers put in = result, as far as each says something new
     * @throws IllegalArgumentException when the digits are outside their range
     */
    public WorkedStep worked(int digits) {
        return WorkedStep.of(this, digits);
    }

    /**
     * Traces this quantity back to what was given.
     *
     * @return its origin, ready to be shown
     */
    public Origin origin() {
        return Origin.of(this);
    }

    Operation operation() {
        return operation;
    }

    @Nullable Object detail() {
        return detail;
    }

    @Nullable Unit chosenUnit() {
        return unit;
    }

    /** The same name and unit with another value, for messages. */
    Quantity withValue(double si) {
        return new Quantity(
                si,
                dimension,
                Operation.VALUE,
                null,
                null,
                detail instanceof Label ? detail : null,
                unit);
    }

    /** Symbol and value, for messages. */
    String brief() {
        String text = Numerals.withUnit(Numerals.inFull(this), unit().symbol());
        String symbol = symbol();
        return symbol == null ? text : symbol + " = " + text;
    }

    // -------------------------------------------------------------- plumbing

    static Quantity node(
            double value,
            long dimension,
            Operation operation,
            @Nullable Quantity first,
            @Nullable Quantity second,
            @Nullable Object detail,
            @Nullable Unit unit) {
        Quantity node = new Quantity(value, dimension, operation, first, second, detail, unit);
        if (!(Math.abs(value) <= Double.MAX_VALUE)) {
            throw node.notFinite();
        }
        return node;
    }

    private ArithmeticException notFinite() {
        String operands = operands().stream().map(Quantity::brief).collect(joining(" and "));
        String why =
                operation == Operation.DIVIDE && second != null && second.value == 0
                        ? "division by zero: "
                        : "no finite result of " + operation.published() + ": ";
        return new ArithmeticException(why + operands);
    }

    void requireSameDimension(Quantity other, String verb, String joint) {
        if (dimension != other.dimension) {
            throw new DimensionException(
                    "cannot "
                            + verb
                            + " "
                            + brief()
                            + " ("
                            + dimension().inWords()
                            + ") "
                            + joint
                            + " "
                            + other.brief()
                            + " ("
                            + other.dimension().inWords()
                            + ")");
        }
    }

    private boolean isReading() {
        return unit != null && unit.isReading();
    }

    private void refuseReading(Quantity other, String verb) {
        if (isReading() || other.isReading()) {
            throw new DimensionException(
                    "cannot "
                            + verb
                            + " "
                            + (isReading() ? brief() : other.brief())
                            + ", a reading in °C: take a difference first, which is in kelvin");
        }
    }

    private @Nullable Unit unitFor(long product, Quantity other) {
        if (product == dimension) {
            return unit;
        }
        return product == other.dimension ? other.unit : null;
    }

    private static String unitInWords(Unit unit) {
        return unit.symbol().isEmpty()
                ? "plain numbers"
                : unit.symbol() + ", the unit of " + unit.dimension().inWords();
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Quantity that && value == that.value && dimension == that.dimension;
    }

    @Override
    public int hashCode() {
        return Double.hashCode(value + 0.0) * 31 + Long.hashCode(dimension);
    }

    /**
     * Writes the symbol, if there is one, the value and the unit.
     *
     * @return such as {@code H = 29 008 kN}
     */
    @Override
    public String toString() {
        return brief();
    }

    /**
     * Writes the symbol, if there is one, the value with a stated count of digits, and the unit.
     *
     * @param digits significant digits, from 1 to 17
     * @return such as {@code H = 29 008.0 kN} for six
     * @throws IllegalArgumentException when the digits are outside their range
     */
    public String toString(int digits) {
        String text = Numerals.withUnit(this, digits);
        String symbol = symbol();
        return symbol == null ? text : symbol + " = " + text;
    }

    @Override
    public Map<String, String> display() {
        return worked().display();
    }
}
