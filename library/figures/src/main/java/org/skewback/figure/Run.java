package org.skewback.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A piece of a line of text that stands at one height: a symbol such as N_Ed is its letter and its
 * subscript.
 *
 * @param text what it says
 * @param lowered whether it is a subscript
 */
record Run(String text, boolean lowered) {

    /** Size of a subscript as a share of the text's, and how far it is lowered, in ems of the text. */
    static final double SIZE = 0.72;

    static final double DROP = 0.16;

    /** As symbols of quantities are written; a subscript does not end with a sign or a comma. */
    private static final Pattern SYMBOL =
            Pattern.compile(
                    "(?<![\\p{L}\\p{N}_])(\\p{L}[\\p{L}\\p{N}′″*]*)"
                            + "_([\\p{L}\\p{N}]+(?:[,′+−-][\\p{L}\\p{N}]+)*′?)(?!_)");

    /** Parts a line into pieces; joined, they are the line without the underscores of symbols. */
    static List<Run> of(String line) {
        List<Run> runs = new ArrayList<>();
        Matcher symbols = SYMBOL.matcher(line);
        int done = 0;
        while (symbols.find()) {
            runs.add(new Run(line.substring(done, symbols.end(1)), false));
            runs.add(new Run(symbols.group(2), true));
            done = symbols.end();
        }
        if (done < line.length() || runs.isEmpty()) {
            runs.add(new Run(line.substring(done), false));
        }
        return runs;
    }

    /** Size of the letters as a share of the text's. */
    double size() {
        return lowered ? SIZE : 1;
    }

    /** How far below the line it stands, in ems of the text. */
    double drop() {
        return lowered ? DROP : 0;
    }
}
