package org.skewback.lesson;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.skewback.quantity.Quantity;

/**
 * The numbers of an exercise that are known so far: those drawn, and the results of the steps before.
 *
 * @param values by symbol, drawn numbers first
 */
public record Numbers(Map<String, Quantity> values) {

    /**
     * Keeps a copy, in order.
     *
     * @param values by symbol, drawn numbers first
     */
    public Numbers {
        values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
    }

    /**
     * Gives a number.
     *
     * @param symbol symbol under which it was drawn or asked for
     * @return the quantity
     * @throws IllegalArgumentException if nothing of that symbol was drawn or asked for before
     */
    public Quantity get(String symbol) {
        Quantity known = values.get(symbol);
        if (known == null) {
            throw new IllegalArgumentException(
                    "number \""
                            + symbol
                            + "\" is not known here; known are "
                            + String.join(", ", values.keySet()));
        }
        return known;
    }

    Numbers with(String symbol, Quantity value) {
        Map<String, Quantity> more = new LinkedHashMap<>(values);
        more.put(symbol, value);
        return new Numbers(more);
    }
}
