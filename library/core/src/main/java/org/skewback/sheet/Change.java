package org.skewback.sheet;

import org.jspecify.annotations.Nullable;
import org.skewback.quantity.Numerals;
import org.skewback.quantity.Quantity;

/**
 * A named number that was said anew, or no more, after something had been worked out of it.
 *
 * @param was the number as it was, with its symbol
 * @param now what bears the symbol now, or null where nothing does
 */
public record Change(Quantity was, @Nullable Quantity now) {

    private static final int MOST_DIGITS = 17;

    /**
     * Tells whether the number itself is another now, and not just said again.
     *
     * @return false where the value and its dimension are the same
     */
    public boolean isOfValue() {
        return !was.equals(now);
    }

    /**
     * Says what changed.
     *
     * @return such as {@code g changed from 148 kN/m to 150 kN/m}, with as many digits as show it
     */
    public String inWords() {
        if (now == null) {
            return was.symbol() + " = " + Numerals.withUnit(was) + " is no longer said";
        }
        if (!isOfValue()) {
            return was.symbol() + " was said again";
        }
        String before = Numerals.withUnit(was);
        String after = Numerals.withUnit(now);
        for (int digits = 5; digits <= MOST_DIGITS && before.equals(after); digits++) {
            before = Numerals.withUnit(was, digits);
            after = Numerals.withUnit(now, digits);
        }
        return was.symbol() + " changed from " + before + " to " + after;
    }
}
