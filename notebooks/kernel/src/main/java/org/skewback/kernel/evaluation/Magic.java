package org.skewback.kernel.evaluation;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A line of a cell that is an order to the kernel.
 *
 * @param name its name, without the percent sign
 * @param argument the rest of the line
 * @param line its line in the cell, from 1
 */
record Magic(String name, String argument, int line) {

    // A line of Java may begin with the remainder operator, but then hardly with no space behind it
    // and a word that stands alone.
    private static final Pattern LINE =
            Pattern.compile("^%{1,2}([A-Za-z]+)(?:[ \\t]+(.*?))?[ \\t]*$");

    /**
     * A cell without its magics.
     *
     * @param magics the magics in order
     * @param java the cell with each magic's line left empty, so that line numbers stay
     */
    record Parted(List<Magic> magics, String java) {}

    /** Parts a cell. */
    static Parted part(String code) {
        String[] lines = code.replace("\r\n", "\n").split("\n", -1);
        List<Magic> magics = new ArrayList<>();
        for (int i = 0; i < lines.length; i++) {
            Matcher matcher = LINE.matcher(lines[i]);
            if (matcher.matches()) {
                String argument = matcher.group(2) == null ? "" : matcher.group(2);
                magics.add(new Magic(matcher.group(1), argument, i + 1));
                lines[i] = "";
            }
        }
        return new Parted(List.copyOf(magics), String.join("\n", lines));
    }
}
