package org.skewback.quantity;

import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * What a quantity is called, what it means and where it came from.
 *
 * @param symbol such as {@code N_Ed}: a name, perhaps an underscore and a subscript
 * @param note what it is, in words; may be empty
 * @param source where it came from, or null where it was calculated
 * @param owner the sheet that named it, or null; compared by identity only
 */
record Label(String symbol, String note, @Nullable Source source, @Nullable Object owner) {

    private static final int LONGEST_SYMBOL = 40;

    private static final Pattern SYMBOL =
            Pattern.compile("\\p{L}[\\p{L}\\p{N}′″*]*(_[\\p{L}\\p{N},′+−-]+)?");

    Label {
        if (symbol.length() > LONGEST_SYMBOL || !SYMBOL.matcher(symbol).matches()) {
            throw new IllegalArgumentException(
                    "symbol \""
                            + (symbol.length() > 80 ? symbol.substring(0, 80) + "…" : symbol)
                            + "\": allowed are a letter, more letters and digits, then at most one"
                            + " underscore with a subscript, such as N_Ed, and "
                            + LONGEST_SYMBOL
                            + " characters");
        }
    }
}
