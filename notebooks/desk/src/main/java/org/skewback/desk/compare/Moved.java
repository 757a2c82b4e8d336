package org.skewback.desk.compare;

import java.util.List;

/**
 * A quantity that is another than before.
 *
 * @param sheet number and title of its sheet
 * @param name its name there
 * @param before its value with unit before; empty where it is new
 * @param now its value with unit now; empty where it is gone
 * @param relative change over the value before; NaN where it would mean nothing
 * @param source of a given, its source before and now where that changed; else empty
 * @param chain from each cause to this, such as {@code L → H → M}; empty for a cause
 */
public record Moved(
        String sheet,
        String name,
        String before,
        String now,
        double relative,
        String source,
        List<String> chain) {

    /** Keeps a copy of the list. */
    public Moved {
        chain = List.copyOf(chain);
    }
}
