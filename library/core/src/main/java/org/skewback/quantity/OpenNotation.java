package org.skewback.quantity;

import java.util.List;

/** A notation whose brackets need not close on the line on which they open. */
interface OpenNotation extends Notation {

    String opening();

    String closing();

    /** Between two arguments. */
    String separator();

    /** One side of an absolute value. */
    String bar();

    /** The name of a function before the bracket of its arguments. */
    String function(String name);

    /** The symbol of a table, already written, before the bracket of its argument. */
    String table(String symbol);

    /** One of several words in a row, with the gap behind it. */
    String word(String word);

    /** Stands between a value that was chosen and the condition that chose it. */
    String since();

    /** The sign of a condition. */
    String relation(String sign);

    /** Sets lines one below the other, where one formula stands. */
    String stacked(List<String> lines);
}
