package org.skewback.quantity;

/** How two quantities are compared. */
public enum Relation {
    /** At most: ≤. */
    AT_MOST("≤"),
    /** Less than: &lt;. */
    LESS("<"),
    /** At least: ≥. */
    AT_LEAST("≥"),
    /** More than: &gt;. */
    MORE(">");

    private final String sign;

    Relation(String sign) {
        this.sign = sign;
    }

    /**
     * Gives the sign in print.
     *
     * @return one of ≤ &lt; ≥ &gt;
     */
    public String sign() {
        return sign;
    }

    /**
     * Compares two numbers.
     *
     * @param left number on the left
     * @param right number on the right
     * @return whether the relation holds
     */
    public boolean holds(double left, double right) {
        return switch (this) {
            case AT_MOST -> left <= right;
            case LESS -> left < right;
            case AT_LEAST -> left >= right;
            case MORE -> left > right;
        };
    }
}
