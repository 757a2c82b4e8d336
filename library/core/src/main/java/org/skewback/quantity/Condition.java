package org.skewback.quantity;

/**
 * A comparison of two quantities that remembers what was compared.
 *
 * <p>It is no {@code boolean} on purpose: a branch taken on a plain truth value would leave no trace
 * in the graph. Use it with {@link Quantity#choose}.
 *
 * @param left quantity on the left
 * @param relation how they are compared
 * @param right quantity on the right, of the same dimension
 */
public record Condition(Quantity left, Relation relation, Quantity right) {

    /**
     * Checks the dimensions.
     *
     * @param left quantity on the left
     * @param relation how they are compared
     * @param right quantity on the right, of the same dimension
     * @throws DimensionException when the two differ in dimension
     */
    public Condition {
        left.requireSameDimension(right, "compare", "with");
    }

    /**
     * Tells whether it holds for the present values.
     *
     * @return the outcome
     */
    public boolean holds() {
        return relation.holds(left.si(), right.si());
    }

    @Override
    public String toString() {
        return left.brief() + " " + relation.sign() + " " + right.brief();
    }
}
